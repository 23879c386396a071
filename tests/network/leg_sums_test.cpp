// SPDX-License-Identifier: MIT
// Sums of loads on legs and in the neutral: reckoning 'Amperes of a leg'; imbalance after contract 3.
#include "network/leg_sums.hpp"

#include <numbers>

#include "network/found.hpp"

using namespace doorcard;

namespace {

const RuleBook& book() {
    static const RuleBook nec = built_in_book("NEC-2023").value();
    return nec;
}

/// The sums of these loads (keys of each) on all legs of a panel of this system.
LegSums sums(const std::string& system, const std::vector<std::string>& loads, double count = 1, double scale = 1) {
    std::string text = panel_on(system);
    for (std::size_t i = 0; i < loads.size(); ++i)
        text += "\n[[load]]\nid = \"" + std::to_string(i) + "\"\n" + loads[i];
    const Network network = network_of(survey_of(text));
    const PanelSupply& supply = network.supply(0);
    LegSums sum;
    for (const Load& load : network.survey().loads)
        sum.add(current_of(load, {&supply, supply.legs, false}, book()), supply, count, scale);
    return sum;
}

doctest::Approx near(double value) { return doctest::Approx(value).epsilon(1e-12).scale(1); }

const char* const split = "120/240 1ph 3w";
const char* const wye = "208Y/120 3ph 4w";
const char* const high = "240/120 3ph 4w high-leg";

const std::string on_a = "legs = \"A\"\n";
const std::string on_b = "legs = \"B\"\n";
const std::string on_c = "legs = \"C\"\n";

}  // namespace

TEST_CASE("sums: two legs of 120/240 take from each other in the neutral") {
    const LegSums sum = sums(split, {"amps = 10\n" + on_a, "amps = 4\n" + on_b});
    CHECK(sum.amps('A').value == near(10));
    CHECK(sum.amps('B').value == near(4));
    CHECK(sum.neutral_amps().value == near(6));
}

TEST_CASE("sums: two legs of a wye do not") {
    const LegSums sum = sums(wye, {"amps = 10\n" + on_a, "amps = 10\n" + on_b});
    CHECK(sum.neutral_amps().value == near(10));
    CHECK(sums(wye, {"amps = 10\n" + on_a, "amps = 10\n" + on_b, "amps = 10\n" + on_c}).neutral_amps().value ==
          near(0));
}

TEST_CASE("sums: thirds of a balanced wye add up in the neutral") {
    const std::string third = "third_harmonic = 0.75\n";
    const LegSums sum =
        sums(wye, {"amps = 10\n" + third + on_a, "amps = 10\n" + third + on_b, "amps = 10\n" + third + on_c});
    CHECK(sum.amps('B').value == near(10));
    CHECK(sum.triplen_amps().value == near(18));
    CHECK(sum.neutral_amps().value == near(18));
}

TEST_CASE("sums: on 120/240 the thirds of the two legs cancel") {
    const std::string third = "third_harmonic = 0.75\n";
    CHECK(sums(split, {"amps = 10\n" + third + on_a, "amps = 10\n" + third + on_b}).triplen_amps().value == near(0));
}

TEST_CASE("sums: power factor lagging and leading") {
    const std::string lag = "power_factor = 0.5\n";
    CHECK(sums(split, {"amps = 10\n" + on_a, "amps = 10\n" + lag + on_a}).amps('A').value ==
          near(10 * std::numbers::sqrt3));  // 60 degrees apart
    CHECK(sums(split, {"amps = 10\n" + lag + on_a, "amps = 10\n" + lag + "leading = true\n" + on_a}).amps('A').value ==
          near(10));  // 120 degrees apart
}

TEST_CASE("sums: line to line on 120/240: in both legs, none in the neutral, in line with the loads to neutral") {
    const LegSums sum = sums(split, {"amps = 10\nlegs = \"AB\"\n", "amps = 5\n" + on_b});
    CHECK(sum.amps('A').value == near(10));
    CHECK(sum.amps('B').value == near(15));
    CHECK(sum.neutral_amps().value == near(5));
}

TEST_CASE("sums: line to line on a wye: 30 degrees off the legs; two pairs meet in a leg") {
    const LegSums one = sums(wye, {"amps = 10\nlegs = \"AB\"\n", "amps = 10\n" + on_a});
    CHECK(one.amps('A').value == near(20 * std::cos(15 * std::numbers::pi / 180)));
    const LegSums three =
        sums(wye, {"amps = 10\nlegs = \"AB\"\n", "amps = 10\nlegs = \"BC\"\n", "amps = 10\nlegs = \"AC\"\n"});
    for (const char leg : {'A', 'B', 'C'}) CHECK(three.amps(leg).value == near(10 * std::numbers::sqrt3));
}

TEST_CASE("sums: thirds of line-to-line loads: at three times the angle of their line voltage, plus and minus") {
    const std::string third = "amps = 10\nthird_harmonic = 0.75\n";
    const LegSums sum = sums(wye, {third + "legs = \"AB\"\n", third + "legs = \"BC\"\n", third + "legs = \"AC\"\n"});
    // AB stands at 30, BC at -90, AC at -30: thirds at 90, 90 and -90. Leg A: AB + AC = 0; B: BC - AB = 0; C: -AC - BC
    // = 0.
    for (const char leg : {'A', 'B', 'C'}) CHECK(std::abs(sum.leg(leg).third) == near(0));
    CHECK(sum.triplen_amps().value == near(0));
    CHECK(sums(wye, {third + "legs = \"AB\"\n"}).leg('A').third.imag() == near(6));
    CHECK(sums(wye, {third + "legs = \"AB\"\n"}).leg('B').third.imag() == near(-6));
}

TEST_CASE("sums: three-phase loads stand at their leg's voltage to the middle; on a wye that is to neutral") {
    const LegSums sum = sums(wye, {"amps = 10\nphases = 3\n", "amps = 10\n" + on_b});
    CHECK(sum.amps('A').value == near(10));
    CHECK(sum.amps('B').value == near(20));
    CHECK(sum.neutral_amps().value == near(10));
}

TEST_CASE("sums: the high leg: three-phase at A 30, B -90, C 150 degrees") {
    const LegSums sum = sums(high, {"amps = 10\nphases = 3\n", "amps = 10\n" + on_a, "amps = 10\nlegs = \"B\"\n"});
    CHECK(sum.amps('A').value == near(20 * std::cos(15 * std::numbers::pi / 180)));  // 0 and 30 degrees
    CHECK(sum.amps('B').value == near(20));                                          // both at -90
    CHECK(sum.amps('C').value == near(10));
}

TEST_CASE("sums: a leg that is not known counts in full on each, and by its size in the neutral") {
    const LegSums sum = sums(split, {"amps = 10\n" + on_a, "amps = 4\nthird_harmonic = 0.75\nvolts = 120\n"});
    CHECK(sum.leg('A').first.real() == near(13.2));
    CHECK(sum.leg('B').first.real() == near(-3.2));
    CHECK(sum.triplen_amps().value == near(2.4));
    CHECK(sum.neutral_amps().value == near(std::hypot(13.2, 2.4)));
}

TEST_CASE("sums: a pair that is not known counts in full on every leg, at that leg's own angle, and in no neutral") {
    const LegSums sum = sums(wye, {"amps = 10\nvolts = 208\n", "amps = 5\n" + on_b});
    CHECK(sum.amps('A').value == near(10));
    CHECK(sum.amps('B').value == near(15));
    CHECK(sum.neutral_amps().value == near(5));
}

TEST_CASE("sums: halves: half on each leg, and nothing in the neutral of 120/240") {
    const LegSums sum = sums(split, {"va = 2400\nlegs = \"AN+BN\"\n"});
    CHECK(sum.amps('A').value == near(10));
    CHECK(sum.amps('B').value == near(10));
    CHECK(sum.neutral_amps().value == near(0));
    CHECK(sums(wye, {"va = 2400\nlegs = \"AN+BN\"\n"}).neutral_amps().value == near(10));
}

TEST_CASE("sums: volt-amperes of a leg: to neutral in full, a pair half, three phases a third, not known on each") {
    const LegSums sum = sums(wye, {"va = 1000\n" + on_a, "va = 600\nlegs = \"AB\"\n", "va = 900\nphases = 3\n"});
    CHECK(sum.va('A').value == near(1600));
    CHECK(sum.va('B').value == near(600));
    CHECK(sum.va('C').value == near(300));
    const LegSums unknown = sums(wye, {"va = 1000\nvolts = 120\n", "va = 600\nvolts = 208\n"});
    for (const char leg : {'A', 'B', 'C'}) CHECK(unknown.va(leg).value == near(1300));
}

TEST_CASE("sums: counts and scales; several sums are one") {
    CHECK(sums(split, {"amps = 10\n" + on_a}, 3).amps('A').value == near(30));
    CHECK(sums(split, {"amps = 10\n" + on_a}, 3, 0.5).amps('A').value == near(15));
    LegSums both = sums(split, {"amps = 10\n" + on_a});
    both.add(sums(split, {"amps = 4\n" + on_b}));
    CHECK(both.amps('B').value == near(4));
    CHECK(both.neutral_amps().value == near(6));
    CHECK(both.neutral_part('A').value == near(10));
}

TEST_CASE("sums: a load on a leg that the panel does not have counts on each that it has") {
    const Network wye_panel = network_of(survey_of(panel_on(wye) + "\n[[load]]\nid = \"x\"\namps = 10\n" + on_c));
    const PanelSupply& there = wye_panel.supply(0);
    const LoadCurrent on_third = current_of(wye_panel.survey().loads[0], {&there, there.legs, false}, book());
    for (const char* system : {split, "120 1ph 2w"}) {
        const Network here = network_of(survey_of(panel_on(system)));
        LegSums sum;
        sum.add(on_third, here.supply(0), 1);
        for (const char leg : here.supply(0).legs) CHECK(sum.amps(leg).value == near(10));
        CHECK(sum.neutral_amps().value == near(10));
    }
    LegSums nowhere;
    nowhere.add(on_third, PanelSupply{}, 1);
    CHECK_FALSE(nowhere.any_known());
}

TEST_CASE("sums: loads of unknown current are not known, and add nothing") {
    CHECK_FALSE(sums(split, {on_a}).any_known());
    CHECK(sums(split, {on_a, "amps = 1\n" + on_a}).any_known());
}

TEST_CASE("imbalance: the largest deviation from the mean over the mean") {
    const auto percent = [](std::vector<double> legs) {
        std::vector<Amperes> amps;
        for (const double leg : legs) amps.emplace_back(leg);
        return imbalance_percent(amps);
    };
    CHECK(*percent({60, 40}) == near(20));
    CHECK(*percent({10, 0}) == near(100));
    CHECK(*percent({0, 0}) == 0);
    CHECK(*percent({30, 30, 60}) == near(50));
    CHECK_FALSE(percent({10}));
    CHECK_FALSE(percent({}));
}
