// SPDX-License-Identifier: MIT
#include "rules/wanted_cell.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cmath>

#include "base/nearest_word.hpp"

namespace doorcard {
namespace {

bool is_number(TomlNode node) { return node.is(TomlNode::Kind::whole) || node.is(TomlNode::Kind::number); }

bool same(const Cell& a, const Cell& b) {
    if (a.index() != b.index()) return false;
    if (const double* number = std::get_if<double>(&a))
        return std::abs(*number - std::get<double>(b)) <= 1e-9 * std::abs(*number);
    return a == b;
}

std::string row_words(const RuleTable& table, std::size_t row) {
    std::vector<std::string> cells;
    for (std::size_t c = 0; c < table.columns.size(); ++c)
        cells.push_back(fmt::format("{} {}", table.columns[c], words_of(table.rows[row][c])));
    return fmt::format("{}", fmt::join(cells, ", "));
}

/// Keeps of `rows` those with this cell; false, with a complaint, where none is left.
bool keep_rows(const RuleTable& table, const TomlMember& wanted, std::vector<std::size_t>& rows,
               Complaints& complaints) {
    const auto column = std::ranges::find(table.columns, wanted.key);
    if (column == table.columns.end()) {
        complaints.add(
            wanted.place, fmt::format("{} has no column \"{}\"", table.id, wanted.key),
            did_you_mean(wanted.key, table.columns, fmt::format("it has {}", fmt::join(table.columns, ", "))));
        return false;
    }
    const auto c = static_cast<std::size_t>(column - table.columns.begin());
    const std::optional<Cell> cell = cell_of(wanted.node);
    if (!cell || cell->index() != table.rows.front()[c].index()) {
        const bool text = table.rows.front()[c].index() == 1;
        complaints.add(wanted.node.place(), fmt::format("\"{}\" is no {}", wanted.key, text ? "text" : "number"),
                       fmt::format("write it {} quotes, as the table has it", text ? "in" : "without"));
        return false;
    }
    std::vector<std::string> there;
    for (const std::size_t row : rows)
        if (std::string words = words_of(table.rows[row][c]); std::ranges::find(there, words) == there.end())
            there.push_back(std::move(words));
    std::erase_if(rows, [&](std::size_t row) { return !same(table.rows[row][c], *cell); });
    if (rows.empty())
        complaints.add(wanted.node.place(),
                       fmt::format("no row of {} has {} {}", table.id, wanted.key, words_of(*cell)),
                       fmt::format("there is {}", fmt::join(there, ", ")));
    return !rows.empty();
}

}  // namespace

const TomlMember* find_member(const std::vector<TomlMember>& members, std::string_view key) {
    const auto found = std::ranges::find(members, key, &TomlMember::key);
    return found == members.end() ? nullptr : &*found;
}

std::optional<Cell> cell_of(TomlNode node) {
    if (node.is(TomlNode::Kind::text)) return node.text();
    if (is_number(node)) return node.number();
    return std::nullopt;
}

std::string words_of(const Cell& cell) {
    if (const double* number = std::get_if<double>(&cell)) return fmt::format("{:g}", *number);
    return std::get<std::string>(cell);
}

std::string did_you_mean(std::string_view written, const std::vector<std::string>& known,
                         const std::string& otherwise) {
    NearestWord nearest(written);
    for (const std::string& word : known) nearest.offer(word);
    if (const auto meant = nearest.meant()) return fmt::format("did you mean \"{}\"?", *meant);
    return otherwise;
}

std::string text_in(const TomlMember& member, Complaints& complaints) {
    if (member.node.is(TomlNode::Kind::text) && !member.node.text().empty()) return member.node.text();
    complaints.add(member.node.place(), fmt::format("\"{}\" is not a text", member.key),
                   "write it in quotes, not empty");
    return "";
}

std::optional<std::size_t> row_wanted(const RuleTable& table, const TomlMember& row,
                                      const std::vector<TomlMember>& wanted, Complaints& complaints) {
    if (wanted.empty()) {
        complaints.add(row.node.place(), "\"row\" says nothing",
                       fmt::format("columns: {}", fmt::join(table.columns, ", ")));
        return std::nullopt;
    }
    std::vector<std::size_t> rows(table.rows.size());
    for (std::size_t i = 0; i < rows.size(); ++i) rows[i] = i;
    for (const TomlMember& one : wanted)
        if (!keep_rows(table, one, rows, complaints)) return std::nullopt;
    if (rows.size() == 1) return rows.front();
    std::vector<std::string> which;
    which.reserve(rows.size());
    for (const std::size_t i : rows) which.push_back(row_words(table, i));
    complaints.add(row.node.place(), fmt::format("{} rows of {} are so", rows.size(), table.id),
                   fmt::format("say more of the one meant: {}", fmt::join(which, "; ")));
    return std::nullopt;
}

std::optional<std::size_t> column_wanted(const RuleTable& table, const TomlMember& row,
                                         const std::vector<TomlMember>& wanted, const TomlMember* column,
                                         Complaints& complaints) {
    std::vector<std::string> free;
    for (std::size_t c = 1; c < table.columns.size(); ++c)
        if (find_member(wanted, table.columns[c]) == nullptr) free.push_back(table.columns[c]);
    if (column == nullptr && free.size() == 1) return table.column(free.front());
    if (column == nullptr) {
        complaints.add(row.place, fmt::format("{} columns are left to change", free.size()),
                       fmt::format("say more of the row, or write column = one of {}", fmt::join(free, ", ")));
        return std::nullopt;
    }
    const std::string name = text_in(*column, complaints);
    if (name.empty()) return std::nullopt;
    if (std::ranges::find(free, name) != free.end()) return table.column(name);
    complaints.add(column->node.place(), fmt::format("\"{}\" is no column to change", name),
                   did_you_mean(name, free, fmt::format("one of {}", fmt::join(free, ", "))));
    return std::nullopt;
}

}  // namespace doorcard
