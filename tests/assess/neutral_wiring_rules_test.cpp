// SPDX-License-Identifier: MIT
// neutral-same-leg, neutral-not-opened-together, neutral-two-panels, neutral-one-pole-guard, neutral-untraced:
// Article 100, 200.4(A), 210.4(A) and (B), 240.15(B)(1).
#include "assess/lines_shown.hpp"

namespace {

Lines same_leg(const std::string& survey) { return found(survey, "neutral-same-leg"); }
Lines apart(const std::string& survey) { return found(survey, "neutral-not-opened-together"); }
Lines guarded(const std::string& survey) { return found(survey, "neutral-one-pole-guard"); }
Lines untraced(const std::string& survey) { return found(survey, "neutral-untraced"); }
Lines two_panels(const std::string& survey) { return found(survey, "neutral-two-panels"); }

const std::string on_n = "neutral = \"N\"\n";
const std::string twelve = wire("12", "insulation = \"NM-B\"") + "neutral_size = \"12\"\n";
const std::string tied = "tied_with = [\"MAIN:3\"]\n";
const std::string on_a = branch("a", "1", 20, on_n);
const std::string on_b = branch("b", "3", 20, on_n);
const std::string shared = house + on_a + on_b;
const std::string shared_tied = house + branch("a", "1", 20, on_n, tied) + on_b;

std::string built(int year) { return "[survey]\nbuilt = " + std::to_string(year) + "\n"; }

/// Two hots of one neutral on leg A.
std::string crowded(double amps, const std::string& keys) {
    return house + branch("a", "1", amps, on_n + keys) + branch("b", "5", amps, on_n);
}

const std::string sub = "[[panel]]\nid = \"SUB\"\nfed_by = \"MAIN:10+12\"\n" + breaker("10, 12", 60);

}  // namespace

TEST_CASE("neutral-same-leg: the ratings of two hots on one leg add up to more than the neutral may carry") {
    const auto finding = only(crowded(15, twelve), "neutral-same-leg");
    CHECK(line_of(finding) == "neutral:N danger required 30 A, limit 20 A");
    CHECK(sources_of(finding).find("Article 100") != std::string::npos);
    CHECK(sources_of(finding).find("200.4(A)") != std::string::npos);
}

TEST_CASE("neutral-same-leg: a warning where the neutral may carry both") {
    CHECK(same_leg(crowded(10, twelve)) == Lines{"neutral:N warning required 20 A, limit 20 A"});
}

TEST_CASE("neutral-same-leg: an unknown ampacity or rating is taken for the worst") {
    CHECK(same_leg(crowded(10, "")) == Lines{"neutral:N danger required 20 A"});
    CHECK(same_leg(house + "[[breaker]]\npanel = \"MAIN\"\nspaces = [1]\n" + circuit("a", "\"MAIN:1\"", on_n + twelve) +
                   branch("b", "5", 10, on_n)) == Lines{"neutral:N danger required, limit 20 A"});
}

TEST_CASE("neutral-same-leg: not on two legs, not with own neutrals, not two circuits of one breaker") {
    CHECK(same_leg(shared) == Lines{});
    CHECK(same_leg(house + branch("a", "1", 20, "neutral = \"own\"") + branch("b", "5", 20, "neutral = \"own\"")) ==
          Lines{});
    CHECK(same_leg(house + on_a + circuit("b", "\"MAIN:1\"", on_n)) == Lines{});
    CHECK(same_leg(house + branch("a", "1", 20) + branch("b", "5", 20)) == Lines{});  // not traced: no claim
}

TEST_CASE("neutral-same-leg: the worst leg of a neutral is told") {
    const std::string three = crowded(10, twelve) + branch("d", "9", 15, on_n) + branch("e", "3", 30, on_n);
    CHECK(same_leg(three) == Lines{"neutral:N danger required 35 A, limit 20 A"});
}

TEST_CASE("neutral-not-opened-together: two handles that do not open as one") {
    const auto finding = only(shared, "neutral-not-opened-together");
    CHECK(line_of(finding) == "neutral:N warning required");
    CHECK(finding.applies == doorcard::Applies::any);
    CHECK(sources_of(finding).find("210.4(B)") != std::string::npos);
    CHECK(sources_of(finding).find("240.15(B)(1)") != std::string::npos);
    CHECK(said(finding.remedy).find("of the same rating") != std::string::npos);
}

TEST_CASE("neutral-not-opened-together: tied, or on one breaker, or on neutrals of their own") {
    CHECK(apart(shared_tied) == Lines{});
    CHECK(apart(house + branch("a", "1, 3", 20, on_n + "leg = \"A\"") +
                circuit("b", "\"MAIN:1+3\"", on_n + "leg = \"B\"")) == Lines{});
    CHECK(apart(house + branch("a", "1", 20, "neutral = \"own\"") + branch("b", "3", 20, "neutral = \"own\"")) ==
          Lines{});
}

TEST_CASE("neutral-not-opened-together: ties count both ways and chain") {
    const std::string b_to_a = branch("b", "3", 20, on_n, "tied_with = [\"MAIN:1\"]");
    CHECK(apart(house + on_a + b_to_a) == Lines{});
    const std::string c = branch("c", "5", 20, on_n, "tied_with = [\"MAIN:3\"]");
    CHECK(apart(three_phase + on_a + b_to_a + c) == Lines{});
    CHECK(apart(three_phase + on_a + b_to_a + branch("c", "5", 20, on_n)).size() == 1);
}

TEST_CASE("neutral-not-opened-together: work known older than 2008 is a caution") {
    const auto finding = only(shared + built(2007), "neutral-not-opened-together");
    CHECK(line_of(finding) == "neutral:N caution required");
    CHECK(finding.applies == doorcard::Applies::existing);
    CHECK(said(finding.text).find("may have been lawful when installed; the hazard remains") != std::string::npos);
    CHECK(apart(shared + built(2008)) == Lines{"neutral:N warning required"});
}

TEST_CASE("neutral-not-opened-together: the year of the circuit goes before that of the house") {
    const std::string dated = house + branch("a", "1", 20, on_n + "installed = 2019") + on_b;
    CHECK(apart(dated + built(1978)) == Lines{"neutral:N warning required"});
    CHECK(apart(house + branch("a", "1", 20, on_n + "installed = 1990") + on_b) ==
          Lines{"neutral:N warning required"});  // the other's year is not known
    CHECK(apart(house + branch("a", "1", 20, on_n + "installed = 1990") +
                branch("b", "3", 20, on_n + "installed = 1990") + built(2020)) == Lines{"neutral:N caution required"});
}

TEST_CASE("neutral-not-opened-together: with a line-to-line load a tie is not enough") {
    const std::string across = circuit("r", "[\"MAIN:1\", \"MAIN:3\"]", on_n) + load("r", "amps = 8\nvolts = 240");
    const auto finding = only(shared_tied + across, "neutral-not-opened-together");
    CHECK(line_of(finding) == "neutral:N warning required");
    CHECK(said(finding.remedy).find("common-trip") != std::string::npos);
    const std::string one_breaker = house + branch("r", "1, 3", 30, on_n) + load("r", "amps = 8\nvolts = 240");
    CHECK(apart(one_breaker) == Lines{});
}

TEST_CASE("neutral-not-opened-together: no tie is asked for where it would not do") {
    const auto remedy = [](const std::string& survey) {
        return said(only(survey, "neutral-not-opened-together").remedy);
    };
    CHECK(remedy(shared).starts_with("Fit an identified handle tie"));
    CHECK(remedy(shared).find("the lowest where they differ) and with the same guards") != std::string::npos);
    CHECK(remedy(crowded(15, twelve)).starts_with("Put them on different legs first"));
    const std::string across = circuit("r", "[\"MAIN:1\", \"MAIN:3\"]", on_n) + load("r", "amps = 8\nvolts = 240");
    CHECK(remedy(shared + across).starts_with("Put them on one common-trip"));  // untied too
    CHECK(remedy(shared + across).find("same guards. Lock out first") != std::string::npos);
    const std::string parted = house + on_a + sub + breaker("1", 20).replace(breaker("1", 20).find("MAIN"), 4, "SUB") +
                               circuit("s", "\"SUB:1\"", on_n);
    CHECK(remedy(parted).starts_with("Bring all conductors"));
}

TEST_CASE("neutral-not-opened-together: a plain 240 V circuit on tied single poles is fine") {
    const std::string heater = house + breaker("1", 20, tied) + breaker("3", 20) +
                               circuit("h", "[\"MAIN:1\", \"MAIN:3\"]") + load("h", "amps = 8\nvolts = 240");
    CHECK(apart(heater) == Lines{});
    CHECK(found(heater, "outlet-two-feeds") == Lines{});
}

TEST_CASE("neutral-two-panels: one neutral for circuits of two panels") {
    const std::string far = "[[breaker]]\npanel = \"SUB\"\nspaces = [1]\namps = 20\n" + circuit("b", "\"SUB:1\"", on_n);
    const auto finding = only(house + on_a + sub + far, "neutral-two-panels");
    CHECK(line_of(finding) == "neutral:N danger required");
    CHECK(sources_of(finding) == "NEC 2023 210.4(A)");
    CHECK(two_panels(shared + sub) == Lines{});
    const std::string own =
        "[[breaker]]\npanel = \"SUB\"\nspaces = [1]\n" + circuit("b", "\"SUB:1\"", "neutral = \"own\"");
    CHECK(two_panels(house + branch("a", "1", 20, "neutral = \"own\"") + sub + own) == Lines{});
}

TEST_CASE("neutral-one-pole-guard: a one-pole arc or ground guard on a shared neutral") {
    const auto with = [](const std::string& guards) {
        return house + branch("a", "1", 20, on_n, tied + "guards = " + guards) + on_b;
    };
    const auto finding = only(with("[\"arc\"]"), "neutral-one-pole-guard");
    CHECK(line_of(finding) == "neutral:N warning required");
    CHECK(said(finding.remedy).find("never a plain breaker in its place") != std::string::npos);
    CHECK(guarded(with("[\"ground\"]")).size() == 1);
    CHECK(guarded(with("[]")) == Lines{});
    CHECK(guarded(shared_tied) == Lines{});  // nobody looked
}

TEST_CASE("neutral-one-pole-guard: not a two-pole guard, not on a neutral of its own") {
    CHECK(guarded(house + branch("a", "1, 3", 20, on_n + "leg = \"A\"", "guards = [\"arc\", \"ground\"]") +
                  circuit("b", "\"MAIN:1+3\"", on_n + "leg = \"B\"")) == Lines{});
    CHECK(guarded(house + branch("a", "1", 20, "neutral = \"own\"", "guards = [\"arc\"]") +
                  branch("b", "3", 20, "neutral = \"own\"")) == Lines{});
    CHECK(guarded(house + branch("a", "1", 20, on_n, "guards = [\"arc\"]")) == Lines{});  // alone on N
    CHECK(guarded(three_phase + branch("a", "1, 3", 20, on_n, "guards = [\"ground\"]") + branch("b", "5", 20, on_n)) ==
          Lines{});  // two poles of the three
}

TEST_CASE("neutral-untraced: two hots and one neutral seen in one cable") {
    const auto finding = only(house + branch("a", "1", 20, "three_wire = true"), "neutral-untraced");
    CHECK(line_of(finding) == "circuit:a notice gap");
    CHECK(said(finding.remedy).find("treat it as shared") != std::string::npos);
    CHECK(untraced(house + branch("a", "1", 20)) == Lines{});
    CHECK(untraced(house + branch("a", "1", 20, "three_wire = true\nneutral = \"own\"")) == Lines{});
}

TEST_CASE("neutral-untraced: neighbours on two legs without a tie may share one") {
    CHECK(untraced(house + branch("a", "1", 20) + branch("b", "3", 20)) ==
          Lines{"circuit:a notice gap", "circuit:b notice gap"});
    CHECK(untraced(house + branch("a", "1", 20, "", tied) + branch("b", "3", 20)) == Lines{});
    CHECK(untraced(house + branch("a", "1", 20) + branch("b", "3", 20, "neutral = \"own\"")) == Lines{});
    CHECK(untraced(house + branch("a", "1", 20) + breaker("3", 20, "state = \"spare\"")) == Lines{});
    CHECK(untraced(house + branch("a", "1", 20) + breaker("3", 20)) == Lines{"circuit:a notice gap"});
}

TEST_CASE("neutral-untraced: not across the panel, not further off, not beside a two-pole breaker") {
    CHECK(untraced(house + branch("a", "1", 20) + branch("b", "4", 20)) == Lines{});
    CHECK(untraced(house + branch("a", "1", 20) + branch("b", "7", 20)) == Lines{});
    CHECK(untraced(house + branch("a", "1", 20) + branch("b", "3, 5", 20)) == Lines{});
}
