// SPDX-License-Identifier: MIT
#pragma once
#include "assess/figures.hpp"

namespace doorcard {

using OhmsPerFoot = Quantity<-1, 1, 0, -1>;

/// What one conductor opposes per foot at 75 °C (contract 3, 'Voltage drop'): Chapter 9 Table 8 through 1 AWG (solid 14
/// to 10, stranded above), Table 9 R cos + X sin from 1/0 at the angle of the current in degrees. Nullopt: metal or
/// size not known or not printed.
std::optional<OhmsPerFoot> conductor_impedance(const Wire&, double angle_degrees, const RuleBook&);

/// Fills `voltage_drop_percent` and `total_drop_percent` of circuits and feeders. Null where a length on the way is not
/// known, or no load is; behind a transformer the total is null.
void reckon_voltage_drops(Reckoned&);

}  // namespace doorcard
