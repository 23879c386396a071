// SPDX-License-Identifier: MIT
#pragma once
#include <vector>

#include "survey/survey.hpp"

namespace doorcard {

/// A source that comes in at a panel beside what feeds it first, through a breaker or in its place.
struct FeedBeside {
    const Source* source = nullptr;    ///< null: the feed is another panel's breaker
    const Breaker* through = nullptr;  ///< null: it takes the place of the first feed
};

/// One panel on the way of power, with what feeds it.
struct FeedStep {
    const Panel* panel = nullptr;
    const Source* source = nullptr;    ///< that feeds it first, where it is one
    const Breaker* breaker = nullptr;  ///< likewise
    std::vector<FeedBeside> beside;
};

/// The panels from the first that is fed by no other down to the one shown.
std::vector<FeedStep> feed_way(const Survey&, const Panel& shown);
/// The panels that one feeds, in file order.
std::vector<FeedStep> fed_by(const Survey&, const Panel&);

}  // namespace doorcard
