// SPDX-License-Identifier: MIT
#include "survey/table.hpp"

#include <doctest/doctest.h>

#include <algorithm>

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

/// r0, r1, r2 ...
Table<Room> many_rooms(int count) {
    std::vector<std::string> ids;
    for (int i = 0; i < count; ++i) ids.push_back("r" + std::to_string(i));
    return rooms(std::move(ids));
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
    CHECK(copy.is_same(*first));
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

TEST_CASE("table: one made of another by one row shares the others") {
    const Table<Room> before = many_rooms(100);
    Room bath;
    bath.id = "bath";
    const Table<Room> after = before.with_row(70, bath);
    CHECK(after.find("bath") == &after[70]);
    CHECK_FALSE(after.contains("r70"));
    CHECK(before.contains("r70"));
    CHECK(after.shared_first(before) > 0);
    CHECK(after.shared_first(before) <= 70);
    CHECK(after.shared_last(before) > 0);
    CHECK(after.shared_last(before) < 30);
    CHECK_FALSE(before.is_same(after));
    CHECK_FALSE(before == after);
    CHECK(before == after.with_row(70, before[70]));
    CHECK(before.is_same(Table<Room>(before)));
}

TEST_CASE("table: whatever is changed, added and taken out, it is the list that a plain one would be") {
    Table<Room> table;
    std::vector<Room> plain;
    std::uint32_t drawn = 1;
    const auto draw = [&](std::size_t below) {
        drawn = drawn * 1'664'525 + 1'013'904'223;
        return static_cast<std::size_t>(drawn >> 8) % below;
    };
    for (int step = 0; step < 3000; ++step) {
        Room room;
        room.id = "r" + std::to_string(draw(400));  // some of them twice
        const std::size_t what = draw(step < 1500 ? 4 : 3);
        if (plain.empty() || what >= 2) {
            plain.push_back(room);
            table = table.with_added(room);
        } else if (const std::size_t at = draw(plain.size()); what == 1) {
            plain[at] = room;
            table = table.with_row(at, room);
        } else {
            plain.erase(plain.begin() + static_cast<std::ptrdiff_t>(at));
            table = table.without_row(at);
        }
        const Table<Room> anew(plain);
        REQUIRE(table.rows() == plain);
        REQUIRE(table == anew);
        REQUIRE(table.position(room.id) == anew.position(room.id));
        REQUIRE(table.count(room.id) == static_cast<std::size_t>(std::ranges::count(plain, room.id, &Room::id)));
    }
}

TEST_CASE("table: its rows are walked in both directions and by place") {
    const Table<Room> table = many_rooms(70).without_row(3).without_row(40);
    CHECK(table.end() - table.begin() == 68);
    CHECK((table.begin() + 50)->id == table[50].id);
    CHECK(table.begin()[50].id == table[50].id);
    CHECK(std::prev(table.end())->id == "r69");
    CHECK(std::ranges::find(table, "r42", &Room::id) - table.begin() == 40);
}

TEST_CASE("table: a thousand added one by one are found, and all taken out again") {
    Table<Room> table;
    for (const Room& room : many_rooms(2000)) table = table.with_added(room);
    CHECK(table == many_rooms(2000));
    for (std::size_t i = 0; i < 2000; ++i) CHECK(table.position("r" + std::to_string(i)) == i);
    while (!table.empty()) table = table.without_row(table.size() / 2);
    CHECK_FALSE(table.contains("r0"));
}
