// SPDX-License-Identifier: MIT
#pragma once
#include <functional>
#include <string>

#include "sheet/sheet.hpp"

typedef struct _cairo cairo_t;

namespace doorcard {

/// Bytes of a file.
using Bytes = std::string;

/// Paints one page; user space is points (1/72 inch) from the page's top left corner. Used for every file, the screen
/// and the printer. The paper itself is left unpainted.
void paint_page(cairo_t*, const Page&);

/// What each ink of a sheet becomes on a screen of another ground.
using InkMap = std::function<Ink(Ink)>;
/// For a screen: level and upright lines fall on whole pixels. An empty map paints as on paper.
void paint_page(cairo_t*, const Page&, const InkMap&);

/// The same bytes for the same sheet. All throw std::runtime_error where the drawing library reports an error.
Bytes paint_pdf(const Sheet&);                              ///< fonts embedded, text to be selected
Bytes paint_svg(const Sheet&);                              ///< pages stacked; text to be searched
Bytes paint_png(const Sheet&, double dots_per_inch = 200);  ///< pages stacked, on white
Bytes paint_html(const Sheet&);                             ///< a picture of each page and its words as a table
Bytes paint_text(const Sheet&);                             ///< 80 columns

}  // namespace doorcard
