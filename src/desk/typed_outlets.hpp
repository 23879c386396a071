// SPDX-License-Identifier: MIT
#pragma once
#include <string_view>

#include "survey/edits/edit.hpp"

namespace doorcard {

/// A line of the Rooms page, as it is typed:
///   `Kitchen r6 l2 range`    a room and what is in it: r receptacles, l lights, s switches, b boxes, anything else by
///                            its name; numbered K1, K2 ... to match tape dots, going on where the room has some
///   `Kitchen r2@5 gf`        these on breaker 5 (only claimed), with a ground guard each
///   `K3: behind the sofa`    what is said of an outlet that is there
///   `off 5 7`                a round: these handles are off now
///   `K: o o s . d`           answers of that room's outlets in the last round: out, stayed, not seen, odd
/// Several lines are one edit. `panel` is what bare space numbers are of.
Outcome<Edit> typed_outlets(const Survey&, std::string_view panel, std::string_view typed);

}  // namespace doorcard
