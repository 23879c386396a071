// SPDX-License-Identifier: MIT
#pragma once
#include <functional>
#include <string>

#include "base/message.hpp"
#include "base/outcome.hpp"
#include "survey/survey.hpp"

namespace doorcard {

/// One step of editing: its name, as behind 'Undo' ('move breaker MAIN:5 to 9'), and what it makes of a survey. What
/// comes out keeps the laws of the file, so that it can be saved and read again; else the edit is refused with the
/// reason, and nothing of it is done. An edit changes nothing until it is applied, and may be applied to several
/// surveys.
struct Edit {
    Message name;
    std::function<Outcome<Survey>(Survey)> apply;
};

/// What becomes of the places that name a thing which is taken out: the edit is refused and names them, or the names go
/// too, and with them entries that say nothing without (a reading of it, the breakers of a panel).
enum class Mentions { refuse, take_along };

/// A refusal, in the manner of the complaints of a file.
tl::unexpected<std::vector<Complaint>> refused(std::string wrong, std::string right);

/// The survey, if it keeps the laws: what is named is there, ids are unique, feeds run in no circle, breakers sit in
/// spaces that their panel has, a neutral has one size; else a refusal.
Outcome<Survey> kept_laws(Survey);
/// The same of what an edit made of a survey that keeps them, from what it changed.
Outcome<Survey> kept_laws(const Survey& before, Survey after);

/// Several edits as one step.
Edit together(Message name, std::vector<Edit>);

}  // namespace doorcard
