// SPDX-License-Identifier: MIT
#pragma once
#include <optional>
#include <string>

#include "survey/system.hpp"

namespace doorcard {

/// What is known of a house before the survey begins.
struct NewSurvey {
    std::optional<System> system;
    std::optional<int> spaces;
    std::optional<double> main_a;
};

/// The text of a survey to start from: a heading, a utility and a MAIN panel with what is known, the rest to be filled
/// in as comments (absent means not seen: nothing is guessed).
std::string new_survey(const NewSurvey&);

}  // namespace doorcard
