// SPDX-License-Identifier: MIT
#include <cairo-svg.h>
#include <fmt/format.h>

#include <cctype>

#include "sheet/surfaces.hpp"
#include "sheet/type_case.hpp"

namespace doorcard {
namespace {

cairo_status_t write(void* closure, const unsigned char* data, unsigned int length) {
    return static_cast<cairo_status_t>(append_bytes(closure, data, length));
}

// The library numbers its surfaces through the life of the process: the same drawing must give the same bytes.
Bytes without_surface_numbers(const Bytes& svg) {
    constexpr std::string_view id = "\"surface";
    Bytes plain;
    std::size_t from = 0;
    for (std::size_t at = svg.find(id); at != Bytes::npos; at = svg.find(id, from)) {
        const std::size_t digits = at + id.size();
        plain.append(svg, from, digits - from);
        from = digits;
        while (from < svg.size() && std::isdigit(static_cast<unsigned char>(svg[from])) != 0) ++from;
        if (from > digits) plain += '1';
    }
    return plain.append(svg, from);
}

std::string text_element(const TextMark& mark, double down) {
    const char* anchor = mark.align == Align::left ? "start" : mark.align == Align::right ? "end" : "middle";
    return fmt::format(
        "<text x=\"{:.3f}\" y=\"{:.3f}\" font-size=\"{:.3f}\" text-anchor=\"{}\" textLength=\"{:.3f}\">{}</text>\n",
        points_of(mark.x), points_of(mark.baseline + down), mark.style.points, anchor,
        points_of(text_width(mark.text, mark.style)), escaped(mark.text));
}

// The drawing holds outlines of letters: the same words, unseen, lie over them to be found, selected and read aloud.
std::string words_of_pages(const Sheet& sheet) {
    std::string words =
        fmt::format("<title>{}</title>\n<g fill-opacity=\"0\" font-family=\"DejaVu Sans\">\n", escaped(sheet.title));
    double down = 0;
    for (const Page& page : sheet.pages) {
        for (const Mark& mark : page.marks)
            if (const auto* text = std::get_if<TextMark>(&mark)) words += text_element(*text, down);
        down += page.paper.height;
    }
    return words + "</g>\n";
}

}  // namespace

Bytes paint_svg(const Sheet& sheet) {
    const Paper whole = stacked_paper(sheet);
    Bytes bytes;
    {
        const OwnedSurface surface(
            cairo_svg_surface_create_for_stream(write, &bytes, points_of(whole.width), points_of(whole.height)));
        const OwnedCairo cairo(cairo_create(surface.get()));
        paint_stacked(cairo.get(), sheet);
        expect_success(cairo_status(cairo.get()));
        cairo_surface_finish(surface.get());
        expect_success(cairo_surface_status(surface.get()));
    }
    Bytes svg = without_surface_numbers(bytes);
    svg.insert(svg.rfind("</svg>"), words_of_pages(sheet));
    return svg;
}

}  // namespace doorcard
