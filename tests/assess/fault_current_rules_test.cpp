// SPDX-License-Identifier: MIT
// interrupting-too-low: 110.9.
#include "assess/lines_shown.hpp"

namespace {

Lines low(const std::string& survey) { return found(survey, "interrupting-too-low"); }

std::string at_panel(const std::string& keys) { return supply("120/240 1ph 3w", keys); }
std::string interrupts(const std::string& ka, const std::string& more = "") {
    return breaker("1", 20, "interrupting_ka = " + ka + "\n" + more);
}
std::string with_source(const std::string& source_keys, const std::string& panel_keys = "") {
    return "format = 1\n[[source]]\nid = \"utility\"\nsystem = \"120/240 1ph 3w\"\n" + source_keys +
           "\n[[panel]]\nid = \"MAIN\"\nfed_by = \"utility\"\nspaces = 40\n" + panel_keys + "\n";
}

}  // namespace

TEST_CASE("interrupting-too-low: a device below the fault current at its panel") {
    const auto finding = only(at_panel("fault_ka = 14") + interrupts("10"), "interrupting-too-low");
    CHECK(said(finding.remedy).find("same rating and guards") != std::string::npos);
    CHECK(line_of(finding) == "breaker:MAIN:1 warning required 10 kA, limit 14 kA");
    CHECK(sources_of(finding) == "NEC 2023 110.9; NEC 2023 240.86");
    CHECK(low(at_panel("fault_ka = 10") + interrupts("10")) == Lines{});
    CHECK(low(at_panel("fault_ka = 14") + interrupts("10", "series_rated = true")) == Lines{});
}

TEST_CASE("interrupting-too-low: silent where either figure is missing") {
    CHECK(low(at_panel("fault_ka = 14") + breaker("1", 20)) == Lines{});
    CHECK(low(at_panel("") + interrupts("10")) == Lines{});
}

TEST_CASE("interrupting-too-low: the source's figure stands for the panel that it feeds, the panel's own goes before") {
    CHECK(low(with_source("fault_ka = 22") + interrupts("10")) ==
          Lines{"breaker:MAIN:1 warning required 10 kA, limit 22 kA"});
    CHECK(low(with_source("fault_ka = 22", "fault_ka = 8") + interrupts("10")) == Lines{});
    CHECK(low(with_source("fault_ka = 22", "transformer = { kva = 45 }") + interrupts("10")) == Lines{});
}

TEST_CASE("interrupting-too-low: further down only the panel's own figure will do") {
    const auto sub = [](const std::string& keys) {
        return with_source("fault_ka = 22") + breaker("2, 4", 60) +
               "[[panel]]\nid = \"SUB\"\nfed_by = \"MAIN:2+4\"\nspaces = 8\n" + keys +
               "\n[[breaker]]\npanel = \"SUB\"\nspaces = [1]\namps = 20\ninterrupting_ka = 10\n";
    };
    CHECK(low(sub("")) == Lines{});
    CHECK(low(sub("fault_ka = 12")) == Lines{"breaker:SUB:1 warning required 10 kA, limit 12 kA"});
}
