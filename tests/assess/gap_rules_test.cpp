// SPDX-License-Identifier: MIT
// What nobody has seen yet: each gap is told where it is one, and not where somebody looked.
#include "assess/lines_shown.hpp"

namespace {

Lines gaps(const std::string& survey, const std::string& rule) { return found(survey, rule); }

std::string traced(const std::string& how) { return "traced = { how = \"" + how + "\" }"; }
std::string alone(const std::string& keys) { return "format = 1\n[[panel]]\nid = \"P\"\n" + keys + "\n"; }

}  // namespace

TEST_CASE("outlet-unmapped: nobody knows what feeds it") {
    const auto finding = only(house + "[[outlet]]\nid = \"K\"\n", "outlet-unmapped");
    CHECK(line_of(finding) == "outlet:K notice gap");
    CHECK(said(finding.remedy).find("treat it as live") != std::string::npos);
    const std::string k = branch("c", "1", 20) + outlet("K", "c");
    CHECK(gaps(house + k, "outlet-unmapped") == Lines{});
    CHECK(gaps(house + k + "[[outlet]]\nid = \"L\"\nupstream = \"K\"\n", "outlet-unmapped") == Lines{});
}

TEST_CASE("claim-only: not traced, or only told, by a tracer alone, or by the old directory") {
    for (const char* how : {"told", "tracer", "old-directory"})
        CHECK(gaps(house + branch("c", "1", 20, traced(how)), "claim-only") == Lines{"circuit:c notice gap"});
    CHECK(gaps(house + branch("c", "1", 20), "claim-only") == Lines{"circuit:c notice gap"});
    for (const char* how : {"switching", "test-load", "seen"})
        CHECK(gaps(house + branch("c", "1", 20, traced(how)), "claim-only") == Lines{});
}

TEST_CASE("main-unseen: nobody looked at the main") {
    CHECK(gaps(alone(""), "main-unseen") == Lines{"panel:P notice gap"});
    CHECK(gaps(alone("main = \"lugs\""), "main-unseen") == Lines{});
}

TEST_CASE("guard-unseen: a breaker in use whose TEST button nobody looked for") {
    CHECK(gaps(house + branch("c", "1", 20), "guard-unseen") == Lines{"breaker:MAIN:1 notice gap"});
    CHECK(gaps(house + branch("c", "1", 20, "", "guards = []"), "guard-unseen") == Lines{});
    CHECK(gaps(house + branch("c", "1", 20, "", "guards = [\"arc\"]"), "guard-unseen") == Lines{});
    CHECK(gaps(house + breaker("1", 20), "guard-unseen") == Lines{});  // nothing known of it yet
    CHECK(gaps(house + branch("c", "1", 20, "", "state = \"spare\""), "guard-unseen") == Lines{});
}

TEST_CASE("nameplate-missing: a load that adds nothing to any sum") {
    const std::string c = house + branch("c", "1", 20);
    CHECK(gaps(c + "[[load]]\nid = \"t\"\ncircuit = \"c\"\n", "nameplate-missing") == Lines{"load:t notice gap"});
    CHECK(gaps(c + "[[load]]\nid = \"t\"\n", "nameplate-missing") == Lines{"load:t notice gap"});
    for (const char* key : {"va = 900", "watts = 900", "amps = 8", "hp = \"1/2\"", "min_circuit_a = 12"})
        CHECK(gaps(c + "[[load]]\nid = \"t\"\ncircuit = \"c\"\n" + key + "\n", "nameplate-missing") == Lines{});
}

TEST_CASE("nameplate-missing: a load set on a panel needs its volts or its legs") {
    CHECK(gaps(house + "[[load]]\nid = \"t\"\npanel = \"MAIN\"\namps = 8\n", "nameplate-missing").size() == 1);
    CHECK(gaps(house + "[[load]]\nid = \"t\"\npanel = \"MAIN\"\namps = 8\nvolts = 240\n", "nameplate-missing") ==
          Lines{});
}

TEST_CASE("load-leg-unknown: a 120 V load on two legs that does not say which") {
    const std::string pair = house + branch("c", "1, 3", 20);
    const std::string t = "[[load]]\nid = \"t\"\ncircuit = \"c\"\namps = 8\n";
    CHECK(gaps(pair + t + "volts = 120\n", "load-leg-unknown") == Lines{"load:t notice gap"});
    CHECK(gaps(pair + t + "volts = 120\nlegs = \"A\"\n", "load-leg-unknown") == Lines{});
    CHECK(gaps(pair + t + "volts = 240\n", "load-leg-unknown") == Lines{});
    CHECK(gaps(house + branch("c", "1", 20) + t, "load-leg-unknown") == Lines{});
}

TEST_CASE("leg-not-there: a leg that does not come into the panel, or that the breaker is not on") {
    const auto with_legs = [](const std::string& legs) {
        return gaps(house + branch("c", "1", 20, "", "legs = \"" + legs + "\""), "leg-not-there");
    };
    CHECK(with_legs("C") == Lines{"breaker:MAIN:1 notice gap"});
    CHECK(with_legs("B") == Lines{});
    const auto with_leg = [](const std::string& leg) {
        return gaps(house + branch("c", "1, 3", 20, "leg = \"" + leg + "\""), "leg-not-there");
    };
    CHECK(with_leg("C") == Lines{"circuit:c notice gap"});
    CHECK(with_leg("B") == Lines{});
    CHECK(gaps(alone("") + "[[breaker]]\npanel = \"P\"\nspaces = [1]\nlegs = \"C\"\n", "leg-not-there") == Lines{});
}

TEST_CASE("system-unknown, system-without-rules: what a panel runs on") {
    CHECK(gaps(alone(""), "system-unknown") == Lines{"panel:P notice gap"});
    CHECK(gaps(alone("system = \"120/240 1ph 3w\""), "system-unknown") == Lines{});
    const auto finding = only(alone("system = \"230 1ph 2w\""), "system-without-rules");
    CHECK(line_of(finding) == "panel:P notice gap");
    CHECK(said(finding.text).find("no rules for this system") != std::string::npos);
    CHECK(gaps(house, "system-without-rules") == Lines{});
}

TEST_CASE("system-without-rules: what rests on the code of another country is left unsaid, dangers are not") {
    const auto on = [](const std::string& system) {
        return supply(system, "bus_a = 50\nmain = \"breaker\"\nmain_a = 63") +
               branch("c", "1", 16, wire("14", "terminal_c = 60")) + load("c", "amps = 18\ncontinuous = true") +
               branch("d", "5", 16, "neutral = \"own\"") + reading("panel:MAIN/A", "volts = 246") +
               "[[outlet]]\nid = \"K\"\ncircuit = [\"c\", \"d\"]\n";
    };
    const auto elsewhere = assessment_of(on("230 1ph 2w"));
    CHECK(at_least(elsewhere, doorcard::Severity::caution).size() == 1);
    CHECK(elsewhere.findings.front().rule == "outlet-two-feeds");
    CHECK(at_least(assessment_of(on("120 1ph 2w")), doorcard::Severity::caution).size() > 3);
}

TEST_CASE("insulation-unlisted: counted as 60 degrees") {
    const std::string odd = branch("c", "1", 20, wire("12", "insulation = \"RUBBER\""));
    const auto finding = only(house + odd, "insulation-unlisted");
    CHECK(line_of(finding) == "circuit:c notice gap");
    CHECK(sources_of(finding) == "NEC 2023 Table 310.16");
    CHECK(assessment_of(house + odd).circuits.front().ampacity_a->value == 20);
    CHECK(gaps(house + branch("c", "1", 20, wire("12", "insulation = \"NM-B\"")), "insulation-unlisted") == Lines{});
    CHECK(gaps(house + branch("c", "1", 20, wire("12", "length_ft = 20")), "insulation-unlisted") == Lines{});
}

TEST_CASE("record-unread: recordings and waveforms are kept, not read yet") {
    CHECK(gaps(house + "[[recording]]\nfile = \"may.csv\"\n", "record-unread") == Lines{"survey: notice gap"});
    CHECK(gaps(house + "[[waveform]]\nfile = \"dimmer.csv\"\nof = \"panel:MAIN/A\"\n", "record-unread").size() == 1);
    CHECK(gaps(house + "[survey]\nlocal_rules = \"county.toml\"\n", "record-unread") == Lines{});
    CHECK(gaps(house, "record-unread") == Lines{});
}

TEST_CASE("load-leg-unknown: a nameplate in amperes on a circuit of unknown legs is no missing nameplate") {
    const std::string unfed = "[[circuit]]\nid = \"c\"\n";
    const std::string eight = load("c", "amps = 8");
    CHECK(found(house + unfed + eight, "nameplate-missing") == Lines{});
    CHECK(found(house + unfed + eight, "load-leg-unknown").size() == 1);
    CHECK(found(house + unfed + load("c", "title = \"Lamp\""), "nameplate-missing").size() == 1);
    CHECK(found(house + branch("c", "1", 20) + eight, "load-leg-unknown") == Lines{});
}
