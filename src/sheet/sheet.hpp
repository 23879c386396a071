// SPDX-License-Identifier: MIT
#pragma once
#include <optional>
#include <string>
#include <utility>
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

/// The room that a text was set into, mm: it may not leave it (a test measures every text).
struct Frame {
    double x = 0, y = 0, width = 0, height = 0;
    double right() const { return x + width; }
    double bottom() const { return y + height; }
};

// Marks: all lengths in mm from the page's top left corner, type in points, laid out once. A painter only paints.
struct LineMark {
    double x1 = 0, y1 = 0, x2 = 0, y2 = 0, width = 0.18;
    Ink ink;
    std::vector<double> dashes;
};
struct BoxMark {
    double x = 0, y = 0, width = 0, height = 0, line = 0;
    std::optional<Ink> fill;
    std::optional<Ink> ink;
    std::vector<double> dashes;
};
struct PathMark {
    std::vector<std::pair<double, double>> points;
    bool closed = true;
    double line = 0;
    std::optional<Ink> fill;
    std::optional<Ink> ink;
};
struct CircleMark {
    double x = 0, y = 0, radius = 0, line = 0;
    std::optional<Ink> fill;
    std::optional<Ink> ink;
};
/// How a text is set: DejaVu Sans, points.
struct TypeStyle {
    double points = 9;
    bool bold = false, italic = false, condensed = false;
};
/// `x` is the edge (or middle) that `align` names, `baseline` the baseline. The text is already broken into lines and
/// fits its frame.
struct TextMark {
    double x = 0, baseline = 0;
    std::string text;
    TypeStyle style;
    Align align = Align::left;
    Ink ink;
    Frame frame;
};

using Mark = std::variant<LineMark, BoxMark, PathMark, CircleMark, TextMark>;

/// A part of a page that is about one thing, for whoever points at it on a screen.
struct Region {
    Frame frame;
    std::string of;  ///< an address: "circuit:kitchen"
};

/// One page of marks; and what it says, as lines of plain text (80 columns) and as a table whose first row is its head.
struct Page {
    Paper paper;
    std::vector<Mark> marks;
    std::vector<Region> regions{};
    std::string title;  ///< for the outline of a PDF: "MAIN 1/2"
    std::string of;     ///< id of the panel (or other thing) it is about
    std::vector<std::string> lines;
    std::vector<std::vector<std::string>> table;
};

/// A printed thing, laid out once and painted alike to PDF, SVG, PNG, screen and printer.
struct Sheet {
    std::vector<Page> pages;
    std::string title;
    std::string author;  ///< whose survey it is; may be empty
    std::string created =
        "2000-01-01T00:00:00Z";  ///< RFC 3339; stands in the PDF, so that two runs give the same bytes
    std::string language = "en";
};

}  // namespace doorcard
