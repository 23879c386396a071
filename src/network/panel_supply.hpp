// SPDX-License-Identifier: MIT
#pragma once
#include <vector>

#include "network/legs.hpp"
#include "survey/survey.hpp"

namespace doorcard {

/// Every panel's supply and every breaker's legs, resolved from the sources down (contract 2, reckoning 'Legs and
/// angles').
struct Supplies {
    std::vector<PanelSupply> panels;  ///< by position in the survey
    std::vector<SpaceGeometry> geometries;
    std::vector<std::string> breaker_legs;  ///< a letter per pole, by ascending space; '?' where unknown
};

/// `panel_of` and `breakers_in` are positions as in Network.
Supplies resolve_supplies(const Survey&, const std::vector<std::size_t>& panel_of,
                          const std::vector<std::vector<std::size_t>>& breakers_in);

/// The poles of a breaker by ascending space: positions into `spaces`.
std::vector<std::size_t> poles_by_space(const Breaker&);

/// The system behind a feeding breaker: that of its panel, cut to the poles' legs; nullopt: unknown (contract 2).
std::optional<System> cut_system(const PanelSupply& feeding, const std::string& pole_legs);

}  // namespace doorcard
