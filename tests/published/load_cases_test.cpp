// SPDX-License-Identifier: MIT
// Loads of circuits: the worked cases a01 to a24, each as a small survey. Sources beside the cases; editions NEC 2023.
#include <doctest/doctest.h>

#include "published/covered_cases.hpp"
#include "published/scene.hpp"
#include "rules/lookups.hpp"

using namespace doorcard;

namespace {

struct OcpdCase {
    std::string id;
    const char* legs;
    Duty duty;
    double continuous_a, noncontinuous_a, rating_a;
    bool full_rated;
    double required_a;
    bool ok;
    double least_standard_a;
};

const std::vector<OcpdCase> ocpd = {
    {"a01", "A", Duty::general, 16, 0, 20, false, 20, true, 20},  // 210.20(A)
    {"a02", "A", Duty::general, 12, 5, 20, false, 20, true, 20},  // 210.20(A)
    {"a04", "A", Duty::general, 0, 20, 20, false, 20, true, 20},  // 210.20(A)
    {"a05", "A", Duty::general, 20, 0, 20, true, 20, true, 20},   // 210.20(A) Exception
    {"a07", "AB", Duty::ev, 48, 0, 60, false, 60, true, 60},      // 625.41, 625.42
    {"a08", "AB", Duty::ev, 48, 0, 50, false, 60, false, 60},     // 625.41
};

struct MotorCase {
    std::string id;
    System system;
    const char* legs;
    const char* hp;
    bool fuse;
    double full_load_a, conductor_a, device_limit_a, device_standard_a;
};

// Table 430.248, 430.22, Table 430.52(C)(1)
const std::vector<MotorCase> motors = {
    {"a13", System::split_120_240, "A", "1", false, 16.0, 20.0, 40.0, 40},
    {"a15", System::wye_208, "AB", "3/4", false, 7.6, 9.5, 19.0, 20},
    {"a16", System::split_120_240, "AB", "5", false, 28.0, 35.0, 70.0, 70},
    {"a17", System::split_120_240, "AB", "1", true, 8.0, 10.0, 14.0, 15},
};

struct FixedCase {
    std::string id;
    double rating_a;
    std::vector<double> fixed_a;
    double total_a, limit_a;
    bool ok;
};

// 210.23(B)(2)
const std::vector<FixedCase> fixed = {
    {"a18", 20, {9.8, 10.0}, 19.8, 10.0, false},
    {"a20", 15, {7.5}, 7.5, 7.5, true},
};

struct Single {
    std::string id;
};
const std::vector<Single> water_heaters = {{"a10"}}, space_heaters = {{"a12"}}, cords = {{"a21"}},
                          receptacle_counts = {{"a23"}}, receptacle_loads = {{"a24"}};

double next_standard(double amps) { return known(standard_rating_at_least(nec_2023(), Amperes(amps))); }

bool within_rating(const Assessment& found) {
    return !finding_of(found, "continuous-over-80") && !finding_of(found, "load-over-rating");
}

/// The standard rating after this one.
double standard_above(double rating) { return next_standard(rating + 0.1); }

std::size_t size_row(double amps, int column_c) {
    const RuleTable& table = nec_2023().table("nec-310-16");
    for (std::size_t row = 0; row < table.rows.size(); ++row)
        if (known(listed_ampacity(nec_2023(), table.text(row, 0), Metal::copper, column_c)) >= amps) return row;
    FAIL("no conductor for " << amps << " A");
    return 0;
}

std::string size_at(std::size_t row) { return nec_2023().table("nec-310-16").text(row, 0); }

Wire copper(const std::string& size, double terminals) {
    Wire wire;
    wire.size = size;
    wire.metal = Metal::copper;
    wire.insulation = "THHN";
    wire.terminal_c = Celsius(terminals);
    return wire;
}

Assessment motor_circuit(const MotorCase& given, double rating, const std::string& size) {
    Scene scene(given.system);
    Circuit& circuit = scene.circuit(given.legs, rating);
    scene.breakers.back().device = given.fuse ? "fuse" : "breaker";
    circuit.wire = copper(size, 60);
    Load& motor = scene.load(circuit, 0);
    motor.amps.reset();
    motor.hp = given.hp;
    motor.duty = Duty::motor;
    return assessed(scene);
}

Assessment heater_circuit(double rating) {
    Scene scene(System::split_120_240);
    const Circuit& circuit = scene.circuit("AB", rating);
    Load& element = scene.load(circuit, 0);
    element.amps.reset();
    element.watts = Watts(9600);
    element.volts = Volts(240);
    element.duty = Duty::heating;
    Load& blower = scene.load(circuit, 3);
    blower.duty = Duty::heating;
    return assessed(scene);
}

Assessment mixed_circuit(const FixedCase& given, bool receptacle) {
    Scene scene(System::split_120_240);
    const Circuit& circuit = scene.circuit("A", given.rating_a);
    for (const double amps : given.fixed_a) scene.load(circuit, amps);
    if (receptacle) scene.outlet(circuit, OutletKind::receptacle);
    return assessed(scene);
}

Assessment hair_dryer(double rating) {
    Scene scene(System::split_120_240);
    const Circuit& circuit = scene.circuit("A", rating);
    Load& dryer = scene.load_at(scene.outlet(circuit, OutletKind::receptacle), 0);
    dryer.amps.reset();
    dryer.watts = Watts(1875);
    return assessed(scene);
}

Assessment office_receptacles(double rating, int yokes) {
    Scene scene(System::split_120_240);
    scene.occupancy = true;
    const Circuit& circuit = scene.circuit("A", rating);
    for (int yoke = 0; yoke < yokes; ++yoke) scene.outlet(circuit, OutletKind::receptacle);
    return assessed(scene);
}

}  // namespace

std::vector<reference::Case> covered_load_cases() {
    std::vector<reference::Case> all;
    add_cases(all, "ocpd", ocpd);
    add_cases(all, "motor", motors);
    add_cases(all, "fixed50", fixed);
    add_cases(all, "water_heater", water_heaters);
    add_cases(all, "space_heat", space_heaters);
    add_cases(all, "cord80", cords);
    add_cases(all, "receptacle_count", receptacle_counts);
    add_cases(all, "receptacle_va", receptacle_loads);
    return all;
}

TEST_CASE("worked cases: continuous and noncontinuous load against the rating") {
    for (const OcpdCase& one : ocpd) {
        CAPTURE(one.id);
        Scene scene(System::split_120_240);
        const Circuit& circuit = scene.circuit(one.legs, one.rating_a);
        scene.breakers.back().full_rated = one.full_rated;
        if (one.continuous_a > 0) {
            Load& lasting = scene.load(circuit, one.continuous_a);
            lasting.duty = one.duty;
            lasting.continuous = true;
        }
        if (one.noncontinuous_a > 0) scene.load(circuit, one.noncontinuous_a);
        const Assessment found = assessed(scene);
        const LoadFigures& row = circuit_row(found, "c1");
        CHECK(as_printed(known(row.continuous_a), one.continuous_a));
        CHECK(as_printed(known(row.noncontinuous_a), one.noncontinuous_a));
        CHECK(as_printed(known(row.required_a), one.required_a));
        CHECK(within_rating(found) == one.ok);
        CHECK(next_standard(known(row.required_a)) == one.least_standard_a);
    }
}

TEST_CASE("worked cases: a10, a water heater of 5500 W: 30 A at least, 35 A at most (422.13, 422.11(E))") {
    Scene scene(System::split_120_240);
    Load& heater = scene.load(scene.circuit("AB", 30), 0);
    heater.amps.reset();
    heater.watts = Watts(5500);
    heater.volts = Volts(240);
    heater.duty = Duty::water_heater;
    heater.gallons = 50;
    const Assessment found = assessed(scene);
    const LoadFigures& row = circuit_row(found, "c1");
    CHECK(as_printed(known(row.continuous_a), 22.916667));
    CHECK(as_printed(known(row.required_a), 28.645833));
    CHECK(within_rating(found));
    CHECK(next_standard(known(row.required_a)) == 30);
    CHECK(known(row.continuous_a) > nec_2023().figure("single-appliance-a"));
    CHECK(next_standard(nec_2023().figure("single-appliance-150") * known(row.continuous_a)) == 35);
}

TEST_CASE("worked cases: a12, a space heater of 9600 W with a blower of 3 A (424.4(B), Table 310.16, 240.4(B))") {
    const Assessment found = heater_circuit(60);
    const LoadFigures& row = circuit_row(found, "c1");
    CHECK(as_printed(known(row.continuous_a), 43.0));
    CHECK(as_printed(known(row.required_a), 53.75));
    CHECK(within_rating(found));
    CHECK_FALSE(within_rating(heater_circuit(50)));
    CHECK(next_standard(known(row.required_a)) == 60);
    CHECK(size_at(size_row(known(row.required_a), 60)) == "6");
}

TEST_CASE("worked cases: motors by the table's current, not the nameplate's") {
    for (const MotorCase& one : motors) {
        CAPTURE(one.id);
        const std::size_t least = size_row(one.conductor_a, 60);
        const Assessment found = motor_circuit(one, one.device_standard_a, size_at(least));
        const double full_load = known(circuit_row(found, "c1").noncontinuous_a);
        const int phases = 1;
        CHECK(as_printed(full_load, one.full_load_a));
        CHECK(as_printed(nec_2023().figure("motor-conductor") * full_load, one.conductor_a));
        const double limit = motor_device_percent(nec_2023(), one.fuse, phases) / 100 * full_load;
        CHECK(as_printed(limit, one.device_limit_a));
        CHECK(next_standard(limit) == one.device_standard_a);
        CHECK_FALSE(finding_of(found, "wire-too-small"));
        CHECK(finding_of(motor_circuit(one, standard_above(one.device_standard_a), size_at(least)), "wire-too-small"));
    }
}

TEST_CASE("worked cases: a motor's wire one size below 1.25 times its current is told (430.22)") {
    const MotorCase& one = motors[2];
    const std::size_t least = size_row(one.conductor_a, 60);
    const Assessment found = motor_circuit(one, one.device_standard_a, size_at(least - 1));
    const Finding* finding = finding_of(found, "wire-too-small");
    REQUIRE(finding != nullptr);
    CHECK(finding->severity == Severity::caution);
}

TEST_CASE("worked cases: fixed equipment beside receptacles") {
    for (const FixedCase& one : fixed) {
        CAPTURE(one.id);
        const Assessment found = mixed_circuit(one, true);
        const Finding* finding = finding_of(found, "fixed-over-50");
        CHECK((finding == nullptr) == one.ok);
        CHECK(as_printed(known(circuit_row(found, "c1").noncontinuous_a), one.total_a));
        CHECK(as_printed(nec_2023().figure("fixed-share") * one.rating_a, one.limit_a));
        if (finding) {
            CHECK(as_printed(known(finding->value), one.total_a));
            CHECK(as_printed(known(finding->limit), one.limit_a));
        }
        CHECK_FALSE(finding_of(mixed_circuit(one, false), "fixed-over-50"));
    }
}

TEST_CASE("worked cases: a21, a hair dryer of 1875 W: fine on 20 A, over on 15 A (210.23(B)(1))") {
    const Assessment on_15 = hair_dryer(15), on_20 = hair_dryer(20);
    CHECK(as_printed(known(circuit_row(on_20, "c1").noncontinuous_a), 15.625));
    CHECK_FALSE(finding_of(on_20, "cord-load-over-80"));
    CHECK(as_printed(nec_2023().figure("cord-share") * 20, 16.0));
    const Finding* finding = finding_of(on_15, "cord-load-over-80");
    REQUIRE(finding != nullptr);
    CHECK(as_printed(known(finding->value), 15.625));
    CHECK(as_printed(known(finding->limit), 12.0));
}

TEST_CASE("worked cases: a23, yokes of 180 VA: 13 on 20 A and 10 on 15 A, not in dwellings (220.14(I))") {
    CHECK(within_rating(office_receptacles(20, 13)));
    CHECK_FALSE(within_rating(office_receptacles(20, 14)));
    CHECK(within_rating(office_receptacles(15, 10)));
    CHECK_FALSE(within_rating(office_receptacles(15, 11)));
}

TEST_CASE("worked cases: a24, five duplexes, one piece of four, one box with two yokes: 1620 VA (220.14(I))") {
    Scene scene(System::split_120_240);
    scene.occupancy = true;
    const Circuit& circuit = scene.circuit("A", 20);
    for (int duplex = 0; duplex < 5; ++duplex) scene.outlet(circuit, OutletKind::receptacle);
    scene.outlet(circuit, OutletKind::receptacle).receptacles = 4;
    scene.outlet(circuit, OutletKind::receptacle).yokes = 2;
    CHECK(as_printed(known(circuit_row(assessed(scene), "c1").connected_va), 1620.0));
}
