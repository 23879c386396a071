// SPDX-License-Identifier: MIT
#pragma once
#include <span>
#include <string_view>
#include <vector>

#include "base/place.hpp"
#include "file/keys.hpp"

namespace doorcard {

/// Where a value stands that later checks look at: which row of its table, the places of key and value (of a list, a
/// mark for each of its elements), and its text, which lives as long as the TomlText.
struct Mark {
    std::uint32_t row = 0;
    Place key;
    Place value;
    std::string_view text;
    bool in_list = false;
};

/// The marks of one table: of each of its keys by row ascending, and where each entry begins.
struct TableMarks {
    std::vector<Place> entries;
    std::vector<std::vector<Mark>> by_field;
};

/// The marks of a file, by table and key.
class Marks {
public:
    Marks();
    TableMarks& of(const KeyTable& table) { return tables_[index(table)]; }
    const TableMarks& of(const KeyTable& table) const { return tables_[index(table)]; }
    const std::vector<Place>& entries(std::string_view table) const { return of(table_named(table)).entries; }
    /// All marks of a key.
    std::span<const Mark> of(std::string_view table, std::string_view key) const;

private:
    static std::size_t index(const KeyTable& table) { return static_cast<std::size_t>(&table - all_tables().data()); }
    std::vector<TableMarks> tables_;
};

/// Those of one row among the marks of a key; empty where the row lacks the key.
std::span<const Mark> of_row(std::span<const Mark>, std::size_t row);

}  // namespace doorcard
