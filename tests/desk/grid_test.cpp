// SPDX-License-Identifier: MIT
#include "desk/grid.hpp"

#include "desk/appliances.hpp"
#include "house.hpp"

using namespace doorcard;

namespace {

const Words english = Words::in("en"), spanish = Words::in("es");

Grid readings(const Survey& survey) { return readings_grid(survey, "MAIN", Units::feet, english); }
Grid loads(const Survey& survey) { return loads_grid(survey, "MAIN", Units::feet, english); }

std::size_t column(const Grid& grid, std::string_view key) {
    for (std::size_t c = 0; c < grid.columns.size(); ++c)
        if (grid.columns[c].key == key) return c;
    FAIL("no column " << key);
    return 0;
}

std::string cell(const Grid& grid, std::size_t row, std::string_view key) {
    return grid.rows.at(row).cells.at(column(grid, key));
}

Outcome<Edit> typing(const Survey& survey, const Grid& grid, std::size_t row, std::string_view key,
                     std::string_view typed) {
    return cell_typed(survey, grid, row, column(grid, key), typed, english);
}

Outcome<Edit> pasting(const Survey& survey, const Grid& grid, std::string_view key, std::string_view text) {
    return block_pasted(survey, grid, grid.rows.size() - 1, column(grid, key), text, english);
}

std::string said(const char* typed) { return address_said(house::survey(), "MAIN", typed).value_or("nothing"); }

}  // namespace

TEST_CASE("what a reading is of is typed as it is said") {
    const std::pair<const char*, const char*> rows[] = {{"5", "breaker:MAIN:5"},
                                                        {"2+4", "breaker:MAIN:2+4"},
                                                        {"4", "breaker:MAIN:2+4"},
                                                        {"5 N", "breaker:MAIN:5/N"},
                                                        {"5 n", "breaker:MAIN:5/N"},
                                                        {"2+4 b", "breaker:MAIN:2+4/B"},
                                                        {"MAIN A", "panel:MAIN/A"},
                                                        {"main ab", "panel:MAIN/AB"},
                                                        {"panel N", "panel:MAIN/N"},
                                                        {"MAIN", "panel:MAIN"},
                                                        {"K1", "outlet:K1"},
                                                        {"k1", "outlet:K1"},
                                                        {"toaster", "load:toaster"},
                                                        {"pump", "circuit:pump"},
                                                        {"MAIN 7", "breaker:MAIN:7"},
                                                        {"utility A", "source:utility/A"},
                                                        {"circuit:pump/N", "circuit:pump/N"},
                                                        {"K1 A", "nothing"},
                                                        {"MAIN Q", "nothing"},
                                                        {"99", "nothing"},
                                                        {"", "nothing"}};
    for (const auto& [typed, address] : rows) CHECK_MESSAGE(said(typed) == address, typed);
    for (const char* address : {"breaker:MAIN:5", "breaker:MAIN:2+4/B", "panel:MAIN/A", "outlet:K1", "neutral:N9"})
        CHECK(address_said(house::survey(), "MAIN", said_of(house::survey(), "MAIN", address)) == address);
}

TEST_CASE("a reading is typed in one cell after the other") {
    const Survey survey = house::survey();
    Grid grid = readings(survey);
    REQUIRE(grid.rows.size() == 2);
    CHECK(cell(grid, 0, "of") == "5");
    CHECK(cell(grid, 0, "amps") == "11.2");
    CHECK(house::why(typing(survey, grid, 1, "amps", "3.5"), survey) ==
          "it is not said what it is of; say that first: 5, 2+4, 9 N, MAIN A, K3");
    const auto added = typing(survey, grid, 1, "of", "2+4 A");
    CHECK(house::why(added, survey) == "done: add 2+4 A");
    const Survey two = house::done(added, survey);
    grid = readings(two);
    CHECK(cell(grid, 1, "of") == "2+4 A");
    CHECK(house::why(typing(two, grid, 1, "amps", "3,5 A"), two) == "done: Current of reading:2: 3,5 A");
    const Survey read = house::done(typing(two, grid, 1, "amps", "3,5"), two);
    CHECK(read.readings[1].amps->value == 3.5);
    CHECK_FALSE(read.readings[1].at.has_value());  // no time is made up
    CHECK(house::why(typing(read, readings(read), 1, "of", "nobody"), read) ==
          "nothing is called \"nobody\"; say it as 5, 2+4, 9 N, MAIN A, K3");
}

TEST_CASE("a pasted column of readings is one step, with the heads of its columns in either language") {
    const Survey survey = house::survey();
    const auto edit = pasting(survey, readings(survey), "of", "Space\tAmps\tInstrument\n5\t12.4\tclamp\n7\t3,5\t\n");
    CHECK(house::why(edit, survey) == "done: paste 2 rows");
    const Survey after = house::done(edit, survey);
    REQUIRE(after.readings.size() == 3);
    CHECK(after.readings[1].of.text() == "breaker:MAIN:5");
    CHECK(after.readings[1].instrument == "clamp");
    CHECK(after.readings[2].amps->value == 3.5);
    CHECK_FALSE(after.readings[2].instrument.has_value());
    const Survey otherwise = house::done(pasting(survey, readings(survey), "of", "espacio;VOLTS\n5;118,9"), survey);
    CHECK(otherwise.readings[1].volts->value == 118.9);
}

TEST_CASE("a block without heads goes where one stands, over rows that are there and on below them") {
    const Survey survey = house::survey();
    const auto edit = block_pasted(survey, readings(survey), 0, 0, "7\t4.5\n2+4\t9", english);
    const Survey after = house::done(edit, survey);
    REQUIRE(after.readings.size() == 2);
    CHECK(after.readings[0].of.text() == "breaker:MAIN:7");
    CHECK(after.readings[0].amps->value == 4.5);
    CHECK(after.readings[1].of.text() == "breaker:MAIN:2+4");
}

TEST_CASE("every cell of a block that is not understood is named by its row, and nothing is done") {
    const Survey survey = house::survey();
    const auto edit = pasting(survey, readings(survey), "of", "of\tamps\n5\ttwelve\nnobody\t3\n7\t4\n7\t1,200");
    CHECK(house::why(edit, survey) ==
          "row 2: \"twelve\" is no number; write a number, as 20 or 3.5\n"
          "row 3: nothing is called \"nobody\"; say it as 5, 2+4, 9 N, MAIN A, K3\n"
          "row 5: 1,200 may be read two ways; write 1200 or 1.200");
    CHECK(house::why(pasting(survey, readings(survey), "of", "of\tcolour\tamps\n5\tred\t3"), survey) ==
          "no column is called \"colour\"; leave it out, or name it as here");
    CHECK(house::why(pasting(survey, readings(survey), "note", "a\tb"), survey) ==
          "more columns than there are; begin further left");
    CHECK(house::why(pasting(survey, readings(survey), "of", "of\tamps"), survey) ==
          "there is nothing below the heads of its columns; copy its rows too");
    CHECK(house::why(pasting(survey, loads(survey), "title", "Title\tOn outlet\nLamp\tK2\nFan\tK9"), survey)
              .starts_with("row 3: "));
}

TEST_CASE("loads get ids of their titles, each its own") {
    const Survey survey = house::survey();
    const auto edit = pasting(survey, loads(survey), "title", "Toaster\nLamp\nLamp\n");
    const Survey after = house::done(edit, survey);
    REQUIRE(after.loads.size() == 4);
    CHECK(after.loads[1].id == "toaster-2");
    CHECK(after.loads[2].id == "lamp");
    CHECK(after.loads[3].id == "lamp-2");
}

TEST_CASE("nameplates pasted with their units go to their own columns") {
    const Survey survey = house::survey();
    const auto edit =
        pasting(survey, loads(survey), "title", "What it is\tNameplate, W\tNameplate, A\nKettle\t1500\t\nSaw\t\t12");
    const Survey after = house::done(edit, survey);
    CHECK(after.loads[1].watts->value == 1500);
    CHECK_FALSE(after.loads[1].amps.has_value());
    CHECK(after.loads[2].amps->value == 12);
}

TEST_CASE("a grid of one circuit or one room shows that alone, and what is added belongs there") {
    const Survey survey = house::survey();
    const Grid pump = loads_grid(survey, "MAIN", Units::feet, english, "pump");
    REQUIRE(pump.rows.size() == 1);
    const Survey with = house::done(typing(survey, pump, 0, "title", "Sump pump"), survey);
    CHECK(with.loads[1].circuit == "pump");
    CHECK(with.loads[1].id == "sump-pump");
    const Grid kitchen = outlets_grid(survey, "MAIN", Units::metres, english, "kitchen");
    CHECK(kitchen.rows.size() == 2);
    CHECK(kitchen.columns[column(kitchen, "run_m")].unit == "metres");
    const Survey more = house::done(typing(survey, kitchen, 1, "id", "K3"), survey);
    CHECK(more.outlets[2].room == "kitchen");
}

TEST_CASE("rooms, sources, trips and photos are grids too") {
    const Survey survey = house::survey();
    const Survey room = house::done(
        typing(survey, rooms_grid(survey, "MAIN", Units::feet, english), 1, "title", "Utility room"), survey);
    CHECK(room.rooms[1].id == "utility-room");
    const Survey source =
        house::done(typing(survey, sources_grid(survey, "MAIN", Units::feet, english), 1, "kind", "generator"), survey);
    CHECK(source.sources[1].id == "generator");
    const Grid trips = trips_grid(survey, "MAIN", Units::feet, spanish);
    CHECK(house::why(typing(survey, trips, 0, "weather", "rain"), survey) ==
          "it is not said what tripped; say that first: 5, 2+4, 9 N, MAIN A, K3");
    const Survey trip = house::done(typing(survey, trips, 0, "of", "5"), survey);
    CHECK(trip.trips[0].of.text() == "breaker:MAIN:5");
    const Grid photos = photos_grid(survey, "MAIN", Units::feet, english);
    CHECK(house::why(typing(survey, photos, 0, "note", "front"), survey) == "a photo is a file; name the file first");
    CHECK(house::done(typing(survey, photos, 0, "file", "a.jpg"), survey).photos.size() == 1);
}

TEST_CASE("rows are taken out in one step, from the last on") {
    Survey survey = house::done(pasting(house::survey(), readings(house::survey()), "of", "7\n2+4"), house::survey());
    REQUIRE(survey.readings.size() == 3);
    const auto edit = rows_removed(survey, readings(survey), {0, 2, 2, 3});
    CHECK(house::why(edit, survey) == "done: take out 2 rows");
    const Survey after = house::done(edit, survey);
    REQUIRE(after.readings.size() == 1);
    CHECK(after.readings[0].of.text() == "breaker:MAIN:7");
    CHECK(house::why(rows_removed(survey, readings(survey), {3}), survey) == "no row is chosen; go to one first");
    CHECK(house::why(rows_removed(survey, readings(survey), {1}), survey) == "done: take out reading:2");
}

TEST_CASE("an id never changes, and a cell beside the grid is none") {
    const Survey survey = house::survey();
    const Grid grid = outlets_grid(survey, "MAIN", Units::feet, english);
    CHECK(house::why(typing(survey, grid, 0, "id", "K9"), survey) ==
          "an id never changes; add a new one, and take this one out");
    CHECK(house::why(cell_typed(survey, grid, 9, 0, "x", english), survey) == "there is no such cell; choose one");
    CHECK(house::why(typing(survey, grid, 2, "label", ""), survey) == "nothing was typed; type what it is");
}

TEST_CASE("an appliance of the book is a load whose note says that it is typical") {
    const RuleBook book = built_in_book("NEC-2023").value();
    const auto toaster = appliance_called(book, "toaster", english);
    REQUIRE(toaster);
    const Load load = load_of(*toaster, "toaster-2", english);
    CHECK(load.title == "Toaster");
    CHECK(load.watts->value == 1100);
    CHECK(load.note == "typical, not from the nameplate; common practice");
    const auto dryer = appliance_called(book, "Secadora de ropa", spanish);
    REQUIRE(dryer);
    CHECK(load_of(*dryer, "d", english).note == "typical, not from the nameplate; NEC 2023 220.54");
    CHECK(without_typical_note(*load_of(*dryer, "d", spanish).note) == "");
    CHECK(dryer->load.duty == Duty::dryer);
    CHECK_FALSE(appliance_called(book, "Time machine", english));
}

TEST_CASE("offers begin with what was typed, then those with such a word; all of them for nothing typed") {
    const RuleBook book = built_in_book("NEC-2020").value();
    std::vector<std::string> titles;
    for (const Appliance& one : appliances_like(book, "fan", english)) titles.push_back(english.say(one.title));
    CHECK(titles == std::vector<std::string>{"Attic fan", "Bath fan", "Bathroom heater and fan", "Ceiling fan",
                                             "Whole-house fan"});
    CHECK(english.say(appliances_like(book, "RANGE", english).front().title) == "Range");
    CHECK(appliances_like(book, "lavav", spanish).size() == 1);
    CHECK(appliances_like(book, "", english).size() >= 90);
    CHECK(appliances_like(book, "zzz", english).empty());
}

TEST_CASE("the nameplate overrides what was typical, and the note goes with it") {
    const RuleBook book = built_in_book("NEC-2023").value();
    const Survey survey = house::survey();
    const Grid grid = loads(survey);
    const auto added = appliance_chosen(survey, grid, 1, *appliance_called(book, "Sump pump", english), english);
    CHECK(house::why(added, survey) == "done: add load sump-pump");
    const Survey with = house::done(added, survey);
    CHECK(with.loads[1].hp == "1/2");
    const Survey read = house::done(typing(with, loads(with), 1, "amps", "8.1"), with);
    CHECK(read.loads[1].amps->value == 8.1);
    CHECK_FALSE(read.loads[1].note.has_value());
    const Survey titled = house::done(typing(with, loads(with), 1, "title", "Pump"), with);
    CHECK(titled.loads[1].note.has_value());
    CHECK(without_typical_note("typical, not from the nameplate; common practice\nbehind the boiler") ==
          "behind the boiler");
    CHECK_FALSE(without_typical_note("behind the boiler").has_value());
}

TEST_CASE("an appliance chosen for a load that has its nameplate changes no figure of it") {
    const RuleBook book = built_in_book("NEC-2023").value();
    const Survey survey = house::survey();
    const auto edit = appliance_chosen(survey, loads(survey), 0, *appliance_called(book, "Kettle", english), english);
    const Load load = house::done(edit, survey).loads[0];
    CHECK(load.watts->value == 1100);
    CHECK(load.title == "Toaster");
    CHECK(load.volts->value == 120);
    CHECK_FALSE(load.note.has_value());
}
