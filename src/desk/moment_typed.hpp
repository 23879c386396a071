// SPDX-License-Identifier: MIT
#pragma once
#include <string>
#include <string_view>

#include "base/outcome.hpp"

namespace doorcard {

/// A date, or a date and a time of day, as it is typed (`2026-5-14`, `2026-05-14 9:30`, with or without an offset), as
/// the survey file writes it. `needs_time`: a bare date is refused, for it would make a whole day one moment. Other
/// orders of day and month may be read two ways and are refused.
Outcome<std::string> moment_typed(std::string_view typed, bool needs_time);

}  // namespace doorcard
