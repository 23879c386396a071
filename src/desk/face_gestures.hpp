// SPDX-License-Identifier: MIT
#pragma once
#include "desk/face_places.hpp"
#include "rules/book.hpp"
#include "survey/edits/edit.hpp"

// Gestures on the face of a panel: each gives one edit with a name in the trade's words, or the reason why it cannot
// be. What an edit of these would refuse is refused at once.
namespace doorcard {

/// The breaker at `from` goes to `to`; its legs follow. Onto another of as many poles: the two change places.
Outcome<Edit> move_to(const Survey&, const std::string& panel, Position from, Position to);
/// One handle over this space and the one below it; a breaker that sat there with nothing known of it gives way.
Outcome<Edit> two_pole_here(const Survey&, const std::string& panel, Position);
/// The space that is chosen keeps the breaker; nobody has seen what is in the others then.
Outcome<Edit> one_pole_here(const Survey&, const std::string& panel, Position);
Outcome<Edit> tied_with_below(const Survey&, const std::string& panel, Position);
Outcome<Edit> untied(const Survey&, const std::string& panel, Position);
/// A spare feeds nothing: refused while a circuit is known on it by more than the old directory.
Outcome<Edit> spare_or_in_use(const Survey&, const std::string& panel, Position);
Outcome<Edit> kept_off_or_on(const Survey&, const std::string& panel, Position);
/// Kept off, and why: that is what the card prints.
Outcome<Edit> kept_off(const Survey&, const std::string& panel, Position, const std::string& why);
/// With it go the names of it; circuits that it fed stay, fed by nobody knows what.
Outcome<Edit> taken_out(const Survey&, const std::string& panel, Position);
/// What `taken_out` takes along, and what it leaves without a breaker: to be said before.
std::vector<Message> what_goes_along(const Survey&, const std::string& panel, Position);
/// The standard rating next above or below what was read off it, of the rule book's list.
Outcome<Edit> next_rating(const Survey&, const RuleBook&, const std::string& panel, Position, bool up);

}  // namespace doorcard
