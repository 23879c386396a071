// SPDX-License-Identifier: MIT
#include "desk/grid.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "base/folded.hpp"
#include "desk/entry_keys.hpp"
#include "desk/new_ids.hpp"

namespace doorcard {
namespace {

struct Wanted {
    std::string_view key;
    int width;
};

std::vector<GridColumn> columns_of(const Survey& survey, std::string_view table, std::initializer_list<Wanted> wanted) {
    std::vector<GridColumn> columns;
    for (const auto& [key, width] : wanted)
        columns.push_back({std::string(key), key == "id" ? Message{tr("Name"), {}} : label_of(table, key),
                           unit_of(table, key), entry_kind(table, key), choices_of(survey, table, key), width});
    return columns;
}

/// A value as a cell shows it: choices by their label, what a reading is of as one says it.
std::string shown(const Survey& survey, const Grid& grid, const GridColumn& column, std::string value,
                  const Words& words) {
    for (const FieldChoice& choice : column.choices)
        if (choice.value == value) return value.empty() ? "" : words.say(choice.label);
    if (column.key == "of") return said_of(survey, grid.panel, value);
    return value == "[]" ? "none" : value;
}

Grid filled(const Survey& survey, Grid grid, const Words& words) {
    const KeyTable& table = table_named(grid.table);
    for (std::size_t at = 0; at < table.count(survey); ++at) {
        const std::string_view id = id_of(survey, table, at);
        GridRow row{grid.table + ":" + (id.empty() ? fmt::format("{}", at + 1) : std::string(id)), {}};
        const EntryKeys entry{table.keys, table.thing(survey, at)};
        for (const GridColumn& column : grid.columns)
            row.cells.push_back(shown(survey, grid, column, value_read(entry, column.key), words));
        grid.rows.push_back(std::move(row));
    }
    grid.rows.push_back({"", std::vector<std::string>(grid.columns.size())});
    return grid;
}

/// What was typed into a cell of a column, as its key's value; nullopt with `bad` set where it is not understood.
struct CellValue {
    std::optional<std::string> value;
    std::string bad;
};
CellValue value_in(const Survey& survey, const Grid& grid, const GridColumn& column, std::string_view typed,
                   const Words& words) {
    std::string text(typed);
    for (const FieldChoice& choice : column.choices)
        if (folded(words.say(choice.label)) == folded(text) ||
            (!choice.value.empty() && folded(choice.value) == folded(text)))
            text = choice.value;
    if (column.key == "of" && !text.empty()) {
        const auto address = address_said(survey, grid.panel, text);
        if (!address) return {std::nullopt, fmt::format("nothing is called \"{}\"", text)};
        text = *address;
    }
    const Field* field = field_named(table_named(grid.table).keys, column.key);
    if (column.entry == Entry::list && text == "none") text = "[]";
    return {value_typed(*field, text), {}};
}

/// The keys of a new entry that its table asks for and nobody typed.
void complete(const Survey& survey, EntryEdit& entry, std::size_t nth) {
    const bool has_id =
        std::ranges::any_of(entry.keys, [](const KeyEdit& one) { return one.key == "id" && one.value; });
    const bool wants_id = entry.address == "load:" || entry.address == "outlet:";
    if (!wants_id || has_id) return;
    const auto title =
        std::ranges::find_if(entry.keys, [](const KeyEdit& one) { return one.key == "title" || one.key == "label"; });
    const std::string words = title != entry.keys.end() && title->value ? *title->value : "";
    entry.address +=
        new_thing_id(survey, words.empty() ? entry.address.substr(0, entry.address.size() - 1) : words, nth);
}

Edit added(const Survey& survey, const Grid& grid, std::vector<KeyEdit> keys, std::size_t nth) {
    EntryEdit entry{EntryEdit::Kind::add, grid.table + ":", std::move(keys), Mentions::refuse};
    const auto id = std::ranges::find(entry.keys, "id", &KeyEdit::key);
    if (id != entry.keys.end() && id->value) {
        std::string plain = *id->value;
        std::erase(plain, '"');
        entry.address += plain;
        entry.keys.erase(id);
    } else {
        complete(survey, entry, nth);
    }
    return keys_edit({tr("add {0}"), {entry.address}}, std::move(entry));
}

/// Lines of cells. Tabs part them where there is one, else semicolons, else commas.
std::vector<std::vector<std::string>> cells_of(std::string_view text) {
    const char part = text.find('\t') != std::string_view::npos  ? '\t'
                      : text.find(';') != std::string_view::npos ? ';'
                                                                 : ',';
    std::vector<std::vector<std::string>> lines;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find('\n'), text.size());
        std::string_view line = text.substr(0, end);
        text.remove_prefix(std::min(end + 1, text.size()));
        if (line.ends_with('\r')) line.remove_suffix(1);
        if (line.find_first_not_of(" \t;,") == std::string_view::npos) continue;
        std::vector<std::string> cells;
        for (std::size_t from = 0; from <= line.size();) {
            const std::size_t to = std::min(line.find(part, from), line.size());
            cells.emplace_back(line.substr(from, to - from));
            from = to + 1;
        }
        lines.push_back(std::move(cells));
    }
    return lines;
}

std::optional<std::size_t> column_called(const Grid& grid, const std::string& name, const Words& words) {
    const std::string wanted = folded(name.substr(0, name.find(',')));
    for (std::size_t c = 0; c < grid.columns.size(); ++c) {
        const GridColumn& column = grid.columns[c];
        if (folded(words.say(column.label)) == wanted || column.key == wanted || folded(column.label.pattern) == wanted)
            return c;
    }
    return std::nullopt;
}

/// A block on its way into a grid.
class Pasting {
public:
    Pasting(const Survey& survey, const Grid& grid, const Words& words) : survey_(survey), grid_(grid), words_(words) {}

    Outcome<Edit> edit(std::size_t row, std::size_t column, std::string_view text) {
        auto lines = cells_of(text);
        if (lines.empty()) return refused("there is nothing to paste", "copy rows of a spreadsheet first");
        if (!set_columns(lines.front(), column)) return refused("more columns than there are", "begin further left");
        if (has_head_) {
            lines.erase(lines.begin());
            row = grid_.rows.size() - 1;
        }
        for (std::size_t i = 0; i < lines.size(); ++i) take(lines[i], row + i, i);
        if (!complaints_.empty()) return tl::unexpected(std::move(complaints_));
        return together({tr("paste {0:.0f} rows"), {static_cast<double>(lines.size())}}, std::move(edits_));
    }

private:
    bool set_columns(const std::vector<std::string>& first, std::size_t column) {
        for (const std::string& name : first) {
            const auto found = column_called(grid_, name, words_);
            if (found) has_head_ = true;
            to_.push_back(found.value_or(grid_.columns.size()));
        }
        if (has_head_) return true;
        for (std::size_t i = 0; i < to_.size(); ++i) to_[i] = column + i;
        return column + first.size() <= grid_.columns.size();
    }

    void take(const std::vector<std::string>& cells, std::size_t row, std::size_t nth) {
        std::vector<KeyEdit> keys;
        for (std::size_t i = 0; i < cells.size() && i < to_.size(); ++i) {
            if (to_[i] >= grid_.columns.size()) continue;
            const GridColumn& column = grid_.columns[to_[i]];
            CellValue cell = value_in(survey_, grid_, column, cells[i], words_);
            if (!cell.bad.empty())
                complaints_.push_back({{}, fmt::format("row {}: {}", nth + 1, cell.bad), "5, 2+4, 9 N, MAIN A, K3"});
            if (cell.value || row < grid_.rows.size() - 1) keys.push_back({column.key, std::move(cell.value)});
        }
        const bool is_new = row >= grid_.rows.size() - 1;
        if (is_new)
            edits_.push_back(added(survey_, grid_, std::move(keys), nth));
        else
            edits_.push_back(
                keys_edit({}, {EntryEdit::Kind::change, grid_.rows[row].address, std::move(keys), Mentions::refuse}));
    }

    const Survey& survey_;
    const Grid& grid_;
    const Words& words_;
    std::vector<std::size_t> to_;
    bool has_head_ = false;
    std::vector<Edit> edits_;
    std::vector<Complaint> complaints_;
};

}  // namespace

Grid readings_grid(const Survey& survey, std::string_view panel, Units, const Words& words) {
    Grid grid{"reading", std::string(panel), {}, {}};
    grid.columns = columns_of(survey, "reading",
                              {{"of", 9},
                               {"amps", 9},
                               {"volts", 8},
                               {"amps_min", 10},
                               {"hours", 9},
                               {"leakage_ma", 9},
                               {"volts_neutral_ground", 10},
                               {"temp_c", 10},
                               {"noise", 8},
                               {"at", 20},
                               {"instrument", 14},
                               {"by", 6},
                               {"note", 24}});
    return filled(survey, std::move(grid), words);
}

Grid loads_grid(const Survey& survey, std::string_view panel, Units, const Words& words) {
    Grid grid{"load", std::string(panel), {}, {}};
    grid.columns = columns_of(survey, "load",
                              {{"title", 22},
                               {"circuit", 18},
                               {"outlet", 12},
                               {"count", 8},
                               {"watts", 9},
                               {"va", 9},
                               {"amps", 9},
                               {"hp", 9},
                               {"volts", 7},
                               {"duty", 14},
                               {"continuous", 12},
                               {"connection", 9},
                               {"note", 28}});
    return filled(survey, std::move(grid), words);
}

Grid outlets_grid(const Survey& survey, std::string_view panel, Units units, const Words& words) {
    Grid grid{"outlet", std::string(panel), {}, {}};
    grid.columns = columns_of(survey, "outlet",
                              {{"id", 6},
                               {"room", 12},
                               {"kind", 11},
                               {"label", 18},
                               {"circuit", 22},
                               {"guards", 10},
                               {"wired", 13},
                               {"place", 10},
                               {"upstream", 9},
                               {units == Units::feet ? "run_ft" : "run_m", 10},
                               {"keep_on", 12}});
    return filled(survey, std::move(grid), words);
}

Grid photos_grid(const Survey& survey, std::string_view panel, Units, const Words& words) {
    Grid grid{"photo", std::string(panel), {}, {}};
    grid.columns = columns_of(survey, "photo", {{"file", 28}, {"of", 12}, {"at", 20}, {"note", 30}});
    return filled(survey, std::move(grid), words);
}

Outcome<Edit> cell_typed(const Survey& survey, const Grid& grid, std::size_t row, std::size_t column,
                         std::string_view typed, const Words& words) {
    if (row >= grid.rows.size() || column >= grid.columns.size()) return refused("there is no such cell", "choose one");
    const GridColumn& of = grid.columns[column];
    CellValue cell = value_in(survey, grid, of, typed, words);
    if (!cell.bad.empty()) return refused(cell.bad, "5, 2+4, 9 N, MAIN A, K3");
    const std::string& address = grid.rows[row].address;
    if (address.empty()) {
        if (!cell.value) return refused("nothing was typed", "type what it is");
        if (grid.table == "reading" && of.key != "of")
            return refused("a reading is of something", "say first what it is of: 5, 9 N, MAIN A, K3");
        return added(survey, grid, {{of.key, std::move(cell.value)}}, 0);
    }
    if (of.key == "id") return refused("an id never changes", "add a new one, and take this one out");
    std::vector<KeyEdit> keys{{of.key, std::move(cell.value)}};
    // Of watts, volt-amperes and amperes a nameplate says one: the one typed last stays.
    if (grid.table == "load" && keys.front().value && (of.key == "watts" || of.key == "va" || of.key == "amps"))
        for (const char* other : {"watts", "va", "amps"})
            if (of.key != other) keys.push_back({other, std::nullopt});
    if (grid.table == "load" && keys.front().value && (of.key == "circuit" || of.key == "outlet"))
        keys.push_back({of.key == "circuit" ? "outlet" : "circuit", std::nullopt});
    return keys_edit({tr("change of {1}: {0}"), {of.label, address}},
                     {EntryEdit::Kind::change, address, std::move(keys), Mentions::refuse});
}

Outcome<Edit> rows_removed(const Survey&, const Grid& grid, const std::vector<std::size_t>& rows) {
    std::vector<Edit> edits;
    for (auto row = rows.rbegin(); row != rows.rend(); ++row)  // from the last: places of those before stay
        if (*row < grid.rows.size() && !grid.rows[*row].address.empty())
            edits.push_back(
                keys_edit({}, {EntryEdit::Kind::remove, grid.rows[*row].address, {}, Mentions::take_along}));
    if (edits.empty()) return refused("no row is chosen", "go to one first");
    return together({tr("take out {0:.0f} rows"), {static_cast<double>(edits.size())}}, std::move(edits));
}

Outcome<Edit> block_pasted(const Survey& survey, const Grid& grid, std::size_t row, std::size_t column,
                           std::string_view text, const Words& words) {
    return Pasting(survey, grid, words).edit(row, column, text);
}

}  // namespace doorcard
