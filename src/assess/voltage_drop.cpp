// SPDX-License-Identifier: MIT
#include "assess/voltage_drop.hpp"

#include <algorithm>
#include <numbers>

#include "assess/circuit_run.hpp"
#include "network/panel_supply.hpp"

namespace doorcard {
namespace {

/// One circuit's run, with the loads at its outlets.
class Branch {
public:
    Branch(const Reckoned& all, std::size_t circuit)
        : all_(all),
          survey_(all.network.survey()),
          circuit_(circuit),
          run_(survey_, circuit),
          wire_(survey_.circuits[circuit].wire),
          supply_(supply_of_circuit(all.network, circuit)) {}

    /// The drop at each outlet that current flows to, in per cent; `worst` where no load has an outlet too.
    struct Drops {
        double worst = 0;
        std::map<std::size_t, double> outlets;
    };

    std::optional<Drops> percent() {
        const auto& loads = all_.placed.on_circuit[circuit_];
        const bool any_known = std::ranges::any_of(loads, [](const PlacedLoad& load) { return load.current.known(); });
        if (!wire_ || !supply_ || !supply_->system || !any_known || !choose_factor()) return std::nullopt;
        if (!spread_loads()) return std::nullopt;
        return drops();
    }

private:
    /// x 2 over line to neutral where any load is line to neutral, else x 2 over line to line where any is two-wire,
    /// else sqrt 3.
    bool choose_factor() {
        const auto any = [&](auto... placings) {
            return std::ranges::any_of(all_.placed.on_circuit[circuit_], [&](const PlacedLoad& load) {
                return ((load.current.placing == placings) || ...);
            });
        };
        const std::string& legs = all_.network.circuit_legs(circuit_);
        std::optional<Volts> volts;
        if (any(Placing::line_to_neutral, Placing::halves)) {
            const std::string low = supply_->neutral_legs();
            factor_ = 2;
            volts = legs.size() == 1 ? supply_->volts_to_neutral(legs.front())
                    : low.empty()    ? std::nullopt
                                     : supply_->volts_to_neutral(low.front());
        } else {
            factor_ = any(Placing::line_to_line) ? 2 : std::numbers::sqrt3;
            volts = supply_->volts_line_to_line();
        }
        volts_ = volts.value_or(Volts(0));
        return volts.has_value();
    }

    /// The outlet farthest from the panel by known lengths.
    std::optional<std::size_t> farthest() const {
        std::optional<std::size_t> found;
        Feet most(-1);
        for (const std::size_t o : all_.network.outlets_on(circuit_)) {
            const auto length = run_.length_to(o);
            if (!length || *length <= most) continue;
            most = *length;
            found = o;
        }
        return found;
    }

    /// Puts every load on each segment that it hangs below; loads without an outlet at the far end. False where a way
    /// is not known.
    bool spread_loads() {
        const auto end = farthest();
        for (const PlacedLoad& load : all_.placed.on_circuit[circuit_]) {
            if (!load.current.known()) continue;
            const auto outlet = load.outlet ? load.outlet : end;
            if (!outlet) {
                loose_.add(load.current, *supply_, load.count);
                continue;
            }
            const Way way = run_.way_of(*outlet);
            if (!way.whole) return false;
            if (std::ranges::find(ends_, *outlet) == ends_.end()) ends_.push_back(*outlet);
            for (const std::size_t at : way.outlets) below_[at].add(load.current, *supply_, load.count);
        }
        return ends_.empty() || !loose_.any_known();
    }

    std::optional<Volts> segment(const LegSums& sums, std::optional<Feet> length) const {
        Amperes amps(0);
        for (const char leg : all_.network.circuit_legs(circuit_)) amps = std::max(amps, sums.amps(leg));
        if (!length) return std::nullopt;
        if (const auto rating = all_.circuits[circuit_].rating_a) amps = std::min(amps, *rating);
        if (amps.value == 0) return Volts(0);
        const auto ohms = conductor_impedance(*wire_, sums.angle_degrees(), all_.book);
        return ohms ? std::optional(factor_ * (amps * *ohms * *length)) : std::nullopt;
    }

    std::optional<Drops> drops() const {
        if (ends_.empty()) {
            const auto volts = segment(loose_, wire_->length ? std::optional(wire_->length->feet()) : std::nullopt);
            return volts ? std::optional(Drops{in_percent(*volts), {}}) : std::nullopt;
        }
        std::map<std::size_t, Volts> segments;
        for (const auto& [outlet, sums] : below_) {
            const auto drop = segment(sums, run_.own_length(outlet));
            if (!drop) return std::nullopt;
            segments[outlet] = *drop;
        }
        Drops found;
        for (const auto& [outlet, own] : segments) {
            Volts sum(0);
            for (const std::size_t at : run_.way_of(outlet).outlets) sum += segments.at(at);
            found.outlets[outlet] = in_percent(sum);
            found.worst = std::max(found.worst, in_percent(sum));
        }
        return found;
    }

    double in_percent(Volts drop) const { return 100 * (drop / volts_); }

    const Reckoned& all_;
    const Survey& survey_;
    std::size_t circuit_;
    CircuitRun run_;
    const std::optional<Wire>& wire_;
    const PanelSupply* supply_;
    double factor_ = 2;
    Volts volts_;
    std::map<std::size_t, LegSums> below_;  // by outlet: what flows in the cable that leads to it
    std::vector<std::size_t> ends_;         // outlets with loads
    LegSums loose_;
};

/// x 2 (three legs: sqrt 3) over line-to-line volts, one leg to neutral; the lesser of the worst leg's nameplates and
/// the rating.
std::optional<double> feeder_percent(const Reckoned& all, std::size_t p) {
    const LoadFigures& figures = all.feeders[p];
    const auto& wire = all.network.survey().panels[p].feeder;
    if (!wire || !wire->length || !figures.volts || !all.feeder_sums[p].any_known()) return std::nullopt;
    Amperes amps(0);
    for (const auto& [leg, leg_amps] : figures.legs_a) amps = std::max(amps, leg_amps.value_or(Amperes(0)));
    if (figures.rating_a) amps = std::min(amps, *figures.rating_a);
    const auto ohms = conductor_impedance(*wire, all.feeder_sums[p].angle_degrees(), all.book);
    if (!ohms) return std::nullopt;
    const double factor = figures.legs.size() == 3 ? std::numbers::sqrt3 : 2.0;
    const Volts drop = factor * (amps * *ohms * wire->length->feet()) / static_cast<double>(wire->sets.value_or(1));
    return 100 * (drop / *figures.volts);
}

/// What the feeders of a panel and above add. A source adds nothing; a transformer, or an unknown feeder, leaves it
/// unknown; of several feeds the worst.
std::optional<double> total_above(const Reckoned& all, std::size_t p) {
    const Survey& survey = all.network.survey();
    const Panel& panel = survey.panels[p];
    if (panel.fed_by.empty() || panel.transformer) return std::nullopt;
    std::optional<double> worst;
    for (const std::string& feed : panel.fed_by) {
        const std::size_t b = survey.breakers.position(feed);
        if (b >= survey.breakers.size()) {
            worst = std::max(worst.value_or(0), 0.0);  // a source adds nothing
            continue;
        }
        const std::size_t above = all.network.panel_of(b);
        if (above >= survey.panels.size()) return std::nullopt;
        const auto own = all.feeders[p].voltage_drop_percent;
        const auto further = all.feeders[above].total_drop_percent;
        if (!own || !further) return std::nullopt;
        worst = std::max(worst.value_or(*own + *further), *own + *further);
    }
    return worst;
}

void reckon_circuit(Reckoned& all, std::size_t c) {
    const auto drops = Branch(all, c).percent();
    if (!drops) return;
    LoadFigures& figures = all.circuits[c];
    figures.voltage_drop_percent = drops->worst;
    const auto& breakers = all.network.breakers_of(c);
    const std::size_t panel = breakers.empty() ? all.feeders.size() : all.network.panel_of(breakers.front());
    std::optional<double> above;
    if (panel < all.feeders.size()) above = all.feeders[panel].total_drop_percent;
    const auto total = [&](double own) { return above ? std::optional(own + *above) : std::nullopt; };
    figures.total_drop_percent = total(drops->worst);
    for (const auto& [outlet, own] : drops->outlets)
        figures.outlet_drops.push_back({all.network.survey().outlets[outlet].id, own, total(own)});
}

}  // namespace

void reckon_voltage_drops(Reckoned& all) {
    for (const std::size_t p : all.network.panels_from_the_top()) {
        all.feeders[p].voltage_drop_percent = feeder_percent(all, p);
        all.feeders[p].total_drop_percent = total_above(all, p);
    }
    for (std::size_t c = 0; c < all.circuits.size(); ++c) reckon_circuit(all, c);
}

}  // namespace doorcard
