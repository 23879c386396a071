// SPDX-License-Identifier: MIT
#include "ui/face/face_view.hpp"

#include <cairo.h>
#include <wx/textctrl.h>

#include <algorithm>
#include <cmath>

#include "desk/face_gestures.hpp"
#include "desk/pasted_list.hpp"
#include "desk/plan_gestures.hpp"
#include "desk/screen_inks.hpp"
#include "desk/typed_breaker.hpp"
#include "sheet/paint.hpp"
#include "ui/accessible.hpp"
#include "ui/clipboard.hpp"
#include "ui/text.hpp"

namespace doorcard {
namespace {

constexpr double points_per_mm = 72 / 25.4;
constexpr int drag_begins = 6;  // pixels

bool is_walking(int key) {
    return key == WXK_UP || key == WXK_DOWN || key == WXK_LEFT || key == WXK_RIGHT || key == WXK_HOME || key == WXK_END;
}

}  // namespace

FaceView::FaceView(wxWindow* parent, Seat& seat) : Painted(parent, seat.looks()), seat_(seat) {
    editor_ = new wxTextCtrl(this, wxID_ANY, "", wxDefaultPosition, wxDefaultSize, wxTE_PROCESS_ENTER);
    editor_->Hide();
    name_for_readers(editor_, seat.say(tr("Breaker: rating, then what it feeds")));
    editor_->Bind(wxEVT_KEY_DOWN, &FaceView::on_editor_key, this);
    editor_->Bind(wxEVT_TEXT_ENTER, [this](wxCommandEvent&) { finish_edit(true); });
    editor_->Bind(wxEVT_TEXT_PASTE, [this](wxClipboardTextEvent& event) {
        const std::string text = clipboard_text();
        if (!looks_like_list(text)) return event.Skip();
        finish_edit(false);
        paste_list(text);
    });
    editor_->Bind(wxEVT_KILL_FOCUS, [this](wxFocusEvent& event) {
        event.Skip();
        CallAfter([this] {
            if (editing_ && !editor_->HasFocus()) finish_edit(true);
        });
    });
    Bind(wxEVT_KEY_DOWN, &FaceView::on_key, this);
    Bind(wxEVT_CHAR, &FaceView::on_char, this);
    Bind(wxEVT_LEFT_DOWN, &FaceView::on_press, this);
    Bind(wxEVT_LEFT_DCLICK, [this](wxMouseEvent&) { edit_row(); });
    Bind(wxEVT_MOTION, &FaceView::on_drag, this);
    Bind(wxEVT_LEFT_UP, &FaceView::on_release, this);
    Bind(wxEVT_MOUSE_CAPTURE_LOST, [this](wxMouseCaptureLostEvent&) { pressed_ = target_ = std::nullopt; });
    const auto redraw = [this](auto& event) {
        event.Skip();
        lay_out();
    };
    Bind(wxEVT_SIZE, [redraw](wxSizeEvent& event) { redraw(event); });
    Bind(wxEVT_SET_FOCUS, [redraw](wxFocusEvent& event) { redraw(event); });
    Bind(wxEVT_KILL_FOCUS, [redraw](wxFocusEvent& event) { redraw(event); });
    name_for_readers(this, seat.say(tr("Panel face")));
}

void FaceView::look() {
    const auto panel = shown_panel(seat_.desk());
    facts_.reset();
    if (panel) facts_.emplace(face_facts(seat_.desk().assessed, *panel));
    lay_out();
    show_row();
    say_row();
}

void FaceView::lay_out() {
    if (!facts_) {
        picture_ = {};
        return Refresh();
    }
    const double mm = pixels_per_mm();
    const wxSize seen = GetClientSize();
    FaceLook look;
    look.width = std::max(90.0, (seen.x - 4) / mm);
    look.height = seen.y / mm;
    look.least_row = 28 / mm * looks().scale();
    look.selected = seat_.desk().spot.row;
    look.selected_has_focus = HasFocus() || editor_->HasFocus();
    look.state = seat_.words().say(standing_of(seat_.desk()));
    look.planned = planned_marks(seat_.desk().survey, seat_.desk().notes.plan, seat_.desk().spot.panel, seat_.words());
    look.drop_target = target_;
    if (target_ && pressed_) look.dragged = {*pressed_};
    picture_ = face_picture(*facts_, look, seat_.words());
    SetVirtualSize(-1, static_cast<int>(std::ceil(picture_.page.paper.height * mm)));
    place_editor();
    Refresh();
}

void FaceView::draw(cairo_t* cairo) {
    const double scale = pixels_per_mm() / points_per_mm;
    cairo_scale(cairo, scale, scale);
    paint_page(cairo, picture_.page, screen_inks(looks().ground()));
}

const FaceRowPlace* FaceView::place_of(Position position) const {
    const auto found = std::ranges::find(picture_.places, position, &FaceRowPlace::position);
    return found == picture_.places.end() ? nullptr : &*found;
}

Position FaceView::row_or_first() const {
    if (const auto& row = seat_.desk().spot.row) return *row;
    return picture_.places.empty() ? Position{1, ' '} : picture_.places.front().position;
}

void FaceView::choose(std::optional<Position> row) {
    if (!row) return;
    seat_.act(Action{ChooseRow{row}});
    show_row();
    say_row();
}

// Scrolls until the chosen row is seen.
void FaceView::show_row() {
    const FaceRowPlace* place = seat_.desk().spot.row ? place_of(*seat_.desk().spot.row) : nullptr;
    if (!place) return;
    const double mm = pixels_per_mm();
    const int top = static_cast<int>(place->row.y * mm), bottom = static_cast<int>(place->row.bottom() * mm);
    const int seen = GetViewStart().y, height = GetClientSize().y;
    if (top < seen) Scroll(-1, std::max(0, top - 8));
    if (bottom > seen + height) Scroll(-1, bottom - height + 8);
}

// What a screen reader hears when the row changes: the row of the plain list.
void FaceView::say_row() {
    const auto& row = seat_.desk().spot.row;
    name_for_readers(this, facts_ && row ? face_row_words(*facts_, *row, seat_.words()) : seat_.say(tr("Panel face")));
}

bool FaceView::walk(int key) {
    const Survey& survey = seat_.desk().survey;
    const std::string& panel = seat_.desk().spot.panel;
    const Position at = row_or_first();
    if (!is_walking(key)) return false;
    if (!seat_.desk().spot.row) return choose(at), true;
    switch (key) {
        case WXK_UP:
            return choose(above(survey, panel, at)), true;
        case WXK_DOWN:
            return choose(below(survey, panel, at)), true;
        case WXK_LEFT:
        case WXK_RIGHT:
            return choose(across(survey, panel, at)), true;
        case WXK_HOME:
            return choose(picture_.places.front().position), true;
        case WXK_END:
            return choose(picture_.places.back().position), true;
        default:
            return false;
    }
}

void FaceView::on_key(wxKeyEvent& event) {
    const int key = event.GetKeyCode();
    if (event.ControlDown() && key == 'V') return paste_list(clipboard_text());
    if (picture_.places.empty() || event.ControlDown() || event.AltDown()) return event.Skip();
    if (walk(key)) return;
    if (key == WXK_RETURN || key == WXK_NUMPAD_ENTER || key == WXK_F2) return edit_row();
    event.Skip();
}

// What is typed on a row opens it for typing.
void FaceView::on_char(wxKeyEvent& event) {
    const wxChar typed = event.GetUnicodeKey();
    if (picture_.places.empty() || event.ControlDown() || event.AltDown() || typed < ' ' || typed == WXK_DELETE)
        return event.Skip();
    edit_row(utf8(wxString(typed)));
}

void FaceView::paste_list(const std::string& text) {
    auto pasted = pasted_list(seat_.desk().survey, seat_.desk().spot.panel, text);
    if (!pasted) return seat_.act(Action{Refuse{std::move(pasted.error())}});
    const std::size_t before = seat_.desk().edits;
    const auto rows = static_cast<double>(pasted->rows), refused = static_cast<double>(pasted->refused.size());
    seat_.act(Action{Apply{std::move(pasted->edit)}});
    if (seat_.desk().edits == before) return;
    seat_.act(Action{Tell{pasted->refused.empty() ? Said::Kind::done : Said::Kind::refused,
                          {tr("{0:.0f} rows put in, {1:.0f} not understood"), {rows, refused}},
                          std::move(pasted->refused)}});
}

void FaceView::edit_row(const std::string& begun) {
    if (picture_.places.empty()) return;
    if (!seat_.desk().spot.row) seat_.act(Action{ChooseRow{row_or_first()}});
    editing_ = row_or_first();
    show_row();
    editor_->ChangeValue(
        wide(begun.empty() ? typed_text_of(seat_.desk().survey, seat_.desk().spot.panel, *editing_) : begun));
    place_editor();
    editor_->Show();
    editor_->SetFocus();
    begun.empty() ? editor_->SelectAll() : editor_->SetInsertionPointEnd();
}

void FaceView::place_editor() {
    const FaceRowPlace* place = editing_ ? place_of(*editing_) : nullptr;
    if (!place) return;
    const double mm = pixels_per_mm();
    const wxPoint corner =
        CalcScrolledPosition(wxPoint(static_cast<int>(place->text.x * mm), static_cast<int>(place->row.y * mm)));
    const int height = std::max(looks().pixels(36), static_cast<int>(place->row.height * mm));
    editor_->SetSize(corner.x, corner.y, static_cast<int>(place->text.width * mm), height);
}

void FaceView::on_editor_key(wxKeyEvent& event) {
    switch (event.GetKeyCode()) {
        case WXK_ESCAPE:
            return finish_edit(false);
        case WXK_UP:
        case WXK_DOWN: {
            const bool down = event.GetKeyCode() == WXK_DOWN;
            finish_edit(true);
            if (!editing_) walk(down ? WXK_DOWN : WXK_UP);
            return;
        }
        default:
            event.Skip();
    }
}

// Takes what was typed and goes on down the side; what is refused stays open, with the reason in the strip.
void FaceView::finish_edit(bool take) {
    if (!editing_) return;
    const Position at = *editing_;
    const std::string typed = utf8(editor_->GetValue());
    const bool had_focus = editor_->HasFocus();
    const auto close = [&] {
        editing_.reset();
        editor_->Hide();
        if (had_focus) SetFocus();
    };
    const Desk& desk = seat_.desk();
    if (!take || typed == typed_text_of(desk.survey, desk.spot.panel, at)) return close();
    auto entered = typed_breaker(desk.survey, desk.spot.panel, at, typed);
    if (!entered) return seat_.act(Action{Refuse{std::move(entered.error())}});
    const std::size_t before = desk.edits;
    const Position next = entered->next;
    seat_.act(Action{Apply{std::move(entered->edit)}});
    if (seat_.desk().edits == before) return;
    close();
    choose(next);
}

std::optional<Position> FaceView::under(const wxMouseEvent& event) const {
    const wxPoint at = scrolled(event.GetPosition());
    return picture_.at(at.x / pixels_per_mm(), at.y / pixels_per_mm());
}

void FaceView::on_press(wxMouseEvent& event) {
    SetFocus();
    pressed_ = under(event);
    pressed_at_ = event.GetPosition();
    if (pressed_) choose(pressed_);
}

void FaceView::on_drag(wxMouseEvent& event) {
    const wxPoint way = event.GetPosition() - pressed_at_;
    if (!pressed_ || !event.LeftIsDown() || std::abs(way.x) + std::abs(way.y) < drag_begins) return;
    if (!HasCapture()) CaptureMouse();
    const auto over = under(event);
    if (over == target_) return;
    target_ = over == pressed_ ? std::nullopt : over;
    lay_out();
}

void FaceView::on_release(wxMouseEvent&) {
    if (HasCapture()) ReleaseMouse();
    const auto from = pressed_, to = target_;
    pressed_ = target_ = std::nullopt;
    if (!from || !to) return;
    seat_.act(moved(seat_.desk(), *from, *to));
    choose(to);
}

}  // namespace doorcard
