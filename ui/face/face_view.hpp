// SPDX-License-Identifier: MIT
#pragma once
#include <optional>

#include "desk/face_picture.hpp"
#include "ui/painted.hpp"
#include "ui/seat.hpp"

class wxTextCtrl;

namespace doorcard {

/// The panel as it hangs, to be walked, typed on and rearranged. Whatever the mouse does, a key does too.
class FaceView final : public Painted {
public:
    FaceView(wxWindow* parent, Seat&);
    void look();
    /// Opens the row's words for typing; with `begun` they are replaced by it.
    void edit_row(const std::string& begun = {});
    /// A list from the clipboard becomes rows of the panel.
    void paste_list(const std::string&);
    bool is_editing() const { return editing_.has_value(); }

private:
    void draw(cairo_t*) override;
    void lay_out();
    void show_row();
    const FaceRowPlace* place_of(Position) const;
    Position row_or_first() const;

    void on_key(wxKeyEvent&);
    bool walk(int key);
    void on_char(wxKeyEvent&);
    void choose(std::optional<Position>);
    void step(bool down);

    void finish_edit(bool take);
    void place_editor();
    void on_editor_key(wxKeyEvent&);

    void on_press(wxMouseEvent&);
    void on_drag(wxMouseEvent&);
    void on_release(wxMouseEvent&);
    std::optional<Position> under(const wxMouseEvent&) const;
    void say_row();

    Seat& seat_;
    std::optional<FaceFacts> facts_;
    FacePicture picture_;
    wxTextCtrl* editor_ = nullptr;
    std::optional<Position> editing_, pressed_, target_;
    wxPoint pressed_at_;
};

}  // namespace doorcard
