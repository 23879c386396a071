// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <cmath>
#include <map>
#include <regex>

#include "sheet/correction_parts.hpp"
#include "sheet/panel_facts.hpp"

namespace doorcard {
namespace {

/// Up to one decimal place, none where it is whole: rounded for print alone.
std::string figure(double value, const std::string& unit) {
    const double rounded = std::round(value * 10) / 10;
    const std::string number =
        rounded == std::round(rounded) ? fmt::format("{:.0f}", rounded) : fmt::format("{:.1f}", rounded);
    return unit.empty() || unit == "count" ? number : number + "\u00A0" + unit;
}

}  // namespace

std::string figure_text(const Finding& finding, const Words&) {
    return finding.value ? figure(*finding.value, finding.unit) : std::string();
}

std::string limit_text(const Finding& finding, const Words& words) {
    if (!finding.limit) return {};
    return words.say({tr("limit {0}"), {figure(*finding.limit, finding.unit)}});
}

std::string with_units_kept(const std::string& text) {
    static const std::regex figure("([0-9]) (A|V|VA|W|kW|kVA|kA|mA|h|%|\u00B0C|ohm|ohms|AWG)(?![A-Za-z])");
    return std::regex_replace(text, figure, "$1\u00A0$2");
}

std::string basis_text(const Finding& finding, const Words& words) {
    static const std::map<Basis, const char*> bases = {{Basis::required, tr("required")},
                                                       {Basis::advised, tr("advised")},
                                                       {Basis::practice, tr("practice")},
                                                       {Basis::gap, tr("not known")}};
    const std::string basis = words(bases.at(finding.basis));
    if (finding.applies == Applies::new_work) return words.say({tr("{0}, new work"), {basis}});
    if (finding.applies == Applies::existing) return words.say({tr("{0}, existing work"), {basis}});
    return basis;
}

std::string counts_text(const CorrectionPart& part, const Words& words) {
    std::map<Severity, long> counts;
    for (const Finding* finding : part.items) ++counts[finding->severity];
    for (const NoticeGroup& group : part.notices) counts[Severity::notice] += static_cast<long>(group.findings.size());
    std::string text;
    const auto add = [&](const Counted& forms, Severity severity) {
        if (counts[severity] > 0) text += (text.empty() ? "" : ", ") + words.count(forms, counts[severity]);
    };
    add(trn("{0} danger", "{0} dangers"), Severity::danger);
    add(trn("{0} warning", "{0} warnings"), Severity::warning);
    add(trn("{0} caution", "{0} cautions"), Severity::caution);
    add(trn("{0} notice", "{0} notices"), Severity::notice);
    if (part.accepted > 0)
        text += (text.empty() ? "" : ", ") + words.count(trn("{0} accepted", "{0} accepted"), part.accepted);
    return text;
}

std::string part_name(const CorrectionContent& content) {
    return content.of_panel() ? content.panel().id : content.words(tr("No panel"));
}

std::string part_title(const CorrectionContent& content) {
    const std::string list = content.words(tr("Correction list"));
    const std::string place = content.of_panel() ? title_and_place(content.panel(), content.words)
                                                 : content.words(tr("what hangs on no known panel"));
    return place.empty() ? list : list + ": " + place;
}

std::string nothing_found(const Words& words) {
    return words(tr("Nothing found. That is not a proof that there is nothing: what nobody looked at, nobody judged."));
}

}  // namespace doorcard
