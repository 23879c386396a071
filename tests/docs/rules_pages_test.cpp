// SPDX-License-Identifier: MIT
// The lists of docs/local-rules.md and docs/sources.md that follow from the rule books. DOORCARD_WRITE_RULES=1 writes
// them: read the difference before you keep it.
#include <doctest/doctest.h>
#include <fmt/format.h>
#include <fmt/ranges.h>

#include <cstdlib>
#include <fstream>
#include <iterator>

#include "rules/book.hpp"

using namespace doorcard;

namespace {

const std::string docs = DOORCARD_SOURCE "/docs/";

std::string text_of(const std::string& page) {
    std::ifstream in(docs + page, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

/// Behind the last line of the table that begins here.
std::size_t end_of_table(const std::string& text, std::size_t begin) {
    const std::size_t end = text.find("\n\n", begin);
    return end == std::string::npos ? text.size() : end + 1;
}

/// The lines of a section that belong to its table.
std::string table_under(const std::string& page, const std::string& heading) {
    const std::string text = text_of(page);
    const std::size_t at = text.find("\n" + heading + "\n");
    REQUIRE_MESSAGE(at != std::string::npos, heading);
    const std::size_t begin = text.find("\n| ", at) + 1;
    return text.substr(begin, end_of_table(text, begin) - begin);
}

void write_table(const std::string& page, const std::string& heading, const std::string& table) {
    std::string text = text_of(page);
    const std::size_t begin = text.find("\n| ", text.find("\n" + heading + "\n")) + 1;
    text.replace(begin, end_of_table(text, begin) - begin, table);
    std::ofstream(docs + page, std::ios::binary) << text;
}

void demand(const std::string& page, const std::string& heading, const std::string& table) {
    if (std::getenv("DOORCARD_WRITE_RULES")) write_table(page, heading, table);
    CHECK_MESSAGE(table_under(page, heading) == table, page << " " << heading);
}

std::string line(const std::vector<std::string>& cells) { return fmt::format("| {} |\n", fmt::join(cells, " | ")); }

std::string head(const std::vector<std::string>& columns) {
    return line(columns) + "|" + fmt::format("{}", fmt::join(std::vector<std::string>(columns.size(), "---"), "|")) +
           "|\n";
}

std::string code(const std::string& id) { return "`" + id + "`"; }

std::string laxer(Laxer way) { return way == Laxer::higher ? "higher" : way == Laxer::lower ? "lower" : "not judged"; }

const RuleBook& newer() {
    static const RuleBook book = built_in_book("NEC-2023").value();
    return book;
}

const RuleBook& older() {
    static const RuleBook book = built_in_book("NEC-2020").value();
    return book;
}

std::string figures(bool practice) {
    std::string text =
        practice ? head({"option", "default", "unit", "means"}) : head({"id", "value", "unit", "laxer when", "source"});
    for (const auto& [id, fact] : newer().facts()) {
        if (fact.fixed || fact.source.practice != practice) continue;
        const std::string value = fmt::format("{:g}", fact.value);
        text += practice ? line({code(id), value, fact.unit, fact.title})
                         : line({code(id), value, fact.unit, laxer(fact.laxer), fact.source.text()});
    }
    return text;
}

/// "value" where the editions have other figures under one id.
void add_difference(std::string& text, const std::string& id, bool other_values) {
    const Citation &now = newer().cite(id), &then = older().cite(id);
    if (!other_values && now.place == then.place) return;
    text += line({code(id), then.place, now.place, other_values ? "other values" : "another number"});
}

}  // namespace

TEST_CASE("local-rules.md: options, with every value and the usual one") {
    std::string table = head({"option", "values, the default first", "what it chooses", "of"});
    for (const auto& [id, option] : newer().options()) {
        std::vector<std::string> values = {code(option.usual)};
        for (const std::string& value : option.values)
            if (value != option.usual) values.push_back(code(value));
        table += line({code(id), fmt::format("{}", fmt::join(values, ", ")), option.title, option.source.text()});
    }
    demand("local-rules.md", "### Readings open to dispute", table);
}

TEST_CASE("local-rules.md: figures of practice") { demand("local-rules.md", "### Figures of practice", figures(true)); }

TEST_CASE("local-rules.md: tables that can be amended") {
    std::string table = head({"table", "columns", "unit", "laxer when", "source"});
    for (const auto& [id, one] : newer().tables())
        if (!one.fixed && one.columns.size() > 1)
            table += line({code(id), fmt::format("{}", fmt::join(one.columns, ", ")), one.unit, laxer(one.laxer),
                           one.source.text()});
    demand("local-rules.md", "### Tables", table);
}

TEST_CASE("local-rules.md: single figures that can be amended") {
    demand("local-rules.md", "### Single figures", figures(false));
}

TEST_CASE("sources.md: where the editions differ, and nowhere else") {
    std::string table = head({"id", "NEC 2020", "NEC 2023", "what differs"});
    for (const auto& [id, one] : newer().tables()) add_difference(table, id, one.rows != older().table(id).rows);
    for (const auto& [id, fact] : newer().facts()) add_difference(table, id, fact.value != older().figure(id));
    for (const auto& [id, source] : newer().rules()) add_difference(table, id, false);
    demand("sources.md", "## What the edition 2020 has otherwise", table);
}
