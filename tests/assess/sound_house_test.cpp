// SPDX-License-Identifier: MIT
// Sound houses stay quiet: a tool that cries wolf is switched off. Invented buildings, whole: a house recorded with
// care, one of 1978 seen in an hour, one of 2024, and a shop.
#include <algorithm>
#include <fstream>
#include <set>

#include "assess/lines_shown.hpp"
#include "assess/standing.hpp"
#include "file/read_survey.hpp"
#include "network/network.hpp"

using namespace doorcard;

namespace {

std::string text_of(const std::string& name) {
    std::ifstream in(std::string(DOORCARD_SOURCE) + "/tests/assess/surveys/" + name, std::ios::binary);
    REQUIRE(in);
    return {std::istreambuf_iterator<char>(in), {}};
}

const Assessment& sound() {
    static const Assessment assessment = assessment_of(text_of("sound.survey.toml"));
    return assessment;
}

const Assessment& older() {
    static const Assessment assessment = assessment_of(text_of("older.survey.toml"));
    return assessment;
}

/// Lines of the text of check: notices of one rule and panel stand in one line, the rest each in its own.
std::size_t grouped_lines(const std::string& name) {
    const auto read = read_survey({"s", text_of(name)});
    REQUIRE(read);
    const Network network = network_of(read->survey);
    std::set<std::string> groups;
    for (const Finding& finding : assessment_of(text_of(name)).findings)
        groups.insert(finding.severity == Severity::notice && finding.of.kind != ThingKind::survey
                          ? finding.rule + std::to_string(standing(network, finding.of).panel)
                          : finding.rule + finding.of.text());
    return groups.size();
}

Lines notices(const Assessment& assessment, const std::string& rule) {
    Lines lines;
    for (const Finding& finding : assessment.findings)
        if (finding.rule == rule) lines.push_back(line_of(finding));
    return lines;
}

const LoadFigures& row(const Assessment& assessment, const std::string& id) {
    const auto at = std::ranges::find(assessment.circuits, id, &LoadFigures::id);
    REQUIRE(at != assessment.circuits.end());
    return *at;
}

}  // namespace

TEST_CASE("sound house: 24 circuits and a workshop, no danger, no warning, no caution") {
    CHECK(std::ranges::count_if(sound().circuits, [](const LoadFigures& circuit) {
              return circuit.breakers.front().starts_with("MAIN:");
          }) == 24);
    CHECK(at_least(sound(), Severity::caution) == Lines{});
}

TEST_CASE("sound house: 33 A of cord nameplates in the kitchen are told, not warned of") {
    CHECK(row(sound(), "kitchen-east").connected_va->value == doctest::Approx(33 * 120.0));
    CHECK(notices(sound(), "cord-sum-over-rating").size() ==
          3);  // two kitchen circuits and the utility room's west wall
}

TEST_CASE("sound house: 34 A of appliances on one leg of a tied 12/3 are no danger to its neutral") {
    CHECK(row(sound(), "utility-west").connected_va->value == doctest::Approx(34 * 120.0));
    CHECK(notices(sound(), "neutral-overload") == Lines{});
    CHECK(notices(sound(), "neutral-not-opened-together") == Lines{});
}

TEST_CASE("sound house: range, workshop feeder, vehicle and heat pump are within their devices") {
    CHECK(row(sound(), "range").percent_of_rating.value() == doctest::Approx(66.667).epsilon(0.001));  // 8 kW of 12 kW
    CHECK(row(sound(), "car").required_a->value == doctest::Approx(50));
    CHECK(notices(sound(), "wire-too-small") == Lines{});
}

TEST_CASE("sound house: what is left is a handful of notices") { CHECK(sound().findings.size() <= 6); }

TEST_CASE("older house: no danger, no warning, at most three cautions") {
    CHECK(at_least(older(), Severity::warning) == Lines{});
    CHECK(at_least(older(), Severity::caution).size() <= 3);
}

TEST_CASE("older house: the untied kitchen circuits are a caution, the wires a question to the terminals") {
    CHECK(notices(older(), "neutral-not-opened-together") == Lines{"neutral:N1 caution required"});
    CHECK(notices(older(), "wire-too-small") ==
          Lines{"circuit:range notice required 50 A, limit 40 A", "panel:CELLAR notice required 100 A, limit 90 A"});
}

TEST_CASE("older house: it stands in at most twelve lines") { CHECK(grouped_lines("older.survey.toml") <= 12); }

TEST_CASE("new house: guards, solar, generator, vehicle, heat pump, workshop: nothing to be warned of") {
    const Assessment fresh = assessment_of(text_of("new.survey.toml"));
    CHECK(at_least(fresh, Severity::caution) == Lines{});
    CHECK(notices(fresh, "guard-missing") == Lines{});
    CHECK(notices(fresh, "required-circuit-missing") == Lines{});
    CHECK(notices(fresh, "appliance-circuits-differ") == Lines{});
    CHECK(grouped_lines("new.survey.toml") <= 6);
}

TEST_CASE("sound shop: three legs, a neutral for three tied hots, lighting that lasts: nothing to be warned of") {
    const Assessment shop = assessment_of(text_of("shop.survey.toml"));
    CHECK(at_least(shop, Severity::caution) == Lines{});
    CHECK(grouped_lines("shop.survey.toml") <= 6);
}
