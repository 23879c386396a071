// SPDX-License-Identifier: MIT
#pragma once
#include <climits>
#include <cstdint>

#include "network/network.hpp"

namespace doorcard {

/// Where a thing stands in a list by panel and space: the panel's position and the lowest space; things without a panel
/// come last.
struct Standing {
    std::size_t panel = SIZE_MAX;
    int space = INT_MAX;
};

Standing standing(const Network&, const Address& of);

}  // namespace doorcard
