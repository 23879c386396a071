// SPDX-License-Identifier: MIT
#include "rules/protection_lookups.hpp"

#include <doctest/doctest.h>

using namespace doorcard;

namespace {

const RuleBook& book() {
    static const RuleBook nec = built_in_book("NEC-2023").value();
    return nec;
}

}  // namespace

TEST_CASE("circular mils: gauges by Chapter 9, kcmil by their number, nothing for what is no size") {
    CHECK(circular_mils(book(), "12") == 6530);
    CHECK(circular_mils(book(), "4/0") == 211600);
    CHECK(circular_mils(book(), "250") == 250000);
    CHECK(circular_mils(book(), "1750") == 1750000);
    CHECK(circular_mils(book(), "18") == std::nullopt);
    CHECK(circular_mils(book(), "twelve") == std::nullopt);
}

TEST_CASE("equipment grounding conductors: both ends of the table, between two rows the larger") {
    CHECK(ground_wire_size(book(), Amperes(10), Metal::copper) == "14");
    CHECK(ground_wire_size(book(), Amperes(20), Metal::copper) == "12");
    CHECK(ground_wire_size(book(), Amperes(25), Metal::copper) == "10");
    CHECK(ground_wire_size(book(), Amperes(6000), Metal::aluminum) == "1250");
    CHECK(ground_wire_size(book(), Amperes(6001), Metal::aluminum) == std::nullopt);
}

TEST_CASE("a grounding conductor grows as the hot conductors do, and never shrinks") {
    CHECK(grown_size(book(), "10", "8", "4") == "6");  // 10380 x 41740 / 16510 = 26242: 6 AWG but for rounding
    CHECK(grown_size(book(), "10", "8", "8") == "10");
    CHECK(grown_size(book(), "10", "6", "8") == "10");
    CHECK(grown_size(book(), "12", "12", "10") == "10");
    CHECK(grown_size(book(), "12", "12", "?") == std::nullopt);
}

TEST_CASE("grounding electrode conductors: parallel sets by their area together") {
    CHECK(electrode_conductor_size(book(), "4/0", Metal::aluminum, 1, Metal::copper) == "4");
    CHECK(electrode_conductor_size(book(), "4/0", Metal::aluminum, 2, Metal::copper) == "2");  // 423,200
    CHECK(electrode_conductor_size(book(), "4/0", Metal::aluminum, 1, Metal::aluminum) == "2");
    CHECK(electrode_conductor_size(book(), "1000", Metal::copper, 2, Metal::copper) == "3/0");
    CHECK(electrode_conductor_size(book(), "none", Metal::copper, 1, Metal::copper) == std::nullopt);
}

TEST_CASE("electrodes by their words: a water pipe asks for all of it") {
    CHECK(electrode_limit(book(), "Ground rod, north", Metal::copper) == "6");
    CHECK(electrode_limit(book(), "rod", Metal::aluminum) == "4");
    CHECK(electrode_limit(book(), "Ufer", Metal::copper) == "4");
    CHECK(electrode_limit(book(), "concrete-encased", Metal::copper) == "4");
    CHECK(electrode_limit(book(), "ring", Metal::copper) == "2");
    CHECK(electrode_limit(book(), "water pipe, and a rod", Metal::copper) == std::nullopt);
    CHECK(electrode_limit(book(), "building steel", Metal::copper) == std::nullopt);
}

TEST_CASE("receptacles on circuits of several: 2023 has no largest") {
    CHECK(receptacle_range(book(), Amperes(20))->least.value == 15);
    CHECK_FALSE(receptacle_range(book(), Amperes(15))->most);
    CHECK_FALSE(receptacle_range(book(), Amperes(25)));
}
