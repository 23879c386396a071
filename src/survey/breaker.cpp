// SPDX-License-Identifier: MIT
#include "survey/breaker.hpp"

#include <algorithm>

namespace doorcard {

std::string Breaker::default_id() const {
    std::vector<std::pair<int, std::string>> places;
    for (std::size_t i = 0; i < spaces.size(); ++i)
        places.emplace_back(spaces[i], i < halves.size() ? std::string(1, halves[i]) : "");
    std::ranges::sort(places);
    std::string id = panel;
    char joint = ':';
    for (const auto& [space, half] : places) {
        id += joint;
        id += std::to_string(space);
        id += half;
        joint = '+';
    }
    return id;
}

}  // namespace doorcard
