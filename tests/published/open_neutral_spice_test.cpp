// SPDX-License-Identifier: MIT
// What each leg gets with its neutral open, against ngspice: loads as impedances between their legs and a point that
// floats. Source: circuit theory, by another program; n07 and n08 of the reference are among them.
#include <doctest/doctest.h>
#include <fmt/format.h>

#include <cctype>
#include <cmath>
#include <numbers>
#include <random>

#include "published/covered_cases.hpp"
#include "published/spice_circuit.hpp"

using namespace doorcard;

namespace {

constexpr double radians = std::numbers::pi / 180;
constexpr double omega = 2 * std::numbers::pi * 60;

double degrees_of(System system, char leg) {
    if (system == System::split_120_240 || system == System::high_leg_240) return leg == 'A' ? 0 : 180;
    return leg == 'A' ? 0 : leg == 'B' ? -120 : 120;
}

/// 120 V over the load's amperes, from its leg to the floating point.
std::string branch_of(const std::string& tag, const std::string& leg, const std::string& middle,
                      const SpiceLoad& load) {
    const double ohms = 120 / load.amps, r = ohms * std::cos(load.lag * radians),
                 x = ohms * std::sin(load.lag * radians);
    if (std::abs(x) < 1e-9) return fmt::format("r{0} {1} {2} {3:.12g}\n", tag, leg, middle, r);
    const std::string reactive = x > 0 ? fmt::format("l{0} {0}i {1} {2:.12g}\n", tag, middle, x / omega)
                                       : fmt::format("c{0} {0}i {1} {2:.12g}\n", tag, middle, -1 / (omega * x));
    return fmt::format("r{0} {1} {0}i {2:.12g}\n", tag, leg, r) + reactive;
}

std::string lines_of(const std::string& k, const SpiceCircuit& circuit) {
    std::string lines = fmt::format("rref{0} {0}m 0 1e9\n", k);
    for (const char leg : std::string("abc"))
        lines += fmt::format("v{0}{1} {0}{1} 0 dc 0 ac 120 {2}\n", k, leg,
                             degrees_of(circuit.system, static_cast<char>(std::toupper(leg))));
    for (std::size_t l = 0; l < circuit.loads.size(); ++l) {
        const char leg = static_cast<char>(std::tolower(circuit.loads[l].legs.front()));
        lines += branch_of(fmt::format("{}x{}", k, l), fmt::format("{}{}", k, leg), k + "m", circuit.loads[l]);
    }
    return lines;
}

std::map<std::string, double> open_by_spice(const std::vector<SpiceCircuit>& circuits) {
    std::string lines, prints;
    for (std::size_t number = 0; number < circuits.size(); ++number) {
        const std::string k = fmt::format("k{}", number);
        lines += lines_of(k, circuits[number]);
        for (const char leg : std::string("abc"))
            prints += fmt::format("let {0}_{1} = mag(v({0}{1})-v({0}m))\nprint {0}_{1}\n", k, leg);
    }
    return ngspice_prints("open neutrals\n" + lines + ".control\nset numdgt=10\nac lin 1 60 60\n" + prints +
                          "quit\n.endc\n.end\n");
}

void compare_all(const std::vector<SpiceCircuit>& circuits) {
    if (!ngspice_present()) return;
    const std::map<std::string, double> spice = open_by_spice(circuits);
    for (std::size_t number = 0; number < circuits.size(); ++number) {
        CAPTURE(circuits[number].title);
        const Assessment found = assessed(circuits[number].scene());
        for (const auto& [leg, volts] : neutral_row(found, "N").open_volts) {
            CAPTURE(leg);
            const double theirs = spice.at(fmt::format("k{}_{}", number, static_cast<char>(std::tolower(leg))));
            CHECK(known(volts) == doctest::Approx(theirs).epsilon(1e-5));
        }
    }
}

const System split = System::split_120_240, wye = System::wye_208, high_leg = System::high_leg_240,
             network = System::network_120_208;

double amps_of_watts(double watts) { return watts / 120; }

}  // namespace

std::vector<reference::Case> covered_open_neutral_cases() { return {{"c19", "open_neutral_split"}}; }

TEST_CASE("worked cases: c19, 100 W and 200 W behind an open neutral get 160 and 80 V, 177.8 and 88.9 W") {
    const SpiceCircuit circuit{"c19", split, {{"A", amps_of_watts(100)}, {"B", amps_of_watts(200)}}};
    const Assessment found = assessed(circuit.scene());
    const auto& volts = neutral_row(found, "N").open_volts;
    CHECK(as_printed(known(volts.at('A')), 160));
    CHECK(as_printed(known(volts.at('B')), 80));
    CHECK(as_printed(100 * std::pow(known(volts.at('A')) / 120, 2), 177.777778));
    CHECK(as_printed(200 * std::pow(known(volts.at('B')) / 120, 2), 88.888889));
}

TEST_CASE("ngspice: legs behind an open neutral, split phase, wye and high leg, lagging and leading") {
    compare_all({
        {"n07: 100 W and 200 W", split, {{"A", amps_of_watts(100)}, {"B", amps_of_watts(200)}}},
        {"split phase, B lags", split, {{"A", 5}, {"B", 3, 36.87}}},
        {"split phase, one leads and one lags", split, {{"A", 4, -30}, {"B", 7, 40}}},
        {"several on a leg", split, {{"A", 5}, {"A", 1, 60}, {"B", 2}, {"B", 0.5, 20}}},
        {"n08: 100, 60 and 200 W on a wye",
         wye,
         {{"A", amps_of_watts(100)}, {"B", amps_of_watts(60)}, {"C", amps_of_watts(200)}}},
        {"wye, B lags and C leads", wye, {{"A", 10}, {"B", 6, 30}, {"C", 3, -40}}},
        {"two legs of a wye", network, {{"A", 8}, {"B", 2, 25}}},
        {"three on a wye panel's two legs", wye, {{"A", 8}, {"C", 2, 25}, {"C", 1}}},
        {"beside a high leg", high_leg, {{"A", 6}, {"C", 2, 30}}},
    });
}

TEST_CASE("ngspice: twenty open neutrals of random loads") {
    std::mt19937 random(20260517);
    const auto between = [&](double low, double high) {
        return low + (high - low) * static_cast<double>(random()) / static_cast<double>(std::mt19937::max());
    };
    std::vector<SpiceCircuit> circuits;
    for (int number = 0; number < 20; ++number) {
        SpiceCircuit circuit{"random " + std::to_string(number), number % 2 ? wye : split, {}};
        const std::string legs = number % 2 ? "ABC" : "AB";
        for (const char leg : legs) circuit.loads.push_back({std::string(1, leg), between(0.3, 15), between(-50, 70)});
        for (int more = 0; more < 3; ++more)
            circuit.loads.push_back({std::string(1, legs[random() % legs.size()]), between(0.3, 15), between(-20, 50)});
        circuits.push_back(circuit);
    }
    compare_all(circuits);
}
