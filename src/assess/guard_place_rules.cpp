// SPDX-License-Identifier: MIT
// guard-missing: places that ask for a guard, on circuits where none was seen (210.8(A), (B), 210.12).
#include <algorithm>

#include "assess/guard_chain.hpp"
#include "assess/old_work.hpp"
#include "assess/rule_list.hpp"
#include "assess/rule_parts.hpp"
#include "rules/equipment_lookups.hpp"

namespace doorcard {
namespace {

/// A place on one circuit, in the surveyor's words, and the guards that it lacks.
struct Lacking {
    std::string place;
    std::string words;
    std::vector<PlaceGuard> guards;
};

/// Somebody looked at every breaker of the circuit and saw no guard.
bool none_was_seen(const Network& network, std::size_t c) {
    const Survey& survey = network.survey();
    const auto& breakers = network.breakers_of(c);
    return !breakers.empty() && std::ranges::all_of(breakers, [&](std::size_t b) {
        const Breaker& breaker = survey.breakers[b];
        const bool in_use = breaker.state.value_or(BreakerState::in_use) == BreakerState::in_use;
        return in_use && breaker.system.value_or("normal") == "normal" && breaker.guards && breaker.guards->empty();
    });
}

/// 210.8: up to 150 V to ground; outside dwellings only up to 50 A, or 100 A on three phases.
bool asks_for_ground_guard(const Reckoned& all, std::size_t c, bool dwelling) {
    const PanelSupply* supply = supply_of_circuit(all.network, c);
    const std::string& legs = all.network.circuit_legs(c);
    const Volts most(all.book.figure("ground-guard-max-volts"));
    const bool low = supply && !legs.empty() && std::ranges::all_of(legs, [&](char leg) {
                         const auto volts = supply->volts_to_neutral(leg);
                         return volts && !exceeds(volts->value, most.value);
                     });
    const char* largest = legs.size() > 2 ? "ground-guard-three-phase-max-a" : "ground-guard-max-a";
    const auto rating = all.circuits[c].rating_a;
    return low && (dwelling || !rating || !exceeds(*rating, Amperes(all.book.figure(largest))));
}

/// 210.12: 120 V circuits of dwellings up to 20 A.
bool asks_for_arc_guard(const Reckoned& all, std::size_t c, bool dwelling) {
    const auto rating = all.circuits[c].rating_a;
    const auto volts = all.network.circuit_volts(c);
    return dwelling && rating && !exceeds(*rating, Amperes(all.book.figure("arc-guard-max-a"))) &&
           volts == facts(System::two_wire_120).to_neutral;
}

bool is_receptacle(const Outlet& outlet) {
    return outlet.kind ? *outlet.kind == OutletKind::receptacle : outlet.config.has_value();
}

bool is_outlet_or_device(const Outlet& outlet) {
    return is_receptacle(outlet) || (outlet.kind && *outlet.kind != OutletKind::box);
}

void add_lacking(std::vector<Lacking>& all, const std::string& place, const std::string& words,
                 const PlaceGuard& guard) {
    auto at = std::ranges::find(all, place, &Lacking::place);
    if (at == all.end()) at = all.insert(all.end(), {place, words, {}});
    if (std::ranges::find(at->guards, guard) == at->guards.end()) at->guards.push_back(guard);
}

std::vector<Lacking> lacking_on(const Reckoned& all, std::size_t c) {
    const Network& network = all.network;
    const bool dwelling = !network.circuit_in_occupancy(c);
    const bool ground = asks_for_ground_guard(all, c, dwelling), arc = asks_for_arc_guard(all, c, dwelling);
    std::vector<Lacking> found;
    for (const std::size_t o : network.outlets_on(c)) {
        const Outlet& outlet = network.survey().outlets[o];
        const auto words = place_of(network.survey(), outlet);
        const auto place = words ? guard_place(all.book, *words) : std::nullopt;
        if (!place) continue;
        const auto ask = [&](bool applies, const std::optional<PlaceGuard>& guard) {
            if (applies && guard && !is_guarded(network, o, c, guard->guard) &&
                !may_be_guarded(network, o, c, guard->guard))
                add_lacking(found, *place, *words, *guard);
        };
        ask(arc && is_outlet_or_device(outlet), arc_guard_in(all.book, *place));
        ask(ground && is_receptacle(outlet), ground_guard_at(all.book, *place, dwelling));
    }
    return found;
}

Message lacking_text(const Reckoned& all, std::size_t c, const Lacking& lacking) {
    const bool arc = std::ranges::find(lacking.guards, Guard::arc, &PlaceGuard::guard) != lacking.guards.end();
    const char* pattern = lacking.guards.size() > 1
                              ? tr("{0}: neither arc nor ground guard was seen, and it serves: {1}")
                          : arc ? tr("{0}: no arc guard was seen, and it serves: {1}")
                                : tr("{0}: no ground guard was seen, and it serves: {1}");
    return {pattern, {circuit_name(all.network, c), lacking.words}};
}

void judge_lacking(const Reckoned& all, std::size_t c, const Lacking& lacking, std::vector<Finding>& findings) {
    const auto year = year_of_circuit(all.network, c);
    const bool is_new = year && *year >= all.book.figure("edition-year");
    Finding finding = begin_finding("guard-missing", is_new ? Severity::warning : Severity::notice, Basis::required,
                                    address_of(all.network, {ThingKind::circuit, c}));
    finding.text = lacking_text(all, c, lacking);
    if (!year || is_new) finding.applies = Applies::new_work;
    if (year && std::ranges::all_of(lacking.guards, [&](const PlaceGuard& guard) { return guard.since > *year; }))
        call_old(finding);
    finding.remedy = {tr("Fit the guard at the breaker, of the same rating, or at the first outlet, and press its TEST "
                         "button; where the neutral is shared, one that opens all its hots. Lock out first."),
                      {}};
    for (const PlaceGuard& guard : lacking.guards) finding.sources.push_back(all.book.cite(guard.cite));
    findings.push_back(std::move(finding));
}

}  // namespace

void find_missing_guards(const Reckoned& all, std::vector<Finding>& findings) {
    for (std::size_t c = 0; c < all.network.survey().circuits.size(); ++c) {
        if (!none_was_seen(all.network, c)) continue;
        for (const Lacking& lacking : lacking_on(all, c)) judge_lacking(all, c, lacking, findings);
    }
}

}  // namespace doorcard
