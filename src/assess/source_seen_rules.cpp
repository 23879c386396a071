// SPDX-License-Identifier: MIT
// What was seen at a source: generator-no-interlock, source-unlabelled. Where a source comes in, only the whole
// premises say.
#include <algorithm>

#include "assess/circuit_text.hpp"
#include "assess/rule_list.hpp"
#include "assess/rule_parts.hpp"

namespace doorcard {
namespace {

/// Where it comes in: its breaker, else the panel it feeds, else itself.
Address entry_of(const Survey& survey, const Source& source) {
    if (source.through) return {ThingKind::breaker, *source.through, ""};
    for (const Panel& panel : survey.panels)
        if (std::ranges::find(panel.fed_by, source.id) != panel.fed_by.end()) return {ThingKind::panel, panel.id, ""};
    return {ThingKind::source, source.id, ""};
}

Finding source_finding(const char* rule, Severity severity, const Survey& survey, const Source& source) {
    return begin_finding(rule, severity, Basis::required, entry_of(survey, source));
}

/// True where another source comes in through a breaker of a panel below this one.
bool met_from_below(const Network& network, std::size_t s) {
    const Survey& survey = network.survey();
    const std::vector<Thing> below = network.downstream_of({ThingKind::source, s});
    return std::ranges::any_of(survey.sources, [&](const Source& other) {
        if (&other == &survey.sources[s] || !other.through) return false;
        const std::size_t b = survey.breakers.position(*other.through);
        return b < survey.breakers.size() &&
               std::ranges::find(below, Thing{ThingKind::panel, network.panel_of(b)}) != below.end();
    });
}

/// A generator that is all that its panels have: nothing to be kept apart from. One that nobody entered a way in for is
/// none.
bool stands_alone(const Network& network, std::size_t s) {
    const Survey& survey = network.survey();
    const Source& source = survey.sources[s];
    bool feeds = false;
    for (const Panel& panel : survey.panels) {
        if (std::ranges::find(panel.fed_by, source.id) == panel.fed_by.end()) continue;
        if (panel.fed_by.size() > 1) return false;
        feeds = true;
    }
    return feeds && !source.through && !met_from_below(network, s);
}

void judge_interlock(const Reckoned& all, std::size_t s, std::vector<Finding>& findings) {
    const Survey& survey = all.network.survey();
    const Source& source = survey.sources[s];
    if (source.kind != "generator" || source.interlock != "none" || stands_alone(all.network, s)) return;
    Finding finding = source_finding("generator-no-interlock", Severity::danger, survey, source);
    finding.text = {
        tr("{0}: nothing keeps this generator and the other supply apart: it can make the utility's line live "
           "and kill who works on it, and both meet when the utility comes back"),
        {source_name(source)}};
    finding.remedy = {tr("Do not run it on this wiring; leave it disconnected until transfer equipment or an interlock "
                         "listed for this panel is fitted."),
                      {}};
    finding.sources = {all.book.cite("nec-702-5")};
    findings.push_back(std::move(finding));
}

void judge_sign(const Reckoned& all, const Source& source, std::vector<Finding>& findings) {
    if (source.labelled != false || source.kind == "utility") return;
    Finding finding = source_finding("source-unlabelled", Severity::warning, all.network.survey(), source);
    finding.text = {tr("{0}: no sign names this second source: who turns the main off may take everything for dead"),
                    {source_name(source)}};
    finding.remedy = {tr("Put up a durable sign at the service that names each source and where it is shut off."), {}};
    finding.sources = {all.book.cite(source.kind == "generator" ? "nec-702-7-a" : "nec-705-10")};
    findings.push_back(std::move(finding));
}

}  // namespace

void find_source_faults_of_the_premises(const Reckoned& all, std::vector<Finding>& findings) {
    for (std::size_t s = 0; s < all.network.survey().sources.size(); ++s) {
        judge_interlock(all, s, findings);
        judge_sign(all, all.network.survey().sources[s], findings);
    }
}

}  // namespace doorcard
