// SPDX-License-Identifier: MIT
#pragma once
#include <string>
#include <vector>

#include "assess/assessment.hpp"

// Small surveys as text, put through reader, network and assessment by the built-in NEC-2023. What a rule found is told
// in one line: "circuit:c warning required 21 A, limit 20 A".

using Lines = std::vector<std::string>;

/// The assessment of a survey that must read. Every finding must carry what every finding owes: a rule of the list, a
/// text, a source and a remedy, and no signal word above the worst that the list gives its rule.
doorcard::Assessment assessment_of(const std::string& survey);

/// One finding in one line; without value or limit these are left out.
std::string line_of(const doorcard::Finding&);
/// Lines of all findings of a rule, in the order of the assessment.
Lines found(const std::string& survey, const std::string& rule);
/// The findings of these severities, each with its rule before it.
Lines at_least(const doorcard::Assessment&, doorcard::Severity);
/// The one finding of a rule; fails the test where there is none or more than one.
doorcard::Finding only(const std::string& survey, const std::string& rule);
/// What a message says in English.
std::string said(const doorcard::Message&);
/// Its sources, "; " between them.
std::string sources_of(const doorcard::Finding&);

/// A source of this system, and a panel MAIN of 40 spaces behind it.
inline std::string supply(const std::string& system, const std::string& panel_keys) {
    return "format = 1\n[[source]]\nid = \"utility\"\nsystem = \"" + system +
           "\"\n[[panel]]\nid = \"MAIN\"\nfed_by = \"utility\"\nspaces = 40\n" + panel_keys + "\n";
}
/// 120/240 V, a panel of 200 A: odd spaces left, row 1 (spaces 1 and 2) on A, row 2 on B ...
inline const std::string house =
    supply("120/240 1ph 3w", "bus_a = 200\nmain = \"breaker\"\nmain_a = 200\nservice = true");
/// Three legs A, B, C of a wye.
inline const std::string three_phase = supply("208Y/120 3ph 4w", "bus_a = 200\nmain = \"breaker\"\nmain_a = 200");
/// Three legs, the high one B until the panel says otherwise.
inline const std::string high_leg = supply("240/120 3ph 4w high-leg", "bus_a = 200\nmain = \"breaker\"\nmain_a = 200");
/// 120/208 V, two legs of a wye.
inline const std::string two_of_wye = supply("120/208 1ph 3w", "bus_a = 100\nmain = \"breaker\"\nmain_a = 100");

/// A breaker of MAIN: `breaker("1, 3", 30)`. `keys` are further lines of the entry.
std::string breaker(const std::string& spaces, double amps, const std::string& keys = "");
/// A circuit with this id on a breaker of MAIN that has these spaces, the breaker before it.
std::string branch(const std::string& id, const std::string& spaces, double amps, const std::string& keys = "",
                   const std::string& breaker_keys = "");
/// A circuit alone: `circuit("c", "\"MAIN:1\"")`.
std::string circuit(const std::string& id, const std::string& breakers, const std::string& keys = "");
/// A load set straight on a circuit: fixed, until its keys say otherwise.
std::string load(const std::string& circuit, const std::string& keys);
/// A cord load on a receptacle outlet of its own.
std::string cord(const std::string& circuit, const std::string& keys);
std::string outlet(const std::string& id, const std::string& circuit, const std::string& keys = "");
std::string reading(const std::string& of, const std::string& keys);
/// `wire = { size = ..., metal = "cu", ... }` as a line.
std::string wire(const std::string& size, const std::string& keys);
