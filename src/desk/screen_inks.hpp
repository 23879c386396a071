// SPDX-License-Identifier: MIT
#pragma once
#include "sheet/inks.hpp"
#include "sheet/paint.hpp"

namespace doorcard {

/// The grounds that marks are shown on beside paper.
enum class Ground { day, night, contrast };

Ink ground_ink(Ground);
/// What the inks of the sheets become on that ground: the paper's white becomes the ground, text stays at least 4.5 : 1
/// against it.
InkMap screen_inks(Ground);

}  // namespace doorcard
