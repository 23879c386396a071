// SPDX-License-Identifier: MIT
#pragma once
#include "rules/book.hpp"
#include "survey/common.hpp"

namespace doorcard {

// Questions that the calculators put to the book's tables. Nullopt: the table has no such row or cell (printed as a
// dash, stored as 0): the figure is unknown, never 0.

/// Table 310.16, not corrected. `column_c` is 60, 75 or 90.
std::optional<Amperes> listed_ampacity(const RuleBook&, std::string_view size, Metal, int column_c);
/// Column of an insulation's letters (reckoning, 'Wire'); NM-B and UF-B: 90. Nullopt: unlisted. Case and spaces do not
/// matter.
std::optional<int> insulation_column(const RuleBook&, std::string_view letters);
/// NM-B, UF-B: held to the 60 degree column in the end (334.80, 340.80).
bool held_to_60(const RuleBook&, std::string_view letters);
/// Table 310.15(B)(1)(1); between two rows the hotter; 0 where not permitted or hotter than the table.
double ambient_factor(const RuleBook&, Celsius ambient, int column_c);
/// Table 310.15(C)(1).
double bundling_factor(const RuleBook&, int conductors);
/// 240.4(D): the largest device for small conductors; nullopt where it sets none.
std::optional<Amperes> small_conductor_device(const RuleBook&, std::string_view size, Metal);
/// 240.6(A): the least standard rating not below `amps` (within 1e-9); nullopt over the largest.
std::optional<Amperes> standard_rating_at_least(const RuleBook&, Amperes amps);
/// 310.12: the least conductor size for a dwelling service or main feeder of this rating; between two ratings of the
/// table the larger; nullopt below and above the table (it begins at 100 A and ends at 400 A).
std::optional<std::string> dwelling_service_size(const RuleBook&, Metal, Amperes rating);
/// True where `size` is at least `other` in the order of Table 310.16; nullopt where either is not in it.
std::optional<bool> at_least_size(const RuleBook&, std::string_view size, std::string_view other);
/// Horsepower as a number: "3/4", "1-1/2", "5", "1.5". Nullopt: not a horsepower (a sign, zero, words).
std::optional<double> horsepower(std::string_view hp);
/// Tables 430.248 and 430.250 at the nominal volts of the conductors (120: 115, 208: 208, 240: 230, 480: 460; else
/// nullopt), the next larger row where none is equal.
std::optional<Amperes> motor_current(const RuleBook&, std::string_view hp, Volts nominal, int phases);
/// Table 430.52(C)(1) in per cent of full-load current; `fuse`: the column of time-delay fuses. Single-phase and
/// squirrel cage.
double motor_device_percent(const RuleBook&, bool fuse, int phases);
/// Table 220.55 Column C with note 1, for one household range of more than 1.75 and up to 27 kW; nullopt outside.
std::optional<VoltAmperes> range_demand(const RuleBook&, VoltAmperes rating);
/// Volts and amperes that a NEMA configuration says ("5-20R": 120 V, 20 A); nullopt where not known.
struct Configuration {
    Volts volts;
    Amperes amps;
};
std::optional<Configuration> configuration(const RuleBook&, std::string_view nema);

}  // namespace doorcard
