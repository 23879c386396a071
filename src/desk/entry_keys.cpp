// SPDX-License-Identifier: MIT
#include "desk/entry_keys.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cstdlib>

#include "file/write_value.hpp"

namespace doorcard {
namespace {

bool is_number(Form form) { return form == Form::number || form == Form::whole; }

std::string_view trimmed(std::string_view text) {
    const std::size_t first = text.find_first_not_of(" \t\r\n"), last = text.find_last_not_of(" \t\r\n");
    return first == std::string_view::npos ? std::string_view{} : text.substr(first, last - first + 1);
}

/// `3,5`, `20A`, `12 ft`: the number alone; what is none stays as it was typed, for the complaint.
std::string plain_number(std::string_view typed) {
    std::string text(trimmed(typed));
    if (text.find('.') == std::string::npos) std::ranges::replace(text, ',', '.');
    char* end = nullptr;
    const double number = std::strtod(text.c_str(), &end);
    const bool has_unit = end != text.c_str() && *end != '\0';
    if (!has_unit) return text;
    const std::string_view unit = trimmed(std::string_view(end));
    const bool is_unit =
        std::ranges::all_of(unit, [](unsigned char c) { return std::isalpha(c) || c == '%' || c >= 0x80; });
    return is_unit ? fmt::format("{}", number) : text;
}

std::string without_quotes(const std::string& written) {
    if (written.size() < 2 || written.front() != '"' || written.back() != '"') return written;
    std::string text;
    for (std::size_t i = 1; i + 1 < written.size(); ++i) {
        if (written[i] == '\\' && i + 2 < written.size()) ++i;
        text += written[i];
    }
    return text;
}

struct Read {
    const Field& field;
    std::string operator()(bool flag) const { return flag ? "true" : "false"; }
    std::string operator()(int number) const { return fmt::format("{}", number); }
    std::string operator()(double number) const { return fmt::format("{}", number); }
    std::string operator()(const std::string& text) const { return text; }
    std::string operator()(const Ids& ids) const {
        return ids.empty() ? "[]" : fmt::format("{}", fmt::join(ids, ", "));
    }
    std::string operator()(const std::vector<int>& list) const {
        return list.empty() ? "[]" : fmt::format("{}", fmt::join(list, ", "));
    }
    std::string operator()(const Moment& moment) const { return written_moment(moment); }
    template <class Other>
    std::string operator()(const Other& other) const {
        std::string text;
        for (const std::string& item : written_items(Value(other)))
            text += (text.empty() ? "" : ", ") + without_quotes(item);
        return text;
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

std::string value_read(const EntryKeys& entry, std::string_view key) {
    if (!entry.thing) return {};
    const std::size_t dot = key.find('.');
    const auto found = std::ranges::find(entry.keys, key.substr(0, dot), &Field::name);
    if (found == entry.keys.end()) return {};
    if (dot != std::string_view::npos)
        return value_read({found->keys, found->look ? found->look(entry.thing) : nullptr}, key.substr(dot + 1));
    const auto value = value_of(*found, entry.thing);
    return value ? std::visit(Read{*found}, *value) : std::string();
}

std::optional<std::string> value_typed(const Field& field, std::string_view typed) {
    const std::string_view text = trimmed(typed);
    if (text.empty()) return std::nullopt;
    if (is_number(field.form)) return plain_number(text);
    if (field.form == Form::text || field.form == Form::text_or_number) return quoted(text);
    return std::string(text);
}

Edit keys_edit(Message name, EntryEdit entry) {
    return {std::move(name), [entry = std::move(entry)](Survey survey) -> Outcome<Survey> {
                auto after = edited(survey, entry);
                return after ? kept_laws(survey, *std::move(after)) : after;
            }};
}

}  // namespace doorcard
