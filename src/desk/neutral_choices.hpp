// SPDX-License-Identifier: MIT
#pragma once
#include "desk/form.hpp"

namespace doorcard {

/// What the neutral of a circuit may be: not traced, its own, one that others of the panel share, or shared anew with
/// a neighbour.
std::vector<FieldChoice> neutral_choices(const Survey&, const std::string& circuit);
/// One of these choices as an edit; of a neutral shared anew both circuits name it.
Outcome<Edit> neutral_chosen(const Survey&, const std::string& circuit, const std::string& choice);

}  // namespace doorcard
