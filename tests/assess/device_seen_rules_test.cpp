// SPDX-License-Identifier: MIT
// double-tap, breaker-not-listed-here, tandem-not-allowed, slash-on-high-leg, guard-fails-test, guard-bypassed.
#include "assess/lines_shown.hpp"

using namespace doorcard;

namespace {

Lines seen(const std::string& rule, const std::string& keys) { return found(house + breaker("1", 20, keys), rule); }
std::string with_tandem(const std::string& panel_keys, const std::string& spaces = "13") {
    return supply("120/240 1ph 3w", panel_keys) + breaker(spaces, 20, "half = \"a\"") +
           breaker(spaces, 20, "half = \"b\"");
}
Lines slash(const std::string& spaces, const std::string& volts) {
    return found(high_leg + breaker(spaces, 30, "volts = \"" + volts + "\""), "slash-on-high-leg");
}
std::string swap(const std::string& keys, const std::string& of = "c") {
    return "[[trial]]\ncircuit = \"" + of + "\"\nkind = \"breaker-swapped\"\n" + keys + "\n";
}
Lines bypassed(const std::string& breaker_keys, const std::string& log) {
    return found(house + branch("c", "1", 20, "", breaker_keys) + log, "guard-bypassed");
}

}  // namespace

TEST_CASE("double-tap: more conductors than the terminal is known to take") {
    const auto finding = only(house + breaker("1", 20, "conductors = 2"), "double-tap");
    CHECK(line_of(finding) == "breaker:MAIN:1 warning required 2 count, limit 1 count");
    CHECK(sources_of(finding) == "NEC 2023 110.14(A)");
    CHECK(seen("double-tap", "conductors = 2\ntwo_wire_listed = false").size() == 1);
    CHECK(seen("double-tap", "conductors = 3\ntwo_wire_listed = true") ==
          Lines{"breaker:MAIN:1 warning required 3 count, limit 2 count"});
    CHECK(seen("double-tap", "conductors = 2\ntwo_wire_listed = true") == Lines{});
    CHECK(seen("double-tap", "conductors = 1") == Lines{});
    CHECK(seen("double-tap", "two_wire_listed = false") == Lines{});
}

TEST_CASE("breaker-not-listed-here: somebody read the panel's label") {
    CHECK(seen("breaker-not-listed-here", "listed_here = false") == Lines{"breaker:MAIN:1 warning required"});
    CHECK(seen("breaker-not-listed-here", "listed_here = true") == Lines{});
    CHECK(seen("breaker-not-listed-here", "") == Lines{});
}

TEST_CASE("tandem-not-allowed: halves in spaces that the panel does not name") {
    const auto rule = [](const std::string& survey) { return found(survey, "tandem-not-allowed"); };
    CHECK(rule(with_tandem("tandem_spaces = [15, 17]")) ==
          Lines{"breaker:MAIN:13a warning required", "breaker:MAIN:13b warning required"});
    CHECK(rule(with_tandem("tandem_spaces = []")).size() == 2);
    CHECK(rule(with_tandem("tandem_spaces = [13]")) == Lines{});
    CHECK(rule(with_tandem("main = \"breaker\"")) == Lines{});  // where they are allowed, nobody read
    CHECK(rule(supply("120/240 1ph 3w", "tandem_spaces = []") + breaker("13", 20)) == Lines{});
}

TEST_CASE("slash-on-high-leg: 208 V to ground on a breaker made for 120") {
    CHECK(slash("3", "120/240") == Lines{"breaker:MAIN:3 warning required 208 V, limit 120 V"});
    CHECK(slash("1, 3", "120/240") == Lines{"breaker:MAIN:1+3 warning required 208 V, limit 120 V"});
    CHECK(slash("3", "240") == Lines{});
    CHECK(slash("3", "277/480") == Lines{});
    CHECK(slash("1, 5", "120/240") == Lines{});  // legs A and C
    CHECK(found(high_leg + breaker("3", 30), "slash-on-high-leg") == Lines{});
    CHECK(found(house + breaker("1, 3", 30, "volts = \"120/240\""), "slash-on-high-leg") == Lines{});
    CHECK(found(three_phase + breaker("1, 3", 30, "volts = \"120/240\""), "slash-on-high-leg") == Lines{});
}

TEST_CASE("guard-fails-test: the TEST button was pressed, and nothing tripped") {
    const auto finding =
        only(house + breaker("1", 20, "guards = [\"ground\"]\ntested = { trips = false }"), "guard-fails-test");
    CHECK(line_of(finding) == "breaker:MAIN:1 warning required");
    CHECK(said(finding.remedy).find("never by a plain one") != std::string::npos);
    CHECK(seen("guard-fails-test", "guards = [\"ground\"]\ntested = { trips = true }") == Lines{});
    CHECK(seen("guard-fails-test", "guards = [\"ground\"]\ntested = { on = 2026-05-14 }") == Lines{});
    CHECK(seen("guard-fails-test", "guards = [\"ground\"]") == Lines{});
}

TEST_CASE("guard-bypassed: a plainer breaker was put in and left in") {
    CHECK(bypassed("guards = [\"arc\", \"ground\"]", swap("new_guards = []")) ==
          Lines{"breaker:MAIN:1 warning practice"});
    CHECK(bypassed("guards = [\"arc\", \"ground\"]", swap("new_guards = [\"ground\"]")).size() == 1);
    CHECK(bypassed("guards = [\"arc\"]", swap("new_guards = []", "MAIN:1")).size() == 1);
    CHECK(bypassed("guards = []", "[[trip]]\nof = \"breaker:MAIN:1\"\ndevice_says = \"arc\"\n").size() == 1);
}

TEST_CASE("guard-bypassed: silent where the guard is back, was never there, or nobody says") {
    CHECK(bypassed("guards = [\"arc\"]", swap("new_guards = []") + swap("new_guards = [\"arc\"]")) == Lines{});
    CHECK(bypassed("guards = []", swap("new_guards = [\"arc\"]")) == Lines{});
    CHECK(bypassed("guards = [\"arc\"]", swap("result = \"pass\"")) == Lines{});
    CHECK(bypassed("guards = [\"arc\"]", "") == Lines{});
    CHECK(bypassed("", "[[trip]]\nof = \"breaker:MAIN:1\"\ndevice_says = \"arc\"\n") == Lines{});
    CHECK(bypassed("guards = [\"equipment-ground\"]", swap("new_guards = [\"ground\"]")) == Lines{});
    CHECK(bypassed("guards = [\"arc\"]\nstate = \"off\"", swap("new_guards = []")) == Lines{});
    CHECK(bypassed("guards = []", "[[trip]]\nof = \"breaker:MAIN:1\"\ndevice_says = \"overcurrent\"\n") == Lines{});
}
