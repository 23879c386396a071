// SPDX-License-Identifier: MIT
#include "desk/plan.hpp"

#include <doctest/doctest.h>

#include "survey/edits/circuit_edits.hpp"

using namespace doorcard;

namespace {

Breaker breaker_in(std::vector<int> spaces, double amps) {
    Breaker it;
    it.panel = "M";
    it.spaces = std::move(spaces);
    it.id = it.default_id();
    it.amps = Amperes(amps);
    return it;
}

Circuit circuit_on(std::string id, std::string breaker) {
    Circuit it;
    it.id = std::move(id);
    it.breakers = {std::move(breaker)};
    return it;
}

/// Panel M of 12 spaces: kitchen on 1, bath on 3, range on 2+4, a spare in 6.
Survey as_found() {
    Survey survey;
    Source source;
    source.id = "u";
    survey.sources = Table<Source>({source});
    Panel panel;
    panel.id = "M";
    panel.spaces = 12;
    panel.fed_by = {"u"};
    survey.panels = Table<Panel>({panel});
    survey.breakers =
        Table<Breaker>({breaker_in({1}, 20), breaker_in({3}, 15), breaker_in({2, 4}, 40), breaker_in({6}, 20)});
    survey.circuits =
        Table<Circuit>({circuit_on("kitchen", "M:1"), circuit_on("bath", "M:3"), circuit_on("range", "M:2+4")});
    return survey;
}

FoundBreaker found(const Survey& survey, const std::string& id) {
    return found_breaker(survey, *survey.breakers.find(id));
}

PlannedMove move_of(const Survey& survey, const std::string& id, std::vector<int> spaces) {
    return {found(survey, id), {"M", std::move(spaces), {}}};
}
PlannedRating rating_of(const Survey& survey, const std::string& id, double amps) {
    return {found(survey, id), survey.breakers.find(id)->amps, Amperes(amps)};
}

Plan planned(const Survey& survey, const std::vector<Planned>& changes) {
    Plan plan{true, {}};
    for (const Planned& change : changes) {
        auto with = with_change(survey, plan, change);
        REQUIRE_MESSAGE(with, with.error().front().wrong);
        plan = *with;
    }
    return plan;
}

}  // namespace

TEST_CASE("plan: what is planned is drawn and judged, and what was found stays as it is") {
    const Survey survey = as_found();
    const Plan plan = planned(survey, {move_of(survey, "M:1", {9}), rating_of(survey, "M:1", 15)});
    const Survey later = with_plan(survey, plan).value();
    CHECK(later.breakers[0].id == "M:9");
    CHECK(later.breakers[0].amps == Amperes(15));
    CHECK(later.circuits[0].breakers == Ids{"M:9"});
    CHECK(survey == as_found());
    CHECK(with_plan(survey, Plan{}).value() == survey);
}

TEST_CASE("plan: for each breaker where from, where to, and its new rating") {
    const Survey survey = as_found();
    const Plan plan = planned(survey, {move_of(survey, "M:1", {9}), rating_of(survey, "M:1", 15),
                                       PlannedSwap{found(survey, "M:3"), found(survey, "M:6")}});
    const auto by_id = planned_by_breaker(survey, plan);
    REQUIRE(by_id.size() == 3);
    const PlannedFor& kitchen = by_id.at("M:1");
    CHECK(kitchen.from.spaces == std::vector{1});
    CHECK(kitchen.to.spaces == std::vector{9});
    CHECK(kitchen.amps == Amperes(15));
    CHECK(kitchen.words.size() == 2);
    CHECK(kitchen.can_be_done);
    CHECK(by_id.at("M:3").to.spaces == std::vector{6});
    CHECK(by_id.at("M:6").to.spaces == std::vector{3});
    CHECK_FALSE(by_id.at("M:6").amps);
}

TEST_CASE("plan: carried out in one step, it is what was planned") {
    const Survey survey = as_found();
    const Plan one = planned(survey, {move_of(survey, "M:1", {9})});
    const Edit edit = carry_out(survey, one).value();
    CHECK(edit.name == Message{"{0} as planned", {Message{"move breaker {0} to {1}", {"M:1", "9"}}}});
    CHECK(edit.apply(survey).value() == with_plan(survey, one).value());
    const Plan two = planned(survey, {move_of(survey, "M:1", {9}), rating_of(survey, "M:3", 20)});
    CHECK(carry_out(survey, two)->name.pattern == "do all that is planned");
    CHECK_FALSE(carry_out(survey, Plan{}));
}

TEST_CASE("plan: one change carried out leaves the others, for the breaker where it is then") {
    const Survey survey = as_found();
    const Plan plan = planned(survey, {move_of(survey, "M:1", {9}), rating_of(survey, "M:1", 15)});
    const CarriedOut moved = carry_out(survey, plan, 0).value();
    const Survey after = moved.edit.apply(survey).value();
    REQUIRE(moved.left.changes.size() == 1);
    CHECK(moved.left.as_found_locked);
    CHECK(planned_words(moved.left.changes.front()) == Message{"set breaker {0} to {1} A", {"M:9", 15.0}});
    CHECK(with_plan(after, moved.left).value() == with_plan(survey, plan).value());
}

TEST_CASE("plan: a move to where another is to leave is no step of its own before that") {
    const Survey survey = as_found();
    const Plan plan = planned(survey, {move_of(survey, "M:3", {5}), move_of(survey, "M:1", {3})});
    const auto early = carry_out(survey, plan, 1);
    REQUIRE_FALSE(early);
    CHECK(early.error().front().wrong == "breaker \"M:3\" sits there");
    const auto out = without_change(survey, plan, 0);
    REQUIRE_FALSE(out);
    CHECK(out.error().front().wrong == "another planned change builds on this one: breaker \"M:3\" sits there");
    CHECK(without_change(survey, plan, 1)->changes.size() == 1);
    CHECK_FALSE(without_change(survey, plan, 2));
}

TEST_CASE("plan: a second thought takes the place of the first, and back to what was found is no change") {
    const Survey survey = as_found();
    const Plan plan = planned(survey, {move_of(survey, "M:1", {9}), move_of(survey, "M:1", {11})});
    REQUIRE(plan.changes.size() == 1);
    CHECK(with_plan(survey, plan)->breakers[0].id == "M:11");
    CHECK(with_change(survey, plan, move_of(survey, "M:1", {1}))->changes.empty());
    CHECK(planned(survey, {rating_of(survey, "M:1", 15), rating_of(survey, "M:1", 20)}).changes.empty());
    const PlannedSwap swap{found(survey, "M:1"), found(survey, "M:3")}, back{swap.other, swap.one};
    CHECK(planned(survey, {swap, back}).changes.empty());
    CHECK_FALSE(with_change(survey, Plan{}, rating_of(survey, "M:1", 20)));
}

TEST_CASE("plan: what cannot be is refused when it is planned") {
    const Survey survey = as_found();
    CHECK(with_change(survey, {}, move_of(survey, "M:1", {3})).error().front().wrong == "breaker \"M:3\" sits there");
    CHECK_FALSE(with_change(survey, {}, move_of(survey, "M:1", {13})));
    const Plan plan = planned(survey, {move_of(survey, "M:1", {9})});
    CHECK_FALSE(with_change(survey, plan, move_of(survey, "M:3", {9})));
}

TEST_CASE("plan: spares, ties and neutrals are planned too") {
    const Survey survey = as_found();
    const Plan plan = planned(survey, {PlannedState{found(survey, "M:1"), BreakerState::spare},
                                       PlannedTie{{found(survey, "M:1"), found(survey, "M:3")}},
                                       PlannedNeutral{"kitchen", std::nullopt, "N1"}, move_of(survey, "M:3", {5})});
    const Survey later = with_plan(survey, plan).value();
    CHECK(later.breakers[0].state == BreakerState::spare);
    CHECK(later.breakers[0].tied_with == Ids{"M:5"});
    CHECK(later.circuits[0].neutral == "N1");
    const Plan again =
        planned(later, {PlannedUntie{found(later, "M:1")}, PlannedState{found(later, "M:1"), BreakerState::in_use}});
    CHECK_FALSE(with_plan(later, again)->breakers[1].tied_with);
    CHECK_FALSE(with_change(survey, {}, PlannedState{found(survey, "M:1"), BreakerState::in_use}));
}

TEST_CASE("plan: a survey that changed under it is said for each change, and the others still stand") {
    const Survey survey = as_found();
    const Plan plan =
        planned(survey, {move_of(survey, "M:1", {9}), rating_of(survey, "M:3", 20), rating_of(survey, "M:6", 15)});
    Survey other = remove_breaker("M:6").apply(survey).value();                  // gone
    other = feed_circuit("kitchen", {"M:2+4"}).apply(std::move(other)).value();  // M:1 feeds nothing any more
    const PlannedSurvey now = planned_survey(other, plan);
    REQUIRE(now.not_done.size() == 2);
    CHECK(now.not_done[0].change == 0);
    CHECK(now.not_done[0].why.wrong == "breaker \"M:1\" feeds something else than when this was planned");
    CHECK(now.not_done[1].change == 2);
    CHECK(now.not_done[1].why.wrong == "breaker \"M:6\" is no longer there");
    CHECK(now.survey.breakers[1].amps == Amperes(20));
    CHECK(with_plan(other, plan).error().size() == 2);
    CHECK_FALSE(carry_out(other, plan));
    CHECK(carry_out(other, plan, 1));
    CHECK_FALSE(planned_by_breaker(other, plan).at("M:1").can_be_done);
    CHECK(planned_by_breaker(other, plan).at("M:3").can_be_done);
    CHECK(without_change(other, plan, 0)->changes.size() == 2);
}

TEST_CASE("plan: another breaker under the same number is not taken for the one that was meant") {
    const Survey survey = as_found();
    const Plan plan = planned(survey, {rating_of(survey, "M:1", 15)});
    const Survey swapped = swap_breakers("M:1", "M:3").apply(survey).value();
    CHECK_FALSE(with_plan(swapped, plan));
    const Plan now = followed(plan, survey, swapped);
    CHECK(planned_words(now.changes.front()) == Message{"set breaker {0} to {1} A", {"M:3", 15.0}});
    CHECK(followed(now, swapped, survey) == plan);  // undone
    CHECK(with_plan(swapped, now)->breakers[0].amps == Amperes(15));
}

TEST_CASE("plan: what it is for is followed where it goes, and said where it is gone") {
    const Survey survey = as_found();
    const Plan plan = planned(survey, {rating_of(survey, "M:6", 15), PlannedNeutral{"bath", std::nullopt, "own"}});
    const Survey moved = move_breaker("M:6", {"M", {8}, {}}).apply(survey).value();
    CHECK(followed(plan, survey, moved).changes.front() == Planned(rating_of(moved, "M:8", 15)));
    const Survey fed = feed_circuit("kitchen", {"M:1", "M:6"}).apply(survey).value();
    CHECK(with_plan(fed, followed(plan, survey, fed)));
    const Survey gone = remove_breaker("M:6").apply(survey).value();
    CHECK(followed(plan, survey, gone) == plan);
    CHECK(with_plan(gone, plan).error().size() == 1);
    const Survey without_bath = remove_circuit("bath", Mentions::take_along).apply(survey).value();
    CHECK(with_plan(without_bath, plan).error().front().wrong == "circuit \"bath\" is no longer there");
    const Survey traced = share_neutral("bath", "N9").apply(survey).value();
    CHECK(with_plan(traced, plan).error().front().wrong ==
          "circuit \"bath\" has another neutral than when this was planned");
}
