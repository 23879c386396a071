// SPDX-License-Identifier: MIT
#pragma once
#include <string>
#include <string_view>

#include "base/outcome.hpp"
#include "survey/survey.hpp"

namespace doorcard {

/// What was typed on a row of the face, taken apart: rating in amperes, poles, guards, and what it feeds.
struct BreakerWords {
    std::optional<double> amps;
    int poles = 0;  ///< 0: not said
    bool tandem = false, spare = false;
    Guards guards;
    std::string text;
};

/// `20 Kitchen?`, `20A gf Kitchen`, `30/2 Dryer`, `15t Hall|Bath`, `20 s`, `Kitchen`. What would be read otherwise is
/// text in quotes: `20 "3 lamps"`. Refused: a rating that no device has. `typed` is plain.
Outcome<BreakerWords> breaker_words(std::string_view typed);

/// What one types to say this; the text in quotes where it would be read otherwise.
std::string typed_words_of(const BreakerWords&);

/// A text that says by its end that it is doubtful: 'Kitchen?'.
bool is_doubtful(std::string_view text);

}  // namespace doorcard
