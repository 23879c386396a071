// SPDX-License-Identifier: MIT
// Walks the reference's worked cases: each has a counterpart in our tests, or its kind is named here with the reason
// why it is outside of what circuits, neutrals, legs and wires ask for.
#include "published/covered_cases.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <map>

namespace {

const std::map<std::string, std::string> outside_kinds = {
    {"receptacle_rating", "ratings of receptacles (210.21(B)) are no finding yet"},
    {"area_circuits", "number of circuits from floor area belongs to the load totals"},
    {"device_count", "devices of a panel (408.54) are no finding yet"},
    {"awg", "diameters of wires are no figure of a survey"},
    {"alpha", "temperature coefficients are no figure of a survey"},
    {"resistivity", "resistivity is no figure of a survey"},
    {"drop_k", "voltage drop is not reckoned yet, and never by circular mils"},
    {"drop_t8", "voltage drop is not reckoned yet"},
    {"drop_t9", "voltage drop is not reckoned yet"},
    {"shared_drop", "voltage drop is not reckoned yet"},
    {"max_length", "voltage drop is not reckoned yet"},
    {"k_from_t8", "voltage drop is not reckoned yet"},
    {"open_neutral_split",
     "volts behind an open neutral are read, not reckoned; its symptom is tested with these volts"},
    {"gfci_time", "trip times belong to hunting"},
    {"ul489", "trip times belong to hunting"},
    {"iec60898", "trip times belong to hunting"},
    {"afci_time", "trip times belong to hunting"},
    {"leakage_count", "leakage budgets are no finding yet"},
    {"insulation_leak", "insulation tests belong to hunting"},
    {"heater_leak", "leakage limits of appliances are no finding yet"},
    {"unbalance", "unbalance of voltages is no finding"},
    {"unbalance_wrong", "unbalance of voltages is no finding"},
    {"unbalance_derate", "unbalance of voltages is no finding"},
    {"crest", "wave shapes belong to captured waveforms"},
    {"thd", "wave shapes belong to captured waveforms"},
    {"true_pf", "wave shapes belong to captured waveforms"},
    {"insulation", "insulation tests belong to hunting"},
    {"neutral_ground", "volts of neutral to ground are no finding yet"},
    {"test_load", "joint resistance is not reckoned yet"},
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
                               covered_voltage_cases()})
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
