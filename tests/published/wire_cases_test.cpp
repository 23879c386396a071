// SPDX-License-Identifier: MIT
// Conductors and their devices: the worked cases a27 to a42. Sources beside the cases; edition NEC 2023.
#include <doctest/doctest.h>

#include "published/covered_cases.hpp"
#include "published/scene.hpp"
#include "rules/lookups.hpp"

using namespace doorcard;

namespace {

struct AmpacityCase {
    std::string id;
    const char* size;
    Metal metal;
    const char* insulation;
    double terminal_c, ambient_c;
    int together;
    bool receptacles;
    double corrected_a, final_a, device_a;
};

const std::vector<AmpacityCase> ampacities = {
    {"a27", "12", Metal::copper, "NM-B", 60, 30, 8, true, 21.0, 20.0, 20},         // 334.80, 310.15(C)(1), 240.4(D)
    {"a28", "12", Metal::copper, "NM-B", 60, 30, 10, true, 15.0, 15.0, 15},        // 334.80, 310.15(C)(1)
    {"a30", "12", Metal::copper, "THHN", 75, 30, 6, true, 24.0, 24.0, 20},         // 310.15(C)(1), 240.4(D)
    {"a35", "12", Metal::copper, "NM-B", 60, 45, 2, true, 26.1, 20.0, 20},         // 334.80, 310.15(B)
    {"a36", "6", Metal::copper, "NM-B", 60, 30, 3, false, 75.0, 55.0, 60},         // 334.80, 240.4(B)
    {"a37", "1", Metal::aluminum, "XHHW-2", 75, 30, 3, false, 115.0, 100.0, 100},  // 110.14(C), Table 310.16
};

struct BundleCase {
    std::string id;
    int conductors;
    double factor, final_a;
};

// 310.15(E)(3): with mostly nonlinear load the neutral of a four-wire wye circuit counts; the survey enters the count.
const std::vector<BundleCase> bundles = {{"a33", 4, 0.80, 24.0}};

struct SmallCase {
    std::string id;
    std::vector<std::tuple<const char*, const char*, double>> devices;
};

// 240.4(D)
const std::vector<SmallCase> small_conductors = {
    {"a42",
     {{"14", "cu", 15}, {"12", "cu", 20}, {"10", "cu", 30}, {"12", "al", 15}, {"10", "al", 25}, {"14", "cca", 10}}},
};

Scene wired(const AmpacityCase& given, double rating) {
    Scene scene(System::split_120_240);
    Circuit& circuit = scene.circuit("AB", rating);
    Wire wire;
    wire.size = given.size;
    wire.metal = given.metal;
    wire.insulation = given.insulation;
    wire.terminal_c = Celsius(given.terminal_c);
    wire.ambient_c = Celsius(given.ambient_c);
    wire.conductors_together = given.together;
    circuit.wire = wire;
    for (int receptacle = 0; given.receptacles && receptacle < 2; ++receptacle)
        scene.outlet(circuit, OutletKind::receptacle);
    return scene;
}

/// The largest standard rating that the wire is not told to be too small for.
double largest_device(const AmpacityCase& given) {
    const RuleTable& ratings = nec_2023().table("nec-240-6-a");
    double largest = 0;
    for (std::size_t row = 0; row < ratings.rows.size() && ratings.number(row, 0) <= 400; ++row)
        if (!finding_of(assessed(wired(given, ratings.number(row, 0))), "wire-too-small"))
            largest = ratings.number(row, 0);
    return largest;
}

}  // namespace

std::vector<reference::Case> covered_wire_cases() {
    std::vector<reference::Case> all;
    add_cases(all, "ampacity", ampacities);
    add_cases(all, "multiwire_bundle", bundles);
    add_cases(all, "small_conductor", small_conductors);
    return all;
}

TEST_CASE("worked cases: ampacity, corrected and held to the terminals") {
    for (const AmpacityCase& one : ampacities) {
        CAPTURE(one.id);
        const int column = insulation_column(nec_2023(), one.insulation).value();
        CHECK(column == 90);
        const double corrected = known(listed_ampacity(nec_2023(), one.size, one.metal, column)) *
                                 ambient_factor(nec_2023(), Celsius(one.ambient_c), column) *
                                 bundling_factor(nec_2023(), one.together);
        CHECK(as_printed(corrected, one.corrected_a));
        CHECK(as_printed(known(circuit_row(assessed(wired(one, 20)), "c1").ampacity_a), one.final_a));
    }
}

TEST_CASE("worked cases: the largest device that the wire may have") {
    for (const AmpacityCase& one : ampacities) {
        CAPTURE(one.id);
        CHECK(largest_device(one) == one.device_a);
    }
}

TEST_CASE("worked cases: a33, a counted neutral: four conductors of a wye circuit") {
    for (const BundleCase& one : bundles) {
        CHECK(as_printed(bundling_factor(nec_2023(), one.conductors), one.factor));
        const AmpacityCase wire{one.id, "12", Metal::copper, "THHN", 75, 30, one.conductors, true, 0, 0, 0};
        CHECK(as_printed(known(circuit_row(assessed(wired(wire, 20)), "c1").ampacity_a), one.final_a));
    }
}

TEST_CASE("worked cases: a42, devices of small conductors") {
    for (const auto& [size, metal, amps] : small_conductors.front().devices) {
        CAPTURE(size);
        CAPTURE(metal);
        double found = 0;
        const RuleTable& table = nec_2023().table("nec-240-4-d");
        for (std::size_t row = 0; row < table.rows.size(); ++row)
            if (table.text(row, 0) == size && table.text(row, 1) == metal) found = table.number(row, 2);
        CHECK(found == amps);
    }
    CHECK(known(small_conductor_device(nec_2023(), "12", Metal::aluminum)) == 15);
}
