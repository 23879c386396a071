// SPDX-License-Identifier: MIT
// The current of one of a load: contract 3 'A load's current' and reckoning 'A load', a sentence each.
#include "network/load_current.hpp"

#include <numbers>

#include "network/found.hpp"

using namespace doorcard;

namespace {

constexpr double sqrt3 = std::numbers::sqrt3;

const RuleBook& book() {
    static const RuleBook nec = built_in_book("NEC-2023").value();
    return nec;
}

/// The current of a load with these keys on these legs of a panel of this system.
LoadCurrent current(const std::string& system, const std::string& legs, const std::string& keys,
                    bool on_panel = false) {
    const Network network = network_of(survey_of(panel_on(system) + "\n[[load]]\nid = \"x\"\n" + keys));
    return current_of(network.survey().loads[0], {&network.supply(0), legs, on_panel}, book());
}

double amps(const LoadCurrent& current) {
    return current.known() ? current.total().value : std::numeric_limits<double>::quiet_NaN();
}
double va(const LoadCurrent& current) {
    return current.va ? current.va->value : std::numeric_limits<double>::quiet_NaN();
}
doctest::Approx near(double value) { return doctest::Approx(value).epsilon(1e-12); }

const char* const split = "120/240 1ph 3w";
const char* const wye = "208Y/120 3ph 4w";
const char* const high = "240/120 3ph 4w high-leg";

}  // namespace

TEST_CASE("load: volt-amperes over the nominal volts between the conductors it uses") {
    CHECK(amps(current(split, "A", "va = 1200\n")) == near(10));
    CHECK(amps(current(split, "AB", "va = 4800\n")) == near(20));
    CHECK(amps(current(wye, "AB", "va = 2080\n")) == near(10));
    CHECK(amps(current(wye, "ABC", "va = 3600\nphases = 3\n")) == near(3600 / (208 * sqrt3)));
    CHECK(amps(current("480Y/277 3ph 4w", "B", "va = 277\n")) == near(1));
}

TEST_CASE("load: watts over power factor are volt-amperes") {
    CHECK(va(current(split, "A", "watts = 900\npower_factor = 0.75\n")) == near(1200));
    CHECK(amps(current(split, "A", "watts = 900\npower_factor = 0.75\n")) == near(10));
    CHECK(va(current(split, "A", "watts = 900\n")) == near(900));
}

TEST_CASE("load: amperes times marked volts, or nominal ones, are volt-amperes") {
    CHECK(va(current(split, "A", "amps = 10\n")) == near(1200));
    CHECK(va(current(split, "A", "amps = 10\nvolts = 115\n")) == near(1150));
    CHECK(va(current(split, "AB", "amps = 10\n")) == near(2400));
    CHECK(va(current(wye, "ABC", "amps = 10\nphases = 3\n")) == near(10 * 208 * sqrt3));
    CHECK(amps(current(wye, "ABC", "amps = 10\nphases = 3\nvolts = 200\n")) == near(10));
}

TEST_CASE("load: marked volts below nominal keep the larger current, above nominal lower it by VA over nominal") {
    CHECK(amps(current(split, "A", "amps = 10\nvolts = 115\n")) == near(10));
    CHECK(amps(current(split, "A", "va = 1150\nvolts = 115\n")) == near(10));
    CHECK(amps(current(wye, "AB", "va = 2300\nvolts = 230\n")) == near(2300.0 / 208));
    CHECK(amps(current(wye, "AB", "amps = 10\nvolts = 230\n")) == near(2300.0 / 208));
}

TEST_CASE("load: a resistive one marked for more volts than it gets draws less: amperes x nominal / marked") {
    for (const char* duty : {"heating", "water-heater", "range", "cooktop", "oven", "dryer"}) {
        CAPTURE(duty);
        const std::string keys = std::string("volts = 240\nduty = \"") + duty + "\"\n";
        CHECK(amps(current(wye, "AB", "va = 4800\n" + keys)) == near(20.0 * 208 / 240));
        CHECK(amps(current(wye, "AB", "amps = 20\n" + keys)) == near(20.0 * 208 / 240));
    }
    CHECK(amps(current(wye, "AB", "va = 4800\nvolts = 240\nduty = \"ev\"\n")) == near(4800.0 / 208));
    CHECK(amps(current(wye, "AB", "va = 4800\nvolts = 200\nduty = \"dryer\"\n")) == near(24));  // marked for less
}

TEST_CASE("load: line to neutral or line to line by marked volts, nearer by ratio; else by the circuit") {
    CHECK(current(split, "AB", "va = 1\n").placing == Placing::line_to_line);
    CHECK(current(split, "AB", "va = 1\nvolts = 120\n").placing == Placing::line_to_neutral);
    CHECK(current(split, "AB", "va = 1\nvolts = 169\n").placing ==
          Placing::line_to_neutral);  // sqrt(120 x 240) = 169.7
    CHECK(current(split, "AB", "va = 1\nvolts = 170\n").placing == Placing::line_to_line);
    CHECK(current(wye, "AB", "va = 1\nvolts = 157\n").placing == Placing::line_to_neutral);  // 157.99
    CHECK(current(wye, "AB", "va = 1\nvolts = 158\n").placing == Placing::line_to_line);
    CHECK(current("240 3ph 3w", "AB", "va = 1\nvolts = 120\n").placing == Placing::line_to_line);  // no neutral there
}

TEST_CASE("load: on a circuit of one leg every load is line to neutral") {
    const LoadCurrent found = current(split, "B", "va = 2400\nvolts = 240\n");
    CHECK(found.placing == Placing::line_to_neutral);
    CHECK(found.legs == "B");
    CHECK(found.legs_known);
    CHECK(amps(found) == near(20));
}

TEST_CASE("load: legs given") {
    const LoadCurrent one = current(wye, "ABC", "va = 1200\nlegs = \"B\"\n");
    CHECK(one.placing == Placing::line_to_neutral);
    CHECK(one.legs == "B");
    CHECK(amps(one) == near(10));
    const LoadCurrent pair = current(wye, "ABC", "va = 2080\nlegs = \"BC\"\n");
    CHECK(pair.placing == Placing::line_to_line);
    CHECK(pair.legs == "BC");
    CHECK(pair.legs_known);
    CHECK(current(wye, "ABC", "va = 1\nlegs = \"ABC\"\n").placing == Placing::three_phase);
}

TEST_CASE("load: legs that its circuit has not are not known") {
    const LoadCurrent found = current(wye, "AB", "va = 1200\nlegs = \"C\"\n");
    CHECK_FALSE(found.legs_known);
    CHECK(found.legs == "AB");
}

TEST_CASE("load: leg or pair not known: all that it may use, a high leg never for 120 V") {
    const LoadCurrent one = current(split, "AB", "va = 1200\nvolts = 120\n");
    CHECK(one.legs == "AB");
    CHECK_FALSE(one.legs_known);
    const LoadCurrent pair = current(wye, "ABC", "va = 1200\nvolts = 208\n");
    CHECK(pair.legs == "ABC");
    CHECK_FALSE(pair.legs_known);
    const LoadCurrent low = current(high, "ABC", "va = 1200\nvolts = 120\n");
    CHECK(low.legs == "AC");
    const LoadCurrent only = current(high, "AB", "va = 1200\nvolts = 120\n");
    CHECK(only.legs == "A");
    CHECK(only.legs_known);
}

TEST_CASE("load: from the high leg to neutral 208 V stand") {
    CHECK(amps(current(high, "B", "va = 2080\n")) == near(10));
    CHECK(amps(current(high, "ABC", "va = 2080\nlegs = \"B\"\n")) == near(10));
    CHECK(amps(current(high, "BC", "va = 2400\n")) == near(10));
}

TEST_CASE("load: AN+BN: half of its va or watts on each leg over line-to-neutral volts, marked volts aside") {
    const LoadCurrent found = current(split, "AB", "va = 2400\nlegs = \"AN+BN\"\nvolts = 240\n");
    CHECK(found.placing == Placing::halves);
    CHECK(found.legs == "AB");
    CHECK(amps(found) == near(10));
    CHECK(amps(current(split, "AB", "watts = 1200\nlegs = \"AN+BN\"\n")) == near(5));
}

TEST_CASE("load: straight on a panel it needs legs or volts") {
    CHECK_FALSE(current(split, "AB", "va = 1200\n", true).known());
    CHECK(va(current(split, "AB", "va = 1200\n", true)) == near(1200));
    CHECK(amps(current(split, "AB", "va = 1200\nvolts = 120\n", true)) == near(10));
    CHECK(amps(current(split, "AB", "va = 2400\nlegs = \"AB\"\n", true)) == near(10));
}

TEST_CASE("load: horsepower: the tables' current at the conductors' nominal volts") {
    const LoadCurrent half = current(split, "A", "hp = \"1/2\"\n");
    CHECK(amps(half) == near(9.8));                             // Table 430.248, 115 V
    CHECK(va(half) == near(9.8 * 120));                         // that current x nominal volts
    CHECK(amps(current(split, "AB", "hp = 5\n")) == near(28));  // 230 V
    CHECK(amps(current(wye, "AB", "hp = 5\n")) == near(30.8));  // 208 V
    const LoadCurrent three = current(wye, "ABC", "hp = 10\nphases = 3\n");
    CHECK(amps(three) == near(30.8));  // Table 430.250, 208 V
    CHECK(va(three) == near(30.8 * 208 * sqrt3));
    CHECK(amps(current("480Y/277 3ph 4w", "ABC", "hp = 10\nlegs = \"ABC\"\n")) == near(14));
}

TEST_CASE("load: horsepower between two rows takes the next larger, and no column is unknown") {
    CHECK(amps(current(split, "A", "hp = 0.4\n")) == near(9.8));       // the row of 1/2
    CHECK_FALSE(current("480Y/277 3ph 4w", "A", "hp = 1\n").known());  // Table 430.248 has no 277 V
    CHECK_FALSE(current("480Y/277 3ph 4w", "A", "hp = 1\n").va);
}

TEST_CASE("load: horsepower lags by 0.8 wherever it stands, unless a power factor is given") {
    const double lag = std::acos(0.8) * 180 / std::numbers::pi;
    CHECK(current(split, "A", "hp = 1\n").lag_degrees == near(lag));
    CHECK(current(split, "A", "hp = 1\namps = 12\n").lag_degrees == near(lag));
    CHECK(current(split, "A", "hp = 1\npower_factor = 0.5\n").lag_degrees == near(60));
    CHECK(current(split, "A", "va = 100\n").lag_degrees == 0);
    CHECK(current(split, "A", "va = 100\npower_factor = 0.5\nleading = true\n").lag_degrees == near(-60));
}

TEST_CASE("load: amperes beside horsepower are the marked ones, and they rule") {
    CHECK(amps(current(split, "A", "hp = 1\namps = 12\n")) == near(12));
}

TEST_CASE("load: thirds lie within va and amperes, and come on top of watts and horsepower") {
    for (const char* keys : {"va = 1200\n", "amps = 10\n"}) {
        const LoadCurrent found = current(split, "A", std::string(keys) + "third_harmonic = 0.75\n");
        CHECK(amps(found) == near(10));
        CHECK(found.fundamental->value == near(8));
        CHECK(found.third.value == near(6));
    }
    for (const char* keys : {"watts = 960\n", "hp = \"1/3\"\n"}) {
        const LoadCurrent found = current(split, "A", std::string(keys) + "third_harmonic = 0.75\n");
        const double fundamental = std::string(keys).starts_with("watts") ? 8 : 7.2;  // Table 430.248: 1/3 hp 7.2 A
        CHECK(found.fundamental->value == near(fundamental));
        CHECK(found.third.value == near(0.75 * fundamental));
        CHECK(amps(found) == near(1.25 * fundamental));
    }
}

TEST_CASE("load: thirds of three-phase loads count as none") {
    const LoadCurrent found = current(wye, "ABC", "va = 3600\nphases = 3\nthird_harmonic = 0.5\n");
    CHECK(found.third.value == 0);
    CHECK(found.fundamental->value == near(3600 / (208 * sqrt3)));
}

TEST_CASE("load: nothing stated, or no system, and the current is not known") {
    CHECK_FALSE(current(split, "A", "").known());
    CHECK_FALSE(current(split, "A", "").va);
    const Load load = survey_of("format = 1\n[[load]]\nid = \"x\"\nva = 1200\n").loads[0];
    const LoadCurrent nowhere = current_of(load, {}, book());
    CHECK_FALSE(nowhere.known());
    CHECK(va(nowhere) == near(1200));
    CHECK_FALSE(current("240 3ph 3w", "A", "va = 1200\n").known());  // one leg, and no neutral
}

TEST_CASE("load: known only by its minimum circuit ampacity it has that current") {
    const LoadCurrent found = current(split, "AB", "min_circuit_a = 22.4\nmax_device_a = 35\n");
    CHECK(amps(found) == near(22.4));
    CHECK(va(found) == near(22.4 * 240));
    CHECK(amps(current(split, "AB", "amps = 18\nmin_circuit_a = 22.4\n")) == near(18));
}

TEST_CASE("load: what only totals ask changes nothing here") {
    const double plain = amps(current(split, "A", "va = 1200\n"));
    CHECK(amps(current(split, "A", "va = 1200\nper_unit = true\ncontrol = \"z\"\nlocked_out = true\n")) == plain);
    CHECK(amps(current(split, "A", "va = 1200\ncount = 3\n")) == plain);  // of ONE
}
