// SPDX-License-Identifier: MIT
#pragma once
#include <string>

#include "base/words.hpp"
#include "desk/face_facts.hpp"
#include "sheet/panel_face.hpp"

// The words that stand on the face of a panel, on screen and in its list.
namespace doorcard {

/// "12.4 of 20", "≥ 8.1 of 20"; a dash where nothing is known.
std::string figures_words(const RowLoad&, const Words&);
/// "calculated 12.4 A, measured 17.6 A, of 20 A: 88 %"
std::string load_words(const RowLoad&, const Words&);
/// "5 and 7": the handles of a shared neutral; those of other panels with their panel before them.
Message handles_message(const FaceFacts&, const std::vector<std::size_t>& breakers);
/// "5 and 7: neutral 1.8 A", "9 and 13: neutral 25.8 A, same leg"
std::string neutral_words(const RowNeutral&, const Message& handles, const Words&);
/// "9 and 13: 25.8 A, same leg": where the whole has no room.
std::string short_neutral_words(const RowNeutral&, const Message& handles, const Words&);
/// "13 of 16 traced"
std::string traced_words(const FaceFacts&, const Words&);
/// "120/240 V, 1-phase, 3-wire, bus 200 A, cellar stair"
std::string panel_words(const FaceFacts&, const Words&);
/// "main 200 A", "main fuses 60 A", "lugs, no main here", "main: not seen"
std::string main_words(const Panel&, const Words&);

}  // namespace doorcard
