// SPDX-License-Identifier: MIT
#pragma once
#include "sheet/inks.hpp"
#include "sheet/type_case.hpp"

namespace doorcard {

/// Puts marks on a page in the hand that all sheets share.
class Drawing {
public:
    explicit Drawing(Page& page) : page_(page) {}

    void line(double x1, double y1, double x2, double y2, double width, Ink ink = inks::text,
              std::vector<double> dashes = {});
    void box(const Frame&, double line, std::optional<Ink> fill = {}, Ink ink = inks::text,
             std::vector<double> dashes = {});
    void fill(const Frame&, Ink ink = inks::text);
    void shape(std::vector<std::pair<double, double>> points, Ink ink = inks::text);
    void outline(std::vector<std::pair<double, double>> points, double width, Ink ink = inks::text);
    void dot(double x, double y, double radius, Ink ink);
    /// One line of text in its frame; it stands at the left, right or middle of it.
    void text(const Frame&, double baseline, const std::string&, const TypeStyle&, Align = Align::left,
              Ink ink = inks::text);
    /// Lines below each other from the frame's top; returns the bottom of the last one.
    double paragraph(const Frame&, const std::string&, const TypeStyle&, Ink ink = inks::text);
    /// Slanted lines across a frame: nobody knows what is here.
    void hatching(const Frame&);
    /// A dotted foot line below a text of this width: only claimed.
    void dotted(double x, double baseline, double width, Ink ink = inks::text);

    Page& page() { return page_; }

private:
    Page& page_;
};

/// The largest of these sizes at which a text fits into a width; the last one where none does.
TypeStyle fitting(const std::string&, TypeStyle, double width, std::initializer_list<double> sizes);
/// The text, or as much of it as fits with an ellipsis.
std::string cut_to(const std::string&, const TypeStyle&, double width);
/// Height of so many lines, from the first capital's top to the last descender.
double lines_height(std::size_t lines, double points);

}  // namespace doorcard
