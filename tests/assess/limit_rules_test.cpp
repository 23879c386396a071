// SPDX-License-Identifier: MIT
// limit-passed: watch levels of the surveyor's own.
#include <algorithm>

#include "assess/lines_shown.hpp"
#include "assess/reading_keys.hpp"
#include "file/keys.hpp"

using namespace doorcard;

namespace {

Lines passed(const std::string& survey) { return found(survey, "limit-passed"); }

std::string watched(const std::string& key, const std::string& level, const std::string& of = "circuit:c") {
    return house + branch("c", "1", 20) + "[[limit]]\nof = \"" + of + "\"\nkey = \"" + key + "\"\n" + level + "\n";
}

}  // namespace

TEST_CASE("limit-passed: above and below, by the reading that passes most; the level itself is within") {
    const auto finding = only(watched("amps", "above = 14") + reading("circuit:c", "amps = 14.2") +
                                  reading("circuit:c", "amps = 15.5") + reading("circuit:c", "amps = 3"),
                              "limit-passed");
    CHECK(line_of(finding) == "circuit:c notice practice 15.5 A, limit 14 A");
    CHECK(passed(watched("amps", "above = 14") + reading("circuit:c", "amps = 14")) == Lines{});
    CHECK(passed(watched("volts", "below = 114") + reading("circuit:c", "volts = 113") +
                 reading("circuit:c", "volts = 112.5")) == Lines{"circuit:c notice practice 112.5 V, limit 114 V"});
    CHECK(passed(watched("volts", "below = 114") + reading("circuit:c", "volts = 114")) == Lines{});
}

TEST_CASE("limit-passed: only its thing, its key and its legs") {
    CHECK(passed(watched("amps", "above = 14") + reading("breaker:MAIN:1", "amps = 15")) == Lines{});
    CHECK(passed(watched("amps", "above = 14") + reading("circuit:c", "amps_max = 15")) == Lines{});
    CHECK(passed(watched("amps", "above = 9", "panel:MAIN/A") + reading("panel:MAIN/B", "amps = 15")) == Lines{});
    CHECK(passed(watched("amps", "above = 9", "panel:MAIN/A") + reading("panel:MAIN/A", "amps = 15")) ==
          Lines{"panel:MAIN notice practice 15 A, limit 9 A"});
    CHECK(passed(watched("amps", "above = 9", "panel:MAIN") + reading("panel:MAIN/N", "amps = 15")) == Lines{});
    CHECK(passed(watched("amps", "above = 9")) == Lines{});  // nobody read
}

TEST_CASE("limit-passed: every numeric key of readings can be watched, each with its unit") {
    for (const Field& field : reading_keys()) {
        if (field.form != Form::number) continue;
        CAPTURE(field.name);
        REQUIRE(reading_key(field.name) != nullptr);
    }
    CHECK(passed(watched("leakage_ma", "above = 1") + reading("circuit:c", "leakage_ma = 1.4")) ==
          Lines{"circuit:c notice practice 1.4 mA, limit 1 mA"});
    CHECK(passed(watched("temp_c", "above = 40") + reading("circuit:c", "temp_c = 41")) ==
          Lines{"circuit:c notice practice 41 °C, limit 40 °C"});
    CHECK(reading_key("demand15_a") == nullptr);  // a recording's figure
}
