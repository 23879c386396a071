// SPDX-License-Identifier: MIT
#pragma once
#include <cstdint>
#include <span>
#include <string_view>

#include "file/member_value.hpp"

namespace doorcard {

/// How a key's value is written.
enum class Form {
    text,
    texts,          // a list of texts
    text_or_texts,  // one, or a list
    text_or_number,
    flag,
    number,
    whole,
    wholes,  // a list of whole numbers
    date,    // a date, or a date and time
    clock,   // a date and time
    table,   // keys of its own
    volts_by_address,
    columns,
    photos,
};

/// What a text must name; bits.
enum Refers : std::uint32_t {
    to_nothing = 0,
    to_source = 1,
    to_panel = 2,
    to_breaker = 4,
    to_circuit = 8,
    to_outlet = 16,
    to_load = 32,
    to_managed = 64,
    to_address = 128,    // kind:ID, see Address
    to_trip_of = 256,    // an address of what can trip
    to_hunt_place = 512  // a place of a hunt
};

/// A grammar for a text, and the words that say it.
struct Pattern {
    bool (*holds)(std::string_view);
    std::string_view words;
};

/// One key of a table of the survey file: its name, how it is read, what it may hold, and what it means. From lists of
/// these follow the reader, the nearest known key, and what docs/survey-file.md must say.
struct Field {
    std::string_view name;
    Form form = Form::text;
    std::string_view meaning;
    void (*set)(void* owner, Value&&) = nullptr;
    std::optional<Value> (*get)(const void* owner) = nullptr;  // nullopt: the key is left out
    void* (*open)(void* owner) = nullptr;                      // Form::table: the table's own thing, made
    const void* (*look)(const void* owner) = nullptr;          // Form::table: the same, null where it is absent
    void (*clear)(void* owner) = nullptr;                      // as if the key were left out
    std::span<const Field> keys;                               // Form::table
    std::string_view unit;
    double least = 0;
    double most = 1e12;
    bool above_least = false;
    WordList words;  // closed set
    const Pattern* pattern = nullptr;
    std::uint32_t refers = to_nothing;
    std::string_view also;    // a word allowed beside ids
    std::string_view group;   // at most one key of a group in one entry ...
    std::string_view beside;  // ... but for this one
    bool is_required = false;
    bool is_marked = false;  // the reader keeps its places for later checks

private:
    template <class Change>
    constexpr Field with(Change change) const {
        Field changed = *this;
        change(changed);
        return changed;
    }

public:
    // Written behind a key of a list: what sets it apart.
    constexpr Field required() const {
        return with([](Field& f) { f.is_required = true; });
    }
    constexpr Field marked() const {
        return with([](Field& f) { f.is_marked = true; });
    }
    constexpr Field at_least(double bound) const {
        return with([=](Field& f) { f.least = bound; });
    }
    constexpr Field at_most(double bound) const {
        return with([=](Field& f) { f.most = bound; });
    }
    constexpr Field above_zero() const {
        return with([](Field& f) { f.above_least = true; });
    }
    constexpr Field of(const Pattern& p) const {
        return with([&](Field& f) { f.pattern = &p; });
    }
    constexpr Field one_of(WordList list) const {
        return with([=](Field& f) { f.words = list; });
    }
    constexpr Field names(std::uint32_t kinds, std::string_view other = {}) const {
        return with([=](Field& f) { f.refers = kinds, f.also = other, f.is_marked = true; });
    }
    constexpr Field got_by(std::optional<Value> (*way)(const void*)) const {
        return with([=](Field& f) { f.get = way; });
    }
    constexpr Field either(std::string_view of_group, std::string_view but = {}) const {
        return with([=](Field& f) { f.group = of_group, f.beside = but; });
    }
};

using FieldList = std::span<const Field>;

template <auto Member>
void put(void* owner, Value&& value) {
    assign(static_cast<typename OwnerOf<decltype(Member)>::type*>(owner)->*Member, std::move(value));
}
template <auto Member>
std::optional<Value> take(const void* owner) {
    return held(static_cast<const typename OwnerOf<decltype(Member)>::type*>(owner)->*Member);
}
template <auto Member>
void wipe(void* owner) {
    static_cast<typename OwnerOf<decltype(Member)>::type*>(owner)->*Member = {};
}
template <auto Member, bool InMetres>
std::optional<Value> take_measure(const void* owner) {
    const auto& member = static_cast<const typename OwnerOf<decltype(Member)>::type*>(owner)->*Member;
    return member && member->in_metres == InMetres ? std::optional<Value>(member->written) : std::nullopt;
}
template <auto Member, bool InMetres>
void put_measure(void* owner, Value&& value) {
    auto& member = static_cast<typename OwnerOf<decltype(Member)>::type*>(owner)->*Member;
    member = {std::get<double>(value), InMetres};
}
template <auto Member>
void* open_table(void* owner) {
    return &(static_cast<typename OwnerOf<decltype(Member)>::type*>(owner)->*Member).emplace();
}

template <auto Member>
const void* look_table(const void* owner) {
    const auto& member = static_cast<const typename OwnerOf<decltype(Member)>::type*>(owner)->*Member;
    return member ? &*member : nullptr;
}

// --- how the lists are written: FORM<&Thing::member>(name, meaning)

template <auto Member>
constexpr Field plain(Form form, std::string_view name, std::string_view meaning) {
    Field field;
    field.name = name;
    field.form = form;
    field.meaning = meaning;
    field.set = &put<Member>;
    field.get = &take<Member>;
    field.clear = &wipe<Member>;
    return field;
}
template <auto Member>
constexpr Field text(std::string_view name, std::string_view meaning) {
    return plain<Member>(Form::text, name, meaning);
}
template <auto Member>
constexpr Field texts(std::string_view name, std::string_view meaning) {
    return plain<Member>(Form::texts, name, meaning);
}
template <auto Member>
constexpr Field flag(std::string_view name, std::string_view meaning) {
    return plain<Member>(Form::flag, name, meaning);
}
template <auto Member>
constexpr Field date(std::string_view name, std::string_view meaning) {
    return plain<Member>(Form::date, name, meaning);
}
template <auto Member>
constexpr Field clock(std::string_view name, std::string_view meaning) {
    return plain<Member>(Form::clock, name, meaning);
}
template <auto Member>
constexpr Field number(std::string_view name, std::string_view unit, std::string_view meaning) {
    Field field = plain<Member>(Form::number, name, meaning);
    field.unit = unit;
    return field;
}
template <auto Member>
constexpr Field whole(std::string_view name, std::string_view unit, std::string_view meaning) {
    Field field = plain<Member>(Form::whole, name, meaning);
    field.unit = unit;
    field.most = 1e6;
    return field;
}
/// One word of an enumeration.
template <auto Member>
constexpr Field word(std::string_view name, std::string_view meaning) {
    using E = typename OwnerOf<decltype(Member)>::value::value_type;
    return plain<Member>(Form::text, name, meaning).one_of(enum_words<E>);
}
template <auto Member, bool InMetres>
constexpr Field measure(std::string_view name, std::string_view unit, std::string_view group,
                        std::string_view meaning) {
    Field field;
    field.name = name;
    field.form = Form::number;
    field.meaning = meaning;
    field.set = &put_measure<Member, InMetres>;
    field.get = &take_measure<Member, InMetres>;
    field.clear = &wipe<Member>;
    field.unit = unit;
    field.group = group;
    return field;
}
template <auto Member>
constexpr Field table(std::string_view name, FieldList keys, std::string_view meaning) {
    Field field;
    field.name = name;
    field.form = Form::table;
    field.meaning = meaning;
    field.open = &open_table<Member>;
    field.look = &look_table<Member>;
    field.clear = &wipe<Member>;
    field.keys = keys;
    return field;
}

/// The value a key takes, in words: 'number, A, at least 1', 'one of "ok", "gaps"'.
std::string type_words(const Field&);

}  // namespace doorcard
