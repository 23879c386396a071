// SPDX-License-Identifier: MIT
#pragma once
#include <string>
#include <unordered_map>
#include <vector>

#include "network/network.hpp"

namespace doorcard {

/// The readings of a survey, by what they are of and by the moment they were taken at.
class Readings {
public:
    explicit Readings(const Survey&);

    /// Readings of a thing, whatever legs they name; in file order.
    const std::vector<const Reading*>& of(ThingKind, const std::string& id) const;
    /// Readings that were taken together (one name, or one `at`), each moment in file order; a reading alone is a
    /// moment too.
    const std::vector<std::vector<const Reading*>>& moments() const { return moments_; }
    /// Positions of the moments in which any of these readings was taken, ascending, each once.
    std::vector<std::size_t> moments_with(const std::vector<const Reading*>&) const;

private:
    std::unordered_map<std::string, std::vector<const Reading*>> by_thing_;
    std::vector<std::vector<const Reading*>> moments_;
    std::unordered_map<const Reading*, std::size_t> moment_of_;
    std::vector<const Reading*> none_;
};

/// True for a reading of the hot conductors: not of the neutral (`/N`).
bool is_of_hots(const Reading&);

/// The highest `amps` or `amps_max`; never crest or inrush.
std::optional<Amperes> highest_amps(const Reading&);

/// What a thing's readings say of its load.
struct Measured {
    std::optional<Amperes> highest;
    std::optional<Amperes> sustained;  ///< held for 3 h or more
    bool sustained_from_amps = false;  ///< taken from `amps`: listed under `assumed`

    void take(const Reading&, double continuous_hours);
    void take(const Measured&);
};

}  // namespace doorcard
