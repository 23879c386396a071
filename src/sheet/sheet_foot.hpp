// SPDX-License-Identifier: MIT
#pragma once
#include "assess/directory.hpp"
#include "base/words.hpp"
#include "sheet/drawing.hpp"

namespace doorcard {

constexpr double foot_height = 8.6;  // mm

/// A caption over a value.
struct FootCell {
    std::string caption, value;
};

/// Date, revision, by.
std::vector<FootCell> dated_cells(const Survey&, const Words&);

/// The one foot that all sheets have: cells at the left, 'traced' with its squares, cells at the right. Returns the
/// bottom.
double draw_foot_strip(Drawing&, const Frame&, const std::vector<FootCell>& left, const PanelDirectory&,
                       const std::vector<FootCell>& right, const Words&);

}  // namespace doorcard
