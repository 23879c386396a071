// SPDX-License-Identifier: MIT
// ground-wire-too-small (250.122), gec-too-small (250.66).
#include "assess/lines_shown.hpp"

namespace {

Lines grounds(const std::string& survey) { return found(survey, "ground-wire-too-small"); }
Lines electrodes(const std::string& survey) { return found(survey, "gec-too-small"); }

std::string ground(const std::string& size, const std::string& more = "kind = \"wire\"") {
    return "ground = { size = \"" + size + "\", " + more + " }\n";
}
std::string on(double rating, const std::string& keys, const std::string& more = "") {
    return house + branch("c", "1, 3", rating, keys) + more;
}
const std::string nm = "insulation = \"NM-B\"";

std::string service(const std::string& feeder, const std::string& grounding) {
    return supply("120/240 1ph 3w", "main = \"breaker\"\nmain_a = 200\nservice = true\nfeeder = { " + feeder + " }") +
           "[grounding]\n" + grounding + "\n";
}
const std::string aluminum = "size = \"4/0\", metal = \"al\"";  // 4 AWG copper
std::string gec(const std::string& size) { return "gec = { size = \"" + size + "\", metal = \"cu\" }\n"; }

}  // namespace

TEST_CASE("ground-wire-too-small: by the device ahead, between two rows the larger") {
    const auto finding = only(on(30, wire("10", nm) + ground("12")), "ground-wire-too-small");
    CHECK(line_of(finding) == "circuit:c warning required");
    CHECK(said(finding.text).find("10 is asked for") != std::string::npos);
    CHECK(sources_of(finding) == "NEC 2023 Table 250.122; NEC 2023 250.122(A)");
    CHECK(grounds(on(30, wire("10", nm) + ground("10"))) == Lines{});
    CHECK(grounds(on(60, wire("6", nm) + ground("10"))) == Lines{});
    CHECK(grounds(on(70, wire("4", nm) + ground("10"))).size() == 1);
    CHECK(grounds(on(20, wire("12", nm) + ground("14"))).size() == 1);
    CHECK(grounds(on(15, wire("14", nm) + ground("14"))) == Lines{});
}

TEST_CASE("ground-wire-too-small: aluminum is asked for larger; a metal nobody saw is taken for copper") {
    CHECK(grounds(on(60, wire("6", nm) + ground("10", "metal = \"al\""))).size() == 1);
    CHECK(grounds(on(60, wire("6", nm) + ground("8", "metal = \"al\""))) == Lines{});
    CHECK(grounds(on(60, wire("6", nm) + ground("10", "kind = \"wire\""))) == Lines{});
}

TEST_CASE("ground-wire-too-small: never larger than the circuit's own conductors") {
    const std::string cooling = load("c", "volts = 240\nduty = \"cooling\"\namps = 14\nmax_device_a = 35");
    CHECK(grounds(on(35, wire("12", nm) + ground("12"), cooling)) == Lines{});
    CHECK(grounds(on(35, wire("12", nm) + ground("14"), cooling)).size() == 1);
    CHECK(grounds(on(35, ground("12"), cooling)) == Lines{});  // its wire is not known, and may be 12
    CHECK(grounds(on(35, ground("12"))).size() == 1);
}

TEST_CASE("ground-wire-too-small: only wire has a size that counts; silent where size or device is not known") {
    CHECK(grounds(on(30, ground("14", "kind = \"armor\""))) == Lines{});
    CHECK(grounds(on(30, ground("14", "kind = \"raceway\""))) == Lines{});
    CHECK(grounds(on(30, "ground = { kind = \"none\" }\n")) == Lines{});
    CHECK(grounds(on(30, "ground = { kind = \"wire\" }\n")) == Lines{});
    CHECK(grounds(house + "[[breaker]]\npanel = \"MAIN\"\nspaces = [1]\n" + circuit("c", "\"MAIN:1\"", ground("14"))) ==
          Lines{});
}

TEST_CASE("ground-wire-too-small: grown with hot conductors that are larger than asked for, where that can be known") {
    const std::string single = "insulation = \"THWN-2\", terminal_c = 75, method = \"raceway\"";
    // 40 A asks for 8 AWG (50 A at 75 degrees); 4 AWG is 41740 / 16510 as large: 10380 x 2.528 = 26242 mils, 6 AWG
    const auto finding = only(on(40, wire("4", single) + ground("8")), "ground-wire-too-small");
    CHECK(said(finding.text).find("6 is asked for") != std::string::npos);
    CHECK(sources_of(finding) == "NEC 2023 Table 250.122; NEC 2023 250.122(B)");
    CHECK(grounds(on(40, wire("4", single) + ground("6"))) == Lines{});
    CHECK(grounds(on(40, wire("8", single) + ground("10"))) == Lines{});
    CHECK(grounds(on(40, wire("4", nm) + ground("10"))) == Lines{});  // a cable, terminals not read
    CHECK(grounds(on(40, wire("4", "insulation = \"THWN-2\", method = \"raceway\"") + ground("10"))) == Lines{});
    CHECK(grounds(on(40, wire("4", single + ", ambient_c = 70") + ground("8"))) == Lines{});  // the heat asks for it
}

TEST_CASE("ground-wire-too-small: cables from before the table grew are a caution") {
    const auto old = [](const std::string& year) {
        return on(20, wire("12", nm) + ground("16") + "installed = " + year + "\n");
    };
    const auto finding = only(old("1962"), "ground-wire-too-small");
    CHECK(line_of(finding) == "circuit:c caution required");
    CHECK(finding.applies == doorcard::Applies::existing);
    CHECK(said(finding.text).find("the hazard remains") != std::string::npos);
    CHECK(grounds(old("1969")) == Lines{"circuit:c warning required"});
}

TEST_CASE("ground-wire-too-small: feeders from a breaker, not the service") {
    const auto sub = [](const std::string& feed, const std::string& size) {
        return house + breaker("2, 4", 100) + "[[panel]]\nid = \"SUB\"\nfed_by = \"" + feed +
               "\"\nspaces = 8\nfeeder = { size = \"3\", metal = \"cu\", ground_size = \"" + size + "\" }\n";
    };
    CHECK(grounds(sub("MAIN:2+4", "10")) == Lines{"panel:SUB warning required"});
    CHECK(grounds(sub("MAIN:2+4", "8")) == Lines{});
    CHECK(grounds(sub("utility", "10")) == Lines{});
}

TEST_CASE("gec-too-small: by the service conductors, at the service panel") {
    const auto finding = only(service(aluminum, gec("6") + "electrodes = [\"water pipe\", \"rod\"]"), "gec-too-small");
    CHECK(line_of(finding) == "panel:MAIN warning required");
    CHECK(sources_of(finding) == "NEC 2023 Table 250.66; NEC 2023 250.66(A), (B), (C)");
    CHECK(electrodes(service(aluminum, gec("4") + "electrodes = [\"water pipe\"]")) == Lines{});
    CHECK(electrodes(service("size = \"2/0\", metal = \"cu\", sets = 2", gec("4") + "electrodes = [\"water pipe\"]"))
              .size() == 1);  // 266,200 circular mils of copper: 2 AWG up to 350 kcmil
}

TEST_CASE("gec-too-small: less will do for a rod, a concrete-encased electrode or a ring alone") {
    CHECK(electrodes(service(aluminum, gec("6") + "electrodes = [\"rod\"]")) == Lines{});
    CHECK(electrodes(service(aluminum, gec("8") + "electrodes = [\"rod\"]")).size() == 1);
    const std::string large = "size = \"500\", metal = \"cu\"";  // 1/0 copper by the table
    CHECK(electrodes(service(large, gec("4") + "electrodes = [\"ufer\"]")) == Lines{});
    CHECK(electrodes(service(large, gec("4") + "electrodes = [\"concrete-encased\", \"rod\"]")) == Lines{});
    CHECK(electrodes(service(large, gec("4") + "electrodes = [\"ring\"]")).size() == 1);
    CHECK(electrodes(service(large, gec("2") + "electrodes = [\"ring\"]")) == Lines{});
    CHECK(electrodes(service(large, gec("4") + "electrodes = [\"ufer\", \"building steel\"]")).size() == 1);
}

TEST_CASE("gec-too-small: a notice where nobody saw the electrodes and a rod would do with it") {
    CHECK(electrodes(service(aluminum, gec("6"))) == Lines{"panel:MAIN notice required"});
    CHECK(electrodes(service(aluminum, gec("8"))) == Lines{"panel:MAIN warning required"});
}

TEST_CASE("gec-too-small: silent where its size or the service conductors are not known") {
    CHECK(electrodes(service(aluminum, "electrodes = [\"water pipe\"]")) == Lines{});
    CHECK(electrodes(service("metal = \"al\"", gec("8"))) == Lines{});
    CHECK(electrodes(house + "[grounding]\n" + gec("8")) == Lines{});
}
