// SPDX-License-Identifier: MIT
#include <algorithm>
#include <array>

#include "assess/schedule_parts.hpp"
#include "file/enum_words.hpp"

namespace doorcard {
namespace {

VoltAmperes all_of(const PlacedLoad& load) { return *load.current.va * load.count; }

void take_once(std::vector<Duty>& duties, Duty duty) {
    if (std::ranges::find(duties, duty) == duties.end()) duties.push_back(duty);
}

/// The circuit whose readings are the device's: its only one, and on no other device.
std::optional<std::size_t> only_circuit(const Network& network, std::size_t breaker) {
    const auto& circuits = network.circuits_on(breaker);
    if (circuits.size() != 1 || network.breakers_of(circuits.front()).size() != 1) return std::nullopt;
    return circuits.front();
}

/// The one panel whose legs are the device's: fed by it alone among panels, no circuit beside it, no transformer.
std::optional<std::size_t> only_panel(const Network& network, std::size_t breaker) {
    const auto& fed = network.panels_fed_by(breaker);
    if (fed.size() != 1 || !network.circuits_on(breaker).empty()) return std::nullopt;
    if (network.survey().panels[fed.front()].transformer) return std::nullopt;
    return fed.front();
}

void take_readings(const Reckoned& all, ThingKind kind, const std::string& id, bool one_leg, ScheduleRow& row) {
    for (const Reading* reading : all.readings.of(kind, id)) {
        if (!is_of_hots(*reading)) continue;
        const auto amps = highest_amps(*reading);
        const std::string& legs = reading->of.legs;
        for (auto& [leg, measured] : row.measured_a)
            if (amps && (legs == std::string(1, leg) || (one_leg && legs.empty())) && (!measured || *amps > *measured))
                measured = amps;
    }
}

struct Percent {
    std::optional<Amperes> calculated, measured;
};

Percent loads_on_device(const Reckoned& all, const ScheduleRow& row) {
    std::vector<CircuitDemand> demands;
    for (const std::size_t circuit : row.entry.circuits) demands.push_back(all.demands[circuit]);
    const CircuitDemand demand = together(demands, false, all.book);
    const LegDemand* most = demand.largest_sum();
    return {most ? std::optional(most->everything()) : std::nullopt, row.measured_highest_a};
}

// How sure a way of tracing is; a row is as sure as its least sure circuit.
constexpr std::array<const char*, 6> ways = {"told", "old-directory", "tracer", "seen", "test-load", "switching"};

int sureness(const std::optional<Traced>& traced) {
    if (!traced || !traced->how) return -1;
    const auto found = std::find(ways.begin(), ways.end(), *traced->how);
    return found == ways.end() ? -1 : static_cast<int>(found - ways.begin());
}

void set_traced(const Survey& survey, ScheduleRow& row) {
    int least = static_cast<int>(ways.size());
    for (const std::size_t circuit : row.entry.circuits)
        least = std::min(least, sureness(survey.circuits[circuit].traced));
    if (least >= 0 && least < static_cast<int>(ways.size())) row.traced = ways[static_cast<std::size_t>(least)];
}

void set_ground(const Survey& survey, ScheduleRow& row) {
    std::vector<std::optional<std::string>> sizes;
    for (const std::size_t circuit : row.entry.circuits) {
        const auto& ground = survey.circuits[circuit].ground;
        sizes.push_back(ground ? ground->size : std::nullopt);
    }
    if (row.entry.circuits.empty())
        for (const Wire& wire : row.wires) sizes.push_back(wire.ground_size);
    const bool alike = !sizes.empty() && std::ranges::all_of(sizes, [&](const auto& s) { return s == sizes.front(); });
    if (alike) row.ground_size = sizes.front();
}

}  // namespace

std::optional<VoltAmperes> RowLoads::connected() const {
    std::optional<VoltAmperes> sum;
    for (const PlacedLoad* load : all)
        if (load->current.va) sum = sum.value_or(VoltAmperes(0)) + all_of(*load);
    return sum;
}

std::optional<VoltAmperes> RowLoads::continuous() const {
    if (!connected()) return std::nullopt;
    VoltAmperes sum(0);
    for (const PlacedLoad* load : all)
        if (load->continuous && load->current.va) sum += all_of(*load);
    return sum;
}

std::vector<Duty> RowLoads::duties() const {
    std::map<Duty, double> sums;
    for (const PlacedLoad* load : all) sums[load->duty()] += load->current.va ? all_of(*load).value : 0.0;
    std::vector<std::pair<double, Duty>> order;
    order.reserve(sums.size());
    for (const auto& [duty, va] : sums) order.emplace_back(-va, duty);
    std::ranges::sort(order);
    std::vector<Duty> found;
    found.reserve(order.size());
    for (const auto& [va, duty] : order) found.push_back(duty);
    return found;
}

RowLoads loads_of(const Reckoned& all, const DirectoryRow& entry) {
    RowLoads loads;
    std::vector<std::size_t> keys;
    for (const std::size_t circuit : entry.circuits)
        for (const PlacedLoad& load : all.placed.on_circuit[circuit]) {
            if (std::ranges::find(keys, load.key) != keys.end()) continue;
            keys.push_back(load.key);
            loads.all.push_back(&load);
            if (load.current.known()) loads.known.push_back(&load);
        }
    return loads;
}

std::vector<Duty> duties_of_outlets(const Network& network, const DirectoryRow& entry) {
    std::vector<Duty> duties;
    for (const std::size_t circuit : entry.circuits)
        for (const std::size_t outlet : network.outlets_on(circuit)) {
            const auto& kind = network.survey().outlets[outlet].kind;
            if (kind == OutletKind::lighting) take_once(duties, Duty::lighting);
            if (kind == OutletKind::receptacle) take_once(duties, Duty::general);
        }
    return duties;
}

bool all_loads_known(const Reckoned& all, std::size_t circuit) {
    const auto& loads = all.placed.on_circuit[circuit];
    const auto known = [](const PlacedLoad& load) { return load.current.known() && load.current.va; };
    if (loads.empty() || !std::ranges::all_of(loads, known)) return false;
    if (std::ranges::any_of(loads, [](const PlacedLoad& load) { return !load.outlet; })) return true;
    return std::ranges::none_of(all.network.outlets_on(circuit), [&](std::size_t outlet) {
        return all.network.survey().outlets[outlet].kind == OutletKind::equipment &&
               all.network.loads_at(outlet).empty();
    });
}

void set_measured(const Reckoned& all, ScheduleRow& row) {
    const Network& network = all.network;
    const std::size_t breaker = *row.entry.breaker;
    for (const SchedulePole& pole : row.poles)
        if (pole.leg != '?') row.measured_a[pole.leg] = std::nullopt;
    const bool one_leg = row.poles.size() == 1;
    row.measured_highest_a = all.measured_breakers[breaker].highest;
    take_readings(all, ThingKind::breaker, network.survey().breakers[breaker].id, one_leg, row);
    if (const auto circuit = only_circuit(network, breaker)) {
        row.measured_highest_a = all.measured[*circuit].highest;
        take_readings(all, ThingKind::circuit, network.survey().circuits[*circuit].id, one_leg, row);
    }
    if (const auto panel = only_panel(network, breaker)) {
        row.measured_highest_a = all.measured_feeders[*panel].highest;
        for (const PanelLegFigures& leg : all.panels[*panel].legs)
            if (const auto at = row.measured_a.find(leg.leg); at != row.measured_a.end()) at->second = leg.measured_a;
    }
    put_on_poles(row.measured_a, row.poles, &SchedulePole::measured_a);
}

void set_percent(const Reckoned& all, ScheduleRow& row) {
    const auto rating = all.network.survey().breakers[*row.entry.breaker].amps;
    if (!rating) return;
    const Percent loads = loads_on_device(all, row);
    const auto most = std::max(loads.calculated, loads.measured);  // an absent one is less than any
    if (!most) return;
    row.percent_measured = loads.measured && most == loads.measured;
    row.percent_of_rating = 100 * (*most / *rating);
}

void describe_conductors(const Network& network, ScheduleRow& row) {
    const Survey& survey = network.survey();
    std::vector<std::optional<Wire>> wires;
    for (const std::size_t circuit : row.entry.circuits) wires.push_back(survey.circuits[circuit].wire);
    for (const std::size_t panel : network.panels_fed_by(*row.entry.breaker))
        wires.push_back(survey.panels[panel].feeder);
    for (const auto& wire : wires)
        if (wire && std::ranges::find(row.wires, *wire) == row.wires.end()) row.wires.push_back(*wire);
    set_ground(survey, row);
    for (const std::size_t circuit : row.entry.circuits) {
        const Circuit& thing = survey.circuits[circuit];
        if (thing.neutral && (!row.neutral || thing.names_neutral())) row.neutral = thing.neutral;
    }
    set_traced(survey, row);
}

const char* class_text(Duty duty) {
    static constexpr std::array<const char*, 18> texts = {
        tr("general"),      tr("lighting"),  tr("range"),       tr("cooktop"), tr("oven"),      tr("dryer"),
        tr("water heater"), tr("appliance"), tr("heating"),     tr("cooling"), tr("heat pump"), tr("motor"),
        tr("vehicle"),      tr("kitchen"),   tr("show window"), tr("sign"),    tr("welder"),    tr("other")};
    return texts[static_cast<std::size_t>(duty)];
}

std::string_view class_word(Duty duty) { return enum_words<Duty>[static_cast<std::size_t>(duty)]; }

const char* traced_text(const std::string& how) {
    static const std::map<std::string, const char*> texts = {
        {"switching", tr("by switching")}, {"test-load", tr("by test load")},      {"seen", tr("seen")},
        {"tracer", tr("by tracer alone")}, {"old-directory", tr("old directory")}, {"told", tr("told")}};
    const auto found = texts.find(how);
    return found == texts.end() ? nullptr : found->second;
}

}  // namespace doorcard
