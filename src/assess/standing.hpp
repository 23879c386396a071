// SPDX-License-Identifier: MIT
#pragma once
#include "assess/finding.hpp"
#include "network/network.hpp"

namespace doorcard {

Standing standing(const Network&, const Address& of);

/// The panel of a circuit's first breaker; the number of panels where it has none.
std::size_t panel_of_circuit(const Network&, std::size_t circuit);

}  // namespace doorcard
