// SPDX-License-Identifier: MIT
#pragma once
#include "assess/assessment.hpp"
#include "assess/circuit_load.hpp"
#include "assess/panel_sums.hpp"
#include "assess/readings.hpp"

namespace doorcard {

/// What the rules are put to: the network, the book, and all that was reckoned of them. Held by reference: it lives as
/// long as one assessment.
struct Reckoned {
    const Network& network;
    const RuleBook& book;
    const Readings& readings;
    PlacedLoads placed{};
    std::vector<CircuitDemand> demands{};       ///< by circuit
    std::vector<Measured> measured{};           ///< by circuit
    std::vector<Measured> measured_breakers{};  ///< by breaker: its own readings
    std::vector<PanelTotals> panel_totals{};    ///< by panel: its own loads and all downstream
    bool is_tree = false;                       ///< no load comes to a panel by two ways
    std::vector<LegSums> feeder_sums{};         ///< by panel: the currents in its feeding conductors
    std::vector<Measured> measured_feeders{};   ///< by panel
    std::vector<LoadFigures> circuits{};        ///< by circuit
    std::vector<LoadFigures> feeders{};         ///< by panel
    std::vector<NeutralFigures> neutrals{};     ///< as network.neutrals()
    std::vector<LegSums> neutral_sums{};        ///< likewise: the loads of its circuits
    std::vector<PanelFigures> panels{};
    std::vector<JointFigures> joints{};
};

/// `known`: totals of panels whose loads need not be looked at.
Reckoned reckon(const Network&, const RuleBook&, const Readings&, const KnownTotals& known = {});

/// The smallest rating of these breakers; nullopt where none has one.
std::optional<Amperes> smallest_rating(const Network&, const std::vector<std::size_t>& breakers);
std::optional<Amperes> largest_rating(const Network&, const std::vector<std::size_t>& breakers);

// The parts of `reckon`, in the order in which they build on one another.
void reckon_circuits(Reckoned&);
void reckon_panels(Reckoned&, const KnownTotals&);  ///< panels and feeders
void reckon_neutrals(Reckoned&);
void reckon_joints(Reckoned&);

}  // namespace doorcard
