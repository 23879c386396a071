// SPDX-License-Identifier: MIT
#pragma once
#include "sheet/card_plan.hpp"

namespace doorcard {

/// Finds the shared neutrals of a panel, and where their words stand: on the rule between neighbours, else in the
/// cells.
void mark_neutrals(CardPlan&, const Network&, const Words&);

/// The same words as lines: "N1: 5 and 7 off together".
std::vector<std::string> neutral_lines(const Network&, const PanelDirectory&, const Words&);

/// The card's notes on neutrals whose handles are not tied: 'switch off both'.
std::vector<std::string> untied_notes(const CardPlan&, const Words&);

}  // namespace doorcard
