// SPDX-License-Identifier: MIT
#pragma once
#include "base/words.hpp"
#include "sheet/drawing.hpp"

// How front and back of a card lie on their paper: alike, so that they meet when the paper is turned.
namespace doorcard {

constexpr double card_margin = 6;  // inside the trim, mm
constexpr double head_drop = 6.0;  // from the trim to the top of the head

/// In the middle across, high enough to leave room for a strip below the card.
Frame trim_on(const Paper&, const Paper& cut);
/// Corners, and below them the size to cut to; `measured`: that of the door pocket.
void draw_cut_marks(Drawing&, const Frame& trim, bool measured, const Words&);
/// Lines to write on where a card has room to spare, under these words; none where it has little.
void draw_hand_lines(Drawing&, const Frame& room, const std::string& words);

}  // namespace doorcard
