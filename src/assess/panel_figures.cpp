// SPDX-License-Identifier: MIT
#include <algorithm>

#include "assess/ampacity.hpp"
#include "assess/figures.hpp"

namespace doorcard {
namespace {

Measured readings_of_legs(const Reckoned& all, ThingKind kind, const std::string& id, const std::string& legs) {
    Measured found;
    for (const Reading* reading : all.readings.of(kind, id))
        if (reading->of.legs == legs) found.take(*reading, all.book.figure("continuous-hours"));
    return found;
}

Measured readings_of_hots(const Reckoned& all, ThingKind kind, const std::string& id) {
    Measured found;
    for (const Reading* reading : all.readings.of(kind, id))
        if (is_of_hots(*reading)) found.take(*reading, all.book.figure("continuous-hours"));
    return found;
}

/// Feeding breakers that feed this panel alone, so that their readings are the panel's; none across a transformer.
std::vector<std::size_t> breakers_that_speak_for(const Network& network, std::size_t panel) {
    if (network.survey().panels[panel].transformer) return {};
    std::vector<std::size_t> found = network.breakers_feeding(panel);
    std::erase_if(
        found, [&](std::size_t b) { return network.panels_fed_by(b).size() != 1 || !network.circuits_on(b).empty(); });
    return found;
}

std::optional<Amperes> measured_on_leg(const Reckoned& all, std::size_t panel, char leg) {
    const Network& network = all.network;
    const std::string letter(1, leg);
    const bool one_leg = network.supply(panel).legs.size() == 1;
    const std::string& id = network.survey().panels[panel].id;
    Measured found = readings_of_legs(all, ThingKind::panel, id, letter);
    if (one_leg) found.take(readings_of_legs(all, ThingKind::panel, id, ""));
    for (const std::size_t b : breakers_that_speak_for(network, panel)) {
        const std::string& breaker = network.survey().breakers[b].id;
        found.take(readings_of_legs(all, ThingKind::breaker, breaker, letter));
        if (one_leg) found.take(readings_of_legs(all, ThingKind::breaker, breaker, ""));
    }
    return found.highest;
}

std::optional<double> panel_imbalance(const PanelSupply& supply, const LegSums& sums) {
    if (!sums.any_known()) return std::nullopt;
    std::vector<Amperes> legs;
    for (const char leg : supply.legs)
        if (leg != supply.high_leg) legs.push_back(sums.amps(leg));
    return imbalance_percent(legs);
}

PanelFigures panel_figures(const Reckoned& all, std::size_t p, const LegSums& sums) {
    const PanelSupply& supply = all.network.supply(p);
    PanelFigures figures;
    figures.id = all.network.survey().panels[p].id;
    figures.system = supply.system;
    for (const char leg : supply.legs) {
        PanelLegFigures one{leg, {}, {}, measured_on_leg(all, p, leg)};
        if (sums.any_known()) {
            one.amps = sums.amps(leg);
            one.va = sums.va(leg);
        }
        figures.legs.push_back(one);
    }
    if (sums.any_known() && !supply.neutral_legs().empty()) figures.neutral_amps = sums.neutral_amps();
    figures.imbalance_percent = panel_imbalance(supply, sums);
    return figures;
}

/// The conductors that feed a panel: its own legs, or those on the primary side where it stands behind a transformer.
struct FeedingSide {
    const PanelSupply* supply = nullptr;
    std::string legs;
};

FeedingSide feeding_side(const Network& network, std::size_t p, const std::vector<std::size_t>& breakers) {
    if (!network.survey().panels[p].transformer || breakers.empty())
        return {&network.supply(p), network.supply(p).legs};
    const std::size_t above = network.panel_of(breakers.front());
    if (above >= network.survey().panels.size()) return {&network.supply(p), ""};
    std::string legs = network.breaker_legs(breakers.front());
    std::sort(legs.begin(), legs.end());
    legs.erase(std::unique(legs.begin(), legs.end()), legs.end());
    if (legs.find('?') != std::string::npos) legs.clear();
    return {&network.supply(above), legs};
}

std::optional<Volts> feeder_volts(const FeedingSide& side) {
    if (side.legs.empty()) return std::nullopt;
    if (side.legs.size() == 1) return side.supply->volts_to_neutral(side.legs.front());
    return side.supply->volts_line_to_line();
}

/// The currents in the feeding conductors.
LegSums feeder_sums(const Reckoned& all, std::size_t p, const PanelSums& sums, const FeedingSide& side) {
    LegSums found;
    if (!side.supply->system) return found;
    if (side.supply == &all.network.supply(p)) return sums.of(p);
    if (const LoadCurrent* asked = sums.asked_of_primary(p)) found.add(*asked, *side.supply, 1);
    return found;
}

LoadFigures feeder_figures(const Reckoned& all, std::size_t p, const PanelSums& panels, const Measured& measured,
                           LegSums& sums) {
    const Network& network = all.network;
    const Panel& panel = network.survey().panels[p];
    const std::vector<std::size_t>& breakers = network.breakers_feeding(p);
    const FeedingSide side = feeding_side(network, p, breakers);
    sums = feeder_sums(all, p, panels, side);
    LoadFigures figures;
    figures.id = panel.id;
    for (const std::size_t b : breakers) figures.breakers.push_back(network.survey().breakers[b].id);
    figures.legs = side.legs;
    figures.volts = feeder_volts(side);
    figures.rating_a = smallest_rating(network, breakers);
    if (!figures.rating_a) figures.rating_a = panel.main_a;
    figures.connected_va = panels.connected(p);
    figures.measured_a = measured.highest;
    figures.sustained_a = measured.sustained;
    for (const char leg : figures.legs)
        figures.legs_a[leg] = sums.any_known() ? std::optional(sums.amps(leg)) : std::nullopt;
    if (figures.rating_a && figures.measured_a)
        figures.percent_of_rating = 100 * (*figures.measured_a / *figures.rating_a);
    if (panel.feeder) figures.ampacity_a = ampacity(*panel.feeder, figures.rating_a, all.book);
    return figures;
}

Measured measured_feeder(const Reckoned& all, std::size_t p) {
    const Network& network = all.network;
    Measured found;
    if (!network.survey().panels[p].transformer)
        found = readings_of_hots(all, ThingKind::panel, network.survey().panels[p].id);
    for (const std::size_t b : network.breakers_feeding(p))
        if (network.panels_fed_by(b).size() == 1) found.take(all.measured_breakers[b]);
    return found;
}

}  // namespace

void reckon_panels(Reckoned& all, const KnownTotals& known) {
    const Network& network = all.network;
    PanelSums sums(network, all.book, all.placed, known);
    for (std::size_t p = 0; p < network.survey().panels.size(); ++p) {
        all.panels.push_back(panel_figures(all, p, sums.of(p)));
        all.measured_feeders.push_back(measured_feeder(all, p));
        LegSums in_feeder;
        all.feeders.push_back(feeder_figures(all, p, sums, all.measured_feeders.back(), in_feeder));
        all.feeder_sums.push_back(in_feeder);
    }
    all.is_tree = sums.is_tree();
    all.panel_totals = std::move(sums).take_totals();
}

}  // namespace doorcard
