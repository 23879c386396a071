// SPDX-License-Identifier: MIT
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

namespace doorcard {

/// A space of a panel, or a half of it ('a', 'b'; ' ' for a full space).
struct ListSpace {
    int number = 0;
    char half = ' ';
    auto operator<=>(const ListSpace&) const = default;
};
std::string name_of(ListSpace);

/// What is wrong with a cell, and what would be right.
struct CellFault {
    std::string wrong;
    std::string right;
};

/// `5`, `13a`, `2,4`, `2/4`, `2+4`, `1-5` (one side): ascending. A date that a spreadsheet has made of them is named as
/// such and refused, as is all else. None where the cell is blank.
tl::expected<std::vector<ListSpace>, CellFault> spaces_in(std::string_view cell);

/// Whether a cell reads as spaces.
bool are_spaces(std::string_view cell);

/// Whether spaces can be those of one breaker: each the next one of the same side.
bool lie_together(const std::vector<ListSpace>&);

}  // namespace doorcard
