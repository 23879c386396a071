// SPDX-License-Identifier: MIT
#include "ui/frame_menus.hpp"

#include "desk/additions.hpp"
#include "desk/face_gestures.hpp"
#include "desk/typed_breaker.hpp"

namespace doorcard {
namespace {

MenuCommand line() { return {}; }

/// An edit of the chosen row.
using RowEdit = std::function<Outcome<Edit>(const Survey&, const std::string& panel, Position)>;

MenuCommand row_command(Seat& seat, const char* label, const char* key, RowEdit edit) {
    return {seat.say(label),
            key,
            [&seat, edit] {
                const Spot& spot = seat.desk().spot;
                seat.act(edit(seat.desk().survey, spot.panel, *spot.row));
            },
            [&seat] { return seat.desk().is_open && seat.desk().spot.row.has_value(); },
            {},
            {}};
}

/// A move to where `to` says; the choice goes along.
MenuCommand move_command(Seat& seat, const char* label, const char* key,
                         std::optional<Position> (*to)(const Survey&, std::string_view, Position)) {
    MenuCommand command = row_command(seat, label, key, {});
    command.act = [&seat, to] {
        const Spot spot = seat.desk().spot;
        const auto target = to(seat.desk().survey, spot.panel, *spot.row);
        if (!target) return;
        const std::size_t before = seat.desk().edits;
        seat.act(moved(seat.desk(), *spot.row, *target));
        if (seat.desk().edits != before) seat.act(Action{ChooseRow{target}});
    };
    return command;
}

MenuList file_menu(Seat& seat, FrameActs& acts) {
    const auto is_open = [&seat] { return seat.desk().is_open; };
    return {seat.say(tr("&File")),
            {{seat.say(tr("&New survey")), "Ctrl+N", [&acts] { acts.begin_new(); }, {}, {}, {}},
             {seat.say(tr("&Open...")), "Ctrl+O", [&acts] { acts.ask_to_open(); }, {}, {}, {}},
             line(),
             {seat.say(tr("&Save")), "Ctrl+S", [&acts] { acts.save(); }, is_open, {}, {}},
             {seat.say(tr("Save &as...")), "Ctrl+Shift+S", [&acts] { acts.save_as(); }, is_open, {}, {}},
             line(),
             {seat.say(tr("&Quit")), "Ctrl+Q", [&acts] { acts.close(); }, {}, {}, {}}}};
}

MenuList edit_menu(Seat& seat) {
    const auto named = [&seat](const char* alone, const char* with, std::optional<Message> (History::*name)() const) {
        return [&seat, alone, with, name] {
            const auto what = (seat.desk().history.*name)();
            return what ? seat.words().say({with, {*what}}) : seat.say(alone);
        };
    };
    return {seat.say(tr("&Edit")),
            {{seat.say(tr("&Undo")),
              "Ctrl+Z",
              [&seat] { seat.act(Action{Undo{}}); },
              [&seat] { return seat.desk().history.undo_name().has_value(); },
              {},
              named(tr("&Undo"), tr("&Undo {0}"), &History::undo_name)},
             {seat.say(tr("&Redo")),
              "Ctrl+Shift+Z",
              [&seat] { seat.act(Action{Redo{}}); },
              [&seat] { return seat.desk().history.redo_name().has_value(); },
              {},
              named(tr("&Redo"), tr("&Redo {0}"), &History::redo_name)},
             line(),
             {seat.say(tr("&Back to where I was")),
              "Alt+Left",
              [&seat] { seat.act(Action{GoBack{}}); },
              [&seat] { return !seat.desk().came_from.empty(); },
              {},
              {}}}};
}

MenuList breaker_menu(Seat& seat, FrameActs& acts) {
    MenuCommand slip{seat.say(tr("&All about this row")),
                     "Ctrl+Return",
                     [&acts] { acts.open_row_slip(); },
                     [&seat] { return seat.desk().is_open && seat.desk().spot.row.has_value(); },
                     {},
                     {}};
    return {seat.say(tr("&Breaker")),
            {std::move(slip), line(), move_command(seat, tr("Move &up"), "Alt+Up", &above),
             move_command(seat, tr("Move &down"), "Alt+Down", &below),
             move_command(seat, tr("Move a&cross"), "Alt+Right", &across), line(),
             row_command(seat, tr("&Two poles with the one below"), "Ctrl+2", &two_pole_here),
             row_command(seat, tr("&One pole again"), "Ctrl+1", &one_pole_here),
             row_command(seat, tr("T&ie with the one below"), "Ctrl+T", &tied_with_below),
             row_command(seat, tr("&Untie"), "Ctrl+Shift+T", &untied),
             row_command(seat, tr("&Spare, or in use again"), "Ctrl+R", &spare_or_in_use),
             row_command(seat, tr("&Kept off, or on again"), "Ctrl+K", &kept_off_or_on),
             row_command(seat, tr("Ta&ke out"), "Ctrl+Delete", &taken_out)}};
}

/// Something new, and its slip to fill in.
MenuCommand add_command(Seat& seat, const char* label, std::function<Added(const Desk&)> added) {
    return {seat.say(label),
            "",
            [&seat, added] {
                Added one = added(seat.desk());
                const std::size_t before = seat.desk().edits;
                seat.act(Action{Apply{std::move(one.edit)}});
                if (seat.desk().edits != before) seat.act(Action{GoTo{one.address, ""}});
            },
            [&seat] { return seat.desk().is_open; },
            {},
            {}};
}

/// The breaker of the chosen row; empty where none is.
std::string chosen_breaker(const Desk& desk) {
    const Breaker* breaker = desk.spot.row ? breaker_at(desk.survey, desk.spot.panel, *desk.spot.row) : nullptr;
    return breaker ? breaker->id : std::string();
}

MenuList survey_menu(Seat& seat) {
    return {seat.say(tr("&Survey")),
            {add_command(seat, tr("Add a &panel, fed by the chosen breaker"),
                         [](const Desk& desk) { return panel_added(desk.survey, chosen_breaker(desk)); }),
             add_command(seat, tr("Add a s&ource"), [](const Desk& desk) { return source_added(desk.survey); }),
             add_command(seat, tr("Add a &dwelling"), [](const Desk& desk) { return dwelling_added(desk.survey); }),
             line(),
             {seat.say(tr("As found is &locked: what changes a handle is planned")),
              "Ctrl+Shift+L",
              [&seat] { seat.act(Action{LockAsFound{!seat.desk().notes.plan.as_found_locked}}); },
              [&seat] { return seat.desk().is_open; },
              [&seat] { return seat.desk().notes.plan.as_found_locked; },
              {}},
             {seat.say(tr("What is planned is d&one")),
              "",
              [&seat] { seat.act(Action{CarryOutPlan{}}); },
              [&seat] { return !seat.desk().notes.plan.changes.empty(); },
              {},
              {}},
             {seat.say(tr("&Forget what is planned")),
              "",
              [&seat] { seat.act(Action{DropPlan{}}); },
              [&seat] { return !seat.desk().notes.plan.changes.empty(); },
              {},
              {}}}};
}

MenuCommand theme_command(Seat& seat, FrameActs& acts, const char* label, Theme theme) {
    return {seat.say(label),
            "",
            [&acts, theme] { acts.set_theme(theme); },
            {},
            [&seat, theme] { return seat.looks().theme() == theme; },
            {}};
}

MenuList view_menu(Seat& seat, FrameActs& acts) {
    const auto units = [&](const char* label, Units one) {
        return MenuCommand{seat.say(label),
                           "",
                           [&acts, one] { acts.set_units(one); },
                           {},
                           [&seat, one] { return seat.units() == one; },
                           {}};
    };
    const auto language = [&](const char* label, const char* code) {
        return MenuCommand{label,
                           "",
                           [&acts, code] { acts.set_language(code); },
                           {},
                           [&seat, code] { return seat.words().language() == code; },
                           {}};
    };
    return {seat.say(tr("&View")),
            {{seat.say(tr("&Larger")), "Ctrl++", [&acts] { acts.larger(); }, {}, {}, {}},
             {seat.say(tr("S&maller")), "Ctrl+-", [&acts] { acts.smaller(); }, {}, {}, {}},
             {seat.say(tr("&Usual size")), "Ctrl+0", [&acts] { acts.usual_size(); }, {}, {}, {}},
             line(),
             {seat.say(tr("Panel as a &list")),
              "Ctrl+L",
              [&acts] { acts.toggle_list(); },
              {},
              [&acts] { return acts.is_list(); },
              {}},
             line(),
             theme_command(seat, acts, tr("As the s&ystem has it"), Theme::system),
             theme_command(seat, acts, tr("&Day"), Theme::light),
             theme_command(seat, acts, tr("&Night"), Theme::dark),
             theme_command(seat, acts, tr("&High contrast"), Theme::contrast),
             line(),
             units(tr("&Feet"), Units::feet),
             units(tr("&Metres"), Units::metres),
             line(),
             language("English", "en"),
             language("Espa\u00f1ol", "es")}};
}

MenuList go_menu(Seat& seat, FrameActs& acts) {
    const auto is_open = [&seat] { return seat.desk().is_open; };
    const auto page = [&](const char* label, const char* key, JobPage one) {
        return MenuCommand{seat.say(label), key, [&acts, one] { acts.show_page(one); }, is_open, {}, {}};
    };
    return {seat.say(tr("&Go")),
            {{seat.say(tr("Panel &face")), "F2", [&acts] { acts.go_to_face(); }, is_open, {}, {}},
             page(tr("&Arrival"), "F3", JobPage::arrival),
             page(tr("&Rooms"), "F4", JobPage::rooms),
             page(tr("&Measure"), "F5", JobPage::measure),
             page(tr("&Card"), "F9", JobPage::card),
             line(),
             {seat.say(tr("F&indings")), "F7", [&acts] { acts.go_to_findings(); }, is_open, {}, {}},
             {seat.say(tr("&Next part of the window")), "F6", [&acts] { acts.next_area(); }, is_open, {}, {}}}};
}

}  // namespace

std::vector<MenuList> menu_lists(Seat& seat, FrameActs& acts) {
    return {file_menu(seat, acts),    edit_menu(seat),     survey_menu(seat),
            breaker_menu(seat, acts), go_menu(seat, acts), view_menu(seat, acts)};
}

}  // namespace doorcard
