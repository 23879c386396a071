// SPDX-License-Identifier: MIT
// What the examples are there to be found for stays found, and nothing else of weight is.
#include <algorithm>
#include <fstream>
#include <iterator>

#include "assess/lines_shown.hpp"

using namespace doorcard;

namespace {

Assessment example(const std::string& name) {
    std::ifstream in(DOORCARD_SOURCE "/examples/" + name + ".survey.toml", std::ios::binary);
    return assessment_of({std::istreambuf_iterator<char>(in), {}});
}

Lines rules_of_weight(const Assessment& assessment) {
    Lines rules;
    for (const Finding& finding : assessment.findings)
        if (finding.severity != Severity::notice) rules.push_back(finding.rule);
    return rules;
}

Lines lines_of_weight(const Assessment& assessment) {
    Lines lines;
    for (const Finding& finding : assessment.findings)
        if (finding.severity != Severity::notice) lines.push_back(finding.rule + " " + line_of(finding));
    return lines;
}

}  // namespace

TEST_CASE("kiln-yard: an open neutral in the flat, a cable, a guard and a bench; all else is sound") {
    const Assessment found = example("kiln-yard");
    CHECK(lines_of_weight(found) == Lines{"neutral-open-symptom panel:FLAT-1 danger practice 214.5 V, limit 215.167 V",
                                          "wire-too-small circuit:dryer warning required 30 A, limit 20 A",
                                          "neutral-one-pole-guard neutral:F1 warning required",
                                          "load-over-rating circuit:drying-bench warning required 22.5 A, limit 20 A"});
    const auto unbalanced = std::ranges::find(found.findings, "legs-unbalanced", &Finding::rule);
    REQUIRE(unbalanced != found.findings.end());
    CHECK(unbalanced->of.text() == "panel:MAIN");
}

TEST_CASE("kiln-yard: neutrals that are shared as they should be are explained to half an ampere") {
    const Assessment found = example("kiln-yard");
    for (const NeutralFigures& neutral : found.neutrals)
        if (neutral.id != "F1") {
            REQUIRE(neutral.residual_a);
            CHECK(std::abs(neutral.residual_a->value) < 0.5);
        }
}

TEST_CASE("the two examples show different rules") {
    const Lines kiln_yard = rules_of_weight(example("kiln-yard")), alder_row = rules_of_weight(example("alder-row"));
    CHECK(alder_row.size() >= 5);
    for (const std::string& rule : kiln_yard)
        CHECK_MESSAGE(std::ranges::find(alder_row, rule) == alder_row.end(), rule);
}
