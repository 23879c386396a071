// SPDX-License-Identifier: MIT
#include "assess/assumed.hpp"

#include <fmt/format.h>

#include "assess/ampacity.hpp"
#include "assess/rule_parts.hpp"
#include "assess/standing.hpp"

namespace doorcard {
namespace {

class Assumed {
public:
    explicit Assumed(const Reckoned& all) : all_(all), by_panel_(all.network.survey().panels.size() + 1) {}

    std::vector<std::vector<Assumption>> everything() {
        const Survey& survey = all_.network.survey();
        at_ = survey.panels.size();
        if (!survey.heading.rules) add({ThingKind::survey, "", ""}, "rules", all_.book.edition());
        for (std::size_t p = 0; p < survey.panels.size(); ++p) of_panel(at_ = p);
        for (std::size_t c = 0; c < survey.circuits.size(); ++c) of_circuit(c);
        for (std::size_t c = 0; c < survey.circuits.size(); ++c) {
            at_ = panel_of_circuit(all_.network, c);
            of_loads(all_.placed.on_circuit[c]);
        }
        for (std::size_t p = 0; p < survey.panels.size(); ++p) of_loads(all_.placed.on_panel[at_ = p]);
        return std::move(by_panel_);
    }

private:
    void add(const Address& of, const char* key, std::string value) {
        by_panel_[at_].push_back({of.text(), key, std::move(value)});
    }

    void of_panel(std::size_t p) {
        const Panel& panel = all_.network.survey().panels[p];
        const PanelSupply& supply = all_.network.supply(p);
        const Address of = address_of(all_.network, {ThingKind::panel, p});
        if (!panel.system && supply.system) add(of, "system", std::string(facts(*supply.system).name));
        if (!panel.numbering) add(of, "numbering", "odd-left");
        if (!panel.legs_down && !supply.down.empty()) add(of, "legs_down", supply.down);
        if (!panel.spaces) add(of, "spaces", std::to_string(all_.network.geometry(p).spaces()));
        if (!panel.high_leg && supply.high_leg != 0) add(of, "high_leg", std::string(1, supply.high_leg));
        if (panel.feeder) of_wire(of, *panel.feeder, all_.feeders[p].rating_a);
    }

    void of_circuit(std::size_t c) {
        const Circuit& circuit = all_.network.survey().circuits[c];
        const Address of = address_of(all_.network, {ThingKind::circuit, c});
        at_ = panel_of_circuit(all_.network, c);
        if (all_.measured[c].sustained_from_amps) add(of, "amps_min", "amps");
        if (circuit.wire) of_wire(of, *circuit.wire, all_.circuits[c].rating_a);
    }

    void of_wire(const Address& of, const Wire& wire, std::optional<Amperes> device) {
        if (!wire.size || !wire.metal) return;
        if (!wire.terminal_c)
            add(of, "terminal_c", fmt::format("{:g}", terminal_temperature(wire, device, all_.book).value));
        if (!wire.ambient_c) add(of, "ambient_c", fmt::format("{:g}", all_.book.figure("base-ambient-c")));
        if (!wire.insulation) add(of, "insulation", fmt::format("{:g} C", all_.book.figure("unlisted-column-c")));
        if (!wire.conductors_together) add(of, "conductors_together", "its own");
    }

    void of_loads(const std::vector<PlacedLoad>& loads) {
        for (const PlacedLoad& load : loads) {
            if (!load.load || !load.current.known()) continue;
            const Address of{ThingKind::load, load.load->id, ""};
            if (!load.load->power_factor) add(of, "power_factor", load.load->hp ? "0.8" : "1");
            if (load.by_rule && !load.load->continuous) add(of, "continuous", "true");
        }
    }

    const Reckoned& all_;
    std::vector<std::vector<Assumption>> by_panel_;
    std::size_t at_ = 0;  // the panel it is of
};

}  // namespace

std::vector<std::vector<Assumption>> assumptions(const Reckoned& all) { return Assumed(all).everything(); }

}  // namespace doorcard
