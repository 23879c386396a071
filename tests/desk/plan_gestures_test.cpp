// SPDX-License-Identifier: MIT
#include "desk/plan_gestures.hpp"

#include <doctest/doctest.h>

using namespace doorcard;

namespace {

/// Panel M of 6 spaces: 20 A in 1, 15 A in 3, 40 A in 2 and 4.
Survey three_breakers() {
    Survey survey;
    Panel panel;
    panel.id = "M";
    panel.spaces = 6;
    survey.panels = Table<Panel>({panel});
    for (const auto& [spaces, amps] : {std::pair{std::vector{1}, 20}, {std::vector{3}, 15}, {std::vector{2, 4}, 40}}) {
        Breaker it;
        it.panel = "M";
        it.spaces = spaces;
        it.id = it.default_id();
        it.amps = Amperes(amps);
        survey.breakers = survey.breakers.with_added(it);
    }
    return survey;
}

std::string wrong(const Outcome<Plan>& plan) { return plan ? "" : plan.error().front().wrong; }

}  // namespace

TEST_CASE("planned gestures: a handle is drawn to a free space, on from there, and back") {
    const Survey survey = three_breakers();
    const Plan out = planned_move(survey, {}, "M", {1, ' '}, {5, ' '}).value();
    const Words words = Words::in("en");
    const auto marks = planned_marks(survey, out, "M", words);
    REQUIRE(marks.size() == 1);
    CHECK(marks[0].from == std::vector<Position>{{1, ' '}});
    CHECK(marks[0].to == std::vector<Position>{{5, ' '}});
    CHECK_FALSE(marks[0].amps);
    CHECK(marks[0].words == "move breaker M:1 to 5");
    CHECK(planned_marks(survey, out, "X", words).empty());
    const Plan on = planned_move(survey, out, "M", {5, ' '}, {6, ' '}).value();
    CHECK(planned_marks(survey, on, "M", words).at(0).to == std::vector<Position>{{6, ' '}});
    CHECK(planned_move(survey, on, "M", {1, ' '}, {1, ' '})->changes.empty());
}

TEST_CASE("planned gestures: onto another they change places, into the space of one that leaves they do not") {
    const Survey survey = three_breakers();
    const Plan swap = planned_move(survey, {}, "M", {1, ' '}, {3, ' '}).value();
    CHECK(std::holds_alternative<PlannedSwap>(swap.changes.front()));
    const Plan leaves = planned_move(survey, {}, "M", {3, ' '}, {5, ' '}).value();
    const Plan follows = planned_move(survey, leaves, "M", {1, ' '}, {3, ' '}).value();
    CHECK(with_plan(survey, follows)->breakers[0].spaces == std::vector{3});
    CHECK(wrong(planned_move(survey, {}, "M", {1, ' '}, {2, ' '})) == "breaker \"M:2+4\" sits there");
    CHECK(wrong(planned_move(survey, {}, "M", {2, ' '}, {6, ' '})) == "2 poles do not fit from 6 down");
    CHECK(wrong(planned_move(survey, {}, "M", {6, ' '}, {5, ' '})) == "no breaker is known in 6");
}

TEST_CASE("planned gestures: a rating that is planned is written at the handle; what went from under it is said") {
    const Survey survey = three_breakers();
    const Plan plan = planned_rating(survey, {}, "M", {3, ' '}, Amperes(20)).value();
    const Words words = Words::in("en");
    CHECK(planned_marks(survey, plan, "M", words).at(0).amps == 20);
    const Survey gone = remove_breaker("M:3").apply(survey).value();
    CHECK(planned_marks(gone, plan, "M", words).at(0).words ==
          "cannot be done any more: put a 20 A breaker in for M:3");
}
