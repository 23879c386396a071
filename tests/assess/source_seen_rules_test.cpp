// SPDX-License-Identifier: MIT
// generator-no-interlock, source-unlabelled.
#include "assess/lines_shown.hpp"

using namespace doorcard;

namespace {

std::string source(const std::string& keys) {
    return "[[source]]\nid = \"second\"\nsystem = \"120/240 1ph 3w\"\n" + keys + "\n";
}
/// Comes in through a two-pole breaker of MAIN.
std::string beside(const std::string& keys) {
    return house + breaker("38, 40", 30) + source("through = \"MAIN:38+40\"\n" + keys);
}

}  // namespace

TEST_CASE("generator-no-interlock: nothing keeps it and the utility apart") {
    const auto finding = only(beside("kind = \"generator\"\ninterlock = \"none\""), "generator-no-interlock");
    CHECK(line_of(finding) == "breaker:MAIN:38+40 danger required");
    CHECK(sources_of(finding) == "NEC 2023 702.5");
    CHECK(said(finding.remedy).starts_with("Do not run it on this wiring"));
}

TEST_CASE("generator-no-interlock: silent with one, where nobody looked, and for what follows the utility") {
    const auto bare = [](const std::string& keys) { return found(beside(keys), "generator-no-interlock"); };
    CHECK(bare("kind = \"generator\"\ninterlock = \"mechanical\"") == Lines{});
    CHECK(bare("kind = \"generator\"\ninterlock = \"transfer\"") == Lines{});
    CHECK(bare("kind = \"generator\"") == Lines{});
    CHECK(bare("kind = \"pv\"\ninterlock = \"none\"") == Lines{});
    CHECK(bare("interlock = \"none\"") == Lines{});
}

TEST_CASE("generator-no-interlock: a panel that has nothing but the generator meets nothing") {
    const std::string alone = source("kind = \"generator\"\ninterlock = \"none\"");
    const std::string island = "[[panel]]\nid = \"HUT\"\nspaces = 12\nfed_by = \"second\"\n";
    const auto bare = [](const std::string& survey) { return found(survey, "generator-no-interlock"); };
    CHECK(bare(house + alone + island) == Lines{});
    CHECK(bare(house + alone) == Lines{"source:second danger required"});  // how it comes in, nobody entered
    CHECK(bare(house + alone + "[[panel]]\nid = \"HUT\"\nspaces = 12\nfed_by = [\"utility\", \"second\"]\n") ==
          Lines{"panel:HUT danger required"});
    CHECK(bare(house + alone + island +
               "[[breaker]]\npanel = \"HUT\"\nspaces = [1, 3]\n[[source]]\nid = \"sun\"\nkind = \"pv\"\n"
               "through = \"HUT:1+3\"\n") == Lines{"panel:HUT danger required"});
}

TEST_CASE("source-unlabelled: somebody looked for the sign of a second source") {
    const auto sun = only(beside("kind = \"pv\"\nlabelled = false"), "source-unlabelled");
    CHECK(line_of(sun) == "breaker:MAIN:38+40 warning required");
    CHECK(sources_of(sun) == "NEC 2023 705.10");
    CHECK(sources_of(only(beside("kind = \"generator\"\nlabelled = false"), "source-unlabelled")) ==
          "NEC 2023 702.7(A)");
    CHECK(found(beside("kind = \"pv\"\nlabelled = true"), "source-unlabelled") == Lines{});
    CHECK(found(beside("kind = \"pv\""), "source-unlabelled") == Lines{});
    CHECK(found(beside("kind = \"utility\"\nlabelled = false"), "source-unlabelled") == Lines{});
}
