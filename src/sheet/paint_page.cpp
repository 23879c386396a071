// SPDX-License-Identifier: MIT
#include <cairo.h>
#include <pango/pangocairo.h>

#include "sheet/paint.hpp"
#include "sheet/pango_type.hpp"
#include "sheet/pixels.hpp"
#include "sheet/type_case.hpp"

namespace doorcard {
namespace {

double pt(double mm) { return mm / mm_per_point; }

class Painting {
public:
    Painting(cairo_t* cairo, const InkMap& inks) : cairo_(cairo), inks_(inks), pixels_(cairo, inks != nullptr) {}

    void operator()(const LineMark& mark) const {
        const bool is_upright = mark.x1 == mark.x2, is_level = mark.y1 == mark.y2;
        const auto x = [&](double mm) {
            return is_upright ? pixels_.x(mm, mark.width) : is_level ? pixels_.x(mm) : pt(mm);
        };
        const auto y = [&](double mm) {
            return is_level ? pixels_.y(mm, mark.width) : is_upright ? pixels_.y(mm) : pt(mm);
        };
        cairo_move_to(cairo_, x(mark.x1), y(mark.y1));
        cairo_line_to(cairo_, x(mark.x2), y(mark.y2));
        stroke(is_upright || is_level ? pixels_.stroke(mark.width) : pt(mark.width), mark.ink, mark.dashes);
    }
    void operator()(const BoxMark& mark) const {
        const double right = mark.x + mark.width, bottom = mark.y + mark.height;
        if (mark.fill) {
            const double x = pixels_.x(mark.x), y = pixels_.y(mark.y);
            cairo_rectangle(cairo_, x, y, pixels_.x(right) - x, pixels_.y(bottom) - y);
            fill_and_stroke(mark.fill, {}, 0, {});
        }
        if (!mark.ink || mark.line <= 0) return;
        const double x = pixels_.x(mark.x, mark.line), y = pixels_.y(mark.y, mark.line);
        cairo_rectangle(cairo_, x, y, pixels_.x(right, mark.line) - x, pixels_.y(bottom, mark.line) - y);
        stroke(pixels_.stroke(mark.line), *mark.ink, mark.dashes);
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

    // `width` in points.
    void stroke(double width, const Ink& ink, const std::vector<double>& dashes) const {
        std::vector<double> points;
        points.reserve(dashes.size());
        for (const double dash : dashes) points.push_back(pt(dash));
        cairo_set_dash(cairo_, points.data(), static_cast<int>(points.size()), 0);
        cairo_set_line_width(cairo_, width);
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
            stroke(pt(line), *ink, dashes);
        else
            cairo_new_path(cairo_);
    }

    cairo_t* cairo_;
    const InkMap& inks_;
    Pixels pixels_;
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
