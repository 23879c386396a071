// SPDX-License-Identifier: MIT
#pragma once
#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "base/quantity.hpp"

namespace doorcard {

/// The systems of contract section 2.
enum class System {
    split_120_240,    // 120/240 1ph 3w
    network_120_208,  // 120/208 1ph 3w: two legs and the neutral of a wye
    wye_208,          // 208Y/120 3ph 4w
    wye_480,          // 480Y/277 3ph 4w
    high_leg_240,     // 240/120 3ph 4w high-leg
    delta_240,        // 240 3ph 3w
    delta_480,        // 480 3ph 3w
    two_wire_120,     // 120 1ph 2w
    two_wire_230,     // 230 1ph 2w: read, drawn, mapped; no rules
    wye_400,          // 400Y/230 3ph 4w: likewise
};

/// What a system is, apart from where its legs stand. Volts are nominal, in V.
struct SystemFacts {
    System system;
    std::string_view name;  ///< as the survey file writes it
    int legs;
    Volts to_neutral;    ///< 0 where there is no neutral
    Volts line_to_line;  ///< 0 where there is one leg
    bool wye;            ///< legs stand 120 degrees apart about the neutral (3-wire systems are reckoned so too)
    bool has_rules;      ///< false: 'no rules for this system'
};

const SystemFacts& facts(System);
std::optional<System> system_named(std::string_view);
std::span<const SystemFacts> all_systems();

}  // namespace doorcard
