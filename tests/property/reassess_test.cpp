// SPDX-License-Identifier: MIT
// Looked at anew after an edit is the same as looked at whole: random buildings, random edits one after another.
#include <doctest/doctest.h>

#include "assess/reassess.hpp"
#include "property/draw_building.hpp"

using namespace doorcard;

namespace {

std::string line(const Finding& finding) {
    return finding.rule + " " + finding.of.text() + " " + finding.text.pattern + " " +
           std::to_string(finding.value.value_or(-1));
}

std::vector<std::string> lines(const std::vector<Finding>& findings) {
    std::vector<std::string> all;
    for (const Finding& finding : findings) all.push_back(line(finding));
    return all;
}

void expect_same(const Assessment& anew, const Assessment& whole) {
    REQUIRE(lines(anew.findings) == lines(whole.findings));
    CHECK(anew.findings == whole.findings);
    REQUIRE(lines(anew.accepted) == lines(whole.accepted));
    CHECK(anew.accepted == whole.accepted);
    CHECK(anew.circuits == whole.circuits);
    CHECK(anew.feeders == whole.feeders);
    CHECK(anew.neutrals == whole.neutrals);
    CHECK(anew.panels == whole.panels);
    CHECK(anew.joints == whole.joints);
    CHECK(anew.assumed == whole.assumed);
    CHECK(anew.assumed_up_to == whole.assumed_up_to);
}

}  // namespace

TEST_CASE("law: what follows after an edit is what follows from the whole survey") {
    const RuleBook book = built_in_book("NEC-2023").value();
    int in_part = 0;
    for (int i = 0; i < 200; ++i) {
        Draw draw(static_cast<std::uint64_t>(i) + 77);
        Assessed assessed = assess_all(random_building(draw), book);
        for (int edit = 0; edit < 8; ++edit) {
            CAPTURE(i);
            CAPTURE(edit);
            const Survey after = edited(assessed.survey, draw);
            assessed = reassess(std::move(assessed), after, book);
            in_part += assessed.panels_anew < after.panels.size();
            expect_same(assessed.assessment, assess_all(after, book).assessment);
        }
    }
    CHECK(in_part > 250);  // else the law would say nothing
}
