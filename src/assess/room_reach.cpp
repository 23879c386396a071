// SPDX-License-Identifier: MIT
#include "assess/room_reach.hpp"

#include <algorithm>

#include "assess/directory.hpp"

namespace doorcard {
namespace {

// The dwelling that lists a panel as its own; null: none does.
const Dwelling* dwelling_of(const Survey& survey, std::size_t panel) {
    for (const Dwelling& dwelling : survey.dwellings)
        if (dwelling.panels && std::ranges::find(*dwelling.panels, survey.panels[panel].id) != dwelling.panels->end())
            return &dwelling;
    return nullptr;
}

bool is_off(const Network& network, std::size_t breaker) {
    return network.survey().breakers[breaker].state == BreakerState::off;
}

// All handles that must be off: of the circuits, of what shares their neutrals, and what is tied to them.
std::set<std::size_t> handles_of(const Network& network, const std::vector<std::size_t>& circuits) {
    std::set<std::size_t> found;
    for (const std::size_t circuit : circuits) {
        found.insert(network.breakers_of(circuit).begin(), network.breakers_of(circuit).end());
        for (const SharedNeutral& neutral : network.neutrals())
            if (std::ranges::find(neutral.circuits, circuit) != neutral.circuits.end())
                for (const Hot& hot : neutral.hots) found.insert(hot.breaker);
    }
    std::set<std::size_t> tied;
    for (const std::size_t breaker : found)
        tied.insert(network.opened_with(breaker).begin(), network.opened_with(breaker).end());
    found.merge(tied);
    return found;
}

HandleTrust trust_of(const Network& network, const std::vector<std::size_t>& circuits) {
    const Survey& survey = network.survey();
    bool all_off = true, fire_alarm = false, claimed = false;
    if (circuits.empty()) return HandleTrust::not_traced;
    for (const std::size_t circuit : circuits) {
        if (network.breakers_of(circuit).empty()) return HandleTrust::not_traced;
        for (const std::size_t breaker : network.breakers_of(circuit)) {
            all_off = all_off && is_off(network, breaker);
            fire_alarm = fire_alarm || survey.breakers[breaker].system == "fire-alarm";
        }
        claimed = claimed || !survey.circuits[circuit].traced || !survey.circuits[circuit].traced->proves();
    }
    if (all_off) return HandleTrust::kept_off;
    if (fire_alarm) return HandleTrust::fire_alarm;
    return claimed ? HandleTrust::claimed : HandleTrust::traced;
}

}  // namespace

RoomReach::RoomReach(const Network& network, std::size_t panel) : network_(network), panel_(panel) {
    covered_.insert(panel);
    for (const Thing thing : network.downstream_of({ThingKind::panel, panel}))
        if (thing.kind == ThingKind::panel && same_premises(thing.index)) covered_.insert(thing.index);
    for (const Thing thing : network.upstream_of({ThingKind::panel, panel})) {
        if (thing.kind != ThingKind::panel || thing.index == panel) continue;
        at_the_root_ = false;
        at_the_top_ = at_the_top_ && !same_premises(thing.index);
    }
}

bool RoomReach::same_premises(std::size_t panel) const {
    return dwelling_of(network_.survey(), panel) == dwelling_of(network_.survey(), panel_);
}

bool RoomReach::reaches_circuit(std::size_t circuit) const {
    const auto& breakers = network_.breakers_of(circuit);
    if (breakers.empty()) return at_the_root_;
    return std::ranges::any_of(breakers, [&](std::size_t b) { return covers(network_.panel_of(b)); });
}

std::vector<std::size_t> RoomReach::breakers_at(std::size_t outlet) const {
    std::vector<std::size_t> found;
    for (const std::size_t circuit : network_.circuits_at(outlet))
        found.insert(found.end(), network_.breakers_of(circuit).begin(), network_.breakers_of(circuit).end());
    return found;
}

bool RoomReach::reaches_outlet(std::size_t outlet) const {
    const auto breakers = breakers_at(outlet);
    if (breakers.empty()) return at_the_root_;
    return std::ranges::any_of(breakers, [&](std::size_t b) { return covers(network_.panel_of(b)); });
}

bool RoomReach::elsewhere(std::size_t outlet) const {
    const auto breakers = breakers_at(outlet);
    return !breakers.empty() &&
           std::ranges::none_of(breakers, [&](std::size_t b) { return same_premises(network_.panel_of(b)); });
}

void sort_handles(const Network& network, std::vector<std::size_t>& breakers) {
    const auto& all = network.survey().breakers;
    std::ranges::sort(breakers, {},
                      [&](std::size_t b) { return std::pair(network.panel_of(b), positions_of(all[b])); });
}

RoomLine line_of(const Network& network, const std::vector<std::size_t>& circuits) {
    RoomLine line;
    line.trust = trust_of(network, circuits);
    for (const std::size_t breaker : handles_of(network, circuits))
        (is_off(network, breaker) ? line.kept_off : line.breakers).push_back(breaker);
    if (line.trust == HandleTrust::not_traced || line.trust == HandleTrust::kept_off) line.breakers.clear();
    sort_handles(network, line.breakers);
    return line;
}

RoomLine line_of_panel(const Network& network, std::size_t panel) {
    RoomLine line;
    const Panel& thing = network.survey().panels[panel];
    line.breakers = network.breakers_feeding(panel);
    const bool several = thing.fed_by.size() != 1 || !sources_at(network, panel).empty();
    line.trust = several ? HandleTrust::all_off : HandleTrust::traced;
    std::ranges::copy_if(line.breakers, std::back_inserter(line.kept_off),
                         [&](std::size_t b) { return is_off(network, b); });
    if (!line.kept_off.empty()) line.trust = HandleTrust::kept_off;
    if (line.trust != HandleTrust::traced) line.breakers.clear();
    sort_handles(network, line.breakers);
    return line;
}

}  // namespace doorcard
