// SPDX-License-Identifier: MIT
#include "file/rewrite_table.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "file/rewrite_survey.hpp"
#include "file/splice_list.hpp"
#include "file/write_value.hpp"

namespace doorcard {
namespace {

/// Of entries in their later order: those that can stay where they are, because their earlier order is the same.
std::vector<bool> staying(const std::vector<std::optional<std::size_t>>& was) {
    struct Link {
        std::size_t at, previous;
    };
    constexpr std::size_t none = static_cast<std::size_t>(-1);
    std::vector<std::size_t> ends;  // where the best run of each length ends
    std::vector<std::size_t> previous(was.size(), none);
    for (std::size_t i = 0; i < was.size(); ++i) {
        if (!was[i]) continue;
        const auto longer = std::ranges::lower_bound(ends, *was[i], {}, [&](std::size_t end) { return *was[end]; });
        if (longer != ends.begin()) previous[i] = *std::prev(longer);
        if (longer == ends.end())
            ends.push_back(i);
        else
            *longer = i;
    }
    std::vector<bool> stays(was.size());
    for (std::size_t i = ends.empty() ? none : ends.back(); i != none; i = previous[i]) stays[i] = true;
    return stays;
}

}  // namespace

TableRewriter::TableRewriter(Splices& splices, const TomlOutline& outline, const Survey& before, const Survey& after)
    : splices_(splices),
      text_(splices.text()),
      outline_(outline),
      before_(before),
      after_(after),
      root_(TomlScan(text_).statements_in({outline.sections[0].body, outline.sections[0].end})),
      newline_(newline_of(text_)) {}

const std::vector<std::vector<std::size_t>>* TableRewriter::headed(const KeyTable& table) const {
    const auto found = outline_.entries.find(table.name);
    return found == outline_.entries.end() ? nullptr : &found->second;
}

const Statement* TableRewriter::root_value(const KeyTable& table) const {
    const auto found = std::ranges::find_if(
        root_, [&](const Statement& s) { return s.path.size() == 1 && s.path.front() == table.name; });
    return found == root_.end() ? nullptr : &*found;
}

TableRewriter::Entry TableRewriter::headed_entry(const std::vector<std::size_t>& sections) const {
    Entry entry{scope_of_sections(text_, outline_, sections), {}};
    for (const std::size_t index : sections)
        entry.blocks.push_back({outline_.sections[index].lead, outline_.sections[index].tail});
    return entry;
}

EntryScope TableRewriter::scope_of_one(const KeyTable& table) const {
    EntryScope root;
    root.statements = root_;
    for (std::size_t i = 1; i < outline_.sections.size(); ++i)
        if (outline_.sections[i].path.front() == table.name) root.inner.push_back({outline_.sections[i].path, i});
    auto scope = scope_within(text_, outline_, root, table.name).value_or(EntryScope{});
    if (scope.home != EntryScope::Home::none) return scope;
    scope.home = EntryScope::Home::lines;  // its header is put before those of the tables within it, or in its place
    if (!scope.inner.empty()) {
        scope.at = outline_.sections[scope.inner.front().section].lead;
        scope.header = fmt::format("[{}]{}", table.name, newline_);
    }
    return scope;
}

void TableRewriter::rewrite_one(const KeyTable& table) {
    EntryScope scope = scope_of_one(table);
    const bool was = table.count(before_) == 1, is = table.count(after_) == 1;
    const bool is_written = !scope.statements.empty() || !scope.inner.empty() || headed(table) || root_value(table);
    const bool would_vanish =
        is && !scope.before_key.empty() && written_keys(table.keys, table.thing(after_, 0)).empty();
    if (was && is_written && would_vanish) {
        rewrite_anew(table);
    } else if (!was || !is_written) {
        put_blocks(table, place_of_first(table), {new_entry(table, 0)});
    } else if (is) {
        rewrite_keys(splices_, outline_, scope, table.keys, table.thing(before_, 0), table.thing(after_, 0));
    } else {
        for (const Statement& statement : root_)
            if (statement.path.front() == table.name) splices_.remove(statement.whole);
        if (const auto* sections = headed(table)) remove_entry(headed_entry(sections->front()));
    }
}

void TableRewriter::rewrite_many(const KeyTable& table, const TableDifference& difference) {
    const Statement* value = root_value(table);
    if (value && text_[value->value.begin] == '[') return rewrite_listed(table, difference, *value);
    const bool in_root = std::ranges::any_of(root_, [&](const Statement& s) { return s.path.front() == table.name; });
    if (!in_root) return rewrite_headed(table, difference);
    const bool one_stays = difference.was.size() == 1 && difference.was[0];
    const bool would_vanish = one_stays && written_keys(table.keys, table.thing(after_, 0)).empty();
    if (!one_stays || would_vanish) return rewrite_anew(table);
    EntryScope scope = scope_of_one(table);
    rewrite_keys(splices_, outline_, scope, table.keys, table.thing(before_, 0), table.thing(after_, 0));
}

void TableRewriter::change_keys(const KeyTable& table, EntryScope scope, std::size_t before, std::size_t after) {
    if (scope.home == EntryScope::Home::none) return rewrite_anew(table);
    rewrite_keys(splices_, outline_, scope, table.keys, table.thing(before_, before), table.thing(after_, after));
}

void TableRewriter::demand_entries(const KeyTable& table, std::size_t count) const {
    if (count != table.count(before_)) throw NotWhatWasMeant("the text is not that of the survey before the edit");
}

// --- entries under headers

void TableRewriter::rewrite_headed(const KeyTable& table, const TableDifference& difference) {
    static const std::vector<std::vector<std::size_t>> none;
    const auto& entries = headed(table) ? *headed(table) : none;
    demand_entries(table, entries.size());
    if (entries.size() == 1 && outline_.sections[entries[0].front()].path.size() > 1) return rewrite_anew(table);
    const bool is_single = entries.size() == 1 && !outline_.sections[entries[0].front()].is_list;
    if (is_single && difference.was.size() > 1) make_headers_lists(table);
    for (const std::size_t row : difference.changed)
        change_keys(table, headed_entry(entries[*difference.was[row]]).scope, *difference.was[row], row);
    for (const std::size_t row : difference.removed) remove_entry(headed_entry(entries[row]));
    const std::vector<bool> stays = staying(difference.was);
    const auto first = std::ranges::find(stays, true) - stays.begin();
    Placed place = place_of_first(table);
    if (static_cast<std::size_t>(first) < stays.size())
        place = {headed_entry(entries[*difference.was[static_cast<std::size_t>(first)]]).blocks.front().begin, true};
    std::vector<std::string> blocks;
    for (std::size_t row = 0; row < stays.size(); ++row) {
        if (stays[row]) {
            put_blocks(table, place, blocks);
            blocks.clear();
            place = {headed_entry(entries[*difference.was[row]]).blocks.back().end, false};
        } else if (difference.was[row]) {
            blocks.push_back(cut_entry(headed_entry(entries[*difference.was[row]])));
        } else {
            blocks.push_back(new_entry(table, row));
        }
    }
    put_blocks(table, place, blocks);
}

void TableRewriter::make_headers_lists(const KeyTable& table) {
    for (const std::size_t index : headed(table)->front()) {
        const Section& section = outline_.sections[index];
        if (section.path.size() > 1) continue;
        const std::size_t open = text_.find('[', section.header);
        KeyPath path;
        const std::size_t close = text_.find(']', TomlScan(text_).behind_key(open + 1, path));
        splices_.insert(open, "[");
        splices_.insert(close, "]");
    }
}

void TableRewriter::remove_entry(const Entry& entry) {
    for (const Span& block : entry.blocks) remove_section(splices_, block);
}

std::string TableRewriter::cut_entry(const Entry& entry) {
    std::string all;
    for (const Span& block : entry.blocks) {
        if (!all.empty()) all += newline_;
        all += splices_.cut(block);
        remove_section(splices_, {block.begin, block.begin});
    }
    return all;
}

/// Behind the last entry of the kind, else of the nearest kind before it in the contract's order, else before the first
/// header that comes after it, else at the end.
TableRewriter::Placed TableRewriter::place_of_first(const KeyTable& table) const {
    const auto& tables = all_tables();
    const auto own = static_cast<std::size_t>(&table - tables.data());
    for (std::size_t i = own + 1; i-- > 0;)
        if (const auto* entries = headed(tables[i])) return {outline_.sections[entries->back().back()].tail, false};
    if (outline_.sections.size() > 1) return {outline_.sections[1].lead, true};
    return {text_.size(), false};
}

void TableRewriter::put_blocks(const KeyTable& table, Placed place, const std::vector<std::string>& blocks) {
    const std::string blanks = blank_lines(table);
    std::string all;
    for (const std::string& block : blocks) all += place.before_what_is_there ? block + blanks : blanks + block;
    if (!all.empty()) splices_.insert(place.at, all);
}

/// As many as stand before the last entry of the kind, else one.
std::string TableRewriter::blank_lines(const KeyTable& table) const {
    const auto* entries = headed(table);
    if (!entries || entries->size() < 2) return newline_;
    std::size_t line = outline_.sections[entries->back().front()].lead;
    const TomlScan scan(text_);
    std::string blanks;
    for (; line > 0 && scan.is_blank_line(scan.line_begin(line - 1)); line = scan.line_begin(line - 1))
        blanks += newline_;
    return blanks;
}

LineStyle TableRewriter::style_near(const KeyTable& table) const {
    const auto* entries = headed(table);
    if (entries) return {text_, headed_entry(entries->back()).scope.statements};
    return {text_, {}};
}

std::string TableRewriter::new_entry(const KeyTable& table, std::size_t row) const {
    const LineStyle style = style_near(table);
    std::string text = table.header() + newline_;
    for (const WrittenKey& key : written_keys(table.keys, table.thing(after_, row)))
        text += style.line(key.key, key.value);
    return text;
}

// --- entries in a list of the root, and forms that are taken apart

void TableRewriter::rewrite_listed(const KeyTable& table, const TableDifference& difference, const Statement& list) {
    const std::vector<Span> items = TomlScan(text_).items_of(list.value);
    demand_entries(table, items.size());
    for (const std::size_t row : difference.changed)
        change_keys(table, scope_of_braces(text_, items[*difference.was[row]]), *difference.was[row], row);
    const std::vector<bool> stays = staying(difference.was);
    std::vector<WantedItem> wanted;
    for (std::size_t row = 0; row < stays.size(); ++row) {
        if (stays[row])
            wanted.push_back({difference.was[row], {}});
        else if (difference.was[row])
            wanted.push_back({std::nullopt, splices_.cut(items[*difference.was[row]])});
        else
            wanted.push_back({std::nullopt, written_table(table.keys, table.thing(after_, row))});
    }
    splice_list(splices_, list.value, items, wanted);
}

/// All entries of the table are taken out and written anew.
void TableRewriter::rewrite_anew(const KeyTable& table) {
    for (const Statement& statement : root_)
        if (statement.path.front() == table.name) splices_.remove(statement.whole);
    if (const auto* entries = headed(table))
        for (const auto& sections : *entries) remove_entry(headed_entry(sections));
    std::vector<std::string> blocks;
    for (std::size_t row = 0; row < table.count(after_); ++row) blocks.push_back(new_entry(table, row));
    put_blocks(table, place_of_first(table), blocks);
}

}  // namespace doorcard
