// SPDX-License-Identifier: MIT
// Where things sit that should not: breaker-overlap, legs-same-on-multipole, high-leg-to-neutral, outlet-two-feeds.
#include <algorithm>
#include <set>

#include "assess/rule_list.hpp"
#include "assess/rule_parts.hpp"

namespace doorcard {
namespace {

/// True where the two breakers share a space or a half: a full space covers both its halves.
bool share_a_space(const Breaker& a, const Breaker& b) {
    for (std::size_t i = 0; i < a.spaces.size(); ++i)
        for (std::size_t j = 0; j < b.spaces.size(); ++j) {
            if (a.spaces[i] != b.spaces[j]) continue;
            const char mine = i < a.halves.size() ? a.halves[i] : ' ';
            const char theirs = j < b.halves.size() ? b.halves[j] : ' ';
            if (mine == ' ' || theirs == ' ' || mine == theirs) return true;
        }
    return false;
}

void judge_overlaps(const Reckoned& all, std::size_t panel, std::vector<Finding>& findings) {
    const Network& network = all.network;
    const auto& breakers = network.breakers_in(panel);
    for (const std::size_t b : breakers) {
        std::vector<std::size_t> others;
        for (const std::size_t other : breakers)
            if (other != b && share_a_space(network.survey().breakers[b], network.survey().breakers[other]))
                others.push_back(other);
        if (others.empty()) continue;
        Finding finding = begin_finding("breaker-overlap", Severity::warning, Basis::practice,
                                        address_of(network, {ThingKind::breaker, b}));
        finding.text = {tr("{0} is entered on spaces that {1} uses too"),
                        {breaker_name(network, b), breaker_names(network, others)}};
        finding.remedy = {tr("Look again which handle stands where; enter halves of a tandem as such."), {}};
        finding.sources = {all.book.cite("practice")};
        findings.push_back(std::move(finding));
    }
}

void judge_poles(const Reckoned& all, std::size_t b, std::vector<Finding>& findings) {
    const std::string& legs = all.network.breaker_legs(b);
    std::set<char> seen;
    const bool doubled = std::ranges::any_of(legs, [&](char leg) { return leg != '?' && !seen.insert(leg).second; });
    if (!doubled) return;
    Finding finding = begin_finding("legs-same-on-multipole", Severity::warning, Basis::practice,
                                    address_of(all.network, {ThingKind::breaker, b}));
    finding.text = {tr("{0}: two of its poles sit on one leg ({1}): no line-to-line voltage between them"),
                    {breaker_name(all.network, b), legs}};
    finding.remedy = {tr("Check spaces and legs with a meter; a shared neutral on it carries the sum of both poles."),
                      {}};
    finding.sources = {all.book.cite("practice")};
    findings.push_back(std::move(finding));
}

bool puts_load_on_high_leg(const Reckoned& all, std::size_t c, char high_leg) {
    const std::string& legs = all.network.circuit_legs(c);
    if (legs == std::string(1, high_leg)) return true;
    return std::ranges::any_of(all.placed.on_circuit[c], [&](const PlacedLoad& load) {
        const bool to_neutral =
            load.current.placing == Placing::line_to_neutral || load.current.placing == Placing::halves;
        return to_neutral && load.current.legs_known && load.current.legs.find(high_leg) != std::string::npos;
    });
}

void judge_high_leg(const Reckoned& all, std::size_t c, std::vector<Finding>& findings) {
    const PanelSupply* supply = supply_of_circuit(all.network, c);
    if (!supply || supply->high_leg == 0 || !puts_load_on_high_leg(all, c, supply->high_leg)) return;
    const Volts volts = high_leg_volts;
    const Volts nominal = facts(System::high_leg_240).to_neutral;
    Finding finding = begin_finding("high-leg-to-neutral", Severity::danger, Basis::required,
                                    address_of(all.network, {ThingKind::circuit, c}));
    finding.value = volts.value;
    finding.limit = nominal.value;
    finding.unit = "V";
    finding.text = {tr("{0} is on the high leg {1}: {2:.0f} V to neutral, not {3:.0f} V"),
                    {circuit_name(all.network, c), std::string(1, supply->high_leg), *finding.value, nominal.value}};
    finding.remedy = {tr("Connect no line-to-neutral load to it; move the circuit to a leg that no other hot of its "
                         "neutral is on. Lock out first."),
                      {}};
    finding.sources = {all.book.cite("nec-110-15"), all.book.cite("nec-408-3-e")};
    findings.push_back(std::move(finding));
}

Finding double_feed(const Reckoned& all, Thing thing, Message text) {
    Finding finding =
        begin_finding("outlet-two-feeds", Severity::danger, Basis::practice, address_of(all.network, thing));
    finding.text = std::move(text);
    finding.remedy = {
        tr("Lock out all of them before anyone opens it; part the circuits so that one device feeds each."), {}};
    finding.sources = {all.book.cite("practice"), all.book.cite("nec-210-18")};
    return finding;
}

void judge_outlet(const Reckoned& all, std::size_t o, std::vector<Finding>& findings) {
    const Network& network = all.network;
    const Survey& survey = network.survey();
    const Outlet& outlet = survey.outlets[o];
    std::vector<std::size_t> circuits = network.circuits_at(o);
    if (outlet.upstream)
        if (const std::size_t up = survey.outlets.position(*outlet.upstream); up < survey.outlets.size())
            for (const std::size_t c : network.circuits_at(up))
                if (std::ranges::find(circuits, c) == circuits.end()) circuits.push_back(c);
    if (circuits.size() < 2) return;
    std::vector<Message::Part> names;
    names.reserve(circuits.size());
    for (const std::size_t c : circuits) names.emplace_back(circuit_name(network, c));
    findings.push_back(double_feed(all, {ThingKind::outlet, o},
                                   {tr("Outlet {0} is fed by {1} at once: live until all of them are off"),
                                    {outlet.label.value_or(outlet.id), and_list(std::move(names))}}));
}

/// Tied single poles on different legs that feed one line-to-line circuit are one handle: no double feed
/// (240.15(B)(1)).
bool is_one_handle(const Network& network, const std::vector<std::size_t>& breakers) {
    std::string legs;
    for (const std::size_t b : breakers) {
        if (std::ranges::find(network.opened_with(breakers.front()), b) == network.opened_with(breakers.front()).end())
            return false;
        legs += network.breaker_legs(b);
    }
    return legs.find('?') == std::string::npos && std::set<char>(legs.begin(), legs.end()).size() == legs.size();
}

void judge_circuit(const Reckoned& all, std::size_t c, std::vector<Finding>& findings) {
    const auto& breakers = all.network.breakers_of(c);
    if (breakers.size() < 2 || is_one_handle(all.network, breakers)) return;
    findings.push_back(double_feed(all, {ThingKind::circuit, c},
                                   {tr("{0} is fed by {1} at once: live until all of them are off"),
                                    {circuit_name(all.network, c), breaker_names(all.network, breakers)}}));
}

}  // namespace

void find_misplaced_breakers(const Reckoned& all, std::vector<Finding>& findings) {
    for (std::size_t p = 0; p < all.network.survey().panels.size(); ++p) judge_overlaps(all, p, findings);
    for (std::size_t b = 0; b < all.network.survey().breakers.size(); ++b) judge_poles(all, b, findings);
}

void find_double_feeds(const Reckoned& all, std::vector<Finding>& findings) {
    for (std::size_t c = 0; c < all.network.survey().circuits.size(); ++c) {
        judge_high_leg(all, c, findings);
        judge_circuit(all, c, findings);
    }
    for (std::size_t o = 0; o < all.network.survey().outlets.size(); ++o) judge_outlet(all, o, findings);
}

}  // namespace doorcard
