// SPDX-License-Identifier: MIT
// Writes one letter page of 42 rows of text and rules to the PDF file FILE with Pango and Cairo alone: what any printed
// card must at least do.
#include <cairo-pdf.h>
#include <pango/pangocairo.h>

#include <cstdio>
#include <string>

namespace {

void row(cairo_t* cairo, PangoLayout* layout, int number) {
    const double x = 36 + number % 2 * 276, y = 90 + number / 2 * 28;
    cairo_rectangle(cairo, x, y, 264, 24);
    cairo_stroke(cairo);
    const std::string text = std::to_string(number + 1) + "  20 A  Kitchen counter, east wall";
    pango_layout_set_text(layout, text.c_str(), -1);
    cairo_move_to(cairo, x + 6, y + 5);
    pango_cairo_show_layout(cairo, layout);
}

}  // namespace

int main(int count, char** arguments) {
    if (count != 2) return std::fputs("usage: bare_page FILE\n", stderr), 2;
    cairo_surface_t* surface = cairo_pdf_surface_create(arguments[1], 612, 792);
    cairo_t* cairo = cairo_create(surface);
    PangoLayout* layout = pango_cairo_create_layout(cairo);
    PangoFontDescription* font = pango_font_description_from_string("DejaVu Sans 9");
    pango_layout_set_font_description(layout, font);
    for (int number = 0; number < 42; ++number) row(cairo, layout, number);
    pango_font_description_free(font);
    g_object_unref(layout);
    cairo_destroy(cairo);
    cairo_surface_finish(surface);
    const bool written = cairo_surface_status(surface) == CAIRO_STATUS_SUCCESS;
    cairo_surface_destroy(surface);
    return written ? 0 : 1;
}
