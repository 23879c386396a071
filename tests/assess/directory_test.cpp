// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <set>

#include "assess/circuit_text.hpp"
#include "assess/directory.hpp"
#include "base/words.hpp"
#include "sheet/example_panels.hpp"

using namespace doorcard;
using example::Building;

namespace {

std::string english(const Message& message) { return Words::in("en").say(message); }

/// The rows of the first panel, "5: text".
std::vector<std::string> rows_of(const Building& building) {
    std::vector<std::string> rows;
    for (const DirectoryRow& row : directory_of(network_of(building.survey()), 0).rows) {
        std::string text = name_of(row.positions) + ": " + english(row.text);
        if (!row.under.empty()) text += "; " + english(row.under);
        if (row.claimed) text += " (claimed)";
        rows.push_back(text);
    }
    return rows;
}

std::string row_of(const Building& building, std::size_t i = 0) { return rows_of(building).at(i); }

/// A house whose space 1 has a circuit 'c' without a purpose.
Building composed() {
    Building h = example::empty_house(2);
    h.breaker("MAIN", {1}, 20);
    h.circuit("c", "");
    return h;
}

Load& add_load(Building& h, const std::string& id, const std::string& outlet, const std::string& title, Duty duty) {
    Load load;
    load.id = id;
    load.outlet = outlet;
    if (!title.empty()) load.title = title;
    load.duty = duty;
    h.loads.push_back(load);
    return h.loads.back();
}

}  // namespace

TEST_CASE("directory: a purpose stands as it was written") {
    Building h = example::empty_house(2);
    h.row({1}, 20, "Kitchen counter, east wall");
    CHECK(row_of(h) == "1: Kitchen counter, east wall");
}

TEST_CASE("directory: composed of rooms and kinds") {
    Building h = composed();
    h.outlet("k1", "c", "Kitchen", OutletKind::receptacle);
    CHECK(row_of(h) == "1: Kitchen receptacle");
    h.outlet("k2", "c", "Kitchen", OutletKind::receptacle);
    CHECK(row_of(h) == "1: Kitchen receptacles");
    h.outlet("k3", "c", "Kitchen", OutletKind::lighting);
    CHECK(row_of(h) == "1: Kitchen receptacles and lighting");
    h.outlet("h1", "c", "Hall", OutletKind::lighting);
    CHECK(row_of(h) == "1: Kitchen receptacles and lighting, hall lighting");
}

TEST_CASE("directory: composed of several rooms") {
    Building h = composed();
    for (const char* room : {"Hall", "Stair", "Cellar"}) h.outlet(room, "c", room, OutletKind::lighting);
    CHECK(row_of(h) == "1: Hall, stair and cellar lighting");
    for (const char* room : {"Attic", "Porch"}) h.outlet(room, "c", room, OutletKind::lighting);
    CHECK(row_of(h) == "1: Lighting: Hall, stair, cellar and 2 more rooms");
}

TEST_CASE("directory: switches and boxes say only the room") {
    Building h = composed();
    h.outlet("s", "c", "Hall", OutletKind::switch_);
    CHECK(row_of(h) == "1: Hall");
}

TEST_CASE("directory: a room's title, its place where there is no room") {
    Building h = composed();
    Room room;
    room.id = "r1";
    room.title = "Sewing room";
    h.rooms.push_back(room);
    h.outlet("a", "c", "r1", OutletKind::receptacle);
    CHECK(row_of(h) == "1: Sewing room receptacle");
    h.outlets.back().room.reset();
    h.outlets.back().place = "garage";
    CHECK(row_of(h) == "1: Garage receptacle");
}

TEST_CASE("directory: notable equipment is named, what is plugged in is not") {
    Building h = composed();
    h.outlet("k1", "c", "Kitchen", OutletKind::receptacle);
    h.outlet("k2", "c", "Kitchen", OutletKind::receptacle);
    h.outlet("d1", "c", "Kitchen", OutletKind::equipment);
    add_load(h, "toaster", "k1", "Toaster", Duty::general);
    add_load(h, "dw", "d1", "Dishwasher", Duty::fixed_appliance);
    CHECK(row_of(h) == "1: Kitchen receptacles, dishwasher");
}

TEST_CASE("directory: one outlet with one load is that load's circuit; a duty names it where no title does") {
    Building h = composed();
    h.outlet("f", "c", "Cellar", OutletKind::receptacle);
    add_load(h, "freezer", "f", "Freezer", Duty::general);
    CHECK(row_of(h) == "1: Freezer");
    h.loads.back().title.reset();
    h.loads.back().duty = Duty::water_heater;
    CHECK(row_of(h) == "1: Water heater");
}

TEST_CASE("directory: lamps of a lighting outlet are lighting") {
    Building h = composed();
    h.outlet("l", "c", "Hall", OutletKind::lighting);
    h.outlet("m", "c", "Hall", OutletKind::lighting);
    add_load(h, "lamps", "l", "Lamps", Duty::lighting).connection = Connection::fixed;
    CHECK(row_of(h) == "1: Hall lighting");
}

TEST_CASE("directory: what must stay on is not in the text") {
    Building h = composed();
    h.outlet("f", "c", "Cellar", OutletKind::receptacle).keep_on = "medicine";
    h.breakers[0].keep_on = "medicine";
    add_load(h, "freezer", "f", "Freezer", Duty::general).keep_on = "medicine";
    CHECK(row_of(h).find("medicine") == std::string::npos);
}

TEST_CASE("directory: texts that would be alike get room, floor, label, number, as little as parts them") {
    Building h = example::empty_house(4);
    for (int space = 1; space <= 4; ++space) {
        h.breaker("MAIN", {space}, 20);
        h.circuit("c" + std::to_string(space), "");
    }
    SUBCASE("room") {
        for (int space = 1; space <= 2; ++space) {
            const std::string n = std::to_string(space);
            h.outlet("o" + n, "c" + n, space == 1 ? "Cellar" : "Attic", OutletKind::equipment);
            add_load(h, "l" + n, "o" + n, "", Duty::water_heater);
        }
        CHECK(row_of(h, 0) == "1: Water heater, cellar");
        CHECK(row_of(h, 1) == "2: Water heater, attic");
    }
    SUBCASE("floor") {
        for (int space = 1; space <= 2; ++space) {
            const std::string n = std::to_string(space);
            Room room;
            room.id = "bath" + n;
            room.title = "Bath";
            room.floor = n;
            h.rooms.push_back(room);
            h.outlet("o" + n, "c" + n, room.id, OutletKind::receptacle);
        }
        CHECK(row_of(h, 0) == "1: Bath receptacle, floor 1");
        CHECK(row_of(h, 1) == "2: Bath receptacle, floor 2");
    }
    SUBCASE("label, then number") {
        for (int space = 1; space <= 4; ++space) {
            const std::string n = std::to_string(space);
            h.outlet("o" + n, "c" + n, "Kitchen", OutletKind::receptacle);
        }
        h.outlets[0].label = "Left of sink";
        CHECK(row_of(h, 0) == "1: Kitchen receptacle, left of sink");
        CHECK(row_of(h, 1) == "2: Kitchen receptacle, circuit 1");
        CHECK(row_of(h, 2) == "3: Kitchen receptacle, circuit 2");
        CHECK(row_of(h, 3) == "4: Kitchen receptacle, circuit 3");
    }
    SUBCASE("what does not part them is left out") {
        Room shed;
        shed.id = "shed";
        shed.title = "Shed";
        shed.floor = "yard";
        h.rooms.push_back(shed);
        h.outlet("o1", "c1", "shed", OutletKind::receptacle).label = "Tool wall";
        h.outlet("o2", "c2", "shed", OutletKind::receptacle).label = "corner";
        CHECK(row_of(h, 0) == "1: Shed receptacle, tool wall");
        CHECK(row_of(h, 1) == "2: Shed receptacle, corner");
    }
    SUBCASE("a purpose is left alone") {
        h.circuits[0].purpose = "Kitchen receptacle";
        h.outlet("o2", "c2", "Kitchen", OutletKind::receptacle).label = "stove side";
        CHECK(row_of(h, 0) == "1: Kitchen receptacle");
        CHECK(row_of(h, 1) == "2: Kitchen receptacle, stove side");
    }
}

TEST_CASE("directory: composed texts of a panel are all different") {
    Building h = example::empty_house(42);
    for (int space = 1; space <= 42; ++space) {
        const std::string n = std::to_string(space);
        h.breaker("MAIN", {space}, 20);
        h.circuit("c" + n, "");
        h.outlet("o" + n, "c" + n, space % 3 ? "Office" : "Hall",
                 space % 2 ? OutletKind::receptacle : OutletKind::lighting);
        if (space % 5 == 0) h.outlets.back().label = "north wall";
    }
    std::set<std::string> texts;
    for (const DirectoryRow& row : directory_of(network_of(h.survey()), 0).rows) texts.insert(plain_form(row.text));
    CHECK(texts.size() == 42);
}

TEST_CASE("directory: spare only where recorded, space only where looked, else not seen") {
    Building h = example::empty_house(5);
    h.breaker("MAIN", {1}, 20).state = BreakerState::spare;
    h.breaker("MAIN", {2}, 20).old_label = "Spare";
    h.panels[0].empty_spaces = std::vector<int>{4};
    CHECK(rows_of(h) == std::vector<std::string>{"1: Spare", "2: Not traced: treat as live", "3: Not seen", "4: Space",
                                                 "5: Not seen"});
    h.panels[0].all_breakers_entered = true;
    CHECK(row_of(h, 2) == "3: Space");
}

TEST_CASE("directory: a purpose that says spare does not print as spare") {
    Building h = example::empty_house(2);
    h.row({1}, 20, "Spare");
    CHECK(row_of(h) == "1: Traced, not described");
}

TEST_CASE("directory: a circuit with a text on a breaker recorded as spare keeps its text") {
    Building h = example::empty_house(2);
    h.row({1}, 20, "Attic fan");
    h.breakers.back().state = BreakerState::spare;
    CHECK(row_of(h) == "1: Attic fan");
}

TEST_CASE("directory: nothing known of a circuit is said, and is live until proved") {
    Building h = composed();
    CHECK(row_of(h) == "1: Traced, not described");
    h.circuits[0].traced.reset();
    CHECK(row_of(h) == "1: Not described: treat as live (claimed)");
}

TEST_CASE("directory: what the old directory alone tells of is its label, as a claim") {
    Building h = composed();
    h.breakers[0].old_label = "Kitchen?";
    h.circuits[0].traced = Traced{"told", {}, {}};
    CHECK(row_of(h) == "1: Not described: treat as live (claimed)");
    h.circuits[0].traced = Traced{"old-directory", {}, {}};
    CHECK(row_of(h) == "1: Kitchen? (claimed)");
    h.breakers[0].old_label = "Spare";
    CHECK(row_of(h) == "1: Not described: treat as live (claimed)");
}

TEST_CASE("directory: only switching, test load and sight prove a row") {
    for (const char* how : {"switching", "test-load", "seen", "tracer", "told", "old-directory", ""}) {
        Building h = example::empty_house(2);
        h.row({1}, 20, "Attic fan", how);
        const bool proves = std::set<std::string>{"switching", "test-load", "seen"}.contains(how);
        INFO(how);
        CHECK(row_of(h) == (proves ? "1: Attic fan" : "1: Attic fan (claimed)"));
    }
}

TEST_CASE("directory: off says why, and what hangs on it") {
    Building h = example::empty_house(4);
    h.row({1}, 20, "Yard light");
    h.breakers.back().state = BreakerState::off;
    CHECK(row_of(h) == "1: Off: reason not noted; Yard light");
    h.breakers.back().off_why = "cable damaged";
    CHECK(row_of(h) == "1: Off: cable damaged; Yard light");
    h.breaker("MAIN", {2}, 20).state = BreakerState::off;
    CHECK(row_of(h, 1) == "2: Off: reason not noted; Not traced: treat as live");
}

TEST_CASE("directory: feeders, sources and mains") {
    Building h = example::empty_house(12);
    h.breaker("MAIN", {1, 3}, 50);
    Panel shop;
    shop.id = "SHOP";
    shop.fed_by = {"MAIN:1+3"};
    h.panels.push_back(shop);
    h.breaker("MAIN", {2, 4}, 30);
    Source sun;
    sun.id = "sun";
    sun.kind = "pv";
    sun.through = "MAIN:2+4";
    sun.disconnect = "north wall";
    h.sources.push_back(sun);
    h.breaker("MAIN", {5, 7}, 100).serves_as_main = true;
    CHECK(row_of(h, 0) == "1+3: Feeder to SHOP");
    CHECK(row_of(h, 1) == "2+4: Solar: feeds in; off switch: north wall");
    CHECK(row_of(h, 2) == "5+7: Main: shuts off this panel");
    h.panels[1].title = "Workshop";
    h.panels[1].location = "garage";
    CHECK(row_of(h, 0) == "1+3: Feeder to Workshop; panel SHOP, garage");
}

TEST_CASE("directory: a circuit fed by two breakers says so on both rows") {
    Building h = example::empty_house(4);
    h.row({1}, 20, "Hall lighting");
    h.breaker("MAIN", {4}, 20);
    h.circuits.back().breakers = {"MAIN:1", "MAIN:4"};
    CHECK(row_of(h, 0) == "1: Hall lighting; Also fed by 4: switch off all");
    CHECK(rows_of(h).back() == "4: Hall lighting; Also fed by 1: switch off all");
}

TEST_CASE("directory: an outlet that two circuits feed is said on both rows") {
    Building h = example::empty_house(2);
    h.row({1}, 20, "Bench, left");
    h.row({2}, 20, "Bench, right");
    h.outlet("joined", "c1", "Shed", OutletKind::receptacle).circuits = {"c1", "c2"};
    CHECK(row_of(h, 0) == "1: Bench, left; An outlet is also fed by 2: switch off all");
    CHECK(row_of(h, 1) == "2: Bench, right; An outlet is also fed by 1: switch off all");
}

TEST_CASE("directory: volts stand under multi-pole circuits only") {
    Building h = example::empty_house(8);
    h.row({1, 3}, 30, "Dryer");
    h.row({2}, 20, "Freezer");
    CHECK(row_of(h, 0) == "1+3: Dryer; 240 V");
    CHECK(row_of(h, 1) == "2: Freezer");
}

TEST_CASE("directory: fire alarm circuits are named so") {
    Building h = example::empty_house(2);
    h.row({1}, 20, "Lobby unit");
    h.breakers.back().system = "fire-alarm";
    CHECK(row_of(h) == "1: FIRE ALARM CIRCUIT; Lobby unit");
}

TEST_CASE("directory: 'n of m traced' counts circuits and feeders, not spares, sources or mains") {
    const PanelDirectory directory = directory_of(network_of(example::house()), 0);
    CHECK(directory.traced == 13);
    CHECK(directory.claimed == 2);
    CHECK(directory.not_traced == 1);
    CHECK(directory.in_use() == 16);
}

TEST_CASE("directory: halves of a space that nobody entered are rows of their own") {
    Building h = example::empty_house(2);
    h.breaker("MAIN", {1}, 15, {'a'});
    h.circuit("c", "Porch");
    CHECK(rows_of(h) == std::vector<std::string>{"1a: Porch", "1b: Not seen", "2: Not seen"});
}
