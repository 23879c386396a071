// SPDX-License-Identifier: MIT
// Circuits that a dwelling must have (210.11(C)): required-circuit-missing, appliance-circuits-differ. They look at the
// whole of a dwelling, and only once all of its circuits are traced.
#include <algorithm>

#include "assess/guard_chain.hpp"
#include "assess/rule_list.hpp"
#include "assess/rule_parts.hpp"
#include "rules/equipment_lookups.hpp"

namespace doorcard {
namespace {

/// One dwelling unit: its panels, and what its findings are of.
struct Unit {
    const Dwelling* dwelling;
    Address of;
    std::vector<std::size_t> panels;
};

bool contains(const std::vector<std::size_t>& all, std::size_t one) { return std::ranges::find(all, one) != all.end(); }

std::vector<std::size_t> with_panels_below(const Network& network, std::size_t panel) {
    std::vector<std::size_t> found = {panel};
    for (const Thing thing : network.downstream_of({ThingKind::panel, panel}))
        if (thing.kind == ThingKind::panel && !contains(found, thing.index)) found.push_back(thing.index);
    return found;
}

/// The premises, without what an occupancy covers: the unit of a single dwelling that names no panels.
std::optional<Unit> whole_premises(const Network& network) {
    const Survey& survey = network.survey();
    if (survey.dwellings.size() != 1) return std::nullopt;
    const Dwelling& dwelling = survey.dwellings[0];
    if (dwelling.panels || dwelling.units.value_or(1) != 1) return std::nullopt;
    Unit unit{&dwelling, {ThingKind::survey, "", ""}, {}};
    for (std::size_t p = 0; p < survey.panels.size(); ++p)
        if (!network.in_occupancy(p)) unit.panels.push_back(p);
    return unit;
}

/// True where another panel of the list feeds this one: then it is no unit of its own.
bool hangs_below(const Network& network, std::size_t panel, const Ids& listed) {
    const auto above = network.upstream_of({ThingKind::panel, panel});
    return std::ranges::any_of(above, [&](Thing thing) {
        return thing.kind == ThingKind::panel && thing.index != panel &&
               std::ranges::find(listed, id_of(network.survey(), thing)) != listed.end();
    });
}

/// Each panel that a dwelling names is a unit, with all below it.
std::vector<Unit> units_of(const Network& network) {
    const Survey& survey = network.survey();
    std::vector<Unit> units;
    if (auto whole = whole_premises(network)) units.push_back(*std::move(whole));
    for (const Dwelling& dwelling : survey.dwellings) {
        const Ids listed = dwelling.panels.value_or(Ids());
        for (const std::string& id : listed) {
            const std::size_t p = survey.panels.position(id);
            if (p < survey.panels.size() && !hangs_below(network, p, listed))
                units.push_back({&dwelling, address_of(network, {ThingKind::panel, p}), with_panels_below(network, p)});
        }
    }
    return units;
}

bool has_rules(const Network& network, const Unit& unit) {
    return std::ranges::all_of(unit.panels, [&](std::size_t p) {
        const auto system = network.supply(p).system;
        return system && facts(*system).has_rules;
    });
}

bool feeds_no_circuit(const Network& network, std::size_t b) {
    const Survey& survey = network.survey();
    const Breaker& breaker = survey.breakers[b];
    if (breaker.state.value_or(BreakerState::in_use) != BreakerState::in_use || breaker.serves_as_main == true)
        return true;
    const bool comes_in = std::ranges::any_of(
        survey.sources, [&](const Source& source) { return source.through && *source.through == breaker.id; });
    return comes_in || (!network.panels_fed_by(b).empty() && network.circuits_on(b).empty());
}

std::vector<std::size_t> circuits_of(const Network& network, const Unit& unit) {
    std::vector<std::size_t> found;
    for (const std::size_t p : unit.panels)
        for (const std::size_t b : network.breakers_in(p))
            for (const std::size_t c : network.circuits_on(b))
                if (!contains(found, c)) found.push_back(c);
    return found;
}

bool is_proven(const Circuit& circuit) { return circuit.traced && circuit.traced->proves(); }

bool all_traced(const Network& network, const Unit& unit, const std::vector<std::size_t>& circuits) {
    const Survey& survey = network.survey();
    const bool homeless = std::ranges::any_of(survey.circuits, [](const Circuit& one) { return one.breakers.empty(); });
    if (circuits.empty() || homeless) return false;
    for (const std::size_t p : unit.panels)
        for (const std::size_t b : network.breakers_in(p))
            if (!feeds_no_circuit(network, b) && network.circuits_on(b).empty()) return false;
    return std::ranges::all_of(circuits, [&](std::size_t c) { return is_proven(survey.circuits[c]); });
}

/// Circuits that serve such places, and those of which it is not known.
struct Surveyed {
    int known = 0;
    int perhaps = 0;
    int most() const { return known + perhaps; }
};

enum class Serves { yes, no, perhaps };

Serves serves(const Reckoned& all, const RequiredCircuit& required, const Outlet& outlet) {
    if (outlet.kind && *outlet.kind != OutletKind::receptacle) return Serves::no;
    const auto words = place_of(all.network.survey(), outlet);
    const auto place = words ? guard_place(all.book, *words) : std::nullopt;
    if (!outlet.kind || !place) return Serves::perhaps;
    return std::ranges::find(required.places, *place) == required.places.end() ? Serves::no : Serves::yes;
}

/// One outlet alone in a kitchen may be a refrigerator's own circuit (210.52(B)(1) Exception), and then is none.
bool may_be_individual(const Reckoned& all, const RequiredCircuit& required, std::size_t c) {
    return required.count > 1 && all.network.outlets_on(c).size() == 1;
}

Serves serves(const Reckoned& all, const RequiredCircuit& required, std::size_t c) {
    const auto rating = all.circuits[c].rating_a;
    if (rating && rating->value != required.rating.value) return Serves::no;
    const auto& outlets = all.network.outlets_on(c);
    Serves found = outlets.empty() ? Serves::perhaps : Serves::no;
    for (const std::size_t o : outlets) {
        const Serves one = serves(all, required, all.network.survey().outlets[o]);
        if (one == Serves::yes) return rating && !may_be_individual(all, required, c) ? Serves::yes : Serves::perhaps;
        if (one == Serves::perhaps) found = one;
    }
    return found;
}

Surveyed count_of(const Reckoned& all, const RequiredCircuit& required, const std::vector<std::size_t>& circuits) {
    Surveyed found;
    for (const std::size_t c : circuits) {
        const int hots = static_cast<int>(std::max<std::size_t>(1, all.network.circuit_hots(c).size()));
        const Serves so = serves(all, required, c);
        if (so == Serves::yes) found.known += hots;
        if (so == Serves::perhaps) found.perhaps += hots;
    }
    return found;
}

Message name_of_kind(const std::string& kind) {
    if (kind == "small-appliance") return {tr("small-appliance circuits (kitchen, pantry, dining)"), {}};
    if (kind == "laundry") return {tr("laundry circuits"), {}};
    if (kind == "bathroom") return {tr("bathroom circuits"), {}};
    return {tr("garage circuits"), {}};
}

Finding unit_finding(const char* rule, const Unit& unit, int value, int limit) {
    Finding finding = begin_finding(rule, Severity::notice, Basis::required, unit.of);
    finding.value = value;
    finding.limit = limit;
    finding.unit = "count";
    return finding;
}

void judge_required(const Reckoned& all, const Unit& unit, const RequiredCircuit& required, const Surveyed& surveyed,
                    std::vector<Finding>& findings) {
    const auto built = all.network.survey().heading.built;
    if (built && *built < required.since) return;
    if (required.kind == "garage" && !(unit.dwelling->garage && unit.dwelling->garage->square_feet() > 0)) return;
    if (surveyed.most() >= required.count) return;
    Finding finding = unit_finding("required-circuit-missing", unit, surveyed.most(), required.count);
    if (!built) finding.applies = Applies::new_work;
    finding.text = {tr("{0} of {3:.4g} A for receptacles: {1:.0f} surveyed, {2:.0f} required of a dwelling"),
                    {name_of_kind(required.kind), *finding.value, *finding.limit, required.rating.value}};
    finding.remedy = {tr("Look whether a circuit was missed; run it anew when the wiring is next touched. Never put a "
                         "larger breaker on a circuit that is there."),
                      {}};
    finding.sources = {all.book.cite("nec-210-11-c")};
    findings.push_back(std::move(finding));
}

std::optional<int> declared(const Dwelling& dwelling, const std::string& kind) {
    if (kind == "small-appliance") return dwelling.small_appliance_circuits;
    if (kind == "laundry") return dwelling.laundry_circuits;
    return std::nullopt;
}

void judge_declared(const Reckoned& all, const Unit& unit, const RequiredCircuit& required, const Surveyed& surveyed,
                    std::vector<Finding>& findings) {
    const auto entered = declared(*unit.dwelling, required.kind);
    if (!entered || (surveyed.known <= *entered && *entered <= surveyed.most())) return;
    const int nearest = *entered > surveyed.most() ? surveyed.most() : surveyed.known;
    Finding finding = unit_finding("appliance-circuits-differ", unit, nearest, *entered);
    finding.text = {tr("{0}: {1:.0f} surveyed, {2:.0f} declared for the load calculation"),
                    {name_of_kind(required.kind), *finding.value, *finding.limit}};
    finding.remedy = {tr("Correct the number of the dwelling, or the places of the outlets."), {}};
    finding.sources = {all.book.cite("nec-210-11-c")};
    findings.push_back(std::move(finding));
}

}  // namespace

void find_required_circuits_of_the_premises(const Reckoned& all, std::vector<Finding>& findings) {
    for (const Unit& unit : units_of(all.network)) {
        const std::vector<std::size_t> circuits = circuits_of(all.network, unit);
        if (!has_rules(all.network, unit) || !all_traced(all.network, unit, circuits)) continue;
        for (const RequiredCircuit& required : required_circuits(all.book)) {
            const Surveyed surveyed = count_of(all, required, circuits);
            judge_required(all, unit, required, surveyed, findings);
            judge_declared(all, unit, required, surveyed, findings);
        }
    }
}

}  // namespace doorcard
