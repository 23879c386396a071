// SPDX-License-Identifier: MIT
#pragma once
#include <map>
#include <span>

#include "assess/placed_load.hpp"

namespace doorcard {

/// What the loads of a circuit (or of all circuits of one breaker) ask of one leg, in amperes (contract 3, reckoning
/// 'Circuits').
struct LegDemand {
    Amperes continuous, noncontinuous;
    Amperes required;  ///< noncontinuous + 1.25 continuous + 0.25 largest motor + minimum circuit ampacities
    Amperes cords;     ///< all cord nameplates together
    Amperes everything() const { return continuous + noncontinuous; }
};

/// Legs in letters ascending; empty where the legs, or all loads, are not known.
struct CircuitDemand {
    std::map<char, LegDemand> legs;
    bool motors_alone = false;  ///< every load is a motor, and there is one

    const LegDemand* largest_required() const;
    const LegDemand* largest_sum() const;  ///< of continuous + noncontinuous
};

/// The demand of a circuit. `full_rated`: its device is listed for 100 % continuous duty.
CircuitDemand circuit_demand(const std::vector<PlacedLoad>&, const std::string& legs, const PanelSupply*,
                             bool in_occupancy, bool full_rated, const RuleBook&);

/// Several circuits on one breaker: leg by leg. The sums are of phasors within a circuit, and of sizes between
/// circuits.
CircuitDemand together(std::span<const CircuitDemand>);

}  // namespace doorcard
