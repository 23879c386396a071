// SPDX-License-Identifier: MIT
#pragma once
#include "network/feeds_graph.hpp"
#include "network/network.hpp"
#include "network/panel_supply.hpp"

namespace doorcard {

using Positions = std::vector<std::size_t>;

/// What a Network holds: positions both ways along every reference of the survey, the legs, and the graph.
struct Network::Body {
    Survey survey;
    Supplies supplies;

    Positions panel_of;                               // by breaker; panels.size() where there is none
    std::vector<Positions> breakers_in;               // by panel
    std::vector<Positions> panels_fed_by;             // by breaker
    std::vector<Positions> breakers_feeding;          // by panel
    std::vector<Positions> breakers_of, circuits_on;  // by circuit; by breaker
    std::vector<Positions> circuits_at, outlets_on;   // by outlet; by circuit
    std::vector<Positions> loads_at, loads_on;        // by outlet; by circuit
    std::vector<Positions> opened_with;               // by breaker
    std::vector<std::string> circuit_legs;
    std::vector<std::optional<Volts>> circuit_volts;
    std::vector<std::vector<Hot>> circuit_hots;
    std::vector<SharedNeutral> neutrals;
    std::vector<bool> in_occupancy;  // by panel

    std::vector<Feed> feeds;
    std::unique_ptr<FeedsGraph> graph;
    Positions panels_from_the_top;
};

}  // namespace doorcard
