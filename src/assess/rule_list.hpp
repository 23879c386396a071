// SPDX-License-Identifier: MIT
#pragma once
#include <span>

#include "assess/figures.hpp"

namespace doorcard {

/// One rule family's function: looks at what was reckoned and adds what it finds. Pure: nothing else is read or
/// changed.
using RuleFunction = void (*)(const Reckoned&, std::vector<Finding>&);

/// A rule as it is listed: its key, what it is about in a few words, and the signal word it has at its worst.
struct RuleEntry {
    const char* name;
    const char* title;
    Severity worst;
};

/// Every rule that can fire, in the order of docs/findings.md.
std::span<const RuleEntry> rule_list();

/// All findings, unsorted.
std::vector<Finding> run_rules(const Reckoned&);

// The families; each file says its rules, their arithmetic and their sources.
void find_overloads(const Reckoned&, std::vector<Finding>&);           // overload_rules.cpp
void find_appliance_shares(const Reckoned&, std::vector<Finding>&);    // appliance_rules.cpp
void find_neutral_wiring(const Reckoned&, std::vector<Finding>&);      // neutral_wiring_rules.cpp
void find_neutral_currents(const Reckoned&, std::vector<Finding>&);    // neutral_current_rules.cpp
void find_open_neutrals(const Reckoned&, std::vector<Finding>&);       // open_neutral_rules.cpp
void find_misplaced_breakers(const Reckoned&, std::vector<Finding>&);  // placement_rules.cpp
void find_double_feeds(const Reckoned&, std::vector<Finding>&);        // placement_rules.cpp
void find_voltages(const Reckoned&, std::vector<Finding>&);            // voltage_rules.cpp
void find_unbalanced_legs(const Reckoned&, std::vector<Finding>&);     // voltage_rules.cpp
void find_small_wires(const Reckoned&, std::vector<Finding>&);         // wire_rules.cpp
void find_overloaded_buses(const Reckoned&, std::vector<Finding>&);    // bus_rules.cpp
void find_gaps(const Reckoned&, std::vector<Finding>&);                // gap_rules.cpp
void find_lax_local_rules(const Reckoned&, std::vector<Finding>&);     // local_rules.cpp
void find_label_faults(const Reckoned&, std::vector<Finding>&);        // labels.cpp
void find_panel_faults(const Reckoned&, std::vector<Finding>&);        // panel_seen_rules.cpp
void find_device_faults(const Reckoned&, std::vector<Finding>&);       // device_seen_rules.cpp
void find_outlet_faults(const Reckoned&, std::vector<Finding>&);       // outlet_seen_rules.cpp
void find_missing_guards(const Reckoned&, std::vector<Finding>&);      // guard_place_rules.cpp
void find_stated_limits(const Reckoned&, std::vector<Finding>&);       // nameplate_rules.cpp
void find_small_grounds(const Reckoned&, std::vector<Finding>&);       // grounding_rules.cpp
void find_receptacle_ratings(const Reckoned&, std::vector<Finding>&);  // receptacle_rules.cpp
void find_voltage_drops(const Reckoned&, std::vector<Finding>&);       // voltage_drop_rules.cpp
void find_poor_joints(const Reckoned&, std::vector<Finding>&);         // joint_rules.cpp
void find_leakage(const Reckoned&, std::vector<Finding>&);             // leakage_rules.cpp
void find_heat(const Reckoned&, std::vector<Finding>&);                // heat_rules.cpp
void find_low_interrupting(const Reckoned&, std::vector<Finding>&);    // fault_current_rules.cpp
void find_second_sources(const Reckoned&, std::vector<Finding>&);      // second_source_rules.cpp
void find_passed_limits(const Reckoned&, std::vector<Finding>&);       // limit_rules.cpp

// Families that look at the whole premises.
void find_source_faults_of_the_premises(const Reckoned&, std::vector<Finding>&);      // source_seen_rules.cpp
void find_required_circuits_of_the_premises(const Reckoned&, std::vector<Finding>&);  // required_circuit_rules.cpp

}  // namespace doorcard
