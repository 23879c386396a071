// SPDX-License-Identifier: MIT
#pragma once
#include <functional>

#include "file/field.hpp"

namespace doorcard {

/// Everything of a survey file while it is being read: rows that may still be changed.
struct Draft {
    Heading heading;
    std::vector<Dwelling> dwellings;
    std::vector<Occupancy> occupancies;
    std::optional<Grounding> grounding;
    std::vector<Source> sources;
    std::vector<Panel> panels;
    std::vector<Breaker> breakers;
    std::vector<Circuit> circuits;
    std::vector<Room> rooms;
    std::vector<Outlet> outlets;
    std::vector<Load> loads;
    std::vector<Managed> managed;
    std::vector<Reading> readings;
    std::vector<Recording> recordings;
    std::vector<Waveform> waveforms;
    std::vector<Demand> demands;
    std::vector<Limit> limits;
    std::vector<Round> rounds;
    std::optional<Mapping> mapping;
    std::vector<Trip> trips;
    std::vector<Hunt> hunts;
    std::vector<Trial> trials;
    std::vector<Accepted> accepted;
    std::vector<Photo> photos;
};

/// How a table of the file is written: `[name]`, `[[name]]`, or either.
enum class Shape { one, many, one_or_many };

/// A table of the survey file and its keys: how its entries are got at while a file is read, and in a survey.
struct KeyTable {
    std::string_view name;
    Shape shape;
    std::string_view meaning;
    FieldList keys;
    void (*make_rows)(Draft&, std::size_t count);
    void* (*row)(Draft&, std::size_t index);
    std::size_t (*count)(const Survey&);
    const void* (*thing)(const Survey&, std::size_t index);
    void (*alter)(Survey&, std::size_t index, const std::function<void(void*)>& change);
    void (*add)(Survey&);  ///< an entry without keys, behind the others
    void (*erase)(Survey&, std::size_t index);

    std::string header() const;  ///< "[[breaker]]", "[survey]"
};

/// What the entries of a table are named by; empty where they have no id.
std::string_view id_of(const Survey&, const KeyTable&, std::size_t row);

/// All tables, in the order of the contract.
std::span<const KeyTable> all_tables();
const KeyTable& table_named(std::string_view name);
/// Null where there is no such table.
const KeyTable* find_table(std::string_view name);

// The lists, by noun.
FieldList survey_keys();
FieldList dwelling_keys();
FieldList occupancy_keys();
FieldList grounding_keys();
FieldList source_keys();
FieldList panel_keys();
FieldList breaker_keys();
FieldList circuit_keys();
FieldList room_keys();
FieldList outlet_keys();
FieldList load_keys();
FieldList managed_keys();
FieldList reading_keys();
FieldList recording_keys();
FieldList recording_column_keys();
FieldList waveform_keys();
FieldList demand_keys();
FieldList limit_keys();
FieldList round_keys();
FieldList mapping_keys();
FieldList trip_keys();
FieldList hunt_keys();
FieldList trial_keys();
FieldList accepted_keys();
FieldList photo_keys();
/// What may be measured: names of the numeric keys of readings, and of a recording's figures (for `[[limit]]`).
WordList measured_keys();

}  // namespace doorcard
