// SPDX-License-Identifier: MIT
// source-over-bus, backfeed-not-held: sources beside what feeds a panel.
#include "assess/lines_shown.hpp"

namespace {

Lines bus(const std::string& survey) { return found(survey, "source-over-bus"); }
Lines held(const std::string& survey) { return found(survey, "backfeed-not-held"); }

std::string panel(double bus_a, double main_a, const std::string& more) {
    return supply("120/240 1ph 3w", "bus_a = " + std::to_string(bus_a) +
                                        "\nmain = \"breaker\"\nmain_a = " + std::to_string(main_a) + "\n" + more);
}
const std::string top = "main_at = \"top\"";

/// A pv source of so many amperes through a breaker of these spaces.
std::string pv(const std::string& spaces, const std::string& output, const std::string& keys = "kind = \"pv\"",
               const std::string& breaker_keys = "") {
    std::string id = "MAIN:" + spaces;
    for (std::size_t at; (at = id.find(", ")) != std::string::npos;) id.replace(at, 2, "+");
    return breaker(spaces, 60, breaker_keys) + "[[source]]\nid = \"roof\"\nthrough = \"" + id + "\"\n" + output + "\n" +
           keys + "\n";
}
const std::string end = "37, 39", middle = "21, 23";

}  // namespace

TEST_CASE("source-over-bus: the main and 125 % of the output above the bus, the source not at the far end") {
    const auto finding = only(panel(200, 200, top) + pv(middle, "output_a = 32"), "source-over-bus");
    CHECK(line_of(finding) == "panel:MAIN warning required 240 A, limit 200 A");  // 200 + 1.25 x 32
    CHECK(sources_of(finding) == "NEC 2023 705.12(B)(1); NEC 2023 705.12(B)(2); NEC 2023 705.12(B)(3)");
}

TEST_CASE("source-over-bus: first way out, the bus has room for both") {
    CHECK(bus(panel(225, 175, top) + pv(middle, "output_a = 40")) == Lines{});  // 175 + 50 = 225
    CHECK(bus(panel(225, 175, top) + pv(middle, "output_a = 41")).size() == 1);
}

TEST_CASE("source-over-bus: second way out, 120 % with the source at the end opposite the feed") {
    CHECK(bus(panel(200, 200, top) + pv(end, "output_a = 32")) == Lines{});  // 240 A is 1.2 x 200
    CHECK(bus(panel(200, 200, top) + pv(end, "output_a = 32.1")).size() == 1);
    CHECK(bus(panel(200, 200, "main_at = \"bottom\"") + pv(end, "output_a = 32")).size() == 1);
    CHECK(bus(panel(200, 200, "main_at = \"bottom\"") + pv("1, 3", "output_a = 32")) == Lines{});
    CHECK(bus(panel(200, 200, top + "\nturned_over = true") + pv("1, 3", "output_a = 32")) == Lines{});
    CHECK(bus(panel(200, 200, "main_at = \"center\"") + pv(end, "output_a = 32")) == Lines{});  // of a dwelling
    CHECK(bus(panel(200, 200, "main_at = \"center\"") + pv(middle, "output_a = 32")).size() == 1);
}

TEST_CASE("source-over-bus: a notice where nobody looked which end is fed and the far one would do") {
    CHECK(bus(panel(200, 200, "") + pv(end, "output_a = 32")) ==
          Lines{"panel:MAIN notice required 240 A, limit 200 A"});
    CHECK(bus(panel(200, 200, "") + pv(end, "output_a = 40")) ==
          Lines{"panel:MAIN warning required 250 A, limit 200 A"});
}

TEST_CASE("source-over-bus: third way out, all devices but the main within the bus, once all are entered") {
    const std::string source = pv(middle, "output_a = 48");  // 260 A
    CHECK(bus(panel(200, 200, top + "\nall_breakers_entered = true") + source + breaker("1, 3", 100)) == Lines{});
    CHECK(bus(panel(200, 200, top + "\nall_breakers_entered = true") + source + breaker("1, 3", 150)).size() == 1);
    CHECK(bus(panel(200, 200, top) + source + breaker("1, 3", 100)).size() == 1);  // not all entered
    CHECK(bus(panel(200, 200, top + "\nall_breakers_entered = true") + source +
              "[[breaker]]\npanel = \"MAIN\"\nspaces = [1]\n")
              .size() == 1);  // a rating is not known
}

TEST_CASE("source-over-bus: silent where output, bus or device is not known, and for sources that never run beside") {
    CHECK(bus(panel(200, 200, top) + pv(middle, "")) == Lines{});
    CHECK(bus(supply("120/240 1ph 3w", "main = \"breaker\"\nmain_a = 200") + pv(middle, "output_a = 90")) == Lines{});
    CHECK(bus(supply("120/240 1ph 3w", "bus_a = 200\nmain = \"breaker\"") + pv(middle, "output_a = 90")) == Lines{});
    CHECK(bus(panel(200, 200, top) + pv(middle, "output_a = 90", "kind = \"generator\"")) == Lines{});
    CHECK(bus(panel(200, 200, top) + pv(middle, "output_a = 90", "kind = \"battery\"\ninterlock = \"transfer\"")) ==
          Lines{});
    CHECK(bus(panel(200, 200, top) + pv(middle, "output_a = 90", "kind = \"battery\"\ninterlock = \"none\"")).size() ==
          1);
}

TEST_CASE("backfeed-not-held: a back-fed device without its fastener, but not of interactive pv and battery") {
    const std::string loose = "hold_down = false";
    const auto finding =
        only(panel(200, 200, "") + pv(end, "output_a = 10", "kind = \"generator\"", loose), "backfeed-not-held");
    CHECK(line_of(finding) == "breaker:MAIN:37+39 warning required");
    CHECK(sources_of(finding) == "NEC 2023 408.36(D)");
    CHECK(held(panel(200, 200, "") + pv(end, "output_a = 10", "kind = \"pv\"", loose)) == Lines{});
    CHECK(held(panel(200, 200, "") + pv(end, "output_a = 10", "kind = \"battery\"", loose)) == Lines{});
    CHECK(held(panel(200, 200, "") + pv(end, "output_a = 10", "kind = \"generator\"", "hold_down = true")) == Lines{});
    CHECK(held(panel(200, 200, "") + pv(end, "output_a = 10", "kind = \"generator\"")) == Lines{});
    CHECK(held(panel(200, 200, "") + breaker("1, 3", 100, "serves_as_main = true\nhold_down = false")).size() == 1);
    CHECK(held(panel(200, 200, "") + breaker("1, 3", 100, loose)) == Lines{});  // nothing feeds it from behind
}
