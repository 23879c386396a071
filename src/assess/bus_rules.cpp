// SPDX-License-Identifier: MIT
// Panels against their bus: panel-over-bus, by the protecting device and by measured load; never the sum of branch
// breakers.
#include <algorithm>

#include "assess/rule_list.hpp"
#include "assess/rule_parts.hpp"

namespace doorcard {
namespace {

void judge_bus(const Reckoned& all, std::size_t p, std::vector<Finding>& findings) {
    const Panel& panel = all.network.survey().panels[p];
    if (!panel.bus_a) return;
    const auto add = [&](Severity severity, Amperes value, const char* pattern, const char* remedy) {
        Finding finding =
            begin_finding("panel-over-bus", severity, Basis::required, address_of(all.network, {ThingKind::panel, p}));
        finding.value = value.value;
        finding.limit = panel.bus_a->value;
        finding.unit = "A";
        finding.text = {pattern, {panel.id, value.value, panel.bus_a->value}};
        finding.remedy = {remedy, {}};
        finding.sources = {all.book.cite("nec-408-36")};
        findings.push_back(std::move(finding));
    };
    std::optional<Amperes> measured;
    for (const PanelLegFigures& leg : all.panels[p].legs)
        if (leg.measured_a && (!measured || *leg.measured_a > *measured)) measured = leg.measured_a;
    if (!panel.transformer)
        if (const auto highest = all.measured_feeders[p].highest; highest && (!measured || *highest > *measured))
            measured = highest;
    const auto device = protecting_device(all, p);
    if (device && exceeds(*device, *panel.bus_a))
        return add(Severity::warning, *device, tr("{0}: protected at {1:.4g} A, its bus is made for {2:.4g} A"),
                   tr("Protect it by a device not above the bus, in it or ahead of it."));
    if (measured && exceeds(*measured, *panel.bus_a))
        add(for_measured(Severity::warning, measured->value, panel.bus_a->value, all.book), *measured,
            tr("{0}: {1:.4g} A measured, its bus is made for {2:.4g} A"), tr("Take load off this panel."));
}

}  // namespace

void find_overloaded_buses(const Reckoned& all, std::vector<Finding>& findings) {
    for (std::size_t p = 0; p < all.network.survey().panels.size(); ++p) judge_bus(all, p, findings);
}

}  // namespace doorcard
