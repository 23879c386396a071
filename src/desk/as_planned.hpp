// SPDX-License-Identifier: MIT
#pragma once
#include <vector>

#include "survey/planned.hpp"
#include "survey/survey.hpp"

namespace doorcard {

/// What becomes of an edit on a survey that is locked as found: the handles stay where and as they were found, and what
/// the edit would have done to them is planned; all else of it is done.
struct HeldBack {
    Survey after;
    std::vector<Planned> planned;
};
HeldBack held_back(const Survey& before, Survey after);

}  // namespace doorcard
