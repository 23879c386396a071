// SPDX-License-Identifier: MIT
#pragma once
#include <fmt/format.h>

#include "survey/survey.hpp"

// Surveys of an invented house, built as values; included by the tests of several folders.
namespace example {

using namespace doorcard;

/// Things are added one by one, then made into a survey.
struct Building {
    Heading heading;
    std::vector<Source> sources;
    std::vector<Panel> panels;
    std::vector<Breaker> breakers;
    std::vector<Circuit> circuits;
    std::vector<Room> rooms;
    std::vector<Outlet> outlets;
    std::vector<Load> loads;

    Breaker& breaker(const std::string& panel, std::vector<int> spaces, double amps, std::vector<char> halves = {});
    /// A circuit on the last breaker, with this directory text, proved by switching.
    Circuit& circuit(const std::string& id, const std::string& purpose, const std::string& how = "switching");
    /// The last breaker with a circuit of this text.
    void row(std::vector<int> spaces, double amps, const std::string& purpose, const std::string& how = "switching");
    Outlet& outlet(const std::string& id, const std::string& circuit, const std::string& room, OutletKind kind);
    Survey survey() const;
};

inline Breaker& Building::breaker(const std::string& panel, std::vector<int> spaces, double amps,
                                  std::vector<char> halves) {
    Breaker made;
    made.panel = panel;
    made.spaces = std::move(spaces);
    made.halves = std::move(halves);
    made.amps = Amperes(amps);
    made.id = made.default_id();
    breakers.push_back(made);
    return breakers.back();
}

inline Circuit& Building::circuit(const std::string& id, const std::string& purpose, const std::string& how) {
    Circuit made;
    made.id = id;
    made.breakers = {breakers.back().id};
    if (!purpose.empty()) made.purpose = purpose;
    if (!how.empty()) made.traced = Traced{how, {}, {}};
    circuits.push_back(made);
    return circuits.back();
}

inline void Building::row(std::vector<int> spaces, double amps, const std::string& purpose, const std::string& how) {
    breaker("MAIN", std::move(spaces), amps);
    circuit(fmt::format("c{}", circuits.size() + 1), purpose, how);
}

inline Outlet& Building::outlet(const std::string& id, const std::string& circuit, const std::string& room,
                                OutletKind kind) {
    Outlet made;
    made.id = id;
    made.circuits = {circuit};
    made.room = room;
    made.kind = kind;
    outlets.push_back(made);
    return outlets.back();
}

inline Survey Building::survey() const {
    Survey made;
    made.heading = heading;
    made.sources = Table(sources);
    made.panels = Table(panels);
    made.breakers = Table(breakers);
    made.circuits = Table(circuits);
    made.rooms = Table(rooms);
    made.outlets = Table(outlets);
    made.loads = Table(loads);
    return made;
}

inline Building empty_house(int spaces) {
    Building house;
    house.heading.title = "Alder Row 9";
    house.heading.date = Moment{2026, 5, 14, {}, {}};
    house.heading.revision = "2";
    house.heading.surveyor = "rk";
    Source utility;
    utility.id = "utility";
    utility.kind = "utility";
    utility.system = System::split_120_240;
    utility.amps = Amperes(200);
    utility.location = "meter, north wall";
    house.sources.push_back(utility);
    Panel main;
    main.id = "MAIN";
    main.title = "Main panel";
    main.location = "cellar stair";
    main.fed_by = {"utility"};
    main.main = MainKind::breaker;
    main.main_a = Amperes(200);
    main.main_at = "top";
    main.spaces = spaces;
    house.panels.push_back(main);
    return house;
}

/// 24 spaces, everything that a card can show.
inline Survey house() {
    Building h = empty_house(24);
    h.panels[0].empty_spaces = std::vector<int>{20};
    Panel shop;
    shop.id = "SHOP";
    shop.title = "Workshop";
    shop.location = "garage";
    shop.fed_by = {"MAIN:17+19"};
    shop.main = MainKind::lugs;
    shop.spaces = 8;
    h.panels.push_back(shop);
    h.row({1}, 20, "Dishwasher and disposer");
    h.row({3}, 15, "Hall, stair and cellar lighting");
    h.row({5}, 20, "Kitchen counter, east wall");
    h.circuits.back().neutral = "N1";
    h.row({7}, 20, "Kitchen counter, west wall");
    h.circuits.back().neutral = "N1";
    h.breakers.back().tied_with = Ids{"MAIN:5"};
    h.row({9}, 20, "Cellar receptacles, north wall");
    h.breakers.back().guards = std::vector<Guard>{Guard::arc, Guard::ground};
    h.row({11}, 15, "Bedrooms and living room", "told");
    h.breakers.back().guards = std::vector<Guard>{Guard::arc};
    h.row({13, 15}, 50, "Range");
    h.breaker("MAIN", {17, 19}, 50);
    h.breaker("MAIN", {21}, 15);
    h.breaker("MAIN", {23}, 20).state = BreakerState::spare;
    h.row({2}, 20, "Bath receptacle", "tracer");
    h.breakers.back().guards = std::vector<Guard>{Guard::ground};
    h.row({4}, 20, "Laundry receptacle");
    h.row({6, 8}, 30, "Dryer");
    h.row({10, 12}, 30, "Water heater");
    h.row({14}, 20, "Sump pump");
    h.breakers.back().keep_on = "sump pump";
    h.row({16}, 15, "Gas furnace and HVAC controls");
    h.row({18}, 15, "Yard light");
    h.breakers.back().state = BreakerState::off;
    h.breakers.back().off_why = "cable damaged";
    h.breaker("MAIN", {22, 24}, 40);
    Source solar;
    solar.id = "solar";
    solar.kind = "pv";
    solar.through = "MAIN:22+24";
    solar.disconnect = "north wall";
    h.sources.push_back(solar);
    h.breaker("SHOP", {1}, 20);
    h.circuit("bench", "Bench receptacles");
    h.breaker("SHOP", {2}, 20);
    h.circuit("saw", "Table saw");
    h.breaker("SHOP", {3}, 15);
    h.circuit("shop-light", "Workshop lighting", "told");
    return h.survey();
}

/// 8 spaces.
inline Survey small_panel() {
    Building h = empty_house(8);
    h.panels[0].main_a = Amperes(60);
    h.panels[0].all_breakers_entered = true;
    h.row({1}, 20, "Boathouse receptacles");
    h.row({2}, 15, "Boathouse lighting");
    h.row({3, 5}, 30, "Boat lift");
    h.row({4}, 20, "Dock receptacles");
    h.breakers.back().guards = std::vector<Guard>{Guard::ground};
    h.breaker("MAIN", {6}, 20);
    return h.survey();
}

/// Every space a circuit, long texts among them.
inline Survey full_panel(int spaces) {
    static const char* const texts[] = {"Kitchen counter, east wall",
                                        "Hall, stair and cellar lighting",
                                        "Refrigerator",
                                        "Bath receptacles, upstairs",
                                        "Living room receptacles, street side and window bay",
                                        "Garage door opener and receptacles",
                                        "Attic fan"};
    Building h = empty_house(spaces);
    for (int space = 1; space <= spaces; ++space) {
        if (space % 8 == 3 && space + 2 <= spaces) {
            h.row({space, space + 2}, 30, fmt::format("Heat strip {}", space));
        } else if (space % 8 == 5 && space > 2) {
            continue;
        } else {
            h.row({space}, 20, fmt::format("{}, {}", texts[space % 7], space));
        }
    }
    return h.survey();
}

/// Two-pole breakers that interlock over the whole panel: no row is a clean end for a card.
inline Survey interlocked(int spaces) {
    Building h = empty_house(spaces);
    h.row({2}, 20, "Freezer");
    for (int space = 1; space + 2 <= spaces; space += 4)
        h.row({space, space + 2}, 30, fmt::format("Heat strip {}", space));
    for (int space = 4; space + 2 <= spaces; space += 4) h.row({space, space + 2}, 30, fmt::format("Kiln {}", space));
    return h.survey();
}

/// Halves, quads, a two-pole over two halves.
inline Survey tandems() {
    Building h = empty_house(12);
    h.panels[0].half_legs = "alternate";
    for (const int space : {1, 2, 4})
        for (const char half : {'a', 'b'}) {
            h.breaker("MAIN", {space}, 15, {half});
            h.circuit(fmt::format("t{}{}", space, half), half == 'a' ? "Bath and hall" : "Porch",
                      space == 4 ? "told" : "switching");
        }
    h.breaker("MAIN", {3, 5}, 30, {'b', 'a'});
    h.circuit("pump", "Well pump");
    h.breaker("MAIN", {3}, 15, {'a'});
    h.circuit("lamp", "Cellar lamp");
    h.breaker("MAIN", {7, 9}, 40, {'a', 'b'});
    h.circuit("outer", "Heat pump");
    h.breaker("MAIN", {7, 9}, 20, {'b', 'a'});
    h.circuit("inner", "Baseboard heat, sewing room");
    h.breaker("MAIN", {8}, 15, {'a'});
    h.circuit("long", "Sewing room, attic stair and north bedroom receptacles");
    h.breaker("MAIN", {10}, 20);
    h.circuit("full", "Freezer");
    h.breaker("MAIN", {12}, 20, {'b'});
    return h.survey();
}

/// One column of breakers.
inline Survey column(int spaces) {
    Building h = empty_house(spaces);
    h.panels[0].numbering = Numbering::single_column;
    for (int space = 1; space <= spaces; ++space)
        h.row({space}, 20, fmt::format("Stall {} receptacles and lighting", space));
    return h.survey();
}

/// Every text runs over several lines.
inline Survey long_texts(int spaces) {
    Building h = empty_house(spaces);
    h.heading.title = "The long house at the end of the lane, west wing and stables";
    h.heading.surveyor = "a firm with a remarkably long name";
    h.heading.revision = "2026-05-14b";
    h.panels[0].title = "Main distribution panel of the west wing";
    h.panels[0].location = "cellar stair, behind the door to the coal room";
    for (int space = 1; space <= spaces; ++space)
        h.row({space}, 20,
              fmt::format("Receptacles along the north and the east wall of room {}, with the window bay, the closet "
                          "and the heater "
                          "below the stair",
                          space),
              space % 3 == 0 ? "told" : "switching");
    return h.survey();
}

}  // namespace example
