// SPDX-License-Identifier: MIT
#pragma once
#include "assess/finding.hpp"
#include "network/network.hpp"

namespace doorcard {

/// The year of a circuit's work: `installed`, else the building's; nullopt: not known, and then nothing is called old.
std::optional<int> year_of_circuit(const Network&, std::size_t circuit);

/// Says of a finding that it 'may have been lawful when installed; the hazard remains', and that it applies to existing
/// work.
void call_old(Finding&);

}  // namespace doorcard
