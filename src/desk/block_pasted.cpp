// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "base/folded.hpp"
#include "desk/entry_keys.hpp"
#include "desk/field_typed.hpp"
#include "desk/grid.hpp"
#include "desk/pasted_cells.hpp"
#include "desk/typed_words.hpp"

namespace doorcard {
namespace {

/// Words that people write above a column, beside its label and its key.
struct HeadWord {
    std::string_view table, key, words;
};
constexpr HeadWord head_words[] = {
    {"reading", "of", " space circuit ckt no. no # breaker what espacio circuito disyuntor de "},
    {"reading", "amps", " a amps ampere amperes current corriente amperios "},
    {"reading", "volts", " v volts voltage voltios tension "},
    {"reading", "at", " time date when hora fecha "},
    {"load", "title", " load appliance description carga aparato descripcion "},
    {"load", "watts", " w watts vatios "},
    {"load", "va", " va "},
    {"load", "amps", " a amps amperes amperios "},
    {"load", "count", " count qty quantity cantidad "},
    {"outlet", "id", " id no. outlet salida "},
    {"outlet", "circuit", " ckt circuit circuito "},
    {"photo", "file", " photo picture foto archivo "},
};

bool is_head_word(const Grid& grid, const std::string& key, const std::string& name) {
    return std::ranges::any_of(head_words, [&](const HeadWord& one) {
        return one.table == grid.table && one.key == key && one.words.find(" " + name + " ") != std::string_view::npos;
    });
}

/// The languages of the heads of columns.
class HeadReading {
public:
    HeadReading() {
        for (const std::string& language : Words::languages()) words_.push_back(Words::in(language));
    }

    std::optional<std::size_t> column(const Grid& grid, const std::string& cell) const {
        const std::string name = folded(trimmed(cell));
        for (std::size_t c = 0; !name.empty() && c < grid.columns.size(); ++c)
            if (is_called(grid, grid.columns[c], name)) return c;
        return std::nullopt;
    }

private:
    /// By its key, its label, its label with its unit, or another word for it; `Nameplate` alone may be several.
    bool is_called(const Grid& grid, const GridColumn& column, const std::string& name) const {
        if (folded(column.key) == name || is_head_word(grid, column.key, name)) return true;
        return std::ranges::any_of(words_, [&](const Words& words) {
            const std::string label = folded(words.say(column.label));
            const std::string unit = folded(words(column.unit));
            if (!unit.empty() && (name == label + ", " + unit || name == label + " (" + unit + ")")) return true;
            return name == label && is_only(grid, label, words);
        });
    }

    static bool is_only(const Grid& grid, const std::string& label, const Words& words) {
        return std::ranges::count_if(grid.columns,
                                     [&](const GridColumn& one) { return folded(words.say(one.label)) == label; }) == 1;
    }

    std::vector<Words> words_;
};

using Line = std::vector<std::string>;

/// A block on its way into a grid. Each row is tried upon those before it, so that all refusals are known at once.
class Pasting {
public:
    Pasting(const Survey& survey, const Grid& grid) : survey_(survey), grid_(grid) {}

    Outcome<Edit> edit(std::size_t row, std::size_t column, std::string_view text) {
        auto lines = pasted_cells(text);
        if (!lines) return tl::unexpected(std::move(lines.error()));
        if (auto refusal = set_columns(lines->front(), column)) return tl::unexpected(std::vector{*refusal});
        if (has_head_) {
            lines->erase(lines->begin());
            row = grid_.rows.size() - 1;
        }
        if (lines->empty()) return refused("there is nothing below the heads of its columns", "copy its rows too");
        for (std::size_t i = 0; i < lines->size(); ++i) take((*lines)[i], row + i, i + (has_head_ ? 2 : 1));
        if (complaints_.empty() && !kept_laws(after_)) name_lawless_row();
        if (!complaints_.empty()) return tl::unexpected(std::move(complaints_));
        return Edit{{tr("paste {0:.0f} rows"), {static_cast<double>(lines->size())}},
                    [edits = std::move(edits_)](Survey after) -> Outcome<Survey> {
                        for (const EntryEdit& one : edits) {
                            auto next = edited(after, one);
                            if (!next) return next;
                            after = *std::move(next);
                        }
                        return kept_laws(std::move(after));
                    }};
    }

private:
    /// Where the cells go: by the heads of the columns where most of the first line are such.
    std::optional<Complaint> set_columns(const Line& first, std::size_t column) {
        const HeadReading heads;
        std::size_t named = 0, said = 0;
        for (const std::string& cell : first) {
            const auto found = heads.column(grid_, cell);
            named += found ? 1 : 0;
            said += cell.empty() ? 0 : 1;
            to_.push_back(found.value_or(grid_.columns.size()));
            if (!found && !cell.empty()) unknown_ = cell;
        }
        has_head_ = named * 2 > said;
        if (has_head_ && !unknown_.empty())
            return Complaint{
                {}, fmt::format("no column is called \"{}\"", unknown_), "leave it out, or name it as here"};
        for (std::size_t i = 0; !has_head_ && i < to_.size(); ++i) to_[i] = column + i;
        if (!has_head_ && column + first.size() > grid_.columns.size())
            return Complaint{{}, "more columns than there are", "begin further left"};
        return std::nullopt;
    }

    void take(const Line& cells, std::size_t row, std::size_t number) {
        const bool is_new = row >= grid_.rows.size() - 1;
        const auto there = is_new ? std::nullopt : entry_of(after_, grid_.rows[row].address);
        const EntryKeys entry{table_named(grid_.table).keys, there ? there->thing : nullptr};
        std::vector<KeyEdit> keys;
        for (std::size_t i = 0; i < cells.size(); ++i) {
            if (i >= to_.size() || to_[i] >= grid_.columns.size()) {
                if (!cells[i].empty()) complain(number, {{{}, "more cells than columns", "leave out the last"}});
                continue;
            }
            if (is_new && cells[i].empty()) continue;
            const std::string& key = grid_.columns[to_[i]].key;
            auto typed = keys_typed(after_, grid_.table, entry, key, cells[i], {grid_.panel, grid_.units});
            if (!typed) return complain(number, typed.error());
            std::ranges::move(*typed, std::back_inserter(keys));
        }
        apply(row, number, std::move(keys));
    }

    void apply(std::size_t row, std::size_t number, std::vector<KeyEdit> keys) {
        auto edit = row_edit(after_, grid_, row < grid_.rows.size() ? row : grid_.rows.size(), std::move(keys));
        if (!edit) return complain(number, edit.error());
        auto after = edited(after_, *edit);
        if (!after) return complain(number, after.error());
        after_ = *std::move(after);
        edits_.push_back(*std::move(edit));
        numbers_.push_back(number);
    }

    /// The laws are asked once for a whole block; where it breaks one, row by row.
    void name_lawless_row() {
        Survey so_far = survey_;
        for (std::size_t i = 0; i < edits_.size(); ++i) {
            so_far = *edited(so_far, edits_[i]);
            if (const auto kept = kept_laws(so_far); !kept) return complain(numbers_[i], kept.error());
        }
    }

    void complain(std::size_t number, const std::vector<Complaint>& complaints) {
        for (const Complaint& one : complaints)
            complaints_.push_back({{}, fmt::format("row {}: {}", number, one.wrong), one.right});
    }

    const Survey& survey_;
    const Grid& grid_;
    Survey after_ = survey_;
    std::vector<std::size_t> to_;
    std::string unknown_;
    bool has_head_ = false;
    std::vector<EntryEdit> edits_;
    std::vector<std::size_t> numbers_;  ///< the row of each
    std::vector<Complaint> complaints_;
};

}  // namespace

Outcome<Edit> block_pasted(const Survey& survey, const Grid& grid, std::size_t row, std::size_t column,
                           std::string_view text, const Words&) {
    return Pasting(survey, grid).edit(row, column, text);
}

}  // namespace doorcard
