// SPDX-License-Identifier: MIT
#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "base/outcome.hpp"
#include "survey/survey.hpp"

namespace doorcard {

/// Outlets of one kind on a line of the Rooms page: `r6`, `l2@5`, `range`.
struct RoomItem {
    OutletKind kind = OutletKind::equipment;
    int count = 1;
    std::string label;
    std::string on;  ///< the breaker's space, as typed; empty: nothing was said
    Guards guards;
};

/// A line of the Rooms page, taken apart.
struct RoomWords {
    std::string room;
    std::vector<RoomItem> items;
};

/// The room's name ends at a colon, or where the first count stands (`r6`, or a small r, l, s, b alone); without either
/// at the end of the longest name of a room that is there, or of the line. Quotes keep words together.
Outcome<RoomWords> room_words(const Survey&, std::string_view line);

/// What is said behind the dot of an outlet: guards, the breaker's space, else its label.
struct OutletWords {
    Guards guards;
    std::string on, label;
};
Outcome<OutletWords> outlet_words(std::string_view rest);

}  // namespace doorcard
