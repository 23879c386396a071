// SPDX-License-Identifier: MIT
// What two readings of one outlet say of its joints: (V0 - V1) / (I1 - I0) less the wire's own.
#include <algorithm>

#include "assess/circuit_run.hpp"
#include "assess/voltage_drop.hpp"

namespace doorcard {
namespace {

struct Point {
    Volts volts;
    std::optional<Amperes> amps;  ///< nullopt: nobody said; unloaded where another point is loaded
};

std::vector<Point> points_of(const std::vector<const Reading*>& moment, const std::string& outlet) {
    std::vector<Point> points;
    for (const Reading* reading : moment) {
        if (reading->of.kind != ThingKind::outlet || reading->of.id != outlet || !reading->volts) continue;
        points.push_back({*reading->volts, reading->amps ? reading->amps : reading->test_load_a});
        if (reading->volts_unloaded) points.push_back({*reading->volts_unloaded, Amperes(0)});
    }
    return points;
}

Amperes amps_of(const Point& point) { return point.amps.value_or(Amperes(0)); }

/// The loop by the least and the most loaded of these; nullopt where none is more loaded than another.
std::optional<JointFigures> loop_of(const std::vector<Point>& points, const std::string& outlet) {
    if (points.size() < 2) return std::nullopt;
    const auto by_amps = [](const Point& a, const Point& b) { return amps_of(a) < amps_of(b); };
    const auto [least, most] = std::ranges::minmax_element(points, by_amps);
    const Amperes step = amps_of(*most) - amps_of(*least);
    if (step.value <= 0) return std::nullopt;
    return JointFigures{outlet, (least->volts - most->volts) / step, std::nullopt, std::nullopt, step};
}

/// Hot and neutral of a feeder, there and back; the neutral's own size where it is given.
std::optional<Ohms> feeder_loop(const Wire& feeder, const RuleBook& book) {
    if (!feeder.length) return std::nullopt;
    Wire back = feeder;
    if (feeder.neutral_size) back.size = feeder.neutral_size;
    const auto hot = conductor_impedance(feeder, 0, book), neutral = conductor_impedance(back, 0, book);
    if (!hot || !neutral) return std::nullopt;
    return (*hot + *neutral) * feeder.length->feet() / static_cast<double>(feeder.sets.value_or(1));
}

/// The feeders from a source down to a panel; nothing where a source feeds it; nullopt through a transformer, an
/// unknown feeder, or several feeds.
std::optional<Ohms> feeders_above(const Reckoned& all, std::size_t p) {
    const Survey& survey = all.network.survey();
    Ohms sum(0);
    for (std::size_t steps = 0; steps <= survey.panels.size(); ++steps) {
        if (p >= survey.panels.size() || survey.panels[p].fed_by.size() != 1 || survey.panels[p].transformer) break;
        const std::size_t feed = survey.breakers.position(survey.panels[p].fed_by.front());
        if (feed >= survey.breakers.size()) return sum;
        const auto own = survey.panels[p].feeder ? feeder_loop(*survey.panels[p].feeder, all.book) : std::nullopt;
        if (!own) break;
        sum += *own;
        p = all.network.panel_of(feed);
    }
    return std::nullopt;
}

/// The wire's own from the source to an outlet and back; circuits of three legs are not judged so.
std::optional<Ohms> wire_loop(const Reckoned& all, std::size_t outlet) {
    const auto& circuits = all.network.circuits_at(outlet);
    if (circuits.size() != 1 || all.network.breakers_of(circuits.front()).size() != 1) return std::nullopt;
    const std::size_t c = circuits.front();
    const auto& wire = all.network.survey().circuits[c].wire;
    if (!wire || all.network.circuit_legs(c).size() > 2) return std::nullopt;
    const auto length = CircuitRun(all.network.survey(), c).length_to(outlet);
    const auto ohms = conductor_impedance(*wire, 0, all.book);
    const auto above = feeders_above(all, all.network.panel_of(all.network.breakers_of(c).front()));
    if (!length || !ohms || !above) return std::nullopt;
    return 2.0 * (*ohms * *length) + *above;
}

/// Outlets with a voltage among their readings, in file order.
std::vector<std::size_t> outlets_read(const Survey& survey) {
    std::vector<std::size_t> found;
    for (const Reading& reading : survey.readings)
        if (reading.of.kind == ThingKind::outlet && reading.volts)
            found.push_back(survey.outlets.position(reading.of.id));
    std::ranges::sort(found);
    found.erase(std::unique(found.begin(), found.end()), found.end());
    return found;
}

/// The worst loop of an outlet over all moments.
std::optional<JointFigures> worst_loop(const Readings& readings, const std::string& outlet) {
    std::optional<JointFigures> worst;
    for (const std::size_t at : readings.moments_with(readings.of(ThingKind::outlet, outlet)))
        if (const auto found = loop_of(points_of(readings.moments()[at], outlet), outlet);
            found && (!worst || found->loop > worst->loop))
            worst = found;
    return worst;
}

}  // namespace

void reckon_joints(Reckoned& all) {
    const Survey& survey = all.network.survey();
    for (const std::size_t o : outlets_read(survey)) {
        auto figures = o < survey.outlets.size() ? worst_loop(all.readings, survey.outlets[o].id) : std::nullopt;
        if (!figures) continue;
        figures->wire = wire_loop(all, o);
        if (figures->wire) figures->joint = figures->loop - *figures->wire;
        all.joints.push_back(*figures);
    }
}

}  // namespace doorcard
