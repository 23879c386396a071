// SPDX-License-Identifier: MIT
#pragma once
#include <concepts>
#include <cstdint>

#include "survey/survey.hpp"

namespace doorcard {

/// What an id may be of; bits.
enum Named : std::uint32_t {
    named_source = 1,
    named_panel = 2,
    named_breaker = 4,
    named_circuit = 8,
    named_outlet = 16,
    named_load = 32,
    named_managed = 64,
    named_neutral = 128,
    named_anything = 255
};

std::uint32_t named_by(ThingKind);

template <class T, class Noun>
concept Is = std::same_as<std::remove_const_t<T>, Noun>;

/// An id that may be within a longer text: an address, or a place of a hunt; which of the two.
enum class Within { address, place };

// Every member of a thing that names another: `visit(kinds, key, member)`, with `Within` where the name is part of a
// text. `visit.needs` is for those without which the entry says nothing.

template <Is<Dwelling> T, class Visit>
void each_name(T& it, Visit& visit) {
    visit(named_panel, "panels", it.panels);
}
template <Is<Occupancy> T, class Visit>
void each_name(T& it, Visit& visit) {
    visit(named_panel, "panel", it.panel);
}
template <Is<Source> T, class Visit>
void each_name(T& it, Visit& visit) {
    visit(named_breaker, "through", it.through);
}
template <Is<Panel> T, class Visit>
void each_name(T& it, Visit& visit) {
    visit(named_source | named_breaker, "fed_by", it.fed_by);
}
template <Is<Breaker> T, class Visit>
void each_name(T& it, Visit& visit) {
    visit.needs(named_panel, "panel", it.panel);
    visit(named_breaker, "tied_with", it.tied_with);
}
template <Is<Circuit> T, class Visit>
void each_name(T& it, Visit& visit) {
    visit(named_breaker, "breaker", it.breakers);
}
template <Is<Outlet> T, class Visit>
void each_name(T& it, Visit& visit) {
    visit(named_circuit, "circuit", it.circuits);
    if (it.upstream != "home-run") visit(named_outlet, "upstream", it.upstream);
    visit(named_outlet, "switched_by", it.switched_by);
    visit(named_breaker, "old_breakers", it.old_breakers);
}
template <Is<Load> T, class Visit>
void each_name(T& it, Visit& visit) {
    visit(named_outlet, "outlet", it.outlet);
    visit(named_circuit, "circuit", it.circuit);
    visit(named_panel, "panel", it.panel);
    visit(named_load, "supplements", it.supplements);
    visit(named_load, "never_with", it.never_with);
    visit(named_managed, "managed", it.managed);
}
template <Is<Reading> T, class Visit>
void each_name(T& it, Visit& visit) {
    visit.needs("of", it.of);
    visit("volts_to", it.volts_to);
}
template <Is<Recording> T, class Visit>
void each_name(T& it, Visit& visit) {
    visit("columns", it.columns);
}
template <Is<Waveform> T, class Visit>
void each_name(T& it, Visit& visit) {
    visit("of", it.of);
}
template <class T, class Visit>
requires Is<T, Demand> || Is<T, Limit>
void each_name(T& it, Visit& visit) { visit.needs("of", it.of); }
template <Is<Round> T, class Visit>
void each_name(T& it, Visit& visit) {
    visit(named_breaker, "off", it.off);
    visit(named_outlet | named_load, "went_out", it.went_out);
    visit(named_outlet | named_load, "stayed_on", it.stayed_on);
    visit(named_outlet | named_load, "odd", it.odd);
    visit(named_outlet | named_load, "stuck", it.stuck);
    visit(named_breaker, "would_not_reset", it.would_not_reset);
}
template <Is<Trip> T, class Visit>
void each_name(T& it, Visit& visit) {
    visit.needs("of", it.of);
    visit(named_load | named_outlet, "running", it.running);
    visit(named_breaker | named_outlet, "also_tripped", it.also_tripped);
}
template <Is<Hunt> T, class Visit>
void each_name(T& it, Visit& visit) {
    visit(named_circuit, "circuit", it.circuit);
    visit(named_breaker, "breaker", it.breaker);
}
template <Is<Trial> T, class Visit>
void each_name(T& it, Visit& visit) {
    visit.needs(named_circuit | named_breaker, "circuit", it.circuit);
    visit(Within::place, "removed", it.removed);
    visit(Within::place, "section", it.section);
}
template <class T, class Visit>
requires Is<T, Accepted> || Is<T, Photo>
void each_name(T& it, Visit& visit) { visit(Within::address, "of", it.of); }
template <class T, class Visit>
requires Is<T, Room> || Is<T, Managed>
void each_name(T&, Visit&) {}

/// The id within an address or a place of a hunt, and what it may be of; kinds 0 where it names nothing.
struct NameWithin {
    std::uint32_t kinds = 0;
    std::string id;
    /// The same text with another id.
    std::string with(const std::string& text, const std::string& other) const;
};
NameWithin name_within(Within, const std::string& text);

}  // namespace doorcard
