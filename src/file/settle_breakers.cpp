// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "file/checks.hpp"

namespace doorcard {
namespace {

void check_spaces_differ(const Breaker& breaker, std::span<const Mark> spaces, Complaints& complaints) {
    for (std::size_t i = 1; i < spaces.size(); ++i) {
        const auto end = breaker.spaces.begin() + static_cast<std::ptrdiff_t>(i);
        if (std::find(breaker.spaces.begin(), end, breaker.spaces[i]) == end) continue;
        complaints.add(spaces[i].value, fmt::format("\"spaces\" in [[breaker]] names {} twice", breaker.spaces[i]),
                       "name every space once");
    }
}

void settle_halves(Breaker& breaker, std::span<const Mark> halves, Complaints& complaints) {
    if (halves.empty() || breaker.halves.size() == breaker.spaces.size()) return;
    if (!halves[0].in_list) {
        breaker.halves.assign(breaker.spaces.size(), breaker.halves.front());
        return;
    }
    complaints.add(halves[0].value,
                   fmt::format("{} halves for {} spaces", breaker.halves.size(), breaker.spaces.size()),
                   "give one letter, or one for each space");
}

void check_legs(const Breaker& breaker, std::span<const Mark> legs, Complaints& complaints) {
    if (legs.empty() || breaker.legs->size() == breaker.spaces.size()) return;
    complaints.add(legs[0].value, fmt::format("{} legs for {} spaces", breaker.legs->size(), breaker.spaces.size()),
                   "give a letter for each space, in the order of spaces");
}

}  // namespace

void settle_breakers(Draft& draft, const Marks& marks, Complaints& complaints) {
    const auto spaces = marks.of("breaker", "spaces");
    const auto halves = marks.of("breaker", "half");
    const auto legs = marks.of("breaker", "legs");
    for (std::size_t row = 0; row < draft.breakers.size(); ++row) {
        Breaker& breaker = draft.breakers[row];
        breaker.id_given = !breaker.id.empty();
        if (breaker.spaces.empty()) continue;  // said already
        check_spaces_differ(breaker, of_row(spaces, row), complaints);
        settle_halves(breaker, of_row(halves, row), complaints);
        check_legs(breaker, of_row(legs, row), complaints);
        if (!breaker.id_given && !breaker.panel.empty()) breaker.id = breaker.default_id();
    }
}

}  // namespace doorcard
