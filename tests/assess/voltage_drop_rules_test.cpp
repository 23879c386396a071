// SPDX-License-Identifier: MIT
// voltage-drop, and the drop outlet by outlet that it rests on.
#include "assess/lines_shown.hpp"

using namespace doorcard;

namespace {

Lines drops(const std::string& survey) { return found(survey, "voltage-drop"); }

/// A circuit of 20 A on leg A in 12 AWG solid copper, 1.93 ohm per 1000 ft.
std::string run(double feet, const std::string& more) {
    return branch("c", "1", 20, wire("12", "insulation = \"NM-B\", length_ft = " + std::to_string(feet))) + more;
}
std::string at_end(const std::string& keys) {
    return outlet("end", "c", "kind = \"receptacle\"\nlabel = \"shed door\"\nupstream = \"home-run\"") +
           "[[load]]\nid = \"pump\"\noutlet = \"end\"\n" + keys + "\n";
}

const std::string sub_of_main =
    "[[breaker]]\npanel = \"MAIN\"\nspaces = [2, 4]\namps = 60\n"
    "[[panel]]\nid = \"SHED\"\nfed_by = \"MAIN:2+4\"\nspaces = 8\nmain = \"lugs\"\n";

std::string in_shed(double feeder_ft, double branch_ft) {
    return house + sub_of_main + "feeder = { size = \"6\", metal = \"cu\", length_ft = " + std::to_string(feeder_ft) +
           " }\n[[breaker]]\npanel = \"SHED\"\nspaces = [1]\namps = 20\n" +
           circuit("c", "\"SHED:1\"", wire("12", "length_ft = " + std::to_string(branch_ft))) + at_end("amps = 10");
}

}  // namespace

TEST_CASE("voltage-drop: over 3 % at the worst outlet, which is named") {
    const auto finding = only(house + run(100, at_end("amps = 16")), "voltage-drop");
    CHECK(line_of(finding) == "circuit:c notice advised 5.14667 %, limit 3 %");  // 2 x 16 x 0.193 of 120 V
    CHECK(said(finding.text).find("shed door") != std::string::npos);
    CHECK(sources_of(finding) == "NEC 2023 210.19(A) informational note");
}

TEST_CASE("voltage-drop: 3 % is within, and so is what hangs near") {
    CHECK(drops(house + run(100, at_end("amps = 9.326424870466321"))) == Lines{});  // 3.6 V: 3 %
    CHECK(drops(house + run(100, at_end("amps = 9.4"))).size() == 1);
    CHECK(drops(house + run(40, at_end("amps = 16"))) == Lines{});
}

TEST_CASE("voltage-drop: silent where a length, or every load, is not known") {
    const std::string no_length = branch("c", "1", 20, wire("12", "insulation = \"NM-B\""));
    CHECK(drops(house + no_length + at_end("amps = 16")) == Lines{});
    CHECK(drops(house + run(400, at_end("title = \"Pump\""))) == Lines{});
    const std::string order_unknown =
        outlet("end", "c", "kind = \"receptacle\"") + "[[load]]\nid = \"pump\"\noutlet = \"end\"\namps = 16\n";
    CHECK(drops(house + run(400, order_unknown)) == Lines{});
}

TEST_CASE("voltage-drop: without outlets the end of the run is named") {
    const auto finding = only(house + run(100, load("c", "amps = 16")), "voltage-drop");
    CHECK(said(finding.text).find("the end of its run") != std::string::npos);
}

TEST_CASE("voltage-drop: over 5 % with the feeders above, where the branch alone is within") {
    // branch 2 x 10 x 1.93 x 0.09 = 3.474 V, 2.895 %; feeder 2 x 10 x 0.491 x 0.6 = 5.892 V of 240, 2.455 %
    const auto finding = only(in_shed(600, 90), "voltage-drop");
    CHECK(line_of(finding) == "circuit:c notice advised 5.35 %, limit 5 %");
    CHECK(sources_of(finding) == "NEC 2023 215.2(A) informational note");
    CHECK(drops(in_shed(500, 90)) == Lines{});  // 2.046 % above
}

TEST_CASE("voltage-drop: the branch goes before the total, which the text adds") {
    const auto finding = only(in_shed(600, 100), "voltage-drop");
    CHECK(line_of(finding) == "circuit:c notice advised 3.21667 %, limit 3 %");
    CHECK(said(finding.text).find("5.7 % with the feeders above") != std::string::npos);
}

TEST_CASE("voltage drops stand outlet by outlet along the chain") {
    const std::string chain = outlet("first", "c", "upstream = \"home-run\"\nrun_ft = 50") +
                              "[[outlet]]\nid = \"second\"\nupstream = \"first\"\nrun_ft = 20\n"
                              "[[load]]\nid = \"near\"\noutlet = \"first\"\namps = 5\n"
                              "[[load]]\nid = \"far\"\noutlet = \"second\"\namps = 7\n";
    const Assessment assessment = assessment_of(house + run(50, chain));
    const auto& steps = assessment.circuits.front().outlet_drops;
    REQUIRE(steps.size() == 2);
    CHECK(steps[0].outlet == "first");
    CHECK(steps[0].voltage_drop_percent == doctest::Approx(100 * 2.316 / 120));  // 12 A over 50 ft
    CHECK(steps[1].outlet == "second");
    CHECK(steps[1].voltage_drop_percent == doctest::Approx(100 * 2.8564 / 120));  // and 7 A over 20 ft
    CHECK(steps[1].total_drop_percent.value() == doctest::Approx(100 * 2.8564 / 120));
}
