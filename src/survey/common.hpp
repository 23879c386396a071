// SPDX-License-Identifier: MIT
#pragma once
#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "base/quantity.hpp"

namespace doorcard {

// Absent is nullopt: not seen or not known, never a fact. "Looked, and there is none" has a value of its own.

using Ids = std::vector<std::string>;

/// A TOML date, or date and time, with or without offset; as written, never converted.
struct Moment {
    int year = 0;
    int month = 0;
    int day = 0;
    std::optional<std::int64_t> nanosecond_of_day;  // absent: a bare date
    std::optional<int> offset_minutes;
    auto operator<=>(const Moment&) const = default;
};

/// A picture that stays beside the survey. `of` is an address, in a `[[photo]]` of its own; in the `photos` of a thing
/// it is absent.
struct Photo {
    std::string file;
    std::optional<std::string> of;
    std::optional<Moment> at;
    std::optional<std::string> note;
    bool operator==(const Photo&) const = default;
};
using Photos = std::vector<Photo>;

/// A length as it was written, in feet or metres.
struct Length {
    double written = 0;
    bool in_metres = false;
    bool operator==(const Length&) const = default;
    Feet feet() const { return Feet(in_metres ? written * feet_per_metre : written); }
};

/// An area as it was written, in square feet or square metres.
struct Area {
    double written = 0;
    bool in_metres = false;
    bool operator==(const Area&) const = default;
    double square_feet() const { return in_metres ? written * square_feet_per_square_metre : written; }
};

enum class Metal { copper, aluminum };

/// Conductors of a circuit, or of a panel's feeder. `size` is AWG or kcmil as in the tables: "12", "4/0", "250".
struct Wire {
    std::optional<std::string> size;
    std::optional<Metal> metal;
    std::optional<std::string> insulation;
    std::optional<Length> length;  ///< one way, panel to first outlet (feeder: whole)
    std::optional<Celsius> ambient_c;
    std::optional<int> conductors_together;  ///< current-carrying, its own included
    std::optional<Celsius> terminal_c;
    std::optional<std::string> method;        ///< cable | raceway | knob-and-tube | cord
    std::optional<std::string> raceway;       ///< pvc | steel | aluminum
    std::optional<int> sets;                  ///< feeder only: parallel sets, = 1
    std::optional<std::string> neutral_size;  ///< feeder only
    std::optional<std::string> ground_size;   ///< feeder only
    bool operator==(const Wire&) const = default;
};

enum class Guard { arc, ground, equipment_ground };  ///< ground: 4 to 6 mA; equipment_ground: 30 mA
using Guards = std::optional<std::vector<Guard>>;    ///< absent: not looked at; empty: looked, none

}  // namespace doorcard
