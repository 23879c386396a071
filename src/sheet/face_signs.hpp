// SPDX-License-Identifier: MIT
#pragma once
#include "sheet/drawing.hpp"

// The pictures of a panel as it hangs: handles as they stand, and the signs beside them. They carry meaning without
// colour.
namespace doorcard {

enum class HandleState { on, off, spare };

/// A device as it is drawn: box and lever, a fuse without a lever.
struct Handle {
    HandleState state = HandleState::on;
    bool on_left = true;  ///< left of the legs: on is toward them
    bool test_button = false;
    bool fuse = false;
    std::string rating;  ///< "20"; a dash where not known
    Ink ink = inks::text;
};

constexpr double lever_width = 3.4;

void draw_handle(Drawing&, const Frame&, const Handle&, double rating_points = 10, const std::string& off_word = "OFF");
/// Where the lever's middle lies.
double lever_x(const Frame&, const Handle&);
/// An empty position that somebody looked at.
void draw_space(Drawing&, const Frame&);
constexpr double sign_height = 2.6;  // mm
/// Boxed question mark: only claimed.
void draw_claimed(Drawing&, double x, double y);
/// An arrow into a bus, or out of it, 5 mm wide; the bus is at the right where `bus_right`.
void draw_arrow(Drawing&, double x, double y, bool into_bus, bool bus_right);
/// An arrow head at (x, y), pointing right or left.
void arrow_head(Drawing&, double x, double y, bool to_right, double size = 1.9);
/// A bracket that hangs in the margin from y1 to y2, its teeth toward the content at `x`.
void draw_bracket(Drawing&, double x, double y1, double y2, bool on_left, double depth, bool broken,
                  Ink ink = inks::text);

}  // namespace doorcard
