// SPDX-License-Identifier: MIT
#pragma once
#include <string>
#include <variant>
#include <vector>

#include "file/side_notes.hpp"
#include "survey/survey.hpp"

// What is to be done outside of the desk after an action; the window carries it out, and may come back with an action.
namespace doorcard {

/// The whole text as it would be saved goes to the journal, within a second.
struct KeepJournal {
    std::string path;  ///< of the survey; empty: it has no name yet
    std::string text;  ///< bytes of the file
    Survey on_file, now;
};
struct DropJournal {
    std::string path;
};
/// What is kept beside the survey, swapped in whole.
struct KeepNotes {
    std::string path;
    SideNotes notes;
};
/// Comes back with Saved or SaveFailed.
struct SaveFile {
    std::string path;
    std::string was;  ///< bytes that the file must still have; of a new file none
    bool is_new = false;
    std::string text;  ///< from which it is rewritten
    Survey on_file, now;
};
/// Comes back with RulesRead, or Refuse.
struct ReadRules {
    std::string path, edition, local_rules;
};
/// The file is one of those to offer at the next start.
struct Remember {
    std::string path;
};

using Effect = std::variant<KeepJournal, DropJournal, KeepNotes, SaveFile, ReadRules, Remember>;
using Effects = std::vector<Effect>;

}  // namespace doorcard
