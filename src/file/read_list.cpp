// SPDX-License-Identifier: MIT
#include "file/read_list.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "file/list_breakers.hpp"
#include "file/list_survey.hpp"
#include "file/list_text.hpp"
#include "file/read_schedule_rows.hpp"

namespace doorcard {
namespace {

constexpr std::size_t most_rows = 100'000;

bool has_header(const std::vector<ListRow>& rows, const NamedColumns& named) {
    constexpr std::size_t title_lines = 40;  // before a header
    for (std::size_t i = 0; i < std::min(rows.size(), title_lines); ++i)
        if (sides_of_header(rows[i], named)) return true;
    return false;
}

struct ListTable {
    std::vector<ListRow> rows;
    bool has_header = false;
    char separator = '\0';  ///< none: plain lines
};

/// `sep=;`, as spreadsheets write it into the first line.
std::optional<char> said_separator(const std::string& text) {
    const bool said =
        text.size() > 4 && text.starts_with("sep=") && std::string_view(",;\t").find(text[4]) != std::string_view::npos;
    return said ? std::optional(text[4]) : std::nullopt;
}

ListTable table_of(const std::string& text, const NamedColumns& named) {
    std::vector<char> separators{',', ';', '\t'};
    if (const auto said = said_separator(text)) separators = {*said};
    for (const char separator : separators) {
        auto rows = csv_rows(text, separator);
        if (has_header(rows, named)) return {std::move(rows), true, separator};
    }
    if (looks_plain(text)) return {plain_rows(text), false, '\0'};
    const char separator = separators.size() == 1 ? separators[0] : separator_of(text);
    return {separator == '\0' ? plain_rows(text) : csv_rows(text, separator), false, separator};
}

/// The rows one after the other; a header may come again on a second page, with other columns.
class RowsReader {
public:
    RowsReader(const ListTable& table, const ListOptions& options)
        : options_(options),
          panel_(options.panel.value_or("MAIN")),
          breakers_(options.spaces),
          under_header_(table.has_header) {
        const bool plain = table.separator == '\0' && options.columns.empty();
        if (!table.has_header)
            set_sides(plain ? Sides{{{{Column::space, 0}, {Column::description, 1}}, {}}}
                            : sides_of_rows(table.rows, options.columns));
    }

    void read(const ListRow& row) {
        if (auto sides = under_header_ ? sides_of_header(row, options_.columns) : std::nullopt)
            return set_sides(std::move(*sides));
        if (!started_ && is_title(row)) return;
        for (ListSideReader& reader : readers_) keep(reader.read(row));
    }

    ListRead finished() {
        for (Complaint& complaint : breakers_.finish()) {
            refuse(std::move(complaint));
            --read_;
        }
        std::ranges::stable_sort(refused_, {}, &Complaint::place);
        return {survey_of_list(breakers_, options_), read_, std::move(refused_), {}};
    }

private:
    void set_sides(Sides sides) {
        readers_.clear();
        for (Side& side : sides) readers_.emplace_back(std::move(side), panel_);
    }

    /// Above the first row that names a space, without a header to say where the list begins.
    bool is_title(const ListRow& row) {
        if (under_header_) return readers_.empty();
        started_ = std::ranges::any_of(row, [](const ListCell& cell) { return are_spaces(cell.text); });
        return !started_;
    }

    void keep(tl::expected<std::optional<ListEntry>, Complaint> entry) {
        if (!entry) return refuse(std::move(entry.error()));
        if (!*entry) return;
        if (auto wrong = breakers_.add(**entry)) return refuse(std::move(*wrong));
        ++read_;
    }
    void refuse(Complaint complaint) { refused_.push_back(std::move(complaint)); }

    const ListOptions& options_;
    std::string panel_;
    ListBreakers breakers_;
    bool under_header_;
    bool started_ = false;
    std::vector<ListSideReader> readers_;
    std::size_t read_ = 0;
    std::vector<Complaint> refused_;
};

ListRead refused(Complaint complaint) {
    ListRead read;
    read.refused.push_back(std::move(complaint));
    return read;
}

std::vector<std::string> unknown_columns(const std::vector<ListRow>& rows, const NamedColumns& named) {
    std::vector<std::string> unknown;
    for (const NamedColumn& column : named)
        if (!is_named(rows, column)) unknown.push_back(column.head);
    return unknown;
}

}  // namespace

ListRead read_list(std::string_view bytes, const ListOptions& options) {
    const auto text = list_text(bytes);
    if (!text) return refused(text.error().front());
    const ListTable table = table_of(*text, options.columns);
    if (table.rows.size() > most_rows)
        return refused({table.rows[most_rows].front().place, "more than 100,000 rows, which no panel's list has",
                        "name the list of panels"});
    if (!table.rows.empty() && is_schedule_header(table.rows.front()))
        return read_schedule_rows(csv_rows(*text, table.separator, false), options);
    RowsReader reader(table, options);
    for (const ListRow& row : table.rows) reader.read(row);
    ListRead read = reader.finished();
    read.unknown_columns = unknown_columns(table.rows, options.columns);
    return read;
}

}  // namespace doorcard
