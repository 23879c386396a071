// SPDX-License-Identifier: MIT
#include "sheet/drawing.hpp"

#include <algorithm>

namespace doorcard {

void Drawing::line(double x1, double y1, double x2, double y2, double width, Ink ink, std::vector<double> dashes) {
    page_.marks.emplace_back(std::in_place_type<LineMark>, LineMark{x1, y1, x2, y2, width, ink, std::move(dashes)});
}

void Drawing::box(const Frame& frame, double line, std::optional<Ink> fill, Ink ink, std::vector<double> dashes) {
    page_.marks.emplace_back(std::in_place_type<BoxMark>,
                             BoxMark{frame.x, frame.y, frame.width, frame.height, line, fill, ink, std::move(dashes)});
}

void Drawing::fill(const Frame& frame, Ink ink) {
    page_.marks.emplace_back(std::in_place_type<BoxMark>,
                             BoxMark{frame.x, frame.y, frame.width, frame.height, 0, ink, std::nullopt, {}});
}

void Drawing::shape(std::vector<std::pair<double, double>> points, Ink ink) {
    page_.marks.emplace_back(std::in_place_type<PathMark>, PathMark{std::move(points), true, 0, ink, std::nullopt});
}

void Drawing::outline(std::vector<std::pair<double, double>> points, double width, Ink ink) {
    page_.marks.emplace_back(std::in_place_type<PathMark>, PathMark{std::move(points), true, width, inks::paper, ink});
}

void Drawing::dot(double x, double y, double radius, Ink ink) {
    page_.marks.emplace_back(std::in_place_type<CircleMark>, CircleMark{x, y, radius, 0, ink, std::nullopt});
}

void Drawing::text(const Frame& frame, double baseline, const std::string& text, const TypeStyle& style, Align align,
                   Ink ink) {
    if (text.empty()) return;
    const double x = align == Align::left ? frame.x : align == Align::right ? frame.right() : frame.x + frame.width / 2;
    page_.marks.emplace_back(std::in_place_type<TextMark>, TextMark{x, baseline, text, style, align, ink, frame});
}

double Drawing::paragraph(const Frame& frame, const std::string& words, const TypeStyle& style, Ink ink) {
    double baseline = frame.y + cap_height(style.points);
    double bottom = frame.y;
    // accents and l and f rise above capitals
    const Frame room{frame.x, frame.y - 0.9, frame.width, frame.height + 0.9};
    for (const std::string& piece : broken_lines(words, style, frame.width)) {
        text(room, baseline, piece, style, Align::left, ink);
        bottom = baseline + descent(style.points);
        baseline += line_advance(style.points);
    }
    return bottom;
}

void Drawing::hatching(const Frame& frame) {
    constexpr double step = 1.7;
    constexpr double width = 0.13;
    for (double start = step; start < frame.width + frame.height; start += step) {
        // from the left edge or the bottom up to the right: x - frame.x + y - frame.y = start
        const double x1 = frame.x + std::max(0.0, start - frame.height);
        const double x2 = frame.x + std::min(start, frame.width);
        line(x1, frame.y + start - (x1 - frame.x), x2, frame.y + start - (x2 - frame.x), width);
    }
}

void Drawing::dotted(double x, double baseline, double width, Ink ink) {
    line(x, baseline + 0.92, x + width, baseline + 0.92, 0.22, ink, {0.22, 0.75});
}

TypeStyle fitting(const std::string& text, TypeStyle style, double width, std::initializer_list<double> sizes) {
    for (const double points : sizes) {
        style.points = points;
        if (text_width(text, style) <= width) break;
    }
    return style;
}

std::string cut_to(const std::string& text, const TypeStyle& style, double width) {
    constexpr double rounding = 0.01;
    if (text_width(text, style) <= width + rounding) return text;
    const auto lines = broken_lines(text, style, width, 1);
    return lines.empty() ? std::string() : lines.front();
}

double lines_height(std::size_t lines, double points) {
    if (lines == 0) return 0;
    return cap_height(points) + static_cast<double>(lines - 1) * line_advance(points) + descent(points);
}

}  // namespace doorcard
