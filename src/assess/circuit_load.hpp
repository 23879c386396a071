// SPDX-License-Identifier: MIT
#pragma once
#include <map>
#include <span>

#include "assess/placed_load.hpp"

namespace doorcard {

/// What the loads of a circuit (or of all circuits of one breaker) ask of one leg (contract 3, reckoning 'Circuits'):
/// the phasor sums of each class, and the amperes that follow from them.
struct LegDemand {
    LegSums::Pair continuous_sum, noncontinuous_sum;    ///< all of a class
    LegSums::Pair continuous_bare, noncontinuous_bare;  ///< without loads that state a minimum circuit ampacity
    LegSums::Pair cord_sum;                             ///< all cord nameplates together
    Amperes largest_motor;                              ///< fixed, noncontinuous, over 1/8 hp
    Amperes minimum_circuits;                           ///< minimum circuit ampacities, as they stand

    Amperes continuous, noncontinuous, cords;  ///< sizes of the sums
    Amperes required;  ///< noncontinuous + 1.25 continuous + 0.25 largest motor + minimum circuit ampacities
    Amperes everything() const { return continuous + noncontinuous; }
};

/// Legs in letters ascending; empty where the legs, or all loads, are not known.
struct CircuitDemand {
    std::map<char, LegDemand> legs;
    double appliances = 0;      ///< counted one by one; the motor's extra wants a second one
    bool motors_alone = false;  ///< every load is a motor, cooling or heat pump, or has hp; and there is one

    const LegDemand* largest_required() const;
    const LegDemand* largest_sum() const;  ///< of continuous + noncontinuous
};

/// The demand of a circuit. `full_rated`: its device is listed for 100 % continuous duty.
CircuitDemand circuit_demand(const std::vector<PlacedLoad>&, const std::string& legs, const PanelSupply*,
                             bool in_occupancy, bool full_rated, const RuleBook&);

/// Several circuits on one breaker: their phasors added leg by leg, each with its own largest cord appliance.
CircuitDemand together(std::span<const CircuitDemand>, bool full_rated, const RuleBook&);

}  // namespace doorcard
