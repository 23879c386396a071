// SPDX-License-Identifier: MIT
#include "base/message.hpp"

#include <doctest/doctest.h>

#include "base/words.hpp"

using namespace doorcard;

namespace {
std::string in(const char* language, const Message& message) { return Words::in(language).say(message); }
}  // namespace

TEST_CASE("message: verbatim text is said as it stands, in every language") {
    CHECK(in("en", verbatim("North {wall} 100 %")) == "North {wall} 100 %");
    CHECK(in("es", verbatim("&Actual size")) == "&Actual size");
}

TEST_CASE("message: verbatim of nothing is an empty message") { CHECK(verbatim("").empty()); }

TEST_CASE("message: lists of one, two and more") {
    CHECK(and_list({}).empty());
    CHECK(in("en", and_list({std::string("5")})) == "5");
    CHECK(in("en", and_list({std::string("5"), std::string("7")})) == "5 and 7");
    CHECK(in("en", and_list({std::string("5"), std::string("7"), std::string("9"), 11.0})) == "5, 7, 9 and 11");
    CHECK(in("es", and_list({std::string("5"), std::string("7"), std::string("9")})) == "5, 7 y 9");
}

TEST_CASE("message: an item of a list may be a message") {
    const Message pair = and_list({std::string("5"), std::string("7")});
    CHECK(in("es", and_list({pair, std::string("B")})) == "5 y 7 y B");
}

TEST_CASE("message: equal by pattern and parts") {
    CHECK(and_list({std::string("5")}) == and_list({std::string("5")}));
    CHECK_FALSE(and_list({std::string("5")}) == and_list({std::string("7")}));
}
