// SPDX-License-Identifier: MIT
#pragma once
#include <map>
#include <string>
#include <vector>

#include "published/scene.hpp"
#include "survey/system.hpp"

/// One load of a circuit that is put both to doorcard and to ngspice. `legs`: one letter to neutral, two line to line,
/// three a three-phase load. `lag` in degrees behind its voltage, negative leads. `third`: third harmonic over
/// fundamental. `shared`: its neutral is the shared one (N), else one of its own.
struct SpiceLoad {
    std::string legs;
    double amps = 0;
    double lag = 0;
    double third = 0;
    bool shared = true;
};

/// The loads of one panel, all on.
struct SpiceCircuit {
    std::string title;
    doorcard::System system = doorcard::System::split_120_240;
    std::vector<SpiceLoad> loads;

    /// The same as a survey: a circuit for each load, all shared ones naming the neutral N.
    Scene scene() const;
    bool has_thirds() const;
};

/// True where ngspice is installed; else says 'skipped: ngspice is absent'.
bool ngspice_present();

/// What ngspice prints of a netlist as `kNAME = value`, by name.
std::map<std::string, double> ngspice_prints(const std::string& netlist);

/// Currents that ngspice finds, one run for all circuits: "k0_n" the shared neutral of circuit 0, "k0_p" its panel's
/// neutral, "k0_a" "k0_b" "k0_c" its legs, in amperes RMS. Circuits without thirds are solved at 60 Hz as networks of
/// resistors, coils and capacitors; those with thirds as current waves in time, the RMS taken over whole periods.
std::map<std::string, double> ngspice_currents(const std::vector<SpiceCircuit>&);
