// SPDX-License-Identifier: MIT
#include "sheet/pixels.hpp"

#include <cairo.h>

#include <algorithm>
#include <cmath>

namespace doorcard {

Pixels::Pixels(cairo_t* cairo, bool is_screen) : is_screen_(is_screen) {
    cairo_matrix_t to_device;
    cairo_get_matrix(cairo, &to_device);
    double dense_x = 1, dense_y = 1;
    cairo_surface_get_device_scale(cairo_get_group_target(cairo), &dense_x, &dense_y);
    scale_x_ = to_device.xx * dense_x;
    scale_y_ = to_device.yy * dense_y;
    shift_x_ = to_device.x0 * dense_x;
    shift_y_ = to_device.y0 * dense_y;
    is_screen_ = is_screen && to_device.xy == 0 && to_device.yx == 0 && scale_x_ > 0 && scale_y_ > 0;
}

double Pixels::stroke(double width) const { return is_screen_ ? whole(width) / scale_x_ : points(width); }

double Pixels::whole(double width) const { return std::max(1.0, std::round(points(width) * scale_x_)); }

double Pixels::edge(double mm, double scale, double shift) {
    return (std::round(points(mm) * scale + shift) - shift) / scale;
}

double Pixels::middle(double mm, double width, double scale, double shift) const {
    const double half = std::fmod(whole(width), 2) == 0 ? 0 : 0.5;
    return (std::round(points(mm) * scale + shift - half) + half - shift) / scale;
}

}  // namespace doorcard
