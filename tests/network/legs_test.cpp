// SPDX-License-Identifier: MIT
// Which leg a breaker's poles are on: contract 2. What a second way of counting says of every panel stands in
// tests/property.
#include "network/found.hpp"

using namespace doorcard;

namespace {

/// Legs of these breakers of P, one after the other, parted by blanks.
std::string legs(const std::string& system, const std::string& panel_keys,
                 const std::vector<std::string>& spaces_and_keys) {
    std::string text = panel_on(system, panel_keys);
    for (std::size_t i = 0; i < spaces_and_keys.size(); ++i) {
        const auto end = spaces_and_keys[i].find(']') + 1;
        text += breaker_in("P", spaces_and_keys[i].substr(0, end),
                           "id = \"b" + std::to_string(i) + "\"\n" + spaces_and_keys[i].substr(end));
    }
    const Network network = network_of(survey_of(text));
    std::string all;
    for (std::size_t b = 0; b < network.survey().breakers.size(); ++b) all += (b ? " " : "") + network.breaker_legs(b);
    return all;
}

const char* const split = "120/240 1ph 3w";
const char* const wye = "208Y/120 3ph 4w";

}  // namespace

TEST_CASE("legs: two columns, odd on the left or on the right") {
    const std::vector<std::string> first_rows = {"[1]", "[2]", "[3]", "[4]", "[5]", "[42]"};
    CHECK(legs(split, "", first_rows) == "A A B B A A");
    CHECK(legs(split, "numbering = \"odd-right\"\n", first_rows) == "A A B B A A");
    CHECK(legs(wye, "", first_rows) == "A A B B C C");
}

TEST_CASE("legs: down the left and then down the right; a single column") {
    CHECK(legs(split, "numbering = \"down-left\"\n", {"[1]", "[2]", "[21]", "[22]", "[23]", "[42]"}) == "A B A A B A");
    CHECK(legs(wye, "numbering = \"single-column\"\n", {"[1]", "[2]", "[3]", "[4]", "[42]"}) == "A B C A C");
}

TEST_CASE("legs: sides as the numbering says, turned over or not") {
    const auto left = [](const std::string& keys) {
        const Network network = network_of(survey_of(panel_on(split, keys)));
        std::string sides;
        for (const int space : {1, 2, 21, 22}) sides += network.geometry(0).on_left(space) ? 'l' : 'r';
        return sides;
    };
    CHECK(left("") == "lrlr");
    CHECK(left("turned_over = true\n") == "lrlr");
    CHECK(left("numbering = \"odd-right\"\n") == "rlrl");
    CHECK(left("numbering = \"down-left\"\n") == "lllr");
    CHECK(left("numbering = \"single-column\"\n") == "llll");
}

TEST_CASE("legs: spaces that are not given are drawn to the highest used and two more") {
    const Network network = network_of(
        survey_of("format = 1\n[[panel]]\nid = \"P\"\nsystem = \"120/240 1ph 3w\"\n" + breaker_in("P", "[9, 11]")));
    CHECK(network.geometry(0).spaces() == 13);
    CHECK(network.geometry(0).rows() == 7);
}

TEST_CASE("legs: turned over, space 1 is at the bottom; letters given are those from the physical top") {
    const std::string turned = "turned_over = true\n";
    CHECK(legs(wye, turned + "legs_down = \"ABC\"\n", {"[42]", "[41]", "[40]", "[38]", "[1]"}) == "A A B C C");
    CHECK(legs(split, turned + "legs_down = \"BA\"\n", {"[42]", "[40]", "[1]"}) == "B A B");
    // not given: they begin at the row of space 1, wherever that hangs
    CHECK(legs(wye, turned, {"[1]", "[3]", "[5]", "[42]"}) == "A B C C");
}

TEST_CASE("legs: letters that do not begin with A") {
    CHECK(legs(split, "legs_down = \"BA\"\n", {"[1]", "[3]"}) == "B A");
    CHECK(legs(wye, "legs_down = \"CAB\"\n", {"[1]", "[3]", "[5]", "[7]"}) == "C A B C");
}

TEST_CASE("legs: poles by ascending space, in whatever order they are written") {
    CHECK(legs(wye, "", {"[5, 3]", "[2, 6, 4]", "[7, 9, 11]"}) == "BC ABC ABC");
}

TEST_CASE("legs: an override stands in the order of the spaces as written") {
    CHECK(legs(wye, "", {"[1, 3]\nlegs = \"CA\"\n", "[7, 5]\nlegs = \"AB\"\n"}) == "CA BA");
}

TEST_CASE("legs: halves of a tandem share the leg of their space, or sit on two legs where said so") {
    const std::vector<std::string> tandems = {"[1]\nhalf = \"a\"\n", "[1]\nhalf = \"b\"\n", "[3]\nhalf = \"a\"\n",
                                              "[3]\nhalf = \"b\"\n"};
    CHECK(legs(split, "", tandems) == "A A B B");
    CHECK(legs(split, "half_legs = \"alternate\"\n", tandems) == "A B B A");
    CHECK(legs(wye, "half_legs = \"alternate\"\n", tandems) == "A B B C");
}

TEST_CASE("legs: half b takes the next row by number, turned over or not") {
    const std::vector<std::string> first = {"[1]\nhalf = \"a\"\n", "[1]\nhalf = \"b\"\n"};
    const std::string turned = "half_legs = \"alternate\"\nturned_over = true\nlegs_down = \"ABC\"\n";
    CHECK(legs(wye, turned, first) == "C B");  // 21 rows: space 1 at the bottom on C, the row of space 3 on B
    CHECK(legs(wye, turned, {"[42]\nhalf = \"b\"\n"}) == "C");  // past the top the letters go on repeating
}

TEST_CASE("legs: a quad: the inner pair across two spaces, the outer pair about it") {
    const std::vector<std::string> quad = {"[1, 3]\nhalf = [\"b\", \"a\"]\n", "[1, 3]\nhalf = [\"a\", \"b\"]\n"};
    CHECK(legs(split, "", quad) == "AB AB");
    CHECK(legs(split, "half_legs = \"alternate\"\n", quad) == "BB AA");  // both poles on one leg: a finding of its own
}

TEST_CASE("legs: letters that do not come into the panel are not known") {
    CHECK(legs(split, "", {"[1]\nlegs = \"C\"\n", "[3, 5]\nlegs = \"AC\"\n"}) == "? A?");
    CHECK(legs(split, "legs_down = \"ABC\"\n", {"[1]", "[3]", "[5]"}) == "A B ?");
}
