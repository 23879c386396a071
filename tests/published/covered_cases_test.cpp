// SPDX-License-Identifier: MIT
// Walks the reference's worked cases: each has a counterpart in our tests, or its kind is named here with the reason
// why it is outside of what circuits, neutrals, legs and wires ask for.
#include "published/covered_cases.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <map>

namespace {

const std::map<std::string, std::string> outside_kinds = {
    {"area_circuits", "number of circuits from floor area belongs to the load totals"},
    {"device_count", "devices of a panel (408.54) are no finding yet"},
    {"awg", "diameters of wires are no figure of a survey"},
    {"alpha", "temperature coefficients are no figure of a survey"},
    {"resistivity", "resistivity is no figure of a survey"},
    {"drop_k", "voltage drop is never reckoned by circular mils"},
    {"shared_drop", "the return counts as if the other hots of its neutral were off; here both are on"},
    {"max_length", "longest runs by circular mils are no figure of a survey"},
    {"gfci_time", "trip times belong to hunting"},
    {"ul489", "trip times belong to hunting"},
    {"iec60898", "trip times belong to hunting"},
    {"afci_time", "trip times belong to hunting"},
    {"insulation_leak", "insulation tests belong to hunting"},
    {"heater_leak", "leakage limits of one appliance are no figure of a survey"},
    {"unbalance", "unbalance of voltages is no finding"},
    {"unbalance_wrong", "unbalance of voltages is no finding"},
    {"unbalance_derate", "unbalance of voltages is no finding"},
    {"crest", "wave shapes belong to captured waveforms"},
    {"thd", "wave shapes belong to captured waveforms"},
    {"true_pf", "wave shapes belong to captured waveforms"},
    {"insulation", "insulation tests belong to hunting"},
    {"neutral_ground", "volts of neutral to ground are no finding yet"},
    {"event", "voltage events belong to recordings"},
    {"block_sliding", "demand belongs to recordings"},
    {"demand_mean", "demand belongs to recordings"},
    {"load_factor", "demand belongs to recordings"},
    {"diversity", "demand belongs to recordings"},
    {"demand_factor", "demand belongs to the load totals"},
    {"duration", "demand belongs to recordings"},
    {"interval_energy", "demand belongs to recordings"},
    {"interval_count", "demand belongs to recordings"},
    {"watch", "watch times belong to hunting"},
    {"upper_rate", "watch times belong to hunting"},
    {"quiet", "watch times belong to hunting"},
    {"poisson_upper", "watch times belong to hunting"},
    {"halving", "test order belongs to hunting"},
    {"group_bound", "test order belongs to hunting"},
    {"average_tests", "test order belongs to hunting"},
};

const std::map<std::string, std::string> outside_cases = {
    {"c16", "a survey knows the fundamental and the third harmonic; this case rests on orders 5 to 13"},
};

std::vector<reference::Case> covered_cases() {
    std::vector<reference::Case> all;
    for (const auto& family : {covered_load_cases(), covered_wire_cases(), covered_neutral_cases(), covered_leg_cases(),
                               covered_voltage_cases(), covered_protection_cases(), covered_open_neutral_cases()})
        all.insert(all.end(), family.begin(), family.end());
    return all;
}

bool contains(const std::vector<reference::Case>& cases, const reference::Case& wanted) {
    return std::ranges::any_of(
        cases, [&](const reference::Case& one) { return one.id == wanted.id && one.kind == wanted.kind; });
}

}  // namespace

TEST_CASE("reference: every worked case has a counterpart in our tests, or a reason to be outside") {
    if (!reference::present("reference/circuit_cases.toml")) return;
    const std::vector<reference::Case> covered = covered_cases();
    const std::vector<reference::Case> cases = reference::cases();
    REQUIRE(cases.size() > 100);
    for (const reference::Case& one : cases) {
        CAPTURE(one.id);
        CAPTURE(one.kind);
        const bool outside = outside_kinds.contains(one.kind) || outside_cases.contains(one.id);
        CHECK(contains(covered, one) != outside);
    }
    for (const reference::Case& one : covered) {
        CAPTURE(one.id);
        CHECK(contains(cases, one));
    }
}
