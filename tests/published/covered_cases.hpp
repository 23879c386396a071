// SPDX-License-Identifier: MIT
#pragma once
#include <cmath>

#include "published/reference.hpp"

/// The cases of ../shared/reference/circuit_cases.toml that stand in our tests, with their literal expectations, by
/// family.
std::vector<reference::Case> covered_load_cases();
std::vector<reference::Case> covered_wire_cases();
std::vector<reference::Case> covered_neutral_cases();
std::vector<reference::Case> covered_leg_cases();
std::vector<reference::Case> covered_voltage_cases();
std::vector<reference::Case> covered_protection_cases();
std::vector<reference::Case> covered_open_neutral_cases();

/// Ids of a list of cases, under one kind.
template <class Cases>
void add_cases(std::vector<reference::Case>& all, const char* kind, const Cases& cases) {
    for (const auto& one : cases) all.push_back({one.id, kind});
}

/// Equal as the cases ask for it: within 1e-4 of the value, or 1e-9.
inline bool as_printed(double ours, double printed) {
    return std::abs(ours - printed) <= 1e-4 * std::abs(printed) + 1e-9;
}
