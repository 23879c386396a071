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
    using Key = std::tuple<Severity, std::size_t, int, std::string>;
    std::vector<std::pair<Key, std::size_t>> order;
    order.reserve(findings.size());
    for (std::size_t i = 0; i < findings.size(); ++i) {
        const Standing at = standing(network, findings[i].of);
        order.push_back({{findings[i].severity, at.panel, at.space, findings[i].rule}, i});
    }
    std::ranges::sort(order);
    std::vector<Finding> sorted;
    sorted.reserve(findings.size());
    for (const auto& [key, i] : order) sorted.push_back(std::move(findings[i]));
    findings = std::move(sorted);
}

RulesUsed rules_used(const RuleBook& book) {
    RulesUsed used{book.edition(), book.amendments(), {}};
    for (const auto& [id, option] : book.options()) used.options.emplace(id, option.value);
    return used;
}

}  // namespace

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

Assessment assess(const Network& network, const RuleBook& book) {
    const Readings readings(network.survey());
    Reckoned all = reckon(network, book, readings);
    Assessment assessment;
    assessment.findings = run_rules(all);
    set_accepted_apart(all, assessment.findings, assessment.accepted);
    sort_findings(network, assessment.findings);
    sort_findings(network, assessment.accepted);
    assessment.assumed = assumptions(all);
    assessment.circuits = std::move(all.circuits);
    assessment.feeders = std::move(all.feeders);
    assessment.neutrals = std::move(all.neutrals);
    assessment.panels = std::move(all.panels);
    assessment.rules = rules_used(book);
    return assessment;
}

}  // namespace doorcard
