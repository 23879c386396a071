// SPDX-License-Identifier: MIT
// Random plans on random buildings: what is planned is what comes of carrying it out, at once or one by one; its file
// says it all; nothing is lost from it in silence.
#include <doctest/doctest.h>

#include "desk/plan.hpp"
#include "file/side_notes.hpp"
#include "property/draw_building.hpp"

using namespace doorcard;

namespace {

template <class T>
const T& any_of(const Table<T>& table, Draw& draw) {
    return table[static_cast<std::size_t>(draw.number(0, static_cast<int>(table.size()) - 1))];
}

Planned random_change(const Survey& survey, Draw& draw) {
    const Breaker& breaker = any_of(survey.breakers, draw);
    const Circuit& circuit = any_of(survey.circuits, draw);
    const FoundBreaker found = found_breaker(survey, breaker),
                       other = found_breaker(survey, any_of(survey.breakers, draw));
    switch (draw.number(1, 7)) {
        case 1: {
            std::vector<int> spaces;
            for (std::size_t i = 0; i < breaker.poles(); ++i) spaces.push_back(draw.number(1, 84));
            return PlannedMove{found, {breaker.panel, spaces, {}}};
        }
        case 2:
            return PlannedSwap{found, other};
        case 3:
            return PlannedRating{found, breaker.amps, Amperes(draw.number(10, 60) / 2.0)};
        case 4:
            return PlannedTie{{found, other}};
        case 5:
            return PlannedUntie{found};
        case 6:
            return PlannedState{found, draw.one_in(2) ? BreakerState::spare : BreakerState::in_use};
        default:
            return PlannedNeutral{circuit.id, circuit.neutral, draw.one_in(2) ? "own" : "P0-N1"};
    }
}

/// Breakers named by their places, as most are.
Survey by_place(Survey survey) {
    for (std::size_t i = 0; i < survey.breakers.size(); ++i) {
        const Breaker& breaker = survey.breakers[i];
        if (breaker.id != breaker.default_id()) {
            Breaker given = breaker;
            given.id_given = true;
            survey.breakers = survey.breakers.with_row(i, given);
        }
    }
    return survey;
}

Plan random_plan(const Survey& survey, Draw& draw) {
    Plan plan{draw.one_in(2), {}};
    for (int tries = draw.number(1, 12); tries > 0; --tries)
        if (auto with = with_change(survey, plan, random_change(survey, draw))) plan = std::move(*with);
    return plan;
}

}  // namespace

TEST_CASE("law: what is planned is what comes of it, carried out at once or one by one") {
    int carried = 0;
    for (int i = 0; i < 150; ++i) {
        CAPTURE(i);
        Draw draw(static_cast<std::uint64_t>(i) + 2468);
        Survey survey = by_place(random_building(draw));
        Plan plan = random_plan(survey, draw);
        if (plan.changes.empty()) continue;
        const Survey planned = with_plan(survey, plan).value();
        CHECK(carry_out(survey, plan)->apply(survey).value() == planned);
        CHECK(read_side_notes(side_notes_text({plan, "format = 1\n"})).value() == SideNotes{plan, "format = 1\n"});
        while (!plan.changes.empty()) {  // each builds on those before it
            const CarriedOut step = carry_out(survey, plan, 0).value();
            survey = step.edit.apply(survey).value();
            plan = step.left;
            REQUIRE_MESSAGE(with_plan(survey, plan), with_plan(survey, plan).error().front().wrong);
            CHECK(with_plan(survey, plan).value() == planned);
            ++carried;
        }
        CHECK(survey == planned);
    }
    CHECK(carried > 300);
}

TEST_CASE("law: of a plan under which the survey changed, every change is done or said") {
    int said = 0;
    for (int i = 0; i < 150; ++i) {
        CAPTURE(i);
        Draw draw(static_cast<std::uint64_t>(i) + 1357);
        const Survey survey = by_place(random_building(draw));
        const Plan plan = random_plan(survey, draw);
        const Survey other = edited(edited(edited(survey, draw), draw), draw);
        const PlannedSurvey now = planned_survey(other, plan);
        said += static_cast<int>(now.not_done.size());
        CHECK(with_plan(other, plan).has_value() == now.not_done.empty());
        Plan what_can;
        for (std::size_t c = 0; c < plan.changes.size(); ++c)
            if (std::ranges::find(now.not_done, c, &NotAsPlanned::change) == now.not_done.end())
                what_can.changes.push_back(plan.changes[c]);
        CHECK(with_plan(other, what_can).value() == now.survey);
    }
    CHECK(said > 20);
}
