// SPDX-License-Identifier: MIT
#pragma once
#include <memory>

#include "sheet/paint.hpp"

typedef struct _cairo_surface cairo_surface_t;

namespace doorcard {

struct SurfaceFreed {
    void operator()(cairo_surface_t*) const;
};
struct CairoFreed {
    void operator()(cairo_t*) const;
};
using OwnedSurface = std::unique_ptr<cairo_surface_t, SurfaceFreed>;
using OwnedCairo = std::unique_ptr<cairo_t, CairoFreed>;

/// Takes what a surface writes; `closure` is a Bytes.
int append_bytes(void* closure, const unsigned char* data, unsigned int length);

/// Throws std::runtime_error on anything but success.
void expect_success(int status);

double points_of(double mm);
/// The paper that takes all pages of a sheet one below the other, mm.
Paper stacked_paper(const Sheet&);
/// Paints the pages one below the other.
void paint_stacked(cairo_t*, const Sheet&);

/// Text for XML and HTML.
std::string escaped(const std::string&);

}  // namespace doorcard
