// SPDX-License-Identifier: MIT
#include "desk/face_loads.hpp"

#include <algorithm>

#include "assess/readings.hpp"

namespace doorcard {
namespace {

bool has_nameplate(const Load& load) { return load.va || load.watts || load.amps || load.hp; }

std::optional<Amperes> own_sum(const LoadFigures& figures) {
    if (!figures.continuous_a && !figures.noncontinuous_a) return std::nullopt;
    return figures.continuous_a.value_or(Amperes(0)) + figures.noncontinuous_a.value_or(Amperes(0));
}

}  // namespace

FaceLoads::FaceLoads(const Assessed& all, const Network& part) : all_(all), part_(part) {
    for (const Reading& reading : all.survey.readings) {
        if (reading.of.kind != ThingKind::breaker || !is_of_hots(reading)) continue;
        std::optional<Amperes>& highest = read_at_[reading.of.id];
        highest = std::max(highest, highest_amps(reading));
    }
}

RowLoad FaceLoads::of(const DirectoryRow& row) const {
    RowLoad load;
    load.rating = part_.survey().breakers[*row.breaker].amps;
    load.calculated = calculated(row);
    load.measured = measured(row);
    load.is_at_least = !std::ranges::all_of(row.circuits, [&](std::size_t circuit) { return all_known(circuit); });
    return load;
}

const LoadFigures* FaceLoads::circuit_figures(std::size_t circuit) const {
    const std::size_t at = all_.survey.circuits.position(part_.survey().circuits[circuit].id);
    return at < all_.assessment.circuits.size() ? &all_.assessment.circuits[at] : nullptr;
}

const LoadFigures* FaceLoads::feeder_figures(std::size_t panel) const {
    const std::size_t at = all_.survey.panels.position(part_.survey().panels[panel].id);
    return at < all_.assessment.feeders.size() ? &all_.assessment.feeders[at] : nullptr;
}

std::optional<Amperes> FaceLoads::calculated(const DirectoryRow& row) const {
    const bool is_one = row.circuits.size() == 1 && part_.panels_fed_by(*row.breaker).empty();
    if (!is_one) return highest_leg(row);
    const LoadFigures* figures = circuit_figures(row.circuits.front());
    return figures ? own_sum(*figures) : std::nullopt;
}

// Of several circuits or panels on one device the sums of each leg; the highest counts.
std::optional<Amperes> FaceLoads::highest_leg(const DirectoryRow& row) const {
    std::vector<const LoadFigures*> parts;
    for (const std::size_t circuit : row.circuits) parts.push_back(circuit_figures(circuit));
    for (const std::size_t fed : part_.panels_fed_by(*row.breaker)) parts.push_back(feeder_figures(fed));
    std::map<char, Amperes> legs;
    for (const LoadFigures* figures : parts)
        if (figures)
            for (const auto& [leg, amps] : figures->legs_a)
                if (amps) legs[leg] = legs[leg] + *amps;
    std::optional<Amperes> most;
    for (const auto& [leg, amps] : legs) most = std::max(most, std::optional(amps));
    return most;
}

// What was read of its only circuit or its only panel is the device's.
std::optional<Amperes> FaceLoads::measured(const DirectoryRow& row) const {
    const auto read = read_at_.find(part_.survey().breakers[*row.breaker].id);
    const std::optional<Amperes> found = read == read_at_.end() ? std::nullopt : read->second;
    const auto& fed = part_.panels_fed_by(*row.breaker);
    const LoadFigures* figures = nullptr;
    if (row.circuits.size() == 1 && fed.empty() && part_.breakers_of(row.circuits.front()).size() == 1)
        figures = circuit_figures(row.circuits.front());
    if (row.circuits.empty() && fed.size() == 1 && !part_.survey().panels[fed.front()].transformer)
        figures = feeder_figures(fed.front());
    return figures ? std::max(found, figures->measured_a) : found;
}

bool FaceLoads::all_known(std::size_t circuit) const {
    const Survey& survey = part_.survey();
    const bool loads_known = std::ranges::all_of(part_.loads_on(circuit),
                                                 [&](std::size_t load) { return has_nameplate(survey.loads[load]); });
    return loads_known && std::ranges::none_of(part_.outlets_on(circuit), [&](std::size_t outlet) {
               return survey.outlets[outlet].kind == OutletKind::equipment && part_.loads_at(outlet).empty();
           });
}

}  // namespace doorcard
