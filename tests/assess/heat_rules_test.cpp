// SPDX-License-Identifier: MIT
// heat-at-breaker: signs, and temperatures beside a like breaker.
#include "assess/lines_shown.hpp"

namespace {

Lines heats(const std::string& survey) { return found(survey, "heat-at-breaker"); }

std::string signs(const std::string& list) { return house + branch("c", "1", 20, "", "signs = [" + list + "]"); }

std::string two(double rating = 20) { return house + branch("a", "1", 20) + branch("b", "3", rating); }
std::string warm(const std::string& spaces, double degrees, const std::string& amps) {
    return reading("breaker:MAIN:" + spaces, "together = \"R\"\ntemp_c = " + std::to_string(degrees) + "\n" + amps);
}
std::string twelve = "amps = 12";

}  // namespace

TEST_CASE("heat-at-breaker: by what was seen, heard or smelt") {
    const auto finding = only(signs("\"scorch\""), "heat-at-breaker");
    CHECK(line_of(finding) == "breaker:MAIN:1 danger practice");
    CHECK(said(finding.remedy).find("leave it off") != std::string::npos);
    CHECK(heats(signs("\"melted\"")) == Lines{"breaker:MAIN:1 danger practice"});
    CHECK(heats(signs("\"smell\"")) == Lines{"breaker:MAIN:1 danger practice"});
    CHECK(heats(signs("\"buzz\"")) == Lines{"breaker:MAIN:1 warning practice"});
    CHECK(heats(signs("\"hot\"")) == Lines{"breaker:MAIN:1 notice practice"});
    CHECK(heats(signs("\"loose\"")) == Lines{"breaker:MAIN:1 notice practice"});
    CHECK(heats(signs("\"hot\", \"smell\"")) == Lines{"breaker:MAIN:1 danger practice"});
    CHECK(heats(signs("")) == Lines{});
}

TEST_CASE("heat-at-breaker: from 4 degrees above a like breaker under like load, above 15 a danger") {
    const auto above = [](double degrees) { return two() + warm("1", 40 + degrees, twelve) + warm("3", 40, twelve); };
    CHECK(heats(above(3.9)) == Lines{});
    CHECK(heats(above(4)) == Lines{"breaker:MAIN:1 caution practice 4 °C, limit 4 °C"});
    CHECK(heats(above(15)) == Lines{"breaker:MAIN:1 caution practice 15 °C, limit 4 °C"});
    CHECK(heats(above(15.3)) == Lines{"breaker:MAIN:1 warning practice 15.3 °C, limit 15 °C"});  // the meter's accuracy
    CHECK(heats(above(16)) == Lines{"breaker:MAIN:1 danger practice 16 °C, limit 15 °C"});
}

TEST_CASE("heat-at-breaker: another rating, another load, another moment are no comparison") {
    CHECK(heats(two(15) + warm("1", 60, twelve) + warm("3", 40, twelve)) == Lines{});
    CHECK(heats(two() + warm("1", 60, "amps = 16") + warm("3", 40, "amps = 12")).size() == 1);  // 4 A: a fifth of 20
    CHECK(heats(two() + warm("1", 60, "amps = 16") + warm("3", 40, "amps = 11.9")) == Lines{});
    CHECK(heats(two() + warm("1", 60, twelve) + reading("breaker:MAIN:3", "temp_c = 40\namps = 12")) == Lines{});
    CHECK(heats(two() + warm("1", 60, twelve) + warm("3", 40, "")) == Lines{});  // its load is not known
}

TEST_CASE("heat-at-breaker: the load may be read on the circuit, in the same moment") {
    CHECK(heats(two() + warm("1", 60, "") + reading("circuit:a", "together = \"R\"\namps = 12") +
                warm("3", 40, twelve)) == Lines{"breaker:MAIN:1 danger practice 20 °C, limit 15 °C"});
}

TEST_CASE("heat-at-breaker: breakers of another panel are no comparison") {
    const std::string other =
        "[[panel]]\nid = \"SUB\"\nfed_by = \"MAIN:2+4\"\nspaces = 8\n[[breaker]]\npanel = \"MAIN\"\nspaces = [2, 4]\n"
        "[[breaker]]\npanel = \"SUB\"\nspaces = [1]\namps = 20\n";
    CHECK(heats(house + branch("a", "1", 20) + other + warm("1", 60, twelve) +
                reading("breaker:SUB:1", "together = \"R\"\ntemp_c = 40\namps = 12")) == Lines{});
}
