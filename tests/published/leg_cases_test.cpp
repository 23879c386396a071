// SPDX-License-Identifier: MIT
// Legs from spaces: the worked cases d01 to d14. Source: trade convention and bus geometry; common practice, no source.
#include <doctest/doctest.h>

#include "network/network.hpp"
#include "published/covered_cases.hpp"
#include "survey/survey.hpp"

using namespace doorcard;

namespace {

/// Breakers by their spaces, one after the other, and the legs of each.
struct LegCase {
    std::string id;
    const char* legs_down;
    Numbering numbering;
    int spaces;
    std::vector<std::vector<int>> breakers;
    std::vector<std::string> legs;
};

const std::vector<LegCase> one_pole = {
    {"d01",
     "AB",
     Numbering::odd_left,
     40,
     {{1}, {2}, {3}, {4}, {5}, {6}, {7}, {8}},
     {"A", "A", "B", "B", "A", "A", "B", "B"}},
    {"d02",
     "ABC",
     Numbering::odd_left,
     42,
     {{1}, {2}, {3}, {4}, {5}, {6}, {7}, {8}, {9}, {10}, {11}, {12}},
     {"A", "A", "B", "B", "C", "C", "A", "A", "B", "B", "C", "C"}},
    {"d03", "BA", Numbering::odd_left, 40, {{1}, {2}, {3}, {4}}, {"B", "B", "A", "A"}},
    {"d04", "BCA", Numbering::odd_left, 42, {{1}, {3}, {5}, {7}}, {"B", "C", "A", "B"}},
    {"d07", "AB", Numbering::down_left, 12, {{1}, {2}, {3}, {6}, {7}, {8}, {12}}, {"A", "B", "A", "B", "A", "B", "B"}},
    {"d11", "AB", Numbering::single_column, 8, {{1}, {2}, {3}, {4}, {7}, {8}}, {"A", "B", "A", "B", "A", "B"}},
    {"d13", "ABC", Numbering::odd_left, 42, {{17}, {42}}, {"C", "C"}},
    {"d14", "AB", Numbering::odd_left, 42, {{17}, {42}}, {"A", "A"}},
};

const std::vector<LegCase> several_poles = {
    {"d09", "ABC", Numbering::odd_left, 42, {{1, 3}, {3, 5}, {5, 7}, {6, 8}}, {"AB", "BC", "CA", "CA"}},
    {"d10", "ABC", Numbering::odd_left, 42, {{2, 4, 6}, {4, 6, 8}, {5, 7, 9}}, {"ABC", "BCA", "CAB"}},
};

void check(const LegCase& given) {
    CAPTURE(given.id);
    Panel panel;
    panel.id = "P";
    panel.system = std::string(given.legs_down).size() == 3 ? System::wye_208 : System::split_120_240;
    panel.spaces = given.spaces;
    panel.numbering = given.numbering;
    panel.legs_down = given.legs_down;
    std::vector<Breaker> breakers;
    for (const std::vector<int>& spaces : given.breakers) {
        Breaker& breaker = breakers.emplace_back();
        breaker.id = "b" + std::to_string(breakers.size());
        breaker.panel = "P";
        breaker.spaces = spaces;
    }
    Survey survey;
    survey.panels = Table<Panel>({panel});
    survey.breakers = Table<Breaker>(breakers);
    const Network network = network_of(survey);
    for (std::size_t b = 0; b < breakers.size(); ++b) {
        CAPTURE(b);
        CHECK(network.breaker_legs(b) == given.legs[b]);
    }
}

}  // namespace

std::vector<reference::Case> covered_leg_cases() {
    std::vector<reference::Case> all;
    add_cases(all, "legs", one_pole);
    add_cases(all, "pair_legs", several_poles);
    return all;
}

TEST_CASE("worked cases: legs of spaces") {
    for (const LegCase& one : one_pole) check(one);
}

TEST_CASE("worked cases: legs of breakers of two and three poles, in the order of their spaces") {
    for (const LegCase& one : several_poles) check(one);
}
