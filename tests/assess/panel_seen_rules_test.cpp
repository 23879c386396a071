// SPDX-License-Identifier: MIT
// live-part-open, service-neutral-unbonded, subpanel-neutral-bonded, neutrals-one-screw, panel-place.
#include "assess/lines_shown.hpp"

using namespace doorcard;

namespace {

/// A panel behind the utility.
std::string panel(const std::string& keys, const std::string& system = "120/240 1ph 3w") {
    return "format = 1\n[[source]]\nid = \"utility\"\nkind = \"utility\"\nsystem = \"" + system +
           "\"\n[[panel]]\nid = \"MAIN\"\nfed_by = \"utility\"\nspaces = 40\n" + keys + "\n";
}

/// A panel behind a breaker of MAIN.
std::string sub(const std::string& keys, const std::string& before = house) {
    return before + breaker("10, 12", 60) + "[[panel]]\nid = \"SUB\"\nfed_by = \"MAIN:10+12\"\n" + keys + "\n";
}

std::string built(int year, const std::string& survey) {
    return "format = 1\n[survey]\nbuilt = " + std::to_string(year) + "\n" + survey.substr(survey.find('\n') + 1);
}

}  // namespace

TEST_CASE("live-part-open: a missing dead front is a danger, gaps and open spaces a warning") {
    const auto finding = only(panel("deadfront = \"missing\""), "live-part-open");
    CHECK(line_of(finding) == "panel:MAIN danger required");
    CHECK(sources_of(finding) == "NEC 2023 110.27(A); NEC 2023 408.38");
    CHECK(found(panel("deadfront = \"gaps\""), "live-part-open") == Lines{"panel:MAIN warning required"});
    CHECK(found(panel("deadfront = \"ok\"\nopen_spaces_unfilled = 2"), "live-part-open") ==
          Lines{"panel:MAIN warning required"});
    CHECK(found(panel("deadfront = \"missing\"\nopen_spaces_unfilled = 2"), "live-part-open").size() == 1);
}

TEST_CASE("live-part-open: silent where it is sound, and where nobody looked") {
    CHECK(found(panel("deadfront = \"ok\"\nopen_spaces_unfilled = 0"), "live-part-open") == Lines{});
    CHECK(found(panel("empty_spaces = [1, 2, 3]"), "live-part-open") == Lines{});
}

TEST_CASE("live-part-open: copper is open to touch in every country, the article is not") {
    CHECK(found(panel("deadfront = \"missing\"", "400Y/230 3ph 4w"), "live-part-open") ==
          Lines{"panel:MAIN danger required"});
    CHECK(found(panel("deadfront = \"gaps\"", "400Y/230 3ph 4w"), "live-part-open") == Lines{});
}

TEST_CASE("service-neutral-unbonded: looked at the service, and there is none") {
    const auto finding = only(panel("service = true\nneutral_bonded = false"), "service-neutral-unbonded");
    CHECK(line_of(finding) == "panel:MAIN danger required");
    CHECK(said(finding.remedy).starts_with("Verify where the main bonding jumper is"));
    CHECK(said(finding.remedy).find("dd a bond") == std::string::npos);
}

TEST_CASE("service-neutral-unbonded: not below the service, not where nobody looked, not without a neutral") {
    const auto unbonded = [](const std::string& survey) { return found(survey, "service-neutral-unbonded"); };
    CHECK(unbonded(panel("service = true\nneutral_bonded = true")) == Lines{});
    CHECK(unbonded(panel("service = true")) == Lines{});
    CHECK(unbonded(panel("neutral_bonded = false")) == Lines{});
    CHECK(unbonded(panel("service = false\nneutral_bonded = false")) == Lines{});
    CHECK(unbonded(sub("neutral_bonded = false")) == Lines{});
    CHECK(unbonded(panel("service = true\nneutral_bonded = false", "480 3ph 3w")) == Lines{});
}

TEST_CASE("subpanel-neutral-bonded: bonded again below the service") {
    const auto finding = only(sub("neutral_bonded = true"), "subpanel-neutral-bonded");
    CHECK(line_of(finding) == "panel:SUB warning required");
    CHECK(sources_of(finding) == "NEC 2023 250.24(B); NEC 2023 250.142(B)");
    CHECK(said(finding.remedy).find("verify first that a ground wire comes with the feeder") != std::string::npos);
    CHECK(found(panel("service = false\nneutral_bonded = true"), "subpanel-neutral-bonded") ==
          Lines{"panel:MAIN warning required"});
}

TEST_CASE("subpanel-neutral-bonded: silent at the service, behind a transformer, and where nobody looked") {
    const auto bonded = [](const std::string& survey) { return found(survey, "subpanel-neutral-bonded"); };
    CHECK(bonded(sub("neutral_bonded = false")) == Lines{});
    CHECK(bonded(sub("title = \"Sub\"")) == Lines{});
    CHECK(bonded(sub("neutral_bonded = true\nservice = true")) == Lines{});
    CHECK(bonded(panel("neutral_bonded = true")) == Lines{});  // nobody said whether it is the service
    CHECK(bonded(sub("neutral_bonded = true\nsystem = \"120/240 1ph 3w\"\ntransformer = { kva = 15 }")) == Lines{});
    const std::string plant = supply("480Y/277 3ph 4w", "main = \"breaker\"");
    CHECK(bonded(plant + breaker("1, 3, 5", 60) +
                 "[[panel]]\nid = \"LOW\"\nfed_by = \"MAIN:1+3+5\"\nsystem = \"208Y/120 3ph 4w\"\n"
                 "neutral_bonded = true\n") == Lines{});
    CHECK(bonded("format = 1\n[[source]]\nid = \"g\"\nkind = \"generator\"\nsystem = \"120/240 1ph 3w\"\n"
                 "[[panel]]\nid = \"P\"\nfed_by = \"g\"\nneutral_bonded = true\nservice = false\n") == Lines{});
}

TEST_CASE("subpanel-neutral-bonded: three wires to an old outbuilding are advised against, and the bond stays") {
    const std::string shed = sub("neutral_bonded = true\nseparate_building = true\nfeeder = { size = \"6\" }");
    const auto old = only(built(1990, shed), "subpanel-neutral-bonded");
    CHECK(line_of(old) == "panel:SUB warning advised");
    CHECK(old.applies == Applies::existing);
    CHECK(said(old.text).find("may have been lawful when installed; the hazard remains") != std::string::npos);
    CHECK(said(old.remedy).find("With three wires the bond stays") != std::string::npos);
    const auto bases = [](const std::string& survey) { return found(survey, "subpanel-neutral-bonded"); };
    CHECK(bases(built(2008, shed)) == Lines{"panel:SUB warning required"});
    CHECK(bases(shed) == Lines{"panel:SUB warning required"});
    CHECK(bases(built(1990, sub("neutral_bonded = true"))) == Lines{"panel:SUB warning required"});
    CHECK(bases(built(1990, sub("neutral_bonded = true\nseparate_building = true\n"
                                "feeder = { size = \"6\", ground_size = \"10\" }"))) ==
          Lines{"panel:SUB warning required"});
}

TEST_CASE("neutrals-one-screw: two neutrals under one screw were seen") {
    CHECK(line_of(only(panel("neutrals_doubled = true"), "neutrals-one-screw")) == "panel:MAIN warning required");
    CHECK(found(panel("neutrals_doubled = false"), "neutrals-one-screw") == Lines{});
    CHECK(found(panel(""), "neutrals-one-screw") == Lines{});
    CHECK(found(panel("neutrals_doubled = true", "230 1ph 2w"), "neutrals-one-screw") == Lines{});
}

TEST_CASE("panel-place: places that 240.24 rules out, old work said to be such") {
    const auto closet = only(panel("place = \"closet\""), "panel-place");
    CHECK(line_of(closet) == "panel:MAIN warning required");
    CHECK(sources_of(closet) == "NEC 2023 240.24(D)");
    CHECK(closet.applies == Applies::any);
    CHECK(sources_of(only(panel("place = \"bath\""), "panel-place")) == "NEC 2023 240.24(E)");
    CHECK(sources_of(only(panel("place = \"over-steps\""), "panel-place")) == "NEC 2023 240.24(F)");
    CHECK(only(built(1978, panel("place = \"closet\"")), "panel-place").applies == Applies::existing);
    CHECK(found(panel("location = \"hall closet\""), "panel-place") == Lines{});
}
