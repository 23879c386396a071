// SPDX-License-Identifier: MIT
#include "assess/circuit_run.hpp"

#include <algorithm>

namespace doorcard {

Way CircuitRun::way_of(std::size_t outlet) const {
    Way way;
    for (std::size_t at = outlet; at < survey_.outlets.size();) {
        if (std::ranges::find(way.outlets, at) != way.outlets.end()) return way;
        way.outlets.push_back(at);
        const auto& upstream = survey_.outlets[at].upstream;
        if (!upstream) return way;
        if (*upstream == "home-run") {
            way.whole = true;
            return way;
        }
        at = survey_.outlets.position(*upstream);
    }
    return way;
}

std::optional<Feet> CircuitRun::own_length(std::size_t outlet) const {
    const Outlet& given = survey_.outlets[outlet];
    if (given.run) return given.run->feet();
    const auto& wire = survey_.circuits[circuit_].wire;
    if (given.upstream == "home-run" && wire && wire->length) return wire->length->feet();
    return std::nullopt;
}

std::optional<Feet> CircuitRun::length_to(std::size_t outlet) const {
    const Way way = way_of(outlet);
    if (!way.whole) return std::nullopt;
    Feet length(0);
    for (const std::size_t at : way.outlets) {
        const auto own = own_length(at);
        if (!own) return std::nullopt;
        length += *own;
    }
    return length;
}

}  // namespace doorcard
