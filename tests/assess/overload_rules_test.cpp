// SPDX-License-Identifier: MIT
// continuous-over-80, load-over-rating, cord-sum-over-rating, continuous-by-rule: 210.20(A), 210.23.
#include "assess/lines_shown.hpp"

namespace {

const std::string c20 = house + branch("c", "1", 20);
const std::string c20_full = house + branch("c", "1", 20, "", "full_rated = true");
const std::string shop = house + "[[occupancy]]\nkind = \"retail\"\n";

Lines lasting(const std::string& survey) { return found(survey, "continuous-over-80"); }
Lines over(const std::string& survey) { return found(survey, "load-over-rating"); }
Lines sum(const std::string& survey) { return found(survey, "cord-sum-over-rating"); }

std::string of_c(const std::string& keys) { return c20 + load("c", keys); }
std::string read_c(const std::string& keys) { return c20 + reading("circuit:c", keys); }
std::string by_rule(const std::string& keys) { return house + branch("c", "1, 3", 60) + load("c", keys); }

Lines declared_short(const std::string& survey) { return found(survey, "continuous-by-rule"); }

}  // namespace

TEST_CASE("continuous-over-80: declared lasting load at 125 % against the rating") {
    const auto finding = only(of_c("amps = 17\ncontinuous = true"), "continuous-over-80");
    CHECK(line_of(finding) == "circuit:c warning required 21.25 A, limit 20 A");
    CHECK(sources_of(finding) == "NEC 2023 210.20(A)");
    CHECK(said(finding.remedy) == "Move a lasting load to another circuit.");
    CHECK(lasting(of_c("amps = 16\ncontinuous = true")) == Lines{});
    CHECK(lasting(of_c("amps = 17")) == Lines{});
}

TEST_CASE("continuous-over-80: a calculated excess under half an ampere is a notice, never a pass") {
    CHECK(lasting(of_c("amps = 16.2\ncontinuous = true")) == Lines{"circuit:c notice required 20.25 A, limit 20 A"});
    CHECK(lasting(of_c("amps = 16.4\ncontinuous = true")) == Lines{"circuit:c warning required 20.5 A, limit 20 A"});
}

TEST_CASE("continuous-over-80: what stands beside the lasting load counts once") {
    const std::string beside = load("c", "amps = 8\ncontinuous = true");
    CHECK(lasting(c20 + beside + load("c", "amps = 10.5")) == Lines{"circuit:c warning required 20.5 A, limit 20 A"});
    CHECK(lasting(c20 + beside + load("c", "amps = 10")) == Lines{});
}

TEST_CASE("continuous-over-80: a device listed for its full rating") {
    CHECK(lasting(c20_full + load("c", "amps = 20\ncontinuous = true")) == Lines{});
    CHECK(lasting(c20_full + load("c", "amps = 21\ncontinuous = true")) ==
          Lines{"circuit:c warning required 21 A, limit 20 A"});
    CHECK(lasting(c20_full + reading("circuit:c", "amps_min = 19\nhours = 4")) == Lines{});
    CHECK(lasting(c20_full + reading("circuit:c", "amps_min = 21\nhours = 4")) ==
          Lines{"circuit:c warning advised 21 A, limit 20 A"});
}

TEST_CASE("continuous-over-80: only a leg with something lasting on it is judged by it") {
    const std::string two_legs = house + branch("c", "1, 3", 20) + load("c", "amps = 21\nvolts = 120\nlegs = \"B\"") +
                                 load("c", "amps = 5\nvolts = 120\nlegs = \"A\"\ncontinuous = true");
    CHECK(lasting(two_legs) == Lines{});
    CHECK(over(two_legs) == Lines{"circuit:c warning required 21 A, limit 20 A"});
}

TEST_CASE("continuous-over-80: a level held for three hours against 80 % of the rating") {
    const auto finding = only(read_c("amps_min = 16.5\nhours = 3"), "continuous-over-80");
    CHECK(line_of(finding) == "circuit:c warning advised 16.5 A, limit 16 A");
    CHECK(sources_of(finding).find("Article 100") != std::string::npos);
    CHECK(lasting(read_c("amps_min = 16.5\nhours = 2.9")) == Lines{});
    CHECK(lasting(read_c("amps_min = 16\nhours = 4")) == Lines{});
}

TEST_CASE("continuous-over-80: within the meter's accuracy a held level is a step milder") {
    CHECK(lasting(read_c("amps_min = 16.48\nhours = 4")) == Lines{"circuit:c caution advised 16.48 A, limit 16 A"});
    CHECK(lasting(read_c("amps_min = 16.49\nhours = 4")) == Lines{"circuit:c warning advised 16.49 A, limit 16 A"});
}

TEST_CASE("continuous-over-80: which figure of a reading is the held level") {
    CHECK(lasting(read_c("amps = 17\nhours = 4")).size() == 1);                // nothing higher was seen
    CHECK(lasting(read_c("amps = 17\namps_max = 18\nhours = 4")) == Lines{});  // it went up and down
    CHECK(lasting(read_c("amps_crest = 30\nhours = 4")) == Lines{});           // an instant
    CHECK(lasting(read_c("amps = 17\namps_min = 12\nhours = 4")) == Lines{});  // its lowest is known
    CHECK(lasting(read_c("amps = 17")) == Lines{});                            // nobody watched
}

TEST_CASE("continuous-over-80: a low reading never lowers a declared load") {
    CHECK(lasting(of_c("amps = 17\ncontinuous = true") + reading("circuit:c", "amps_min = 9\nhours = 5")) ==
          Lines{"circuit:c warning required 21.25 A, limit 20 A"});
}

TEST_CASE("continuous-over-80: declared and held are two findings") {
    CHECK(lasting(of_c("amps = 17\ncontinuous = true") + reading("circuit:c", "amps_min = 17\nhours = 5")).size() == 2);
}

TEST_CASE("continuous-over-80: several circuits on one breaker are judged once, on the breaker") {
    const std::string both = house + branch("c", "1", 20) + circuit("d", "\"MAIN:1\"");
    const std::string loads = load("c", "amps = 9\ncontinuous = true") + load("d", "amps = 9\ncontinuous = true");
    CHECK(lasting(both + loads) == Lines{"breaker:MAIN:1 warning required 22.5 A, limit 20 A"});
    CHECK(over(both + load("c", "amps = 10") + load("d", "amps = 11")) ==
          Lines{"breaker:MAIN:1 warning required 21 A, limit 20 A"});
    CHECK(sum(both + cord("c", "amps = 12") + cord("d", "amps = 12")) ==
          Lines{"breaker:MAIN:1 notice practice 24 A, limit 20 A"});
    CHECK(over(both + reading("breaker:MAIN:1", "amps = 23")) ==
          Lines{"breaker:MAIN:1 warning required 23 A, limit 20 A"});
}

TEST_CASE("continuous-over-80: vehicle supply is lasting by rule") {
    const std::string forty = house + branch("c", "1, 3", 40);
    CHECK(lasting(forty + load("c", "amps = 32\nvolts = 240\nduty = \"ev\"")) == Lines{});
    CHECK(lasting(forty + load("c", "amps = 33\nvolts = 240\nduty = \"ev\"")) ==
          Lines{"circuit:c warning required 41.25 A, limit 40 A"});
}

TEST_CASE("load-over-rating: nothing lasting, more than the device") {
    const auto finding = only(of_c("amps = 21"), "load-over-rating");
    CHECK(line_of(finding) == "circuit:c warning required 21 A, limit 20 A");
    CHECK(sources_of(finding) == "NEC 2023 210.23");
    CHECK(said(finding.remedy).find("never a larger breaker unless") != std::string::npos);
    CHECK(said(finding.remedy).find(" A") == std::string::npos);  // no size of a breaker
    CHECK(over(of_c("amps = 20")) == Lines{});
    CHECK(over(of_c("amps = 20.4")) == Lines{"circuit:c notice required 20.4 A, limit 20 A"});
}

TEST_CASE("load-over-rating: continuous and noncontinuous without the 125 %") {
    CHECK(over(c20 + load("c", "amps = 12\ncontinuous = true") + load("c", "amps = 8")) == Lines{});
    CHECK(over(c20 + load("c", "amps = 12\ncontinuous = true") + load("c", "amps = 9")) ==
          Lines{"circuit:c warning required 21 A, limit 20 A"});
}

TEST_CASE("load-over-rating: measured") {
    CHECK(over(read_c("amps = 20")) == Lines{});
    CHECK(over(read_c("amps = 20.6")) == Lines{"circuit:c caution required 20.6 A, limit 20 A"});
    CHECK(over(read_c("amps_max = 20.7")) == Lines{"circuit:c warning required 20.7 A, limit 20 A"});
    CHECK(over(read_c("amps_crest = 40\ninrush_a = 60")) == Lines{});
}

TEST_CASE("load-over-rating: a reading within the meter's accuracy does not make a calculated excess milder") {
    CHECK(over(of_c("amps = 20.55") + reading("circuit:c", "amps = 20.58")) ==
          Lines{"circuit:c warning required 20.55 A, limit 20 A"});
}

TEST_CASE("load-over-rating: of a reading and a calculation as severe the larger is told") {
    CHECK(over(of_c("amps = 23") + reading("circuit:c", "amps = 22")) ==
          Lines{"circuit:c warning required 23 A, limit 20 A"});
    CHECK(over(of_c("amps = 22") + reading("circuit:c", "amps = 23")) ==
          Lines{"circuit:c warning required 23 A, limit 20 A"});
}

TEST_CASE("load-over-rating: the largest motor beside other loads counts a quarter more") {
    const std::string pump = load("c", "amps = 10\nduty = \"motor\"");
    CHECK(over(c20 + pump + load("c", "amps = 8")) == Lines{"circuit:c warning required 20.5 A, limit 20 A"});
    CHECK(over(c20 + pump + load("c", "amps = 7.5")) == Lines{});
    CHECK(over(c20 + pump + load("c", "amps = 10\nduty = \"motor\"")) == Lines{});  // motors alone: 430, not 210
}

TEST_CASE("load-over-rating: a minimum circuit ampacity replaces its load's share") {
    CHECK(over(of_c("amps = 18\nmin_circuit_a = 22.4")) == Lines{"circuit:c warning required 22.4 A, limit 20 A"});
    CHECK(over(of_c("amps = 18\nmin_circuit_a = 20")) == Lines{});
}

TEST_CASE("load-over-rating: in a dwelling cord appliances do not run together, in a shop they do") {
    const std::string two = branch("c", "1", 20) + cord("c", "amps = 12") + cord("c", "amps = 11");
    CHECK(over(house + two) == Lines{});
    CHECK(over(shop + two) == Lines{"circuit:c warning required 23 A, limit 20 A"});
}

TEST_CASE("load-over-rating: receptacles of a shop count 180 VA each, those of a house nothing") {
    std::string ten = branch("c", "1", 15);
    for (int i = 0; i < 12; ++i) ten += outlet("o" + std::to_string(i), "c", "kind = \"receptacle\"");
    CHECK(over(house + ten) == Lines{});
    CHECK(over(shop + ten) == Lines{"circuit:c warning required 18 A, limit 15 A"});
}

TEST_CASE("load-over-rating: without a rating nothing is judged") {
    CHECK(over(house + "[[breaker]]\npanel = \"MAIN\"\nspaces = [1]\n" + circuit("c", "\"MAIN:1\"") +
               load("c", "amps = 50")) == Lines{});
}

TEST_CASE("load-over-rating: a circuit on two breakers is held to the smaller") {
    CHECK(over(house + breaker("1", 15) + breaker("3", 20) + circuit("c", "[\"MAIN:1\", \"MAIN:3\"]") +
               load("c", "amps = 18\nvolts = 240")) == Lines{"circuit:c warning required 18 A, limit 15 A"});
}

TEST_CASE("cord-sum-over-rating: all cord nameplates of a circuit together") {
    const auto finding = only(c20 + cord("c", "amps = 12") + cord("c", "amps = 12.5"), "cord-sum-over-rating");
    CHECK(line_of(finding) == "circuit:c notice practice 24.5 A, limit 20 A");
    CHECK(sources_of(finding) == "common practice");
    CHECK(sum(c20 + cord("c", "amps = 10") + cord("c", "amps = 10")) == Lines{});
    CHECK(sum(c20 + cord("c", "amps = 12") + load("c", "amps = 12")) == Lines{});  // one is fixed
}

TEST_CASE("cord-sum-over-rating: counts each of several, and lasting ones too") {
    CHECK(sum(c20 + cord("c", "amps = 7\ncount = 3")) == Lines{"circuit:c notice practice 21 A, limit 20 A"});
    CHECK(sum(c20 + cord("c", "amps = 11\ncontinuous = true") + cord("c", "amps = 10")) ==
          Lines{"circuit:c notice practice 21 A, limit 20 A"});
}

TEST_CASE("cord-sum-over-rating: the legs of a two-pole circuit are not added") {
    const std::string two = house + branch("c", "1, 3", 20);
    CHECK(sum(two + cord("c", "amps = 15\nvolts = 120\nlegs = \"A\"") +
              cord("c", "amps = 15\nvolts = 120\nlegs = \"B\"")) == Lines{});
}

TEST_CASE("continuous-by-rule: an entry against the code is reckoned as lasting and told") {
    const std::string survey = by_rule("amps = 32\nvolts = 240\nduty = \"ev\"\ncontinuous = false");
    const auto finding = only(survey, "continuous-by-rule");
    CHECK(line_of(finding) == "circuit:c warning required");
    CHECK(sources_of(finding).find("625.42") != std::string::npos);
    const auto figures = assessment_of(survey).circuits.front();
    CHECK(figures.continuous_a->value == doctest::Approx(32));
}

TEST_CASE("continuous-by-rule: which loads are lasting whatever is entered") {
    const std::string no = "\ncontinuous = false";
    CHECK(declared_short(by_rule("watts = 4000\nduty = \"heating\"" + no)).size() == 1);
    CHECK(declared_short(by_rule("watts = 4500\nduty = \"water-heater\"\ngallons = 120" + no)).size() == 1);
    CHECK(declared_short(by_rule("watts = 4500\nduty = \"water-heater\"" + no)).size() == 1);
    CHECK(declared_short(by_rule("watts = 900\nduty = \"sign\"" + no)).size() == 1);
    CHECK(declared_short(by_rule("watts = 900\nduty = \"show-window\"" + no)).size() == 1);
}

TEST_CASE("continuous-by-rule: loads that may be entered as not lasting") {
    const std::string no = "\ncontinuous = false";
    CHECK(declared_short(by_rule("watts = 4500\nduty = \"water-heater\"\ngallons = 121" + no)) == Lines{});
    CHECK(declared_short(by_rule("watts = 18000\nduty = \"water-heater\"\nstorage = false" + no)) == Lines{});
    CHECK(declared_short(by_rule("watts = 1500\nduty = \"heating\"\nconnection = \"cord\"" + no)) == Lines{});
    CHECK(declared_short(by_rule("watts = 900\nduty = \"lighting\"" + no)) == Lines{});  // a dwelling's
    CHECK(declared_short(by_rule("amps = 32\nvolts = 240\nduty = \"ev\"")) == Lines{});  // nothing entered
    CHECK(declared_short(by_rule("amps = 32\nvolts = 240\nduty = \"ev\"\ncontinuous = true")) == Lines{});
}

TEST_CASE("continuous-by-rule: lighting lasts in a shop") {
    CHECK(
        declared_short(shop + branch("c", "1", 20) + load("c", "watts = 900\nduty = \"lighting\"\ncontinuous = false"))
            .size() == 1);
}
