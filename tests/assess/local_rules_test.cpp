// SPDX-License-Identifier: MIT
// What local rules change in findings, and that what is laxer than the code is told.
#include <algorithm>

#include "assess/lines_shown.hpp"
#include "file/read_survey.hpp"
#include "rules/amend.hpp"

using namespace doorcard;

namespace {

Assessment judged(const std::string& survey, const std::string& rules, const std::string& edition = "NEC-2023") {
    const auto read = read_survey({"s", survey});
    REQUIRE(read);
    const auto book = amend(*built_in_book(edition), "format = 1\nbase = \"" + edition + "\"\n" + rules);
    REQUIRE(book);
    return assess(network_of(read->survey), *book);
}

Lines lines(const Assessment& assessment, const std::string& rule) {
    Lines all;
    for (const Finding& finding : assessment.findings)
        if (finding.rule == rule) all.push_back(line_of(finding) + " | " + ::sources_of(finding));
    return all;
}

const std::string kitchen = house + branch("c", "1", 20, wire("12", "insulation = \"THHN\", terminal_c = 75"));

std::string amps_of_12(const std::string& amps) {
    return "[[amend]]\ntable = \"nec-240-4-d\"\nrow = { size = \"12\", metal = \"cu\" }\nvalue = " + amps +
           "\nsource = \"County ordinance 12-34\"\n";
}

}  // namespace

TEST_CASE("local rules: a finding by an amended figure cites the amendment") {
    CHECK(lines(judged(kitchen, ""), "wire-too-small") == Lines{});
    CHECK(lines(judged(kitchen, amps_of_12("15")), "wire-too-small") ==
          Lines{"circuit:c warning required 20 A, limit 15 A | NEC 2023 240.4; County ordinance 12-34, amending NEC "
                "2023 240.4(D) for size 12, metal cu; NEC 2023 Table 310.16"});
}

TEST_CASE("local rules: an amended practice figure is cited so") {
    const std::string legs = house + reading("panel:MAIN/A", "amps = 130\ntogether = \"r\"") +
                             reading("panel:MAIN/B", "amps = 80\ntogether = \"r\"");
    CHECK(lines(judged(legs, ""), "legs-unbalanced").size() == 1);
    CHECK(lines(judged(legs, "[option]\nlegs-imbalance-percent = 30\n"), "legs-unbalanced") == Lines{});
    const Lines told = lines(judged(legs, "[option]\nlegs-imbalance-percent = 21\n"), "legs-unbalanced");
    REQUIRE(told.size() == 1);
    CHECK(told.front().ends_with("| local rules, amending common practice"));
}

TEST_CASE(
    "local-rule-laxer: told where the code asks for more, not where it asks for less or where nothing is amended") {
    CHECK(lines(judged(kitchen, amps_of_12("25")), "local-rule-laxer") ==
          Lines{"survey: notice advised 25 A, limit 20 A | County ordinance 12-34, amending NEC 2023 240.4(D) for size "
                "12, metal cu"});
    CHECK(lines(judged(kitchen, amps_of_12("15")), "local-rule-laxer") == Lines{});
    CHECK(lines(judged(kitchen, "[option]\nmeter-tolerance = 0.2\n"), "local-rule-laxer") == Lines{});
    CHECK(lines(judged(kitchen, ""), "local-rule-laxer") == Lines{});
}

TEST_CASE("local rules: the assessment says what it went by") {
    const Assessment by = judged(kitchen, "[option]\nev_220_82 = \"pool-40\"\n", "NEC-2020");
    CHECK(by.rules.edition == "NEC-2020");
    CHECK(by.rules.options.at("ev_220_82") == "pool-40");
    CHECK(by.rules.options.at("ev_220_83") == "outside-100");
    REQUIRE(by.rules.amendments.size() == 1);
    CHECK(by.rules.amendments.front().source.text() == "local rules, amending NEC 2020 220.82");
}

TEST_CASE("editions: the same survey is judged by either, each citing its own") {
    const std::string heavy = house + branch("c", "1", 20) + load("c", "va = 3000");
    const auto sources = [&](const std::string& edition) {
        const Assessment by = judged(heavy, "", edition);
        std::string all;
        for (const Finding& finding : by.findings) all += ::sources_of(finding) + "\n";
        return all;
    };
    CHECK(sources("NEC-2023").find("NEC 2023 210.23") != std::string::npos);
    CHECK(sources("NEC-2020").find("NEC 2020 210.23") != std::string::npos);
    CHECK(sources("NEC-2020").find("2023") == std::string::npos);
}

TEST_CASE("receptacle-rating: by 2020 one too large for its circuit, and no larger device is asked for") {
    const std::string pair = house + branch("c", "1, 3", 15) +
                             outlet("o", "c", "kind = \"receptacle\"\nconfig = \"6-20R\"") +
                             outlet("p", "c", "kind = \"receptacle\"\nconfig = \"6-15R\"");
    const Assessment by = judged(pair, "", "NEC-2020");
    const auto told = std::ranges::find(by.findings, "receptacle-rating", &Finding::rule);
    REQUIRE(told != by.findings.end());
    CHECK(line_of(*told) == "outlet:o warning required 20 A, limit 15 A");
    CHECK(said(told->remedy).find("never a larger device") != std::string::npos);
    CHECK(said(told->remedy).find("smaller device") == std::string::npos);
    CHECK(lines(judged(pair, ""), "receptacle-rating") == Lines{});  // 2023 asks for no less, and for no more
}
