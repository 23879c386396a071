// SPDX-License-Identifier: MIT
#pragma once
#include "assess/homes.hpp"
#include "assess/panel_sums.hpp"

namespace doorcard {

/// The part of a survey that stands in some of its panels, as a survey of its own: assessed, it says of those panels
/// what the whole survey would. Panels that they feed stand in it too, empty, with their totals as known.
struct Part {
    Survey survey;
    std::vector<std::size_t> panels;  ///< by position in the part: where the panel stands in the whole survey
    KnownTotals known;                ///< by position in the part

    /// Position in the part of a panel of the whole survey; panels.size() where it has none.
    std::size_t position_of(std::size_t panel) const;
};

/// `chosen` is by home; `totals` those of the whole survey, by panel.
Part part_of(const Survey&, const Homes&, const std::vector<bool>& chosen, const std::vector<PanelTotals>& totals);

}  // namespace doorcard
