// SPDX-License-Identifier: MIT
#include "desk/pasted_cells.hpp"

#include <algorithm>

#include "desk/typed_words.hpp"
#include "survey/edits/edit.hpp"

namespace doorcard {
namespace {

using Cells = std::vector<std::string>;

bool has_outside_quotes(std::string_view text, char sign) {
    bool is_quoted = false;
    for (const char c : text) {
        if (c == '"') is_quoted = !is_quoted;
        if (c == sign && !is_quoted) return true;
    }
    return false;
}

/// Cuts a text into lines of cells; a doubled quote inside quotes is a quote.
class Cutting {
public:
    explicit Cutting(char part) : part_(part) {}

    std::vector<Cells> cut(std::string_view text) {
        for (std::size_t i = 0; i < text.size(); ++i) {
            const char c = text[i];
            if (is_quoted_ && c == '"' && i + 1 < text.size() && text[i + 1] == '"')
                cell_ += text[++i];
            else if (c == '"' && (is_quoted_ || trimmed(cell_).empty()))
                is_quoted_ = !is_quoted_;
            else if (is_quoted_)
                cell_ += c;
            else
                take(c);
        }
        end_line();
        return std::move(lines_);
    }

private:
    void take(char c) {
        if (c == part_)
            end_cell();
        else if (c == '\n')
            end_line();
        else
            cell_ += c;
    }
    void end_cell() {
        line_.emplace_back(trimmed(cell_));
        cell_.clear();
    }
    void end_line() {
        end_cell();
        if (std::ranges::any_of(line_, [](const std::string& one) { return !one.empty(); }))
            lines_.push_back(std::move(line_));
        line_.clear();
    }

    char part_;
    bool is_quoted_ = false;
    std::string cell_;
    Cells line_;
    std::vector<Cells> lines_;
};

bool are_digits(const std::string& text) {
    return !text.empty() && text.find_first_not_of("0123456789") == std::string::npos;
}

bool may_be_decimals(const std::vector<Cells>& lines) {
    return std::ranges::all_of(
        lines, [](const Cells& line) { return line.size() == 2 && are_digits(line[0]) && are_digits(line[1]); });
}

}  // namespace

Outcome<std::vector<Cells>> pasted_cells(std::string_view text) {
    const char part = has_outside_quotes(text, '\t') ? '\t' : has_outside_quotes(text, ';') ? ';' : ',';
    auto lines = Cutting(part).cut(text);
    if (lines.empty()) return refused("there is nothing to paste", "copy rows of a spreadsheet first");
    if (part == ',' && may_be_decimals(lines))
        return refused("its commas may part cells, or be decimal signs",
                       "paste cells with tabs or semicolons between, or write 3.5");
    return lines;
}

}  // namespace doorcard
