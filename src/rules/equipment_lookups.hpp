// SPDX-License-Identifier: MIT
#pragma once
#include "rules/book.hpp"
#include "survey/common.hpp"

namespace doorcard {

// Questions about equipment as it is seen, put to the tables of the book.

/// The place of the guard rules that a survey's words mean ("Bath" and "bathrooms" are "bathroom"); nullopt: none of
/// them. Case, hyphens and a plural s do not matter.
std::optional<std::string> guard_place(const RuleBook&, std::string_view words);

/// One guard that a place asks for, since the edition of that year.
struct PlaceGuard {
    Guard guard = Guard::ground;
    int since = 0;
    std::string cite;  ///< id of the table
    bool operator==(const PlaceGuard&) const = default;
};
/// The ground guard of 210.8(A), or 210.8(B) outside dwellings, at a place that `guard_place` gave; nullopt: none.
std::optional<PlaceGuard> ground_guard_at(const RuleBook&, std::string_view place, bool dwelling);
/// The arc guard of 210.12 in a room of a dwelling; nullopt: none.
std::optional<PlaceGuard> arc_guard_in(const RuleBook&, std::string_view place);

/// A row of 210.11(C): circuits for the receptacles of these places.
struct RequiredCircuit {
    std::string kind;  ///< "small-appliance", "laundry", "bathroom", "garage"
    int count = 0;
    Amperes rating;
    int since = 0;
    std::vector<std::string> places;
};
std::vector<RequiredCircuit> required_circuits(const RuleBook&);

/// A place that 240.24 rules out for a panel.
struct RuledOutPlace {
    Citation source;
    int since = 0;
};
std::optional<RuledOutPlace> ruled_out_place(const RuleBook&, std::string_view place);

/// True for the sizes of aluminum whose old branch circuits are known to heat at their joints.
bool is_small_aluminum(const RuleBook&, const Wire&);

}  // namespace doorcard
