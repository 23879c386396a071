// SPDX-License-Identifier: MIT
#include <algorithm>
#include <array>
#include <climits>
#include <tuple>

#include "assess/accepted.hpp"
#include "assess/assumed.hpp"
#include "assess/rule_list.hpp"

namespace doorcard {
namespace {

/// Where a finding stands in a list by panel and space: positions; things without a panel come last.
struct Standing {
    std::size_t panel = SIZE_MAX;
    int space = INT_MAX;
};

Standing standing_of_breaker(const Network& network, std::size_t breaker) {
    const Breaker& given = network.survey().breakers[breaker];
    const auto first = std::ranges::min_element(given.spaces);
    return {network.panel_of(breaker), first == given.spaces.end() ? INT_MAX : *first};
}

Standing standing_of_circuit(const Network& network, std::size_t circuit) {
    const auto& breakers = network.breakers_of(circuit);
    return breakers.empty() ? Standing{} : standing_of_breaker(network, breakers.front());
}

Standing standing(const Network& network, const Address& of) {
    const Survey& survey = network.survey();
    const auto at = [&](const auto& table) { return table.position(of.id); };
    switch (of.kind) {
        case ThingKind::panel:
            return {at(survey.panels), 0};
        case ThingKind::breaker:
            if (at(survey.breakers) < survey.breakers.size()) return standing_of_breaker(network, at(survey.breakers));
            break;
        case ThingKind::circuit:
        case ThingKind::ground:
            if (at(survey.circuits) < survey.circuits.size()) return standing_of_circuit(network, at(survey.circuits));
            break;
        case ThingKind::neutral:
            for (const SharedNeutral& neutral : network.neutrals())
                if (neutral.id == of.id && !neutral.hots.empty())
                    return standing_of_breaker(network, neutral.hots.front().breaker);
            break;
        case ThingKind::outlet:
            if (const std::size_t o = at(survey.outlets); o < survey.outlets.size() && !network.circuits_at(o).empty())
                return standing_of_circuit(network, network.circuits_at(o).front());
            break;
        case ThingKind::load:
            if (const Load* load = survey.loads.find(of.id)) {
                if (load->panel) return {survey.panels.position(*load->panel), 0};
                if (load->circuit) return standing(network, {ThingKind::circuit, *load->circuit, ""});
                if (load->outlet) return standing(network, {ThingKind::outlet, *load->outlet, ""});
            }
            break;
        default:
            break;
    }
    return {};
}

/// By severity, then panel, space, rule; alike ones keep their order.
void sort_findings(const Network& network, std::vector<Finding>& findings) {
    using Key = std::tuple<Severity, std::size_t, int, std::string>;
    std::vector<std::pair<Key, std::size_t>> order;
    for (std::size_t i = 0; i < findings.size(); ++i) {
        const Standing at = standing(network, findings[i].of);
        order.push_back({{findings[i].severity, at.panel, at.space, findings[i].rule}, i});
    }
    std::ranges::sort(order);
    std::vector<Finding> sorted;
    for (const auto& [key, i] : order) sorted.push_back(std::move(findings[i]));
    findings = std::move(sorted);
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
    return assessment;
}

}  // namespace doorcard
