// SPDX-License-Identifier: MIT
// The schedule as a value: sums by hand.
#include "assess/schedule.hpp"

#include <doctest/doctest.h>

#include "assess/findings_of.hpp"
#include "file/read_survey.hpp"

using namespace doorcard;

namespace {

std::vector<PanelSchedule> schedules(const std::string& text) {
    const auto survey = read_survey({"test.survey.toml", text});
    REQUIRE(survey.has_value());
    const RuleBook book = *built_in_book("NEC-2023");
    const Network network = network_of(survey->survey);
    return schedules_of(network, assess(network, book), book);
}

const ScheduleRow& row_at(const PanelSchedule& schedule, int space) {
    for (const ScheduleRow& row : schedule.rows)
        for (const Position at : row.positions())
            if (at.space == space) return row;
    throw std::runtime_error("no such space");
}

double va(const ScheduleRow& row, char leg) { return row.va.at(leg)->value; }
double va(const PanelSchedule& schedule, std::size_t leg) { return schedule.legs[leg].connected_va->value; }

/// The VA of all rows on a leg.
double sum_of_rows(const PanelSchedule& schedule, char leg) {
    double sum = 0;
    for (const ScheduleRow& row : schedule.rows)
        if (const auto at = row.va.find(leg); at != row.va.end() && at->second) sum += at->second->value;
    return sum;
}

}  // namespace

TEST_CASE("schedule: a load stands on its leg, a pair half on each") {
    const auto main = schedules(house + branch("k", "1", 20) + load("k", "va = 1500") + branch("r", "2, 4", 50) +
                                load("r", "watts = 12000\nvolts = 240\nduty = \"range\""))
                          .front();
    CHECK(va(row_at(main, 1), 'A') == doctest::Approx(1500));
    CHECK(va(row_at(main, 2), 'A') == doctest::Approx(6000));
    CHECK(va(row_at(main, 2), 'B') == doctest::Approx(6000));
    CHECK(row_at(main, 2).poles[1].va->value == doctest::Approx(6000));
    CHECK(row_at(main, 2).duties == std::vector{Duty::range});
    CHECK(va(main, 0) == doctest::Approx(7500));
    CHECK(va(main, 1) == doctest::Approx(6000));
}

TEST_CASE("schedule: three poles of a wye carry a third each") {
    const auto main =
        schedules(three_phase + branch("m", "1, 3, 5", 30) + load("m", "va = 9000\nvolts = 208\nphases = 3") +
                  branch("l", "2", 20) + load("l", "va = 600"))
            .front();
    for (const char leg : {'A', 'B', 'C'}) CHECK(va(row_at(main, 1), leg) == doctest::Approx(3000));
    CHECK(va(main, 0) == doctest::Approx(3600));
    CHECK(va(main, 2) == doctest::Approx(3000));
    CHECK(main.connected_va->value == doctest::Approx(9600));
}

TEST_CASE("schedule: numbering, turned over and the high leg decide the leg of a row") {
    const std::string load_on_3 = branch("c", "3", 20) + load("c", "va = 100");
    CHECK(row_at(schedules(supply("120/240 1ph 3w", "numbering = \"single-column\"") + load_on_3).front(), 3).on_left);
    CHECK(row_at(schedules(supply("120/240 1ph 3w", "numbering = \"single-column\"") + load_on_3).front(), 3)
              .poles[0]
              .leg == 'A');
    CHECK(
        row_at(schedules(supply("120/240 1ph 3w", "numbering = \"down-left\"") + load_on_3).front(), 3).poles[0].leg ==
        'A');
    CHECK(row_at(schedules(supply("120/240 1ph 3w", "turned_over = true\nlegs_down = \"AB\"") + load_on_3).front(), 3)
              .poles[0]
              .leg == 'A');  // row 19 of 20 from the top: A
    const auto high =
        schedules(high_leg + branch("p", "1, 3, 5", 30) + load("p", "va = 6000\nvolts = 240\nphases = 3")).front();
    CHECK(va(row_at(high, 1), 'B') == doctest::Approx(2000));
}

TEST_CASE("schedule: a feeder's row carries the fed panel's legs, counted once") {
    const std::string text = house + branch("k", "1", 20) + load("k", "va = 1000") + breaker("2, 4", 60) +
                             "[[panel]]\nid = \"SUB\"\nfed_by = \"MAIN:2+4\"\nspaces = 8\n" +
                             "[[breaker]]\npanel = \"SUB\"\nspaces = [1]\namps = 20\n" + circuit("s", "\"SUB:1\"") +
                             load("s", "va = 700");
    const auto all = schedules(text);
    CHECK(row_at(all[0], 2).entry.kind == RowKind::feeder);
    CHECK(va(row_at(all[0], 2), 'A') == doctest::Approx(700));
    CHECK(va(all[0], 0) == doctest::Approx(1700));
    CHECK(all[0].connected_va->value == doctest::Approx(1700));
    for (const PanelSchedule& schedule : all)
        for (const ScheduleLeg& leg : schedule.legs)
            CHECK(sum_of_rows(schedule, leg.leg) == doctest::Approx(leg.connected_va.value_or(VoltAmperes(0)).value));
}

TEST_CASE("schedule: a circuit known in part is 'at least', one without loads is not known, never 0") {
    const auto main = schedules(house + branch("k", "1", 20) + load("k", "va = 1200") + load("k", "title = \"Pump\"") +
                                branch("b", "2", 20) + breaker("3", 20) + breaker("4", 20, "state = \"spare\""))
                          .front();
    CHECK(va(row_at(main, 1), 'A') == doctest::Approx(1200));
    CHECK_FALSE(row_at(main, 1).va_complete);
    CHECK_FALSE(row_at(main, 2).va.at('A').has_value());
    CHECK_FALSE(row_at(main, 2).va_complete);
    CHECK_FALSE(row_at(main, 3).va_complete);
    CHECK(row_at(main, 4).va_complete);
    CHECK_FALSE(main.legs[0].complete);
}

TEST_CASE("schedule: measured stands on the leg that the reading names, else on the row") {
    const auto main = schedules(house + branch("d", "1, 3", 30) + branch("w", "2, 4", 30) +
                                reading("breaker:MAIN:1+3/B", "amps = 21.2") + reading("circuit:w", "amps = 15"))
                          .front();
    CHECK_FALSE(row_at(main, 1).poles[0].measured_a.has_value());
    CHECK(row_at(main, 1).poles[1].measured_a->value == doctest::Approx(21.2));
    CHECK_FALSE(row_at(main, 2).poles[0].measured_a.has_value());
    CHECK(row_at(main, 2).measured_highest_a->value == doctest::Approx(15));
    CHECK(*row_at(main, 2).percent_of_rating == doctest::Approx(50));
    CHECK(row_at(main, 2).percent_measured);
}

TEST_CASE("schedule: spaces add up, and nobody's looking is not emptiness") {
    const auto main = schedules(supply("120/240 1ph 3w", "empty_spaces = [5, 6]") + breaker("1, 3", 30) +
                                breaker("2", 20, "state = \"spare\""))
                          .front();
    CHECK(main.spaces.total == 40);
    CHECK(main.spaces.used == 2);
    CHECK(main.spaces.spare == 1);
    CHECK(main.spaces.empty == 2);
    CHECK(main.spaces.unseen == 35);
}
