// SPDX-License-Identifier: MIT
#pragma once
#include "survey/edits/edit.hpp"

namespace doorcard {

/// Where a breaker sits: a panel, spaces in any order, and of a tandem a half for each space.
struct BreakerPlace {
    std::string panel;
    std::vector<int> spaces;
    std::vector<char> halves;
    bool operator==(const BreakerPlace&) const = default;
};
BreakerPlace place_of(const Breaker&);

/// Without a given id it is named by its place. Spaces that were noted as empty no longer are.
Edit add_breaker(Breaker);
/// Everything of it may be changed but its id and its place.
Edit change_breaker(const Breaker&);
/// Another place. A default id follows, and with it, in the same step, every place that names it; legs follow the new
/// spaces, so that legs that were written down for the old ones are dropped. Refused where another breaker sits there.
Edit move_breaker(const std::string& id, const BreakerPlace& to);
/// Each goes to where the other is; they have as many spaces.
Edit swap_breakers(std::string one, std::string other);
Edit remove_breaker(std::string id, Mentions = Mentions::refuse);

Edit rate_breaker(std::string id, std::optional<Amperes>);
/// An identified handle tie over all of these: each names the others.
Edit tie_breakers(Ids);
/// No tie of it is left, in its own entry and in those of others.
Edit untie_breaker(std::string id);
Edit make_spare(std::string id);
Edit put_in_use(std::string id);
Edit switch_off(std::string id, const std::string& why);

}  // namespace doorcard
