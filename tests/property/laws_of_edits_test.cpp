// SPDX-License-Identifier: MIT
// Whether a survey keeps the laws after an edit is the same, told from what the edit changed or from the whole: random
// buildings, edits that do and edits that break one law each.
#include <doctest/doctest.h>

#include <functional>
#include <map>

#include "property/draw_building.hpp"
#include "survey/edits/breaker_edits.hpp"
#include "survey/edits/circuit_edits.hpp"
#include "survey/edits/entry_edits.hpp"
#include "survey/edits/laws.hpp"
#include "survey/edits/load_edits.hpp"
#include "survey/edits/outlet_edits.hpp"
#include "survey/edits/panel_edits.hpp"

using namespace doorcard;

namespace {

template <class T>
const T& any(const Table<T>& table, Draw& draw) {
    return table[static_cast<std::size_t>(draw.number(0, static_cast<int>(table.size()) - 1))];
}

/// One row changed, by way of a list that shares rows with the other or of one that shares none.
template <class T, class Change>
void alter(Table<T>& table, Draw& draw, Change change) {
    if (table.empty()) return;
    const auto at = static_cast<std::size_t>(draw.number(0, static_cast<int>(table.size()) - 1));
    T row = table[at];
    change(row);
    table = table.with_row(at, row);
    if (draw.one_in(4)) table = Table<T>(table.rows());
}

template <class T>
void drop(Table<T>& table, Draw& draw) {
    if (table.empty()) return;
    table = table.without_row(static_cast<std::size_t>(draw.number(0, static_cast<int>(table.size()) - 1)));
}

/// Changes that no edit would make: each may break the law that it is named after.
using Breakage = void (*)(Survey&, Draw&);
const std::vector<std::pair<const char*, Breakage>> breakages = {
    {"nothing there", [](Survey& s, Draw& d) { alter(s.circuits, d, [](Circuit& c) { c.breakers = {"nowhere"}; }); }},
    {"nothing there", [](Survey& s, Draw& d) { alter(s.outlets, d, [](Outlet& o) { o.circuits = {"nowhere"}; }); }},
    {"nothing there", [](Survey& s, Draw& d) { alter(s.loads, d, [](Load& l) { l.managed = "nowhere"; }); }},
    {"nothing there", [](Survey& s, Draw& d) { alter(s.breakers, d, [](Breaker& b) { b.panel = "nowhere"; }); }},
    {"nothing there", [](Survey& s, Draw& d) { alter(s.accepted, d, [](Accepted& a) { a.of = "neutral:nowhere"; }); }},
    {"nothing there",
     [](Survey& s, Draw& d) {
         alter(s.readings, d, [&](Reading& r) { r.of = {ThingKind::neutral, d.one_in(2) ? "P0-N1" : "P1-N2", ""}; });
     }},
    {"lost", [](Survey& s, Draw& d) { drop(s.breakers, d); }},
    {"lost", [](Survey& s, Draw& d) { drop(s.circuits, d); }},
    {"lost", [](Survey& s, Draw& d) { drop(s.outlets, d); }},
    {"lost", [](Survey& s, Draw& d) { drop(s.loads, d); }},
    {"lost", [](Survey& s, Draw& d) { drop(s.panels, d); }},
    {"lost", [](Survey& s, Draw& d) { drop(s.sources, d); }},
    {"lost", [](Survey& s, Draw& d) { alter(s.circuits, d, [](Circuit& c) { c.id += "-new"; }); }},
    {"lost", [](Survey& s, Draw& d) { alter(s.outlets, d, [](Outlet& o) { o.id += "-new"; }); }},
    {"lost", [](Survey& s, Draw& d) { alter(s.breakers, d, [](Breaker& b) { b.id += "-new"; }); }},
    {"lost neutral", [](Survey& s, Draw& d) { alter(s.circuits, d, [](Circuit& c) { c.neutral = "own"; }); }},
    {"twice", [](Survey& s, Draw& d) { s.breakers = s.breakers.with_added(any(s.breakers, d)); }},
    {"twice", [](Survey& s, Draw& d) { s.circuits = s.circuits.with_added(any(s.circuits, d)); }},
    {"twice", [](Survey& s, Draw&) { s.rooms = s.rooms.with_added({}); }},
    {"twice", [](Survey& s, Draw&) { s.managed = s.managed.with_added({}); }},
    {"twice", [](Survey& s, Draw&) { s.dwellings = s.dwellings.with_added({}); }},
    {"twice", [](Survey& s, Draw& d) { alter(s.loads, d, [&](Load& l) { l.id = any(s.outlets, d).id; }); }},
    {"twice", [](Survey& s, Draw& d) { alter(s.breakers, d, [&](Breaker& b) { b.id = any(s.panels, d).id; }); }},
    {"twice", [](Survey& s, Draw& d) { alter(s.sources, d, [&](Source& u) { u.id = any(s.breakers, d).id; }); }},
    {"circle", [](Survey& s, Draw& d) { alter(s.panels, d, [&](Panel& p) { p.fed_by = {any(s.breakers, d).id}; }); }},
    {"circle", [](Survey& s, Draw& d) { alter(s.breakers, d, [&](Breaker& b) { b.panel = any(s.panels, d).id; }); }},
    {"circle", [](Survey& s, Draw& d) { alter(s.outlets, d, [&](Outlet& o) { o.upstream = any(s.outlets, d).id; }); }},
    {"space", [](Survey& s, Draw& d) { alter(s.breakers, d, [&](Breaker& b) { b.spaces = {d.number(-1, 90)}; }); }},
    {"space", [](Survey& s, Draw& d) { alter(s.breakers, d, [&](Breaker& b) { b.spaces.push_back(1000); }); }},
    {"space", [](Survey& s, Draw& d) { alter(s.panels, d, [&](Panel& p) { p.spaces = d.number(40, 90); }); }},
    {"size",
     [](Survey& s, Draw& d) {
         alter(s.circuits, d, [&](Circuit& c) {
             c.neutral = d.one_in(2) ? "P0-N1" : "P0-N2";
             c.neutral_size = d.one_in(2) ? "12" : "10";
         });
     }},
};

/// What a person does, as the window has it done; what is refused is refused by the whole, too.
Edit any_edit(const Survey& s, Draw& d) {
    const auto mentions = d.one_in(2) ? Mentions::take_along : Mentions::refuse;
    const std::string breaker = any(s.breakers, d).id, circuit = any(s.circuits, d).id;
    const std::string outlet = s.outlets.empty() ? "" : any(s.outlets, d).id;
    switch (d.number(1, 14)) {
        case 1:
            return rate_breaker(breaker, Amperes(d.number(10, 60)));
        case 2:
            return move_breaker(breaker, {any(s.panels, d).id, {d.number(1, 88)}, {}});
        case 3:
            return swap_breakers(breaker, any(s.breakers, d).id);
        case 4:
            return remove_breaker(breaker, mentions);
        case 5:
            return remove_circuit(circuit, mentions);
        case 6:
            return remove_outlet(outlet, mentions);
        case 7:
            return s.loads.empty() ? rate_breaker(breaker, {}) : remove_load(any(s.loads, d).id, mentions);
        case 8:
            return share_neutral(circuit, d.one_in(2) ? "own" : "P0-N1");
        case 9:
            return tie_breakers({breaker, any(s.breakers, d).id});
        case 10:
            return untie_breaker(breaker);
        case 11:
            return chain_outlet(outlet, d.one_in(3) ? "home-run" : outlet);
        case 12:
            return remove_reading(static_cast<std::size_t>(d.number(0, 40)));
        case 13:
            return feed_panel(any(s.panels, d).id, {breaker});
        default:
            return assign_outlet(outlet, {circuit});
    }
}

/// Which law a complaint is of.
std::string law_of(const std::string& wrong) {
    for (const char* words :
         {"which is not there", "two things", "fed by itself", "fed through itself", "would sit in space", "would be"})
        if (wrong.find(words) != std::string::npos) return words;
    return wrong;
}

}  // namespace

TEST_CASE("law: an edit keeps the laws where the whole survey does") {
    std::map<std::string, int> broken;
    int told_quickly = 0;
    for (int i = 0; i < 300; ++i) {
        Draw draw(static_cast<std::uint64_t>(i) + 4321);
        Survey survey = random_building(draw);
        if (broken_law(survey)) continue;
        for (int edit = 0; edit < 60; ++edit) {
            CAPTURE(i);
            CAPTURE(edit);
            Survey after = survey;
            if (draw.one_in(3)) {
                after = edited(survey, draw);
            } else {
                const auto& [name, breakage] = draw.of(breakages);
                CAPTURE(name);
                breakage(after, draw);
            }
            const auto whole = broken_law(after);
            const auto kept = kept_laws(survey, after);
            REQUIRE(kept.has_value() == !whole);
            if (whole) CHECK(kept.error().front().wrong == whole->wrong);
            if (whole) ++broken[law_of(whole->wrong)];
            told_quickly += still_keeps_laws(survey, after);
            if (!whole) survey = after;
        }
    }
    for (const char* law :
         {"which is not there", "two things", "fed by itself", "fed through itself", "would sit in space", "would be"})
        CHECK_MESSAGE(broken[law] > 20, law, ": ", broken[law]);
    CHECK(told_quickly > 2000);
}

TEST_CASE("law: what an edit gives keeps the laws, as far as the whole tells") {
    int made = 0;
    for (int i = 0; i < 200; ++i) {
        Draw draw(static_cast<std::uint64_t>(i) + 987);
        Survey survey = random_building(draw);
        if (broken_law(survey)) continue;
        for (int edit = 0; edit < 25 && !survey.circuits.empty() && survey.breakers.size() > 1; ++edit) {
            CAPTURE(i);
            CAPTURE(edit);
            const Edit step = any_edit(survey, draw);
            CAPTURE(step.name.pattern);
            const auto after = step.apply(survey);
            if (!after) continue;
            ++made;
            REQUIRE_FALSE(broken_law(*after));
            CHECK(still_keeps_laws(survey, *after));
            survey = *after;
        }
    }
    CHECK(made > 1500);
}
