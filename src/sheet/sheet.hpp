// SPDX-License-Identifier: MIT
#pragma once
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace doorcard {

/// Width and height of the paper, mm.
struct Paper {
    double width = 215.9;
    double height = 279.4;
    bool operator==(const Paper&) const = default;
};

struct Ink {
    double red = 0, green = 0, blue = 0;
    bool operator==(const Ink&) const = default;
};

enum class Align { left, right, middle };

// Marks: all lengths in mm from the page's top left corner, type in points, laid out once. A painter only paints.
struct LineMark {
    double x1, y1, x2, y2, width;
    Ink ink;
    std::vector<double> dashes;
};
struct BoxMark {
    double x, y, width, height, line;
    std::optional<Ink> fill;
    std::optional<Ink> ink;
    std::vector<double> dashes;
};
struct PathMark {
    std::vector<std::pair<double, double>> points;
    bool closed;
    double line;
    std::optional<Ink> fill;
    std::optional<Ink> ink;
};
struct CircleMark {
    double x, y, radius, line;
    std::optional<Ink> fill;
    std::optional<Ink> ink;
};
/// `x` is the edge (or middle) that `align` names, `baseline` the baseline. The text is already broken into lines and
/// fits.
struct TextMark {
    double x, baseline;
    std::string text;
    double points;
    bool bold, italic, condensed;
    Align align;
    Ink ink;
};

using Mark = std::variant<LineMark, BoxMark, PathMark, CircleMark, TextMark>;

/// One page of marks, and the same page as lines of plain text for a terminal.
struct Page {
    Paper paper;
    std::vector<Mark> marks;
    std::string title;  ///< for the outline of a PDF: "MAIN"
};

/// A printed thing, laid out once and painted alike to PDF, SVG, PNG, screen and printer.
struct Sheet {
    std::vector<Page> pages;
    std::string title;
};

}  // namespace doorcard
