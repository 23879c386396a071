// SPDX-License-Identifier: MIT
#pragma once
#include "network/leg_sums.hpp"
#include "network/network.hpp"
#include "rules/book.hpp"

namespace doorcard {

/// A load where it is set, with what the rules ask of it. A receptacle of an occupancy without a load stands here too,
/// as the fixed noncontinuous load of 220.14(I): then `load` is null.
struct PlacedLoad {
    const Load* load = nullptr;
    std::size_t key = 0;  ///< the same for the same load wherever it is placed
    std::optional<std::size_t>
        outlet;  ///< where it is plugged or wired in; nullopt: set straight on the circuit or panel
    LoadCurrent current;
    double count = 1;
    bool continuous = false;  ///< declared, or by rule
    bool by_rule = false;     ///< continuous by rule, whatever is declared
    bool cord = false;
    bool motor = false;        ///< duty motor, cooling or heat-pump, with hp, or with largest_motor_a
    bool motor_alone = false;  ///< the same without largest_motor_a: nothing but a motor (430.22, 430.52)

    Duty duty() const { return load ? load->duty_or_general() : Duty::general; }
    bool has_minimum_circuit() const { return load && load->min_circuit_a; }
};

/// The loads of every circuit, and those set straight on a panel, by position. The survey must outlive it.
struct PlacedLoads {
    std::vector<std::vector<PlacedLoad>> on_circuit;
    std::vector<std::vector<PlacedLoad>> on_panel;
};

/// Minimum circuit ampacities of these loads together, as their nameplates state them; 0 where none does.
Amperes minimum_circuits(const std::vector<PlacedLoad>&);

PlacedLoads place_loads(const Network&, const RuleBook&);

/// The panel whose legs a circuit's loads stand on: that of its first known breaker; null where none is known.
const PanelSupply* supply_of_circuit(const Network&, std::size_t circuit);

/// Continuous by rule (contract 3): ev, fixed electric heating, storage water heaters up to 120 gal, signs, show
/// windows, and lighting in an occupancy.
bool continuous_by_rule(const Load&, bool cord, bool in_occupancy, const RuleBook&);

}  // namespace doorcard
