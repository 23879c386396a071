// SPDX-License-Identifier: MIT
// receptacle-rating: 210.21(B).
#include "assess/lines_shown.hpp"

namespace {

Lines ratings(const std::string& survey) { return found(survey, "receptacle-rating"); }

std::string on(double rating, const std::string& more) { return house + branch("c", "1, 3", rating) + more; }
std::string of(const std::string& id, const std::string& keys) {
    return outlet(id, "c", "kind = \"receptacle\"\n" + keys);
}

}  // namespace

TEST_CASE("receptacle-rating: a single receptacle alone is not rated less than its circuit") {
    const auto finding = only(on(20, of("o", "config = \"5-15R\"\nreceptacles = 1")), "receptacle-rating");
    CHECK(said(finding.remedy).find("if the wire is made for the device") != std::string::npos);
    CHECK(line_of(finding) == "outlet:o warning required 15 A, limit 20 A");
    CHECK(sources_of(finding) == "NEC 2023 210.21(B)(1)");
    CHECK(ratings(on(20, of("o", "config = \"5-20R\"\nreceptacles = 1"))) == Lines{});
    CHECK(ratings(on(50, of("o", "config = \"14-30R\""))) == Lines{"outlet:o warning required 30 A, limit 50 A"});
    CHECK(ratings(on(40, of("o", "config = \"14-50R\""))) == Lines{});
}

TEST_CASE("receptacle-rating: a duplex of 15 A on 20 A is right, two receptacles make it so") {
    CHECK(ratings(on(20, of("o", "config = \"5-15R\""))) == Lines{});
    CHECK(ratings(on(20, of("o", "config = \"5-15R\"\nreceptacles = 1") + of("p", "config = \"5-15R\""))) == Lines{});
    CHECK(ratings(on(20, of("o", "config = \"5-15R\"\nreceptacles = 1") +
                             outlet("lamp", "c", "kind = \"lighting\""))) == Lines{});
}

TEST_CASE("receptacle-rating: the table for circuits of several") {
    const auto finding =
        only(on(30, of("o", "config = \"6-20R\"") + of("p", "config = \"6-30R\"")), "receptacle-rating");
    CHECK(line_of(finding) == "outlet:o warning required 20 A, limit 30 A");
    CHECK(sources_of(finding) == "NEC 2023 Table 210.21(B)(3)");
    CHECK(ratings(on(15, of("o", "config = \"5-20R\""))) == Lines{});  // 2023: not less than the table
    CHECK(ratings(on(40, of("o", "amps = 50") + of("p", "amps = 40"))) == Lines{});
    CHECK(ratings(on(40, of("o", "amps = 30") + of("p", "amps = 50"))) ==
          Lines{"outlet:o warning required 30 A, limit 40 A"});
    CHECK(ratings(on(60, of("o", "amps = 30") + of("p", "amps = 30"))) == Lines{});  // no such row
}

TEST_CASE("receptacle-rating: ranges, welders and motors have rules of their own") {
    const auto with = [](const std::string& keys) {
        return of("o", "config = \"14-30R\"") + "[[load]]\nid = \"l\"\noutlet = \"o\"\n" + keys + "\n";
    };
    CHECK(ratings(on(40, with("watts = 6000\nduty = \"dryer\""))).size() == 1);
    CHECK(ratings(on(40, with("watts = 6000\nduty = \"range\""))) == Lines{});
    CHECK(ratings(on(40, with("amps = 20\nvolts = 240\nduty = \"welder\""))) == Lines{});
    CHECK(ratings(on(40, with("hp = \"3\"\nvolts = 240"))) == Lines{});
}

TEST_CASE("receptacle-rating: silent where its rating, or the circuit's, is not known") {
    CHECK(ratings(on(30, of("o", "") + of("p", ""))) == Lines{});
    CHECK(ratings(house + "[[breaker]]\npanel = \"MAIN\"\nspaces = [1]\n" + circuit("c", "\"MAIN:1\"") +
                  of("o", "config = \"5-15R\"\nreceptacles = 1")) == Lines{});
}
