// SPDX-License-Identifier: MIT
#include "cli/json_parts.hpp"

#include "file/enum_words.hpp"

namespace doorcard {

Json spaces_json(const std::vector<Position>& positions) {
    Json spaces = Json::array();
    for (const Position position : positions) spaces.push_back(position.space);
    return spaces;
}

Json halves_json(const std::vector<Position>& positions) {
    Json halves = Json::array();
    for (const Position position : positions)
        if (position.half != ' ') halves.push_back(std::string(1, position.half));
    return halves;
}

Json guards_json(const Breaker& breaker) {
    if (!breaker.guards) return nullptr;
    Json guards = Json::array();
    for (const Guard guard : *breaker.guards) guards.push_back(enum_words<Guard>[static_cast<std::size_t>(guard)]);
    return guards;
}

}  // namespace doorcard
