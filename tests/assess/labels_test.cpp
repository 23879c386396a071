// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include "assess/labels.hpp"
#include "base/words.hpp"
#include "sheet/example_panels.hpp"

using namespace doorcard;
using example::Building;

namespace {

const RuleBook& book() {
    static const RuleBook built_in = *built_in_book("NEC-2023");
    return built_in;
}

std::vector<Finding> findings_of(const Building& building) {
    return label_findings(network_of(building.survey()), book());
}

/// "rule of", for one circuit or more with these texts.
std::vector<std::string> rules_for(const std::vector<std::string>& texts) {
    Building h = example::empty_house(12);
    int space = 0;
    for (const std::string& text : texts) h.row({++space}, 20, text);
    std::vector<std::string> found;
    for (const Finding& finding : findings_of(h)) found.push_back(finding.rule + " " + finding.of.text());
    return found;
}

bool fires(const std::string& rule, const std::string& text) {
    for (const std::string& found : rules_for({text}))
        if (found.starts_with(rule + " ")) return true;
    return false;
}

using Found = std::vector<std::string>;

}  // namespace

TEST_CASE("labels: a well described panel gives nothing") {
    CHECK(rules_for({"Kitchen counter, east wall", "Dishwasher and disposer", "Hall, stair and cellar lighting",
                     "Men's room", "Guest bath", "Range"})
              .empty());
}

TEST_CASE("label-vague: fires where nothing is left after generic words") {
    for (const char* text : {"Lights",
                             "Plugs",
                             "Misc.",
                             "misc",
                             "MISC. PLUGS",
                             "Other",
                             "General",
                             "general lighting",
                             "?",
                             "??",
                             "Lights & plugs",
                             "Plugs/Lights",
                             "Receptacles",
                             "Outlets 2",
                             "20A outlets",
                             "Lights?",
                             "various",
                             "Luces",
                             "Enchufes varios",
                             "Contactos",
                             "Alumbrado general",
                             "Iluminación",
                             "Otros circuitos",
                             "-",
                             "room lights",
                             "Wall plugs",
                             "n/a"}) {
        INFO(text);
        CHECK(fires("label-vague", text));
    }
}

TEST_CASE("label-vague: does not fire where anything is said") {
    for (const char* text :
         {"Kitchen", "Hall lights", "Kitchen?", "TV", "Basement plugs", "Upstairs lights", "Wall oven",
          "Luces de cocina", "Contactos recámara", "Light well pump", "Utility room", "E. wall outlets",
          "Living room plugs", "Plug-in heater", "Receptacle, porch", "General store", "Otros: taller"}) {
        INFO(text);
        CHECK_FALSE(fires("label-vague", text));
    }
}

TEST_CASE("label-transient: names a person, a relation, a tenancy or a passing use") {
    for (const char* text :
         {"Bob's room",       "Anna's bedroom",   "Bob’s lamp",        "Mike bedroom",     "Mom's office",
          "Grandma",          "kids' room",       "Kids bedroom",      "Tenant",           "tenant's kitchen",
          "Rental suite",     "Christmas lights", "Temporary freezer", "Zelda's den",      "Cuarto de Juan",
          "Recámara de mamá", "Inquilino",        "Luces de Navidad",  "heater (for now)", "bob room",
          "JOHN'S ROOM",      "Sarah and Tom"}) {
        INFO(text);
        CHECK(fires("label-transient", text));
    }
}

TEST_CASE("label-transient: roles, places and things pass") {
    for (const char* text : {"Men's room",         "Women's room",
                             "King's Road lamp",   "Master bedroom",
                             "Guest bath",         "TV",
                             "Manager's office",   "Butler's pantry",
                             "Janitor's closet",   "Nurses' station",
                             "St. John's chapel",  "James Street sign",
                             "Santa Maria hall",   "Kitchen",
                             "Driver's side door", "Boys' room",
                             "Will call window",   "Jack post",
                             "Bill counter",       "In-law suite",
                             "Owner's suite",      "Parking",
                             "horse's stall",      "Sons workshop",
                             "Mark reader",        "Living room",
                             "Art room",           "Party room",
                             "Calle Juárez, farol"}) {
        INFO(text);
        CHECK_FALSE(fires("label-transient", text));
    }
}

TEST_CASE("label-abbreviation: fires on what the card cannot explain") {
    for (const char* text :
         {"MCC feed", "DR outlets", "XQR pump", "Bsr. lamp", "Htr. room", "KTCHN counter", "SD hall"}) {
        INFO(text);
        CHECK(fires("label-abbreviation", text));
    }
}

TEST_CASE("label-abbreviation: does not fire on words, on what everybody reads, or on what the card explains") {
    for (const char* text :
         {"TV", "USB receptacle, desk", "HVAC", "A/C, attic", "GFCI receptacle, bath", "KITCHEN COUNTER",
          "Kitchen No. 2", "NE bedroom", "Bath.", "EV charger, garage", "W/D closet", "Recept. hall", "Leg A lamp",
          "Room 12B", "PC desk", "Gym", "Well pump 1.5 HP"}) {
        INFO(text);
        CHECK_FALSE(fires("label-abbreviation", text));
    }
}

TEST_CASE("label-abbreviation: ids of panels explain themselves") {
    CHECK_FALSE(fires("label-abbreviation", "MAIN vault lamp"));
}

TEST_CASE("label-duplicate: two rows alike, each named") {
    CHECK(rules_for({"Bedroom", "Attic fan", "bedroom."}) ==
          Found{"label-duplicate circuit:c1", "label-duplicate circuit:c3"});
    CHECK(rules_for({"Bedroom 1", "Bedroom 2"}).empty());
}

TEST_CASE(
    "label-duplicate: circuits of one row, one circuit on two breakers, and rows of two panels are no duplicates") {
    Building h = example::empty_house(8);
    h.row({1, 3}, 20, "Kitchen counter");
    h.circuit("second", "Kitchen counter");
    h.breaker("MAIN", {2}, 20);
    h.circuit("both", "Hall lighting").breakers = {"MAIN:1+3", "MAIN:2"};
    Panel shop;
    shop.id = "SHOP";
    h.panels.push_back(shop);
    h.breaker("SHOP", {1}, 20);
    h.circuit("shop", "Hall lighting");
    CHECK(findings_of(h).empty());
}

TEST_CASE("label-missing: untraced breakers and circuits that nobody described") {
    Building h = example::empty_house(8);
    h.breaker("MAIN", {1}, 20);
    h.breaker("MAIN", {2}, 20);
    h.circuit("bare", "");
    h.breaker("MAIN", {3}, 20).state = BreakerState::spare;
    const auto findings = findings_of(h);
    REQUIRE(findings.size() == 2);
    CHECK(findings[0].rule == "label-missing");
    CHECK(findings[0].of.text() == "breaker:MAIN:1");
    CHECK(findings[1].of.text() == "circuit:bare");
}

TEST_CASE("label-missing: feeders, sources, mains, spares and empty spaces need no circuit") {
    Building h = example::empty_house(12);
    h.breaker("MAIN", {1, 3}, 50);
    Panel shop;
    shop.id = "SHOP";
    shop.fed_by = {"MAIN:1+3"};
    h.panels.push_back(shop);
    h.breaker("MAIN", {2, 4}, 30);
    Source sun;
    sun.id = "sun";
    sun.through = "MAIN:2+4";
    h.sources.push_back(sun);
    h.breaker("MAIN", {5, 7}, 100).serves_as_main = true;
    h.breaker("MAIN", {6}, 20).state = BreakerState::spare;
    CHECK(findings_of(h).empty());
}

TEST_CASE("label-spare-unmarked: called spare, and not recorded so") {
    Building h = example::empty_house(8);
    h.row({1}, 20, "Spare");
    h.breaker("MAIN", {2}, 20).old_label = "spare";
    h.breaker("MAIN", {3}, 20).state = BreakerState::spare;
    h.breakers.back().old_label = "Spare";
    h.row({4}, 20, "Spare bedroom");
    const auto findings = findings_of(h);
    REQUIRE(findings.size() == 2);
    CHECK(findings[0].rule == "label-spare-unmarked");
    CHECK(findings[0].of.text() == "circuit:c1");
    CHECK(findings[1].rule == "label-spare-unmarked");
    CHECK(findings[1].of.text() == "breaker:MAIN:2");
}

TEST_CASE("label-old-directory: one line a panel, wrong where tracing proves it") {
    Building h = example::empty_house(12);
    h.row({1}, 20, "Kitchen counter");
    h.breakers.back().old_label = "Garage";  // wrong
    h.row({2}, 20, "Range");
    h.breakers.back().old_label = "Stove";  // another word for it
    h.row({3}, 20, "Attic fan");
    h.breakers.back().old_label = "lights";  // says nothing
    h.row({4}, 20, "Porch lamp", "told");
    h.breakers.back().old_label = "Freezer";  // not proved
    h.row({5}, 20, "Sump pump");
    h.breakers.back().old_label = "Spare";  // wrong
    const auto findings = findings_of(h);
    REQUIRE(findings.size() == 1);
    CHECK(findings[0].rule == "label-old-directory");
    CHECK(findings[0].of.text() == "panel:MAIN");
    CHECK(Words::in("en").say(findings[0].text) == "MAIN, old directory: 2 of 5 wrong");
}

TEST_CASE("label-old-directory: an outlet that it puts on another breaker") {
    Building h = example::empty_house(4);
    h.row({1}, 20, "Kitchen counter");
    h.outlet("k", "c1", "Kitchen", OutletKind::receptacle).old_breakers = Ids{"MAIN:2"};
    h.row({2}, 20, "Bath receptacle");
    const auto findings = findings_of(h);
    REQUIRE(findings.size() == 1);
    CHECK(Words::in("en").say(findings[0].text) == "MAIN, old directory: 1 of 1 wrong");
    h.outlets[0].old_breakers = Ids{"MAIN:1"};
    CHECK(findings_of(h).empty());
}

TEST_CASE("labels: are notices with their source and a remedy") {
    for (const Finding& finding : findings_of([] {
             Building h = example::empty_house(4);
             h.row({1}, 20, "Bob's lights");
             h.breaker("MAIN", {2}, 20);
             return h;
         }())) {
        CHECK(finding.severity == Severity::notice);
        CHECK(finding.basis == Basis::required);
        CHECK(finding.sources.front().place == "408.4(A)");
        CHECK_FALSE(finding.remedy.empty());
        CHECK_FALSE(finding.value.has_value());
    }
}

TEST_CASE("labels: composed texts are judged as they would print") {
    Building h = example::empty_house(4);
    h.breaker("MAIN", {1}, 20);
    h.circuit("c", "");
    h.outlet("o", "c", "Bob's room", OutletKind::receptacle);
    h.breaker("MAIN", {2}, 20);
    h.circuit("d", "");
    Outlet& unknown = h.outlet("p", "d", "", OutletKind::lighting);
    unknown.room.reset();
    const auto findings = findings_of(h);
    REQUIRE(findings.size() == 2);
    CHECK(findings[0].rule == "label-transient");
    CHECK(findings[1].rule == "label-vague");
}
