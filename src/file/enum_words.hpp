// SPDX-License-Identifier: MIT
#pragma once
#include <array>
#include <span>
#include <string_view>

#include "survey/survey.hpp"

namespace doorcard {

using WordList = std::span<const std::string_view>;

/// The words of the survey file for an enumeration, in the order of its values.
template <class E>
inline constexpr std::array<std::string_view, 0> enum_words{};

template <>
inline constexpr std::array<std::string_view, 2> enum_words<Metal>{"cu", "al"};
template <>
inline constexpr std::array<std::string_view, 3> enum_words<Guard>{"arc", "ground", "equipment-ground"};
template <>
inline constexpr std::array<std::string_view, 4> enum_words<MainKind>{"breaker", "fuses", "lugs", "split-bus"};
template <>
inline constexpr std::array<std::string_view, 4> enum_words<Numbering>{"odd-left", "odd-right", "down-left",
                                                                       "single-column"};
template <>
inline constexpr std::array<std::string_view, 3> enum_words<BreakerState>{"in-use", "spare", "off"};
template <>
inline constexpr std::array<std::string_view, 5> enum_words<OutletKind>{"receptacle", "lighting", "equipment", "switch",
                                                                        "box"};
template <>
inline constexpr std::array<std::string_view, 18> enum_words<Duty>{
    "general", "lighting",  "range", "cooktop", "oven",    "dryer",       "water-heater", "fixed-appliance", "heating",
    "cooling", "heat-pump", "motor", "ev",      "kitchen", "show-window", "sign",         "welder",          "other"};
template <>
inline constexpr std::array<std::string_view, 2> enum_words<Connection>{"cord", "fixed"};
template <>
inline constexpr std::array<std::string_view, 10> enum_words<System>{
    "120/240 1ph 3w", "120/208 1ph 3w", "208Y/120 3ph 4w", "480Y/277 3ph 4w", "240/120 3ph 4w high-leg",
    "240 3ph 3w",     "480 3ph 3w",     "120 1ph 2w",      "230 1ph 2w",      "400Y/230 3ph 4w"};

}  // namespace doorcard
