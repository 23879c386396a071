// SPDX-License-Identifier: MIT
#pragma once
#include "survey/common.hpp"

namespace doorcard {

enum class BreakerState { in_use, spare, off };

struct Tested {
    std::optional<Moment> on;
    std::optional<bool> trips;
    bool operator==(const Tested&) const = default;
};

/// One handle in its spaces. `halves` is empty, or 'a' or 'b' for each space.
struct Breaker {
    std::string id;  ///< as given, else PANEL:SPACES (contract 1)
    bool id_given = false;
    std::string panel;
    std::vector<int> spaces;          ///< as written, in any order
    std::vector<char> halves;         ///< empty: full spaces; else parallel to spaces, 'a' or 'b'
    std::optional<std::string> legs;  ///< overrides what the spaces say, in the order of `spaces`
    std::optional<Amperes> amps;
    std::optional<std::string> device;  ///< breaker (=) | fuse | pullout
    Guards guards;
    std::optional<Ids> tied_with;
    std::optional<BreakerState> state;  ///< = in_use
    std::optional<std::string> off_why;
    std::optional<std::string> old_label;
    std::optional<std::string> keep_on;
    std::optional<double> off_minutes;
    std::optional<bool> full_rated;
    std::optional<bool> serves_as_main;
    std::optional<bool> hold_down;
    std::optional<double> interrupting_ka;
    std::optional<bool> series_rated;
    std::optional<std::string> volts;  ///< marking: "120/240"
    std::optional<bool> listed_here;
    std::optional<int> conductors;
    std::optional<bool> two_wire_listed;
    std::optional<Ids> signs;  ///< hot | buzz | smell | scorch | melted | loose
    std::optional<Tested> tested;
    std::optional<std::string> system;  ///< normal (=) | fire-alarm | emergency | standby
    std::optional<std::string> note;
    std::optional<Photos> photos;
    bool operator==(const Breaker&) const = default;

    std::size_t poles() const { return spaces.size(); }
    /// PANEL:SPACES, spaces ascending, joined by '+', half letters appended.
    std::string default_id() const;
};

}  // namespace doorcard
