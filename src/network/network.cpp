// SPDX-License-Identifier: MIT
#include "network/network.hpp"

#include <algorithm>

#include "network/network_body.hpp"

namespace doorcard {
const std::string& id_of(const Survey& survey, Thing thing) {
    static const std::string none;
    switch (thing.kind) {
        case ThingKind::source:
            return survey.sources[thing.index].id;
        case ThingKind::panel:
            return survey.panels[thing.index].id;
        case ThingKind::breaker:
            return survey.breakers[thing.index].id;
        case ThingKind::circuit:
            return survey.circuits[thing.index].id;
        case ThingKind::outlet:
            return survey.outlets[thing.index].id;
        case ThingKind::load:
            return survey.loads[thing.index].id;
        default:
            return none;
    }
}

Network::Network(std::shared_ptr<const Body> body) : body_(std::move(body)) {}

const Survey& Network::survey() const { return body_->survey; }
const PanelSupply& Network::supply(std::size_t panel) const { return body_->supplies.panels[panel]; }
const SpaceGeometry& Network::geometry(std::size_t panel) const { return body_->supplies.geometries[panel]; }
const std::string& Network::breaker_legs(std::size_t breaker) const { return body_->supplies.breaker_legs[breaker]; }
std::size_t Network::panel_of(std::size_t breaker) const { return body_->panel_of[breaker]; }
const std::string& Network::circuit_legs(std::size_t circuit) const { return body_->circuit_legs[circuit]; }
std::optional<Volts> Network::circuit_volts(std::size_t circuit) const { return body_->circuit_volts[circuit]; }
const std::vector<Hot>& Network::circuit_hots(std::size_t circuit) const { return body_->circuit_hots[circuit]; }
const Positions& Network::breakers_in(std::size_t panel) const { return body_->breakers_in[panel]; }
const Positions& Network::circuits_on(std::size_t breaker) const { return body_->circuits_on[breaker]; }
const Positions& Network::breakers_of(std::size_t circuit) const { return body_->breakers_of[circuit]; }
const Positions& Network::outlets_on(std::size_t circuit) const { return body_->outlets_on[circuit]; }
const Positions& Network::circuits_at(std::size_t outlet) const { return body_->circuits_at[outlet]; }
const Positions& Network::loads_at(std::size_t outlet) const { return body_->loads_at[outlet]; }
const Positions& Network::loads_on(std::size_t circuit) const { return body_->loads_on[circuit]; }
const Positions& Network::panels_fed_by(std::size_t breaker) const { return body_->panels_fed_by[breaker]; }
const Positions& Network::breakers_feeding(std::size_t panel) const { return body_->breakers_feeding[panel]; }
const std::vector<SharedNeutral>& Network::neutrals() const { return body_->neutrals; }
bool Network::in_occupancy(std::size_t panel) const { return body_->in_occupancy[panel]; }
const Positions& Network::opened_with(std::size_t breaker) const { return body_->opened_with[breaker]; }
const std::vector<Feed>& Network::feeds() const { return body_->feeds; }
const Positions& Network::panels_from_the_top() const { return body_->panels_from_the_top; }

bool Network::circuit_in_occupancy(std::size_t circuit) const {
    return std::ranges::any_of(breakers_of(circuit), [&](std::size_t b) {
        return panel_of(b) < survey().panels.size() && in_occupancy(panel_of(b));
    });
}

std::vector<Thing> Network::dead_when_open(std::span<const Thing> opened) const {
    std::vector<Thing> starts;
    for (std::size_t s = 0; s < survey().sources.size(); ++s) starts.push_back({ThingKind::source, s});
    for (std::size_t p = 0; p < survey().panels.size(); ++p)
        if (survey().panels[p].fed_by.empty()) starts.push_back({ThingKind::panel, p});
    const std::vector<Thing> before = body_->graph->downstream(starts, {});
    const std::vector<Thing> after = body_->graph->downstream(starts, opened);
    std::vector<Thing> dead;
    std::ranges::set_difference(before, after, std::back_inserter(dead));
    std::erase_if(dead, [&](const Thing& thing) { return std::ranges::find(opened, thing) != opened.end(); });
    return dead;
}

std::vector<Thing> Network::upstream_of(Thing thing) const {
    std::vector<Thing> found = body_->graph->upstream(thing);
    std::erase(found, thing);
    return found;
}

std::vector<Thing> Network::downstream_of(Thing thing) const {
    std::vector<Thing> found = body_->graph->downstream(std::span(&thing, 1), {});
    std::erase(found, thing);
    return found;
}

Carried Network::carried_by(const Feed& feed) const {
    Carried carried;
    for (const Thing& thing : body_->graph->downstream(std::span(&feed.to, 1), {}))
        if (thing.kind == ThingKind::load) carried.loads.push_back(thing.index);
    const auto is_of = [&](const Address& of, Thing end) {
        return of.kind == end.kind && of.id == id_of(survey(), end);
    };
    for (std::size_t r = 0; r < survey().readings.size(); ++r) {
        const Address& of = survey().readings[r].of;
        if (is_of(of, feed.from) || is_of(of, feed.to)) carried.readings.push_back(r);
    }
    return carried;
}

std::vector<Thing> Network::fed_twice() const {
    std::vector<Thing> found;
    for (std::size_t c = 0; c < survey().circuits.size(); ++c)
        if (breakers_of(c).size() > 1) found.push_back({ThingKind::circuit, c});
    for (std::size_t o = 0; o < survey().outlets.size(); ++o)
        if (circuits_at(o).size() > 1) found.push_back({ThingKind::outlet, o});
    return found;
}

}  // namespace doorcard
