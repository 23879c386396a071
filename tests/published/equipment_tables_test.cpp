// SPDX-License-Identifier: MIT
// Tables of guards by place, required circuits and panel places against lists that are not the tables: the reference
// beside the project, and literals from memory where it has none.
#include <doctest/doctest.h>

#include <algorithm>

#include "published/reference.hpp"
#include "published/scene.hpp"
#include "rules/equipment_lookups.hpp"

using namespace doorcard;

namespace {

std::vector<std::string> places_of(const char* table) {
    std::vector<std::string> places;
    for (const auto& row : nec_2023().table(table).rows) places.push_back(std::get<std::string>(row.front()));
    return places;
}

int since(const char* table, const std::string& place) {
    const RuleTable& rows = nec_2023().table(table);
    for (std::size_t row = 0; row < rows.rows.size(); ++row)
        if (rows.text(row, 0) == place) return static_cast<int>(rows.number(row, rows.column("since")));
    return 0;
}

}  // namespace

// NEC 2023 210.8(A)(1) to (11), the list of the reference ('gfci-dwelling'); its order is the code's.
TEST_CASE("210.8(A): the places of a dwelling") {
    CHECK(places_of("nec-210-8-a") == std::vector<std::string>{"bathroom", "garage", "outdoors", "crawl space",
                                                               "basement", "kitchen", "food area", "sink", "boathouse",
                                                               "tub or shower", "laundry", "damp location"});
}

// NEC 2023 210.12(B), the list of the reference ('afci-dwelling').
TEST_CASE("210.12(B): the rooms of a dwelling") {
    auto rooms = places_of("nec-210-12-b");
    std::ranges::sort(rooms);
    CHECK(rooms == std::vector<std::string>{"bedroom", "closet", "den", "dining room", "family room", "hallway",
                                            "kitchen", "laundry", "library", "living room", "parlor", "recreation room",
                                            "similar room", "sunroom"});
}

// Years in which the editions brought them, from memory.
TEST_CASE("guards by place: since when") {
    CHECK(since("nec-210-8-a", "bathroom") == 1975);
    CHECK(since("nec-210-8-a", "garage") == 1978);
    CHECK(since("nec-210-8-a", "outdoors") <= 1975);
    CHECK(since("nec-210-8-a", "kitchen") == 1987);
    CHECK(since("nec-210-12-b", "bedroom") == 1999);
    CHECK(since("nec-210-12-b", "living room") == 2008);
    CHECK(since("nec-210-12-b", "kitchen") == 2014);
    for (const char* table : {"nec-210-8-a", "nec-210-8-b", "nec-210-12-b"})
        for (const std::string& place : places_of(table)) {
            CHECK(since(table, place) >= 1971);
            CHECK(since(table, place) <= 2023);
        }
}

// NEC 2023 210.11(C)(1) to (4): two or more small-appliance, one or more laundry, bathroom, garage, of 20 A.
TEST_CASE("210.11(C): the circuits of a dwelling") {
    const auto rows = required_circuits(nec_2023());
    REQUIRE(rows.size() == 4);
    CHECK(rows[0].count == 2);
    for (std::size_t i = 1; i < 4; ++i) CHECK(rows[i].count == 1);
    for (const RequiredCircuit& row : rows) CHECK(row.rating.value == 20);
    if (!reference::present("reference/circuit_facts.toml")) return;
    const char* keys[] = {"small_appliance", "laundry", "bathroom", "garage"};
    for (std::size_t i = 0; i < 4; ++i) CHECK(rows[i].count == reference::fact("required-circuits", keys[i]));
    CHECK(rows[0].rating.value == reference::fact("required-circuits", "rating_a"));
}

// NEC 2023 240.24(D), (E), (F), from memory: clothes closets, bathrooms, over steps.
TEST_CASE("240.24: places ruled out for a panel") {
    CHECK(ruled_out_place(nec_2023(), "closet")->source.text() == "NEC 2023 240.24(D)");
    CHECK(ruled_out_place(nec_2023(), "bath")->source.text() == "NEC 2023 240.24(E)");
    CHECK(ruled_out_place(nec_2023(), "over-steps")->source.text() == "NEC 2023 240.24(F)");
    CHECK_FALSE(ruled_out_place(nec_2023(), "garage"));
}

// How people write a place; every word leads to a place that a table has.
TEST_CASE("words for places") {
    CHECK(guard_place(nec_2023(), "Bathrooms") == "bathroom");
    CHECK(guard_place(nec_2023(), "crawl-space") == "crawl space");
    CHECK(guard_place(nec_2023(), "OUTSIDE") == "outdoors");
    CHECK_FALSE(guard_place(nec_2023(), "attic"));
    CHECK_FALSE(guard_place(nec_2023(), ""));
    std::vector<std::string> known = {"pantry", "breakfast room"};  // of 210.52(B)(1)
    for (const char* table : {"nec-210-8-a", "nec-210-8-b", "nec-210-12-b"})
        for (const std::string& place : places_of(table)) known.push_back(place);
    for (const auto& row : nec_2023().table("place-words").rows)
        CHECK(std::ranges::find(known, std::get<std::string>(row[1])) != known.end());
}
