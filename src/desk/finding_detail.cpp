// SPDX-License-Identifier: MIT
#include "desk/finding_detail.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace doorcard {
namespace {

using Lines = std::vector<Message>;

double in(const std::optional<Amperes>& amps) { return amps ? amps->value : 0; }

const LoadFigures* figures_of(const std::vector<LoadFigures>& all, const std::string& id) {
    const auto found = std::ranges::find(all, id, &LoadFigures::id);
    return found == all.end() ? nullptr : &*found;
}

/// What hangs on a circuit, straight or through its outlets, as its nameplates say it.
void add_loads(const Survey& survey, const std::string& circuit, Lines& lines) {
    constexpr std::size_t most = 8;
    std::size_t more = 0;
    for (const Load& load : survey.loads) {
        const Outlet* outlet = load.outlet ? survey.outlets.find(*load.outlet) : nullptr;
        const bool is_on = load.circuit == circuit ||
                           (outlet && std::ranges::find(outlet->circuits, circuit) != outlet->circuits.end());
        if (!is_on) continue;
        if (lines.size() >= most) {
            ++more;
            continue;
        }
        const std::string title = load.title.value_or(load.id);
        const double count = load.count_or_one();
        if (load.va)
            lines.push_back({tr("{0}: {1:.0f} x {2:.0f} VA"), {title, count, load.va->value}});
        else if (load.watts)
            lines.push_back({tr("{0}: {1:.0f} x {2:.0f} W"), {title, count, load.watts->value}});
        else if (load.amps)
            lines.push_back({tr("{0}: {1:.0f} x {2:.1f} A"), {title, count, load.amps->value}});
        else
            lines.push_back({tr("{0}: nameplate not known"), {title}});
    }
    if (more > 0) lines.push_back({tr("and {0:.0f} more loads"), {static_cast<double>(more)}});
}

void add_figures(const LoadFigures& figures, Lines& lines) {
    if (figures.required_a)
        lines.push_back({tr("lasting {0:.1f} A x 1.25 + other {1:.1f} A = {2:.1f} A"),
                         {in(figures.continuous_a), in(figures.noncontinuous_a), in(figures.required_a)}});
    if (figures.measured_a) lines.push_back({tr("measured {0:.1f} A"), {in(figures.measured_a)}});
    if (figures.sustained_a) lines.push_back({tr("held for 3 h or more: {0:.1f} A"), {in(figures.sustained_a)}});
    if (figures.rating_a)
        lines.push_back(
            {tr("rating {0:g} A; 80 % of it, the limit of a lasting load unless listed for 100 %: {1:.1f} A"),
             {in(figures.rating_a), 0.8 * in(figures.rating_a)}});
    if (figures.ampacity_a) lines.push_back({tr("ampacity of the wire: {0:.1f} A"), {in(figures.ampacity_a)}});
}

void add_circuit(const Survey& survey, const Assessment& assessment, const std::string& id, Lines& lines) {
    add_loads(survey, id, lines);
    if (const LoadFigures* figures = figures_of(assessment.circuits, id)) add_figures(*figures, lines);
}

void add_neutral(const Survey& survey, const Assessment& assessment, const std::string& id, Lines& lines) {
    const auto neutral = std::ranges::find(assessment.neutrals, id, &NeutralFigures::id);
    if (neutral == assessment.neutrals.end()) return;
    for (const std::string& circuit : neutral->circuits) {
        const LoadFigures* figures = figures_of(assessment.circuits, circuit);
        const Circuit* known = survey.circuits.find(circuit);
        if (!figures || !known) continue;
        const std::string breakers = fmt::format("{}", fmt::join(figures->breakers, ", "));
        lines.push_back({tr("{0}, leg {1}: {2} ({3:.1f} A connected)"),
                         {breakers, figures->legs.empty() ? "?" : figures->legs, known->purpose.value_or(circuit),
                          in(figures->continuous_a) + in(figures->noncontinuous_a)}});
    }
    if (neutral->amps) lines.push_back({tr("on the neutral with all of it on: {0:.1f} A"), {in(neutral->amps)}});
    if (neutral->measured_a) lines.push_back({tr("measured on the neutral: {0:.1f} A"), {in(neutral->measured_a)}});
    if (neutral->ampacity_a) lines.push_back({tr("ampacity of the neutral: {0:.1f} A"), {in(neutral->ampacity_a)}});
}

void add_panel(const Assessment& assessment, const std::string& id, Lines& lines) {
    const auto panel = std::ranges::find(assessment.panels, id, &PanelFigures::id);
    if (panel == assessment.panels.end()) return;
    for (const PanelLegFigures& leg : panel->legs)
        if (leg.amps) lines.push_back({tr("leg {0}: {1:.1f} A connected"), {std::string(1, leg.leg), in(leg.amps)}});
    if (panel->imbalance_percent)
        lines.push_back({tr("imbalance of the legs: {0:.0f} %"), {*panel->imbalance_percent}});
    if (const LoadFigures* feeder = figures_of(assessment.feeders, id)) add_figures(*feeder, lines);
}

void add_breaker(const Survey& survey, const Assessment& assessment, const std::string& id, Lines& lines) {
    for (const Circuit& circuit : survey.circuits)
        if (std::ranges::find(circuit.breakers, id) != circuit.breakers.end())
            add_circuit(survey, assessment, circuit.id, lines);
}

void add_figure(const Finding& finding, Lines& lines) {
    if (!finding.value) return;
    const std::string unit = finding.unit == "count" ? "" : finding.unit;
    if (finding.limit)
        lines.push_back({tr("{0:.4g} {2} against {1:.4g} {2}"), {*finding.value, *finding.limit, unit}});
    else
        lines.push_back({tr("{0:.4g} {1}"), {*finding.value, unit}});
}

}  // namespace

FindingDetail detail_of(const Finding& finding, const Survey& survey, const Assessment& assessment) {
    FindingDetail detail;
    if (finding.severity != Severity::notice || finding.value) {
        if (finding.of.kind == ThingKind::circuit) add_circuit(survey, assessment, finding.of.id, detail.arithmetic);
        if (finding.of.kind == ThingKind::neutral) add_neutral(survey, assessment, finding.of.id, detail.arithmetic);
        if (finding.of.kind == ThingKind::panel) add_panel(assessment, finding.of.id, detail.arithmetic);
        if (finding.of.kind == ThingKind::breaker) add_breaker(survey, assessment, finding.of.id, detail.arithmetic);
    }
    add_figure(finding, detail.arithmetic);
    return detail;
}

std::string counts_of_findings(const std::array<long, 4>& by_severity, const Words& words) {
    constexpr Counted names[] = {trn("{0} danger", "{0} dangers"), trn("{0} warning", "{0} warnings"),
                                 trn("{0} caution", "{0} cautions"), trn("{0} notice", "{0} notices")};
    std::string text;
    for (std::size_t i = 0; i < by_severity.size(); ++i)
        if (by_severity[i] > 0) text += (text.empty() ? "" : ", ") + words.count(names[i], by_severity[i]);
    return text.empty() ? words(tr("Nothing found. That proves nothing: test before touch.")) : text;
}

}  // namespace doorcard
