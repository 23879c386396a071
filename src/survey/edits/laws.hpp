// SPDX-License-Identifier: MIT
#pragma once
#include <optional>

#include "base/outcome.hpp"
#include "survey/survey.hpp"

namespace doorcard {

/// The first law that a survey breaks, all of it looked at: what is named is there, ids are unique, feeds run in no
/// circle, breakers sit in spaces that their panel has, a neutral has one size.
std::optional<Complaint> broken_law(const Survey&);

/// Whether a survey that keeps the laws still does after an edit, told from the rows that differ. False where it does
/// not, or where only the whole can tell.
bool still_keeps_laws(const Survey& before, const Survey& after);

}  // namespace doorcard
