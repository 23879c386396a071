// SPDX-License-Identifier: MIT
// What nobody has seen yet, and what is kept but not used: gaps are shown, never filled.
#include <algorithm>

#include "assess/rule_list.hpp"
#include "assess/rule_parts.hpp"
#include "rules/lookups.hpp"

namespace doorcard {
namespace {

Finding gap(const Reckoned& all, const char* rule, Address of, Message text, const char* remedy) {
    Finding finding = begin_finding(rule, Severity::notice, Basis::gap, std::move(of));
    finding.text = std::move(text);
    finding.remedy = {remedy, {}};
    finding.sources = {all.book.cite("practice")};
    return finding;
}

void find_outlet_gaps(const Reckoned& all, std::vector<Finding>& findings) {
    const Network& network = all.network;
    for (std::size_t o = 0; o < network.survey().outlets.size(); ++o) {
        if (!network.circuits_at(o).empty()) continue;
        const Outlet& outlet = network.survey().outlets[o];
        findings.push_back(gap(all, "outlet-unmapped", address_of(network, {ThingKind::outlet, o}),
                               {tr("Outlet {0}: what feeds it is not known"), {outlet.label.value_or(outlet.id)}},
                               tr("Map it by switching; until then treat it as live.")));
    }
}

void find_claims(const Reckoned& all, std::vector<Finding>& findings) {
    for (std::size_t c = 0; c < all.network.survey().circuits.size(); ++c) {
        const Circuit& circuit = all.network.survey().circuits[c];
        if (circuit.traced && circuit.traced->proves()) continue;
        findings.push_back(
            gap(all, "claim-only", address_of(all.network, {ThingKind::circuit, c}),
                {tr("{0}: claimed, not traced by switching, test load or sight"), {circuit_name(all.network, c)}},
                tr("Trace it before relying on it.")));
    }
}

void find_panel_gaps(const Reckoned& all, std::vector<Finding>& findings) {
    const Network& network = all.network;
    for (std::size_t p = 0; p < network.survey().panels.size(); ++p) {
        const Panel& panel = network.survey().panels[p];
        const Address of = address_of(network, {ThingKind::panel, p});
        if (!panel.main)
            findings.push_back(gap(all, "main-unseen", of, {tr("{0}: its main was not looked at"), {panel.id}},
                                   tr("Look for the main and its rating.")));
        const auto system = network.supply(p).system;
        if (!system)
            findings.push_back(
                gap(all, "system-unknown", of,
                    {tr("{0}: its system is not known; nothing that needs volts is reckoned"), {panel.id}},
                    tr("Enter what feeds it, or its system.")));
        else if (!facts(*system).has_rules)
            findings.push_back(
                gap(all, "system-without-rules", of,
                    {tr("{0}: no rules for this system ({1})"), {panel.id, std::string(facts(*system).name)}},
                    tr("It is drawn and mapped; judge it by the rules of its country.")));
    }
}

void find_unseen_guards(const Reckoned& all, std::vector<Finding>& findings) {
    const Network& network = all.network;
    for (std::size_t b = 0; b < network.survey().breakers.size(); ++b) {
        const Breaker& breaker = network.survey().breakers[b];
        if (breaker.guards || breaker.state == BreakerState::spare || network.circuits_on(b).empty()) continue;
        findings.push_back(
            gap(all, "guard-unseen", address_of(network, {ThingKind::breaker, b}),
                {tr("{0}: nobody looked for a TEST button or guard marking"), {breaker_name(network, b)}},
                tr("Look at the breaker; enter [] where there is none.")));
    }
}

/// What is known of a load, over all the circuits that feed it.
struct LoadKnown {
    bool placed = false, current = false, va = false, leg_unknown = false;
    bool no_legs = false;  ///< on a circuit whose legs, or system, are not known
};

bool has_no_legs(const Network& network, std::size_t circuit) {
    const PanelSupply* supply = supply_of_circuit(network, circuit);
    return !supply || !supply->system || network.circuit_legs(circuit).empty();
}

std::vector<LoadKnown> known_of_loads(const Reckoned& all) {
    std::vector<LoadKnown> known(all.network.survey().loads.size());
    for (std::size_t c = 0; c < all.placed.on_circuit.size(); ++c)
        if (has_no_legs(all.network, c))
            for (const PlacedLoad& load : all.placed.on_circuit[c])
                if (load.load) known[load.key].no_legs = true;
    for (const auto* lists : {&all.placed.on_circuit, &all.placed.on_panel})
        for (const auto& loads : *lists)
            for (const PlacedLoad& load : loads) {
                if (!load.load) continue;
                LoadKnown& of = known[load.key];
                of.placed = true;
                of.current = of.current || load.current.known();
                of.va = of.va || load.current.va;
                of.leg_unknown = of.leg_unknown || (load.current.known() && !load.current.legs_known);
            }
    return known;
}

bool has_nameplate(const Load& load) { return load.va || load.watts || load.amps || load.hp || load.min_circuit_a; }

/// The nameplate was read, but no legs or volts are known that would make amperes of it.
bool waits_for_legs(const Load& load, const LoadKnown& known) {
    return known.no_legs && !known.current && !known.va && has_nameplate(load);
}

bool is_missing(const Load& load, const LoadKnown& known) {
    if (!known.placed || waits_for_legs(load, known)) return !has_nameplate(load);
    return !known.current && (!known.va || load.panel);
}

void find_load_gaps(const Reckoned& all, std::vector<Finding>& findings) {
    const Survey& survey = all.network.survey();
    const std::vector<LoadKnown> known = known_of_loads(all);
    for (std::size_t l = 0; l < survey.loads.size(); ++l) {
        const Load& load = survey.loads[l];
        const Address of{ThingKind::load, load.id, ""};
        const std::string name = load.title.value_or(load.id);
        if (is_missing(load, known[l]))
            findings.push_back(gap(all, "nameplate-missing", of,
                                   {tr("{0}: no nameplate; it adds nothing to any sum"), {name}},
                                   tr("Read the nameplate.")));
        else if (waits_for_legs(load, known[l]))
            findings.push_back(
                gap(all, "load-leg-unknown", of,
                    {tr("{0}: legs and volts of its circuit are not known; it adds nothing to any sum"), {name}},
                    tr("Enter what feeds its circuit.")));
        else if (known[l].leg_unknown)
            findings.push_back(gap(all, "load-leg-unknown", of,
                                   {tr("{0}: its leg is not known; it counts in full on each leg it may use"), {name}},
                                   tr("Enter the leg it uses.")));
    }
}

void judge_insulation(const Reckoned& all, const std::optional<Wire>& wire, Address of, const Message& name,
                      std::vector<Finding>& findings) {
    if (!wire || !wire->insulation || insulation_column(all.book, *wire->insulation)) return;
    Finding finding = gap(all, "insulation-unlisted", std::move(of),
                          {tr("{0}: insulation {1} is in no table; counted as 60 °C"), {name, *wire->insulation}},
                          tr("Read the marking on the conductor."));
    finding.sources = {all.book.cite("nec-310-16")};
    findings.push_back(std::move(finding));
}

void find_unlisted_insulation(const Reckoned& all, std::vector<Finding>& findings) {
    const Network& network = all.network;
    for (std::size_t c = 0; c < network.survey().circuits.size(); ++c)
        judge_insulation(all, network.survey().circuits[c].wire, address_of(network, {ThingKind::circuit, c}),
                         circuit_name(network, c), findings);
    for (std::size_t p = 0; p < network.survey().panels.size(); ++p)
        judge_insulation(all, network.survey().panels[p].feeder, address_of(network, {ThingKind::panel, p}),
                         verbatim(network.survey().panels[p].id), findings);
}

void find_unread_records(const Reckoned& all, std::vector<Finding>& findings) {
    const Survey& survey = all.network.survey();
    const auto add = [&](const std::string& file) {
        findings.push_back(gap(all, "record-unread", {ThingKind::survey, "", ""},
                               {tr("{0} is kept, not read yet"), {file}},
                               tr("Nothing to do: its figures join when recordings are read.")));
    };
    for (const Recording& recording : survey.recordings) add(recording.file);
    for (const Waveform& waveform : survey.waveforms) add(waveform.file);
}

/// Letters that do not come into the panel, and legs that a circuit's breaker is not on: the survey contradicts itself.
void find_foreign_legs(const Reckoned& all, std::vector<Finding>& findings) {
    const Network& network = all.network;
    const auto tell = [&](Thing thing, const Message::Part& name) {
        findings.push_back(gap(all, "leg-not-there", address_of(network, thing),
                               {tr("{0}: a leg is entered that is not there; its legs count as not known"), {name}},
                               tr("Correct the legs of the survey; a look at the bus is for a qualified person, with "
                                  "the panel dead and locked out.")));
    };
    for (std::size_t b = 0; b < network.survey().breakers.size(); ++b) {
        const std::size_t p = network.panel_of(b);
        const bool known = p < network.survey().panels.size() && network.supply(p).system;
        if (known && network.breaker_legs(b).find('?') != std::string::npos)
            tell({ThingKind::breaker, b}, breaker_name(network, b));
    }
    for (std::size_t c = 0; c < network.survey().circuits.size(); ++c) {
        const auto leg = network.survey().circuits[c].leg;
        const bool there =
            leg && std::ranges::any_of(network.breakers_of(c), [&](std::size_t b) {
                const std::string& legs = network.breaker_legs(b);
                return legs.size() < 2 || legs.find('?') != std::string::npos || legs.find(*leg) != std::string::npos;
            });
        if (leg && !there && !network.breakers_of(c).empty()) tell({ThingKind::circuit, c}, circuit_name(network, c));
    }
}

}  // namespace

void find_gaps(const Reckoned& all, std::vector<Finding>& findings) {
    find_outlet_gaps(all, findings);
    find_claims(all, findings);
    find_panel_gaps(all, findings);
    find_unseen_guards(all, findings);
    find_load_gaps(all, findings);
    find_foreign_legs(all, findings);
    find_unlisted_insulation(all, findings);
    find_unread_records(all, findings);
}

}  // namespace doorcard
