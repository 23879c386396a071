// SPDX-License-Identifier: MIT
#include "published/spice_circuit.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <numbers>

using namespace doorcard;

namespace {

constexpr double radians = std::numbers::pi / 180;
constexpr double omega = 2 * std::numbers::pi * 60;

struct Supply {
    double volts, degrees;
};

/// Volts and angle of a leg to neutral, by circuit theory: wye legs 120 degrees apart, split phase 180, the high leg
/// 120 sqrt(3) at right angles (a delta with its A-C side centre-tapped).
Supply supply_of(System system, char leg) {
    if (system == System::high_leg_240) {
        if (leg == 'B') return {120 * std::numbers::sqrt3, -90};
        return {120, leg == 'A' ? 0.0 : 180.0};
    }
    if (system == System::split_120_240) return {120, leg == 'A' ? 0.0 : 180.0};
    return {120, leg == 'A' ? 0.0 : leg == 'B' ? -120.0 : 120.0};
}

std::complex<double> volts_of(System system, char leg) {
    const Supply supply = supply_of(system, leg);
    return std::polar(supply.volts, supply.degrees * radians);
}

char lower(char leg) { return static_cast<char>(std::tolower(leg)); }

/// Netlist lines of one circuit, in either manner.
class Deck {
public:
    Deck(std::size_t number, const SpiceCircuit& circuit) : k_(fmt::format("k{}", number)), circuit_(circuit) {}

    std::string lines() {
        for (const char leg : legs()) source(leg);
        add("v{0}p {0}p 0 dc 0", k_);     // the panel's neutral, measured
        add("v{0}n {0}n {0}p dc 0", k_);  // the shared neutral, measured, on its way there
        for (const SpiceLoad& load : circuit_.loads) place(load);
        return text_;
    }

    std::string legs() const { return facts(circuit_.system).legs == 3 ? "ABC" : "AB"; }

private:
    template <class... Values>
    void add(fmt::format_string<Values...> pattern, Values&&... values) {
        text_ += fmt::format(pattern, std::forward<Values>(values)...) + "\n";
    }

    void source(char leg) {
        const Supply supply = supply_of(circuit_.system, leg);
        add("v{0}{1} {0}{1} 0 dc 0 ac {2:.12g} {3:.12g} sin(0 {4:.12g} 60 0 0 {3:.12g})", k_, lower(leg), supply.volts,
            supply.degrees, supply.volts * std::numbers::sqrt2);
    }

    std::string leg_node(char leg) const { return k_ + lower(leg); }

    void place(const SpiceLoad& load) {
        const std::string tag = fmt::format("{}x{}", k_, count_++);
        if (load.legs.size() == 1) return branch(tag, load, leg_node(load.legs[0]), k_ + (load.shared ? "n" : "p"));
        if (load.legs.size() == 2) return branch(tag, load, leg_node(load.legs[0]), leg_node(load.legs[1]));
        for (const char leg : load.legs) star(tag + lower(leg), tag + "m", load, leg);
    }

    void branch(const std::string& tag, const SpiceLoad& load, const std::string& from, const std::string& to) {
        std::complex<double> volts = volts_of(circuit_.system, load.legs[0]);
        if (load.legs.size() == 2) volts -= volts_of(circuit_.system, load.legs[1]);
        if (circuit_.has_thirds())
            waves(tag, load, std::arg(volts) / radians, from, to);
        else
            impedance(tag, std::abs(volts) / load.amps, load.lag, from, to);
    }

    /// A branch of a star whose middle floats. Across each branch stands the leg's volts to the middle of the three.
    void star(const std::string& tag, const std::string& middle, const SpiceLoad& load, char leg) {
        const std::complex<double> centre =
            (volts_of(circuit_.system, 'A') + volts_of(circuit_.system, 'B') + volts_of(circuit_.system, 'C')) / 3.0;
        impedance(tag, std::abs(volts_of(circuit_.system, leg) - centre) / load.amps, load.lag, leg_node(leg), middle);
    }

    void impedance(const std::string& tag, double ohms, double lag, const std::string& from, const std::string& to) {
        const double resistance = ohms * std::cos(lag * radians), reactance = ohms * std::sin(lag * radians);
        if (std::abs(reactance) < 1e-9) return add("r{} {} {} {:.12g}", tag, from, to, resistance);
        add("r{} {} {}i {:.12g}", tag, from, tag, resistance);
        if (reactance > 0)
            add("l{} {}i {} {:.12g}", tag, tag, to, reactance / omega);
        else
            add("c{} {}i {} {:.12g}", tag, tag, to, -1 / (omega * reactance));
    }

    void waves(const std::string& tag, const SpiceLoad& load, double degrees, const std::string& from,
               const std::string& to) {
        const double fundamental = load.amps / std::hypot(1, load.third) * std::numbers::sqrt2;
        add("i{}f {} {} sin(0 {:.12g} 60 0 0 {:.12g})", tag, from, to, fundamental, degrees - load.lag);
        add("i{}t {} {} sin(0 {:.12g} 180 0 0 {:.12g})", tag, from, to, fundamental * load.third, 3 * degrees);
    }

    std::string k_;
    const SpiceCircuit& circuit_;
    std::string text_;
    int count_ = 0;
};

std::string measured(std::size_t number, const SpiceCircuit& circuit) {
    std::string lines;
    for (const char what : "pn" + Deck(number, circuit).legs()) {
        const std::string name = fmt::format("k{}{}", number, lower(what)),
                          key = fmt::format("k{}_{}", number, lower(what));
        if (circuit.has_thirds())
            lines += fmt::format("meas tran {} rms i(v{}) from=0.05 to=0.1\n", key, name);
        else
            lines += fmt::format("let {0} = mag(i(v{1}))\nprint {0}\n", key, name);
    }
    return lines;
}

std::string deck_of(const std::vector<SpiceCircuit>& circuits, bool thirds) {
    std::string lines, measures;
    for (std::size_t number = 0; number < circuits.size(); ++number)
        if (circuits[number].has_thirds() == thirds) {
            lines += Deck(number, circuits[number]).lines();
            measures += measured(number, circuits[number]);
        }
    if (lines.empty()) return "";
    return "currents of panels\n" + lines + ".control\nset numdgt=10\n" +
           (thirds ? "tran 10u 0.1 0 10u\n" : "ac lin 1 60 60\n") + measures + "quit\n.endc\n.end\n";
}

/// What a run prints as `name = value`, by name.
void collect(const std::filesystem::path& output, std::map<std::string, double>& currents) {
    std::ifstream file(output);
    for (std::string line; std::getline(file, line);) {
        const std::size_t equals = line.find('=');
        if (equals == std::string::npos || !line.starts_with("k")) continue;
        currents[line.substr(0, line.find(' '))] = std::strtod(line.c_str() + equals + 1, nullptr);
    }
}

/// A new folder for one run, gone with it.
struct Folder {
    Folder() {
        std::string pattern = (std::filesystem::temp_directory_path() / "circuits-XXXXXX").string();
        REQUIRE(mkdtemp(pattern.data()) != nullptr);
        path = pattern;
    }
    ~Folder() { std::filesystem::remove_all(path); }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    std::filesystem::path path;
};

}  // namespace

Scene SpiceCircuit::scene() const {
    Scene made(system);
    for (const SpiceLoad& load : loads) {
        Circuit& circuit = made.circuit(load.legs, 20);
        if (load.shared && load.legs.size() == 1) circuit.neutral = "N";
        Load& placed = made.load(circuit, load.amps);
        placed.power_factor = std::cos(load.lag * radians);
        placed.leading = load.lag < 0;
        placed.third_harmonic = load.third;
        placed.legs = load.legs;
        if (load.legs.size() == 3) placed.phases = 3;
    }
    return made;
}

bool SpiceCircuit::has_thirds() const {
    return std::ranges::any_of(loads, [](const SpiceLoad& load) { return load.third > 0; });
}

bool ngspice_present() {
    if (std::system("command -v ngspice > /dev/null 2>&1") == 0) return true;
    std::cout << "skipped: ngspice is absent\n";
    return false;
}

std::map<std::string, double> ngspice_prints(const std::string& netlist) {
    const Folder folder;
    std::map<std::string, double> found;
    const auto input = folder.path / "panel.cir", output = folder.path / "panel.out";
    std::ofstream(input) << netlist;
    const std::string command = fmt::format("ngspice -b '{}' > '{}' 2>&1", input.string(), output.string());
    REQUIRE(std::system(command.c_str()) >= 0);
    collect(output, found);
    return found;
}

std::map<std::string, double> ngspice_currents(const std::vector<SpiceCircuit>& circuits) {
    std::map<std::string, double> currents;
    for (const bool thirds : {false, true}) {
        const std::string deck = deck_of(circuits, thirds);
        if (!deck.empty()) currents.merge(ngspice_prints(deck));
    }
    return currents;
}
