// SPDX-License-Identifier: MIT
// Neutral and leg currents against ngspice: each circuit is solved by ngspice in a real run, and put as a survey
// through network and assess. Source: circuit theory, by another program.
#include <doctest/doctest.h>

#include <random>

#include "published/spice_circuit.hpp"

using namespace doorcard;

namespace {

constexpr double tolerance = 1e-4;

bool alike(double ours, double theirs) {
    return std::abs(ours - theirs) <= tolerance * std::max(1.0, std::abs(theirs));
}

bool any_shared(const SpiceCircuit& circuit) {
    for (const SpiceLoad& load : circuit.loads)
        if (load.shared && load.legs.size() == 1) return true;
    return false;
}

/// Neutral, panel neutral and legs of one circuit, ours against ngspice's.
void compare(const SpiceCircuit& circuit, std::size_t number, const std::map<std::string, double>& spice) {
    CAPTURE(circuit.title);
    const std::string k = "k" + std::to_string(number) + "_";
    const Assessment found = assessed(circuit.scene());
    if (any_shared(circuit)) {
        CAPTURE(spice.at(k + "n"));
        CAPTURE(known(neutral_row(found, "N").amps));
        CHECK(alike(known(neutral_row(found, "N").amps), spice.at(k + "n")));
    }
    REQUIRE(found.panels.size() == 1);
    CAPTURE(spice.at(k + "p"));
    CAPTURE(known(found.panels[0].neutral_amps));
    CHECK(alike(known(found.panels[0].neutral_amps), spice.at(k + "p")));
    for (const PanelLegFigures& leg : found.panels[0].legs) {
        CAPTURE(leg.leg);
        const double theirs = spice.at(k + static_cast<char>(std::tolower(leg.leg)));
        CAPTURE(theirs);
        CAPTURE(known(leg.amps));
        CHECK(alike(known(leg.amps), theirs));
    }
}

void compare_all(const std::vector<SpiceCircuit>& circuits) {
    if (!ngspice_present()) return;
    const std::map<std::string, double> spice = ngspice_currents(circuits);
    for (std::size_t number = 0; number < circuits.size(); ++number) compare(circuits[number], number, spice);
}

/// The highest neutral current that ngspice finds over every choice of which loads are on, each held to 20 A.
double highest_of_subsets(const SpiceCircuit& circuit) {
    std::vector<SpiceCircuit> subsets;
    for (std::size_t chosen = 1; chosen < std::size_t{1} << circuit.loads.size(); ++chosen) {
        SpiceCircuit subset{circuit.title, circuit.system, {}};
        for (std::size_t load = 0; load < circuit.loads.size(); ++load)
            if (chosen >> load & 1) subset.loads.push_back(circuit.loads[load]);
        for (SpiceLoad& load : subset.loads) load.amps = std::min(load.amps, 20.0);
        subsets.push_back(subset);
    }
    double highest = 0;
    for (const auto& [key, amps] : ngspice_currents(subsets))
        if (key.ends_with("_n")) highest = std::max(highest, amps);
    return highest;
}

const System split = System::split_120_240, wye = System::wye_208, high_leg = System::high_leg_240,
             network = System::network_120_208;

}  // namespace

TEST_CASE("ngspice: shared neutrals of split phase, two and three legs of a wye, and a high leg") {
    compare_all({
        {"split phase, 15 and 10 A", split, {{"A", 15}, {"B", 10}}},
        {"split phase, 12 A and 12 A lagging 30", split, {{"A", 12}, {"B", 12, 30}}},
        {"split phase, one leads and one lags", split, {{"A", 16, -25}, {"B", 9, 36.87}}},
        {"both hots on leg A", split, {{"A", 16}, {"A", 15}}},
        {"three circuits on one neutral", split, {{"A", 10}, {"A", 10}, {"B", 8}}},
        {"a neutral of its own beside the shared one", split, {{"A", 11}, {"B", 7}, {"A", 5, 20, 0, false}}},
        {"two legs of a wye, 10 A each", wye, {{"A", 10}, {"B", 10}}},
        {"two legs of a wye, 12 and 7 A", wye, {{"A", 12}, {"C", 7}}},
        {"a 120/208 panel, B lags to 0.8", network, {{"A", 20}, {"B", 20, 36.8698976458}}},
        {"a 120/208 panel, B leads to 0.8", network, {{"A", 20}, {"B", 20, -36.8698976458}}},
        {"wye, 10, 8 and 6 A", wye, {{"A", 10}, {"B", 8}, {"C", 6}}},
        {"wye, B lags and C leads", wye, {{"A", 10}, {"B", 10, 30}, {"C", 10, -30}}},
        {"wye, B leads and C lags", wye, {{"A", 10}, {"B", 10, -30}, {"C", 10, 30}}},
        {"high leg, 15 A on A and 10 A on C", high_leg, {{"A", 15}, {"C", 10}}},
    });
}

TEST_CASE("ngspice: line-to-line and three-phase loads beside never reach a neutral") {
    compare_all({
        {"split phase beside a 240 V load", split, {{"A", 15}, {"B", 10}, {"AB", 20}}},
        {"split phase beside a lagging 240 V load", split, {{"A", 15}, {"B", 10, 15}, {"AB", 20, 40}}},
        {"wye beside a 208 V load", wye, {{"A", 10}, {"B", 8}, {"C", 6}, {"AB", 20}}},
        {"wye beside 208 V loads on all pairs", wye, {{"A", 9}, {"AB", 12, 20}, {"BC", 7, -10}, {"CA", 5}}},
        {"120/208 panel beside a 208 V load", network, {{"A", 9}, {"B", 4}, {"AB", 12, 20}}},
        {"wye beside a three-phase load", wye, {{"A", 10}, {"B", 3}, {"ABC", 14, 36.87}}},
        {"high leg beside loads of 240 V", high_leg, {{"A", 15}, {"C", 10}, {"AB", 8}, {"BC", 6, 30}}},
        {"high leg beside a three-phase load", high_leg, {{"A", 15}, {"C", 10}, {"ABC", 12, 30}, {"CA", 9}}},
    });
}

TEST_CASE("ngspice: thirds add up on the neutral of a wye and cancel on split phase") {
    compare_all({
        {"wye, thirds of one half on each leg", wye, {{"A", 8, 0, 0.5}, {"B", 8, 0, 0.5}, {"C", 8, 0, 0.5}}},
        {"wye, unlike thirds and lags", wye, {{"A", 12, 10, 0.7}, {"B", 9, 25, 0.2}, {"C", 5, -20, 0.4}}},
        {"two legs of a wye with thirds", wye, {{"A", 8, 0, 0.5}, {"B", 8, 0, 0.5}}},
        {"120/208 panel with thirds on one leg", network, {{"A", 14, 0, 0.8}, {"B", 10}}},
        {"split phase with like thirds", split, {{"A", 10, 0, 0.4}, {"B", 10, 0, 0.4}}},
        {"split phase with unlike thirds", split, {{"A", 10, 0, 0.6}, {"B", 7, 30, 0.1}}},
        {"same leg with thirds", split, {{"A", 10, 0, 0.6}, {"A", 7, 0, 0.3}}},
        {"high leg with thirds", high_leg, {{"A", 10, 0, 0.6}, {"C", 7, 15, 0.3}}},
        {"wye with thirds line to line beside",
         wye,
         {{"A", 6, 0, 0.5}, {"B", 6}, {"AB", 10, 0, 0.6}, {"CA", 4, 20, 0.2}}},
    });
}

TEST_CASE("ngspice: twenty panels of random loads") {
    std::mt19937 random(20260514);
    const auto between = [&](double low, double high) {
        return low + (high - low) * static_cast<double>(random()) / static_cast<double>(std::mt19937::max());
    };
    const auto one_of = [&](const std::vector<std::string>& choices) { return choices[random() % choices.size()]; };
    std::vector<SpiceCircuit> circuits;
    for (int number = 0; number < 20; ++number) {
        SpiceCircuit circuit{
            "random " + std::to_string(number), std::vector{split, wye, high_leg, network}[random() % 4], {}};
        const bool three = facts(circuit.system).legs == 3, thirds = number % 3 == 0;
        const std::vector<std::string> to_neutral = circuit.system == high_leg ? std::vector<std::string>{"A", "C"}
                                                    : three                    ? std::vector<std::string>{"A", "B", "C"}
                                                                               : std::vector<std::string>{"A", "B"};
        const std::vector<std::string> across =
            three ? std::vector<std::string>{"AB", "BC", "CA"} : std::vector<std::string>{"AB"};
        for (int load = 0; load < 6; ++load)
            circuit.loads.push_back({load < 4 ? one_of(to_neutral) : one_of(across), between(0.5, 20), between(-50, 70),
                                     thirds ? between(0, 0.9) : 0, load != 3});
        if (three && !thirds) circuit.loads.push_back({"ABC", between(1, 15), between(0, 60), 0, false});
        circuits.push_back(circuit);
    }
    compare_all(circuits);
}

TEST_CASE("ngspice: the highest neutral over every choice of circuits that are on, each held to its breaker") {
    const std::vector<SpiceCircuit> circuits = {
        {"split phase: the larger leg alone", split, {{"A", 18}, {"B", 17}}},
        {"split phase: both on leg A without the one on B", split, {{"A", 12}, {"A", 9, 25}, {"B", 16}}},
        {"a load above its breaker counts as the breaker", split, {{"A", 31, 10}, {"B", 4, -40}}},
        {"wye: a leading and a lagging leg", wye, {{"A", 17, 35}, {"B", 15, -30}, {"C", 9}}},
        {"wye with thirds: all on", wye, {{"A", 14, 0, 0.8}, {"B", 13, 20, 0.7}, {"C", 25, 0, 0.6}}},
    };
    if (!ngspice_present()) return;
    for (const SpiceCircuit& circuit : circuits) {
        CAPTURE(circuit.title);
        Scene scene = circuit.scene();
        for (Circuit& one : scene.circuits) {
            one.wire = Wire();
            one.wire->size = "14";
            one.wire->metal = Metal::copper;
            one.wire->insulation = "NM-B";
            one.neutral_size = "14";
        }
        const Assessment found = assessed(scene);
        CHECK(known(neutral_row(found, "N").ampacity_a) == 15);
        const Finding* finding = finding_of(found, "neutral-overload");
        REQUIRE(finding != nullptr);
        const double theirs = highest_of_subsets(circuit);
        CAPTURE(theirs);
        CAPTURE(known(finding->value));
        CHECK(alike(known(finding->value), theirs));
    }
}
