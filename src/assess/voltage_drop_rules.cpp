// SPDX-License-Identifier: MIT
// Volts lost on the way: voltage-drop (the advice of 210.19(A) and 215.2(A)), at the worst outlet of a circuit.
#include <algorithm>

#include "assess/rule_list.hpp"
#include "assess/rule_parts.hpp"

namespace doorcard {
namespace {

/// The outlet that stands worst; where no load has an outlet the end of the run.
Message worst_place(const Reckoned& all, const LoadFigures& figures) {
    const auto worst = std::ranges::max_element(figures.outlet_drops, {}, &OutletDrop::voltage_drop_percent);
    if (worst == figures.outlet_drops.end()) return {tr("the end of its run"), {}};
    return verbatim(outlet_name(all.network, all.network.survey().outlets.position(worst->outlet)));
}

Message drop_text(const Reckoned& all, std::size_t c, bool branch_over, double limit) {
    const LoadFigures& figures = all.circuits[c];
    const Message name = circuit_name(all.network, c), place = worst_place(all, figures);
    const double branch = *figures.voltage_drop_percent, total = figures.total_drop_percent.value_or(branch);
    if (!branch_over)
        return {tr("{0}: {1:.1f} % of the volts lost at {2}, feeders above included; {3:.4g} % is advised at most"),
                {name, total, place, limit}};
    if (exceeds(total, branch))
        return {tr("{0}: {1:.1f} % of the volts lost at {2}, {3:.1f} % with the feeders above; {4:.4g} % is advised at "
                   "most for a branch circuit"),
                {name, branch, place, total, limit}};
    return {tr("{0}: {1:.1f} % of the volts lost at {2}; {3:.4g} % is advised at most for a branch circuit"),
            {name, branch, place, limit}};
}

void judge_drop(const Reckoned& all, std::size_t c, std::vector<Finding>& findings) {
    const auto branch = all.circuits[c].voltage_drop_percent, total = all.circuits[c].total_drop_percent;
    if (!branch) return;
    const bool branch_over = exceeds(*branch, all.book.figure("drop-branch-percent"));
    const bool total_over = total && exceeds(*total, all.book.figure("drop-total-percent"));
    if (!branch_over && !total_over) return;
    const char* figure = branch_over ? "drop-branch-percent" : "drop-total-percent";
    Finding finding = begin_finding("voltage-drop", Severity::notice, Basis::advised,
                                    address_of(all.network, {ThingKind::circuit, c}));
    finding.value = branch_over ? *branch : *total;
    finding.limit = all.book.figure(figure);
    finding.unit = "%";
    finding.text = drop_text(all, c, branch_over, *finding.limit);
    finding.remedy = {tr("Larger wire, a shorter way, or less load at the far end. Lock out first."), {}};
    finding.sources = {all.book.cite(figure)};
    findings.push_back(std::move(finding));
}

}  // namespace

void find_voltage_drops(const Reckoned& all, std::vector<Finding>& findings) {
    for (std::size_t c = 0; c < all.circuits.size(); ++c) judge_drop(all, c, findings);
}

}  // namespace doorcard
