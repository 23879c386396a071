// SPDX-License-Identifier: MIT
#pragma once
#include <optional>
#include <string_view>
#include <vector>

#include "assess/directory.hpp"
#include "survey/survey.hpp"

namespace doorcard {

/// The positions of one handle as it hangs, or one free position, from the top.
using FacePlaceRun = std::vector<Position>;

/// The runs of one side of a panel from the top; of a panel in one column all are on the left. Empty where there is no
/// such panel.
std::vector<FacePlaceRun> face_side(const Survey&, std::string_view panel, bool left);

/// Which breaker sits at a position; null where none does.
const Breaker* breaker_at(const Survey&, std::string_view panel, Position);

/// The run below a position on its side; below the last of the left comes the first of the right. Nullopt at the end.
std::optional<Position> below(const Survey&, std::string_view panel, Position);
std::optional<Position> above(const Survey&, std::string_view panel, Position);
/// What hangs beside it, on the other side.
std::optional<Position> across(const Survey&, std::string_view panel, Position);

/// So many spaces from this one down its side; nullopt where the panel ends before.
std::optional<std::vector<int>> spaces_down(const Survey&, std::string_view panel, int space, int poles);

}  // namespace doorcard
