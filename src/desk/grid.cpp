// SPDX-License-Identifier: MIT
#include "desk/grid.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "base/folded.hpp"
#include "desk/entry_keys.hpp"
#include "desk/field_typed.hpp"
#include "desk/form_order.hpp"

namespace doorcard {
namespace {

struct Wanted {
    std::string_view key;
    int width;
};

GridColumn column_of(const Survey& survey, const Grid& grid, const Wanted& wanted) {
    const FieldList keys = table_named(grid.table).keys;
    const MeasureKeys measure = measure_keys(keys, wanted.key);
    const std::string key =
        measure.metres.empty() || grid.units == Units::feet ? std::string(wanted.key) : measure.metres;
    GridColumn column{key,
                      key == "id" ? Message{tr("Name"), {}} : label_of(grid.table, wanted.key),
                      unit_of(grid.table, key),
                      entry_kind(grid.table, key),
                      choices_of(survey, grid.table, key),
                      wanted.width};
    if (column.entry == Entry::choice && column.choices.empty()) column.entry = Entry::text;
    return column;
}

/// A value as a cell shows it: choices by their label.
std::string shown(const GridColumn& column, std::string value, const Words& words) {
    if (value.empty()) return value;
    for (const FieldChoice& choice : column.choices)
        if (choice.value == value) return words.say(choice.label);
    return value;
}

bool is_in_scope(const Grid& grid, const EntryKeys& entry) {
    return grid.scope_key.empty() || value_read(entry, grid.scope_key) == grid.scope;
}

Grid filled(const Survey& survey, Grid grid, std::initializer_list<Wanted> wanted, const Words& words) {
    for (const Wanted& one : wanted) grid.columns.push_back(column_of(survey, grid, one));
    const KeyTable& table = table_named(grid.table);
    const TypingPlace place{grid.panel, grid.units};
    for (std::size_t at = 0; at < table.count(survey); ++at) {
        const EntryKeys entry{table.keys, table.thing(survey, at)};
        if (!is_in_scope(grid, entry)) continue;
        const std::string_view id = id_of(survey, table, at);
        GridRow row{grid.table + ":" + (id.empty() ? fmt::format("{}", at + 1) : std::string(id)), {}};
        for (const GridColumn& column : grid.columns)
            row.cells.push_back(shown(column, value_shown(survey, entry, column.key, place), words));
        grid.rows.push_back(std::move(row));
    }
    grid.rows.push_back({"", std::vector<std::string>(grid.columns.size())});
    return grid;
}

Grid grid_of(std::string_view table, std::string_view panel, Units units) {
    Grid grid;
    grid.table = table, grid.panel = panel, grid.units = units;
    return grid;
}

}  // namespace

Grid readings_grid(const Survey& survey, std::string_view panel, Units units, const Words& words) {
    return filled(survey, grid_of("reading", panel, units),
                  {{"of", 9},
                   {"amps", 9},
                   {"volts", 8},
                   {"amps_min", 10},
                   {"amps_max", 10},
                   {"hours", 9},
                   {"leakage_ma", 9},
                   {"volts_ground", 10},
                   {"volts_neutral_ground", 10},
                   {"volts_unloaded", 10},
                   {"test_load_a", 10},
                   {"temp_c", 10},
                   {"noise", 8},
                   {"at", 20},
                   {"together", 10},
                   {"instrument", 14},
                   {"by", 6},
                   {"note", 24}},
                  words);
}

Grid loads_grid(const Survey& survey, std::string_view panel, Units units, const Words& words,
                std::string_view circuit) {
    Grid grid = grid_of("load", panel, units);
    if (!circuit.empty()) grid.scope_key = "circuit", grid.scope = circuit;
    return filled(survey, std::move(grid),
                  {{"title", 22},
                   {"circuit", 18},
                   {"outlet", 12},
                   {"count", 8},
                   {"watts", 9},
                   {"va", 9},
                   {"amps", 9},
                   {"hp", 9},
                   {"volts", 7},
                   {"duty", 14},
                   {"continuous", 12},
                   {"connection", 9},
                   {"note", 28}},
                  words);
}

Grid outlets_grid(const Survey& survey, std::string_view panel, Units units, const Words& words,
                  std::string_view room) {
    Grid grid = grid_of("outlet", panel, units);
    if (!room.empty()) grid.scope_key = "room", grid.scope = room;
    return filled(survey, std::move(grid),
                  {{"id", 6},
                   {"room", 12},
                   {"kind", 11},
                   {"label", 18},
                   {"circuit", 22},
                   {"guards", 10},
                   {"wired", 13},
                   {"place", 10},
                   {"upstream", 9},
                   {"run_ft", 10},
                   {"keep_on", 12}},
                  words);
}

Grid rooms_grid(const Survey& survey, std::string_view panel, Units units, const Words& words) {
    return filled(survey, grid_of("room", panel, units),
                  {{"id", 12}, {"title", 22}, {"floor", 8}, {"place", 14}, {"note", 28}}, words);
}

Grid sources_grid(const Survey& survey, std::string_view panel, Units units, const Words& words) {
    return filled(survey, grid_of("source", panel, units),
                  {{"id", 12},
                   {"title", 18},
                   {"kind", 12},
                   {"system", 22},
                   {"amps", 8},
                   {"fault_ka", 10},
                   {"through", 18},
                   {"output_a", 8},
                   {"interlock", 20},
                   {"starts", 10},
                   {"disconnect", 20},
                   {"labelled", 10},
                   {"note", 28}},
                  words);
}

Grid trips_grid(const Survey& survey, std::string_view panel, Units units, const Words& words) {
    return filled(survey, grid_of("trip", panel, units),
                  {{"of", 9},
                   {"at", 20},
                   {"running", 20},
                   {"just_before", 16},
                   {"device_says", 14},
                   {"bare_reset", 14},
                   {"resets", 14},
                   {"signs", 14},
                   {"weather", 9},
                   {"new_since", 16},
                   {"by", 6},
                   {"note", 28}},
                  words);
}

Grid photos_grid(const Survey& survey, std::string_view panel, Units units, const Words& words) {
    return filled(survey, grid_of("photo", panel, units), {{"file", 28}, {"of", 12}, {"at", 20}, {"note", 30}}, words);
}

}  // namespace doorcard
