// SPDX-License-Identifier: MIT
#include "sheet/face_signs.hpp"

#include <algorithm>

namespace doorcard {
namespace {

constexpr double inset = 0.9;  // between box and lever

// The lever lies toward the legs when on, outward otherwise.
bool lever_right(const Handle& handle) { return handle.on_left == (handle.state == HandleState::on); }

double lever_of(const Frame& frame, const Handle& handle) {
    if (handle.state != HandleState::off) return std::min(lever_width, frame.width * 0.3);
    return frame.width * (frame.width < 12 ? 0.48 : 0.44);  // room for the word in it
}

Frame lever_frame(const Frame& frame, const Handle& handle) {
    const double gap = std::min(inset, frame.height * 0.14);
    const double width = lever_of(frame, handle);
    const double x = lever_right(handle) ? frame.right() - gap - width : frame.x + gap;
    return {x, frame.y + gap, width, frame.height - 2 * gap};
}

// Hollow, struck, with the word in it: nobody can take it for a handle that is on.
void draw_off(Drawing& drawing, const Frame& lever, const Handle& handle, const std::string& word) {
    drawing.box(lever, lines::outline, std::nullopt, handle.ink);
    const TypeStyle style = fitting(word, {6.5, true}, lever.width - 0.5, {6.5, 6, 5.5, 5});
    const double middle = lever.y + lever.height / 2;
    const double half = cap_height(style.points) / 2;
    drawing.text({lever.x + 0.2, middle - half - 0.4, lever.width - 0.4, 2 * half + 0.8}, middle + half, word, style,
                 Align::middle, handle.ink);
    const double room = half + 0.4;
    const double rise = std::min(lever.height / 2, room + 1.3);
    if (rise <= room + 0.15) return;
    const double slope = lever.width / (2 * rise);
    const double x = lever.x + lever.width / 2;
    drawing.line(x + slope * room, middle - room, x + slope * rise, middle - rise, lines::outline, handle.ink);
    drawing.line(x - slope * room, middle + room, x - slope * rise, middle + rise, lines::outline, handle.ink);
}

void draw_fuse(Drawing& drawing, const Frame& lever, const Handle& handle) {
    const double x = lever.x + lever.width / 2;
    const double height = std::min(lever.height, 5.6);
    const double top = lever.y + (lever.height - height) / 2;
    drawing.line(x, top, x, top + height, lines::outline, handle.ink);
    drawing.box({x - 0.85, top + height * 0.2, 1.7, height * 0.6}, lines::outline, std::nullopt, handle.ink);
}

void draw_lever(Drawing& drawing, const Frame& lever, const Handle& handle) {
    if (handle.fuse) return draw_fuse(drawing, lever, handle);
    if (handle.state == HandleState::spare) return drawing.box(lever, lines::row, std::nullopt, handle.ink);
    drawing.fill(lever, handle.ink);
    if (handle.test_button)
        drawing.dot(lever.x + lever.width / 2, lever.y + lever.height / 2, std::min(lever.width, lever.height) * 0.29,
                    inks::paper);
}

}  // namespace

double lever_x(const Frame& frame, const Handle& handle) {
    const Frame lever = lever_frame(frame, handle);
    return lever.x + lever.width / 2;
}

void draw_handle(Drawing& drawing, const Frame& frame, const Handle& handle, double rating_points,
                 const std::string& off_word) {
    drawing.box(frame, lines::outline, std::nullopt, handle.ink);
    const Frame lever = lever_frame(frame, handle);
    if (handle.state == HandleState::off)
        draw_off(drawing, lever, handle, off_word);
    else
        draw_lever(drawing, lever, handle);
    const bool right = lever_right(handle);
    const Frame room{right ? frame.x + 0.3 : lever.right() + 0.2, frame.y,
                     right ? lever.x - frame.x - 0.5 : frame.right() - lever.right() - 0.5, frame.height};
    const TypeStyle style = fitting(handle.rating, {rating_points, true}, room.width,
                                    {rating_points, rating_points * 0.9, rating_points * 0.8, rating_points * 0.7});
    drawing.text(room, frame.y + frame.height / 2 + cap_height(style.points) / 2, handle.rating, style, Align::middle,
                 handle.ink);
}

void draw_space(Drawing& drawing, const Frame& frame) {
    drawing.box(frame, lines::row, std::nullopt, inks::text, {0.9, 0.75});
}

void draw_claimed(Drawing& drawing, double x, double y) {
    drawing.box({x + 0.14, y + 0.14, sign_height - 0.28, sign_height - 0.28}, 0.28);
    drawing.text({x, y, sign_height, sign_height}, y + sign_height / 2 + cap_height(6.5) / 2, "?", {6.5, true},
                 Align::middle);
}

void arrow_head(Drawing& drawing, double x, double y, bool to_right, double size) {
    const double back = to_right ? -size : size;
    drawing.shape({{x, y}, {x + back, y - size * 0.42}, {x + back, y + size * 0.42}});
}

void draw_arrow(Drawing& drawing, double x, double y, bool into_bus, bool bus_right) {
    constexpr double width = 5, bar = 0.95;
    const double middle = y + sign_height / 2;
    drawing.fill({bus_right ? x + width - bar : x, y, bar, sign_height});
    const double near = bus_right ? x + width - bar - 0.15 : x + bar + 0.15;
    const double far = bus_right ? x : x + width;
    const double tip = into_bus ? near : far;
    const bool to_right = bus_right == into_bus;
    arrow_head(drawing, tip, middle, to_right);
    const double tail = into_bus ? far : near;
    drawing.line(tail, middle, tip + (to_right ? -1.5 : 1.5), middle, 0.45);
}

void draw_bracket(Drawing& drawing, double x, double y1, double y2, bool on_left, double depth, bool broken, Ink ink) {
    const double back = on_left ? x - depth : x + depth;
    const std::vector<double> dashes = broken ? std::vector<double>{1.3, 0.8} : std::vector<double>{};
    drawing.line(x, y1, back, y1, lines::heavy, ink);
    drawing.line(x, y2, back, y2, lines::heavy, ink);
    drawing.line(back, y1 - lines::heavy / 2, back, y2 + lines::heavy / 2, lines::heavy, ink, dashes);
}

}  // namespace doorcard
