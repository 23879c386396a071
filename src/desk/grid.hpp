// SPDX-License-Identifier: MIT
#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "base/words.hpp"
#include "desk/form.hpp"

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
    std::string panel;  ///< what a bare space number is of
    std::vector<GridColumn> columns;
    std::vector<GridRow> rows;
};

/// `panel` is the one shown: bare numbers of spaces are its own.
Grid readings_grid(const Survey&, std::string_view panel, Units, const Words&);
Grid loads_grid(const Survey&, std::string_view panel, Units, const Words&);
Grid outlets_grid(const Survey&, std::string_view panel, Units, const Words&);
Grid photos_grid(const Survey&, std::string_view panel, Units, const Words&);

/// What was typed into a cell; the row at the end adds an entry.
Outcome<Edit> cell_typed(const Survey&, const Grid&, std::size_t row, std::size_t column, std::string_view typed,
                         const Words&);
Outcome<Edit> rows_removed(const Survey&, const Grid&, const std::vector<std::size_t>& rows);

/// A block from a spreadsheet as one edit: tabs, semicolons or commas between cells. Where its first line names columns
/// its cells go there, else to the columns from this one on. Nothing is done where a cell is not understood: all that
/// are not are named by their row.
Outcome<Edit> block_pasted(const Survey&, const Grid&, std::size_t row, std::size_t column, std::string_view text,
                           const Words&);

/// What somebody says a reading is of: `5`, `2+4`, `9 N`, `MAIN A`, `panel N`, `K3`, or an address. Nullopt where
/// nothing is named so.
std::optional<std::string> address_said(const Survey&, std::string_view panel, std::string_view said);
/// The same the other way: how it is said in a cell.
std::string said_of(const Survey&, std::string_view panel, const std::string& address);

}  // namespace doorcard
