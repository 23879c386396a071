// SPDX-License-Identifier: MIT
#pragma once
#include "survey/common.hpp"
#include "survey/system.hpp"

namespace doorcard {

struct Source {
    std::string id;
    std::optional<std::string> title;
    std::optional<std::string> kind;  ///< utility | generator | pv | battery | wind | other
    std::optional<System> system;
    std::optional<Amperes> amps;  ///< service or source rating
    std::optional<double> fault_ka;
    std::optional<Moment> fault_on;
    std::optional<std::string> through;  ///< the breaker it comes in through, beside what feeds the panel
    std::optional<Amperes> output_a;
    std::optional<std::string> interlock;   ///< transfer | mechanical | none
    std::optional<std::string> starts;      ///< auto | by-hand
    std::optional<std::string> disconnect;  ///< where it is shut off
    std::optional<std::string> location;
    std::optional<bool> labelled;
    std::optional<std::string> note;
    std::optional<Photos> photos;
    bool operator==(const Source&) const = default;
};

enum class MainKind { breaker, fuses, lugs, split_bus };
enum class Numbering { odd_left, odd_right, down_left, single_column };

struct Transformer {
    std::optional<double> kva;
    std::optional<double> impedance_percent;
    bool operator==(const Transformer&) const = default;
};

struct Clearance {
    std::optional<double> width, depth, height;  ///< inches
    bool operator==(const Clearance&) const = default;
};

struct Panel {
    std::string id;
    std::optional<std::string> title;
    std::optional<std::string> location;
    Ids fed_by;                    ///< sources or breakers, one at a time; empty: not known
    std::optional<System> system;  ///< = what feeds it
    std::optional<Amperes> bus_a;
    std::optional<MainKind> main;
    std::optional<Amperes> main_a;
    std::optional<std::string> main_at;  ///< top | bottom | center
    std::optional<std::string> marking;
    std::optional<int> spaces;
    std::optional<std::vector<int>> empty_spaces;
    std::optional<bool> all_breakers_entered;  ///< = false
    std::optional<Numbering> numbering;        ///< = odd_left
    std::optional<std::string> legs_down;      ///< leg letters of the rows from the physical top, repeating
    std::optional<bool> turned_over;           ///< = false
    std::optional<char> high_leg;              ///< = 'B'
    std::optional<bool> service;
    std::optional<bool> neutral_bonded;
    std::optional<bool> separate_building;  ///< = false
    std::optional<Wire> feeder;
    std::optional<Transformer> transformer;
    std::optional<std::vector<int>> tandem_spaces;
    std::optional<std::string> half_legs;  ///< "same" (=) or "alternate"
    std::optional<double> fault_ka;
    std::optional<Moment> fault_on;
    std::optional<std::string> deadfront;  ///< ok | gaps | missing
    std::optional<int> open_spaces_unfilled;
    std::optional<bool> neutrals_doubled;
    std::optional<Clearance> clear_in;
    std::optional<std::string> place;  ///< closet | bath | over-steps
    std::optional<Ids> condition;
    std::optional<std::string> note;
    std::optional<Photos> photos;
    bool operator==(const Panel&) const = default;
};

}  // namespace doorcard
