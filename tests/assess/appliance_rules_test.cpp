// SPDX-License-Identifier: MIT
// cord-load-over-80, fixed-over-50: what one appliance may take of a circuit it shares, 210.23.
#include "assess/lines_shown.hpp"

namespace {

Lines cord_share(const std::string& survey) { return found(survey, "cord-load-over-80"); }
Lines fixed_share(const std::string& survey) { return found(survey, "fixed-over-50"); }

std::string on(double rating, const std::string& more) { return house + branch("c", "1", rating) + more; }
std::string lamp() { return outlet("lamp", "c", "kind = \"lighting\""); }

}  // namespace

TEST_CASE("cord-load-over-80: one cord appliance above 80 % of the circuit") {
    const auto finding = only(on(20, cord("c", "amps = 16.5")), "cord-load-over-80");
    CHECK(line_of(finding) == "circuit:c notice required 16.5 A, limit 16 A");
    CHECK(sources_of(finding) == "NEC 2023 210.23(B)(1)");
    CHECK(cord_share(on(20, cord("c", "amps = 16"))) == Lines{});
    CHECK(cord_share(on(15, cord("c", "amps = 12.5"))) == Lines{"circuit:c notice required 12.5 A, limit 12 A"});
    CHECK(cord_share(on(20, cord("c", "amps = 12") + cord("c", "amps = 12"))) == Lines{});  // each by itself
}

TEST_CASE("cord-load-over-80: a caution where the load is declared lasting, or was measured") {
    CHECK(cord_share(on(20, cord("c", "amps = 16.5\ncontinuous = true"))) ==
          Lines{"circuit:c caution required 16.5 A, limit 16 A"});
    const std::string kiln =
        outlet("o", "c", "kind = \"receptacle\"") + "[[load]]\nid = \"kiln\"\noutlet = \"o\"\namps = 15\n";
    CHECK(cord_share(on(20, kiln)) == Lines{});
    CHECK(cord_share(on(20, kiln + reading("load:kiln", "amps = 17"))) ==
          Lines{"circuit:c caution required 17 A, limit 16 A"});
}

TEST_CASE("cord-load-over-80: up to 30 A circuits, cord loads only") {
    const auto finding = only(on(30, cord("c", "amps = 25")), "cord-load-over-80");
    CHECK(line_of(finding) == "circuit:c notice required 25 A, limit 24 A");
    CHECK(sources_of(finding) == "NEC 2023 210.23(C)");
    CHECK(cord_share(on(40, cord("c", "amps = 35"))) == Lines{});
    CHECK(cord_share(on(20, load("c", "amps = 19"))) == Lines{});
}

TEST_CASE("cord-load-over-80: a circuit of one single receptacle may carry all of its rating") {
    const auto single = [](const std::string& id) { return outlet(id, "c", "kind = \"receptacle\"\nreceptacles = 1"); };
    const std::string welder = "[[load]]\nid = \"w\"\noutlet = \"o\"\namps = 19\n";
    CHECK(cord_share(on(20, single("o") + welder)) == Lines{});
    CHECK(cord_share(on(20, single("o") + single("p") + welder)).size() == 1);
    const std::string dryer = outlet("o", "d", "kind = \"receptacle\"\nconfig = \"14-30R\"") +
                              "[[load]]\nid = \"dryer\"\noutlet = \"o\"\nwatts = 6000\nvolts = 240\nduty = \"dryer\"\n";
    CHECK(cord_share(house + branch("d", "1, 3", 30) + dryer) == Lines{});  // a heavy configuration is single
}

TEST_CASE("fixed-over-50: fixed equipment beside lighting or receptacles") {
    const auto finding = only(on(15, lamp() + load("c", "amps = 8")), "fixed-over-50");
    CHECK(line_of(finding) == "circuit:c notice required 8 A, limit 7.5 A");
    CHECK(sources_of(finding) == "NEC 2023 210.23(B)(2)");
    CHECK(fixed_share(on(15, lamp() + load("c", "amps = 7.5"))) == Lines{});
    CHECK(fixed_share(on(15, load("c", "amps = 8"))) == Lines{});  // alone on its circuit
    CHECK(fixed_share(on(15, outlet("o", "c", "kind = \"receptacle\"") + load("c", "amps = 8"))).size() == 1);
    CHECK(fixed_share(on(15, cord("c", "amps = 2") + load("c", "amps = 8"))).size() == 1);
}

TEST_CASE("fixed-over-50: several fixed appliances add up, lighting is not one of them") {
    CHECK(fixed_share(on(20, lamp() + load("c", "amps = 6") + load("c", "amps = 5"))) ==
          Lines{"circuit:c notice required 11 A, limit 10 A"});
    CHECK(fixed_share(on(20, load("c", "amps = 12\nduty = \"lighting\"") + load("c", "amps = 6"))) == Lines{});
}

TEST_CASE("fixed-over-50: a caution where declared lasting; 15 and 20 A circuits only") {
    CHECK(fixed_share(on(15, lamp() + load("c", "amps = 8\ncontinuous = true"))) ==
          Lines{"circuit:c caution required 8 A, limit 7.5 A"});
    CHECK(fixed_share(on(30, lamp() + load("c", "amps = 20"))) == Lines{});
}
