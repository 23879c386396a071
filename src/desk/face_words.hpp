// SPDX-License-Identifier: MIT
#pragma once
#include <optional>
#include <string>

#include "base/words.hpp"
#include "desk/face_facts.hpp"

// The words that stand on the face of a panel, on screen and in its list.
namespace doorcard {

/// The larger of calculated and measured over the rating; nullopt where one is not known.
std::optional<double> share_of(const RowLoad&);
/// "12.4 of 20", ">= 8.1 of 20"; a dash where nothing is known.
std::string figures_words(const RowLoad&, const Words&);
/// "5 and 7: neutral 1.8 A", "9 and 13: neutral 25.8 A, same leg"
std::string neutral_words(const RowNeutral&, const Message& spaces, const Words&);
/// "13 of 16 traced"
std::string traced_words(const FaceFacts&, const Words&);
/// "120/240 V, 1 phase, bus 200 A, cellar stair"
std::string panel_words(const FaceFacts&, const Words&);

}  // namespace doorcard
