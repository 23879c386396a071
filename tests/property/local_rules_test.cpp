// SPDX-License-Identifier: MIT
// Whatever local rules are allowed to say, every survey can still be judged by it, and every figure stays a number.
#include <doctest/doctest.h>
#include <fmt/format.h>

#include <cmath>

#include "assess/assessment.hpp"
#include "property/draw.hpp"
#include "rules/amend.hpp"

using namespace doorcard;

namespace {

const RuleBook& code() {
    static const RuleBook book = built_in_book("NEC-2023").value();
    return book;
}

std::string amendment(const std::string& what, double value) {
    return fmt::format("[[amend]]\n{}value = {}\nsource = \"Somewhere 1\"\n", what, value);
}

RuleBook amended(const std::string& rules) {
    auto book = amend(code(), "format = 1\nbase = \"NEC-2023\"\n" + rules);
    REQUIRE(book);
    return *std::move(book);
}

void judge_some(const RuleBook& book, Draw& draw) {
    for (int i = 0; i < 3; ++i) {
        const Assessment found = assess(network_of(random_survey(draw)), book);
        for (const Finding& finding : found.findings) {
            CHECK_FALSE(finding.sources.empty());
            CHECK((!finding.limit || std::isfinite(*finding.limit)));
        }
        for (const LoadFigures& row : found.circuits) CHECK((!row.required_a || std::isfinite(row.required_a->value)));
    }
}

}  // namespace

TEST_CASE("law: a survey can be judged by every figure at either of its bounds") {
    Draw draw(4242);
    for (const auto& [id, fact] : code().facts()) {
        if (fact.fixed) continue;
        CAPTURE(id);
        const std::string what = "fact = \"" + id + "\"\n";
        judge_some(amended(amendment(what, fact.least.value_or(fact.value / 20))), draw);
        judge_some(amended(amendment(what, fact.most.value_or(fact.value * 20))), draw);
    }
}

TEST_CASE("law: a survey can be judged by tables whose cells stand anywhere within their bounds") {
    Draw draw(4243);
    for (const auto& [id, table] : code().tables()) {
        if (table.fixed || table.columns.size() < 2) continue;
        CAPTURE(id);
        std::string rules;
        for (const std::vector<Cell>& row : table.rows) {
            std::string key;
            for (std::size_t c = 0; c + 1 < table.columns.size(); ++c)
                if (const auto* text = std::get_if<std::string>(&row[c]))
                    key += fmt::format("{}{} = \"{}\"", key.empty() ? "" : ", ", table.columns[c], *text);
            if (key.empty()) key = fmt::format("{} = {}", table.columns.front(), std::get<double>(row.front()));
            const auto* last = std::get_if<double>(&row.back());
            if (last == nullptr || *last == 0) continue;
            const double factor = draw.one_in(2) ? 0.06 : 19;
            rules += amendment(
                fmt::format("table = \"{}\"\nrow = {{ {} }}\ncolumn = \"{}\"\n", id, key, table.columns.back()),
                *last * factor);
        }
        judge_some(amended(rules), draw);
    }
}
