// SPDX-License-Identifier: MIT
#pragma once
#include <iosfwd>

#include "assess/assessment.hpp"
#include "base/words.hpp"
#include "cli/terminal.hpp"

namespace doorcard {

// The tables under the findings of `check`: a dash is 'not known'; nothing is rounded before it is printed.

/// A table per panel: a row per breaker.
void write_circuit_tables(std::ostream&, const Network&, const Assessment&, const Words&, const Terminal&);
void write_neutral_table(std::ostream&, const Network&, const Assessment&, const Words&, const Terminal&);
/// Outlets that were read with and without load; nothing where none was.
void write_joint_table(std::ostream&, const Assessment&, const Words&, const Terminal&);
/// Legs and feeders.
void write_panel_table(std::ostream&, const Network&, const Assessment&, const Words&, const Terminal&);

/// "5", "2+4", "13a".
std::string spaces_text(const Breaker&);

}  // namespace doorcard
