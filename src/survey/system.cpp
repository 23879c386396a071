// SPDX-License-Identifier: MIT
#include "survey/system.hpp"

#include <algorithm>
#include <array>

namespace doorcard {
namespace {

// Contract section 2: nominal voltages by name of the system.
constexpr std::array<SystemFacts, 10> systems = {{
    {System::split_120_240, "120/240 1ph 3w", 2, Volts(120), Volts(240), false, true},
    {System::network_120_208, "120/208 1ph 3w", 2, Volts(120), Volts(208), true, true},
    {System::wye_208, "208Y/120 3ph 4w", 3, Volts(120), Volts(208), true, true},
    {System::wye_480, "480Y/277 3ph 4w", 3, Volts(277), Volts(480), true, true},
    {System::high_leg_240, "240/120 3ph 4w high-leg", 3, Volts(120), Volts(240), false, true},
    {System::delta_240, "240 3ph 3w", 3, Volts(0), Volts(240), true, true},
    {System::delta_480, "480 3ph 3w", 3, Volts(0), Volts(480), true, true},
    {System::two_wire_120, "120 1ph 2w", 1, Volts(120), Volts(0), false, true},
    {System::two_wire_230, "230 1ph 2w", 1, Volts(230), Volts(0), false, false},
    {System::wye_400, "400Y/230 3ph 4w", 3, Volts(230), Volts(400), true, false},
}};

}  // namespace

const SystemFacts& facts(System system) { return systems[static_cast<std::size_t>(system)]; }

std::optional<System> system_named(std::string_view name) {
    const auto found =
        std::find_if(systems.begin(), systems.end(), [&](const SystemFacts& s) { return s.name == name; });
    if (found == systems.end()) return std::nullopt;
    return found->system;
}

std::span<const SystemFacts> all_systems() { return systems; }

}  // namespace doorcard
