// SPDX-License-Identifier: MIT
#pragma once
#include "file/complaints.hpp"
#include "file/toml_text.hpp"
#include "rules/book.hpp"

namespace doorcard {

// What local rules say of a table, against the table: which row and column they mean, or a complaint.

/// The one row whose cells are as the members of `row` say; a complaint where none or several are.
std::optional<std::size_t> row_wanted(const RuleTable&, const TomlMember& row, const std::vector<TomlMember>& wanted,
                                      Complaints&);
/// The column to change: the one named, or the only one that the row does not name; never the first.
std::optional<std::size_t> column_wanted(const RuleTable&, const TomlMember& row, const std::vector<TomlMember>& wanted,
                                         const TomlMember* column, Complaints&);

const TomlMember* find_member(const std::vector<TomlMember>&, std::string_view key);
std::optional<Cell> cell_of(TomlNode);  ///< nullopt: neither text nor number
std::string words_of(const Cell&);
/// A text that is not empty; else a complaint, and "".
std::string text_in(const TomlMember&, Complaints&);
/// 'did you mean "x"?' where a known word is near, else what is given.
std::string did_you_mean(std::string_view written, const std::vector<std::string>& known, const std::string& otherwise);

}  // namespace doorcard
