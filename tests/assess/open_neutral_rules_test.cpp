// SPDX-License-Identifier: MIT
// neutral-open-symptom: readings taken together at a panel or a source. Its figures are common practice.
#include "assess/lines_shown.hpp"

namespace {

Lines symptom(const std::string& survey) { return found(survey, "neutral-open-symptom"); }

std::string at(const std::string& of, double volts, const std::string& keys = "") {
    return reading(of, "together = \"R\"\nvolts = " + std::to_string(volts) + "\n" + keys);
}

std::string legs(double a, double b) { return house + at("panel:MAIN/A", a) + at("panel:MAIN/B", b); }
std::string pair(double a, double b) { return two_of_wye + at("panel:MAIN/A", a) + at("panel:MAIN/B", b); }
std::string wye(double a, double b, double c) {
    return three_phase + at("panel:MAIN/A", a) + at("panel:MAIN/B", b) + at("panel:MAIN/C", c);
}

}  // namespace

TEST_CASE("neutral-open-symptom: legs of 120/240 V apart while their sum stays") {
    const auto finding = only(legs(131, 111), "neutral-open-symptom");
    CHECK(line_of(finding) == "panel:MAIN danger practice 20 V, limit 6 V");
    CHECK(said(finding.remedy).find("Call the utility") != std::string::npos);
    CHECK(symptom(legs(122, 120)) == Lines{});
}

TEST_CASE("neutral-open-symptom: legs that only stand 6 V apart are a caution") {
    CHECK(symptom(legs(123, 117)) == Lines{"panel:MAIN caution practice 6 V, limit 6 V"});
    CHECK(symptom(legs(123, 117.1)) == Lines{});
    CHECK(symptom(legs(126, 119)) == Lines{"panel:MAIN caution practice 7 V, limit 6 V"});  // not over 126 V
    CHECK(symptom(legs(126.1, 119)) == Lines{"panel:MAIN danger practice 7.1 V, limit 6 V"});
}

TEST_CASE("neutral-open-symptom: the sum of the legs must be that of the line") {
    CHECK(symptom(legs(127, 93)) == Lines{"panel:MAIN danger practice 34 V, limit 6 V"});   // 220 V
    CHECK(symptom(legs(127, 92)) == Lines{"panel:MAIN caution practice 35 V, limit 6 V"});  // 219 V
    CHECK(symptom(legs(131, 123)) == Lines{"panel:MAIN danger practice 8 V, limit 6 V"});   // 254 V
    CHECK(symptom(legs(132, 123)) == Lines{"panel:MAIN caution practice 9 V, limit 6 V"});  // 255 V
}

TEST_CASE("neutral-open-symptom: one leg rises when the other is loaded") {
    const std::string loaded = house + at("panel:MAIN/A", 117, "volts_unloaded = 121\ntest_load_a = 12");
    CHECK(symptom(loaded + at("panel:MAIN/B", 122, "volts_unloaded = 120")) ==
          Lines{"panel:MAIN danger practice 2 V, limit 2 V"});
    CHECK(symptom(loaded + at("panel:MAIN/B", 121.9, "volts_unloaded = 120")) == Lines{});
}

TEST_CASE("neutral-open-symptom: only what was read together; at a source too") {
    CHECK(symptom(house + at("panel:MAIN/A", 131) + reading("panel:MAIN/B", "together = \"S\"\nvolts = 111")) ==
          Lines{});
    CHECK(symptom(house + at("source:utility/A", 131) + at("source:utility/B", 111)) ==
          Lines{"source:utility danger practice 20 V, limit 6 V"});
}

TEST_CASE("neutral-open-symptom: two legs of a wye share the line voltage where their neutral is gone") {
    CHECK(symptom(pair(130, 80) + at("panel:MAIN/AB", 208)) ==
          Lines{"panel:MAIN danger practice 210 V, limit 214.24 V"});
    CHECK(symptom(pair(120, 120) + at("panel:MAIN/AB", 208)) == Lines{});
    CHECK(symptom(pair(118, 97) + at("panel:MAIN/AB", 208)) == Lines{});
    CHECK(symptom(pair(114.24, 100) + at("panel:MAIN/AB", 208)).size() == 1);  // 1.03 x 208 V exactly
}

TEST_CASE("neutral-open-symptom: without a line-to-line reading the nominal line voltage stands in") {
    CHECK(symptom(pair(130, 80)) == Lines{"panel:MAIN danger practice 210 V, limit 214.24 V"});
    CHECK(symptom(pair(119, 120)) == Lines{});
}

TEST_CASE("neutral-open-symptom: one leg of a three-phase wye high, another low") {
    CHECK(symptom(wye(128, 112, 120)) == Lines{"panel:MAIN danger practice 128 V, limit 126 V"});
    CHECK(symptom(wye(126, 112, 120)) == Lines{});
    CHECK(symptom(wye(128, 114, 120)) == Lines{});
    CHECK(symptom(wye(119, 120, 121)) == Lines{});
}

TEST_CASE("neutral-open-symptom: a 480Y/277 V wye in proportion, a system without rules not at all") {
    const auto on = [](const std::string& system) {
        return "format = 1\n[[panel]]\nid = \"MAIN\"\nsystem = \"" + system + "\"\n" + at("panel:MAIN/A", 292) +
               at("panel:MAIN/B", 262) + at("panel:MAIN/C", 277);
    };
    CHECK(symptom(on("480Y/277 3ph 4w")) == Lines{"panel:MAIN danger practice 292 V, limit 290.85 V"});
    CHECK(symptom(on("400Y/230 3ph 4w")) == Lines{});
}
