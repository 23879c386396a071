// SPDX-License-Identifier: MIT
#include "survey/difference.hpp"

#include <doctest/doctest.h>

#include "survey/alignment.hpp"

using namespace doorcard;

namespace {

using Was = std::vector<std::optional<std::size_t>>;

Table<Room> rooms(const std::vector<std::string>& ids) {
    std::vector<Room> rows;
    for (const std::string& id : ids) rows.emplace_back().id = id;
    return Table<Room>(rows);
}

Table<Round> rounds(const std::vector<std::string>& by) {
    std::vector<Round> rows;
    for (const std::string& who : by) rows.emplace_back().by = who;
    return Table<Round>(rows);
}

TableDifference rooms_between(const std::vector<std::string>& before, const std::vector<std::string>& after) {
    Survey one, other;
    one.rooms = rooms(before);
    other.rooms = rooms(after);
    return *difference(one, other).of("room");
}

Was rounds_between(const std::vector<std::string>& before, const std::vector<std::string>& after) {
    Survey one, other;
    one.rounds = rounds(before);
    other.rounds = rounds(after);
    return difference(one, other).of("round")->was;
}

Survey with_breaker(int space, const std::string& circuit, double amps) {
    Survey survey;
    Breaker breaker;
    breaker.panel = "M";
    breaker.spaces = {space};
    breaker.id = breaker.default_id();
    breaker.amps = Amperes(amps);
    survey.breakers = Table<Breaker>({breaker});
    Circuit it;
    it.id = circuit;
    it.breakers = {breaker.id};
    survey.circuits = Table<Circuit>({it});
    return survey;
}

}  // namespace

TEST_CASE("difference: none between a survey and itself, whether shared or alike") {
    Survey survey, alike;
    survey.rooms = rooms({"a"});
    alike.rooms = rooms({"a"});
    CHECK(difference(survey, survey).empty());
    CHECK(difference(survey, alike).empty());
}

TEST_CASE("difference: things by their id, wherever they stand") {
    const TableDifference found = rooms_between({"a", "b", "c"}, {"c", "new", "a"});
    CHECK(found.was == Was{2, std::nullopt, 0});
    CHECK(found.removed == std::vector<std::size_t>{1});
    CHECK(found.changed.empty());
}

TEST_CASE("difference: entries without an id by the longest run, then moved ones, then changed ones") {
    CHECK(rounds_between({"a", "b", "c"}, {"a", "c"}) == Was{0, 2});
    CHECK(rounds_between({"a", "b", "c"}, {"a", "x", "c"}) == Was{0, 1, 2});
    CHECK(rounds_between({"a", "b", "c"}, {"c", "a", "b"}) == Was{2, 0, 1});
    CHECK(rounds_between({"a"}, {"a", "a"}) == Was{0, std::nullopt});
    CHECK(rounds_between({}, {"a"}) == Was{std::nullopt});
}

TEST_CASE("difference: a breaker that moved is the same by what it feeds, or where all else is alike") {
    const Difference fed = difference(with_breaker(5, "c", 20), with_breaker(9, "c", 15));
    CHECK(fed.of("breaker")->was == Was{0});
    CHECK(fed.of("breaker")->changed == std::vector<std::size_t>{0});
    CHECK(difference(with_breaker(5, "c", 20), with_breaker(9, "d", 20)).of("breaker")->was == Was{0});
    CHECK(difference(with_breaker(5, "c", 20), with_breaker(9, "d", 15)).of("breaker")->was == Was{std::nullopt});
}

TEST_CASE("difference: the single tables") {
    Survey one, other;
    other.grounding.emplace();
    other.mapping.emplace();
    other.heading.title = "x";
    const Difference found = difference(one, other);
    CHECK((found.heading && found.grounding && found.mapping && found.tables.empty()));
}

TEST_CASE("alignment: the longest common run, and none by force") {
    const auto aligned = [](const std::string& before, const std::string& after) {
        return alignment(before.size(), after.size(),
                         [&](std::size_t b, std::size_t a) { return before[b] == after[a]; });
    };
    CHECK(aligned("abcbdab", "bdcaba").size() == 6);
    const Was found = aligned("abcbdab", "bdcaba");
    CHECK(std::ranges::count_if(found, [](const auto& at) { return at.has_value(); }) == 4);
    CHECK(aligned("", "x") == Was{std::nullopt});
    CHECK(aligned("x", "").empty());
}

TEST_CASE("alignment: of long tables in a time that does not square") {
    constexpr std::size_t count = 200'000;
    int compared = 0;
    const auto was = alignment(count, count, [&](std::size_t b, std::size_t a) { return ++compared, b == a + 1; });
    CHECK(was[0] == 1);
    CHECK(compared < 50'000'000);
}
