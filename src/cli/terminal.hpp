// SPDX-License-Identifier: MIT
#pragma once
#include <string>
#include <vector>

#include "assess/finding.hpp"

namespace doorcard {

/// What the output goes to: its width in columns, and whether signal words may be coloured (never the only sign).
struct Terminal {
    int columns = 80;
    bool color = false;

    /// Of standard output: plain in a pipe, or where NO_COLOR is set.
    static Terminal of_stdout();
};

/// Columns that a text takes on a terminal: code points.
int width_of(const std::string& text);
/// The text padded to a width, at its right or, for figures, at its left.
std::string padded(const std::string& text, int width);
std::string padded_left(const std::string& text, int width);
/// What fits into a width, from the left.
std::string first_columns(const std::string& text, int width);
/// Shortened with an ellipsis where it is longer than this.
std::string clipped(const std::string& text, int width);
/// Broken at blanks into lines of at most this width; a number keeps its unit.
std::vector<std::string> wrapped(const std::string& text, int width);
/// Pieces that stay whole, `gap` blanks apart, in lines of at most this width.
std::vector<std::string> flowed(const std::vector<std::string>& pieces, int gap, int width);
/// The signal word in its ANSI Z535 colours, where colour may be used.
std::string colored(const std::string& word, Severity, const Terminal&);

}  // namespace doorcard
