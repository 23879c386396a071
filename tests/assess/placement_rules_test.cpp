// SPDX-License-Identifier: MIT
// breaker-overlap, legs-same-on-multipole, high-leg-to-neutral, outlet-two-feeds.
#include "assess/lines_shown.hpp"

namespace {

Lines overlap(const std::string& survey) { return found(survey, "breaker-overlap"); }
Lines one_leg(const std::string& survey) { return found(survey, "legs-same-on-multipole"); }
Lines on_high(const std::string& survey) { return found(survey, "high-leg-to-neutral"); }
Lines twice(const std::string& survey) { return found(survey, "outlet-two-feeds"); }

const std::string c_and_d = house + branch("c", "1", 20) + branch("d", "5", 20);

}  // namespace

TEST_CASE("breaker-overlap: on every breaker that shares a space") {
    const std::string two = house + breaker("5", 20) + breaker("5, 7", 30);
    CHECK(overlap(two) == Lines{"breaker:MAIN:5 warning practice", "breaker:MAIN:5+7 warning practice"});
    CHECK(overlap(house + breaker("5", 20) + breaker("7, 9", 30)) == Lines{});
}

TEST_CASE("breaker-overlap: halves of a tandem do not, a half under a whole does") {
    const std::string a = breaker("5", 20, "half = \"a\"");
    CHECK(overlap(house + a + breaker("5", 15, "half = \"b\"")) == Lines{});
    CHECK(overlap(house + a + breaker("5", 15)).size() == 2);
}

TEST_CASE("breaker-overlap: the same number in another panel is another space") {
    CHECK(overlap(house + breaker("5", 20) + "[[panel]]\nid = \"SUB\"\n[[breaker]]\npanel = \"SUB\"\nspaces = [5]\n") ==
          Lines{});
}

TEST_CASE("legs-same-on-multipole: two poles of one breaker on one leg") {
    const auto finding = only(house + breaker("1, 5", 30), "legs-same-on-multipole");
    CHECK(line_of(finding) == "breaker:MAIN:1+5 warning practice");
    CHECK(one_leg(house + breaker("1, 3", 30)) == Lines{});
    CHECK(one_leg(house + breaker("1, 3", 30, "legs = \"AA\"")).size() == 1);
    CHECK(one_leg(three_phase + breaker("1, 3, 5", 30)) == Lines{});
}

TEST_CASE("legs-same-on-multipole: two halves of neighbouring tandems, by how the panel is built") {
    const std::string pair = breaker("13, 15", 30, "half = [\"b\", \"a\"]");
    CHECK(one_leg(house + pair) == Lines{});
    CHECK(one_leg(house + "half_legs = \"alternate\"\n" + pair).size() == 1);  // 13b is on the leg of 15
}

TEST_CASE("high-leg-to-neutral: a circuit whose only leg is the high one, loads known or not") {
    const auto finding = only(high_leg + branch("c", "3", 20), "high-leg-to-neutral");
    CHECK(said(finding.remedy).find("no other hot of its neutral") != std::string::npos);
    CHECK(line_of(finding) == "circuit:c danger required 208 V, limit 120 V");
    CHECK(sources_of(finding).find("110.15") != std::string::npos);
    CHECK(on_high(high_leg + branch("c", "1", 20)) == Lines{});
    CHECK(on_high(high_leg + branch("c", "5", 20)) == Lines{});
    CHECK(on_high(three_phase + branch("c", "3", 20)) == Lines{});
}

TEST_CASE("high-leg-to-neutral: the panel may say that its high leg is C") {
    const std::string c = high_leg + "high_leg = \"C\"\n";
    CHECK(on_high(c + branch("c", "3", 20)) == Lines{});
    CHECK(on_high(c + branch("c", "5", 20)).size() == 1);
}

TEST_CASE("high-leg-to-neutral: a load from it to neutral on a circuit of several legs") {
    const std::string pair = high_leg + branch("c", "1, 3", 20);
    CHECK(on_high(pair + load("c", "amps = 9\nvolts = 240")) == Lines{});
    CHECK(on_high(pair + load("c", "amps = 9\nvolts = 120\nlegs = \"B\"")).size() == 1);
    CHECK(on_high(pair + load("c", "amps = 9\nvolts = 120\nlegs = \"A\"")) == Lines{});
    CHECK(on_high(pair + load("c", "amps = 9\nvolts = 120")) == Lines{});  // no 120 V load may use the high leg
}

TEST_CASE("outlet-two-feeds: an outlet on two circuits") {
    const auto finding = only(c_and_d + "[[outlet]]\nid = \"K\"\ncircuit = [\"c\", \"d\"]\n", "outlet-two-feeds");
    CHECK(line_of(finding) == "outlet:K danger practice");
    CHECK(said(finding.remedy).find("Lock out all of them") == 0);
    CHECK(twice(c_and_d + outlet("K", "c")) == Lines{});
}

TEST_CASE("outlet-two-feeds: an outlet whose circuit is not that of its upstream") {
    CHECK(twice(c_and_d + outlet("K", "c") + outlet("L", "d", "upstream = \"K\"")) ==
          Lines{"outlet:L danger practice"});
    CHECK(twice(c_and_d + outlet("K", "c") + outlet("L", "c", "upstream = \"K\"")) == Lines{});
    CHECK(twice(c_and_d + outlet("K", "c") + "[[outlet]]\nid = \"L\"\nupstream = \"K\"\n") == Lines{});
}

TEST_CASE("outlet-two-feeds: a circuit found on several breakers") {
    const std::string cross = circuit("c", "[\"MAIN:1\", \"MAIN:5\"]");
    CHECK(twice(house + breaker("1", 20) + breaker("5", 20) + cross) == Lines{"circuit:c danger practice"});
    CHECK(twice(house + breaker("1", 20) + breaker("3", 20) + circuit("c", "[\"MAIN:1\", \"MAIN:3\"]")) ==
          Lines{"circuit:c danger practice"});
}

TEST_CASE("outlet-two-feeds: tied single poles on one leg are no line-to-line circuit") {
    const std::string ties = "tied_with = [\"MAIN:5\"]";
    CHECK(twice(house + breaker("1", 20, ties) + breaker("5", 20) + circuit("c", "[\"MAIN:1\", \"MAIN:5\"]")).size() ==
          1);
}
