// SPDX-License-Identifier: MIT
// What a person types into a field: numbers, units, dates, lists.
#include <doctest/doctest.h>

#include <fmt/format.h>

#include "desk/moment_typed.hpp"
#include "desk/number_typed.hpp"
#include "desk/pasted_cells.hpp"

using namespace doorcard;

namespace {

std::string number_or_why(const char* typed, const char* unit) {
    const auto number = number_typed(typed, unit);
    return number ? fmt::format("{}", *number) : number.error().front().wrong + "; " + number.error().front().right;
}

std::string moment_or_why(const char* typed, bool needs_time) {
    const auto moment = moment_typed(typed, needs_time);
    return moment ? *moment : moment.error().front().wrong + "; " + moment.error().front().right;
}

std::string cells_or_why(const char* text) {
    const auto lines = pasted_cells(text);
    if (!lines) return lines.error().front().wrong;
    std::string shown;
    for (const auto& line : *lines) {
        for (const std::string& cell : line) shown += "[" + cell + "]";
        shown += "\n";
    }
    return shown;
}

}  // namespace

TEST_CASE("a number is understood as it is typed, with its unit or without") {
    struct Row {
        const char *typed, *unit, *read;
    };
    const Row rows[] = {
        {"20", "A", "20"},
        {" 20A ", "A", "20"},
        {"20 amps", "A", "20"},
        {"3,5", "A", "3.5"},
        {"3.5", "A", "3.5"},
        {"0,125", "A", "0.125"},
        {"1.2 kW", "W", "1200"},
        {"1,5 kva", "VA", "1500"},
        {"400 mA", "A", "0.4"},
        {"10 kA", "kA", "10"},
        {"38 ft", "feet", "38"},
        {"38'", "feet", "38"},
        {"19 m", "feet", "62.336"},
        {"62 pies", "metres", "18.8976"},
        {"170 m²", "square feet", "1829.8648"},
        {"77 °F", "degrees C", "25"},
        {"31 °C", "degrees C", "31"},
        {"90 min", "hours", "1.5"},
        {"1,200,000", "W", "1200000"},
        {"1.200,5", "W", "1200.5"},
        {"1,200.5", "W", "1200.5"},
        {"1.200", "ohm", "1.2"},
        {"2 MΩ", "megohm", "2"},
        {"1978", "year", "1978"},
    };
    for (const Row& row : rows) CHECK_MESSAGE(number_or_why(row.typed, row.unit) == row.read, row.typed);
}

TEST_CASE("a number that may be read two ways, or is of another unit, is refused with what would be right") {
    CHECK(number_or_why("1,200", "W") == "1,200 may be read two ways; write 1200 or 1.200");
    CHECK(number_or_why("12 kg", "A") == "\"kg\" is not of A; write it in A");
    CHECK(number_or_why("1200 VA", "W") == "\"VA\" is not of W; write it in W");
    CHECK(number_or_why("about 20", "A") == "\"about 20\" is no number; write a number, as 20 or 3.5");
    CHECK(number_or_why("-5", "A") == "\"-5\" is no number; write a number, as 20 or 3.5");
    CHECK(number_or_why("1,2,3", "A") == "\"1,2,3\" is no number; write a number, as 20 or 3.5");
    CHECK(number_or_why("12,34.5", "A") == "\"12,34.5\" is no number; write a number, as 20 or 3.5");
    CHECK(number_or_why("3 x", "") == "\"3 x\" is no number; write a number, as 20 or 3.5");
    CHECK(number_or_why(".", "A") == "\".\" is no number; write a number, as 20 or 3.5");
}

TEST_CASE("a date is year, month and day; a moment needs its time of day") {
    CHECK(moment_or_why("2026-5-4", false) == "2026-05-04");
    CHECK(moment_or_why("2026-05-14 9:30", true) == "2026-05-14T09:30:00");
    CHECK(moment_or_why("2026-05-14T09:30:15-05:00", true) == "2026-05-14T09:30:15-05:00");
    CHECK(moment_or_why("2026-05-14", true) == "\"2026-05-14\" is no date and time; write it as 2026-05-14 09:30");
    CHECK(moment_or_why("5/4/2026", false) == "\"5/4/2026\" is no date; write it as 2026-05-14");
    CHECK(moment_or_why("26-05-14", false) == "\"26-05-14\" is no date; write it as 2026-05-14");
    CHECK(moment_or_why("2026-05-14 noon", false) == "\"2026-05-14 noon\" is no date; write it as 2026-05-14");
}

TEST_CASE("a pasted block is cut at tabs, else semicolons, else commas, and quotes keep them") {
    CHECK(cells_or_why("5\t12.4\n7\t3,5\r\n\n") == "[5][12.4]\n[7][3,5]\n");
    CHECK(cells_or_why("5;3,5\n7;4,2") == "[5][3,5]\n[7][4,2]\n");
    CHECK(cells_or_why("\"Kitchen, east\",5\n\"say \"\"on\"\"\",7") == "[Kitchen, east][5]\n[say \"on\"][7]\n");
    CHECK(cells_or_why("12.4\n3.5") == "[12.4]\n[3.5]\n");
    CHECK(cells_or_why("3,5\n4,2") == "its commas may part cells, or be decimal signs");
    CHECK(cells_or_why(" \n\t\n") == "there is nothing to paste");
}
