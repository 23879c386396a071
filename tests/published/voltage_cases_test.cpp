// SPDX-License-Identifier: MIT
// Voltages on a 120 V base: the worked cases f01 and f03. Source: ANSI C84.1-2020 Table 1 (which number goes where:
// partly from memory).
#include <doctest/doctest.h>

#include "published/covered_cases.hpp"
#include "published/scene.hpp"

using namespace doorcard;

namespace {

struct VoltageCase {
    std::string id;
    bool at_service;
    std::vector<std::pair<double, const char*>> ranges;
};

const std::vector<VoltageCase> voltages = {
    {"f01", true, {{114.0, "A"}, {113.0, "B"}, {126.0, "A"}, {127.0, "B"}, {127.5, "outside"}, {109.9, "outside"}}},
    {"f03", false, {{108.0, "A"}, {107.9, "B"}, {104.0, "B"}, {103.9, "outside"}, {126.5, "B"}}},
};

Assessment read_at(bool service, double volts) {
    Scene scene(System::split_120_240);
    scene.panel.service = service;
    if (service) {
        scene.reading(ThingKind::panel, "P", "A").volts = Volts(volts);
    } else {
        const Outlet& outlet = scene.outlet(scene.circuit("A", 20), OutletKind::receptacle);
        scene.reading(ThingKind::outlet, outlet.id).volts = Volts(volts);
    }
    return assessed(scene);
}

/// The range that a reading lies in, as the finding says it.
std::string range_of(bool service, double volts) {
    const Assessment found = read_at(service, volts);
    const Finding* finding = finding_of(found, "voltage-out-of-range");
    if (finding == nullptr) return "A";
    return finding->severity == Severity::notice ? "B" : "outside";
}

}  // namespace

std::vector<reference::Case> covered_voltage_cases() {
    std::vector<reference::Case> all;
    add_cases(all, "c84", voltages);
    return all;
}

TEST_CASE("worked cases: ranges of service and utilization voltage") {
    for (const VoltageCase& one : voltages)
        for (const auto& [volts, range] : one.ranges) {
            CAPTURE(one.id);
            CAPTURE(volts);
            CHECK(range_of(one.at_service, volts) == range);
        }
}
