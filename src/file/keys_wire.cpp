// SPDX-License-Identifier: MIT
#include "file/keys_wire.hpp"

#include <array>

namespace doorcard {
namespace {

constexpr std::string_view methods[] = {"cable", "raceway", "knob-and-tube", "cord"};
constexpr std::string_view raceways[] = {"pvc", "steel", "aluminum"};

constexpr std::array wire_list = {
    text<&Wire::size>("size", "AWG or kcmil of the hot conductors, such as \"12\", \"4/0\", \"250\""),
    word<&Wire::metal>("metal", "copper or aluminum"),
    text<&Wire::insulation>("insulation", "type marked on it: NM-B, THHN, XHHW ...; unlisted counts as 60 degrees C"),
    measure<&Wire::length, false>("length_ft", "feet", "length",
                                  "one way, panel to first outlet; of a feeder the whole"),
    measure<&Wire::length, true>("length_m", "metres", "length", "the same in metres"),
    number<&Wire::ambient_c>("ambient_c", "degrees C", "hottest surroundings; absent: 30"),
    whole<&Wire::conductors_together>("conductors_together", "",
                                      "current-carrying conductors run together, its own included; absent: its own")
        .at_least(1),
    number<&Wire::terminal_c>("terminal_c", "degrees C",
                              "temperature marking of the terminals; absent: 60 up to 100 A, else 75"),
    text<&Wire::method>("method", "how it is run").one_of(methods),
    text<&Wire::raceway>("raceway", "kind of raceway; absent: reckoned as pvc").one_of(raceways),
};

constexpr std::array feeder_only = {
    whole<&Wire::sets>("sets", "", "parallel sets; = 1").at_least(1),
    text<&Wire::neutral_size>("neutral_size", "AWG or kcmil of its neutral"),
    text<&Wire::ground_size>("ground_size", "AWG or kcmil of its equipment ground, where it is not the service"),
};

constexpr auto feeder_list = [] {
    std::array<Field, wire_list.size() + feeder_only.size()> all{};
    std::copy(feeder_only.begin(), feeder_only.end(), std::copy(wire_list.begin(), wire_list.end(), all.begin()));
    return all;
}();

}  // namespace

FieldList wire_keys() { return wire_list; }
FieldList feeder_keys() { return feeder_list; }

}  // namespace doorcard
