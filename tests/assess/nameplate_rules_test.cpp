// SPDX-License-Identifier: MIT
// hvac-over-max-device, hvac-under-min-circuit: what a nameplate states of its circuit.
#include "assess/lines_shown.hpp"

namespace {

Lines over(const std::string& survey) { return found(survey, "hvac-over-max-device"); }
Lines under(const std::string& survey) { return found(survey, "hvac-under-min-circuit"); }

std::string unit(const std::string& keys) { return load("c", "volts = 240\nduty = \"cooling\"\n" + keys); }
std::string on(double rating, const std::string& wire_line, const std::string& more) {
    return house + branch("c", "1, 3", rating, wire_line) + more;
}
const std::string nm = "insulation = \"NM-B\"";
const std::string thhn = "insulation = \"THHN\"";

}  // namespace

TEST_CASE("hvac-over-max-device: a device above the nameplate's largest") {
    const auto finding = only(on(40, "", unit("amps = 18\nmax_device_a = 35")), "hvac-over-max-device");
    CHECK(line_of(finding) == "circuit:c warning required 40 A, limit 35 A");
    CHECK(sources_of(finding) == "NEC 2023 110.3(B); NEC 2023 440.22(A)");
    CHECK(said(finding.remedy).find("A at most") == std::string::npos);  // no size: the wire is not known
    CHECK(over(on(35, "", unit("amps = 18\nmax_device_a = 35"))) == Lines{});
    CHECK(over(on(40, "", unit("amps = 18"))) == Lines{});
}

TEST_CASE("hvac-over-max-device: other equipment that states it too, and the strictest of several") {
    const auto finding = only(on(40, "", load("c", "volts = 240\namps = 18\nduty = \"range\"\nmax_device_a = 30")),
                              "hvac-over-max-device");
    CHECK(sources_of(finding) == "NEC 2023 110.3(B); NEC 2023 422.11(A)");
    CHECK(over(on(40, "", unit("amps = 8\nmax_device_a = 50") + unit("amps = 8\nmax_device_a = 20"))) ==
          Lines{"circuit:c warning required 40 A, limit 20 A"});
}

TEST_CASE("hvac-over-max-device: silent without the device") {
    CHECK(over(house + "[[breaker]]\npanel = \"MAIN\"\nspaces = [1, 3]\n" + circuit("c", "\"MAIN:1+3\"") +
               unit("max_device_a = 20")) == Lines{});
}

TEST_CASE("hvac-under-min-circuit: wire below the nameplate's least") {
    const auto finding =
        only(on(35, wire("12", nm), unit("amps = 18\nmin_circuit_a = 22.4")), "hvac-under-min-circuit");
    CHECK(line_of(finding) == "circuit:c warning required 20 A, limit 22.4 A");
    CHECK(sources_of(finding) == "NEC 2023 110.3(B); NEC 2023 440.4(B)");
    CHECK(found(on(35, wire("12", nm), unit("amps = 18\nmin_circuit_a = 22.4")), "wire-too-small") == Lines{});
    CHECK(under(on(35, wire("12", nm), unit("amps = 16\nmin_circuit_a = 20"))) == Lines{});
    CHECK(under(on(35, wire("10", nm), unit("amps = 18\nmin_circuit_a = 22.4"))) == Lines{});
}

TEST_CASE("hvac-under-min-circuit: terminals nobody read are a notice where the hotter ones would do") {
    const std::string asks = unit("amps = 18\nmin_circuit_a = 22.4");
    CHECK(under(on(35, wire("12", thhn), asks)) == Lines{"circuit:c notice required 20 A, limit 22.4 A"});
    CHECK(under(on(35, wire("12", thhn + ", terminal_c = 75"), asks)) == Lines{});
    CHECK(under(on(35, wire("12", thhn + ", terminal_c = 60"), asks)).front().find("warning") != std::string::npos);
}

TEST_CASE("hvac-under-min-circuit: several on one circuit add up; silent where the wire is not known") {
    CHECK(under(on(35, wire("12", nm), unit("min_circuit_a = 11") + unit("min_circuit_a = 10"))) ==
          Lines{"circuit:c warning required 20 A, limit 21 A"});
    CHECK(under(on(35, wire("12", nm), unit("min_circuit_a = 10.5\ncount = 2"))).size() == 1);
    CHECK(under(on(35, "", unit("min_circuit_a = 90"))) == Lines{});
}

TEST_CASE("wire-too-small: equipment that states its largest device still needs wire for its load") {
    const auto stated = [](const std::string& keys) { return load("c", "volts = 240\nmax_device_a = 40\n" + keys); };
    CHECK(found(on(40, wire("14", nm), stated("amps = 30")), "wire-too-small") ==
          Lines{"circuit:c caution required 30 A, limit 15 A"});
    CHECK(found(on(40, wire("10", nm), stated("amps = 30")), "wire-too-small") == Lines{});
    CHECK(found(on(40, wire("10", nm), stated("amps = 26\ncontinuous = true")), "wire-too-small") ==
          Lines{"circuit:c caution required 32.5 A, limit 30 A"});
    CHECK(found(on(40, wire("10", thhn), stated("amps = 34")), "wire-too-small") ==
          Lines{"circuit:c notice required 34 A, limit 30 A"});  // 75 °C terminals: 35 A
}
