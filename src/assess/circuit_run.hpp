// SPDX-License-Identifier: MIT
#pragma once
#include "assess/figures.hpp"

namespace doorcard {

/// The way from an outlet back to the panel: outlets, itself first. `whole` where it ends at a home run.
struct Way {
    std::vector<std::size_t> outlets;
    bool whole = false;
};

/// How one circuit's cable runs from outlet to outlet. Lengths are one way; nullopt is not known.
class CircuitRun {
public:
    CircuitRun(const Survey& survey, std::size_t circuit) : survey_(survey), circuit_(circuit) {}

    Way way_of(std::size_t outlet) const;
    /// The cable that leads to this outlet: `run`, at a home run else the circuit's own length.
    std::optional<Feet> own_length(std::size_t outlet) const;
    /// All of it from the panel to this outlet.
    std::optional<Feet> length_to(std::size_t outlet) const;

private:
    const Survey& survey_;
    std::size_t circuit_;
};

}  // namespace doorcard
