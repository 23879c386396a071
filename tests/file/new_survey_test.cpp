// SPDX-License-Identifier: MIT
#include "file/new_survey.hpp"

#include <fmt/format.h>

#include <regex>

#include "file/reading.hpp"

using namespace doorcard;

TEST_CASE("new_survey: with nothing known it reads, and guesses nothing") {
    const Survey survey = survey_of(new_survey({}));
    REQUIRE(survey.sources.size() == 1);
    REQUIRE(survey.panels.size() == 1);
    CHECK(survey.panels[0].id == "MAIN");
    CHECK(survey.panels[0].fed_by == Ids{"utility"});
    CHECK_FALSE(survey.sources[0].system);
    CHECK_FALSE(survey.panels[0].spaces);
    CHECK_FALSE(survey.panels[0].main_a);
    CHECK_FALSE(survey.heading.title);
}

TEST_CASE("new_survey: what is known stands in it, for every system") {
    for (const SystemFacts& facts : all_systems()) {
        const Survey survey = survey_of(new_survey({facts.system, 42, 200.0}));
        CHECK(survey.sources[0].system == facts.system);
        CHECK(survey.panels[0].spaces == 42);
        CHECK(survey.panels[0].main_a == Amperes(200));
    }
}

TEST_CASE("new_survey: every line that is commented out reads as well") {
    std::string text = new_survey({});
    text = text.substr(text.find("format = 1"));
    text = std::regex_replace(text, std::regex("\n# (\\[\\[|[a-z_]+ = )"), "\n$1");
    const Survey survey = survey_of(text);
    CHECK(survey.breakers.size() == 1);
    CHECK(survey.loads.size() == 1);
    CHECK(survey.readings.size() == 1);
    CHECK(survey.panels[0].main == MainKind::breaker);
}

TEST_CASE("new_survey: no line is wider than a terminal's 100 columns") {
    std::istringstream lines(new_survey({System::high_leg_240, 84, 400.0}));
    for (std::string line; std::getline(lines, line);) CHECK(line.size() <= 100);
}
