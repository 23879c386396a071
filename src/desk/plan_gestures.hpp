// SPDX-License-Identifier: MIT
#pragma once
#include "desk/face_picture.hpp"
#include "desk/plan.hpp"

// Gestures on the face of a panel whose finds are locked: each gives the plan with one change more, or the reason why
// it cannot be.
namespace doorcard {

/// The breaker that was found at `from`, or is planned to go there, is to go to `to`; onto another of as many poles:
/// the two are to change places.
Outcome<Plan> planned_move(const Survey&, const Plan&, const std::string& panel, Position from, Position to);
Outcome<Plan> planned_rating(const Survey&, const Plan&, const std::string& panel, Position,
                             std::optional<Amperes> amps);

/// What is planned on one panel, for its face; a change that cannot be done says so.
std::vector<PlannedMark> planned_marks(const Survey&, const Plan&, const std::string& panel, const Words&);

}  // namespace doorcard
