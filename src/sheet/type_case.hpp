// SPDX-License-Identifier: MIT
#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "sheet/sheet.hpp"

namespace doorcard {

constexpr double mm_per_point = 25.4 / 72;

/// The ink of a text about its reference point, mm: left and right from x, top and bottom from the baseline (up is
/// negative).
struct InkExtent {
    double left = 0, right = 0, top = 0, bottom = 0;
};

/// Width that a text takes in a line, mm. Throws std::runtime_error where the fonts are not installed.
double text_width(const std::string& text, const TypeStyle&);
InkExtent ink_extent(const std::string& text, const TypeStyle&);
/// Characters that no font of the case has.
int unknown_characters(const std::string& text, const TypeStyle&);

/// The text broken at spaces into lines of at most `width` mm; a word that is wider alone is broken inside. The last of
/// `most` lines ends in an ellipsis where more would follow.
std::vector<std::string> broken_lines(const std::string& text, const TypeStyle&, double width, std::size_t most = 99);

/// The same number of lines, as even in length as they get: 'Kitchen counter,' over 'east wall'.
std::vector<std::string> even_lines(const std::string& text, const TypeStyle&, double width, std::size_t most = 99);

/// Height of a capital and advance from line to line, mm.
constexpr double cap_height(double points) { return 0.729 * points * mm_per_point; }
constexpr double line_advance(double points) { return 1.17 * points * mm_per_point; }
constexpr double descent(double points) { return 0.236 * points * mm_per_point; }

}  // namespace doorcard
