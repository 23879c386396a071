// SPDX-License-Identifier: MIT
#pragma once
#include <string>

#include "base/outcome.hpp"
#include "survey/survey.hpp"

namespace doorcard {

/// A text and what to call it in complaints, mostly the path it was read from.
struct SourceText {
    std::string name;
    std::string bytes;
};

/// A survey and the very bytes it was read from.
struct ReadSurvey {
    Survey survey;
    std::string text;
};

/// The whole survey, or every complaint about its text by place, up to 50 (a syntax error stands alone); never half a
/// survey. What comes out keeps the laws of the file: every reference is there, no circle of feeds (contract 1).
Outcome<ReadSurvey> read_survey(SourceText);

}  // namespace doorcard
