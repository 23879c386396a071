// SPDX-License-Identifier: MIT
#include "survey/breaker.hpp"

#include <doctest/doctest.h>

using namespace doorcard;

namespace {

std::string id(std::vector<int> spaces, std::vector<char> halves = {}) {
    Breaker breaker;
    breaker.panel = "MAIN";
    breaker.spaces = std::move(spaces);
    breaker.halves = std::move(halves);
    return breaker.default_id();
}

}  // namespace

TEST_CASE("breaker: the default id is PANEL:SPACES, ascending") {
    CHECK(id({5}) == "MAIN:5");
    CHECK(id({2, 4}) == "MAIN:2+4");
    CHECK(id({4, 2}) == "MAIN:2+4");
    CHECK(id({11, 9, 13}) == "MAIN:9+11+13");
}

TEST_CASE("breaker: half letters stay with their spaces") {
    CHECK(id({13}, {'a'}) == "MAIN:13a");
    CHECK(id({13, 15}, {'b', 'a'}) == "MAIN:13b+15a");
    CHECK(id({15, 13}, {'a', 'b'}) == "MAIN:13b+15a");
}
