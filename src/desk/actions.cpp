// SPDX-License-Identifier: MIT
#include "desk/actions.hpp"

#include "desk/face_gestures.hpp"
#include "desk/plan_gestures.hpp"

namespace doorcard {

Action moved(const Desk& desk, Position from, Position to) {
    if (desk.notes.plan.as_found_locked) {
        auto plan = planned_move(desk.survey, desk.notes.plan, desk.spot.panel, from, to);
        if (!plan) return Refuse{std::move(plan.error())};
        return SetPlan{*std::move(plan)};
    }
    auto edit = move_to(desk.survey, desk.spot.panel, from, to);
    if (!edit) return Refuse{std::move(edit.error())};
    return Apply{*std::move(edit)};
}

}  // namespace doorcard
