// SPDX-License-Identifier: MIT
#pragma once
#include "survey/breaker.hpp"
#include "survey/circuit.hpp"
#include "survey/heading.hpp"
#include "survey/hunting.hpp"
#include "survey/load.hpp"
#include "survey/outlet.hpp"
#include "survey/panel.hpp"
#include "survey/reading.hpp"
#include "survey/records.hpp"
#include "survey/table.hpp"

namespace doorcard {

/// One survey as its file says it: flat lists of things that name each other by id. A value: copy it, compare it, keep
/// it. A survey that came out of `read_survey` has no dangling references and no cycles (contract 1, 'Laws of the
/// file').
struct Survey {
    Heading heading;
    Table<Dwelling> dwellings;
    Table<Occupancy> occupancies;
    std::optional<Grounding> grounding;
    Table<Source> sources;
    Table<Panel> panels;
    Table<Breaker> breakers;
    Table<Circuit> circuits;
    Table<Room> rooms;
    Table<Outlet> outlets;
    Table<Load> loads;
    Table<Managed> managed;
    Table<Reading> readings;
    Table<Recording> recordings;
    Table<Waveform> waveforms;
    Table<Demand> demands;
    Table<Limit> limits;
    Table<Round> rounds;
    std::optional<Mapping> mapping;
    Table<Trip> trips;
    Table<Hunt> hunts;
    Table<Trial> trials;
    Table<Accepted> accepted;
    Table<Photo> photos;

    bool operator==(const Survey&) const = default;
};

}  // namespace doorcard
