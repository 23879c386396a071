// SPDX-License-Identifier: MIT
#pragma once
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "assess/directory.hpp"
#include "assess/reassess.hpp"
#include "file/journal.hpp"
#include "file/side_notes.hpp"
#include "survey/history.hpp"

namespace doorcard {

/// The pages of a call, in its order; further ones come with what they are for.
enum class JobPage { arrival, rooms, measure, card };

/// Where on the desk one is: the panel shown, the row chosen on its face, the page beside it, and what lies over the
/// page.
struct Spot {
    std::string panel;  ///< id; empty: the survey has none
    std::optional<Position> row;
    JobPage page = JobPage::arrival;
    std::string slip;   ///< address of the thing whose slip lies over the page; empty: none does
    std::string field;  ///< key on the slip or page that is to be filled in next; may be empty
    bool operator==(const Spot&) const = default;
};

/// The survey file as it was when it was read or saved last.
struct KeptFile {
    std::string path;  ///< empty: it has no name yet
    std::string text;  ///< its bytes; of a new survey the text to start from
    Survey survey;     ///< what they say
};

/// Something to be said in the window: what was refused, or what became of a save.
struct Said {
    enum class Kind { done, refused };
    Kind kind = Kind::done;
    Message what;
    std::vector<Complaint> complaints;  ///< of a refusal, all of them
};

/// All that a window shows of one survey, as a value. Survey and assessment belong together: whoever changes one
/// changes the other.
struct Desk {
    KeptFile file;
    Survey survey;
    History history;
    std::shared_ptr<const RuleBook> book;
    Assessed assessed{{}, Homes(Survey{}), {}, 0};
    Spot spot;
    std::vector<Spot> came_from;  ///< where `GoBack` leads, the last first to go
    SideNotes notes;  ///< what is planned, whether what was found is locked, and the snapshot before the first round
    std::optional<Said> said;
    std::optional<Journal> left;        ///< what a crash left of this file: offered, never merged in silence
    std::optional<std::string> theirs;  ///< the file's bytes since somebody else changed it
    bool is_changed = false;            ///< something is not in the file yet
    bool is_open = false;               ///< false: nothing but the start is shown
    std::size_t edits = 0;              ///< made since it was opened: tells views that they are behind
};

/// Position of the panel shown in the survey's table; nullopt where there is none.
std::optional<std::size_t> shown_panel(const Desk&);
/// The survey's title, else its file's name, else 'New survey'.
Message title_of(const Desk&);
/// 'as found, locked; 2 planned'; empty while the first entry goes on.
Message standing_of(const Desk&);
/// 'all in the file', 'all changes kept, not yet in the file', or that it has no file yet.
Message keeping_of(const Desk&);

}  // namespace doorcard
