// SPDX-License-Identifier: MIT
#pragma once
#include <optional>

#include "rules/book.hpp"
#include "survey/common.hpp"

namespace doorcard {

/// The temperature of a wire's terminals: as given, else by the device (110.14(C)(1)): low up to 100 A or unknown, high
/// above.
Celsius terminal_temperature(const Wire&, std::optional<Amperes> device, const RuleBook&);

/// Ampacity of one conductor of this size with this wire's metal, insulation, ambient and bundling, held to the
/// terminals (and NM-B, UF-B to 60 degrees). Parallel sets multiply. Nullopt: metal or size not known or not listed.
std::optional<Amperes> ampacity(const Wire&, const std::string& size, Celsius terminals, const RuleBook&);

/// The same for the wire's own size.
std::optional<Amperes> ampacity(const Wire&, std::optional<Amperes> device, const RuleBook&);

}  // namespace doorcard
