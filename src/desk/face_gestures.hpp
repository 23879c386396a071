// SPDX-License-Identifier: MIT
#pragma once
#include "desk/face_places.hpp"
#include "survey/edits/edit.hpp"

// Gestures on the face of a panel: each gives one edit with a name in the trade's words, or the reason why it cannot
// be.
namespace doorcard {

/// The breaker at `from` goes to `to`; its legs follow. Onto another of as many poles: the two change places.
Outcome<Edit> move_to(const Survey&, const std::string& panel, Position from, Position to);
/// One handle over this space and the one below it; a breaker that sat there with nothing known of it gives way.
Outcome<Edit> two_pole_here(const Survey&, const std::string& panel, Position);
Outcome<Edit> one_pole_here(const Survey&, const std::string& panel, Position);
Outcome<Edit> tied_with_below(const Survey&, const std::string& panel, Position);
Outcome<Edit> untied(const Survey&, const std::string& panel, Position);
Outcome<Edit> spare_or_in_use(const Survey&, const std::string& panel, Position);
Outcome<Edit> kept_off_or_on(const Survey&, const std::string& panel, Position);
/// With it go the names of it; circuits that it fed stay, fed by nobody knows what.
Outcome<Edit> taken_out(const Survey&, const std::string& panel, Position);

}  // namespace doorcard
