// SPDX-License-Identifier: MIT
// Shared neutrals: the worked cases c01 to c26. Source: circuit theory, unless said beside the case.
#include <doctest/doctest.h>

#include "network/network.hpp"
#include "published/covered_cases.hpp"
#include "published/spice_circuit.hpp"

using namespace doorcard;

namespace {

const System split = System::split_120_240, wye = System::wye_208;

struct NeutralCase {
    std::string id;
    System system;
    std::vector<SpiceLoad> loads;
    double neutral_a;
};

const std::vector<NeutralCase> neutrals = {
    {"c01", split, {{"A", 15}, {"B", 10}}, 5.0},
    {"c03", wye, {{"A", 10}, {"B", 10}}, 10.0},
    {"c04", wye, {{"A", 10}, {"B", 8}, {"C", 6}}, 3.4641016},
    {"c05", wye, {{"A", 5}, {"B", 8}, {"C", 10}}, 4.3588989},  // trade handbooks
    {"c06", wye, {{"A", 10}, {"B", 10}, {"C", 10}}, 0.0},      // from memory
    {"c07", wye, {{"A", 10}, {"B", 10, 30}, {"C", 10, -30}}, 7.3205081},
    {"c09", split, {{"A", 16}, {"A", 15}}, 31.0},
    {"c10", wye, {{"A", 20}, {"B", 20, 36.86989765}}, 8.0192148},
    {"c12", wye, {{"A", 12}, {"B", 7}}, 10.4403065},         // from memory
    {"c25", split, {{"A", 10}, {"A", 10}, {"B", 8}}, 12.0},  // from memory
};

struct HarmonicCase {
    std::string id;
    System system;
    std::vector<std::pair<double, double>> legs;  ///< A, B, C: fundamental and third, A
    double neutral_a, triplen_a;
};

const std::vector<HarmonicCase> harmonics = {
    {"c13", wye, {{8, 4}, {8, 4}, {8, 4}}, 12.0, 12.0},
};

/// Neutral over leg current of three like wye legs with this third: 3r / sqrt(1 + r^2).
struct RatioCase {
    std::string id;
    std::vector<std::pair<double, double>> ratio_of_third;
};

const std::vector<RatioCase> ratios = {
    {"c17", {{0.333333333, 0.9486833}, {0.5, 1.3416408}, {0.707106781, 1.7320508}}},
};

struct Single {
    std::string id;
};
const std::vector<Single> high_legs = {{"c23"}}, imbalances = {{"c26"}};

NeutralFigures neutral_of(System system, const std::vector<SpiceLoad>& loads) {
    return neutral_row(assessed(SpiceCircuit{"", system, loads}.scene()), "N");
}

}  // namespace

std::vector<reference::Case> covered_neutral_cases() {
    std::vector<reference::Case> all;
    add_cases(all, "neutral", neutrals);
    add_cases(all, "neutral_harmonic", harmonics);
    add_cases(all, "third_ratio", ratios);
    add_cases(all, "high_leg", high_legs);
    add_cases(all, "imbalance", imbalances);
    return all;
}

TEST_CASE("worked cases: neutral current") {
    for (const NeutralCase& one : neutrals) {
        CAPTURE(one.id);
        const NeutralFigures row = neutral_of(one.system, one.loads);
        CAPTURE(known(row.amps));
        CHECK(as_printed(known(row.amps), one.neutral_a));
        CHECK(known(row.triplen_amps) == 0);
    }
}

TEST_CASE("worked cases: neutral current with third harmonics") {
    for (const HarmonicCase& one : harmonics) {
        CAPTURE(one.id);
        std::vector<SpiceLoad> loads;
        for (std::size_t leg = 0; leg < one.legs.size(); ++leg)
            loads.push_back({std::string(1, "ABC"[leg]), std::hypot(one.legs[leg].first, one.legs[leg].second), 0,
                             one.legs[leg].second / one.legs[leg].first});
        const NeutralFigures row = neutral_of(one.system, loads);
        CHECK(as_printed(known(row.amps), one.neutral_a));
        CHECK(as_printed(known(row.triplen_amps), one.triplen_a));
    }
}

TEST_CASE("worked cases: neutral over leg current, fundamental and third") {
    for (const auto& [third, ratio] : ratios.front().ratio_of_third) {
        CAPTURE(third);
        const NeutralFigures row = neutral_of(wye, {{"A", 10, 0, third}, {"B", 10, 0, third}, {"C", 10, 0, third}});
        CHECK(as_printed(known(row.amps) / 10, ratio));
    }
}

TEST_CASE("worked cases: c23, a high leg; line-to-line loads beside do not reach the neutral") {
    const SpiceCircuit circuit{"", System::high_leg_240, {{"A", 15}, {"C", 10}, {"ABC", 12, 30}, {"AB", 6}}};
    CHECK(as_printed(known(neutral_row(assessed(circuit.scene()), "N").amps), 5.0));
    // B to neutral is 120 sqrt(3) = 207.846 V; the survey names it by its nominal voltage, 208 V (NEC 2023 220.5(A)).
    const Network network = network_of(circuit.scene().survey());
    CHECK(known(network.supply(0).volts_to_neutral('B')) == 208);
    CHECK(std::abs(207.846097 - 208) < 0.5);
    CHECK(std::abs(network.supply(0).to_neutral.at('A') - network.supply(0).to_neutral.at('B')) ==
          doctest::Approx(240).epsilon(1e-3));
}

TEST_CASE(
    "worked cases: c26, legs of 60 and 40 A; of the three figures called imbalance doorcard gives the deviation") {
    // Common practice, no source: the largest deviation from the mean, over the mean. The neutral over the mean is 40
    // %.
    const Assessment found = assessed(SpiceCircuit{"", split, {{"A", 60}, {"B", 40}}}.scene());
    REQUIRE(found.panels.size() == 1);
    CHECK(as_printed(known(found.panels[0].imbalance_percent), 20.0));
    CHECK(as_printed(known(neutral_row(found, "N").imbalance_percent), 20.0));
    CHECK(as_printed(100 * known(found.panels[0].neutral_amps) / 50, 40.0));
}

TEST_CASE("c19: 100 W and 200 W behind an open neutral stand at 160 and 80 V, and that is told as a danger") {
    // Circuit theory; a slide deck of a course prints the loads and resistances.
    Scene scene(split);
    scene.panel.service = true;
    scene.reading(ThingKind::panel, "P", "A").volts = Volts(160);
    scene.reading(ThingKind::panel, "P", "B").volts = Volts(80);
    const Assessment found = assessed(scene);
    const Finding* finding = finding_of(found, "neutral-open-symptom");
    REQUIRE(finding != nullptr);
    CHECK(finding->severity == Severity::danger);
}
