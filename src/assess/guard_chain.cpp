// SPDX-License-Identifier: MIT
#include "assess/guard_chain.hpp"

#include <algorithm>

namespace doorcard {
namespace {

bool has(const Guards& guards, Guard guard) { return guards && std::ranges::find(*guards, guard) != guards->end(); }

/// The outlet that feeds this one; null where it comes straight from the panel or the order is not known.
const Outlet* fed_through(const Survey& survey, const Outlet& outlet) {
    return outlet.upstream ? survey.outlets.find(*outlet.upstream) : nullptr;
}

bool guarded_on_the_way(const Survey& survey, const Outlet& outlet, Guard guard) {
    for (const Outlet* at = &outlet; at; at = fed_through(survey, *at))
        if (has(at->guards, guard)) return true;
    return false;
}

/// A breaker's own guard, or that of one above it.
bool guarded_from(const Network& network, std::size_t breaker, Guard guard) {
    const Survey& survey = network.survey();
    if (has(survey.breakers[breaker].guards, guard)) return true;
    return std::ranges::any_of(network.upstream_of({ThingKind::breaker, breaker}), [&](Thing above) {
        return above.kind == ThingKind::breaker && has(survey.breakers[above.index].guards, guard);
    });
}

bool way_is_known(const Survey& survey, const Outlet& outlet) {
    const Outlet* first = &outlet;
    while (const Outlet* above = fed_through(survey, *first)) first = above;
    return first->upstream == "home-run";
}

}  // namespace

std::optional<std::string> place_of(const Survey& survey, const Outlet& outlet) {
    if (outlet.place) return outlet.place;
    const Room* room = outlet.room ? survey.rooms.find(*outlet.room) : nullptr;
    return room ? room->place : std::nullopt;
}

bool is_guarded(const Network& network, std::size_t outlet, std::size_t circuit, Guard guard) {
    if (guarded_on_the_way(network.survey(), network.survey().outlets[outlet], guard)) return true;
    const auto& breakers = network.breakers_of(circuit);
    return !breakers.empty() &&
           std::ranges::all_of(breakers, [&](std::size_t b) { return guarded_from(network, b, guard); });
}

bool may_be_guarded(const Network& network, std::size_t outlet, std::size_t circuit, Guard guard) {
    const Survey& survey = network.survey();
    if (way_is_known(survey, survey.outlets[outlet])) return false;
    return std::ranges::any_of(network.outlets_on(circuit),
                               [&](std::size_t other) { return has(survey.outlets[other].guards, guard); });
}

}  // namespace doorcard
