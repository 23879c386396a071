// SPDX-License-Identifier: MIT
#include "published/scene.hpp"

#include <doctest/doctest.h>

#include "network/network.hpp"

using namespace doorcard;

namespace {

template <class T>
Table<T> table_of(const std::deque<T>& things) {
    return Table<T>(std::vector<T>(things.begin(), things.end()));
}

}  // namespace

Scene::Scene(System system) : down_(facts(system).legs == 3 ? "ABC" : facts(system).legs == 2 ? "AB" : "A") {
    panel.id = "P";
    panel.system = system;
    panel.legs_down = down_;
}

Breaker& Scene::breaker(const std::string& legs, std::optional<double> amps) {
    while (down_[next_row_ % down_.size()] != legs.front()) ++next_row_;
    Breaker& made = breakers.emplace_back();
    made.panel = panel.id;
    for (const char leg : legs) {
        REQUIRE(down_[next_row_ % down_.size()] == leg);
        made.spaces.push_back(static_cast<int>(2 * next_row_++ + 1));
    }
    made.id = made.default_id();
    if (amps) made.amps = Amperes(*amps);
    return made;
}

Circuit& Scene::circuit(const std::string& legs, std::optional<double> amps) {
    Circuit& made = circuits.emplace_back();
    made.id = "c" + std::to_string(circuits.size());
    made.breakers = {breaker(legs, amps).id};
    return made;
}

Load& Scene::new_load(double amps) {
    Load& made = loads.emplace_back();
    made.id = "l" + std::to_string(loads.size());
    made.amps = Amperes(amps);
    return made;
}

Load& Scene::load(const Circuit& circuit, double amps) {
    Load& made = new_load(amps);
    made.circuit = circuit.id;
    return made;
}

Outlet& Scene::outlet(const Circuit& circuit, OutletKind kind) {
    Outlet& made = outlets.emplace_back();
    made.id = "o" + std::to_string(outlets.size());
    made.circuits = {circuit.id};
    made.kind = kind;
    return made;
}

Load& Scene::load_at(const Outlet& outlet, double amps) {
    Load& made = new_load(amps);
    made.outlet = outlet.id;
    return made;
}

Reading& Scene::reading(ThingKind kind, const std::string& id, const std::string& legs) {
    Reading& made = readings.emplace_back();
    made.together = "R";
    made.of = {kind, id, legs};
    return made;
}

Survey Scene::survey() const {
    Survey made;
    made.panels = Table<Panel>({panel});
    made.breakers = table_of(breakers);
    made.circuits = table_of(circuits);
    made.outlets = table_of(outlets);
    made.loads = table_of(loads);
    made.readings = table_of(readings);
    if (occupancy) {
        Occupancy office;
        office.kind = "office";
        made.occupancies = Table<Occupancy>({office});
    }
    return made;
}

Assessment assessed(const Scene& scene) { return assess(network_of(scene.survey()), nec_2023()); }

const LoadFigures& circuit_row(const Assessment& assessment, const std::string& id) {
    for (const LoadFigures& row : assessment.circuits)
        if (row.id == id) return row;
    FAIL("no row for circuit " << id);
    return assessment.circuits.front();
}

const NeutralFigures& neutral_row(const Assessment& assessment, const std::string& id) {
    for (const NeutralFigures& row : assessment.neutrals)
        if (row.id == id) return row;
    FAIL("no row for neutral " << id);
    return assessment.neutrals.front();
}

const Finding* finding_of(const Assessment& assessment, const std::string& rule) {
    for (const Finding& finding : assessment.findings)
        if (finding.rule == rule) return &finding;
    return nullptr;
}

const RuleBook& nec_2023() {
    static const RuleBook book = built_in_book("NEC-2023").value();
    return book;
}
