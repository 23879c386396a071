// SPDX-License-Identifier: MIT
#include "assess/shared_neutral.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "assess/ampacity.hpp"
#include "assess/open_neutral.hpp"

namespace doorcard {
namespace {

double lag_of(const Reading& reading) {
    const double lag = std::acos(reading.power_factor.value_or(1.0)) * 180 / std::numbers::pi;
    return reading.leading.value_or(false) ? -lag : lag;
}

/// True where this reading tells the amperes of that hot: of its breaker where every circuit on it shares the neutral,
/// or of the only circuit of the neutral on it.
bool tells(const Network& network, const Reading& reading, const Hot& hot, const SharedNeutral& neutral) {
    if (!reading.amps) return false;
    const std::string letter(1, hot.leg);
    const auto shares = [&](std::size_t c) { return std::ranges::find(neutral.circuits, c) != neutral.circuits.end(); };
    const auto& on_breaker = network.circuits_on(hot.breaker);
    if (reading.of.kind == ThingKind::breaker && reading.of.id == network.survey().breakers[hot.breaker].id) {
        const std::string& legs = network.breaker_legs(hot.breaker);
        const bool one_leg = legs.find_first_not_of(hot.leg) == std::string::npos;
        return (reading.of.legs == letter || (reading.of.legs.empty() && one_leg)) &&
               std::ranges::all_of(on_breaker, shares);
    }
    if (reading.of.kind != ThingKind::circuit) return false;
    const std::size_t c = network.survey().circuits.position(reading.of.id);
    if (c >= network.survey().circuits.size() || !shares(c)) return false;
    const auto& hots = network.circuit_hots(c);
    const bool alone = std::ranges::count_if(on_breaker, [&](std::size_t other) {
                           const auto& theirs = network.circuit_hots(other);
                           return shares(other) && std::ranges::find(theirs, hot) != theirs.end();
                       }) == 1;
    const bool names_it = reading.of.legs == letter || (reading.of.legs.empty() && hots.size() == 1);
    return alone && names_it && std::ranges::find(hots, hot) != hots.end();
}

std::optional<HotReading> read_hot(const Reckoned& all, const std::vector<const Reading*>& moment, const Hot& hot,
                                   const SharedNeutral& neutral) {
    std::optional<HotReading> found;
    for (const Reading* reading : moment) {
        if (!tells(all.network, *reading, hot, neutral)) continue;
        if (found && found->amps >= *reading->amps) continue;
        const PanelSupply& supply = all.network.supply(all.network.panel_of(hot.breaker));
        found = HotReading{hot, &supply, *reading->amps, lag_of(*reading), reading->third_harmonic.value_or(0.0)};
    }
    return found;
}

NeutralMoment moment_of(const Reckoned& all, const std::vector<const Reading*>& readings,
                        const SharedNeutral& neutral) {
    NeutralMoment moment;
    for (const Reading* reading : readings)
        if (reading->of.kind == ThingKind::neutral && reading->of.id == neutral.id)
            if (const auto amps = reading->amps; amps && (!moment.measured || *amps > *moment.measured))
                moment.measured = amps;
    // A circuit whose legs are not known has hots that nobody can have read.
    if (std::ranges::any_of(neutral.circuits, [&](std::size_t c) { return all.network.circuit_legs(c).empty(); }))
        return moment;
    for (const Hot& hot : neutral.hots) {
        auto read = read_hot(all, readings, hot, neutral);
        if (!read || !read->supply->system || !read->supply->has(hot.leg)) {
            moment.hots.clear();
            break;
        }
        moment.hots.push_back(*read);
    }
    return moment;
}

/// What every hot pushes into the neutral at most, and what may come on any of them.
struct HotParts {
    std::vector<LegSums::Pair> hots;
    double unplaced_first = 0, unplaced_third = 0;
    bool any_known = false;
};

double held_to(std::optional<Amperes> rating, double first, double third) {
    const double size = std::hypot(first, third);
    return rating && size > rating->value ? rating->value / size : 1.0;
}

HotParts parts_of(const Reckoned& all, const SharedNeutral& neutral) {
    const Network& network = all.network;
    std::map<Hot, LegSums> sums;
    HotParts parts;
    for (const std::size_t c : neutral.circuits) {
        const PanelSupply* supply = supply_of_circuit(network, c);
        if (!supply) continue;
        LegSums unplaced;
        for (const PlacedLoad& load : all.placed.on_circuit[c]) {
            parts.any_known = parts.any_known || load.current.known();
            if (!load.current.legs_known)
                unplaced.add(load.current, *supply, load.count);
            else
                for (const Hot& hot : network.circuit_hots(c))
                    if (load.current.legs.find(hot.leg) != std::string::npos)
                        sums[hot].add(load.current, *supply, load.count);
        }
        const auto rating = smallest_rating(network, network.breakers_of(c));
        const double scale = held_to(rating, unplaced.unplaced_first(), unplaced.unplaced_third());
        parts.unplaced_first += scale * unplaced.unplaced_first();
        parts.unplaced_third += scale * unplaced.unplaced_third();
    }
    for (const auto& [hot, sum] : sums) {
        LegSums::Pair pair = sum.placed_to_neutral(hot.leg);
        const auto rating = network.survey().breakers[hot.breaker].amps;
        const double scale = held_to(rating, std::abs(pair.first), std::abs(pair.third));
        parts.hots.push_back({pair.first * scale, pair.third * scale});
    }
    return parts;
}

constexpr std::size_t most_hots_tried = 16;  // 65,536 subsets; beyond, the sizes are added: never less

}  // namespace

Amperes NeutralMoment::explained_at(const std::vector<double>& lags) const {
    Phasor first = 0, third = 0;
    for (std::size_t i = 0; i < hots.size(); ++i) {
        const HotReading& hot = hots[i];
        const Phasor volts = hot.supply->to_neutral.at(hot.hot.leg);
        const Phasor along = volts / std::abs(volts);
        const double fundamental = hot.amps.value / std::sqrt(1 + hot.third * hot.third);
        first += fundamental * along * unit_phasor(-lags[i]);
        third += fundamental * hot.third * along * along * along;
    }
    return Amperes(std::hypot(std::abs(first), std::abs(third)));
}

std::optional<Amperes> NeutralMoment::explained() const {
    if (hots.empty()) return std::nullopt;
    std::vector<double> lags;
    for (const HotReading& hot : hots) lags.push_back(hot.lag_degrees);
    return explained_at(lags);
}

std::vector<NeutralMoment> neutral_moments(const Reckoned& all, const SharedNeutral& neutral) {
    const Survey& survey = all.network.survey();
    std::vector<const Reading*> readings = all.readings.of(ThingKind::neutral, neutral.id);
    const auto take = [&](ThingKind kind, const std::string& id) {
        const auto& of = all.readings.of(kind, id);
        readings.insert(readings.end(), of.begin(), of.end());
    };
    for (const Hot& hot : neutral.hots) take(ThingKind::breaker, survey.breakers[hot.breaker].id);
    for (const std::size_t c : neutral.circuits) take(ThingKind::circuit, survey.circuits[c].id);
    std::vector<NeutralMoment> found;
    for (const std::size_t at : all.readings.moments_with(readings)) {
        NeutralMoment moment = moment_of(all, all.readings.moments()[at], neutral);
        if (moment.measured || !moment.hots.empty()) found.push_back(std::move(moment));
    }
    return found;
}

std::optional<Amperes> worst_subset(const Reckoned& all, const SharedNeutral& neutral) {
    const HotParts parts = parts_of(all, neutral);
    if (!parts.any_known) return std::nullopt;
    double worst = 0;
    if (parts.hots.size() > most_hots_tried) {
        double first = parts.unplaced_first, third = parts.unplaced_third;
        for (const LegSums::Pair& hot : parts.hots) {
            first += std::abs(hot.first);
            third += std::abs(hot.third);
        }
        return Amperes(std::hypot(first, third));
    }
    for (std::size_t choice = 0; choice < (std::size_t{1} << parts.hots.size()); ++choice) {
        Phasor first = 0, third = 0;
        for (std::size_t i = 0; i < parts.hots.size(); ++i) {
            if (!(choice >> i & 1)) continue;
            first += parts.hots[i].first;
            third += parts.hots[i].third;
        }
        worst =
            std::max(worst, std::hypot(std::abs(first) + parts.unplaced_first, std::abs(third) + parts.unplaced_third));
    }
    return Amperes(worst);
}

namespace {

std::optional<Amperes> neutral_ampacity(const Reckoned& all, const SharedNeutral& neutral) {
    const Survey& survey = all.network.survey();
    std::optional<std::string> size;
    for (const std::size_t c : neutral.circuits)
        if (survey.circuits[c].neutral_size) size = survey.circuits[c].neutral_size;
    std::optional<Amperes> least;
    for (const std::size_t c : neutral.circuits) {
        const Circuit& circuit = survey.circuits[c];
        if (!size || !circuit.wire) continue;
        const auto rating = smallest_rating(all.network, all.network.breakers_of(c));
        const auto amps =
            ampacity(*circuit.wire, *size, terminal_temperature(*circuit.wire, rating, all.book), all.book);
        if (amps && (!least || *amps < *least)) least = amps;
    }
    return least;
}

LegSums sums_of(const Reckoned& all, const SharedNeutral& neutral) {
    LegSums sums;
    for (const std::size_t c : neutral.circuits)
        if (const PanelSupply* supply = supply_of_circuit(all.network, c))
            for (const PlacedLoad& load : all.placed.on_circuit[c]) sums.add(load.current, *supply, load.count);
    return sums;
}

std::optional<double> imbalance(const Reckoned& all, const SharedNeutral& neutral, const LegSums& sums) {
    std::vector<Amperes> legs;
    std::string high_legs;
    for (const Hot& hot : neutral.hots) high_legs += all.network.supply(all.network.panel_of(hot.breaker)).high_leg;
    for (const char leg : neutral.legs)
        if (high_legs.find(leg) == std::string::npos) legs.push_back(sums.neutral_part(leg));
    return imbalance_percent(legs);
}

/// The moment with the largest residual, with its sign; where none has every hot, the highest reading alone.
void take_readings(const Reckoned& all, const SharedNeutral& neutral, NeutralFigures& figures) {
    for (const NeutralMoment& moment : neutral_moments(all, neutral)) {
        const auto explained = moment.explained();
        if (!moment.measured || !explained) continue;
        const Amperes residual = *moment.measured - *explained;
        if (figures.residual_a && residual <= *figures.residual_a) continue;
        figures.measured_a = moment.measured;
        figures.explained_a = explained;
        figures.residual_a = residual;
    }
    if (figures.residual_a) return;
    for (const Reading* reading : all.readings.of(ThingKind::neutral, neutral.id))
        if (const auto amps = highest_amps(*reading); amps && (!figures.measured_a || *amps > *figures.measured_a))
            figures.measured_a = amps;
}

}  // namespace

void reckon_neutrals(Reckoned& all) {
    for (const SharedNeutral& neutral : all.network.neutrals()) {
        NeutralFigures figures;
        figures.id = neutral.id;
        for (const std::size_t c : neutral.circuits) figures.circuits.push_back(all.network.survey().circuits[c].id);
        figures.legs = neutral.legs;
        const LegSums sums = sums_of(all, neutral);
        if (sums.any_known()) {
            figures.amps = sums.neutral_amps();
            figures.triplen_amps = sums.triplen_amps();
            figures.imbalance_percent = imbalance(all, neutral, sums);
        }
        figures.open_volts = open_volts(all, neutral, sums);
        take_readings(all, neutral, figures);
        figures.ampacity_a = neutral_ampacity(all, neutral);
        all.neutrals.push_back(std::move(figures));
        all.neutral_sums.push_back(sums);
    }
}

}  // namespace doorcard
