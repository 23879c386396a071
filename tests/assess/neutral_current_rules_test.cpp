// SPDX-License-Identifier: MIT
// neutral-overload, neutral-imbalance, neutral-current-mismatch: what a shared neutral carries.
#include "assess/lines_shown.hpp"

namespace {

Lines overload(const std::string& survey) { return found(survey, "neutral-overload"); }
Lines imbalance(const std::string& survey) { return found(survey, "neutral-imbalance"); }
Lines mismatch(const std::string& survey) { return found(survey, "neutral-current-mismatch"); }

const std::string on_n = "neutral = \"N\"\n";
const std::string twelve = wire("12", "insulation = \"NM-B\"") + "neutral_size = \"12\"\n";  // 20 A
const std::string two_legs = house + branch("a", "1", 20, on_n + twelve) + branch("b", "3", 20, on_n);
const std::string one_leg = house + branch("a", "1", 20, on_n + twelve) + branch("b", "5", 20, on_n);
const std::string unsized = house + branch("a", "1", 20, on_n) + branch("b", "5", 20, on_n);

std::string both(double a, double b, const std::string& together = "together = \"R\"\n") {
    return reading("circuit:a", together + "amps = " + std::to_string(a)) +
           reading("circuit:b", together + "amps = " + std::to_string(b));
}

std::string neutral(double amps, const std::string& together = "together = \"R\"\n") {
    return reading("neutral:N", together + "amps = " + std::to_string(amps));
}

std::string loads(double a, double b) {
    return load("a", "amps = " + std::to_string(a)) + load("b", "amps = " + std::to_string(b));
}

}  // namespace

TEST_CASE("neutral-overload: measured above its ampacity") {
    const auto finding = only(two_legs + neutral(21), "neutral-overload");
    CHECK(line_of(finding) == "neutral:N danger required 21 A, limit 20 A");
    CHECK(sources_of(finding).find("Table 310.16") != std::string::npos);
    CHECK(overload(two_legs + neutral(20)) == Lines{});
    CHECK(overload(two_legs + neutral(20.6)) == Lines{"neutral:N warning required 20.6 A, limit 20 A"});
    CHECK(overload(two_legs + reading("neutral:N", "amps_max = 22")).size() == 1);
}

TEST_CASE("neutral-overload: loads of one leg add up in it") {
    CHECK(overload(one_leg + loads(12, 12)) == Lines{"neutral:N danger required 24 A, limit 20 A"});
    CHECK(overload(one_leg + loads(10, 10)) == Lines{});
    CHECK(overload(one_leg + loads(10, 10.3)) == Lines{"neutral:N notice required 20.3 A, limit 20 A"});
}

TEST_CASE("neutral-overload: loads of two legs do not, whichever are on") {
    CHECK(overload(two_legs + loads(18, 18)) == Lines{});
    CHECK(overload(two_legs + loads(18, 0.5)) == Lines{});
}

TEST_CASE("neutral-overload: each hot is held to its device") {
    CHECK(overload(one_leg + loads(35, 0)) == Lines{});
    CHECK(overload(one_leg + loads(35, 30)) == Lines{"neutral:N danger required 40 A, limit 20 A"});
}

TEST_CASE("neutral-overload: balanced legs of a wye cancel, their third harmonics do not") {
    std::string survey =
        three_phase + branch("a", "1", 20, on_n + twelve) + branch("b", "3", 20, on_n) + branch("c", "5", 20, on_n);
    std::string plain = survey, rich = survey;
    for (const char* circuit : {"a", "b", "c"}) {
        plain += load(circuit, "amps = 16");
        rich += load(circuit, "amps = 16\nthird_harmonic = 0.5");
    }
    CHECK(overload(plain) == Lines{});
    CHECK(overload(rich) == Lines{"neutral:N danger required 21.4663 A, limit 20 A"});  // 3 x 0.5 x 16 / sqrt 1.25
}

TEST_CASE("neutral-overload: line-to-line loads do not reach it, an unknown ampacity is not judged") {
    const std::string pair = house + branch("r", "1, 3", 50, on_n + twelve) + load("r", "amps = 45\nvolts = 240");
    CHECK(overload(pair) == Lines{});
    CHECK(overload(unsized + loads(20, 20)) == Lines{});
}

TEST_CASE("neutral-overload: a reading within the meter's accuracy does not make the loads' excess milder") {
    CHECK(overload(one_leg + loads(10, 10.55) + neutral(20.58)) ==
          Lines{"neutral:N danger required 20.55 A, limit 20 A"});
}

TEST_CASE("neutral-imbalance: legs read together more than half apart, the larger at half its rating") {
    const auto finding = only(two_legs + both(12, 3), "neutral-imbalance");
    CHECK(said(finding.remedy).find("leave its hots on their legs") != std::string::npos);
    CHECK(line_of(finding) == "neutral:N notice practice 60 %, limit 50 %");
    CHECK(said(finding.text) == "Neutral N: its legs stood 60 % out of balance; it carried 9 A of the 20 A it may");
    CHECK(imbalance(two_legs + both(12, 4)) == Lines{});
    CHECK(imbalance(two_legs + both(9, 1)) == Lines{});
    CHECK(imbalance(two_legs + both(10, 2)).size() == 1);
}

TEST_CASE("neutral-imbalance: what was measured in the neutral is told, and an unknown ampacity") {
    CHECK(said(only(two_legs + both(12, 3) + neutral(9.5), "neutral-imbalance").text).find("9.5 A of the 20 A") !=
          std::string::npos);
    const std::string bare = house + branch("a", "1", 20, on_n) + branch("b", "3", 20, on_n);
    CHECK(said(only(bare + both(12, 3), "neutral-imbalance").text).find("what it may carry is not known") !=
          std::string::npos);
}

TEST_CASE("neutral-imbalance: hots of one leg add up as phasors") {
    const std::string three =
        house + branch("a", "1", 15, on_n) + branch("d", "5", 15, on_n) + branch("b", "3", 15, on_n) + both(10, 6);
    const std::string d = "together = \"R\"\namps = 10\n";
    CHECK(imbalance(three + reading("circuit:d", d)) == Lines{"neutral:N notice practice 53.8462 %, limit 50 %"});
    CHECK(imbalance(three + reading("circuit:d", d + "power_factor = 0.6")) == Lines{});  // 17.9 A, not 20 A
}

TEST_CASE("neutral-imbalance: only readings of one moment, and of every hot") {
    CHECK(imbalance(two_legs + reading("circuit:a", "together = \"R\"\namps = 12") +
                    reading("circuit:b", "together = \"S\"\namps = 3")) == Lines{});
    CHECK(imbalance(two_legs + reading("circuit:a", "together = \"R\"\namps = 12")) == Lines{});
    CHECK(imbalance(one_leg + both(12, 3)) == Lines{});    // one leg has no balance
    CHECK(imbalance(two_legs + loads(20, 1)) == Lines{});  // nameplates are not readings
    const std::string at = "at = 2026-05-14T09:30:00\n";
    CHECK(imbalance(two_legs + both(12, 3, at)).size() == 1);
}

TEST_CASE("neutral-current-mismatch: more than the hots can explain") {
    const auto finding = only(two_legs + both(10, 10) + neutral(9.5), "neutral-current-mismatch");
    CHECK(line_of(finding) == "neutral:N caution practice 9.5 A, limit 7.65367 A");  // 20 x sin(22.5 degrees)
    CHECK(mismatch(two_legs + both(10, 10) + neutral(8.6)) == Lines{});
    CHECK(mismatch(two_legs + both(10, 10) + neutral(0)) == Lines{});
}

TEST_CASE("neutral-current-mismatch: less than the hots ask for") {
    CHECK(mismatch(two_legs + both(12, 2) + neutral(8.7)) == Lines{"neutral:N caution practice 8.7 A, limit 10 A"});
    CHECK(mismatch(two_legs + both(12, 2) + neutral(8.8)) == Lines{});  // 10 % of the larger hot: 1.2 A
    CHECK(mismatch(two_legs + both(4, 2) + neutral(1)) == Lines{});     // at least 1 A
    CHECK(mismatch(two_legs + both(4, 2) + neutral(0.9)).size() == 1);
}

TEST_CASE("neutral-current-mismatch: one hot alone") {
    const std::string alone = house + branch("a", "1", 20, on_n);
    const std::string hot = reading("circuit:a", "together = \"R\"\namps = 10");
    CHECK(mismatch(alone + hot + neutral(6)) == Lines{"neutral:N caution practice 6 A, limit 10 A"});
    CHECK(mismatch(alone + hot + neutral(10.5)) == Lines{});
}

TEST_CASE("neutral-current-mismatch: not across moments, not without every hot, not above four hots") {
    CHECK(mismatch(two_legs + both(10, 10) + neutral(9.5, "together = \"S\"\n")) == Lines{});
    CHECK(mismatch(two_legs + reading("circuit:a", "together = \"R\"\namps = 10") + neutral(2)) == Lines{});
    std::string hots = house, taken;
    for (int i = 0; i < 5; ++i) {
        const std::string id = std::string("h") + char('0' + i);
        hots += branch(id, std::to_string(1 + 2 * i), 20, on_n);
        taken += reading("circuit:" + id, "together = \"R\"\namps = 1");
        if (i == 3) CHECK(mismatch(hots + taken + neutral(15)).size() == 1);
    }
    CHECK(mismatch(hots + taken + neutral(15)) == Lines{});
}

TEST_CASE("neutral-current-mismatch: thirds as read") {
    const std::string hot = "together = \"R\"\namps = 10\nthird_harmonic = 0.8";
    const std::string wye =
        three_phase + branch("a", "1", 20, on_n) + branch("b", "3", 20, on_n) + branch("c", "5", 20, on_n);
    std::string rich = wye, plain = wye;
    for (const char* circuit : {"circuit:a", "circuit:b", "circuit:c"}) {
        rich += reading(circuit, hot);
        plain += reading(circuit, "together = \"R\"\namps = 10");
    }
    CHECK(mismatch(rich + neutral(18.7)) == Lines{});
    CHECK(mismatch(plain + neutral(18.7)).size() == 1);
}
