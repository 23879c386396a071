// SPDX-License-Identifier: MIT
#include "survey/address.hpp"

#include <doctest/doctest.h>

using namespace doorcard;

TEST_CASE("address: a kind, the first colon, then the id verbatim") {
    CHECK(parse_address("circuit:kitchen-east") == Address{ThingKind::circuit, "kitchen-east", ""});
    CHECK(parse_address("breaker:MAIN:2+4") == Address{ThingKind::breaker, "MAIN:2+4", ""});
    CHECK(parse_address("outlet: K 1 ") == Address{ThingKind::outlet, " K 1 ", ""});
    CHECK(parse_address("survey:") == Address{ThingKind::survey, "", ""});
}

TEST_CASE("address: legs or the neutral of a source, panel, breaker or circuit") {
    CHECK(parse_address("panel:MAIN/A") == Address{ThingKind::panel, "MAIN", "A"});
    CHECK(parse_address("panel:MAIN/AB")->legs == "AB");
    CHECK(parse_address("panel:MAIN/N")->legs == "N");
    CHECK(parse_address("breaker:MAIN:2+4/B") == Address{ThingKind::breaker, "MAIN:2+4", "B"});
    CHECK(parse_address("source:utility/C")->legs == "C");
    CHECK(parse_address("circuit:c/A")->legs == "A");
}

TEST_CASE("address: two legs are one pair, in whichever order") {
    CHECK(parse_address("panel:MAIN/BA") == parse_address("panel:MAIN/AB"));
}

TEST_CASE("address: what is none") {
    for (const char* text : {"", "circuit", "circuit:", ":", "room:hall", "Circuit:c", "circuit:/A", "panel:MAIN/",
                             "panel:MAIN/D", "panel:MAIN/AA", "panel:MAIN/AN", "panel:MAIN/a", "neutral:N3/A",
                             "outlet:K1/A", "load:t/N", "ground:c/A", "survey:x", "survey:/A", "circuit:a/b"}) {
        CAPTURE(text);
        CHECK_FALSE(parse_address(text));
    }
}

TEST_CASE("address: its text reads back, for every kind") {
    for (const char* text : {"source:utility", "panel:MAIN/AB", "breaker:MAIN:13b+15a/N", "circuit:c/A", "neutral:N3",
                             "outlet:K1", "load:toaster", "ground:c", "survey:"})
        CHECK(parse_address(text)->text() == text);
}
