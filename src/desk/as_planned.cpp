// SPDX-License-Identifier: MIT
#include "desk/as_planned.hpp"

#include <algorithm>

#include "desk/plan.hpp"
#include "survey/difference.hpp"

namespace doorcard {
namespace {

/// A breaker before and after an edit, by its places in the two tables.
struct Pair {
    std::size_t was, now;
};

std::vector<Pair> changed_pairs(const Survey& before, const Survey& after) {
    const Difference all = difference(before, after);
    const TableDifference* breakers = all.of("breaker");
    std::vector<Pair> pairs;
    if (breakers)
        for (const std::size_t now : breakers->changed)
            if (breakers->was[now]) pairs.push_back({*breakers->was[now], now});
    return pairs;
}

bool is_spare(const Breaker& breaker) { return breaker.state == BreakerState::spare; }

class HoldingBack {
public:
    HoldingBack(const Survey& before, Survey after) : before_(before), held_{std::move(after), {}} {}

    HeldBack held() && {
        const auto pairs = changed_pairs(before_, held_.after);
        std::vector<Pair> moved;
        for (const Pair& pair : pairs)
            if (!(place_of(was(pair)) == place_of(now(pair)))) moved.push_back(pair);
        if (!moved.empty()) return plan_moves(moved);
        for (const Pair& pair : pairs) hold(pair);
        return std::move(held_);
    }

private:
    const Breaker& was(const Pair& pair) const { return before_.breakers[pair.was]; }
    const Breaker& now(const Pair& pair) const { return held_.after.breakers[pair.now]; }

    // A move does nothing else: all of it is planned.
    HeldBack plan_moves(const std::vector<Pair>& moved) {
        const bool is_swap = moved.size() == 2 && place_of(was(moved[0])) == place_of(now(moved[1])) &&
                             place_of(was(moved[1])) == place_of(now(moved[0]));
        if (is_swap) {
            held_.planned.push_back(PlannedSwap{found(moved[0]), found(moved[1])});
        } else {
            for (const Pair& pair : moved) held_.planned.push_back(PlannedMove{found(pair), place_of(now(pair))});
        }
        held_.after = before_;
        return std::move(held_);
    }

    FoundBreaker found(const Pair& pair) const { return found_breaker(before_, was(pair)); }

    // Rating, tie and whether it is in use stay as found.
    void hold(const Pair& pair) {
        Breaker kept = now(pair);
        if (kept.amps != was(pair).amps) held_.planned.push_back(PlannedRating{found(pair), was(pair).amps, kept.amps});
        if (is_spare(kept) != is_spare(was(pair)))
            held_.planned.push_back(
                PlannedState{found(pair), is_spare(kept) ? BreakerState::spare : BreakerState::in_use});
        if (kept.tied_with != was(pair).tied_with) plan_tie(pair);
        kept.amps = was(pair).amps;
        kept.tied_with = was(pair).tied_with;
        if (is_spare(kept) != is_spare(was(pair))) kept.state = was(pair).state;
        held_.after.breakers = kept == was(pair) && held_.after.breakers.size() == before_.breakers.size()
                                   ? restored(pair, was(pair))
                                   : restored(pair, kept);
    }

    Table<Breaker> restored(const Pair& pair, const Breaker& breaker) const {
        return held_.after.breakers.with_row(pair.now, breaker);
    }

    void plan_tie(const Pair& pair) {
        const auto& ties = now(pair).tied_with;
        if (!ties || ties->empty()) return add_once(PlannedUntie{found(pair)});
        PlannedTie tie{{found(pair)}};
        for (const std::string& id : *ties)
            if (const Breaker* other = before_.breakers.find(id))
                tie.breakers.push_back(found_breaker(before_, *other));
        std::ranges::sort(tie.breakers, {}, [](const FoundBreaker& one) { return one.id; });
        add_once(tie);
    }

    void add_once(const Planned& planned) {
        if (std::ranges::find(held_.planned, planned) == held_.planned.end()) held_.planned.push_back(planned);
    }

    const Survey& before_;
    HeldBack held_;
};

}  // namespace

HeldBack held_back(const Survey& before, Survey after) { return HoldingBack(before, std::move(after)).held(); }

}  // namespace doorcard
