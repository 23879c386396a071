// SPDX-License-Identifier: MIT
#pragma once
#include <iosfwd>
#include <string>
#include <vector>

#include "cli/terminal.hpp"

namespace doorcard {

/// A table on a terminal: columns as wide as what stands in them, two blanks apart. The one text column takes the room
/// that is left and wraps; where the terminal is too narrow for it, columns of the highest rank are left out first.
class TextTable {
public:
    enum class Kind { figure, word, text };  ///< at its right, at its left, at its left and wrapped
    struct Column {
        std::string heading;
        Kind kind = Kind::figure;
        int rank = 0;  ///< 0: never left out
    };

    explicit TextTable(std::vector<Column> columns) : columns_(std::move(columns)) {}
    /// A cell per column.
    void add(std::vector<std::string> cells) { rows_.push_back(std::move(cells)); }
    void write(std::ostream&, const Terminal&) const;

private:
    struct Layout {
        std::vector<std::size_t> columns;  ///< those that are shown
        std::vector<int> widths;           ///< of each of these
        int lacking = 0;                   ///< what the text would need more
    };
    int natural_width(std::size_t column) const;
    Layout laid_out(std::vector<std::size_t> columns, int columns_of_terminal) const;
    Layout layout(int columns_of_terminal) const;
    void write_row(std::ostream&, const Layout&, const std::vector<std::string>& cells) const;

    std::vector<Column> columns_;
    std::vector<std::vector<std::string>> rows_;
};

}  // namespace doorcard
