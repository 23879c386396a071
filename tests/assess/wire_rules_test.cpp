// SPDX-License-Identifier: MIT
// wire-too-small, wire-overload: 240.4, Table 310.16, 310.12, 110.14(C), 430.22, 430.52.
#include "assess/lines_shown.hpp"

namespace {

Lines small(const std::string& survey) { return found(survey, "wire-too-small"); }
Lines hot(const std::string& survey) { return found(survey, "wire-overload"); }

const std::string nm = "insulation = \"NM-B\"";
const std::string thhn = "insulation = \"THHN\"";
const std::string thhn_60 = thhn + ", terminal_c = 60";
const std::string thhn_75 = thhn + ", terminal_c = 75";

std::string wired(double device, const std::string& size, const std::string& keys = nm,
                  const std::string& breaker_keys = "") {
    return house + branch("c", "1, 3", device, wire(size, keys), breaker_keys);
}
std::string receptacles(int count) {
    std::string all;
    for (int i = 0; i < count; ++i)
        all += outlet("r" + std::to_string(i), "c", "kind = \"receptacle\"\nreceptacles = 1");
    return all;
}
std::string motor(double amps, const std::string& keys = "") {
    return load("c", "volts = 240\nduty = \"motor\"\namps = " + std::to_string(amps) + "\n" + keys);
}

/// A service whose conductors these are; 'main' its rating.
std::string service(double main, const std::string& feeder, const std::string& more = "") {
    return "format = 1\n[[source]]\nid = \"utility\"\nsystem = \"120/240 1ph 3w\"\n[[panel]]\nid = \"MAIN\"\n"
           "fed_by = \"utility\"\nmain = \"breaker\"\nmain_a = " +
           std::to_string(main) + "\nfeeder = { " + feeder + " }\n" + more;
}
/// A panel SUB behind a breaker of MAIN.
std::string fed(double device, const std::string& feeder, const std::string& more = "") {
    return house + breaker("10, 12", device) + "[[panel]]\nid = \"SUB\"\nfed_by = \"MAIN:10+12\"\nfeeder = { " +
           feeder + " }\n" + more;
}

}  // namespace

TEST_CASE("wire-too-small: small conductors and their devices") {
    const auto finding = only(wired(30, "12"), "wire-too-small");
    CHECK(line_of(finding) == "circuit:c warning required 30 A, limit 20 A");
    CHECK(sources_of(finding).find("240.4(D)") != std::string::npos);
    CHECK(said(finding.remedy).find("20 A at most") != std::string::npos);
    CHECK(small(wired(20, "12")) == Lines{});
    CHECK(small(wired(20, "14")) == Lines{"circuit:c warning required 20 A, limit 15 A"});
    CHECK(small(wired(30, "10")) == Lines{});
    CHECK(small(wired(20, "14", thhn_75)) ==
          Lines{"circuit:c warning required 20 A, limit 15 A"});  // 20 A by its table
}

TEST_CASE("wire-too-small: an unknown size, metal or device is not judged") {
    CHECK(small(house + branch("c", "1", 30, "wire = { size = \"14\" }")) == Lines{});
    CHECK(small(house + branch("c", "1", 30, "wire = { metal = \"cu\" }")) == Lines{});
    CHECK(small(house + "[[breaker]]\npanel = \"MAIN\"\nspaces = [1]\n" + circuit("c", "\"MAIN:1\"", wire("14", nm))) ==
          Lines{});
}

TEST_CASE("wire-too-small: terminals nobody read are a warning only where the hotter ones fail too") {
    const auto finding = only(wired(50, "8", thhn), "wire-too-small");
    CHECK(line_of(finding) == "circuit:c notice required 50 A, limit 40 A");
    CHECK(said(finding.text).find("read the terminal marking") != std::string::npos);
    CHECK(sources_of(finding).find("110.14(C)") != std::string::npos);
    CHECK(small(wired(50, "8", thhn_75)) == Lines{});
    CHECK(small(wired(50, "8", thhn_60)) == Lines{"circuit:c warning required 50 A, limit 40 A"});
    CHECK(small(wired(60, "8", thhn)) == Lines{"circuit:c warning required 60 A, limit 40 A"});
    CHECK(small(wired(50, "8", nm)) == Lines{"circuit:c warning required 50 A, limit 40 A"});  // 60 in the end
}

TEST_CASE("wire-too-small: the next size up, but not where two receptacles hang on it") {
    CHECK(small(wired(60, "6")) == Lines{});  // 55 A
    CHECK(small(wired(60, "6") + receptacles(1)) == Lines{});
    CHECK(small(wired(60, "6") + receptacles(2)) == Lines{"circuit:c warning required 60 A, limit 55 A"});
    CHECK(small(wired(60, "6") + outlet("o", "c", "kind = \"receptacle\"")).size() == 1);  // a duplex is two
    CHECK(small(wired(60, "6") + outlet("o", "c", "kind = \"lighting\"")) == Lines{});
}

TEST_CASE("wire-too-small: no next size up above 800 A") {
    const auto sets = [](const std::string& size) {
        return "size = \"" + size + "\", metal = \"cu\", insulation = \"THWN\", terminal_c = 75, sets = 3";
    };
    CHECK(small(service(800, sets("250"))) == Lines{});  // 765 A
    CHECK(small(service(1000, sets("350"))) == Lines{"panel:MAIN warning required 1000 A, limit 930 A"});
}

TEST_CASE("wire-too-small: an ampacity that is a standard size is that size") {
    CHECK(small(wired(45, "8")) == Lines{"circuit:c warning required 45 A, limit 40 A"});
    CHECK(small(wired(40, "8")) == Lines{});
}

TEST_CASE("wire-too-small: heat and crowding take from the wire") {
    CHECK(small(wired(20, "12", nm + ", conductors_together = 10")) ==
          Lines{"circuit:c warning required 20 A, limit 15 A"});                 // 30 x 0.5
    CHECK(small(wired(20, "12", nm + ", conductors_together = 9")) == Lines{});  // 30 x 0.7, held to 20
    CHECK(small(wired(30, "10", nm + ", ambient_c = 50")) == Lines{});           // 40 x 0.82
    CHECK(small(wired(30, "10", nm + ", ambient_c = 66")) ==
          Lines{"circuit:c warning required 30 A, limit 25 A"});  // 40 x 0.58 is 23.2 A
}

TEST_CASE("wire-too-small: surroundings too hot for any current allow no device, not the smallest one") {
    CHECK(small(wired(10, "14", "insulation = \"TW\", ambient_c = 70")) ==
          Lines{"circuit:c warning required 10 A, limit 0 A"});
}

TEST_CASE("wire-too-small: a circuit on two breakers is judged by the larger") {
    CHECK(
        small(house + breaker("1", 15) + breaker("5", 20) + circuit("c", "[\"MAIN:1\", \"MAIN:5\"]", wire("14", nm))) ==
        Lines{"circuit:c warning required 20 A, limit 15 A"});
}

TEST_CASE("wire-too-small: motors alone are judged by their wire, not by 240.4") {
    CHECK(small(wired(30, "12") + motor(14)) == Lines{});
    const auto finding = only(wired(30, "12") + motor(17), "wire-too-small");
    CHECK(line_of(finding) == "circuit:c caution required 21.25 A, limit 20 A");  // 1.25 x 17
    CHECK(sources_of(finding) == "NEC 2023 430.22; NEC 2023 430.24");
    CHECK(small(wired(30, "12") + motor(8) + motor(9.5)) == Lines{});  // 1.25 x 9.5 + 8
    CHECK(small(wired(30, "12") + motor(8) + motor(10)) == Lines{"circuit:c caution required 20.5 A, limit 20 A"});
    CHECK(small(wired(30, "12") + motor(14) + load("c", "amps = 1")) ==
          Lines{"circuit:c warning required 30 A, limit 20 A"});  // not alone
}

TEST_CASE("wire-too-small: ahead of a motor no size is named for the wire") {
    const auto finding =
        only(wired(60, "12") + load("c", "amps = 14\nvolts = 240\nduty = \"motor\""), "wire-too-small");
    CHECK(said(finding.remedy).find("for this wire") == std::string::npos);
    CHECK(said(finding.remedy).starts_with("A device not above"));
}

TEST_CASE("wire-too-small: the device ahead of a motor, next size up") {
    CHECK(small(wired(35, "12") + motor(14)) == Lines{});  // 250 %: 35 A
    CHECK(small(wired(40, "12") + motor(14)) == Lines{"circuit:c caution required 40 A, limit 35 A"});
    const std::string fuse = "device = \"fuse\"";  // 175 % of 14 A is 24.5 A
    CHECK(small(wired(25, "12", nm, fuse) + motor(14)) == Lines{});
    CHECK(small(wired(30, "12", nm, fuse) + motor(14)) == Lines{"circuit:c caution required 30 A, limit 25 A"});
    CHECK(small(wired(60, "12") + load("c", "amps = 14\nvolts = 240\nduty = \"cooling\"")) == Lines{});
}

TEST_CASE("wire-too-small: motors whose wire is right only at hotter terminals") {
    CHECK(small(wired(50, "10", thhn) + motor(26)) == Lines{"circuit:c notice required 32.5 A, limit 30 A"});
    CHECK(small(wired(50, "10", thhn_75) + motor(26)) == Lines{});
    CHECK(small(wired(50, "10", thhn_60) + motor(26)) == Lines{"circuit:c caution required 32.5 A, limit 30 A"});
    CHECK(small(wired(50, "10", thhn) + motor(29)) == Lines{"circuit:c caution required 36.25 A, limit 30 A"});
}

TEST_CASE("wire-too-small: horsepower makes a motor, a cooling load without nameplate is a caution") {
    CHECK(small(wired(20, "14") + load("c", "hp = \"1\"\nvolts = 240")) == Lines{});
    CHECK(small(wired(30, "12") + load("c", "duty = \"cooling\"")) ==
          Lines{"circuit:c caution required 30 A, limit 20 A"});
    CHECK(small(wired(20, "12") + load("c", "duty = \"cooling\"")) == Lines{});
}

TEST_CASE("wire-too-small: a motor that states its minimum circuit ampacity asks for that, as it stands") {
    const auto unit = [](const std::string& least) {
        return load("c", "volts = 240\nduty = \"cooling\"\namps = 17\nmin_circuit_a = " + least);
    };
    CHECK(small(wired(30, "12") + unit("20")) == Lines{});
    CHECK(small(wired(30, "14") + unit("12")) ==
          Lines{"circuit:c caution required 17 A, limit 15 A"});  // never less than its own current
    CHECK(small(wired(30, "12") + unit("21")) == Lines{});        // hvac-under-min-circuit says it
}

TEST_CASE("wire-too-small: equipment that states its largest device is held to that") {
    const std::string unit = load("c", "volts = 240\namps = 18\nmin_circuit_a = 19\nmax_device_a = 30");
    CHECK(small(wired(30, "12") + unit) == Lines{});
    CHECK(small(wired(30, "12") + unit + load("c", "amps = 1")).size() == 1);
}

TEST_CASE("wire-too-small: a shared neutral in the wire of each of its circuits") {
    const std::string two = "neutral = \"N\"\n" + wire("12", nm);
    const std::string a = branch("a", "1", 20, two + "neutral_size = \"14\"\n");
    CHECK(small(house + a + branch("b", "3", 20, two)) == Lines{"neutral:N warning required 20 A, limit 15 A"});
    CHECK(small(house + branch("a", "1", 15, two + "neutral_size = \"14\"\n") + branch("b", "3", 15, two)) == Lines{});
    CHECK(small(house + branch("a", "1", 20, two) + branch("b", "3", 20, two)) == Lines{});  // size not known
}

TEST_CASE("wire-too-small: service conductors of a dwelling by 310.12") {
    const std::string two_al = "size = \"2\", metal = \"al\", insulation = \"XHHW\", terminal_c = 75";
    CHECK(small(service(100, two_al)) == Lines{});  // 90 A
    CHECK(small(service(100, two_al, "[[occupancy]]\nkind = \"retail\"\n")) ==
          Lines{"panel:MAIN warning required 100 A, limit 90 A"});
    CHECK(small(service(200, "size = \"4/0\", metal = \"al\", insulation = \"XHHW\"")) == Lines{});
    const auto finding = only(service(200, "size = \"2/0\", metal = \"al\", insulation = \"XHHW\""), "wire-too-small");
    CHECK(line_of(finding) == "panel:MAIN warning required 200 A, limit 150 A");  // 135 A
    CHECK(sources_of(finding).find("310.12") != std::string::npos);
}

TEST_CASE("wire-too-small: 310.12 begins at 100 A") {
    const std::string eight = "size = \"8\", metal = \"cu\", insulation = \"XHHW\", terminal_c = 75";  // 50 A
    CHECK(small(service(60, eight)) == Lines{"panel:MAIN warning required 60 A, limit 50 A"});
    CHECK(small(service(50, eight)) == Lines{});
}

TEST_CASE("wire-too-small: feeders by 240.4, the main feeder of a dwelling by 310.12") {
    const std::string two_al = "size = \"2\", metal = \"al\", insulation = \"XHHW\", terminal_c = 75";
    CHECK(small(fed(100, two_al)) == Lines{"panel:SUB warning required 100 A, limit 90 A"});
    CHECK(small(fed(90, two_al)) == Lines{});
    CHECK(small(fed(100, two_al, "[[dwelling]]\nid = \"flat\"\npanels = [\"SUB\"]\n")) == Lines{});
    CHECK(small(fed(100, two_al, "[[dwelling]]\nid = \"flat\"\npanels = [\"SUB\", \"MAIN\"]\n")).size() == 1);
    CHECK(small(fed(100, two_al, "[[dwelling]]\nid = \"flat\"\npanels = [\"SUB\", \"MAIN\"]\nstands_for = [8, 4]\n")) ==
          Lines{});  // each a dwelling's own
    CHECK(small(fed(100, "size = \"3\", metal = \"cu\", insulation = \"THHN\"")) ==
          Lines{"panel:SUB notice required 100 A, limit 90 A"});  // 85 A, or 100 A at 75 °C
}

TEST_CASE("wire-too-small: parallel sets multiply; behind a transformer a feeder is not judged") {
    const std::string half = "size = \"3/0\", metal = \"cu\", insulation = \"THWN\", terminal_c = 75";
    CHECK(small(service(400, half + ", sets = 2")) == Lines{});
    CHECK(small(service(400, half)).size() == 1);
    CHECK(small(fed(100, "size = \"12\", metal = \"cu\"",
                    "transformer = { kva = 10.0 }\nsystem = \"120/240 1ph 3w\"\n")) == Lines{});
}

TEST_CASE("wire-overload: measured above the ampacity") {
    const auto finding = only(wired(30, "12") + reading("circuit:c", "amps = 21"), "wire-overload");
    CHECK(line_of(finding) == "circuit:c danger required 21 A, limit 20 A");
    CHECK(said(finding.remedy).find("Take load off it now") == 0);
    CHECK(hot(wired(30, "12") + reading("circuit:c", "amps = 20")) == Lines{});
    CHECK(hot(wired(30, "12") + reading("circuit:c", "amps_max = 20.6")) ==
          Lines{"circuit:c warning required 20.6 A, limit 20 A"});
    CHECK(hot(wired(30, "12") + reading("circuit:c", "amps_crest = 50")) == Lines{});
    CHECK(hot(house + branch("c", "1", 20) + reading("circuit:c", "amps = 50")) == Lines{});  // wire not known
}

TEST_CASE("wire-overload: feeders too; nameplates never") {
    const std::string six = "size = \"6\", metal = \"cu\", insulation = \"THHN\", terminal_c = 75";  // 65 A
    CHECK(hot(fed(60, six) + reading("panel:SUB", "amps = 70")) == Lines{"panel:SUB danger required 70 A, limit 65 A"});
    CHECK(hot(fed(60, six) + reading("breaker:MAIN:10+12", "amps = 70")).size() == 1);
    CHECK(hot(fed(60, six) + "[[load]]\nid = \"k\"\npanel = \"SUB\"\namps = 90\nvolts = 240\n") == Lines{});
}
