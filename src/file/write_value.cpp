// SPDX-License-Identifier: MIT
#include "file/write_value.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace doorcard {
namespace {

std::string escaped(char c) {
    switch (c) {
        case '"':
            return "\\\"";
        case '\\':
            return "\\\\";
        case '\n':
            return "\\n";
        case '\t':
            return "\\t";
        case '\r':
            return "\\r";
        default:
            return fmt::format("\\u{:04X}", static_cast<unsigned char>(c));
    }
}

bool is_control(char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7F; }

/// In single quotes where the text stood in them and can stand in them.
std::string quoted_like(std::string_view text, std::string_view before) {
    const bool was_plain = before.starts_with('\'') && !before.starts_with("'''");
    const auto forbids = [](char c) { return c == '\'' || is_control(c); };
    if (!was_plain || std::ranges::any_of(text, forbids)) return quoted(text);
    return fmt::format("'{}'", text);
}

std::string number_like(double number, std::string_view before) {
    std::string text = written_number(number);
    const bool had_point = before.find('.') != std::string_view::npos;
    return had_point && text.find_first_of(".e") == std::string::npos ? text + ".0" : text;
}

bool is_plain_number(std::string_view text) { return text.find_first_not_of("0123456789.") == std::string_view::npos; }

bool all_alike(const Ids& words) {
    return std::ranges::all_of(words, [&](const std::string& word) { return word == words.front(); });
}

std::string in_brackets(const std::vector<std::string>& items) { return fmt::format("[{}]", fmt::join(items, ", ")); }

std::string in_braces(const std::vector<WrittenKey>& keys) {
    std::string inside;
    for (const WrittenKey& key : keys)
        inside.append(inside.empty() ? " " : ", ").append(key.key).append(" = ").append(key.value);
    return inside.empty() ? "{}" : "{" + inside + " }";
}

std::vector<WrittenKey> written_members(const std::map<std::string, Volts>& volts) {
    std::vector<WrittenKey> keys;
    keys.reserve(volts.size());
    for (const auto& [address, each] : volts) keys.push_back({written_key(address), written_number(each.value)});
    return keys;
}

std::vector<WrittenKey> written_members(const std::map<std::string, RecordingColumn>& columns) {
    std::vector<WrittenKey> keys;
    keys.reserve(columns.size());
    for (const auto& [name, column] : columns) keys.push_back({written_key(name), written_column(column)});
    return keys;
}

/// One text where one is enough: a single one, or, of halves, the same for every space.
std::string one_or_list(const Field& field, const Ids& texts, std::string_view before) {
    const bool for_each_space = !field.words.empty();
    const bool was_list = before.starts_with('[');
    const bool one = !texts.empty() && (texts.size() == 1 || for_each_space) && all_alike(texts);
    return one && !was_list ? quoted_like(texts.front(), before) : in_brackets(written_items(texts));
}

std::string written_text(const Field& field, const std::string& text, std::string_view before) {
    const bool was_number = !before.empty() && before.front() != '"' && before.front() != '\'';
    if (field.form == Form::text_or_number && was_number && is_plain_number(text)) return text;
    return quoted_like(text, before);
}

}  // namespace

std::string quoted(std::string_view text) {
    std::string result = "\"";
    for (const char c : text)
        if (c == '"' || c == '\\' || is_control(c))
            result += escaped(c);
        else
            result += c;
    return result + '"';
}

std::string written_key(std::string_view key) {
    constexpr std::string_view bare = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789_-";
    return !key.empty() && key.find_first_not_of(bare) == std::string_view::npos ? std::string(key) : quoted(key);
}

std::string written_number(double number) { return fmt::format("{}", number); }

std::string written_moment(const Moment& moment) {
    std::string text = fmt::format("{:04}-{:02}-{:02}", moment.year, moment.month, moment.day);
    if (!moment.nanosecond_of_day) return text;
    const std::int64_t seconds = *moment.nanosecond_of_day / 1'000'000'000;
    text += fmt::format("T{:02}:{:02}:{:02}", seconds / 3600, seconds / 60 % 60, seconds % 60);
    if (const std::int64_t part = *moment.nanosecond_of_day % 1'000'000'000) {
        text += fmt::format(".{:09}", part);
        text.erase(text.find_last_not_of('0') + 1);
    }
    if (!moment.offset_minutes) return text;
    if (*moment.offset_minutes == 0) return text + "Z";
    const int size = std::abs(*moment.offset_minutes);
    return text + fmt::format("{}{:02}:{:02}", *moment.offset_minutes < 0 ? '-' : '+', size / 60, size % 60);
}

std::string written_photo(const Photo& photo) {
    if (!photo.of && !photo.at && !photo.note) return quoted(photo.file);
    return written_table(photo_keys(), &photo);
}

std::string written_column(const RecordingColumn& column) {
    if (!column.unit && !column.scale) return quoted(column.of.text());
    return written_table(recording_column_keys(), &column);
}

std::vector<std::string> written_items(const Value& list) {
    std::vector<std::string> items;
    if (const auto* texts = std::get_if<Ids>(&list))
        for (const std::string& text : *texts) items.push_back(quoted(text));
    if (const auto* wholes = std::get_if<std::vector<int>>(&list))
        for (const int whole : *wholes) items.push_back(std::to_string(whole));
    if (const auto* photos = std::get_if<Photos>(&list))
        for (const Photo& photo : *photos) items.push_back(written_photo(photo));
    return items;
}

std::string written_value(const Field& field, const Value& value, std::string_view before) {
    if (const auto* flag = std::get_if<bool>(&value)) return *flag ? "true" : "false";
    if (const auto* whole = std::get_if<int>(&value)) return std::to_string(*whole);
    if (const auto* number = std::get_if<double>(&value)) return number_like(*number, before);
    if (const auto* text = std::get_if<std::string>(&value)) return written_text(field, *text, before);
    if (const auto* moment = std::get_if<Moment>(&value)) return written_moment(*moment);
    if (const auto* volts = std::get_if<std::map<std::string, Volts>>(&value))
        return in_braces(written_members(*volts));
    if (const auto* columns = std::get_if<std::map<std::string, RecordingColumn>>(&value))
        return in_braces(written_members(*columns));
    if (field.form == Form::text_or_texts) return one_or_list(field, std::get<Ids>(value), before);
    return in_brackets(written_items(value));
}

std::optional<Value> value_of(const Field& field, const void* owner) {
    auto value = field.get(owner);
    const auto* list = value ? std::get_if<Ids>(&*value) : nullptr;
    return list && list->empty() && field.form == Form::text_or_texts ? std::nullopt : value;
}

std::vector<WrittenKey> written_keys(FieldList fields, const void* owner) {
    std::vector<WrittenKey> keys;
    for (const Field& field : fields) {
        const std::string name(field.name);
        if (field.form == Form::table) {
            if (const void* inner = field.look(owner)) keys.push_back({name, written_table(field.keys, inner)});
        } else if (const auto value = value_of(field, owner)) {
            keys.push_back({name, written_value(field, *value)});
        }
    }
    return keys;
}

std::string written_table(FieldList fields, const void* owner) { return in_braces(written_keys(fields, owner)); }

}  // namespace doorcard
