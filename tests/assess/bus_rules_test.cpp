// SPDX-License-Identifier: MIT
// panel-over-bus: 408.36.
#include "assess/lines_shown.hpp"

namespace {

Lines bus(const std::string& survey) { return found(survey, "panel-over-bus"); }

std::string panel(const std::string& keys) {
    return "format = 1\n[[source]]\nid = \"utility\"\nsystem = \"120/240 1ph 3w\"\n[[panel]]\nid = \"MAIN\"\n"
           "fed_by = \"utility\"\n" +
           keys + "\n";
}

std::string sub(double device, const std::string& keys) {
    return house + breaker("10, 12", device) + "[[panel]]\nid = \"SUB\"\nfed_by = \"MAIN:10+12\"\n" + keys + "\n";
}

}  // namespace

TEST_CASE("panel-over-bus: the device that protects it") {
    const auto finding = only(panel("bus_a = 200\nmain = \"breaker\"\nmain_a = 225"), "panel-over-bus");
    CHECK(line_of(finding) == "panel:MAIN warning required 225 A, limit 200 A");
    CHECK(sources_of(finding) == "NEC 2023 408.36");
    CHECK(bus(panel("bus_a = 200\nmain = \"breaker\"\nmain_a = 200")) == Lines{});
    CHECK(bus(panel("main = \"breaker\"\nmain_a = 225")) == Lines{});  // the bus was not read
}

TEST_CASE("panel-over-bus: a panel with lugs is protected by the breaker that feeds it") {
    CHECK(bus(sub(125, "bus_a = 100\nmain = \"lugs\"")) == Lines{"panel:SUB warning required 125 A, limit 100 A"});
    CHECK(bus(sub(100, "bus_a = 100\nmain = \"lugs\"")) == Lines{});
    CHECK(bus(sub(100, "bus_a = 125\nmain = \"breaker\"\nmain_a = 200")) == Lines{});  // held by the one ahead
    CHECK(bus(sub(125, "bus_a = 100\nmain = \"breaker\"\nmain_a = 100")) == Lines{});  // held by its own
}

TEST_CASE("panel-over-bus: lugs are no device, nor is a breaker ahead of a transformer") {
    CHECK(bus(panel("bus_a = 200\nmain = \"lugs\"\nmain_a = 225")) == Lines{});
    CHECK(bus(sub(125,
                  "bus_a = 100\nmain = \"lugs\"\nsystem = \"120/240 1ph 3w\"\n"
                  "transformer = { kva = 25.0 }")) == Lines{});
}

TEST_CASE("panel-over-bus: measured load, within the meter's accuracy a step milder") {
    CHECK(bus(house + reading("panel:MAIN/A", "amps = 210")) ==
          Lines{"panel:MAIN warning required 210 A, limit 200 A"});
    CHECK(bus(house + reading("panel:MAIN/A", "amps = 205")) ==
          Lines{"panel:MAIN caution required 205 A, limit 200 A"});
    CHECK(bus(house + reading("panel:MAIN/A", "amps = 200")) == Lines{});
}

TEST_CASE("panel-over-bus: never the sum of the branch breakers, nor of nameplates") {
    std::string full = house;
    for (int space = 1; space < 30; space += 2) full += breaker(std::to_string(space), 30);
    CHECK(bus(full) == Lines{});
    CHECK(bus(house + branch("c", "1, 3", 50) + load("c", "amps = 300\nvolts = 240")) == Lines{});
}

TEST_CASE("panel-over-bus: a split bus has several mains by design") {
    CHECK(bus(panel("bus_a = 200\nmain = \"split-bus\"\nmain_a = 225")) == Lines{});
}
