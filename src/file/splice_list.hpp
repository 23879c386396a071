// SPDX-License-Identifier: MIT
#pragma once
#include <optional>

#include "file/splices.hpp"

namespace doorcard {

/// What a list shall hold at one place: an element that stands there already, or a new text.
struct WantedItem {
    std::optional<std::size_t> kept;
    std::string text;
};

/// Makes a list in brackets, or the members of a table in braces, hold what is wanted: elements that stay are left as
/// they are, with the comments beside them, and stay in their order. `list` is the whole of it with its brackets.
void splice_list(Splices&, Span list, const std::vector<Span>& items, const std::vector<WantedItem>& wanted);

/// The newline that a text uses.
std::string_view newline_of(std::string_view text);

}  // namespace doorcard
