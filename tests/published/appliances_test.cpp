// SPDX-License-Identifier: MIT
// Appliances whose figure the code names, against the code.
#include <doctest/doctest.h>

#include <algorithm>

#include "desk/appliances.hpp"
#include "rules/lookups.hpp"

using namespace doorcard;

TEST_CASE("typical appliances have the figures that the code counts for one") {
    const Words words = Words::in("en");
    for (const char* edition : {"NEC-2023", "NEC-2020"}) {
        const RuleBook book = built_in_book(edition).value();
        const auto load = [&](const char* title) {
            const auto found = appliance_called(book, title, words);
            REQUIRE_MESSAGE(found.has_value(), title);
            return found->load;
        };
        CHECK(load("Clothes dryer").watts->value == 5000);          // NEC 220.54: 5000 W, or the nameplate if larger
        CHECK(load("Range").watts->value == 12000);                 // NEC Table 220.55: Column C, not over 12 kW
        CHECK(load("Receptacle, use unknown").va->value == 180);    // NEC 220.14(I): 180 VA for each yoke
        CHECK(load("Sign").va->value == 1200);                      // NEC 220.14(F): at least 1200 VA
        CHECK(load("Lampholder, heavy duty").va->value == 600);     // NEC 220.14(E): at least 600 VA, from memory
        CHECK(load("Water heater, storage").watts->value == 4500);  // common practice, no source
        CHECK(load("Vehicle supply, 32 A").amps->value == 32);      // as its title says
    }
}

TEST_CASE("a typical motor is one of the table of full-load currents") {
    const Words words = Words::in("en");
    const RuleBook book = built_in_book("NEC-2023").value();
    const RuleTable& motors = book.table("nec-430-248");  // NEC Table 430.248
    std::size_t seen = 0;
    for (const Appliance& one : appliances_like(book, "", words)) {
        if (!one.load.hp) continue;
        const std::string hp = *one.load.hp == "1.5" ? "1-1/2" : *one.load.hp;
        CHECK(std::ranges::any_of(motors.rows, [&](const auto& row) { return std::get<std::string>(row[0]) == hp; }));
        ++seen;
    }
    CHECK(seen == 7);
}
