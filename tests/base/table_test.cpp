// SPDX-License-Identifier: MIT
#include "survey/table.hpp"

#include <doctest/doctest.h>

#include "survey/survey.hpp"

using namespace doorcard;

namespace {

Table<Room> rooms(std::vector<std::string> ids) {
    std::vector<Room> rows;
    for (std::string& id : ids) {
        rows.emplace_back();
        rows.back().id = std::move(id);
    }
    return Table<Room>(std::move(rows));
}

}  // namespace

TEST_CASE("table: things are found by id") {
    const Table<Room> table = rooms({"kitchen", "hall"});
    CHECK(table.size() == 2);
    CHECK(table.find("hall") == &table[1]);
    CHECK(table.find("Hall") == nullptr);
    CHECK(table.position("kitchen") == 0);
    CHECK(table.position("cellar") == 2);
    CHECK(table.contains("kitchen"));
}

TEST_CASE("table: of two things of one id the first is found") {
    const Table<Room> table = rooms({"a", "a"});
    CHECK(table.find("a") == &table[0]);
}

TEST_CASE("table: a copy shares its rows and outlives what it was copied from") {
    auto first = std::make_unique<Table<Room>>(rooms({"kitchen"}));
    const Table<Room> copy = *first;
    CHECK(&copy.rows() == &first->rows());
    first.reset();
    CHECK(copy.find("kitchen")->id == "kitchen");
}

TEST_CASE("table: equal by what they hold, in order") {
    CHECK(rooms({"a", "b"}) == rooms({"a", "b"}));
    CHECK_FALSE(rooms({"a", "b"}) == rooms({"b", "a"}));
    CHECK(Table<Room>() == rooms({}));
}

TEST_CASE("table: things without an id are a plain list") {
    const Table<Reading> readings(std::vector<Reading>(3));
    CHECK(readings.size() == 3);
    CHECK(readings.contains("") == false);
}

TEST_CASE("table: an empty table has nothing") {
    const Table<Room> table;
    CHECK(table.empty());
    CHECK(table.begin() == table.end());
    CHECK_FALSE(table.contains(""));
}

TEST_CASE("table: one made of another by one row remembers which") {
    const Table<Room> before = rooms({"kitchen", "hall"});
    Room bath;
    bath.id = "bath";
    const Table<Room> after = before.with_row(1, bath);
    CHECK(after.changed_row_of(before) == 1);
    CHECK(after.find("bath") == &after[1]);
    CHECK(before.contains("hall"));
    CHECK_FALSE(before.changed_row_of(after));
    CHECK_FALSE(rooms({"kitchen", "bath"}).changed_row_of(before));
    CHECK_FALSE(before.is_same(after));
    CHECK(before.is_same(Table<Room>(before)));
}
