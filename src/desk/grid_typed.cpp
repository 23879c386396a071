// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "desk/entry_keys.hpp"
#include "desk/field_typed.hpp"
#include "desk/grid.hpp"
#include "desk/new_ids.hpp"
#include "desk/typed_words.hpp"

namespace doorcard {
namespace {

/// What a new entry is called after, where it needs an id that nobody typed.
std::string words_of(const std::vector<KeyEdit>& keys) {
    for (const std::string_view key : {"title", "label", "kind"}) {
        const auto found = std::ranges::find(keys, key, &KeyEdit::key);
        if (found != keys.end() && found->value) return *found->value;
    }
    return {};
}

bool is_taken(const Survey& survey, std::string_view table, std::string_view id) {
    const auto entry = entry_of(survey, std::string(table) + ":" + std::string(id));
    const bool is_end = table == "outlet" || table == "load";
    const bool is_feed = table == "source" || table == "panel";
    return (entry && entry->thing) || (is_end && (survey.outlets.contains(id) || survey.loads.contains(id))) ||
           (is_feed && (survey.sources.contains(id) || survey.panels.contains(id) || survey.breakers.contains(id)));
}

std::string new_id(const Survey& survey, const std::string& table, const std::vector<KeyEdit>& keys) {
    const std::string id = id_of_words(words_of(keys), table);
    std::string unique = id;
    for (int n = 2; is_taken(survey, table, unique); ++n) unique = fmt::format("{}-{}", id, n);
    return unique;
}

/// The id that was typed among the keys, taken out of them.
std::string take_id(std::vector<KeyEdit>& keys) {
    const auto id = std::ranges::find(keys, "id", &KeyEdit::key);
    if (id == keys.end()) return {};
    std::string typed = id->value.value_or("");
    keys.erase(id);
    if (typed.size() >= 2 && typed.front() == '"') typed = typed.substr(1, typed.size() - 2);
    return typed;
}

/// What an entry of the grid's scope says of itself, where that was not typed.
void set_scope(const Grid& grid, std::vector<KeyEdit>& keys) {
    const auto says = [&](std::string_view key) {
        return std::ranges::any_of(keys, [&](const KeyEdit& one) { return one.key == key && one.value; });
    };
    if (!grid.scope_key.empty() && !says(grid.scope_key) && !(grid.scope_key == "circuit" && says("outlet")))
        keys.push_back({grid.scope_key, grid.scope});
}

Outcome<EntryEdit> new_entry(const Survey& survey, const Grid& grid, std::vector<KeyEdit> keys) {
    std::string id = take_id(keys);
    std::erase_if(keys, [](const KeyEdit& one) { return !one.value; });
    if (keys.empty() && id.empty()) return refused("nothing was typed", "type what it is");
    const auto says = [&](std::string_view key) { return std::ranges::find(keys, key, &KeyEdit::key) != keys.end(); };
    const FieldList fields = table_named(grid.table).keys;
    if (const Field* of = field_named(fields, "of"); of && of->is_required && !says("of"))
        return refused(grid.table == "trip" ? "it is not said what tripped" : "it is not said what it is of",
                       "say that first: 5, 2+4, 9 N, MAIN A, K3");
    if (grid.table == "photo" && !says("file")) return refused("a photo is a file", "name the file first");
    set_scope(grid, keys);
    const bool has_id = field_named(fields, "id") != nullptr;
    if (has_id && id.empty()) id = new_id(survey, grid.table, keys);
    return EntryEdit{EntryEdit::Kind::add, grid.table + ":" + id, std::move(keys), Mentions::refuse};
}

}  // namespace

Outcome<EntryEdit> row_edit(const Survey& survey, const Grid& grid, std::size_t row, std::vector<KeyEdit> keys) {
    const std::string address = row < grid.rows.size() ? grid.rows[row].address : std::string();
    if (address.empty()) return new_entry(survey, grid, std::move(keys));
    if (std::ranges::find(keys, "id", &KeyEdit::key) != keys.end())
        return refused("an id never changes", "add a new one, and take this one out");
    return EntryEdit{EntryEdit::Kind::change, address, std::move(keys), Mentions::refuse};
}

Outcome<Edit> cell_typed(const Survey& survey, const Grid& grid, std::size_t row, std::size_t column,
                         std::string_view typed, const Words&) {
    if (row >= grid.rows.size() || column >= grid.columns.size()) return refused("there is no such cell", "choose one");
    const std::string& key = grid.columns[column].key;
    const std::string& address = grid.rows[row].address;
    const auto there = entry_of(survey, address.empty() ? grid.table + ":" : address);
    const EntryKeys entry{table_named(grid.table).keys, address.empty() || !there ? nullptr : there->thing};
    auto keys = keys_typed(survey, grid.table, entry, key, typed, {grid.panel, grid.units});
    if (!keys) return tl::unexpected(std::move(keys.error()));
    auto edit = row_edit(survey, grid, row, *std::move(keys));
    if (!edit) return tl::unexpected(std::move(edit.error()));
    const Message said = verbatim(std::string(trimmed(typed)));
    const Message& label = grid.columns[column].label;
    Message name = address.empty() ? Message{tr("add {0}"), {said}}
                   : said.empty()  ? Message{tr("{0} of {1} taken out"), {label, address}}
                                   : Message{tr("{0} of {1}: {2}"), {label, address, said}};
    return keys_edit(std::move(name), *std::move(edit));
}

Outcome<Edit> rows_removed(const Survey&, const Grid& grid, const std::vector<std::size_t>& rows) {
    std::vector<std::size_t> chosen = rows;
    std::ranges::sort(chosen, std::greater());  // from the last: places of those before stay
    chosen.erase(std::unique(chosen.begin(), chosen.end()), chosen.end());
    std::vector<Edit> edits;
    for (const std::size_t row : chosen)
        if (row < grid.rows.size() && !grid.rows[row].address.empty())
            edits.push_back(keys_edit({}, {EntryEdit::Kind::remove, grid.rows[row].address, {}, Mentions::take_along}));
    if (edits.empty()) return refused("no row is chosen", "go to one first");
    if (edits.size() == 1) return together({tr("take out {0}"), {grid.rows[chosen.back()].address}}, std::move(edits));
    Message name{tr("take out {0:.0f} rows"), {static_cast<double>(edits.size())}};
    return together(std::move(name), std::move(edits));
}

}  // namespace doorcard
