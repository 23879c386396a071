// SPDX-License-Identifier: MIT
#pragma once
#include "rules/book.hpp"
#include "survey/common.hpp"

namespace doorcard {

// Questions to the tables of grounding conductors and receptacles. Nullopt: no such row, or a size in no table.

/// Area in circular mils: Chapter 9 Table 8 for AWG, 1000 times the number for kcmil (250 and over).
std::optional<double> circular_mils(const RuleBook&, std::string_view size);
/// Table 250.122: the least equipment grounding conductor behind a device of this rating; between two rows the larger.
std::optional<std::string> ground_wire_size(const RuleBook&, Amperes device, Metal);
/// 250.122(B): the least size whose area is at least this one's, grown as much as the hot conductors from `least` to
/// `fitted`.
std::optional<std::string> grown_size(const RuleBook&, std::string_view size, std::string_view least,
                                      std::string_view fitted);
/// Table 250.66 by the service conductors: one set, or the area of all parallel sets.
std::optional<std::string> electrode_conductor_size(const RuleBook&, std::string_view service_size, Metal service_metal,
                                                    int sets, Metal);
/// 250.66(A), (B), (C): what the sole connection to this electrode need not be larger than; nullopt for one that the
/// words of the table do not name, and for a water pipe.
std::optional<std::string> electrode_limit(const RuleBook&, std::string_view electrode, Metal);

/// Receptacle ratings that Table 210.21(B)(3) allows on a circuit; `most` only where the edition has one.
struct ReceptacleRange {
    Amperes least;
    std::optional<Amperes> most;
};
std::optional<ReceptacleRange> receptacle_range(const RuleBook&, Amperes circuit);

}  // namespace doorcard
