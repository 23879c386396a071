// SPDX-License-Identifier: MIT
#include <cairo.h>

#include <cmath>

#include "sheet/surfaces.hpp"

namespace doorcard {
namespace {

cairo_status_t write(void* closure, const unsigned char* data, unsigned int length) {
    return static_cast<cairo_status_t>(append_bytes(closure, data, length));
}

}  // namespace

Bytes paint_png(const Sheet& sheet, double dots_per_inch) {
    const double scale = dots_per_inch / 72;
    const Paper whole = stacked_paper(sheet);
    const auto dots = [&](double mm) { return static_cast<int>(std::ceil(points_of(mm) * scale - 1e-6)); };
    const OwnedSurface surface(cairo_image_surface_create(CAIRO_FORMAT_RGB24, dots(whole.width), dots(whole.height)));
    const OwnedCairo cairo(cairo_create(surface.get()));
    cairo_set_source_rgb(cairo.get(), 1, 1, 1);
    cairo_paint(cairo.get());
    cairo_scale(cairo.get(), scale, scale);
    paint_stacked(cairo.get(), sheet);
    expect_success(cairo_status(cairo.get()));
    Bytes bytes;
    expect_success(cairo_surface_write_to_png_stream(surface.get(), write, &bytes));
    return bytes;
}

}  // namespace doorcard
