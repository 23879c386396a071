// SPDX-License-Identifier: MIT
#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "base/outcome.hpp"

namespace doorcard {

/// Lines of cells of a block from a spreadsheet: tabs part them where there are any, else semicolons, else commas; a
/// cell with one of these inside stands in quotes. Empty lines are left out. Refused where a comma may as well be a
/// decimal sign: `3,5` in every line.
Outcome<std::vector<std::vector<std::string>>> pasted_cells(std::string_view text);

}  // namespace doorcard
