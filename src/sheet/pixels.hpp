// SPDX-License-Identifier: MIT
#pragma once

typedef struct _cairo cairo_t;

namespace doorcard {

/// Where level and upright edges come to lie, mm to points of the user space: on a screen on whole pixels, a stroke as
/// wide as whole pixels and at least one; on paper as they are. A screen that is turned has no such pixels.
class Pixels {
public:
    Pixels(cairo_t*, bool is_screen);

    double stroke(double width) const;
    double x(double mm) const { return is_screen_ ? edge(mm, scale_x_, shift_x_) : points(mm); }
    double y(double mm) const { return is_screen_ ? edge(mm, scale_y_, shift_y_) : points(mm); }
    /// The middle of a stroke of this width.
    double x(double mm, double width) const { return is_screen_ ? middle(mm, width, scale_x_, shift_x_) : points(mm); }
    double y(double mm, double width) const { return is_screen_ ? middle(mm, width, scale_y_, shift_y_) : points(mm); }

private:
    static double points(double mm) { return mm * 72 / 25.4; }
    static double edge(double mm, double scale, double shift);
    double middle(double mm, double width, double scale, double shift) const;
    double whole(double width) const;  ///< pixels

    bool is_screen_;
    double scale_x_ = 1, scale_y_ = 1, shift_x_ = 0, shift_y_ = 0;  ///< points to pixels
};

}  // namespace doorcard
