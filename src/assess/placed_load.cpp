// SPDX-License-Identifier: MIT
#include "assess/placed_load.hpp"

#include <algorithm>

#include "rules/lookups.hpp"

namespace doorcard {
namespace {

bool is_cord(const Load& load, const Outlet* outlet) {
    if (load.connection) return *load.connection == Connection::cord;
    return outlet && outlet->kind == OutletKind::receptacle;
}

bool is_motor_alone(const Load& load) {
    const Duty duty = load.duty_or_general();
    return duty == Duty::motor || duty == Duty::cooling || duty == Duty::heat_pump || load.hp;
}

PlacedLoad placed(const Network& network, std::size_t at, const LoadPlace& place, bool in_occupancy,
                  const RuleBook& book) {
    const Load& load = network.survey().loads[at];
    PlacedLoad found;
    found.load = &load;
    if (load.outlet) found.outlet = network.survey().outlets.position(*load.outlet);
    found.key = at;
    found.current = current_of(load, place, book);
    found.count = load.count_or_one();
    found.cord = is_cord(load, load.outlet ? network.survey().outlets.find(*load.outlet) : nullptr);
    found.by_rule = continuous_by_rule(load, found.cord, in_occupancy, book);
    found.continuous = found.by_rule || load.continuous.value_or(false);
    found.motor_alone = is_motor_alone(load);
    found.motor = found.motor_alone || load.largest_motor_a;
    return found;
}

/// 220.14(I): 180 VA per yoke; 90 VA per receptacle from four on.
VoltAmperes receptacle_va(const Outlet& outlet, const RuleBook& book) {
    const double by_yoke = outlet.yokes.value_or(1) * book.figure("receptacle-yoke-va");
    const double receptacles = outlet.receptacles.value_or(2);
    if (receptacles < book.figure("receptacle-each-from")) return VoltAmperes(by_yoke);
    return VoltAmperes(std::max(by_yoke, receptacles * book.figure("receptacle-each-va")));
}

PlacedLoad receptacle_load(const Network& network, std::size_t outlet, const LoadPlace& place, const RuleBook& book) {
    const Outlet& given = network.survey().outlets[outlet];
    Load as_load;
    as_load.va = receptacle_va(given, book);
    if (given.config)
        if (const auto says = configuration(book, *given.config)) as_load.volts = says->volts;
    PlacedLoad found;
    found.key = network.survey().loads.size() + outlet;
    found.outlet = outlet;
    found.current = current_of(as_load, place, book);
    return found;
}

std::vector<PlacedLoad> loads_of_circuit(const Network& network, std::size_t circuit, const RuleBook& book) {
    const LoadPlace place{supply_of_circuit(network, circuit), network.circuit_legs(circuit), false};
    const bool in_occupancy = network.circuit_in_occupancy(circuit);
    std::vector<PlacedLoad> found;
    for (const std::size_t at : network.loads_on(circuit))
        found.push_back(placed(network, at, place, in_occupancy, book));
    if (!in_occupancy) return found;
    for (const std::size_t o : network.outlets_on(circuit))
        if (network.survey().outlets[o].kind == OutletKind::receptacle && network.loads_at(o).empty())
            found.push_back(receptacle_load(network, o, place, book));
    return found;
}

}  // namespace

const PanelSupply* supply_of_circuit(const Network& network, std::size_t circuit) {
    for (const std::size_t b : network.breakers_of(circuit))
        if (network.panel_of(b) < network.survey().panels.size()) return &network.supply(network.panel_of(b));
    return nullptr;
}

bool continuous_by_rule(const Load& load, bool cord, bool in_occupancy, const RuleBook& book) {
    switch (load.duty_or_general()) {
        case Duty::ev:
        case Duty::sign:
        case Duty::show_window:
            return true;
        case Duty::heating:
            return !cord;
        case Duty::water_heater:
            return load.storage.value_or(true) && load.gallons.value_or(0) <= book.figure("water-heater-gallons");
        case Duty::lighting:
            return in_occupancy;
        default:
            return false;
    }
}

Amperes minimum_circuits(const std::vector<PlacedLoad>& loads) {
    Amperes sum(0);
    for (const PlacedLoad& load : loads)
        if (load.has_minimum_circuit()) sum += *load.load->min_circuit_a * load.count;
    return sum;
}

PlacedLoads place_loads(const Network& network, const RuleBook& book) {
    PlacedLoads all;
    for (std::size_t c = 0; c < network.survey().circuits.size(); ++c)
        all.on_circuit.push_back(loads_of_circuit(network, c, book));
    all.on_panel.resize(network.survey().panels.size());
    for (std::size_t l = 0; l < network.survey().loads.size(); ++l) {
        const auto& panel = network.survey().loads[l].panel;
        const std::size_t p = panel ? network.survey().panels.position(*panel) : network.survey().panels.size();
        if (p >= network.survey().panels.size()) continue;
        const LoadPlace place{&network.supply(p), network.supply(p).legs, true};
        all.on_panel[p].push_back(placed(network, l, place, network.in_occupancy(p), book));
    }
    return all;
}

}  // namespace doorcard
