// SPDX-License-Identifier: MIT
#pragma once
#include <map>

#include "survey/address.hpp"
#include "survey/common.hpp"

namespace doorcard {

/// `[[reading]]`: typed in from any meter. Amperes are RMS.
struct Reading {
    std::optional<Moment> at;
    std::optional<std::string> together;  ///< one name, or one `at`: one moment
    Address of;
    std::optional<Amperes> amps, amps_min, amps_max, amps_crest, inrush_a;
    std::optional<Volts> volts, volts_ground, volts_neutral_ground, volts_unloaded;
    std::optional<Amperes> test_load_a;
    std::map<std::string, Volts> volts_to;  ///< address -> hot to hot
    std::optional<Watts> watts;
    std::optional<double> power_factor;
    std::optional<bool> leading;
    std::optional<double> third_harmonic;
    std::optional<Milliamperes> leakage_ma;
    std::optional<std::string> noise;  ///< quiet | some | strong
    std::optional<double> noise_db;
    std::optional<std::string> neutral_to_ground;  ///< apart | touching
    std::optional<Ohms> neutral_to_ground_ohm;
    std::optional<Celsius> temp_c, ambient_c;
    std::optional<bool> low_impedance;
    std::optional<double> hours;
    std::optional<std::string> instrument;
    std::optional<std::string> by;
    std::optional<std::string> note;
    std::optional<Photos> photos;
    bool operator==(const Reading&) const = default;
};

}  // namespace doorcard
