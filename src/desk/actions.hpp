// SPDX-License-Identifier: MIT
#pragma once
#include <variant>

#include "desk/desk.hpp"
#include "file/new_survey.hpp"
#include "survey/edits/edit.hpp"

// What can happen to a desk: a gesture of whoever works there, or news from the disk.
namespace doorcard {

struct BeginNew {
    NewSurvey known;
    std::shared_ptr<const RuleBook> book;
};
/// A file was read, with the rules that it names; `left` is what a crash left of it.
struct Opened {
    std::string path, text;
    Survey survey;
    std::shared_ptr<const RuleBook> book;
    std::optional<Journal> left;
    SideNotes notes{};
};
/// It could not be: nothing is shown but what is wrong.
struct NotOpened {
    std::string path;
    std::vector<Complaint> complaints;
};
struct Apply {
    Edit edit;
};
/// A gesture that leads to no edit, and why.
struct Refuse {
    std::vector<Complaint> complaints;
};
struct Undo {};
struct Redo {};
/// What was found is locked: what would change a handle is planned from now on. Or it is open again.
struct LockAsFound {
    bool locked = true;
};
/// What is planned, from now on.
struct SetPlan {
    Plan plan;
};
/// All that is planned is done, as one step; or none of it is wanted any more.
struct CarryOutPlan {};
struct DropPlan {};
struct ShowPanel {
    std::string id;
};
struct ChooseRow {
    std::optional<Position> row;
};
struct ShowPage {
    JobPage page = JobPage::arrival;
};
/// The slip of one thing is laid over the page. 'Back' leads to where one was.
struct OpenSlip {
    std::string address, field;
};
/// To what is named: its panel, its row, its slip, and the field that is to be filled in. 'Back' returns.
struct GoTo {
    std::string address, field;
};
struct GoBack {};
struct Save {};
struct SaveAs {
    std::string path;
};
struct Saved {
    std::string path, text;
    Survey survey;  ///< what was saved; edits may have been made since
};
struct SaveFailed {
    Message why;
};
struct FileChanged {
    std::string text;
};
/// The file as somebody else left it takes the place of what is on the desk; that is one step, and can be undone.
struct TakeTheirs {};
/// What is on the desk stays; the next save writes it over what they wrote.
struct KeepMine {};
struct TakeJournal {};
struct DropLeft {};
struct RulesRead {
    std::shared_ptr<const RuleBook> book;
};
/// Something done beside the survey, or not done: it is said in the window.
struct Tell {
    Said::Kind kind = Said::Kind::done;
    Message what;
    std::vector<Complaint> complaints{};
};
/// What a crash left of a survey that never had a file.
struct LeftFound {
    Journal left;
};
struct Hush {};  ///< what was said is taken away

using Action =
    std::variant<BeginNew, Opened, NotOpened, Apply, Refuse, Undo, Redo, LockAsFound, SetPlan, CarryOutPlan, DropPlan,
                 ShowPanel, ChooseRow, ShowPage, OpenSlip, GoTo, GoBack, Save, SaveAs, Saved, SaveFailed, FileChanged,
                 TakeTheirs, KeepMine, TakeJournal, DropLeft, RulesRead, Tell, LeftFound, Hush>;

/// What dragging a breaker from one row to another means: a move, or, where what was found is locked, a plan of one.
Action moved(const Desk&, Position from, Position to);

}  // namespace doorcard
