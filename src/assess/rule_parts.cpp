// SPDX-License-Identifier: MIT
#include "assess/rule_parts.hpp"

#include <algorithm>

#include "assess/circuit_text.hpp"
#include "network/panel_supply.hpp"
#include "rules/lookups.hpp"

namespace doorcard {

Severity milder(Severity severity) {
    return severity == Severity::notice ? severity : static_cast<Severity>(static_cast<int>(severity) + 1);
}

Severity for_measured(Severity severity, double value, double limit, const RuleBook& book) {
    return exceeds(value, limit * (1 + book.figure("meter-tolerance"))) ? severity : milder(severity);
}

Severity for_calculated(Severity severity, Amperes value, Amperes limit, const RuleBook& book) {
    const double excess = (value - limit).value;
    return excess < book.figure("calculated-tolerance") - 1e-9 ? Severity::notice : severity;
}

std::optional<Excess> worst_excess(Severity severity, std::optional<Amperes> measured,
                                   std::optional<Amperes> calculated, Amperes limit, const RuleBook& book) {
    std::optional<Excess> worst;
    if (calculated && exceeds(*calculated, limit))
        worst = Excess{for_calculated(severity, *calculated, limit, book), *calculated, false};
    if (!measured || !exceeds(*measured, limit)) return worst;
    const Excess read{for_measured(severity, measured->value, limit.value, book), *measured, true};
    const bool outweighs =
        !worst || read.severity < worst->severity || (read.severity == worst->severity && read.value >= worst->value);
    return outweighs ? read : worst;
}

Address address_of(const Network& network, Thing thing) { return {thing.kind, id_of(network.survey(), thing), ""}; }

std::string breaker_name(const Network& network, std::size_t breaker) {
    const Breaker& given = network.survey().breakers[breaker];
    std::string name = network.survey().panels.size() > 1 ? given.panel + " " : "";
    bool first = true;
    for (const std::size_t pole : poles_by_space(given)) {
        if (!first) name += "+";
        first = false;
        name += std::to_string(given.spaces[pole]);
        if (pole < given.halves.size() && given.halves[pole] != ' ') name += given.halves[pole];
    }
    return name;
}

Message circuit_name(const Network& network, std::size_t circuit) {
    std::string spaces;
    for (const std::size_t b : network.breakers_of(circuit))
        spaces += (spaces.empty() ? "" : ", ") + breaker_name(network, b);
    Message text = circuit_text(network, circuit);
    if (text.empty()) text = verbatim(network.survey().circuits[circuit].id);
    return spaces.empty() ? text : Message{tr("{0} {1}"), {spaces, std::move(text)}};
}

Message breaker_names(const Network& network, const std::vector<std::size_t>& breakers) {
    std::vector<Message::Part> names;
    names.reserve(breakers.size());
    for (const std::size_t b : breakers) names.emplace_back(breaker_name(network, b));
    return and_list(std::move(names));
}

std::vector<std::size_t> breakers_of(const SharedNeutral& neutral) {
    std::vector<std::size_t> found;
    for (const Hot& hot : neutral.hots)
        if (std::ranges::find(found, hot.breaker) == found.end()) found.push_back(hot.breaker);
    return found;
}

int receptacles_at(const Outlet& outlet, const RuleBook& book) {
    const auto says = outlet.config ? configuration(book, *outlet.config) : std::nullopt;
    const bool heavy = says && says->amps.value > book.figure("shared-circuit-max-a");
    return outlet.receptacles.value_or(heavy ? 1 : 2);
}

std::vector<Citation> sources_of(const RuleBook& book, std::initializer_list<const char*> ids) {
    std::vector<Citation> sources;
    for (const char* id : ids)
        if (std::ranges::find(sources, book.cite(id)) == sources.end()) sources.push_back(book.cite(id));
    return sources;
}

std::optional<Amperes> protecting_device(const Reckoned& all, std::size_t p) {
    const Panel& panel = all.network.survey().panels[p];
    if (panel.main == MainKind::split_bus) return std::nullopt;
    const std::vector<std::size_t>& feeding = all.network.breakers_feeding(p);
    std::optional<Amperes> device = panel.main == MainKind::lugs ? std::nullopt : panel.main_a;
    const bool all_from_breakers = feeding.size() == panel.fed_by.size();
    const auto ahead = all_from_breakers && !panel.transformer ? largest_rating(all.network, feeding) : std::nullopt;
    if (ahead && (!device || *ahead < *device)) device = ahead;
    return device;
}

std::string outlet_name(const Network& network, std::size_t outlet) {
    const Outlet& given = network.survey().outlets[outlet];
    return given.label.value_or(given.id);
}

std::string load_name(const Load& load) { return load.title.value_or(load.id); }

Finding begin_finding(const char* rule, Severity severity, Basis basis, Address of) {
    Finding finding;
    finding.rule = rule;
    finding.severity = severity;
    finding.basis = basis;
    finding.of = std::move(of);
    return finding;
}

}  // namespace doorcard
