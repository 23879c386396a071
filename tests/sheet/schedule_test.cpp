// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <algorithm>

#include "sheet/example_panels.hpp"
#include "sheet/schedule.hpp"
#include "sheet/texts.hpp"

using namespace doorcard;

namespace {

std::vector<PanelSchedule> schedules(const Network& network) {
    const RuleBook book = *built_in_book("NEC-2023");
    return schedules_of(network, assess(network, book), book);
}

Sheet sheet_of(const Survey& survey, ScheduleChoice choice = {}, const Words& words = Words::in("en")) {
    const Network network = network_of(survey);
    return schedule_sheet(network, schedules(network), choice, words);
}

Bytes csv_of(const Survey& survey) {
    const Network network = network_of(survey);
    return schedule_csv(network, schedules(network), {}, Words::in("en"));
}

std::size_t lines_in(const Bytes& csv) { return static_cast<std::size_t>(std::count(csv.begin(), csv.end(), '\n')); }

bool has_text(const Sheet& sheet, const std::string& words) {
    for (const Page& page : sheet.pages)
        for (const TextMark& text : texts_of(page))
            if (text.text.find(words) != std::string::npos) return true;
    return false;
}

}  // namespace

TEST_CASE("schedule: every text stays in its room and off every other, from 8 to 84 spaces") {
    for (const Survey& survey : {example::house(), example::small_panel(), example::full_panel(20),
                                 example::full_panel(24), example::full_panel(42), example::full_panel(84),
                                 example::tandems(), example::column(12), example::long_texts(24)})
        for (const Paper& paper : {letter_landscape, a4_landscape}) check_texts(sheet_of(survey, {{}, paper}));
}

TEST_CASE("schedule: the same in Spanish") {
    for (const Survey& survey : {example::house(), example::tandems(), example::full_panel(42)})
        check_texts(sheet_of(survey, {}, Words::in("es")));
}

TEST_CASE("schedule: 42 spaces have their rows on one letter page, 84 on more") {
    const auto pages_with_rows = [](const Survey& survey) {
        int count = 0;
        for (const Page& page : sheet_of(survey).pages)
            for (const TextMark& text : texts_of(page)) count += text.text == "amperes" ? 1 : 0;
        return count / 2;  // a caption on each side
    };
    CHECK(pages_with_rows(example::full_panel(24)) == 1);
    CHECK(pages_with_rows(example::full_panel(42)) == 1);
    CHECK(pages_with_rows(example::full_panel(84)) == 2);
}

TEST_CASE("schedule: every panel has a sheet of its own, or the one that was asked for") {
    CHECK(sheet_of(example::house()).pages.front().of == "MAIN");
    CHECK(sheet_of(example::house()).pages.back().of == "SHOP");
    for (const Page& page : sheet_of(example::house(), {{"SHOP"}, letter_landscape}).pages) CHECK(page.of == "SHOP");
}

TEST_CASE("schedule: no caption can be misread") {
    const Sheet sheet = sheet_of(example::house());
    for (const char* words : {"leg A, VA", "leg B, VA", "% of", "1-pole", "none", "not calculated", "at least"})
        CHECK_MESSAGE(has_text(sheet, words) != (std::string(words) == "none"), words);
}

TEST_CASE("schedule: a table for a screen reader, a row per pole under its head") {
    const auto table = sheet_of(example::house(), {{"MAIN"}, letter_landscape}).pages.front().table;
    CHECK(table.size() == 1 + 24);
    for (const auto& row : table) CHECK(row.size() == table.front().size());
}

TEST_CASE("schedule: plain text keeps to 80 columns") {
    for (const Survey& survey : {example::house(), example::long_texts(8), example::tandems()})
        for (const Page& page : sheet_of(survey).pages)
            for (const std::string& line : page.lines) {
                INFO(line);
                CHECK(std::count_if(line.begin(), line.end(), [](char c) { return (c & 0xC0) != 0x80; }) <= 80);
            }
}

TEST_CASE("schedule: the CSV has the columns of the contract, a line per pole, CR LF, no byte order mark") {
    const Bytes csv = csv_of(example::small_panel());
    CHECK(csv.substr(0, csv.find("\r\n")) ==
          "panel,space,half,leg,pole,poles,description,class,device,amps,guards,tied_with,state,wire_size,wire_metal,"
          "wire_method,ground_size,neutral,length_ft,va,va_complete,continuous_va,measured_a,traced,note");
    CHECK(lines_in(csv) == 1 + 6 + 2);  // 7 and 8 were seen empty
    CHECK(csv.find("\r\nMAIN,3,,B,1,2,Boat lift,") != Bytes::npos);
    CHECK(csv.find("\r\nMAIN,5,,A,2,2,Boat lift,") != Bytes::npos);
    CHECK(csv.find("\r\nMAIN,7,,B,,,Space,") != Bytes::npos);
}

TEST_CASE("schedule: no text of the CSV is a formula to a spreadsheet, and quotes are doubled") {
    example::Building house = example::empty_house(8);
    house.row({1}, 20, "=SUM(A1:A9)");
    house.row({2}, 20, "+1 \"spare\", hall");
    house.row({3}, 20, "-kitchen");
    house.row({4}, 20, "@attic");
    house.row({5}, 20, "'quoted");
    const Bytes csv = csv_of(house.survey());
    for (const char* safe :
         {",'=SUM(A1:A9),", ",\"'+1 \"\"spare\"\", hall\",", ",'-kitchen,", ",'@attic,", ",''quoted,"})
        CHECK_MESSAGE(csv.find(safe) != Bytes::npos, safe);
}
