// SPDX-License-Identifier: MIT
#pragma once
#include "survey/address.hpp"
#include "survey/common.hpp"

namespace doorcard {

/// `[[round]]`: one switching round of a mapping walk; file order is time order.
struct Round {
    Ids off;
    std::optional<Ids> went_out, stayed_on, odd, stuck, would_not_reset;
    std::optional<std::string> with;  ///< lamp | meter | noncontact | sound
    std::optional<Moment> at;
    std::optional<std::string> by;
    std::optional<std::string> note;
    std::optional<Photos> photos;
    bool operator==(const Round&) const = default;
};

/// `[mapping]`
struct Mapping {
    std::optional<double> walk_minutes, throw_minutes, outlet_minutes, misread, off_panel, two_feeds, directory_right;
    std::optional<std::string> note;
    std::optional<Photos> photos;
    bool operator==(const Mapping&) const = default;
};

/// `[[trip]]`
struct Trip {
    Address of;
    std::optional<Moment> at;
    std::optional<Ids> running;
    std::optional<Amperes> amps, amps_crest;
    std::optional<Milliamperes> leakage_ma;
    std::optional<std::string> noise;
    std::optional<std::string> neutral_to_ground;
    std::optional<double> delay_s;
    std::optional<Ids> just_before;
    std::optional<std::string> weather, device_says, bare_reset, resets;
    std::optional<Ids> signs;
    std::optional<Ids> also_tripped;
    std::optional<std::string> new_since;
    std::optional<std::string> by;
    std::optional<std::string> note;
    std::optional<Photos> photos;
    bool operator==(const Trip&) const = default;
};

/// `[[hunt]]`: one per circuit under hunt; a breaker in its place while nothing is traced.
struct Hunt {
    std::optional<std::string> circuit, breaker;
    std::optional<Moment> watched_from;
    std::optional<double> background_per_day;
    std::optional<std::string> complaint;
    std::optional<std::string> note;
    std::optional<Photos> photos;
    bool operator==(const Hunt&) const = default;
};

/// `[[trial]]`: one step of a hunt; among those of one circuit file order is time order.
struct Trial {
    std::string circuit;
    std::string kind;
    std::optional<Ids> removed;
    std::optional<double> hours;
    std::optional<Moment> started;
    std::optional<int> trips;
    std::optional<Ids> section;
    std::optional<double> megohms, ohms, test_volts;
    std::optional<std::string> result;  ///< pass | fail
    Guards new_guards;
    std::optional<std::string> followed;  ///< circuit | breaker | load
    std::optional<Moment> at;
    std::optional<std::string> by;
    std::optional<std::string> note;
    std::optional<Photos> photos;
    bool operator==(const Trial&) const = default;
};

}  // namespace doorcard
