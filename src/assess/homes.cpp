// SPDX-License-Identifier: MIT
#include "assess/homes.hpp"

#include <algorithm>
#include <numeric>

namespace doorcard {
namespace {

using Flags = std::vector<bool>;

/// The homes of unchanged rows, carried to where they stand now.
std::vector<std::size_t> carried(const std::vector<std::size_t>& homes, const RowChanges& rows, std::size_t count,
                                 std::size_t nowhere) {
    std::vector<std::size_t> found(count, nowhere);
    for (std::size_t i = 0; i < count; ++i)
        if (const std::size_t stood = rows.stood_at(i); stood < homes.size()) found[i] = homes[stood];
    return found;
}

/// Rows that the edit changed, and all that live where something changed: they may name it.
Flags to_settle(const std::vector<std::size_t>& homes, const RowChanges& rows, const Flags& touched) {
    Flags anew(homes.size());
    for (std::size_t i = 0; i < homes.size(); ++i) anew[i] = touched[homes[i]];
    for (const std::size_t i : rows.come) anew[i] = true;
    return anew;
}

}  // namespace

ThingChanges::ThingChanges(const Survey& before, const Survey& after)
    : breakers(before.breakers, after.breakers),
      circuits(before.circuits, after.circuits),
      outlets(before.outlets, after.outlets),
      loads(before.loads, after.loads) {}

Homes::Homes(const Survey& survey)
    : nowhere_(survey.panels.size()),
      breakers_(survey.breakers.size(), nowhere_),
      circuits_(survey.circuits.size(), nowhere_),
      outlets_(survey.outlets.size(), nowhere_),
      loads_(survey.loads.size(), nowhere_),
      group_(nowhere_ + 1) {
    std::iota(group_.begin(), group_.end(), std::size_t{0});
    settle(survey, {Flags(breakers_.size(), true), Flags(circuits_.size(), true), Flags(outlets_.size(), true),
                    Flags(loads_.size(), true)});
}

void Homes::follow(const Survey& after, const ThingChanges& changes) {
    Flags touched(nowhere_ + 1);
    for (const std::size_t i : changes.breakers.gone) touched[breakers_[i]] = true;
    for (const std::size_t i : changes.circuits.gone) touched[circuits_[i]] = true;
    for (const std::size_t i : changes.outlets.gone) touched[outlets_[i]] = true;
    add_those_together(touched);
    breakers_ = carried(breakers_, changes.breakers, after.breakers.size(), nowhere_);
    circuits_ = carried(circuits_, changes.circuits, after.circuits.size(), nowhere_);
    outlets_ = carried(outlets_, changes.outlets, after.outlets.size(), nowhere_);
    loads_ = carried(loads_, changes.loads, after.loads.size(), nowhere_);
    settle(after, {to_settle(breakers_, changes.breakers, touched), to_settle(circuits_, changes.circuits, touched),
                   to_settle(outlets_, changes.outlets, touched), to_settle(loads_, changes.loads, touched)});
}

std::size_t Homes::of_first(const Survey& survey, const Ids& breakers) const {
    for (const std::string& id : breakers)
        if (const std::size_t b = survey.breakers.position(id); b < breakers_.size()) return breakers_[b];
    return nowhere_;
}

/// Each kind after those that it names.
void Homes::settle(const Survey& survey, const std::array<Flags, 4>& anew) {
    for (std::size_t b = 0; b < breakers_.size(); ++b)
        if (anew[0][b]) breakers_[b] = survey.panels.position(survey.breakers[b].panel);
    for (std::size_t c = 0; c < circuits_.size(); ++c)
        if (anew[1][c]) circuits_[c] = of_first(survey, survey.circuits[c].breakers);
    Flags unsettled = anew[2];
    for (std::size_t o = 0; o < outlets_.size(); ++o) settle_outlet(survey, o, unsettled);
    for (std::size_t l = 0; l < loads_.size(); ++l) {
        if (!anew[3][l]) continue;
        const Load& load = survey.loads[l];
        loads_[l] = load.outlet    ? of(survey, {ThingKind::outlet, *load.outlet, ""})
                    : load.circuit ? of(survey, {ThingKind::circuit, *load.circuit, ""})
                    : load.panel   ? survey.panels.position(*load.panel)
                                   : nowhere_;
    }
    for (std::size_t b = 0; b < breakers_.size(); ++b)
        if (anew[0][b]) link_breaker(survey, b);
    for (std::size_t c = 0; c < circuits_.size(); ++c)
        if (anew[1][c]) link_circuit(survey, c);
    for (std::size_t o = 0; o < outlets_.size(); ++o)
        if (anew[2][o]) link_outlet(survey, o);
}

/// An outlet that names no circuit lives where its `upstream` does: up the chain to one that is settled, and back.
void Homes::settle_outlet(const Survey& survey, std::size_t at, Flags& unsettled) {
    std::vector<std::size_t> chain;
    std::size_t home = nowhere_;
    for (; at < outlets_.size(); at = upstream_of(survey, at)) {
        if (!unsettled[at]) {
            home = outlets_[at];
            break;
        }
        unsettled[at] = false;
        chain.push_back(at);
        const Ids& circuits = survey.outlets[at].circuits;
        if (circuits.empty()) continue;
        std::size_t first = circuits_.size();
        for (const std::string& id : circuits) first = std::min(first, survey.circuits.position(id));
        home = first < circuits_.size() ? circuits_[first] : nowhere_;
        break;
    }
    for (const std::size_t o : chain) outlets_[o] = home;
}

void Homes::link_breaker(const Survey& survey, std::size_t at) {
    for (const std::string& id : survey.breakers[at].tied_with.value_or(Ids{}))
        link(breakers_[at], of(survey, {ThingKind::breaker, id, ""}));
}

void Homes::link_circuit(const Survey& survey, std::size_t at) {
    const Circuit& circuit = survey.circuits[at];
    for (const std::string& id : circuit.breakers) link(circuits_[at], of(survey, {ThingKind::breaker, id, ""}));
    if (circuit.names_neutral()) link_name("neutral " + *circuit.neutral, circuits_[at]);
}

void Homes::link_outlet(const Survey& survey, std::size_t at) {
    const Outlet& outlet = survey.outlets[at];
    const std::size_t home = outlets_[at];
    for (const std::string& id : outlet.circuits) link(home, of(survey, {ThingKind::circuit, id, ""}));
    if (outlet.upstream && survey.outlets.contains(*outlet.upstream))
        link(home, of(survey, {ThingKind::outlet, *outlet.upstream, ""}));
    for (const std::string& id : outlet.switched_by.value_or(Ids{}))
        link(home, of(survey, {ThingKind::outlet, id, ""}));
    for (const std::string& id : outlet.old_breakers.value_or(Ids{}))
        link(home, of(survey, {ThingKind::breaker, id, ""}));
    if (outlet.strap) link_name("strap " + *outlet.strap, home);
    if (outlet.box) link_name("box " + *outlet.box, home);
}

void Homes::link_name(const std::string& name, std::size_t home) {
    const auto [first, is_new] = names_.emplace(name, home);
    if (!is_new) link(first->second, home);
}

std::size_t Homes::upstream_of(const Survey& survey, std::size_t outlet) const {
    const auto& upstream = survey.outlets[outlet].upstream;
    return upstream ? survey.outlets.position(*upstream) : outlets_.size();
}

std::size_t Homes::root(std::size_t home) const {
    while (group_[home] != home) home = group_[home];
    return home;
}

void Homes::link(std::size_t a, std::size_t b) { group_[root(a)] = root(b); }

void Homes::add_those_together(Flags& chosen) const {
    Flags roots(chosen.size());
    for (std::size_t home = 0; home < chosen.size(); ++home)
        if (chosen[home]) roots[root(home)] = true;
    for (std::size_t home = 0; home < chosen.size(); ++home)
        if (roots[root(home)]) chosen[home] = true;
}

std::size_t Homes::of(const Survey& survey, const Address& of) const {
    const auto home = [&](const auto& table, const Homed& homes) {
        const std::size_t at = table.position(of.id);
        return at < homes.size() ? homes[at] : nowhere_;
    };
    switch (of.kind) {
        case ThingKind::panel:
            return survey.panels.position(of.id);
        case ThingKind::breaker:
            return home(survey.breakers, breakers_);
        case ThingKind::circuit:
        case ThingKind::ground:
            return home(survey.circuits, circuits_);
        case ThingKind::outlet:
            return home(survey.outlets, outlets_);
        case ThingKind::load:
            return home(survey.loads, loads_);
        case ThingKind::neutral:
            if (const auto named = names_.find("neutral " + of.id); named != names_.end()) return named->second;
            return nowhere_;
        case ThingKind::source:
            if (const Source* source = survey.sources.find(of.id); source && source->through)
                return this->of(survey, {ThingKind::breaker, *source->through, ""});
            return nowhere_;
        default:
            return nowhere_;
    }
}

}  // namespace doorcard
