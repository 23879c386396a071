// SPDX-License-Identifier: MIT
#pragma once
#include <string_view>

#include "base/outcome.hpp"

namespace doorcard {

/// A number as a person types it, in the unit of its field: `20`, `20 A`, `3,5`, `1.2 kW` of watts, `38 ft` of metres.
/// Refused: what may be read two ways (`1,200`), a unit of another kind, no number at all.
Outcome<double> number_typed(std::string_view typed, std::string_view unit);

}  // namespace doorcard
