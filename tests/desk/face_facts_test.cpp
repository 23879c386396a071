// SPDX-License-Identifier: MIT
#include "desk/face_facts.hpp"

#include <doctest/doctest.h>

#include "assess/schedule.hpp"
#include "desk/face_panels.hpp"
#include "file/read_survey.hpp"
#include "file/read_text.hpp"

using namespace doorcard;

namespace {

Survey example_survey(const std::string& name) {
    auto text = read_text(std::string(DOORCARD_SOURCE) + "/examples/" + name + ".survey.toml");
    return read_survey(std::move(*text)).value().survey;
}

}  // namespace

TEST_CASE("face: a row's load is that of the panel schedule") {
    for (const char* name : {"alder-row", "kiln-yard"}) {
        const Survey survey = example_survey(name);
        const Assessed all = example::assessed(survey);
        const auto schedules = schedules_of(network_of(survey), all.assessment, *built_in_book("NEC-2023"));
        std::size_t compared = 0;
        for (const PanelSchedule& schedule : schedules) {
            const FaceFacts facts = face_facts(all, schedule.panel);
            REQUIRE(facts.directory.rows.size() == schedule.rows.size());
            for (std::size_t i = 0; i < schedule.rows.size(); ++i) {
                const DirectoryRow& row = facts.directory.rows[i];
                CHECK(row.text == schedule.rows[i].entry.text);
                const RowLoad* load = facts.load_of(row);
                if (!load || row.circuits.empty() || !schedule.rows[i].percent_of_rating) continue;
                INFO(name, " ", name_of(row.positions));
                REQUIRE(load->share());
                CHECK(*load->share() * 100 == doctest::Approx(*schedule.rows[i].percent_of_rating));
                CHECK(load->most_is_measured() == schedule.rows[i].percent_measured);
                ++compared;
            }
        }
        CHECK(compared > 5);
    }
}

TEST_CASE("face: a neutral's finding stands on each of its rows") {
    const Survey survey = example::nested_neutrals();
    const FaceFacts facts = face_facts(example::assessed(survey), 0);
    for (const char* breaker : {"MAIN:9", "MAIN:13"}) {
        REQUIRE(facts.findings.contains(breaker));
        CHECK(facts.findings.at(breaker).severity == Severity::danger);
    }
    CHECK(facts.neutrals.at("N3").is_on_one_leg);
    CHECK_FALSE(facts.neutrals.at("N2").is_on_one_leg);
}

TEST_CASE("face: a feeder's load is that of the panel it feeds") {
    const Survey survey = example_survey("alder-row");
    const Assessed all = example::assessed(survey);
    const FaceFacts facts = face_facts(all, 0);
    const RowLoad& load = facts.loads.at("MAIN:17+19");
    const LoadFigures& figures = all.assessment.feeders[survey.panels.position("SHOP")];
    CHECK(load.measured == figures.measured_a);
    REQUIRE(load.calculated);
    CHECK(load.calculated->value == doctest::Approx(std::max(figures.legs_a.at('A'), figures.legs_a.at('B'))->value));
}
