// SPDX-License-Identifier: MIT
#include <algorithm>

#include "base/folded.hpp"
#include "desk/field_typed.hpp"
#include "desk/grid.hpp"

namespace doorcard {
namespace {

std::uint32_t bit_of(ThingKind kind) {
    switch (kind) {
        case ThingKind::source:
            return to_source;
        case ThingKind::panel:
            return to_panel;
        case ThingKind::breaker:
            return to_breaker;
        case ThingKind::circuit:
            return to_circuit;
        case ThingKind::outlet:
            return to_outlet;
        case ThingKind::load:
            return to_load;
        default:
            return to_nothing;
    }
}

bool has_id(const Survey& survey, std::uint32_t kinds, std::string_view id) {
    return ((kinds & to_source) && survey.sources.contains(id)) || ((kinds & to_panel) && survey.panels.contains(id)) ||
           ((kinds & to_breaker) && survey.breakers.contains(id)) ||
           ((kinds & to_circuit) && survey.circuits.contains(id)) ||
           ((kinds & to_outlet) && survey.outlets.contains(id)) || ((kinds & to_load) && survey.loads.contains(id)) ||
           ((kinds & to_managed) && survey.managed.contains(id));
}

/// Adds the ids of things that are called so.
template <class T, class Name>
void add_called(std::vector<std::string>& ids, const Table<T>& things, const std::string& called, Name name) {
    for (const T& thing : things)
        if (const auto& own = thing.*name; own && folded(*own) == called) ids.push_back(thing.id);
}

/// The only thing of these kinds whose words in print are these; empty where there is none or several.
std::string called_so(const Survey& survey, std::uint32_t kinds, std::string_view words) {
    const std::string called = folded(words);
    std::vector<std::string> ids;
    if (kinds & to_source) add_called(ids, survey.sources, called, &Source::title);
    if (kinds & to_panel) add_called(ids, survey.panels, called, &Panel::title);
    if (kinds & to_circuit) add_called(ids, survey.circuits, called, &Circuit::purpose);
    if (kinds & to_outlet) add_called(ids, survey.outlets, called, &Outlet::label);
    if (kinds & to_load) add_called(ids, survey.loads, called, &Load::title);
    return ids.size() == 1 ? ids.front() : std::string();
}

/// The only circuit on a breaker; empty where it has none or several.
std::string circuit_on(const Survey& survey, const std::string& breaker) {
    std::string id;
    for (const Circuit& circuit : survey.circuits) {
        if (std::ranges::find(circuit.breakers, breaker) == circuit.breakers.end()) continue;
        if (!id.empty()) return {};
        id = circuit.id;
    }
    return id;
}

std::string id_at(const Survey& survey, std::uint32_t kinds, const std::string& address) {
    const auto of = parse_address(address);
    if (!of || !of->legs.empty()) return {};
    if (kinds & bit_of(of->kind)) return of->id;
    return of->kind == ThingKind::breaker && (kinds & to_circuit) ? circuit_on(survey, of->id) : std::string();
}

}  // namespace

std::string reference_said(const Survey& survey, const Field& field, const std::string& panel,
                           const std::string& typed) {
    if (field.refers == to_nothing || field.refers == to_hunt_place || typed == field.also) return typed;
    if (has_id(survey, field.refers, typed)) return typed;
    const auto address = address_said(survey, panel, typed);
    if (field.refers == to_address || field.refers == to_trip_of) return address.value_or(typed);
    if (address)
        if (std::string id = id_at(survey, field.refers, *address); !id.empty()) return id;
    const std::string called = called_so(survey, field.refers, typed);
    return called.empty() ? typed : called;
}

}  // namespace doorcard
