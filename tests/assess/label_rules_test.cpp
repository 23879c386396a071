// SPDX-License-Identifier: MIT
// The label rules as findings (408.4(A)): what each carries; their words and texts are tested in labels_test.cpp.
#include "assess/lines_shown.hpp"

namespace {

std::string row(const std::string& space, const std::string& text, const std::string& keys = "") {
    return branch("c" + space, space, 15, "purpose = \"" + text + "\"\ntraced = { how = \"switching\" }\n" + keys);
}

Lines labels(const std::string& survey, const std::string& rule) { return found(house + survey, rule); }

}  // namespace

TEST_CASE("label-missing: a breaker in use that nobody traced, not a spare") {
    const auto finding = only(house + breaker("5", 15), "label-missing");
    CHECK(line_of(finding) == "breaker:MAIN:5 notice required");
    CHECK(sources_of(finding) == "NEC 2023 408.4(A)");
    CHECK(said(finding.remedy).find("treat it as live") != std::string::npos);
    CHECK(labels(breaker("5", 15, "state = \"spare\""), "label-missing") == Lines{});
    CHECK(labels(row("5", "Hall lighting"), "label-missing") == Lines{});
}

TEST_CASE("label-vague: a text that says nothing") {
    CHECK(labels(row("5", "Misc. plugs 2"), "label-vague") == Lines{"circuit:c5 notice required"});
    CHECK(labels(row("5", "Kitchen plugs"), "label-vague") == Lines{});
}

TEST_CASE("label-duplicate: two rows alike") {
    CHECK(labels(row("6", "Bedroom receptacles") + row("8", "Bedroom receptacles"), "label-duplicate") ==
          Lines{"circuit:c6 notice required", "circuit:c8 notice required"});
    CHECK(labels(row("6", "Front bedroom receptacles") + row("8", "Back bedroom receptacles"), "label-duplicate") ==
          Lines{});
}

TEST_CASE("label-transient: a text that changes with who is there") {
    CHECK(labels(row("5", "Tenant's freezer"), "label-transient") == Lines{"circuit:c5 notice required"});
    CHECK(labels(row("5", "Manager's office"), "label-transient") == Lines{});
}

TEST_CASE("label-spare-unmarked: called spare, not recorded as spare") {
    CHECK(labels(breaker("12", 15, "old_label = \"spare\""), "label-spare-unmarked") ==
          Lines{"breaker:MAIN:12 notice required"});
    CHECK(labels(breaker("12", 15, "old_label = \"spare\"\nstate = \"spare\""), "label-spare-unmarked") == Lines{});
}

TEST_CASE("label-abbreviation: letters that the card does not explain") {
    CHECK(labels(row("5", "QXZ cabinet"), "label-abbreviation") == Lines{"circuit:c5 notice required"});
    CHECK(labels(row("5", "Attic AC"), "label-abbreviation") == Lines{});
}

TEST_CASE("label-old-directory: one line for a panel whose old directory is wrong") {
    CHECK(labels(row("5", "Hall lighting") + breaker("7", 15), "label-old-directory") == Lines{});
    const std::string wrong = branch("d", "9", 15, "purpose = \"Hall lighting\"\ntraced = { how = \"switching\" }\n",
                                     "old_label = \"Garage door\"");
    CHECK(labels(wrong, "label-old-directory") == Lines{"panel:MAIN notice required"});
}
