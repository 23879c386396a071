// SPDX-License-Identifier: MIT
// Interrupting ratings against the fault current at their panel: interrupting-too-low (110.9).
#include <algorithm>

#include "assess/rule_list.hpp"
#include "assess/rule_parts.hpp"

namespace doorcard {
namespace {

/// The panel's own figure; else that of a source that feeds it straight, which is never less. Further down only the
/// panel's own will do, and none is taken through a transformer.
std::optional<double> fault_at(const Survey& survey, const Panel& panel) {
    if (panel.fault_ka) return panel.fault_ka;
    if (panel.transformer) return std::nullopt;
    std::optional<double> most;
    for (const std::string& feed : panel.fed_by)
        if (const Source* source = survey.sources.find(feed); source && source->fault_ka)
            most = std::max(most.value_or(0), *source->fault_ka);
    return most;
}

void judge_breaker(const Reckoned& all, std::size_t b, double fault_ka, std::vector<Finding>& findings) {
    const Breaker& breaker = all.network.survey().breakers[b];
    if (!breaker.interrupting_ka || breaker.series_rated.value_or(false)) return;
    if (!exceeds(fault_ka, *breaker.interrupting_ka)) return;
    Finding finding = begin_finding("interrupting-too-low", Severity::warning, Basis::required,
                                    address_of(all.network, {ThingKind::breaker, b}));
    finding.value = *breaker.interrupting_ka;
    finding.limit = fault_ka;
    finding.unit = "kA";
    finding.text = {tr("{0}: made to interrupt {1:.4g} kA; a fault here may bring {2:.4g} kA"),
                    {breaker_name(all.network, b), *breaker.interrupting_ka, fault_ka}};
    finding.remedy = {tr("A device of the same rating and guards that can interrupt enough, or one marked in a "
                         "series-rated combination with "
                         "the device ahead. Lock out first."),
                      {}};
    finding.sources = {all.book.cite("nec-110-9"), all.book.cite("nec-240-86")};
    findings.push_back(std::move(finding));
}

}  // namespace

void find_low_interrupting(const Reckoned& all, std::vector<Finding>& findings) {
    const Survey& survey = all.network.survey();
    for (std::size_t p = 0; p < survey.panels.size(); ++p) {
        const auto fault_ka = fault_at(survey, survey.panels[p]);
        if (!fault_ka) continue;
        for (const std::size_t b : all.network.breakers_in(p)) judge_breaker(all, b, *fault_ka, findings);
    }
}

}  // namespace doorcard
