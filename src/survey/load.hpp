// SPDX-License-Identifier: MIT
#pragma once
#include "survey/common.hpp"

namespace doorcard {

enum class Duty {
    general,
    lighting,
    range,
    cooktop,
    oven,
    dryer,
    water_heater,
    fixed_appliance,
    heating,
    cooling,
    heat_pump,
    motor,
    ev,
    kitchen,
    show_window,
    sign,
    welder,
    other
};
enum class Connection { cord, fixed };

struct Load {
    std::string id;
    std::optional<std::string> outlet;  ///< at most one of outlet, circuit, panel
    std::optional<std::string> circuit;
    std::optional<std::string> panel;
    std::optional<std::string> title;
    std::optional<VoltAmperes> va;  ///< of ONE, as are watts, amps, hp; at most one, but hp may stand beside amps
    std::optional<Watts> watts;
    std::optional<Amperes> amps;
    std::optional<std::string> hp;       ///< as written: "3/4", or a number: "1.5", "5"
    std::optional<int> count;            ///< = 1
    std::optional<Volts> volts;          ///< = nominal, between the conductors it uses
    std::optional<int> phases;           ///< = 1
    std::optional<std::string> legs;     ///< "A" | "AB" | "ABC" | "AN+BN"
    std::optional<double> power_factor;  ///< = 1, hp: 0.8
    std::optional<bool> leading;
    std::optional<double> third_harmonic;  ///< = 0; third over fundamental, RMS
    std::optional<bool> continuous;        ///< absent: by duty
    std::optional<Duty> duty;              ///< = general
    std::optional<Connection> connection;  ///< = cord on a receptacle, else fixed
    std::optional<Amperes> min_circuit_a;
    std::optional<Amperes> max_device_a;
    std::optional<double> gallons;
    std::optional<bool> storage;
    std::optional<bool> per_unit;
    std::optional<std::string> control;
    std::optional<std::string> supplements;
    std::optional<bool> locked_out;
    std::optional<Ids> never_with;
    std::optional<std::string> managed;
    std::optional<Milliamperes> leakage_ma;
    std::optional<std::string> leakage_kind;
    std::optional<Amperes> largest_motor_a;
    std::optional<Length> length;  ///< show window
    std::optional<std::string> keep_on;
    std::optional<Moment> backed_up_until;
    std::optional<std::string> note;
    std::optional<Photos> photos;
    bool operator==(const Load&) const = default;

    Duty duty_or_general() const { return duty.value_or(Duty::general); }
    int count_or_one() const { return count.value_or(1); }
};

/// `[[managed]]`: loads under one energy management system.
struct Managed {
    std::string id;
    std::optional<Amperes> max_a;
    std::optional<std::string> source;
    std::optional<std::string> note;
    std::optional<Photos> photos;
    bool operator==(const Managed&) const = default;
};

}  // namespace doorcard
