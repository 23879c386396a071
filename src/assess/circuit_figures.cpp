// SPDX-License-Identifier: MIT
#include <algorithm>
#include <array>

#include "assess/ampacity.hpp"
#include "assess/figures.hpp"
#include "assess/voltage_drop.hpp"

namespace doorcard {
namespace {

Measured measured_of(const Reckoned& all, ThingKind kind, const std::string& id) {
    Measured found;
    for (const Reading* reading : all.readings.of(kind, id))
        if (is_of_hots(*reading)) found.take(*reading, all.book.figure("continuous-hours"));
    return found;
}

bool full_rated(const Network& network, std::size_t circuit) {
    const auto& breakers = network.breakers_of(circuit);
    return !breakers.empty() && std::ranges::all_of(breakers, [&](std::size_t b) {
        return network.survey().breakers[b].full_rated.value_or(false);
    });
}

LegSums sums_of(const std::vector<PlacedLoad>& loads, const PanelSupply* supply) {
    LegSums sums;
    if (!supply) return sums;
    for (const PlacedLoad& load : loads) sums.add(load.current, *supply, load.count);
    return sums;
}

std::optional<VoltAmperes> connected(const std::vector<PlacedLoad>& loads) {
    std::optional<VoltAmperes> sum;
    for (const PlacedLoad& load : loads)
        if (load.current.va) sum = sum.value_or(VoltAmperes(0)) + *load.current.va * load.count;
    return sum;
}

std::optional<double> percent_of(const LoadFigures& figures, const CircuitDemand& demand) {
    if (!figures.rating_a) return std::nullopt;
    std::optional<Amperes> most = figures.measured_a;
    if (const LegDemand* leg = demand.largest_sum(); leg && (!most || leg->everything() > *most))
        most = leg->everything();
    if (!most) return std::nullopt;
    return 100 * (*most / *figures.rating_a);
}

LoadFigures figures_of(Reckoned& all, std::size_t c) {
    const Network& network = all.network;
    const Circuit& circuit = network.survey().circuits[c];
    LoadFigures figures;
    figures.id = circuit.id;
    figures.breakers = circuit.breakers;
    figures.legs = network.circuit_legs(c);
    figures.volts = network.circuit_volts(c);
    figures.rating_a = smallest_rating(network, network.breakers_of(c));
    figures.connected_va = connected(all.placed.on_circuit[c]);
    if (const LegDemand* leg = all.demands[c].largest_required()) {
        figures.continuous_a = leg->continuous;
        figures.noncontinuous_a = leg->noncontinuous;
        figures.required_a = leg->required;
    }
    figures.measured_a = all.measured[c].highest;
    figures.sustained_a = all.measured[c].sustained;
    const LegSums sums = sums_of(all.placed.on_circuit[c], supply_of_circuit(network, c));
    for (const char leg : figures.legs)
        figures.legs_a[leg] = sums.any_known() ? std::optional(sums.amps(leg)) : std::nullopt;
    figures.percent_of_rating = percent_of(figures, all.demands[c]);
    if (circuit.wire) figures.ampacity_a = ampacity(*circuit.wire, figures.rating_a, all.book);
    return figures;
}

}  // namespace

std::optional<Amperes> smallest_rating(const Network& network, const std::vector<std::size_t>& breakers) {
    std::optional<Amperes> smallest;
    for (const std::size_t b : breakers)
        if (const auto rating = network.survey().breakers[b].amps; rating && (!smallest || *rating < *smallest))
            smallest = rating;
    return smallest;
}

std::optional<Amperes> largest_rating(const Network& network, const std::vector<std::size_t>& breakers) {
    std::optional<Amperes> largest;
    for (const std::size_t b : breakers)
        if (const auto rating = network.survey().breakers[b].amps; rating && (!largest || *rating > *largest))
            largest = rating;
    return largest;
}

void reckon_circuits(Reckoned& all) {
    const Network& network = all.network;
    const Survey& survey = network.survey();
    for (const Breaker& breaker : survey.breakers)
        all.measured_breakers.push_back(measured_of(all, ThingKind::breaker, breaker.id));
    for (std::size_t c = 0; c < survey.circuits.size(); ++c) {
        all.demands.push_back(circuit_demand(all.placed.on_circuit[c], network.circuit_legs(c),
                                             supply_of_circuit(network, c), network.circuit_in_occupancy(c),
                                             full_rated(network, c), all.book));
        Measured measured = measured_of(all, ThingKind::circuit, survey.circuits[c].id);
        for (const std::size_t b : network.breakers_of(c))
            if (network.circuits_on(b).size() == 1) measured.take(all.measured_breakers[b]);
        all.measured.push_back(measured);
        all.circuits.push_back(figures_of(all, c));
    }
}

Reckoned reckon(const Network& network, const RuleBook& book, const Readings& readings, const KnownTotals& known) {
    Reckoned all{network, book, readings, place_loads(network, book)};
    reckon_circuits(all);
    reckon_panels(all, known);
    reckon_neutrals(all);
    reckon_voltage_drops(all);
    reckon_joints(all);
    return all;
}

}  // namespace doorcard
