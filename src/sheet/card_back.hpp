// SPDX-License-Identifier: MIT
#pragma once
#include "sheet/card.hpp"

namespace doorcard {

/// The back of the card, by room, for the occupant: which handles switch off what, what to do when one trips, how
/// everything goes off, and below a cut line the dated tag of what must stay on. One card or more for each panel, each
/// on a page of its own. Source: contract 4, card; for the reading, docs/decisions/back_of_the_card.md.
Sheet card_back_sheet(const Network&, const Assessment&, const CardChoice&, const Words&);

/// The same as lines of plain text, at most 80 columns.
std::vector<std::string> card_back_lines(const Network&, std::size_t panel, const Words&);

/// Fronts and backs of the same choice, front then back, page by page, so that they meet where paper is printed on both
/// sides: where a panel has more of one than of the other, a page says that this side is empty.
Sheet both_sides(const Sheet& fronts, const Sheet& backs, const CardChoice&, const Words&);

}  // namespace doorcard
