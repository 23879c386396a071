// SPDX-License-Identifier: MIT
// [[accepted]]: a finding taken note of leaves the count; a danger stays in both; one that no longer fires is told.
#include "assess/lines_shown.hpp"

namespace {

std::string accept(const std::string& rule, const std::string& of) {
    return "[[accepted]]\nrule = \"" + rule + "\"\nof = \"" + of + "\"\nreason = \"owner informed\"\n";
}

Lines lines(const std::vector<doorcard::Finding>& findings, const std::string& rule) {
    Lines found;
    for (const auto& finding : findings)
        if (finding.rule == rule) found.push_back(line_of(finding));
    return found;
}

const std::string heavy =
    house + branch("c", "1", 20) + branch("d", "5", 20) + load("c", "amps = 21") + load("d", "amps = 22");
const std::string cross =
    house + branch("c", "1", 20) + branch("d", "5", 20) + "[[outlet]]\nid = \"K\"\ncircuit = [\"c\", \"d\"]\n";

}  // namespace

TEST_CASE("accepted: a finding moves out of the findings, others of its rule stay") {
    const auto assessment = assessment_of(heavy + accept("load-over-rating", "circuit:c"));
    CHECK(lines(assessment.findings, "load-over-rating") == Lines{"circuit:d warning required 22 A, limit 20 A"});
    CHECK(lines(assessment.accepted, "load-over-rating") == Lines{"circuit:c warning required 21 A, limit 20 A"});
    CHECK(lines(assessment.findings, "accepted-idle") == Lines{});
}

TEST_CASE("accepted: a danger stays in both") {
    const auto assessment = assessment_of(cross + accept("outlet-two-feeds", "outlet:K"));
    CHECK(lines(assessment.findings, "outlet-two-feeds") == Lines{"outlet:K danger practice"});
    CHECK(lines(assessment.accepted, "outlet-two-feeds") == Lines{"outlet:K danger practice"});
}

TEST_CASE("accepted: the rule and the thing must both be the same") {
    const auto assessment = assessment_of(heavy + accept("wire-overload", "circuit:c"));
    CHECK(lines(assessment.findings, "load-over-rating").size() == 2);
    CHECK(assessment.accepted.empty());
}

TEST_CASE("accepted-idle: an acceptance of something that no longer fires") {
    const auto assessment = assessment_of(house + branch("c", "1", 20) + accept("load-over-rating", "circuit:c"));
    CHECK(lines(assessment.findings, "accepted-idle") == Lines{"circuit:c notice gap"});
}

TEST_CASE("accepted: legs in the address do not matter") {
    const auto assessment = assessment_of(heavy + accept("load-over-rating", "circuit:c/A"));
    CHECK(lines(assessment.accepted, "load-over-rating").size() == 1);
}

TEST_CASE("findings stand by severity, then by panel and space") {
    const auto assessment =
        assessment_of(heavy + cross.substr(house.size() + branch("c", "1", 20).size() + branch("d", "5", 20).size()));
    REQUIRE(assessment.findings.size() >= 3);
    CHECK(assessment.findings[0].rule == "outlet-two-feeds");
    CHECK(line_of(assessment.findings[1]) == "circuit:c warning required 21 A, limit 20 A");
    CHECK(line_of(assessment.findings[2]) == "circuit:d warning required 22 A, limit 20 A");
}
