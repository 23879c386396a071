// SPDX-License-Identifier: MIT
// Receptacles, leakage, test loads and wire by the tables of Chapter 9: the worked cases a26, e11, f14, b06, b07, b17,
// b18. Sources beside the cases; edition NEC 2023.
#include <doctest/doctest.h>

#include <cmath>

#include "published/covered_cases.hpp"
#include "published/scene.hpp"
#include "rules/protection_lookups.hpp"

using namespace doorcard;

namespace {

struct DropCase {
    std::string id;
    double amps, feet;
    const char* size;
    Metal metal;
    const char* legs;
    double drop_v, percent;
};

// Chapter 9 Table 8
const std::vector<DropCase> drops = {
    {"b06", 16, 100, "12", Metal::copper, "A", 6.176, 5.146667},
};

struct TableDrop {
    std::string id, kind;
};

const std::vector<TableDrop> tables = {{"b07", "drop_t9"}, {"b17", "drop_t8"}, {"b18", "k_from_t8"}};

double cell(const char* table, const char* size, const char* column) {
    const RuleTable& from = nec_2023().table(table);
    for (std::size_t row = 0; row < from.rows.size(); ++row)
        if (from.text(row, 0) == size) return from.number(row, from.column(column));
    return 0;
}

LoadFigures run_of(const DropCase& one) {
    Scene scene(System::split_120_240);
    Circuit& circuit = scene.circuit(one.legs, 100);
    circuit.wire = Wire();
    circuit.wire->size = one.size;
    circuit.wire->metal = one.metal;
    circuit.wire->length = Length{one.feet, false};
    scene.load(circuit, one.amps);
    const Assessment found = assessed(scene);
    return circuit_row(found, "c1");
}

Assessment leaking(double each_ma, int count) {
    Scene scene(System::split_120_240);
    Circuit& circuit = scene.circuit("A", 20);
    scene.breakers.back().guards = Guards::value_type{Guard::ground};
    Load& load = scene.load(circuit, 1);
    load.leakage_ma = Milliamperes(each_ma);
    load.count = count;
    return assessed(scene);
}

Assessment receptacle(double circuit_a, double rating_a, int receptacles) {
    Scene scene(System::split_120_240);
    Outlet& outlet = scene.outlet(scene.circuit("A", circuit_a), OutletKind::receptacle);
    outlet.amps = Amperes(rating_a);
    outlet.receptacles = receptacles;
    return assessed(scene);
}

}  // namespace

std::vector<reference::Case> covered_protection_cases() {
    std::vector<reference::Case> all = {{"a26", "receptacle_rating"}, {"e11", "leakage_count"}, {"f14", "test_load"}};
    add_cases(all, "drop_t8", drops);
    for (const TableDrop& one : tables) all.push_back({one.id, one.kind});
    return all;
}

TEST_CASE("worked cases: a26, a single 15 A receptacle alone on 20 A is not allowed, a duplex is") {
    CHECK(finding_of(receptacle(20, 15, 1), "receptacle-rating") != nullptr);
    CHECK(finding_of(receptacle(20, 15, 2), "receptacle-rating") == nullptr);
}

TEST_CASE(
    "worked cases: e11, appliances of 0.5 mA: three fill a budget of 30 %, eight end the promise to hold, twelve "
    "must trip") {
    const auto budget = [](int count) {
        const Assessment found = leaking(0.5, count);
        const Finding* finding = finding_of(found, "leakage-budget");
        return finding ? std::string(name_of(finding->severity)) + ": " + finding->text.pattern : std::string();
    };
    CHECK(budget(3).empty());
    CHECK(budget(4).starts_with("notice"));
    CHECK(budget(7).starts_with("notice"));
    CHECK(budget(8).starts_with("caution"));
    CHECK(budget(11).find("may trip") != std::string::npos);
    CHECK(budget(12).find("must trip") != std::string::npos);
}

TEST_CASE("worked cases: f14, 121.0 V falls to 115.6 V at 12 A: 0.45 ohm, 5.6 % at 15 A") {
    Scene scene(System::split_120_240);
    const Outlet& outlet = scene.outlet(scene.circuit("A", 15), OutletKind::receptacle);
    scene.reading(ThingKind::outlet, outlet.id).volts = Volts(121.0);
    Reading& loaded = scene.reading(ThingKind::outlet, outlet.id);
    loaded.volts = Volts(115.6);
    loaded.amps = Amperes(12.0);
    const Assessment found = assessed(scene);
    REQUIRE(found.joints.size() == 1);
    CHECK(as_printed(found.joints[0].loop.value, 0.45));
    CHECK(as_printed(15 * found.joints[0].loop.value, 6.75));
    CHECK(as_printed(100 * 15 * found.joints[0].loop.value / 121.0, 5.5785124));
}

TEST_CASE("worked cases: b06, 16 A over 100 ft of 12 AWG solid copper at 120 V") {
    for (const DropCase& one : drops) {
        CAPTURE(one.id);
        const LoadFigures row = run_of(one);
        CHECK(as_printed(known(row.voltage_drop_percent), one.percent));
        CHECK(as_printed(known(row.voltage_drop_percent) / 100 * known(row.volts), one.drop_v));
    }
}

TEST_CASE("worked cases: b07, b17, b18, cells of Chapter 9 that runs of doorcard do not come to") {
    // b07: 12 AWG by Table 9 (doorcard: Table 8 through 1 AWG); b17: 2/0 by Table 8 (doorcard: Table 9 from 1/0)
    const double ze =
        cell("nec-ch9-t9", "12", "cu_pvc") * 0.85 + cell("nec-ch9-t9", "12", "x_pvc_al") * std::sqrt(1 - 0.85 * 0.85);
    CHECK(as_printed(ze, 1.728446));
    CHECK(as_printed(2 * 16 * ze * 0.1, 5.531028));
    CHECK(as_printed(2 * 100 * cell("nec-ch9-t8", "2/0", "al_stranded") * 0.08, 2.544));
    const auto k = [](const char* size, const char* column) {
        return cell("nec-ch9-t8", size, column) * circular_mils(nec_2023(), size).value() / 1000;
    };
    CHECK(as_printed(k("12", "cu_stranded"), 12.9294));
    CHECK(as_printed(k("12", "cu_solid"), 12.6029));
    CHECK(as_printed(k("1/0", "al_stranded"), 21.2256));
}
