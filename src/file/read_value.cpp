// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <unordered_set>

#include "file/entry_reader.hpp"

namespace doorcard {
namespace {

constexpr std::string_view places_of_things[] = {"breaker:", "neutral:", "run:", "outlet:", "load:"};

bool is_hunt_place(std::string_view text) {
    const auto begins = [&](std::string_view kind) { return text.starts_with(kind) && text.size() > kind.size(); };
    return text == "home-run" || std::ranges::any_of(places_of_things, begins);
}

bool can_trip(const Address& address) {
    using enum ThingKind;
    constexpr ThingKind kinds[] = {breaker, outlet, circuit, panel, survey};
    return std::ranges::find(kinds, address.kind) != std::end(kinds);
}

/// True where the text has the form that what it names demands.
bool has_form(std::string_view text, std::uint32_t refers) {
    if (refers == to_hunt_place) return is_hunt_place(text);
    const auto address = parse_address(text);
    return address && (refers != to_trip_of || can_trip(*address));
}

}  // namespace

std::optional<Value> EntryReader::read_value(TomlNode node) {
    switch (field_->form) {
        case Form::text:
            return read_text(node);
        case Form::texts:
            return read_texts(node);
        case Form::text_or_texts: {
            if (node.is(Kind::list)) return read_texts(node);
            auto one = read_text(node);
            return one ? std::optional<Value>(Ids{std::get<std::string>(std::move(*one))}) : std::nullopt;
        }
        case Form::text_or_number: {
            if (node.is(Kind::text)) return read_text(node);
            const auto number = number_of(node);
            return number ? std::optional<Value>(fmt::format("{}", *number)) : std::nullopt;
        }
        case Form::flag:
            return is_kind(node, Kind::flag) ? std::optional<Value>(node.flag()) : std::nullopt;
        case Form::number:
            return read_number(node);
        case Form::whole:
            return read_whole(node);
        case Form::wholes:
            return read_wholes(node);
        case Form::date:
        case Form::clock:
            return read_moment(node);
        case Form::volts_by_address:
            return read_volts_by_address(node);
        case Form::columns:
            return read_columns(node);
        case Form::photos:
            return read_photos(node);
        case Form::table:
            break;
    }
    return std::nullopt;
}

std::optional<Value> EntryReader::read_text(TomlNode node) {
    if (!is_kind(node, Kind::text) || !is_allowed(node.place(), node.text())) return std::nullopt;
    if (field_->is_marked) texts_.push_back({node.place(), node.text()});
    return node.text();
}

std::optional<Value> EntryReader::read_texts(TomlNode node) {
    if (!is_kind(node, Kind::list)) return std::nullopt;
    Ids texts;
    texts.reserve(node.size());
    std::vector<PlacedText> placed;
    for (std::size_t i = 0; i < node.size(); ++i) {
        if (!read_text(node[i])) continue;
        texts.push_back(node[i].text());
        placed.push_back({node[i].place(), node[i].text()});
    }
    refuse_twice(placed);
    return texts;
}

void EntryReader::refuse_twice(const std::vector<PlacedText>& texts) {
    if (texts.size() < 2) return;
    std::unordered_set<std::string_view> seen;
    for (const PlacedText& text : texts)
        if (!seen.insert(text.text).second) wrong_value(text.place, fmt::format("names \"{}\" twice", text.text));
}

std::optional<double> EntryReader::number_of(TomlNode node) {
    if (!node.is(Kind::whole) && !is_kind(node, Kind::number)) return std::nullopt;
    const double number = node.number();
    if (!std::isfinite(number)) return wrong_value(node.place(), "is not finite");
    if (number < field_->least || (field_->above_least && number <= field_->least))
        return wrong_value(node.place(), fmt::format("is {}", number));
    if (number > field_->most) return wrong_value(node.place(), fmt::format("is {}", number));
    return number;
}

std::optional<int> EntryReader::whole_of(TomlNode node) {
    if (!is_kind(node, Kind::whole)) return std::nullopt;
    const auto number = number_of(node);
    return number ? std::optional(static_cast<int>(*number)) : std::nullopt;
}

std::optional<Value> EntryReader::read_number(TomlNode node) {
    const auto number = number_of(node);
    return number ? std::optional<Value>(*number) : std::nullopt;
}

std::optional<Value> EntryReader::read_whole(TomlNode node) {
    const auto number = whole_of(node);
    return number ? std::optional<Value>(*number) : std::nullopt;
}

std::optional<Value> EntryReader::read_wholes(TomlNode node) {
    if (!is_kind(node, Kind::list)) return std::nullopt;
    if (node.size() == 0 && field_->is_required) return wrong_value(node.place(), "is empty");
    std::vector<int> numbers;
    bool whole_list = true;
    for (std::size_t i = 0; i < node.size(); ++i) {
        const auto number = whole_of(node[i]);
        whole_list = whole_list && number;
        numbers.push_back(number.value_or(0));
        texts_.push_back({node[i].place(), {}});
    }
    return whole_list ? std::optional<Value>(std::move(numbers)) : std::nullopt;
}

std::optional<Value> EntryReader::read_moment(TomlNode node) {
    if (node.is(Kind::date) && field_->form == Form::clock)
        return wrong_value(node.place(), "is a date without a time of day");
    if (!node.is(Kind::date) && !is_kind(node, Kind::moment)) return std::nullopt;
    return node.moment();
}

std::optional<Value> EntryReader::read_volts_by_address(TomlNode node) {
    if (!is_kind(node, Kind::table)) return std::nullopt;
    std::vector<TomlMember> members;
    node.members_into(members);
    std::map<std::string, Volts> volts;
    for (const TomlMember& member : members) {
        const auto number = number_of(member.node);
        if (!is_allowed(member.place, std::string(member.key)) || !number) continue;
        texts_.push_back({member.place, member.key});
        volts.emplace(member.key, Volts(*number));
    }
    return volts;
}

std::optional<Value> EntryReader::read_columns(TomlNode node) {
    if (!is_kind(node, Kind::table)) return std::nullopt;
    std::vector<TomlMember> members;
    node.members_into(members);
    std::map<std::string, RecordingColumn> columns;
    for (const TomlMember& member : members) columns.emplace(member.key, column_of(member.node));
    return columns;
}

RecordingColumn EntryReader::column_of(TomlNode node) {
    RecordingColumn column;
    if (node.is(Kind::table)) {
        const std::vector<PlacedText> before = texts_;
        read(node, recording_column_keys(), &column, fmt::format("columns of {}", where_), nullptr, 0);
        texts_ = before;
        std::vector<TomlMember> members;
        node.members_into(members);
        const auto of = std::ranges::find(members, "of", &TomlMember::key);
        const bool named = of != members.end() && of->node.is(Kind::text) && !column.of.id.empty();
        if (named) texts_.push_back({of->node.place(), of->node.text()});
    } else if (is_kind(node, Kind::text) && is_allowed(node.place(), node.text())) {
        texts_.push_back({node.place(), node.text()});
        column.of = *parse_address(node.text());
    }
    return column;
}

std::optional<Value> EntryReader::read_photos(TomlNode node) {
    if (!is_kind(node, Kind::list)) return std::nullopt;
    Photos photos;
    for (std::size_t i = 0; i < node.size(); ++i) photos.push_back(photo_of(node[i]));
    return photos;
}

Photo EntryReader::photo_of(TomlNode node) {
    Photo photo;
    const FieldList all_but_of = photo_keys().first(photo_keys().size() - 1);
    if (node.is(Kind::table))
        read(node, all_but_of, &photo, fmt::format("photos of {}", where_), nullptr, 0);
    else if (is_kind(node, Kind::text))
        photo.file = node.text();
    return photo;
}

bool EntryReader::is_allowed(Place place, const std::string& text) {
    if (text.empty() && (field_->is_required || field_->refers != to_nothing)) {
        wrong_value(place, "is empty");
        return false;
    }
    if (!field_->words.empty() && std::ranges::find(field_->words, text) == field_->words.end()) {
        wrong_value(place, fmt::format("is \"{}\"", text));
        return false;
    }
    if (field_->refers >= to_address && !has_form(text, field_->refers)) {
        wrong_value(place, fmt::format("is \"{}\"", text));
        return false;
    }
    // A text out of its grammar is kept, so that what names it is not missed as well: the survey is refused anyway.
    if (field_->pattern && !field_->pattern->holds(text)) wrong_value(place, fmt::format("is \"{}\"", text));
    return true;
}

bool EntryReader::is_kind(TomlNode node, Kind wanted) {
    if (node.is(wanted)) return true;
    wrong_value(node.place(), fmt::format("is {}", name_of(node.kind())));
    return false;
}

std::nullopt_t EntryReader::wrong_value(Place place, std::string_view is) {
    if (complaints_.wants(place))
        complaints_.add(place, fmt::format("\"{}\" in {} {}", field_->name, where_, is),
                        fmt::format("write {} = {}", field_->name, type_words(*field_)));
    return std::nullopt;
}

}  // namespace doorcard
