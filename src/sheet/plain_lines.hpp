// SPDX-License-Identifier: MIT
#pragma once
#include <string>
#include <vector>

// Plain text in lines of a terminal's width, counted in characters.
namespace doorcard {

constexpr std::size_t plain_columns = 80;

std::size_t characters(const std::string&);
std::string padded(const std::string&, std::size_t width);
std::string padded_left(const std::string&, std::size_t width);  ///< figures, at the right
/// Broken at blanks; a word that is longer alone is broken inside.
std::vector<std::string> wrapped(const std::string&, std::size_t width);

}  // namespace doorcard
