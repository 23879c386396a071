// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <fstream>
#include <iterator>
#include <map>
#include <set>
#include <sstream>
#include <stdexcept>

#include "base/built_in.hpp"
#include "rules/book.hpp"

using namespace doorcard;

namespace {

std::vector<std::string> words_of(const char* text) {
    std::istringstream stream(text);
    std::vector<std::string> words;
    for (std::string word; stream >> word;) words.push_back(word);
    return words;
}

// What the calculators ask for.
const char* const table_ids =
    "nec-310-16 nec-310-15-b-1 nec-310-15-c-1 nec-240-4-d nec-240-6-a insulation-columns nec-430-248 nec-430-250 "
    "nec-430-52 nec-220-55-c nec-310-12 ansi-c84-1-120 nema-configurations motor-columns nec-250-122 nec-250-66 "
    "electrode-limits nec-210-21-b-3";

const char* const fact_ids =
    "continuous-factor full-rated-factor continuous-hours continuous-share motor-extra motor-extra-min-hp "
    "motor-conductor receptacle-yoke-va receptacle-each-va receptacle-each-from cord-share fixed-share next-size-limit "
    "terminal-limit terminal-low-c terminal-high-c water-heater-gallons multiwire-together-year single-appliance-150 "
    "meter-tolerance calculated-tolerance neutral-imbalance-percent neutral-imbalance-share legs-imbalance-percent "
    "legs-imbalance-share open-neutral-difference open-neutral-high open-neutral-sum-low open-neutral-sum-high "
    "open-neutral-rise open-neutral-wye-sum open-neutral-wye-low partial-volts-low partial-volts-share mismatch-amps "
    "mismatch-share mismatch-max-lag mismatch-lag-step mismatch-max-hots range-floor-kva range-table-kva range-top-kva "
    "range-demand-kva range-step base-ambient-c cord-share-max-a unlisted-column-c shared-circuit-max-a "
    "dwelling-service-share "
    "single-appliance-a single-appliance-device voltage-base motor-power-factor ground-full-size-year "
    "source-output-factor source-opposite-share drop-branch-percent drop-total-percent guard-trip-ma guard-hold-ma "
    "leakage-share heat-difference-caution heat-difference-danger heat-like-load joint-ordinary-ohm "
    "joint-reading-volts joint-caution-watts joint-warning-watts open-neutral-told-share";

const char* const rule_ids =
    "nec-100-continuous nec-100-multiwire nec-110-3-b nec-110-12 nec-110-14-c nec-110-15 nec-110-22-a nec-200-4-a "
    "nec-200-4-b nec-200-6 nec-210-4-a nec-210-4-b nec-210-4-c nec-210-4-d nec-210-7 nec-210-8 nec-210-12 nec-210-18 "
    "nec-210-19-a nec-210-20-a nec-210-23 nec-210-23-b-1 nec-210-23-b-2 nec-215-2 nec-215-3 nec-220-5-b nec-220-11 "
    "nec-220-11-a nec-220-14-g nec-220-14-i nec-220-42 nec-220-46 nec-220-55-note-4 nec-230-42 nec-240-4 nec-240-4-b "
    "nec-240-4-e nec-240-4-g nec-240-8 nec-240-15-b-1 nec-240-21 nec-300-3-b nec-310-12-a nec-310-15 nec-310-15-e "
    "nec-334-80 nec-340-80 nec-408-3-e nec-408-3-f nec-408-4-a nec-408-4-b nec-408-36 nec-408-54 nec-422-11-e "
    "nec-422-13 nec-424-4-b nec-430-22 nec-430-24 nec-600-5 nec-625-42 ul-489 ul-943 ansi-c84-1 practice nec-250-122-a "
    "nec-250-122-b nec-210-21-b-1 nec-210-23-c nec-110-14 nec-440-4 nec-440-22 nec-422-11-a nec-422-10-a "
    "nec-110-9 nec-240-86 nec-705-12-b-3 nec-705-12-b-4 nec-408-36-d";

bool cited(const Citation& source) { return source.practice ? source.standard.empty() : !source.place.empty(); }

}  // namespace

TEST_CASE("the built-in books have every id that the calculators ask for, each with a citation") {
    std::string edition;
    SUBCASE("2023") { edition = "NEC-2023"; }
    SUBCASE("2020") { edition = "NEC-2020"; }
    const RuleBook book = built_in_book(edition).value();
    for (const std::string& id : words_of(table_ids)) {
        CAPTURE(id);
        REQUIRE(book.tables().contains(id));
        CHECK(cited(book.cite(id)));
    }
    for (const std::string& id : words_of(fact_ids)) {
        CAPTURE(id);
        REQUIRE(book.facts().contains(id));
        CHECK(cited(book.cite(id)));
    }
    for (const std::string& id : words_of(rule_ids)) {
        CAPTURE(id);
        REQUIRE(book.rules().contains(id));
        CHECK(cited(book.cite(id)));
    }
}

TEST_CASE("no id stands in two of the built-in files, but what is of one edition alone over what is of several") {
    for (const std::string& edition : built_in_editions()) {
        std::map<std::string, int> times;
        for (const BuiltIn& file : built_in_rule_tables()) {
            const std::vector<std::string> editions = editions_of(file.bytes);
            if (editions.size() < 2 || std::ranges::find(editions, edition) == editions.end()) continue;
            const RuleBook alone = read_book(edition, file.bytes).value();
            for (const auto& [id, table] : alone.tables()) ++times[id];
            for (const auto& [id, fact] : alone.facts()) ++times[id];
            for (const auto& [id, source] : alone.rules()) ++times[id];
            for (const auto& [id, option] : alone.options()) ++times[id];
        }
        for (const auto& [id, count] : times) CHECK_MESSAGE(count == 1, id);
    }
}

TEST_CASE("both editions have exactly the same tables with the same columns, figures, rules and options") {
    const RuleBook newer = built_in_book("NEC-2023").value(), older = built_in_book("NEC-2020").value();
    const auto columns = [](const RuleBook& book) {
        std::map<std::string, std::vector<std::string>> all;
        for (const auto& [id, table] : book.tables()) all[id] = table.columns;
        return all;
    };
    const auto ids = [](const auto& things) {
        std::set<std::string> all;
        for (const auto& [id, thing] : things) all.insert(id);
        return all;
    };
    CHECK(columns(newer) == columns(older));
    CHECK(ids(newer.facts()) == ids(older.facts()));
    CHECK(ids(newer.rules()) == ids(older.rules()));
    CHECK(ids(newer.options()) == ids(older.options()));
    CHECK(newer.options().size() >= 6);
}

TEST_CASE("every built-in file names the editions it is for") {
    REQUIRE(built_in_rule_tables().size() >= 4);
    for (const BuiltIn& file : built_in_rule_tables()) CHECK_FALSE(editions_of(file.bytes).empty());
    CHECK(built_in_editions() == std::vector<std::string>{"NEC-2020", "NEC-2023"});
}

TEST_CASE("an edition that is not built in is none") {
    CHECK_FALSE(built_in_book("NEC-1999"));
    CHECK_FALSE(built_in_book(""));
    CHECK(built_in_book("NEC-2023")->edition() == "NEC-2023");
}

TEST_CASE("citations name a standard and a place, or common practice, and no maker, magazine or forum") {
    const RuleBook book = built_in_book("NEC-2023").value();
    std::set<std::string> standards;
    for (const auto& [id, table] : book.tables()) standards.insert(table.source.standard);
    for (const auto& [id, fact] : book.facts()) standards.insert(fact.source.standard);
    for (const auto& [id, source] : book.rules()) standards.insert(source.standard);
    CHECK(standards == std::set<std::string>{"", "ANSI C84.1-2020", "NEC 1968", "NEC 2008", "NEC 2023", "NEMA WD 6",
                                             "UL 489", "UL 943"});
    CHECK(book.cite("nec-210-20-a").text() == "NEC 2023 210.20(A)");
    CHECK(book.cite("nec-310-16").text() == "NEC 2023 Table 310.16");
    CHECK(book.cite("mismatch-share").text() == "common practice");
    CHECK(built_in_book("NEC-2020")->cite("nec-210-20-a").text() == "NEC 2020 210.20(A)");
}

TEST_CASE("asking the book for what it has not is our own mistake") {
    const RuleBook book = built_in_book("NEC-2023").value();
    CHECK_THROWS_WITH_AS(book.fact("no-such-fact"), "no fact 'no-such-fact' in the rule book NEC-2023",
                         std::out_of_range);
    CHECK_THROWS_AS(book.table("continuous-factor"), std::out_of_range);
    CHECK_THROWS_AS(book.cite("nec-999"), std::out_of_range);
    CHECK_THROWS_AS(book.table("nec-310-16").column("cu105"), std::out_of_range);
    CHECK_FALSE(book.has("nec-999"));
    CHECK(book.has("practice"));
}

TEST_CASE("docs/sources.md names every id of the built-in book, its citation and the value of every figure") {
    std::ifstream file(DOORCARD_SOURCE "/docs/sources.md");
    const std::string text((std::istreambuf_iterator<char>(file)), std::istreambuf_iterator<char>());
    const RuleBook book = built_in_book("NEC-2023").value();
    const auto row_with = [&](const std::string& id) {
        const std::size_t at = text.find("\n| `" + id + "` |");
        return at == std::string::npos ? "" : text.substr(at + 1, text.find('\n', at + 1) - at - 1);
    };
    for (const auto& [id, table] : book.tables()) CHECK(row_with(id).ends_with("| " + table.source.text() + " |"));
    for (const auto& [id, source] : book.rules()) CHECK(row_with(id) == "| `" + id + "` | " + source.text() + " |");
    for (const auto& [id, fact] : book.facts()) {
        const std::string value = fmt::format("| {:g} | {} |", fact.value, fact.unit);
        const std::string end = fact.source.practice ? value : value + " " + fact.source.text() + " |";
        CAPTURE(id);
        CHECK(row_with(id).ends_with(end));
    }
}
