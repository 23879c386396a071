// SPDX-License-Identifier: MIT
#include <cairo.h>
#include <pango/pangocairo.h>

#include "sheet/paint.hpp"
#include "sheet/pango_type.hpp"
#include "sheet/type_case.hpp"

namespace doorcard {
namespace {

double pt(double mm) { return mm / mm_per_point; }

class Painting {
public:
    Painting(cairo_t* cairo, const InkMap& inks) : cairo_(cairo), inks_(inks) {}

    void operator()(const LineMark& mark) const {
        cairo_move_to(cairo_, pt(mark.x1), pt(mark.y1));
        cairo_line_to(cairo_, pt(mark.x2), pt(mark.y2));
        stroke(mark.width, mark.ink, mark.dashes);
    }
    void operator()(const BoxMark& mark) const {
        cairo_rectangle(cairo_, pt(mark.x), pt(mark.y), pt(mark.width), pt(mark.height));
        fill_and_stroke(mark.fill, mark.ink, mark.line, mark.dashes);
    }
    void operator()(const PathMark& mark) const {
        for (const auto& [x, y] : mark.points) cairo_line_to(cairo_, pt(x), pt(y));
        if (mark.closed) cairo_close_path(cairo_);
        fill_and_stroke(mark.fill, mark.ink, mark.line, {});
    }
    void operator()(const CircleMark& mark) const {
        constexpr double whole_turn = 6.283185307179586;
        cairo_new_sub_path(cairo_);
        cairo_arc(cairo_, pt(mark.x), pt(mark.y), pt(mark.radius), 0, whole_turn);
        fill_and_stroke(mark.fill, mark.ink, mark.line, {});
    }
    void operator()(const TextMark& mark) const {
        if (mark.text.empty()) return;
        const OwnedLayout layout = shaped(mark.text, mark.style);
        const double width = text_width(mark.text, mark.style);
        const double back = mark.align == Align::left ? 0 : mark.align == Align::right ? width : width / 2;
        const double ascent = pango_layout_get_baseline(layout.get()) / static_cast<double>(PANGO_SCALE);
        set(mark.ink);
        cairo_move_to(cairo_, pt(mark.x - back), pt(mark.baseline) - ascent);
        pango_cairo_show_layout(cairo_, layout.get());
        cairo_new_path(cairo_);
    }

private:
    void set(const Ink& of_sheet) const {
        const Ink ink = inks_ ? inks_(of_sheet) : of_sheet;
        cairo_set_source_rgb(cairo_, ink.red, ink.green, ink.blue);
    }

    void stroke(double width, const Ink& ink, const std::vector<double>& dashes) const {
        std::vector<double> points;
        points.reserve(dashes.size());
        for (const double dash : dashes) points.push_back(pt(dash));
        cairo_set_dash(cairo_, points.data(), static_cast<int>(points.size()), 0);
        cairo_set_line_width(cairo_, pt(width));
        set(ink);
        cairo_stroke(cairo_);
    }

    void fill_and_stroke(const std::optional<Ink>& fill, const std::optional<Ink>& ink, double line,
                         const std::vector<double>& dashes) const {
        if (fill) {
            set(*fill);
            cairo_fill_preserve(cairo_);
        }
        if (ink && line > 0)
            stroke(line, *ink, dashes);
        else
            cairo_new_path(cairo_);
    }

    cairo_t* cairo_;
    const InkMap& inks_;
};

}  // namespace

void paint_page(cairo_t* cairo, const Page& page) { paint_page(cairo, page, {}); }

void paint_page(cairo_t* cairo, const Page& page, const InkMap& inks) {
    cairo_save(cairo);
    cairo_set_line_join(cairo, CAIRO_LINE_JOIN_MITER);
    cairo_set_line_cap(cairo, CAIRO_LINE_CAP_BUTT);
    const Painting painting(cairo, inks);
    for (const Mark& mark : page.marks) std::visit(painting, mark);
    cairo_restore(cairo);
}

}  // namespace doorcard
