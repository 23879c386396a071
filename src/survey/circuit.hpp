// SPDX-License-Identifier: MIT
#pragma once
#include "survey/common.hpp"

namespace doorcard {

struct Traced {
    std::optional<std::string> how;  ///< switching | test-load | seen | tracer | old-directory | told
    std::optional<Moment> on;
    std::optional<std::string> by;
    bool operator==(const Traced&) const = default;
    /// True for the ways that prove: switching, test-load, seen.
    bool proves() const { return how == "switching" || how == "test-load" || how == "seen"; }
};

struct GroundWire {
    std::optional<std::string> size;
    std::optional<std::string> kind;  ///< wire | armor | raceway | none
    std::optional<Metal> metal;
    bool operator==(const GroundWire&) const = default;
};

struct Circuit {
    std::string id;
    Ids breakers;                        ///< empty: not known; several: found fed by all of these at once
    std::optional<char> leg;             ///< which leg of a multi-pole breaker a line-to-neutral circuit uses
    std::optional<std::string> purpose;  ///< directory text; absent: composed from its outlets
    std::optional<std::string> neutral;  ///< "own": traced, not shared; absent: not traced
    std::optional<bool> three_wire;
    std::optional<std::string> neutral_size;
    std::optional<Wire> wire;
    std::optional<GroundWire> ground;
    std::optional<Traced> traced;
    std::optional<int> installed;  ///< year
    std::optional<bool> neutral_spliced;
    std::optional<std::string> note;
    std::optional<Photos> photos;
    bool operator==(const Circuit&) const = default;

    /// True where the circuit names a neutral that others may name too.
    bool names_neutral() const { return neutral && *neutral != "own"; }
};

}  // namespace doorcard
