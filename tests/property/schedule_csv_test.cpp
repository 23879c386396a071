// SPDX-License-Identifier: MIT
// The schedule's CSV read back: survey -> CSV -> survey keeps what a list can hold.
#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <set>

#include "assess/schedule.hpp"
#include "file/read_list.hpp"
#include "file/read_survey.hpp"
#include "property/draw.hpp"
#include "sheet/schedule.hpp"

using namespace doorcard;

namespace {

/// What must come through, of one breaker; texts as the schedule prints them.
struct Kept {
    std::vector<std::pair<int, char>> poles;
    std::optional<Amperes> amps;
    Guards guards;
    std::set<std::string> ties;
    BreakerState state = BreakerState::in_use;
    std::string device;
    bool operator==(const Kept&) const = default;
};

Kept kept_of(const Breaker& breaker) {
    Kept kept;
    for (std::size_t i = 0; i < breaker.spaces.size(); ++i)
        kept.poles.emplace_back(breaker.spaces[i], breaker.halves.empty() ? ' ' : breaker.halves[i]);
    std::ranges::sort(kept.poles);
    kept.amps = breaker.amps;
    kept.guards = breaker.guards;
    if (breaker.tied_with) kept.ties.insert(breaker.tied_with->begin(), breaker.tied_with->end());
    kept.state = breaker.state.value_or(BreakerState::in_use);
    kept.device = breaker.device.value_or("breaker");
    return kept;
}

std::map<std::string, Kept> breakers_of(const Survey& survey) {
    std::map<std::string, Kept> all;
    for (const Breaker& breaker : survey.breakers) all.emplace(breaker.id, kept_of(breaker));
    return all;
}

const std::vector<std::string> texts = {"Kitchen, east",   "=1+1",       "+5",        "-",        "@x",    "'tis",
                                        "a \"good\" room", "two\nlines", "Ba\u00F1o", " spaced ", "\ttab", "Range"};

/// A survey that random_survey makes, with guards, ties, states and odd texts.
Survey drawn(Draw& draw) {
    Survey survey = random_survey(draw);
    std::vector<Breaker> breakers = survey.breakers.rows();
    for (Breaker& breaker : breakers) {
        if (draw.one_in(3))
            breaker.guards = draw.of(std::vector<std::vector<Guard>>{{}, {Guard::arc}, {Guard::arc, Guard::ground}});
        if (draw.one_in(4)) breaker.tied_with = Ids{draw.of(breakers).id};
        if (draw.one_in(6)) breaker.device = "fuse";
        if (draw.one_in(8)) breaker.amps.reset();
    }
    for (const char half : {'a', 'b'}) {
        Breaker tandem;
        tandem.panel = survey.panels[0].id;
        tandem.spaces = {81, 83};
        tandem.halves = {half, half};
        if (draw.one_in(2)) tandem.state = draw.of(std::vector{BreakerState::spare, BreakerState::off});
        tandem.id = tandem.default_id();
        breakers.push_back(tandem);
    }
    std::vector<Circuit> circuits = survey.circuits.rows();
    for (Circuit& circuit : circuits)
        if (draw.one_in(2)) circuit.purpose = draw.of(texts);
    survey.breakers = Table<Breaker>(std::move(breakers));
    survey.circuits = Table<Circuit>(std::move(circuits));
    return survey;
}

struct Through {
    std::vector<PanelSchedule> schedules;
    ListRead read;
};

Through through_csv(const Network& network) {
    static const RuleBook book = *built_in_book("NEC-2023");
    Through result{schedules_of(network, assess(network, book), book), {}};
    result.read = read_list(schedule_csv(network, result.schedules, {}, Words::in("en")), {});
    return result;
}

}  // namespace

TEST_CASE("laws: a schedule's CSV comes back with panels, spaces, poles, halves, amperes, guards, ties and states") {
    Draw draw(20260514);
    for (int round = 0; round < 150; ++round) {
        CAPTURE(round);
        const Survey survey = drawn(draw);
        const Through through = through_csv(network_of(survey));
        for (const Complaint& complaint : through.read.refused) FAIL_CHECK(complaint_line("csv", complaint));
        CHECK(breakers_of(through.read.survey) == breakers_of(survey));
        CHECK(read_survey({"s", listed_survey_text(through.read.survey)})->survey == through.read.survey);
    }
}

TEST_CASE("laws: the texts of a schedule come back as old labels, its wires and neutrals with their circuits") {
    Draw draw(7);
    for (int round = 0; round < 100; ++round) {
        CAPTURE(round);
        const Survey survey = drawn(draw);
        const Network network = network_of(survey);
        const Through through = through_csv(network);
        for (const PanelSchedule& schedule : through.schedules)
            for (const ScheduleRow& row : schedule.rows) {
                if (!row.entry.breaker || row.entry.kind != RowKind::circuits) continue;
                const Breaker* came = through.read.survey.breakers.find(survey.breakers[*row.entry.breaker].id);
                REQUIRE(came != nullptr);
                CHECK(came->old_label == Words::in("en").say(row.entry.text));
                const auto circuit = std::ranges::find_if(
                    through.read.survey.circuits, [&](const Circuit& c) { return c.breakers == Ids{came->id}; });
                REQUIRE(circuit != through.read.survey.circuits.end());
                CHECK(circuit->traced->how == "old-directory");
                CHECK_FALSE(circuit->purpose);
                CHECK(circuit->neutral == row.neutral);
                CHECK((circuit->ground ? circuit->ground->size : std::nullopt) == row.ground_size);
            }
    }
}
