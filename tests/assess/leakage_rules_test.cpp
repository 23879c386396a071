// SPDX-License-Identifier: MIT
// leakage-budget: standing leakage behind one ground guard.
#include "assess/lines_shown.hpp"

namespace {

Lines leaks(const std::string& survey) { return found(survey, "leakage-budget"); }

std::string guarded(const std::string& more) {
    return house + branch("c", "1", 20, "", "guards = [\"arc\", \"ground\"]") + more;
}
std::string leaking(double ma, const std::string& keys = "") {
    return load("c", "leakage_ma = " + std::to_string(ma) + "\n" + keys);
}
std::string at(const std::string& id, const std::string& outlet, double ma) {
    return "[[load]]\nid = \"" + id + "\"\noutlet = \"" + outlet + "\"\nleakage_ma = " + std::to_string(ma) + "\n";
}

}  // namespace

TEST_CASE("leakage-budget: a notice above 30 % of 6 mA, a caution from 4 mA on") {
    CHECK(leaks(guarded(leaking(1.8))) == Lines{});
    CHECK(leaks(guarded(leaking(1.9))) == Lines{"breaker:MAIN:1 notice practice 1.9 mA, limit 1.8 mA"});
    CHECK(leaks(guarded(leaking(0.5, "count = 7"))) == Lines{"breaker:MAIN:1 notice practice 3.5 mA, limit 1.8 mA"});
    const auto finding = only(guarded(leaking(2.5) + leaking(1.5)), "leakage-budget");
    CHECK(line_of(finding) == "breaker:MAIN:1 caution practice 4 mA, limit 4 mA");
    CHECK(sources_of(finding) == "common practice; UL 943 Class A");
    CHECK(said(finding.text).find("may trip") != std::string::npos);
    CHECK(said(finding.remedy).find("never a plain breaker") != std::string::npos);
    CHECK(said(only(guarded(leaking(6)), "leakage-budget").text).find("must trip") != std::string::npos);
}

TEST_CASE("leakage-budget: a reading of the breaker or its only circuit") {
    CHECK(leaks(guarded(reading("breaker:MAIN:1", "leakage_ma = 2"))) ==
          Lines{"breaker:MAIN:1 notice practice 2 mA, limit 1.8 mA"});
    CHECK(leaks(guarded(leaking(0.4) + reading("circuit:c", "leakage_ma = 4.4"))) ==
          Lines{"breaker:MAIN:1 caution practice 4.4 mA, limit 4 mA"});
    CHECK(leaks(guarded(reading("circuit:c", "leakage_ma = 1.8"))) == Lines{});
}

TEST_CASE("leakage-budget: no guard, no budget") {
    CHECK(leaks(house + branch("c", "1", 20) + leaking(5)) == Lines{});
    CHECK(leaks(house + branch("c", "1", 20, "", "guards = []") + leaking(5)) == Lines{});
    CHECK(leaks(house + branch("c", "1", 20, "", "guards = [\"arc\"]") + leaking(5)) == Lines{});
    CHECK(leaks(house + branch("c", "1", 20, "", "guards = [\"equipment-ground\"]") + leaking(5)) == Lines{});
    CHECK(leaks(guarded(load("c", "amps = 8"))) == Lines{});  // nothing entered
}

TEST_CASE("leakage-budget: an outlet's guard stands for itself and all that is fed through it") {
    const std::string chain = house + branch("c", "1", 20) + outlet("before", "c", "upstream = \"home-run\"") +
                              outlet("guard", "c", "upstream = \"before\"\nguards = [\"ground\"]\nlabel = \"sink\"") +
                              "[[outlet]]\nid = \"after\"\nupstream = \"guard\"\n" +
                              "[[outlet]]\nid = \"last\"\nupstream = \"after\"\n";
    CHECK(leaks(chain + at("a", "guard", 1) + at("b", "last", 1)) ==
          Lines{"outlet:guard notice practice 2 mA, limit 1.8 mA"});
    CHECK(leaks(chain + at("a", "guard", 1) + at("b", "before", 1)) == Lines{});
    const std::string unmapped = house + "[[outlet]]\nid = \"guard\"\nguards = [\"ground\"]\n" +
                                 "[[outlet]]\nid = \"after\"\nupstream = \"guard\"\n";
    CHECK(leaks(unmapped + at("a", "after", 3)) == Lines{"outlet:guard notice practice 3 mA, limit 1.8 mA"});
    CHECK(leaks(chain + reading("outlet:guard", "leakage_ma = 3")) ==
          Lines{"outlet:guard notice practice 3 mA, limit 1.8 mA"});
}

TEST_CASE("leakage-budget: the sum is arithmetic; known kinds are told at right angles") {
    const auto finding =
        only(guarded(leaking(3, "leakage_kind = \"resistive\"") + leaking(4, "leakage_kind = \"capacitive\"")),
             "leakage-budget");
    CHECK(line_of(finding) == "breaker:MAIN:1 caution practice 7 mA, limit 4 mA");
    CHECK(said(finding.text).find("right angles: 5 mA") != std::string::npos);
    CHECK(said(only(guarded(leaking(3, "leakage_kind = \"resistive\"") + leaking(4)), "leakage-budget").text)
              .find("right angles") == std::string::npos);
}
