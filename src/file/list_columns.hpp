// SPDX-License-Identifier: MIT
#pragma once
#include <map>
#include <optional>
#include <string>
#include <tl/expected.hpp>
#include <utility>
#include <vector>

#include "file/list_table.hpp"

namespace doorcard {

/// What a column of a list holds.
enum class Column {
    space,
    description,
    amps,
    poles,
    type,
    guards,
    room,
    wire,
    va,
    kva,
    watts,
    kilowatts,
    leg,
    panel,
    note,
    ignored,
};

/// "space", "description" ...: the words of `--columns`.
std::optional<Column> column_named(std::string_view word);
std::string column_names();

/// A column that somebody named: the word at its head (or its number, from 1 on), and what it holds.
struct NamedColumn {
    std::string head;
    Column column;
};
using NamedColumns = std::vector<NamedColumn>;

/// `Ckt=space,Serves=description`; the fault, where it is not of that form.
tl::expected<NamedColumns, std::string> named_columns(std::string_view text);

/// Where one half of a row has its columns; `others` are those that doorcard has no key for, by head.
struct Side {
    std::map<Column, std::size_t> at;
    std::vector<std::pair<std::string, std::size_t>> others;
};

/// The halves of a row: one, or the left and the right of a two-sided list.
using Sides = std::vector<Side>;

/// Whether a list has a column of that head; a number is taken as it is.
bool is_named(const std::vector<ListRow>&, const NamedColumn&);

/// The sides that a header row says; nullopt where the row is none.
std::optional<Sides> sides_of_header(const ListRow&, const NamedColumns&);

/// Without a header: space, description, amperes, in this order or mirrored, once or twice, whichever most rows fit.
Sides sides_of_rows(const std::vector<ListRow>&, const NamedColumns&);

}  // namespace doorcard
