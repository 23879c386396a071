// SPDX-License-Identifier: MIT
#include "cli/text_table.hpp"

#include <algorithm>
#include <numeric>
#include <ostream>

namespace doorcard {
namespace {

constexpr int gap = 2;
constexpr int left_edge = 1;
constexpr int least_text = 18;     // narrower than this, the columns beside the text give way
constexpr int narrowest_text = 8;  // where none is left that may

/// Lines of at most this width; a word that is longer is cut into pieces.
std::vector<std::string> lines_of(const std::string& text, int width) {
    std::vector<std::string> lines;
    for (std::string line : wrapped(text, width)) {
        while (width_of(line) > width) {
            const std::string head = first_columns(line, width);
            lines.push_back(head);
            line.erase(0, head.size());
        }
        lines.push_back(line);
    }
    return lines;
}

}  // namespace

int TextTable::natural_width(std::size_t column) const {
    int width = width_of(columns_[column].heading);
    for (const auto& row : rows_) width = std::max(width, width_of(row[column]));
    return width;
}

/// Widths of these columns; the text column has what is left.
TextTable::Layout TextTable::laid_out(std::vector<std::size_t> columns, int columns_of_terminal) const {
    Layout shown{std::move(columns), {}, 0};
    int room = columns_of_terminal - left_edge - gap * (static_cast<int>(shown.columns.size()) - 1);
    int wanted = 0;
    for (const std::size_t c : shown.columns) {
        const bool text = columns_[c].kind == Kind::text;
        if (text) wanted = natural_width(c);
        shown.widths.push_back(text ? 0 : natural_width(c));
        room -= shown.widths.back();
    }
    for (std::size_t i = 0; i < shown.columns.size(); ++i)
        if (columns_[shown.columns[i]].kind == Kind::text)
            shown.widths[i] = std::min(wanted, std::max(narrowest_text, room));
    shown.lacking = std::min(wanted, least_text) - room;
    return shown;
}

TextTable::Layout TextTable::layout(int columns_of_terminal) const {
    std::vector<std::size_t> columns(columns_.size());
    std::iota(columns.begin(), columns.end(), std::size_t{0});
    const auto more_needed = [&](std::size_t a, std::size_t b) { return columns_[a].rank < columns_[b].rank; };
    for (;;) {
        Layout shown = laid_out(columns, columns_of_terminal);
        const auto least = std::max_element(columns.begin(), columns.end(), more_needed);
        if (shown.lacking <= 0 || columns_[*least].rank == 0) return shown;
        columns.erase(least);
    }
}

void TextTable::write_row(std::ostream& out, const Layout& shown, const std::vector<std::string>& cells) const {
    std::vector<std::vector<std::string>> lines;
    std::size_t height = 1;
    for (std::size_t i = 0; i < shown.columns.size(); ++i) {
        lines.push_back(lines_of(cells[shown.columns[i]], shown.widths[i]));
        height = std::max(height, lines.back().size());
    }
    for (std::size_t at = 0; at < height; ++at) {
        std::string line(left_edge, ' ');
        for (std::size_t i = 0; i < shown.columns.size(); ++i) {
            const std::string cell = at < lines[i].size() ? lines[i][at] : "";
            const bool figure = columns_[shown.columns[i]].kind == Kind::figure;
            line += figure ? padded_left(cell, shown.widths[i]) : padded(cell, shown.widths[i]);
            if (i + 1 < shown.columns.size()) line += std::string(gap, ' ');
        }
        line.erase(line.find_last_not_of(' ') + 1);
        out << line << '\n';
    }
}

void TextTable::write(std::ostream& out, const Terminal& terminal) const {
    const Layout shown = layout(terminal.columns);
    std::vector<std::string> headings;
    for (const Column& column : columns_) headings.push_back(column.heading);
    write_row(out, shown, headings);
    for (const auto& row : rows_) write_row(out, shown, row);
}

}  // namespace doorcard
