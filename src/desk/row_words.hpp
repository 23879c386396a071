// SPDX-License-Identifier: MIT
#pragma once
#include <string>

#include "base/outcome.hpp"
#include "survey/survey.hpp"

namespace doorcard {

// What is written beside a breaker on the face, and where it goes (docs/decisions/typed_words_are_claims.md).

/// The words that can be typed over: its circuit's own text, else, of a circuit that only the old directory tells of,
/// the old label. Empty for a text that is composed from outlets, and for several circuits.
std::string row_words(const Survey&, const Breaker&);

/// The survey with these words beside the breaker. Nothing that was proved carries a doubt, and nothing doubtful
/// becomes a circuit's own text. Refused for a feeder, a source, a main, and where several circuits are on it.
Outcome<Survey> with_row_words(Survey, const std::string& breaker, const std::string& typed);

/// The survey with the breaker as a spare. A circuit that only the old directory told of goes; refused where one is
/// known otherwise.
Outcome<Survey> with_spare(Survey, const std::string& breaker);

}  // namespace doorcard
