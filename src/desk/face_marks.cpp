// SPDX-License-Identifier: MIT
#include <algorithm>

#include "desk/face_parts.hpp"

namespace doorcard {
namespace {

constexpr double frame_line = 0.53;  // 2 px

/// What lies over the rows.
class FaceMarks {
public:
    FaceMarks(FaceCanvas& canvas, FacePainting& painting)
        : canvas_(canvas), painting_(painting), drawing_(canvas.drawing), look_(canvas.look) {}

    void draw() {
        for (const PlannedMark& mark : look_.planned) draw_planned(mark);
        for (const Position position : look_.to_throw) draw_throw(position);
        for (const Position position : look_.dragged) draw_corners(position);
        if (look_.drop_target) draw_target(*look_.drop_target);
        if (look_.selected) look_.selected_has_focus ? draw_focus(*look_.selected) : draw_corners(*look_.selected);
    }

private:
    std::optional<Frame> frame_of(Position position) const {
        const auto row = canvas_.row_of(position);
        if (!row) return std::nullopt;
        return Frame{row->x - 0.4, row->y + 0.35, row->width + 0.8, row->height - 0.7};
    }
    bool is_left(Position position) const { return canvas_.run_of(position).first == 0; }

    // With the keyboard: a whole frame; without: its corners.
    void draw_focus(Position position) {
        if (const auto frame = frame_of(position)) drawing_.box(*frame, frame_line, std::nullopt, inks::accent);
    }

    void draw_corners(Position position) {
        const auto frame = frame_of(position);
        if (!frame) return;
        const double arm = std::min(3.2, frame->height * 0.3);
        for (const double x : {frame->x, frame->right()})
            for (const double y : {frame->y, frame->bottom()}) {
                const double in_x = x == frame->x ? x + arm : x - arm, in_y = y == frame->y ? y + arm : y - arm;
                drawing_.line(x, y, in_x, y, frame_line, inks::accent);
                drawing_.line(x, y, x, in_y, frame_line, inks::accent);
            }
    }

    // Where what is dragged would come: a frame, and an arrow head into it between number and words.
    void draw_target(Position position) {
        const auto frame = frame_of(position);
        if (!frame) return;
        drawing_.box(*frame, frame_line, std::nullopt, inks::accent);
        const bool left = is_left(position);
        const FaceColumns& columns = canvas_.columns();
        const double x = left ? columns.text_x(true) - 0.5 : columns.text_x(false) + columns.text_width() + 0.5;
        const double y = frame->y + frame->height / 2, back = left ? -1.9 : 1.9;
        drawing_.shape({{x + back, y - 1.2}, {x, y}, {x + back, y + 1.2}}, inks::accent);
    }

    // Its positions that hang together, dashed about words and handle; the words are the row's.
    void draw_planned(const PlannedMark& mark) {
        std::optional<Frame> whole;
        for (const Position position : mark.to)
            if (const auto frame = around_words(position)) whole = whole ? joined(*whole, *frame) : *frame;
        if (whole) drawing_.box(*whole, 0.4, std::nullopt, inks::accent, {1.7, 1.1});
    }

    std::optional<Frame> around_words(Position position) const {
        const auto row = canvas_.row_of(position);
        if (!row) return std::nullopt;
        const bool left = is_left(position);
        const double x = left ? canvas_.columns().text_x(true) - 1 : row->x;
        const double right =
            left ? row->right() : canvas_.columns().text_x(false) + canvas_.columns().text_width() + 0.6;
        return Frame{x, row->y + 0.6, right - x, row->height - 1.2};
    }

    // Of one side; a position on the other side keeps a frame of its own.
    static Frame joined(const Frame& a, const Frame& b) {
        if (a.x != b.x) return a;
        const double top = std::min(a.y, b.y);
        return {a.x, top, a.width, std::max(a.bottom(), b.bottom()) - top};
    }

    // The handle framed, an arrow head beside it the way it is to go: outward is off.
    void draw_throw(Position position) {
        const auto [side, run] = canvas_.run_of(position);
        const auto row = canvas_.row_of(position);
        if (!row || !run) return;
        const bool left = side == 0;
        const Frame handle = painting_.device_frame(left, row->y, row->height);
        drawing_.box({handle.x - 0.35, handle.y - 0.35, handle.width + 0.7, handle.height + 0.7}, 0.75, std::nullopt,
                     inks::accent);
        const bool is_off = std::ranges::find(canvas_.face.off, run->entry) != canvas_.face.off.end();
        const bool to_right = left != is_off;
        const double middle = left ? handle.x - throw_mark / 2 - 0.2 : handle.right() + throw_mark / 2 + 0.2;
        const double x = middle + (to_right ? 0.95 : -0.95);
        const double y = row->y + row->height / 2, way = to_right ? -1.9 : 1.9;
        drawing_.shape({{x, y}, {x + way, y - 1.2}, {x + way, y + 1.2}}, inks::accent);
    }

    FaceCanvas& canvas_;
    FacePainting& painting_;
    Drawing& drawing_;
    const FaceLook& look_;
};

}  // namespace

void draw_face_marks(FaceCanvas& canvas, FacePainting& painting) { FaceMarks(canvas, painting).draw(); }

}  // namespace doorcard
