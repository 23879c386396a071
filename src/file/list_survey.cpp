// SPDX-License-Identifier: MIT
#include "file/list_survey.hpp"

#include <fmt/format.h>

#include "file/patterns.hpp"

namespace doorcard {
namespace {

Breaker breaker_of(const ListEntry& entry) {
    Breaker breaker;
    breaker.panel = entry.panel;
    for (const ListSpace space : entry.spaces) {
        breaker.spaces.push_back(space.number);
        if (space.half != ' ') breaker.halves.push_back(space.half);
    }
    if (entry.amps) breaker.amps = Amperes(*entry.amps);
    breaker.device = entry.device;
    if (!entry.guards.empty()) breaker.guards = entry.guards;
    if (entry.spare) breaker.state = BreakerState::spare;
    if (!entry.text.empty()) breaker.old_label = entry.text;
    if (!entry.notes.empty()) breaker.note = entry.notes;
    breaker.id = breaker.default_id();
    return breaker;
}

Circuit circuit_of(const ListEntry& entry, const Breaker& breaker, std::size_t position) {
    Circuit circuit;
    circuit.id = circuit_name(breaker, position);
    circuit.breakers = {breaker.id};
    circuit.wire = entry.wire;
    circuit.traced = Traced{"old-directory", std::nullopt, std::nullopt};
    return circuit;
}

Load load_of(const ListEntry& entry, const Circuit& circuit) {
    Load load;
    load.id = circuit.id;
    load.circuit = circuit.id;
    if (!entry.text.empty()) load.title = entry.text;
    if (entry.va)
        load.va = VoltAmperes(*entry.va);
    else
        load.watts = Watts(*entry.watts);
    load.note = "all of the circuit together, as the old list says";
    return load;
}

Panel panel_of(const std::string& id, const ListBreakers& list) {
    Panel panel;
    panel.id = id;
    if (const auto empty = list.empty_spaces().find(id); empty != list.empty_spaces().end())
        panel.empty_spaces = std::vector<int>(empty->second.begin(), empty->second.end());
    if (const auto note = list.panel_notes().find(id); note != list.panel_notes().end()) panel.note = note->second;
    return panel;
}

}  // namespace

std::string circuit_name(const Breaker& breaker, std::size_t position) {
    const std::string id = breaker.default_id();
    return name_or(breaker.panel + "-" + id.substr(id.rfind(':') + 1), "c", position);
}

std::string name_or(const std::string& name, std::string_view other, std::size_t position) {
    return id_pattern.holds(name) ? name : fmt::format("{}{}", other, position + 1);
}

Survey survey_of_panels(std::vector<Panel> panels, const ListOptions& options) {
    Survey survey;
    const bool alone = panels.size() == 1;
    if (alone) {
        Panel& panel = panels.front();
        panel.spaces = options.spaces;
        if (options.main_a) panel.main_a = Amperes(*options.main_a);
        if (panel.id == "MAIN" && !options.panel) {
            Source utility;
            utility.id = "utility";
            utility.kind = "utility";
            utility.system = options.system;
            survey.sources = Table<Source>({utility});
            panel.fed_by = {utility.id};
        } else {
            panel.system = options.system;
        }
    }
    survey.panels = Table<Panel>(std::move(panels));
    return survey;
}

Survey survey_of_list(const ListBreakers& list, const ListOptions& options) {
    std::vector<Panel> panels;
    for (const std::string& id : list.panels()) panels.push_back(panel_of(id, list));
    Survey survey = survey_of_panels(std::move(panels), options);
    std::vector<Breaker> breakers;
    std::vector<Circuit> circuits;
    std::vector<Load> loads;
    for (const ListEntry& entry : list.breakers()) {
        breakers.push_back(breaker_of(entry));
        const bool says_load = entry.va || entry.watts;
        if (entry.spare || (entry.text.empty() && !says_load)) continue;
        circuits.push_back(circuit_of(entry, breakers.back(), circuits.size()));
        if (says_load) loads.push_back(load_of(entry, circuits.back()));
    }
    survey.breakers = Table<Breaker>(std::move(breakers));
    survey.circuits = Table<Circuit>(std::move(circuits));
    survey.loads = Table<Load>(std::move(loads));
    return survey;
}

}  // namespace doorcard
