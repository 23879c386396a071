// SPDX-License-Identifier: MIT
#include "desk/plan_gestures.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "desk/face_places.hpp"

namespace doorcard {
namespace {

/// The breaker of before the plan that sits at a place once it is carried out; null where none does.
const Breaker* planned_at(const Survey& found, const Survey& planned, const std::string& panel, Position at) {
    const Breaker* breaker = breaker_at(planned, panel, at);
    return breaker ? &found.breakers[planned.breakers.position(breaker->id)] : nullptr;
}

Outcome<const Breaker*> chosen(const Survey& found, const Survey& planned, const std::string& panel, Position at) {
    const Breaker* breaker = breaker_at(found, panel, at);
    if (!breaker) breaker = planned_at(found, planned, panel, at);
    if (!breaker) return refused(fmt::format("no breaker is known in {}", name_of(at)), "choose one that is there");
    return breaker;
}

std::vector<Position> positions_of(const BreakerPlace& place) {
    std::vector<Position> positions;
    for (std::size_t i = 0; i < place.spaces.size(); ++i)
        positions.push_back({place.spaces[i], place.halves.empty() ? ' ' : place.halves[i]});
    return positions;
}

std::string words_of(const PlannedFor& planned, const Words& words) {
    std::string all;
    for (const Message& each : planned.words) all += (all.empty() ? "" : "; ") + words.say(each);
    return planned.can_be_done ? all : words.say({tr("cannot be done any more: {0}"), {all}});
}

}  // namespace

Outcome<Plan> planned_move(const Survey& found, const Plan& plan, const std::string& panel, Position from,
                           Position to) {
    const Survey planned = planned_survey(found, plan).survey;
    const auto breaker = chosen(found, planned, panel, from);
    if (!breaker) return tl::unexpected(breaker.error());
    const Breaker& it = **breaker;
    const Breaker* other = planned_at(found, planned, panel, to);
    if (other && other != &it && other->poles() == it.poles() && other->halves.size() == it.halves.size())
        return with_change(found, plan, PlannedSwap{found_breaker(found, it), found_breaker(found, *other)});
    const auto spaces = spaces_down(found, panel, to.space, static_cast<int>(it.poles()));
    if (!spaces)
        return refused(fmt::format("{} poles do not fit from {} down", it.poles(), name_of(to)),
                       "choose a space further up");
    std::vector<char> halves;
    if (!it.halves.empty()) halves.assign(spaces->size(), to.half == ' ' ? it.halves.front() : to.half);
    return with_change(found, plan, PlannedMove{found_breaker(found, it), {panel, *spaces, halves}});
}

Outcome<Plan> planned_rating(const Survey& found, const Plan& plan, const std::string& panel, Position at,
                             std::optional<Amperes> amps) {
    const auto breaker = chosen(found, planned_survey(found, plan).survey, panel, at);
    if (!breaker) return tl::unexpected(breaker.error());
    return with_change(found, plan, PlannedRating{found_breaker(found, **breaker), (*breaker)->amps, amps});
}

std::vector<PlannedMark> planned_marks(const Survey& found, const Plan& plan, const std::string& panel,
                                       const Words& words) {
    std::vector<PlannedMark> marks;
    for (const auto& [id, it] : planned_by_breaker(found, plan)) {
        if (it.from.panel != panel && it.to.panel != panel) continue;
        PlannedMark mark{{}, {}, std::nullopt, words_of(it, words)};
        if (it.from.panel == panel) mark.from = positions_of(it.from);
        if (it.to.panel == panel) mark.to = positions_of(it.to);
        if (it.amps) mark.amps = it.amps->value;
        marks.push_back(std::move(mark));
    }
    return marks;
}

}  // namespace doorcard
