// SPDX-License-Identifier: MIT
#pragma once
#include "assess/reassess.hpp"
#include "sheet/example_panels.hpp"

// Panels that are hard to draw, of the invented house and its neighbours.
namespace example {

inline void load_on(Building& h, const std::string& circuit, double va) {
    Load load;
    load.id = "load-" + circuit;
    load.circuit = circuit;
    load.va = VoltAmperes(va);
    h.loads.push_back(load);
}

/// Twenty tandems over ten spaces a side.
inline Survey twenty_tandems() {
    Building h = empty_house(20);
    h.panels[0].half_legs = "alternate";
    for (int space = 1; space <= 20; ++space)
        for (const char half : {'a', 'b'}) {
            h.breaker("MAIN", {space}, space % 3 ? 15 : 20, {half});
            const std::string id = fmt::format("t{}{}", space, half);
            if (space % 7 == 0) continue;
            h.circuit(id, half == 'a' ? "Bath, hall and stair lighting" : "Porch", space % 4 ? "switching" : "told");
            if (space % 5) load_on(h, id, 120.0 * space);
        }
    return h.survey();
}

/// Neutrals within neutrals and across one another, one of them with two hots on one leg, one across both sides.
inline Survey nested_neutrals() {
    Building h = empty_house(24);
    const auto on = [&](std::vector<int> spaces, const char* neutral, double va) {
        h.row(spaces, 20, fmt::format("Bench {}, window side", spaces.front()));
        h.circuits.back().neutral = neutral;
        load_on(h, h.circuits.back().id, va);
    };
    on({1}, "N1", 900);
    on({3}, "N2", 1500);
    on({5}, "N2", 600);
    on({7}, "N1", 1100);
    on({9}, "N3", 1800);
    on({11}, "N4", 700);
    on({13}, "N3", 2000);
    on({15}, "N4", 900);
    on({2}, "N5", 500);
    on({17}, "N5", 800);
    on({6, 8}, "N6", 2500);
    on({10}, "N7", 300);
    on({12}, "N7", 400);
    h.breakers.back().tied_with = Ids{"MAIN:10"};
    return h.survey();
}

/// Three phases, a main at the bottom, turned over, three-pole devices.
inline Survey three_phases() {
    Building h = empty_house(18);
    h.sources[0].system = System::wye_208;
    h.panels[0].main_at = "bottom";
    h.panels[0].turned_over = true;
    h.panels[0].title = "Kiln hall";
    h.row({1, 3, 5}, 60, "Kiln, north");
    load_on(h, h.circuits.back().id, 18000);
    h.row({2, 4}, 30, "Glaze oven", "told");
    load_on(h, h.circuits.back().id, 7000);
    h.row({7}, 20, "Drying room receptacles");
    load_on(h, h.circuits.back().id, 1100);
    h.row({9}, 20, "Emergency lighting");
    h.breakers.back().system = "fire-alarm";
    h.row({6}, 20, "Wheel 1");
    h.breakers.back().guards = std::vector<Guard>{Guard::ground};
    return h.survey();
}

/// Two sources at one panel, and sub-panels more than fit.
inline Survey many_panels(int count) {
    Building h = empty_house(42);
    for (int i = 0; i < count; ++i) {
        h.breaker("MAIN", {1 + 4 * i, 3 + 4 * i}, 60);
        Panel made;
        made.id = fmt::format("SHED-{}", i + 1);
        made.title = fmt::format("Shed {}", i + 1);
        made.fed_by = {h.breakers.back().id};
        made.main = MainKind::lugs;
        made.spaces = 8;
        h.panels.push_back(made);
    }
    Source solar;
    solar.id = "solar";
    solar.title = "Solar";
    solar.kind = "pv";
    h.breaker("MAIN", {40, 42}, 20);
    solar.through = h.breakers.back().id;
    h.sources.push_back(solar);
    return h.survey();
}

inline Assessed assessed(const Survey& survey) { return assess_all(survey, *built_in_book("NEC-2023")); }

}  // namespace example
