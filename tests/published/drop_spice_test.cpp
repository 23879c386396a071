// SPDX-License-Identifier: MIT
// Voltage drop against ngspice: branch circuits with loads along the way, feeders above them, and a joint behind an
// outlet, each solved in a real run as a network of resistances and currents. Source: circuit theory, by another
// program; ohms per 1000 ft: NEC Chapter 9 Table 8 (12 AWG solid copper 1.93, 14 AWG 3.07, 10 AWG 1.21, 6 AWG 0.491)
// and Table 9 (4/0 aluminum in PVC 0.10 and 0.041).
#include <doctest/doctest.h>
#include <fmt/format.h>

#include <cmath>
#include <complex>
#include <numbers>

#include "published/spice_circuit.hpp"

using namespace doorcard;

namespace {

constexpr double radians = std::numbers::pi / 180;

/// An outlet of a run: the one before it (-1: the panel), the feet from there, what it draws and its lag.
struct Stop {
    int before;
    double feet, amps, lag = 0;
};

struct Run {
    std::string title;
    const char* size;
    double ohms;  ///< of 1000 ft of one conductor
    std::vector<Stop> stops;
};

std::string node(const char* side, std::size_t run, int stop) { return fmt::format("{}{}x{}", side, run, stop + 1); }

/// 120 V, hot and neutral alike along the run, currents as they are drawn.
std::string lines_of(std::size_t number, const Run& run) {
    std::string lines = fmt::format("v{0} {1} {2} dc 0 ac 120 0\nrr{0} {2} 0 1\n", number, node("h", number, -1),
                                    node("n", number, -1));
    for (std::size_t s = 0; s < run.stops.size(); ++s) {
        const Stop& stop = run.stops[s];
        const double ohms = run.ohms * stop.feet / 1000;
        for (const char* side : {"h", "n"})
            lines += fmt::format("r{3}{0}x{4} {1} {2} {5:.12g}\n", number, node(side, number, stop.before),
                                 node(side, number, static_cast<int>(s)), side, s, ohms);
        lines += fmt::format("i{0}x{1} {2} {3} dc 0 ac {4} {5}\n", number, s, node("h", number, static_cast<int>(s)),
                             node("n", number, static_cast<int>(s)), stop.amps, -stop.lag);
    }
    return lines;
}

std::map<std::string, double> drops_by_spice(const std::vector<Run>& runs) {
    std::string lines, prints;
    for (std::size_t number = 0; number < runs.size(); ++number) {
        lines += lines_of(number, runs[number]);
        for (std::size_t s = 0; s < runs[number].stops.size(); ++s)
            prints += fmt::format("let k{0}_{1} = 120-mag(v({2})-v({3}))\nprint k{0}_{1}\n", number, s,
                                  node("h", number, static_cast<int>(s)), node("n", number, static_cast<int>(s)));
    }
    return ngspice_prints("drops\n" + lines + ".control\nset numdgt=10\nac lin 1 60 60\n" + prints +
                          "quit\n.endc\n.end\n");
}

Scene scene_of(const Run& run) {
    Scene scene(System::split_120_240);
    Circuit& circuit = scene.circuit("A", 60);  // above all currents: none is held to it
    circuit.wire = Wire();
    circuit.wire->size = run.size;
    circuit.wire->metal = Metal::copper;
    for (const Stop& stop : run.stops) {
        Outlet& outlet = scene.outlet(circuit, OutletKind::receptacle);
        outlet.upstream = stop.before < 0 ? "home-run" : "o" + std::to_string(stop.before + 1);
        outlet.run = Length{stop.feet, false};
        if (stop.amps == 0) continue;
        Load& load = scene.load_at(outlet, stop.amps);
        load.power_factor = std::cos(stop.lag * radians);
        load.leading = stop.lag < 0;
    }
    return scene;
}

const std::vector<Run> runs = {
    {"n19: 5 A at 50 ft, 7 A 20 ft on", "12", 1.93, {{-1, 50, 5}, {0, 20, 7}}},
    {"eight alike in a row",
     "14",
     3.07,
     {{-1, 30, 1}, {0, 8, 1}, {1, 8, 1}, {2, 8, 1}, {3, 8, 1}, {4, 8, 1}, {5, 8, 1}, {6, 8, 1}}},
    {"a fork: a heavy near branch and a light far one",
     "12",
     1.93,
     {{-1, 40, 2}, {0, 15, 9}, {0, 90, 1.5}, {2, 30, 0.5}}},
    {"the far one stands worst though it draws least", "10", 1.21, {{-1, 10, 12}, {0, 200, 3}}},
    {"two home runs of one circuit", "12", 1.93, {{-1, 25, 8}, {-1, 110, 6}}},
    {"a long run of nothing in between", "12", 1.93, {{-1, 60, 0}, {0, 60, 0}, {1, 60, 8}}},
};

}  // namespace

TEST_CASE("ngspice: the drop at every outlet of runs with loads along the way") {
    if (!ngspice_present()) return;
    const std::map<std::string, double> spice = drops_by_spice(runs);
    for (std::size_t number = 0; number < runs.size(); ++number) {
        CAPTURE(runs[number].title);
        const Assessment found = assessed(scene_of(runs[number]));
        const LoadFigures& row = circuit_row(found, "c1");
        double worst = 0;
        for (const auto& [key, volts] : spice)
            if (key.starts_with(fmt::format("k{}_", number))) worst = std::max(worst, volts);
        CHECK(known(row.voltage_drop_percent) == doctest::Approx(100 * worst / 120).epsilon(1e-6));
        CHECK(row.outlet_drops.size() == runs[number].stops.size());
        for (const OutletDrop& drop : row.outlet_drops) {
            CAPTURE(drop.outlet);
            const double volts = spice.at(fmt::format("k{}_{}", number, std::stoi(drop.outlet.substr(1)) - 1));
            CHECK(drop.voltage_drop_percent == doctest::Approx(100 * volts / 120).epsilon(1e-6));
        }
    }
}

TEST_CASE("ngspice: small wire counts its resistance whole, so that lagging loads never drop more than is said") {
    if (!ngspice_present()) return;
    const std::vector<Run> lagging = {{"lagging 30 and 60", "12", 1.93, {{-1, 80, 8, 30}, {0, 40, 5, 60}}},
                                      {"leading beside lagging", "12", 1.93, {{-1, 80, 8, -20}, {0, 40, 5, 45}}}};
    const std::map<std::string, double> spice = drops_by_spice(lagging);
    for (std::size_t number = 0; number < lagging.size(); ++number) {
        const Assessment found = assessed(scene_of(lagging[number]));
        for (const OutletDrop& drop : circuit_row(found, "c1").outlet_drops) {
            const double volts = spice.at(fmt::format("k{}_{}", number, std::stoi(drop.outlet.substr(1)) - 1));
            CHECK(drop.voltage_drop_percent >= 100 * volts / 120 - 1e-9);
            CHECK(drop.voltage_drop_percent < 100 * 3 * volts / 120);
        }
    }
}

namespace {

/// A panel SUB behind 60 A (or more) of MAIN, with a like circuit on each leg.
Survey with_feeder(const Wire& feeder, double amps, double lag, double branch_feet, double main_a) {
    Scene scene(System::split_120_240);
    scene.panel.fed_by = {"utility"};
    for (const char* leg : {"A", "B"}) {
        Circuit& circuit = scene.circuit(leg, 200);
        circuit.wire = Wire();
        circuit.wire->size = "12";
        circuit.wire->metal = Metal::copper;
        circuit.wire->length = Length{branch_feet, false};
        Load& load = scene.load(circuit, amps);
        load.power_factor = std::cos(lag * radians);
    }
    Survey survey = scene.survey();
    Source utility;
    utility.id = "utility";
    utility.system = System::split_120_240;
    survey.sources = Table<Source>({utility});
    Panel top;
    top.id = "TOP";
    top.fed_by = {"utility"};
    top.system = System::split_120_240;
    Breaker feed;
    feed.id = "feed";
    feed.panel = "TOP";
    feed.spaces = {1, 3};
    feed.amps = Amperes(main_a);
    Panel below = scene.panel;
    below.fed_by = {"feed"};
    below.feeder = feeder;
    std::vector<Breaker> breakers = survey.breakers.rows();
    breakers.push_back(feed);
    survey.breakers = Table<Breaker>(breakers);
    survey.panels = Table<Panel>({top, below});
    return survey;
}

/// Percent lost at the end of a branch on leg A behind a balanced feeder, by ngspice: ohms and reactance of one feeder
/// conductor, ohms of one branch conductor.
double percent_by_spice(double r, double x, double branch, double amps, double lag) {
    const double henry = x / (2 * std::numbers::pi * 60);
    const auto leg = [&](const char* name, double degrees) {
        return fmt::format(
            "v{0} {0}0 0 dc 0 ac 120 {1}\nr{0} {0}0 {0}1 {2:.12g}\nl{0} {0}1 {0}2 {3:.12g}\n"
            "rb{0} {0}2 {0}3 {4:.12g}\nrn{0} {0}n bus {4:.12g}\ni{0} {0}3 {0}n dc 0 ac {5} {6}\n",
            name, degrees, r, std::max(henry, 1e-12), branch, amps, degrees - lag);
    };
    const std::string deck = "feeder\n" + leg("a", 0) + leg("b", 180) + fmt::format("rneutral bus 0 {:.12g}\n", r) +
                             ".control\nset numdgt=10\nac lin 1 60 60\nlet k0 = 100*(120-mag(v(a3)-v(an)))/120\nprint "
                             "k0\nquit\n.endc\n.end\n";
    return ngspice_prints(deck).at("k0");
}

}  // namespace

TEST_CASE("ngspice: feeders above a branch add what they lose, balanced, through 1 AWG exactly") {
    if (!ngspice_present()) return;
    Wire feeder;
    feeder.size = "6";
    feeder.metal = Metal::copper;
    feeder.length = Length{150, false};
    const Assessment found = assess(network_of(with_feeder(feeder, 11, 0, 45, 60)), nec_2023());
    const double theirs = percent_by_spice(0.491 * 0.15, 0, 1.93 * 0.045, 11, 0);
    CHECK(known(circuit_row(found, "c1").total_drop_percent) == doctest::Approx(theirs).epsilon(1e-6));
}

TEST_CASE("ngspice: a feeder of 4/0 with lagging load by R cos + X sin, within 2 in 100 of the drop") {
    if (!ngspice_present()) return;
    Wire feeder;
    feeder.size = "4/0";
    feeder.metal = Metal::aluminum;
    feeder.length = Length{400, false};
    for (const double lag : {0.0, 20.0, 36.87}) {
        CAPTURE(lag);
        const Assessment found = assess(network_of(with_feeder(feeder, 150, lag, 0, 200)), nec_2023());
        const double theirs = percent_by_spice(0.10 * 0.4, 0.041 * 0.4, 1e-9, 150, lag);
        CAPTURE(theirs);
        CHECK(known(circuit_row(found, "c1").total_drop_percent) == doctest::Approx(theirs).epsilon(0.02));
    }
}

TEST_CASE("ngspice: a joint of 0.2 ohm behind 75 ft of 12 AWG, n22: readings with and without load find it") {
    if (!ngspice_present()) return;
    const std::string deck =
        "joint\nva s n0 dc 0 ac 121 0\nrs s a0 0.05\nrh a0 a1 0.14475\nrj a1 a 0.2\nrl a n 10\nrn n n0 0.14475\n"
        "vb t n0 dc 0 ac 121 0\nrt t b0 0.05\nrg b0 b1 0.14475\nrk b1 b 0.2\nro b m 1e9\nrm m n0 0.14475\nrr n0 0 1\n"
        ".control\nset numdgt=10\nac lin 1 60 60\nlet kloaded = mag(v(a)-v(n))\nlet kopen = mag(v(b)-v(m))\nprint "
        "kloaded\nprint kopen\nquit\n.endc\n.end\n";
    const std::map<std::string, double> spice = ngspice_prints(deck);
    Scene scene(System::split_120_240);
    scene.panel.fed_by = {"utility"};
    Circuit& circuit = scene.circuit("A", 15);
    circuit.wire = Wire();
    circuit.wire->size = "12";
    circuit.wire->metal = Metal::copper;
    circuit.wire->length = Length{75, false};
    Outlet& outlet = scene.outlet(circuit, OutletKind::receptacle);
    outlet.upstream = "home-run";
    scene.reading(ThingKind::outlet, outlet.id).volts = Volts(spice.at("kopen"));
    Reading& loaded = scene.reading(ThingKind::outlet, outlet.id);
    loaded.volts = Volts(spice.at("kloaded"));
    loaded.amps = Amperes(spice.at("kloaded") / 10);
    Survey survey = scene.survey();
    Source utility;
    utility.id = "utility";
    survey.sources = Table<Source>({utility});
    const Assessment found = assess(network_of(survey), nec_2023());
    REQUIRE(found.joints.size() == 1);
    CHECK(found.joints[0].loop.value == doctest::Approx(0.5395).epsilon(1e-5));
    CHECK(known(found.joints[0].joint) == doctest::Approx(0.25).epsilon(1e-4));  // the joint, and the source's 0.05
    const Finding* finding = finding_of(found, "joint-resistance");
    REQUIRE(finding != nullptr);
    CHECK(finding->severity == Severity::warning);
}
