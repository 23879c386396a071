// SPDX-License-Identifier: MIT
#include <algorithm>
#include <array>
#include <tuple>

#include "assess/accepted.hpp"
#include "assess/assumed.hpp"
#include "assess/rule_list.hpp"
#include "assess/standing.hpp"

namespace doorcard {
namespace {

/// By severity, then panel, space, rule; alike ones keep their order.
void sort_findings(const Network& network, std::vector<Finding>& findings) {
    for (Finding& finding : findings) finding.standing = standing(network, finding.of);
    std::ranges::stable_sort(findings, comes_first);
}

void set_assumed(Assessment& assessment, std::vector<std::vector<Assumption>> by_panel) {
    for (std::vector<Assumption>& of_panel : by_panel) {
        std::ranges::move(of_panel, std::back_inserter(assessment.assumed));
        assessment.assumed_up_to.push_back(assessment.assumed.size());
    }
}

RulesUsed rules_used(const RuleBook& book) {
    RulesUsed used{book.edition(), book.amendments(), {}};
    for (const auto& [id, option] : book.options()) used.options.emplace(id, option.value);
    return used;
}

}  // namespace

bool comes_first(const Finding& a, const Finding& b) {
    return std::tie(a.severity, a.standing, a.rule) < std::tie(b.severity, b.standing, b.rule);
}

std::string_view name_of(Severity severity) {
    constexpr std::array<std::string_view, 4> names = {"danger", "warning", "caution", "notice"};
    return names[static_cast<std::size_t>(severity)];
}

std::string_view name_of(Basis basis) {
    constexpr std::array<std::string_view, 4> names = {"required", "advised", "practice", "gap"};
    return names[static_cast<std::size_t>(basis)];
}

std::string_view name_of(Applies applies) {
    constexpr std::array<std::string_view, 3> names = {"new-work", "existing", "any"};
    return names[static_cast<std::size_t>(applies)];
}

Assessment assess(const Network& network, const RuleBook& book, const KnownTotals& known) {
    const Readings readings(network.survey());
    Reckoned all = reckon(network, book, readings, known);
    Assessment assessment;
    assessment.findings = run_rules(all);
    set_accepted_apart(all, assessment.findings, assessment.accepted);
    sort_findings(network, assessment.findings);
    sort_findings(network, assessment.accepted);
    set_assumed(assessment, assumptions(all));
    assessment.circuits = std::move(all.circuits);
    assessment.feeders = std::move(all.feeders);
    assessment.neutrals = std::move(all.neutrals);
    assessment.panels = std::move(all.panels);
    assessment.rules = rules_used(book);
    assessment.joints = std::move(all.joints);
    assessment.panel_totals = std::move(all.panel_totals);
    assessment.is_tree = all.is_tree;
    return assessment;
}

}  // namespace doorcard
