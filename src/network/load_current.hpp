// SPDX-License-Identifier: MIT
#pragma once
#include "network/legs.hpp"
#include "rules/book.hpp"
#include "survey/load.hpp"

namespace doorcard {

/// How a load sits on its conductors. `halves`: AN+BN, half on each.
enum class Placing { line_to_neutral, line_to_line, three_phase, halves };

/// Where a load is set: the legs of its circuit (or of its panel) and what stands on them.
struct LoadPlace {
    const PanelSupply* supply = nullptr;  ///< null: the panel is not known
    std::string legs;                     ///< ascending; empty: not known
    bool on_panel = false;                ///< set straight on a panel: without `legs` it needs `volts`
};

/// The current of ONE of a load (contract 3 'A load's current', reckoning 'A load'). Amperes are RMS, on each leg it
/// uses.
struct LoadCurrent {
    Placing placing = Placing::line_to_neutral;
    std::string legs;  ///< the legs it uses; where not known, all that it may use
    bool legs_known = false;
    std::optional<Volts> nominal;  ///< between the conductors it uses
    std::optional<VoltAmperes> va;
    std::optional<Amperes> fundamental;  ///< nullopt: the current is not known
    Amperes third;                       ///< third harmonic
    double lag_degrees = 0;              ///< of the fundamental behind its voltage; negative: leading

    bool known() const { return fundamental.has_value(); }
    Amperes total() const { return Amperes(std::hypot(fundamental.value_or(Amperes(0)).value, third.value)); }
};

/// Resistive by duty: heating, water-heater, range, cooktop, oven, dryer.
bool is_resistive(Duty);

LoadCurrent current_of(const Load&, const LoadPlace&, const RuleBook&);

}  // namespace doorcard
