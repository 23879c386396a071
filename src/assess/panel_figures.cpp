// SPDX-License-Identifier: MIT
#include <algorithm>
#include <map>
#include <string_view>
#include <tuple>

#include "assess/ampacity.hpp"
#include "assess/figures.hpp"

namespace doorcard {
namespace {

/// A load as a panel sees it: on the legs of the circuit it is set on, or as what a transformer asks of its feeding
/// poles.
struct PanelLoad {
    std::size_t key = 0;
    LoadCurrent current;
    double count = 1;
};

/// The loads of each panel, own and downstream, each once. A transformer is one load of its panel's connected VA at
/// power factor 1 on all feeding poles: thirds and neutral current stop there.
class PanelLoads {
public:
    explicit PanelLoads(const Reckoned& all) : all_(all), loads_(all.network.survey().panels.size()) {
        gather_own();
        const auto& order = all.network.panels_from_the_top();
        for (auto p = order.rbegin(); p != order.rend(); ++p) {
            merge_doubles(loads_[*p]);
            pass_up(*p);
        }
    }

    const std::vector<PanelLoad>& of(std::size_t panel) const { return loads_[panel]; }
    /// What a transformer's panel asks of its feeding poles; null where there is no transformer, or nothing known
    /// behind it.
    const PanelLoad* asked_of_primary(std::size_t panel) const {
        const auto found = primary_.find(panel);
        return found == primary_.end() ? nullptr : &found->second;
    }

    std::optional<VoltAmperes> connected(std::size_t panel) const {
        std::optional<VoltAmperes> sum;
        for (const PanelLoad& load : loads_[panel])
            if (load.current.va) sum = sum.value_or(VoltAmperes(0)) + *load.current.va * load.count;
        return sum;
    }

private:
    void gather_own() {
        const Network& network = all_.network;
        for (std::size_t p = 0; p < loads_.size(); ++p)
            for (const PlacedLoad& load : all_.placed.on_panel[p]) take(p, load);
        for (std::size_t c = 0; c < network.survey().circuits.size(); ++c) {
            std::vector<std::size_t> panels;
            for (const std::size_t b : network.breakers_of(c)) panels.push_back(network.panel_of(b));
            std::sort(panels.begin(), panels.end());
            panels.erase(std::unique(panels.begin(), panels.end()), panels.end());
            for (const std::size_t p : panels)
                if (p < loads_.size())
                    for (const PlacedLoad& load : all_.placed.on_circuit[c]) take(p, load);
        }
    }

    void take(std::size_t panel, const PlacedLoad& load) {
        if (load.current.known()) loads_[panel].push_back({load.key, load.current, load.count});
    }

    /// By load; among the ways of one load those that reach the neutral first, so that the order of the file does not
    /// matter.
    static bool comes_before(const PanelLoad& a, const PanelLoad& b) {
        const auto rank = [](const PanelLoad& load) {
            return std::tuple(load.key, load.current.placing, load.current.legs_known,
                              std::string_view(load.current.legs));
        };
        return rank(a) < rank(b);
    }

    /// A load that came by several ways counts once, with the largest of its currents, on every leg that it may use.
    static void merge_doubles(std::vector<PanelLoad>& loads) {
        std::sort(loads.begin(), loads.end(), comes_before);
        std::vector<PanelLoad> once;
        for (PanelLoad& load : loads) {
            if (once.empty() || once.back().key != load.key) {
                once.push_back(std::move(load));
                continue;
            }
            LoadCurrent& kept = once.back().current;
            kept.va = std::max(kept.va, load.current.va);
            kept.fundamental = std::max(kept.fundamental, load.current.fundamental);
            kept.third = std::max(kept.third, load.current.third);
            if (kept.legs == load.current.legs) continue;
            for (const char leg : load.current.legs)
                if (kept.legs.find(leg) == std::string::npos) kept.legs += leg;
            std::sort(kept.legs.begin(), kept.legs.end());
            kept.legs_known = false;
        }
        loads = std::move(once);
    }

    void pass_up(std::size_t panel) {
        const Network& network = all_.network;
        std::vector<std::size_t> above;
        for (const std::string& feed : network.survey().panels[panel].fed_by) {
            const std::size_t b = network.survey().breakers.position(feed);
            if (b >= network.survey().breakers.size()) continue;
            const std::size_t p = network.panel_of(b);
            if (p >= loads_.size() || std::ranges::find(above, p) != above.end()) continue;
            above.push_back(p);
            if (network.survey().panels[panel].transformer)
                pass_through_transformer(panel, b, p);
            else
                loads_[p].insert(loads_[p].end(), loads_[panel].begin(), loads_[panel].end());
        }
    }

    void pass_through_transformer(std::size_t panel, std::size_t breaker, std::size_t above) {
        const auto va = connected(panel);
        if (!va) return;
        const Network& network = all_.network;
        std::string legs = network.breaker_legs(breaker);
        std::sort(legs.begin(), legs.end());
        legs.erase(std::unique(legs.begin(), legs.end()), legs.end());
        if (legs.find('?') != std::string::npos) legs.clear();
        Load as_load;
        as_load.va = va;
        if (legs.size() == 3) as_load.phases = 3;
        const LoadPlace place{&network.supply(above), legs, false};
        const std::size_t key = network.survey().loads.size() + network.survey().outlets.size() + panel;
        loads_[above].push_back({key, current_of(as_load, place, all_.book), 1});
        primary_.emplace(panel, loads_[above].back());
    }

    const Reckoned& all_;
    std::vector<std::vector<PanelLoad>> loads_;
    std::map<std::size_t, PanelLoad> primary_;
};

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

/// Breakers that feed this panel, as positions.
std::vector<std::size_t> feeding_breakers(const Network& network, std::size_t panel) {
    std::vector<std::size_t> found;
    for (const std::string& feed : network.survey().panels[panel].fed_by)
        if (const std::size_t b = network.survey().breakers.position(feed); b < network.survey().breakers.size())
            found.push_back(b);
    return found;
}

/// Feeding breakers that feed this panel alone, so that their readings are the panel's; none across a transformer.
std::vector<std::size_t> breakers_that_speak_for(const Network& network, std::size_t panel) {
    if (network.survey().panels[panel].transformer) return {};
    std::vector<std::size_t> found = feeding_breakers(network, panel);
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
LegSums feeder_sums(const Reckoned& all, std::size_t p, const PanelLoads& loads, const FeedingSide& side) {
    LegSums sums;
    if (!side.supply->system) return sums;
    if (side.supply == &all.network.supply(p)) {
        for (const PanelLoad& load : loads.of(p)) sums.add(load.current, *side.supply, load.count);
    } else if (const PanelLoad* asked = loads.asked_of_primary(p)) {
        sums.add(asked->current, *side.supply, 1);
    }
    return sums;
}

LoadFigures feeder_figures(const Reckoned& all, std::size_t p, const PanelLoads& loads, const Measured& measured,
                           LegSums& sums) {
    const Network& network = all.network;
    const Panel& panel = network.survey().panels[p];
    const std::vector<std::size_t> breakers = feeding_breakers(network, p);
    const FeedingSide side = feeding_side(network, p, breakers);
    sums = feeder_sums(all, p, loads, side);
    LoadFigures figures;
    figures.id = panel.id;
    for (const std::size_t b : breakers) figures.breakers.push_back(network.survey().breakers[b].id);
    figures.legs = side.legs;
    figures.volts = feeder_volts(side);
    figures.rating_a = smallest_rating(network, breakers);
    if (!figures.rating_a) figures.rating_a = panel.main_a;
    figures.connected_va = loads.connected(p);
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
    for (const std::size_t b : feeding_breakers(network, p))
        if (network.panels_fed_by(b).size() == 1) found.take(all.measured_breakers[b]);
    return found;
}

}  // namespace

void reckon_panels(Reckoned& all) {
    const Network& network = all.network;
    const PanelLoads loads(all);
    for (std::size_t p = 0; p < network.survey().panels.size(); ++p) {
        LegSums sums;
        if (network.supply(p).system)
            for (const PanelLoad& load : loads.of(p)) sums.add(load.current, network.supply(p), load.count);
        all.panels.push_back(panel_figures(all, p, sums));
        all.measured_feeders.push_back(measured_feeder(all, p));
        LegSums in_feeder;
        all.feeders.push_back(feeder_figures(all, p, loads, all.measured_feeders.back(), in_feeder));
        all.feeder_sums.push_back(in_feeder);
        all.panel_sums.push_back(sums);
    }
}

}  // namespace doorcard
