// SPDX-License-Identifier: MIT
#include "base/nearest_word.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace doorcard;

TEST_CASE("nearest_word: edit distance counts slips") {
    CHECK(edit_distance("amps", "amps", 9) == 0);
    CHECK(edit_distance("amps", "AMPS", 9) == 0);
    CHECK(edit_distance("ampz", "amps", 9) == 1);
    CHECK(edit_distance("amp", "amps", 9) == 1);
    CHECK(edit_distance("aamps", "amps", 9) == 1);
    CHECK(edit_distance("apms", "amps", 9) == 1);
    CHECK(edit_distance("kitten", "sitting", 9) == 3);
    CHECK(edit_distance("", "amps", 9) == 4);
    CHECK(edit_distance("", "", 9) == 0);
}

TEST_CASE("nearest_word: the distance stops above what is asked for") {
    CHECK(edit_distance("kitten", "sitting", 2) == 3);
    CHECK(edit_distance("a", "abcdefgh", 2) == 3);
    CHECK(edit_distance(std::string(500, 'a'), std::string(500, 'b'), 3) == 4);
}

TEST_CASE("nearest_word: the distance is the same both ways") {
    const std::vector<std::string> words = {"a", "ab", "ba", "spaces", "space", "scapes", "neutral_size", "neutral"};
    for (const auto& a : words)
        for (const auto& b : words) CHECK(edit_distance(a, b, 50) == edit_distance(b, a, 50));
}

TEST_CASE("nearest_word: what was meant, or nothing") {
    const std::vector<std::string_view> keys = {"panel", "spaces", "amps", "tied_with", "neutral_to_ground"};
    CHECK(nearest_word("ampz", keys) == "amps");
    CHECK(nearest_word("Amps", keys) == "amps");
    CHECK(nearest_word("spcaes", keys) == "spaces");
    CHECK(nearest_word("tide_with", keys) == "tied_with");
    CHECK(nearest_word("nuetral_to_grond", keys) == "neutral_to_ground");
    CHECK_FALSE(nearest_word("volts", keys));
    CHECK_FALSE(nearest_word("sp", keys));
    CHECK_FALSE(nearest_word("amps", {}));
}

TEST_CASE("nearest_word: a single letter is never forgiven") {
    const std::vector<std::string_view> letters = {"a", "b"};
    CHECK_FALSE(nearest_word("c", letters));
    CHECK(nearest_word("A", letters) == "a");
}

TEST_CASE("nearest_word: of several equally near, the first offered; the nearest however far") {
    NearestWord search("K3");
    CHECK_FALSE(search.nearest());
    for (const char* word : {"kitchen", "K1", "K2"}) search.offer(word);
    CHECK(search.meant() == "K1");
    NearestWord far("zzzzzz");
    far.offer("panel");
    CHECK(far.nearest() == "panel");
    CHECK_FALSE(far.meant());
}
