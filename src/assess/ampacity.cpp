// SPDX-License-Identifier: MIT
#include "assess/ampacity.hpp"

#include <algorithm>

#include "rules/lookups.hpp"

namespace doorcard {
namespace {

/// The column of the ampacity table that a temperature may use: the highest of 60, 75, 90 not above it.
int column_for(Celsius temperature) {
    if (temperature.value >= 90) return 90;
    return temperature.value >= 75 ? 75 : 60;
}

}  // namespace

Celsius terminal_temperature(const Wire& wire, std::optional<Amperes> device, const RuleBook& book) {
    if (wire.terminal_c) return *wire.terminal_c;
    const bool large = device && device->value > book.figure("terminal-limit");
    return Celsius(book.figure(large ? "terminal-high-c" : "terminal-low-c"));
}

std::optional<Amperes> ampacity(const Wire& wire, const std::string& size, Celsius terminals, const RuleBook& book) {
    if (!wire.metal) return std::nullopt;
    const int column = wire.insulation ? insulation_column(book, *wire.insulation).value_or(60) : 60;
    const auto own = listed_ampacity(book, size, *wire.metal, column);
    auto held = listed_ampacity(book, size, *wire.metal, column_for(terminals));
    if (!own || !held) return std::nullopt;
    if (wire.insulation && held_to_60(book, *wire.insulation))
        held = std::min(*held, listed_ampacity(book, size, *wire.metal, 60).value_or(*held));
    Amperes corrected = *own;
    if (wire.ambient_c) corrected = corrected * ambient_factor(book, *wire.ambient_c, column);
    if (wire.conductors_together) corrected = corrected * bundling_factor(book, *wire.conductors_together);
    return std::min(corrected, *held) * static_cast<double>(wire.sets.value_or(1));
}

std::optional<Amperes> ampacity(const Wire& wire, std::optional<Amperes> device, const RuleBook& book) {
    if (!wire.size) return std::nullopt;
    return ampacity(wire, *wire.size, terminal_temperature(wire, device, book), book);
}

}  // namespace doorcard
