// SPDX-License-Identifier: MIT
#include "sheet/surfaces.hpp"

#include <cairo.h>

#include <algorithm>
#include <stdexcept>

#include "sheet/type_case.hpp"

namespace doorcard {

void SurfaceFreed::operator()(cairo_surface_t* surface) const { cairo_surface_destroy(surface); }
void CairoFreed::operator()(cairo_t* cairo) const { cairo_destroy(cairo); }

int append_bytes(void* closure, const unsigned char* data, unsigned int length) {
    static_cast<Bytes*>(closure)->append(reinterpret_cast<const char*>(data), length);
    return CAIRO_STATUS_SUCCESS;
}

void expect_success(int status) {
    if (status != CAIRO_STATUS_SUCCESS)
        throw std::runtime_error(cairo_status_to_string(static_cast<cairo_status_t>(status)));
}

double points_of(double mm) { return mm / mm_per_point; }

Paper stacked_paper(const Sheet& sheet) {
    Paper whole{0, 0};
    for (const Page& page : sheet.pages) {
        whole.width = std::max(whole.width, page.paper.width);
        whole.height += page.paper.height;
    }
    return whole;
}

void paint_stacked(cairo_t* cairo, const Sheet& sheet) {
    cairo_save(cairo);
    for (const Page& page : sheet.pages) {
        paint_page(cairo, page);
        cairo_translate(cairo, 0, points_of(page.paper.height));
    }
    cairo_restore(cairo);
}

std::string escaped(const std::string& text) {
    std::string safe;
    for (const char c : text) {
        if (c == '&')
            safe += "&amp;";
        else if (c == '<')
            safe += "&lt;";
        else if (c == '>')
            safe += "&gt;";
        else if (c == '"')
            safe += "&quot;";
        else
            safe += c;
    }
    return safe;
}

}  // namespace doorcard
