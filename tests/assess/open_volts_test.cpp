// SPDX-License-Identifier: MIT
// What each leg would get with its neutral open, and where a finding says it.
#include "assess/lines_shown.hpp"

using namespace doorcard;

namespace {

std::string shared(const std::string& id, const std::string& spaces) {
    return branch(id, spaces, 20, "neutral = \"N\"\ninstalled = 2001");
}
const std::string two = house + shared("a", "1") + shared("b", "3");

std::optional<double> open(const Assessment& assessment, char leg) {
    const auto& volts = assessment.neutrals.front().open_volts.at(leg);
    return volts ? std::optional(volts->value) : std::nullopt;
}

}  // namespace

TEST_CASE("open neutral: 100 W and 200 W would get 160 and 80 V") {
    const Assessment assessment = assessment_of(two + load("a", "watts = 100") + load("b", "watts = 200"));
    CHECK(open(assessment, 'A').value() == doctest::Approx(160));
    CHECK(open(assessment, 'B').value() == doctest::Approx(80));
}

TEST_CASE("open neutral: line-to-line loads change nothing, a leg without known loads has no figure") {
    const std::string oven = branch("oven", "2, 4", 30, "neutral = \"N\"");
    const Assessment beside = assessment_of(two + oven + load("a", "watts = 100") + load("b", "watts = 200") +
                                            load("oven", "watts = 4000\nvolts = 240"));
    CHECK(open(beside, 'A').value() == doctest::Approx(160));
    const Assessment one = assessment_of(two + load("a", "watts = 100"));
    CHECK(open(one, 'A').value() == doctest::Approx(0));
    CHECK_FALSE(open(one, 'B'));
    CHECK_FALSE(open(assessment_of(two), 'A'));
}

TEST_CASE("open neutral: no figure where a load's leg is not known") {
    const std::string oven = branch("oven", "2, 4", 30, "neutral = \"N\"");
    const Assessment assessment = assessment_of(two + oven + load("a", "watts = 100") + load("b", "watts = 200") +
                                                load("oven", "watts = 900\nvolts = 120"));
    CHECK_FALSE(open(assessment, 'A'));
    CHECK_FALSE(open(assessment, 'B'));
}

TEST_CASE("neutral-not-opened-together: says what the legs would get where one would stand high") {
    const auto text = [](const std::string& survey) { return said(only(survey, "neutral-not-opened-together").text); };
    CHECK(text(two + load("a", "watts = 100") + load("b", "watts = 200")).find("leg A 160 V and leg B 80 V") !=
          std::string::npos);
    CHECK(text(two + load("a", "watts = 180") + load("b", "watts = 200")).find(" V") == std::string::npos);  // 126 V
    CHECK(text(two).find(" V") == std::string::npos);
}
