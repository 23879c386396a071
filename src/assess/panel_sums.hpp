// SPDX-License-Identifier: MIT
#pragma once
#include <map>

#include "assess/placed_load.hpp"

namespace doorcard {

/// What all loads of a panel, own and downstream, come to.
struct PanelTotals {
    LegSums sums;
    std::optional<VoltAmperes> connected;
};

/// Totals already known, by position of the panel: what hangs below such a panel is not looked at again.
using KnownTotals = std::map<std::size_t, PanelTotals>;

/// The sums of every panel, each load once. Where the panels are a tree, a panel's are those of its own loads and of
/// the panels it feeds; where a load can come by two ways, its ways are put together first. A transformer is one load
/// of its panel's connected VA at power factor 1 on all feeding poles: thirds and neutral current stop there
/// (reckoning, 'Feeders and panels').
class PanelSums {
public:
    PanelSums(const Network&, const RuleBook&, const PlacedLoads&, const KnownTotals& = {});

    const LegSums& of(std::size_t panel) const { return totals_[panel].sums; }
    std::optional<VoltAmperes> connected(std::size_t panel) const { return totals_[panel].connected; }
    /// What a transformer's panel asks of its feeding poles; null where there is no transformer, or nothing known
    /// behind it.
    const LoadCurrent* asked_of_primary(std::size_t panel) const;
    /// Every panel hangs on one panel at most and every load in one panel: no load comes by two ways.
    bool is_tree() const { return is_tree_; }
    std::vector<PanelTotals> take_totals() && { return std::move(totals_); }

private:
    friend class PanelSummer;
    std::vector<PanelTotals> totals_;
    std::map<std::size_t, LoadCurrent> primary_;
    bool is_tree_ = false;
};

/// The panels that the breakers feeding a panel hang in, each once.
std::vector<std::size_t> panels_above(const Network&, std::size_t panel);

/// True where the legs of a panel stand as those of the panel that feeds it, so that its sums hold there too.
bool stands_alike(const PanelSupply& below, const PanelSupply& above);

}  // namespace doorcard
