// SPDX-License-Identifier: MIT
#include "desk/entry_keys.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <charconv>

#include "desk/typed_words.hpp"
#include "file/write_value.hpp"

namespace doorcard {
namespace {

std::string as_item(const std::string& text) {
    const bool needs_quotes = text.find_first_of(",;\"") != std::string::npos || trimmed(text) != text || text.empty();
    return needs_quotes ? quoted(text) : text;
}

std::string joined(const std::vector<std::string>& items) {
    return items.empty() ? "none" : fmt::format("{}", fmt::join(items, ", "));
}

template <class Things, class Words>
std::string joined(const Things& things, Words words) {
    std::vector<std::string> items;
    for (const auto& thing : things) items.push_back(words(thing));
    return joined(items);
}

std::string column_read(const std::pair<const std::string, RecordingColumn>& one) {
    return fmt::format("{} = {}", written_key(one.first), written_column(one.second));
}

/// Values as a person reads them.
struct Read {
    std::string operator()(bool flag) const { return flag ? "true" : "false"; }
    std::string operator()(int number) const { return fmt::format("{}", number); }
    std::string operator()(double number) const { return fmt::format("{}", number); }
    std::string operator()(const std::string& text) const { return text; }
    std::string operator()(const Ids& ids) const { return joined(ids, as_item); }
    std::string operator()(const std::vector<int>& list) const {
        return joined(list, [](int one) { return std::to_string(one); });
    }
    std::string operator()(const Moment& moment) const { return written_moment(moment); }
    std::string operator()(const Photos& photos) const {
        return joined(photos, [](const Photo& one) { return as_item(one.file); });
    }
    std::string operator()(const std::map<std::string, Volts>& volts) const {
        return joined(volts,
                      [](const auto& one) { return fmt::format("{} = {}", as_item(one.first), one.second.value); });
    }
    std::string operator()(const std::map<std::string, RecordingColumn>& columns) const {
        return joined(columns, column_read);
    }
};

}  // namespace

std::optional<EntryKeys> entry_of(const Survey& survey, std::string_view address) {
    const std::size_t colon = address.find(':');
    const KeyTable* table = colon == std::string_view::npos ? nullptr : find_table(address.substr(0, colon));
    if (!table) return std::nullopt;
    const std::string_view id = address.substr(colon + 1);
    const std::size_t count = table->count(survey);
    if (table->shape == Shape::one) return EntryKeys{table->keys, count > 0 ? table->thing(survey, 0) : nullptr};
    for (std::size_t row = 0; row < count; ++row)
        if (const std::string_view own = id_of(survey, *table, row); !own.empty() && own == id)
            return EntryKeys{table->keys, table->thing(survey, row)};
    std::size_t number = 0;
    const auto [end, fault] = std::from_chars(id.data(), id.data() + id.size(), number);
    const bool by_place = fault == std::errc() && end == id.data() + id.size() && number >= 1 && number <= count &&
                          id_of(survey, *table, number - 1).empty();
    return EntryKeys{table->keys, by_place ? table->thing(survey, number - 1) : nullptr};
}

const Field* field_named(FieldList keys, std::string_view key) {
    const std::size_t dot = key.find('.');
    const auto found = std::ranges::find(keys, key.substr(0, dot), &Field::name);
    if (found == keys.end()) return nullptr;
    return dot == std::string_view::npos ? &*found : field_named(found->keys, key.substr(dot + 1));
}

FieldList list_with(FieldList keys, std::string_view key) {
    const std::size_t dot = key.find('.');
    if (dot == std::string_view::npos) return keys;
    const auto found = std::ranges::find(keys, key.substr(0, dot), &Field::name);
    return found == keys.end() ? FieldList{} : list_with(found->keys, key.substr(dot + 1));
}

std::optional<Value> value_held(const EntryKeys& entry, std::string_view key) {
    if (!entry.thing) return std::nullopt;
    const std::size_t dot = key.find('.');
    const auto found = std::ranges::find(entry.keys, key.substr(0, dot), &Field::name);
    if (found == entry.keys.end()) return std::nullopt;
    if (dot != std::string_view::npos)
        return value_held({found->keys, found->look ? found->look(entry.thing) : nullptr}, key.substr(dot + 1));
    return found->form == Form::table ? std::nullopt : value_of(*found, entry.thing);
}

std::string value_read(const EntryKeys& entry, std::string_view key) {
    const auto value = value_held(entry, key);
    return value ? std::visit(Read{}, *value) : std::string();
}

std::vector<std::string> items_of(std::string_view list) {
    std::vector<std::string> items(1);
    bool is_quoted = false;
    for (std::size_t i = 0; i < list.size(); ++i) {
        if (list[i] == '"') is_quoted = !is_quoted;
        if (list[i] == '\\' && is_quoted && i + 1 < list.size())
            items.back() += list[++i];
        else if ((list[i] == ',' || list[i] == ';') && !is_quoted)
            items.emplace_back();
        else if (list[i] != '"')
            items.back() += list[i];
    }
    for (std::string& item : items) item = std::string(trimmed(item));
    std::erase(items, "");
    return items;
}

Edit keys_edit(Message name, EntryEdit entry) {
    return {std::move(name), [entry = std::move(entry)](Survey survey) -> Outcome<Survey> {
                auto after = edited(survey, entry);
                return after ? kept_laws(survey, *std::move(after)) : after;
            }};
}

}  // namespace doorcard
