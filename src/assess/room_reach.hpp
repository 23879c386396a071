// SPDX-License-Identifier: MIT
#pragma once
#include <set>

#include "assess/room_directory.hpp"

namespace doorcard {

/// What the card of a panel's door tells of: the panel and those below it that belong to the same premises.
class RoomReach {
public:
    RoomReach(const Network&, std::size_t panel);

    bool covers(std::size_t panel) const { return covered_.contains(panel); }
    const std::set<std::size_t>& covered() const { return covered_; }
    /// No panel of the same premises feeds it.
    bool at_the_top() const { return at_the_top_; }
    /// No panel feeds it at all: what has no known handle is told on its card.
    bool at_the_root() const { return at_the_root_; }
    bool same_premises(std::size_t panel) const;
    /// A breaker of one of the panels feeds the circuit; or no breaker is known, and this is the root.
    bool reaches_circuit(std::size_t circuit) const;
    bool reaches_outlet(std::size_t outlet) const;
    /// All that is known to feed it lies in other premises.
    bool elsewhere(std::size_t outlet) const;

private:
    std::vector<std::size_t> breakers_at(std::size_t outlet) const;

    const Network& network_;
    std::size_t panel_;
    std::set<std::size_t> covered_;
    bool at_the_top_ = true, at_the_root_ = true;
};

/// The handles of a thing that these circuits feed, and how sure they are.
RoomLine line_of(const Network&, const std::vector<std::size_t>& circuits);
/// A feeder's line: the handles that take the whole panel down.
RoomLine line_of_panel(const Network&, std::size_t panel);
/// By panel and space.
void sort_handles(const Network&, std::vector<std::size_t>& breakers);

/// The lines of one room.
std::vector<RoomLine> lines_of_room(const Network&, const std::vector<std::size_t>& outlets);

}  // namespace doorcard
