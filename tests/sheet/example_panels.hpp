// SPDX-License-Identifier: MIT
#pragma once
#include "survey/survey.hpp"

// Surveys of an invented house, built as values.
namespace example {

/// Things are added one by one, then made into a survey.
struct Building {
    doorcard::Heading heading;
    std::vector<doorcard::Source> sources;
    std::vector<doorcard::Panel> panels;
    std::vector<doorcard::Breaker> breakers;
    std::vector<doorcard::Circuit> circuits;
    std::vector<doorcard::Room> rooms;
    std::vector<doorcard::Outlet> outlets;
    std::vector<doorcard::Load> loads;

    doorcard::Breaker& breaker(const std::string& panel, std::vector<int> spaces, double amps, std::vector<char> halves = {});
    /// A circuit on the last breaker, with this directory text, proved by switching.
    doorcard::Circuit& circuit(const std::string& id, const std::string& purpose, const std::string& how = "switching");
    /// The last breaker with a circuit of this text.
    void row(std::vector<int> spaces, double amps, const std::string& purpose, const std::string& how = "switching");
    doorcard::Outlet& outlet(const std::string& id, const std::string& circuit, const std::string& room, doorcard::OutletKind kind);
    doorcard::Survey survey() const;
};

Building empty_house(int spaces);
doorcard::Survey house();                      ///< 24 spaces, everything that a card can show
doorcard::Survey small_panel();                ///< 8 spaces
doorcard::Survey full_panel(int spaces);       ///< every space a circuit, long texts among them
doorcard::Survey tandems();                    ///< halves, quads, a two-pole over two halves
doorcard::Survey column(int spaces);           ///< one column of breakers
doorcard::Survey long_texts(int spaces);       ///< every text runs over several lines

}  // namespace example
