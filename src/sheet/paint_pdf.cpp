// SPDX-License-Identifier: MIT
#include <cairo-pdf.h>

#include "sheet/surfaces.hpp"

namespace doorcard {
namespace {

cairo_status_t write(void* closure, const unsigned char* data, unsigned int length) {
    return static_cast<cairo_status_t>(append_bytes(closure, data, length));
}

void describe(cairo_surface_t* surface, const Sheet& sheet) {
    cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_TITLE, sheet.title.c_str());
    cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_AUTHOR, sheet.author.c_str());
    cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_CREATOR, "doorcard");
    cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_CREATE_DATE, sheet.created.c_str());
    cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_MOD_DATE, sheet.created.c_str());
}

void outline(cairo_surface_t* surface, const Sheet& sheet) {
    for (std::size_t i = 0; i < sheet.pages.size(); ++i)
        cairo_pdf_surface_add_outline(surface, CAIRO_PDF_OUTLINE_ROOT, sheet.pages[i].title.c_str(),
                                      ("page=" + std::to_string(i + 1)).c_str(),
                                      static_cast<cairo_pdf_outline_flags_t>(0));
}

}  // namespace

Bytes paint_pdf(const Sheet& sheet) {
    Bytes bytes;
    const OwnedSurface surface(cairo_pdf_surface_create_for_stream(write, &bytes, 595, 842));
    describe(surface.get(), sheet);
    const OwnedCairo cairo(cairo_create(surface.get()));
    for (const Page& page : sheet.pages) {
        cairo_pdf_surface_set_size(surface.get(), points_of(page.paper.width), points_of(page.paper.height));
        cairo_pdf_surface_set_page_label(surface.get(), page.title.c_str());
        paint_page(cairo.get(), page);
        cairo_show_page(cairo.get());
    }
    outline(surface.get(), sheet);
    expect_success(cairo_status(cairo.get()));
    cairo_surface_finish(surface.get());
    expect_success(cairo_surface_status(surface.get()));
    return bytes;
}

}  // namespace doorcard
