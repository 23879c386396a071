// SPDX-License-Identifier: MIT
#pragma once
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "survey/edits/breaker_edits.hpp"

// What is planned on a panel that was taken down as found and locked. It lives beside the survey, never in it.
namespace doorcard {

/// A breaker as it was found when something was planned for it: its id, its place, and the circuits and panels that it
/// feeds. Where one of these is no longer so, it may be another breaker, and nothing is done to it unasked.
struct FoundBreaker {
    std::string id;
    BreakerPlace place;
    Ids feeds;  ///< ids of circuits and panels, in the order of the survey
    bool operator==(const FoundBreaker&) const = default;
};

struct PlannedMove {
    FoundBreaker breaker;
    BreakerPlace to;
    bool operator==(const PlannedMove&) const = default;
};
struct PlannedSwap {
    FoundBreaker one, other;
    bool operator==(const PlannedSwap&) const = default;
};
/// Absent: the rating is to be taken as not known.
struct PlannedRating {
    FoundBreaker breaker;
    std::optional<Amperes> was, amps;
    bool operator==(const PlannedRating&) const = default;
};
/// An identified handle tie over all of these.
struct PlannedTie {
    std::vector<FoundBreaker> breakers;
    bool operator==(const PlannedTie&) const = default;
};
struct PlannedUntie {
    FoundBreaker breaker;
    bool operator==(const PlannedUntie&) const = default;
};
/// A spare, or in use; never off.
struct PlannedState {
    FoundBreaker breaker;
    BreakerState state = BreakerState::spare;
    bool operator==(const PlannedState&) const = default;
};
/// The neutral of a circuit: shared under that name, or "own".
struct PlannedNeutral {
    std::string circuit;
    std::optional<std::string> was, neutral;
    bool operator==(const PlannedNeutral&) const = default;
};

/// A change that is planned.
using Planned =
    std::variant<PlannedMove, PlannedSwap, PlannedRating, PlannedTie, PlannedUntie, PlannedState, PlannedNeutral>;

/// What is planned for one survey, and whether what was found is locked, so that a move is planned and not made.
struct Plan {
    bool as_found_locked = false;
    std::vector<Planned> changes;  ///< in the order in which they are to be done
    bool operator==(const Plan&) const = default;
};

}  // namespace doorcard
