// SPDX-License-Identifier: MIT
// What was seen at a panel: live-part-open, service-neutral-unbonded, subpanel-neutral-bonded, neutrals-one-screw,
// panel-place.
#include <algorithm>

#include "assess/old_work.hpp"
#include "assess/rule_list.hpp"
#include "assess/rule_parts.hpp"
#include "rules/equipment_lookups.hpp"

namespace doorcard {
namespace {

Finding panel_finding(const char* rule, Severity severity, const Panel& panel) {
    return begin_finding(rule, severity, Basis::required, {ThingKind::panel, panel.id, ""});
}

Finding missing_deadfront(const RuleBook& book, const Panel& panel) {
    Finding finding = panel_finding("live-part-open", Severity::danger, panel);
    finding.text = {
        tr("{0}: its dead front is missing: live parts are open to touch, the line lugs also with the main off"),
        {panel.id}};
    finding.remedy = {
        tr("Keep people away and do not reach in. A qualified person fits the dead front made for it, with "
           "the supply ahead of the panel off, locked out and proved dead."),
        {}};
    finding.sources = {book.cite("nec-110-27-a"), book.cite("nec-408-38")};
    return finding;
}

Finding open_gaps(const RuleBook& book, const Panel& panel) {
    Finding finding = panel_finding("live-part-open", Severity::warning, panel);
    const int open = panel.open_spaces_unfilled.value_or(0);
    if (open > 0)
        finding.text = {
            tr("{0}: {1:.0f} openings of its dead front have no filler: live parts are within a finger's reach"),
            {panel.id, static_cast<double>(open)}};
    else
        finding.text = {tr("{0}: its dead front has gaps: live parts are within a finger's reach"), {panel.id}};
    finding.remedy = {
        tr("A qualified person closes every opening with fillers made for this panel, with the panel dead "
           "and locked out; put nothing into them meanwhile."),
        {}};
    finding.sources = {book.cite("nec-408-7"), book.cite("nec-110-12-a")};
    return finding;
}

void judge_live_parts(const RuleBook& book, const Panel& panel, std::vector<Finding>& findings) {
    if (panel.deadfront == "missing")
        findings.push_back(missing_deadfront(book, panel));
    else if (panel.deadfront == "gaps" || panel.open_spaces_unfilled.value_or(0) > 0)
        findings.push_back(open_gaps(book, panel));
}

bool has_no_neutral(const std::optional<System>& system) { return system && facts(*system).to_neutral.value == 0; }

void judge_service_bond(const Reckoned& all, std::size_t p, std::vector<Finding>& findings) {
    const Panel& panel = all.network.survey().panels[p];
    if (panel.service != true || panel.neutral_bonded != false || has_no_neutral(all.network.supply(p).system)) return;
    Finding finding = panel_finding("service-neutral-unbonded", Severity::danger, panel);
    finding.text = {tr("{0}: service equipment, and no bond of neutral and ground was found: without one a fault to "
                       "ground opens no breaker and leaves metal live"),
                    {panel.id}};
    finding.remedy = {tr("Verify where the main bonding jumper is: it may stand ahead of this panel. For a qualified "
                         "person; connect nothing before that is known, and take metal parts for live."),
                      {}};
    finding.sources = {all.book.cite("nec-250-24-c"), all.book.cite("nec-250-28")};
    findings.push_back(std::move(finding));
}

/// True where the panel makes a system of its own: by its transformer, or because its volts to neutral are not those of
/// what feeds it (250.30).
bool is_derived(const Network& network, std::size_t p) {
    const Survey& survey = network.survey();
    const Panel& panel = survey.panels[p];
    if (panel.transformer) return true;
    return panel.system && std::ranges::any_of(network.breakers_feeding(p), [&](std::size_t b) {
               if (network.panel_of(b) >= survey.panels.size()) return false;
               const auto above = network.supply(network.panel_of(b)).system;
               return above && facts(*above).to_neutral.value != facts(*panel.system).to_neutral.value;
           });
}

/// True where it hangs below a service: on a breaker, or on the utility and said not to be the service.
bool hangs_below_service(const Survey& survey, const Panel& panel) {
    if (panel.service == true) return false;
    return std::ranges::any_of(panel.fed_by, [&](const std::string& id) {
        if (survey.breakers.contains(id)) return true;
        const Source* source = survey.sources.find(id);
        return panel.service == false && source && source->kind == "utility";
    });
}

bool has_ground_wire(const Panel& panel) {
    if (!panel.feeder) return false;
    const bool metal_raceway = panel.feeder->raceway == "steel" || panel.feeder->raceway == "aluminum";
    return metal_raceway || (panel.feeder->ground_size && *panel.feeder->ground_size != "none");
}

void judge_bond_below(const Reckoned& all, std::size_t p, std::vector<Finding>& findings) {
    const Survey& survey = all.network.survey();
    const Panel& panel = survey.panels[p];
    if (panel.neutral_bonded != true || !hangs_below_service(survey, panel) || is_derived(all.network, p)) return;
    const auto built = survey.heading.built;
    const bool old_building = panel.separate_building == true && !has_ground_wire(panel) && built &&
                              *built < all.book.figure("outbuilding-bond-year");
    Finding finding = panel_finding("subpanel-neutral-bonded", Severity::warning, panel);
    finding.text = {
        tr("{0}: neutral and ground are bonded below the service: ground wires and metal carry neutral current"),
        {panel.id}};
    finding.sources = {all.book.cite("nec-250-24-b"), all.book.cite("nec-250-142-b")};
    if (old_building) {
        finding.basis = Basis::advised;
        finding.sources = {all.book.cite("nec-250-32-b")};
        call_old(finding);
    }
    finding.remedy = {
        tr("For a qualified person, with the feeder locked out: verify first that a ground wire comes with "
           "the feeder, then part neutral and ground here. With three wires the bond stays until a ground "
           "wire is run: without either, a fault leaves metal live."),
        {}};
    findings.push_back(std::move(finding));
}

void judge_neutral_screws(const RuleBook& book, const Panel& panel, std::vector<Finding>& findings) {
    if (panel.neutrals_doubled != true) return;
    Finding finding = panel_finding("neutrals-one-screw", Severity::warning, panel);
    finding.text = {tr("{0}: two neutrals under one screw: one comes loose when the other is taken off"), {panel.id}};
    finding.remedy = {
        tr("Give each neutral a terminal of its own. Lock out the panel first: a neutral that is lifted while "
           "its circuit is on stands at full voltage."),
        {}};
    finding.sources = {book.cite("nec-408-41")};
    findings.push_back(std::move(finding));
}

Message place_text(const Panel& panel) {
    if (panel.place == "closet")
        return {tr("{0} is in a closet: clothes and boxes burn, and the way to it is blocked"), {panel.id}};
    if (panel.place == "bath") return {tr("{0} is in a bathroom: water and wet hands"), {panel.id}};
    return {tr("{0} is over steps: no safe footing in front of it"), {panel.id}};
}

void judge_place(const Reckoned& all, const Panel& panel, std::vector<Finding>& findings) {
    const auto ruled_out = panel.place ? ruled_out_place(all.book, *panel.place) : std::nullopt;
    if (!ruled_out) return;
    Finding finding = panel_finding("panel-place", Severity::warning, panel);
    finding.text = place_text(panel);
    const auto built = all.network.survey().heading.built;
    if (built && *built < ruled_out->since) call_old(finding);
    finding.remedy = {
        tr("Keep what burns and what is wet away from it, and the way to it clear; move it when the service "
           "is renewed."),
        {}};
    finding.sources = {ruled_out->source};
    findings.push_back(std::move(finding));
}

}  // namespace

void find_panel_faults(const Reckoned& all, std::vector<Finding>& findings) {
    for (std::size_t p = 0; p < all.network.survey().panels.size(); ++p) {
        const Panel& panel = all.network.survey().panels[p];
        judge_live_parts(all.book, panel, findings);
        judge_service_bond(all, p, findings);
        judge_bond_below(all, p, findings);
        judge_neutral_screws(all.book, panel, findings);
        judge_place(all, panel, findings);
    }
}

}  // namespace doorcard
