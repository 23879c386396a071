// SPDX-License-Identifier: MIT
// voltage-out-of-range (ANSI C84.1), partial-voltage and legs-unbalanced (common practice).
#include "assess/lines_shown.hpp"

namespace {

Lines range(const std::string& survey) { return found(survey, "voltage-out-of-range"); }
Lines partial(const std::string& survey) { return found(survey, "partial-voltage"); }
Lines balance(const std::string& survey) { return found(survey, "legs-unbalanced"); }

std::string volts(const std::string& of, double volts, const std::string& keys = "") {
    return reading(of, "volts = " + std::to_string(volts) + "\n" + keys);
}

std::string service(double reads) { return house + volts("panel:MAIN/A", reads); }
const std::string one_outlet = house + branch("c", "1", 20) + outlet("K", "c");
std::string at_outlet(double reads, const std::string& keys = "") {
    return one_outlet + volts("outlet:K", reads, keys);
}

std::string amps(double a, double b, const std::string& of = "panel:MAIN") {
    return reading(of + "/A", "together = \"R\"\namps = " + std::to_string(a)) +
           reading(of + "/B", "together = \"R\"\namps = " + std::to_string(b));
}

}  // namespace

TEST_CASE("voltage-out-of-range: the service limits at the service panel") {
    const auto finding = only(service(127.5), "voltage-out-of-range");
    CHECK(line_of(finding) == "panel:MAIN caution advised 127.5 V, limit 127 V");
    CHECK(sources_of(finding) == "ANSI C84.1-2020 Table 1");
    CHECK(range(service(127)) == Lines{"panel:MAIN notice advised 127 V, limit 126 V"});
    CHECK(range(service(126)) == Lines{});
    CHECK(range(service(114)) == Lines{});
    CHECK(range(service(113.9)) == Lines{"panel:MAIN notice advised 113.9 V, limit 114 V"});
    CHECK(range(service(110)) == Lines{"panel:MAIN notice advised 110 V, limit 114 V"});
    CHECK(range(service(109.9)) == Lines{"panel:MAIN caution advised 109.9 V, limit 110 V"});
}

TEST_CASE("voltage-out-of-range: the utilization limits at outlets") {
    CHECK(range(at_outlet(108)) == Lines{});
    CHECK(range(at_outlet(107)) == Lines{"outlet:K notice advised 107 V, limit 108 V"});
    CHECK(range(at_outlet(104)) == Lines{"outlet:K notice advised 104 V, limit 108 V"});
    CHECK(range(at_outlet(103)) == Lines{"outlet:K caution advised 103 V, limit 104 V"});
    CHECK(range(at_outlet(126.5)) == Lines{"outlet:K notice advised 126.5 V, limit 126 V"});
}

TEST_CASE("voltage-out-of-range: a panel further in is judged as outlets are, a source as the service") {
    const std::string sub = house + breaker("10, 12", 60) + "[[panel]]\nid = \"SUB\"\nfed_by = \"MAIN:10+12\"\n";
    CHECK(range(sub + volts("panel:SUB/A", 110)) == Lines{});
    CHECK(range(sub + volts("panel:SUB/A", 107)) == Lines{"panel:SUB notice advised 107 V, limit 108 V"});
    CHECK(range(house + volts("source:utility/A", 110)) == Lines{"source:utility notice advised 110 V, limit 114 V"});
}

TEST_CASE("voltage-out-of-range: other nominal voltages in proportion") {
    CHECK(range(house + volts("panel:MAIN/AB", 252)) == Lines{});
    CHECK(range(house + volts("panel:MAIN/AB", 253)) == Lines{"panel:MAIN notice advised 253 V, limit 252 V"});
    const std::string pair = house + branch("r", "1, 3", 50) + outlet("R", "r");
    CHECK(range(pair + volts("outlet:R", 236)) == Lines{});
    CHECK(range(pair + volts("outlet:R", 206)) == Lines{"outlet:R caution advised 206 V, limit 208 V"});
    CHECK(range(pair + volts("outlet:R", 118)) == Lines{});  // hot to neutral there
}

TEST_CASE("voltage-out-of-range: one finding for a thing, its worst reading") {
    CHECK(range(one_outlet + volts("outlet:K", 107) + volts("outlet:K", 103) + volts("outlet:K", 120)) ==
          Lines{"outlet:K caution advised 103 V, limit 104 V"});
}

TEST_CASE("voltage-out-of-range: a dead conductor is not badly supplied, a neutral has no range") {
    CHECK(range(at_outlet(0.4)) == Lines{});
    CHECK(range(house + volts("panel:MAIN/N", 1.2)) == Lines{});
    CHECK(range(house + volts("panel:MAIN/N", 30)) == Lines{});
}

TEST_CASE("partial-voltage: between dead and live") {
    const auto finding = only(at_outlet(60), "partial-voltage");
    CHECK(line_of(finding) == "outlet:K caution practice 60 V, limit 102 V");
    CHECK(said(finding.text).find("may be induced; treat as live") != std::string::npos);
    CHECK(partial(at_outlet(101.9)).size() == 1);
    CHECK(partial(at_outlet(102)) == Lines{});  // 85 % exactly
    CHECK(partial(at_outlet(20)).size() == 1);
    CHECK(partial(at_outlet(19.9)) == Lines{});
}

TEST_CASE("partial-voltage: under a load it is no ghost") {
    CHECK(partial(at_outlet(60, "low_impedance = true")) == Lines{"outlet:K danger practice 60 V, limit 102 V"});
    CHECK(partial(at_outlet(60, "test_load_a = 5")) == Lines{"outlet:K danger practice 60 V, limit 102 V"});
    CHECK(partial(at_outlet(60, "low_impedance = false")) == Lines{"outlet:K caution practice 60 V, limit 102 V"});
}

TEST_CASE("partial-voltage: one finding for a reading: not out of range as well") {
    CHECK(range(at_outlet(60)) == Lines{});
    CHECK(range(at_outlet(102)).size() == 1);
}

TEST_CASE("partial-voltage: dim or buzzing in a switching round") {
    const std::string round = "[[round]]\noff = [\"MAIN:1\"]\nodd = [\"K\"]\n";
    CHECK(partial(one_outlet + round) == Lines{"outlet:K caution practice"});
    CHECK(partial(at_outlet(60, "low_impedance = true") + round) ==
          Lines{"outlet:K danger practice 60 V, limit 102 V"});
    CHECK(partial(one_outlet + "[[round]]\noff = [\"MAIN:1\"]\nwent_out = [\"K\"]\n") == Lines{});
}

TEST_CASE("legs-unbalanced: legs read together, the highest at half the main") {
    const auto finding = only(house + amps(120, 60), "legs-unbalanced");
    CHECK(said(finding.remedy).find("never one hot of a shared neutral") != std::string::npos);
    CHECK(line_of(finding) == "panel:MAIN notice practice 33.3333 %, limit 20 %");
    CHECK(balance(house + amps(120, 80)) == Lines{});   // 20 % exactly
    CHECK(balance(house + amps(100, 60)).size() == 1);  // half of 200 A exactly
    CHECK(balance(house + amps(99, 50)) == Lines{});
}

TEST_CASE("legs-unbalanced: only readings of one moment and of every leg; never nameplates") {
    CHECK(balance(house + reading("panel:MAIN/A", "amps = 120") + reading("panel:MAIN/B", "amps = 60")) == Lines{});
    CHECK(balance(house + reading("panel:MAIN/A", "together = \"R\"\namps = 120")) == Lines{});
    CHECK(balance(house + branch("c", "1", 150) + load("c", "amps = 150")) == Lines{});
}

TEST_CASE("legs-unbalanced: a panel with lugs by the breaker that feeds it, read there too") {
    const std::string sub = house + breaker("10, 12", 60) + "[[panel]]\nid = \"SUB\"\nfed_by = \"MAIN:10+12\"\n";
    CHECK(balance(sub + amps(40, 20, "panel:SUB")) == Lines{"panel:SUB notice practice 33.3333 %, limit 20 %"});
    CHECK(balance(sub + amps(40, 20, "breaker:MAIN:10+12")) ==
          Lines{"panel:SUB notice practice 33.3333 %, limit 20 %"});
    CHECK(balance(sub + amps(29, 10, "panel:SUB")) == Lines{});
}

TEST_CASE("legs-unbalanced: beside a high leg the two others") {
    const auto three = [](double a, double b, double c) {
        return high_leg + amps(a, b) + reading("panel:MAIN/C", "together = \"R\"\namps = " + std::to_string(c));
    };
    CHECK(balance(three(120, 0, 110)) == Lines{});
    CHECK(balance(three(120, 0, 60)) == Lines{"panel:MAIN notice practice 33.3333 %, limit 20 %"});
}
