// SPDX-License-Identifier: MIT
#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "base/words.hpp"
#include "desk/form.hpp"
#include "file/edit_keys.hpp"

namespace doorcard {

struct GridColumn {
    std::string key;
    Message label;
    std::string unit;
    Entry entry = Entry::text;
    std::vector<FieldChoice> choices;
    int width = 8;  ///< characters
};

struct GridRow {
    std::string address;  ///< empty: the row at the end, which adds
    std::vector<std::string> cells;
};

/// Entries of one table as rows, to be typed into and pasted over. Choices are shown by their labels.
struct Grid {
    std::string table;
    std::string panel;        ///< what a bare space number is of
    std::string scope_key{};  ///< "circuit" or "room": only entries that name `scope` there; empty: all
    std::string scope{};
    Units units = Units::feet;
    std::vector<GridColumn> columns;
    std::vector<GridRow> rows;
};

/// `panel` is the one shown: bare numbers of spaces are its own.
Grid readings_grid(const Survey&, std::string_view panel, Units, const Words&);
/// `circuit`: only what hangs on it, and what is added hangs on it too; empty: all.
Grid loads_grid(const Survey&, std::string_view panel, Units, const Words&, std::string_view circuit = {});
/// `room`: only what is in it, and what is added is in it too; empty: all.
Grid outlets_grid(const Survey&, std::string_view panel, Units, const Words&, std::string_view room = {});
Grid rooms_grid(const Survey&, std::string_view panel, Units, const Words&);
Grid sources_grid(const Survey&, std::string_view panel, Units, const Words&);
Grid trips_grid(const Survey&, std::string_view panel, Units, const Words&);
Grid photos_grid(const Survey&, std::string_view panel, Units, const Words&);

/// What was typed into a cell; the row at the end adds an entry.
Outcome<Edit> cell_typed(const Survey&, const Grid&, std::size_t row, std::size_t column, std::string_view typed,
                         const Words&);
Outcome<Edit> rows_removed(const Survey&, const Grid&, const std::vector<std::size_t>& rows);

/// A block from a spreadsheet as one edit: tabs, semicolons or commas between cells, quotes around a cell with one of
/// them. Where its first line names columns, in any of the languages, its cells go there, else to the columns from this
/// one on. Nothing is done where a cell is not understood: all that are not are named by their row.
Outcome<Edit> block_pasted(const Survey&, const Grid&, std::size_t row, std::size_t column, std::string_view text,
                           const Words&);

/// The row at the end as an entry, or the row of an entry, with these keys set; what the table needs beside is added.
Outcome<EntryEdit> row_edit(const Survey&, const Grid&, std::size_t row, std::vector<KeyEdit>);

/// What somebody says a reading is of: `5`, `2+4`, `9 N`, `MAIN A`, `panel N`, `K3`, or an address. Nullopt where
/// nothing is named so.
std::optional<std::string> address_said(const Survey&, std::string_view panel, std::string_view said);
/// The same the other way: how it is said in a cell.
std::string said_of(const Survey&, std::string_view panel, const std::string& address);

}  // namespace doorcard
