// SPDX-License-Identifier: MIT
#pragma once
#include <complex>
#include <map>
#include <optional>
#include <string>

#include "base/quantity.hpp"
#include "survey/panel.hpp"
#include "survey/system.hpp"

namespace doorcard {

/// RMS phasor in amperes or per unit.
using Phasor = std::complex<double>;

/// Contract 2: the high leg's nominal voltage to neutral.
constexpr Volts high_leg_volts(208);

/// A phasor of size 1 at an angle in degrees.
Phasor unit_phasor(double degrees);

/// What stands at a panel's bus: its system, which of the building's legs come in, and where they stand (contract 2).
struct PanelSupply {
    std::optional<System> system;  ///< nullopt: unknown, and nothing that needs volts is reckoned
    std::string legs;              ///< the building's letters that come in, ascending: "AB", "ABC", "B"
    std::string down;         ///< letters of the rows, repeating: from the physical top where given, else from space 1
    bool down_given = false;  ///< `legs_down` was given; false: assumed
    char high_leg = 0;        ///< the leg at 208 V to neutral, or 0
    std::map<char, Phasor> to_neutral;  ///< volts to neutral of each leg, as a phasor

    bool has(char leg) const { return legs.find(leg) != std::string::npos; }
    /// Nominal volts of a leg to neutral; nullopt without neutral or system.
    std::optional<Volts> volts_to_neutral(char leg) const;
    std::optional<Volts> volts_line_to_line() const;
    /// Legs that a line-to-neutral load of 120 V may use: all but a high leg.
    std::string neutral_legs() const;
    /// Direction (size 1) of the voltage of leg `a` to leg `b`, and of a leg to the middle of the three.
    Phasor line_direction(char a, char b) const;
    Phasor middle_direction(char leg) const;
};

/// Where spaces stand in a panel: rows from the physical top, 1-based, and which side.
class SpaceGeometry {
public:
    SpaceGeometry(const Panel&, int highest_used);
    int spaces() const { return spaces_; }  ///< as given, else the highest used and two more
    int rows() const { return rows_; }
    bool single_column() const { return numbering_ == Numbering::single_column; }
    int row_by_number(int space) const;  ///< counted from space 1, whatever is turned over
    int row(int space) const;            ///< counted from the physical top
    bool on_left(int space) const;
    /// The leg letter of a space, or of a half of it ('a', 'b', or ' ' for a full space); '?' where unknown.
    char leg(const PanelSupply&, int space, char half, bool alternate_halves) const;

private:
    Numbering numbering_;
    bool turned_over_;
    int spaces_;
    int rows_;
};

}  // namespace doorcard
