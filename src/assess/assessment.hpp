// SPDX-License-Identifier: MIT
#pragma once
#include <map>

#include "assess/finding.hpp"
#include "assess/panel_sums.hpp"
#include "network/network.hpp"

namespace doorcard {

/// The voltage drop at an outlet that current flows to: the branch's part, and with the feeders above.
struct OutletDrop {
    std::string outlet;  ///< id
    double voltage_drop_percent = 0;
    std::optional<double> total_drop_percent;
    bool operator==(const OutletDrop&) const = default;
};

/// What follows for one circuit, or for the feeder of one panel (then `id` is the panel's). Unrounded; nullopt is
/// unknown. Amperes of a multi-pole thing are those of its highest leg; `legs_a` gives each. Source: contract 3,
/// reckoning.
struct LoadFigures {
    std::string id;
    std::vector<std::string> breakers;  ///< ids
    std::string legs;                   ///< letters ascending, each once
    std::optional<Volts> volts;
    std::optional<Amperes> rating_a;
    std::optional<VoltAmperes> connected_va;
    std::optional<Amperes> continuous_a, noncontinuous_a, required_a;
    std::optional<Amperes> measured_a, sustained_a;
    std::map<char, std::optional<Amperes>> legs_a;
    std::optional<double> percent_of_rating;
    std::optional<Amperes> ampacity_a;
    std::optional<double> voltage_drop_percent, total_drop_percent;
    std::vector<OutletDrop> outlet_drops;  ///< of circuits, outlet by outlet; empty where the drop is not known
    bool operator==(const LoadFigures&) const = default;
};

struct NeutralFigures {
    std::string id;
    std::vector<std::string> circuits;
    std::string legs;
    std::optional<Amperes> amps, triplen_amps, measured_a, explained_a, residual_a;
    std::optional<double> imbalance_percent;
    std::optional<Amperes> ampacity_a;
    /// What the appliances of each leg would get if the neutral opened with all nameplate loads on.
    std::map<char, std::optional<Volts>> open_volts;
    bool operator==(const NeutralFigures&) const = default;
};

/// What two readings of one outlet, taken together and one of them loaded, say of the way there and back. `joint` is
/// the loop less the wire's own, nullopt where that is not known; it may come out below 0. Source: contract 3.
struct JointFigures {
    std::string outlet;  ///< id
    Ohms loop;           ///< (V0 - V1) / (I1 - I0)
    std::optional<Ohms> wire, joint;
    Amperes step;  ///< I1 - I0
    bool operator==(const JointFigures&) const = default;
};

struct PanelLegFigures {
    char leg = 0;
    std::optional<Amperes> amps;
    std::optional<VoltAmperes> va;
    std::optional<Amperes> measured_a;
    bool operator==(const PanelLegFigures&) const = default;
};

struct PanelFigures {
    std::string id;
    std::optional<System> system;
    std::vector<PanelLegFigures> legs;
    std::optional<Amperes> neutral_amps;
    std::optional<double> imbalance_percent;
    bool operator==(const PanelFigures&) const = default;
};

/// The rules that an assessment went by: edition, what local rules amend, and each option with its value.
struct RulesUsed {
    std::string edition;  ///< "NEC-2023"
    std::vector<Amendment> amendments;
    std::map<std::string, std::string> options;
};

/// All that follows from one survey: figures in file order, findings by severity, then panel, space, rule.
struct Assessment {
    std::vector<LoadFigures> circuits;
    std::vector<LoadFigures> feeders;  ///< one per panel
    std::vector<NeutralFigures> neutrals;
    std::vector<PanelFigures> panels;
    std::vector<JointFigures> joints;  ///< of outlets that were read so
    std::vector<Finding> findings;
    std::vector<Finding> accepted;    ///< taken note of; a danger stands in both
    std::vector<Assumption> assumed;  ///< by panel, those of no panel last
    RulesUsed rules;

    // What a new assessment after an edit builds on.
    std::vector<std::size_t> assumed_up_to;  ///< by panel, and of no panel: where its defaults end in `assumed`
    std::vector<PanelTotals> panel_totals;   ///< by panel
    bool is_tree = false;                    ///< no load comes to a panel by two ways
};

/// The order of findings: by severity, then panel, space, rule.
bool comes_first(const Finding&, const Finding&);

/// Pure: the same survey and book give the same assessment. `known`: panels of which nothing but their totals is known.
Assessment assess(const Network&, const RuleBook&, const KnownTotals& known = {});

}  // namespace doorcard
