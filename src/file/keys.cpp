// SPDX-License-Identifier: MIT
#include "file/keys.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

#include "survey/each_table.hpp"

namespace doorcard {
namespace {

template <auto Of>
void alter_row(Survey& survey, std::size_t index, const std::function<void(void*)>& change) {
    auto row = (survey.*Of)[index];
    change(&row);
    survey.*Of = (survey.*Of).with_row(index, std::move(row));
}
template <auto Of>
void add_row(Survey& survey) {
    survey.*Of = (survey.*Of).with_added({});
}
template <auto Of>
void erase_row(Survey& survey, std::size_t index) {
    survey.*Of = (survey.*Of).without_row(index);
}

template <auto Rows, auto Of>
KeyTable many(std::string_view name, std::string_view meaning, FieldList keys, Shape shape = Shape::many) {
    return {name,
            shape,
            meaning,
            keys,
            [](Draft& draft, std::size_t count) { (draft.*Rows).resize(count); },
            [](Draft& draft, std::size_t index) -> void* { return &(draft.*Rows)[index]; },
            [](const Survey& survey) { return (survey.*Of).size(); },
            [](const Survey& survey, std::size_t index) -> const void* { return &(survey.*Of)[index]; },
            &alter_row<Of>,
            &add_row<Of>,
            &erase_row<Of>};
}

template <auto Thing, auto Of>
KeyTable one(std::string_view name, std::string_view meaning, FieldList keys) {
    return {name,
            Shape::one,
            meaning,
            keys,
            [](Draft& draft, std::size_t) { (draft.*Thing).emplace(); },
            [](Draft& draft, std::size_t) -> void* { return &*(draft.*Thing); },
            [](const Survey& survey) -> std::size_t { return survey.*Of ? 1 : 0; },
            [](const Survey& survey, std::size_t) -> const void* { return &*(survey.*Of); },
            [](Survey& survey, std::size_t, const std::function<void(void*)>& change) { change(&*(survey.*Of)); },
            [](Survey& survey) { (survey.*Of).emplace(); },
            [](Survey& survey, std::size_t) { (survey.*Of).reset(); }};
}

KeyTable heading() {
    return {"survey",
            Shape::one,
            "the heading: who surveyed what, when, and by which rules",
            survey_keys(),
            [](Draft&, std::size_t) {},
            [](Draft& draft, std::size_t) -> void* { return &draft.heading; },
            [](const Survey&) -> std::size_t { return 1; },
            [](const Survey& survey, std::size_t) -> const void* { return &survey.heading; },
            [](Survey& survey, std::size_t, const std::function<void(void*)>& change) { change(&survey.heading); },
            [](Survey&) {},
            [](Survey& survey, std::size_t) { survey.heading = {}; }};
}

std::vector<KeyTable> make_tables() {
    return {
        heading(),
        many<&Draft::dwellings, &Survey::dwellings>("dwelling",
                                                    "a kind of dwelling unit; a single [dwelling] is one entry",
                                                    dwelling_keys(), Shape::one_or_many),
        many<&Draft::occupancies, &Survey::occupancies>("occupancy", "nondwelling space, one entry per use",
                                                        occupancy_keys()),
        one<&Draft::grounding, &Survey::grounding>("grounding", "the grounding electrode system, as seen",
                                                   grounding_keys()),
        many<&Draft::sources, &Survey::sources>("source", "what power comes from", source_keys()),
        many<&Draft::panels, &Survey::panels>("panel", "a panel", panel_keys()),
        many<&Draft::breakers, &Survey::breakers>("breaker", "a handle in its spaces: a breaker, fuse or pullout",
                                                  breaker_keys()),
        many<&Draft::circuits, &Survey::circuits>("circuit", "a circuit", circuit_keys()),
        many<&Draft::rooms, &Survey::rooms>("room", "a room; gives walk order", room_keys()),
        many<&Draft::outlets, &Survey::outlets>("outlet", "a receptacle, light, switch, box or piece of equipment",
                                                outlet_keys()),
        many<&Draft::loads, &Survey::loads>("load", "something that uses power", load_keys()),
        many<&Draft::managed, &Survey::managed>("managed", "an energy management system", managed_keys()),
        many<&Draft::readings, &Survey::readings>("reading", "a reading, typed in from any meter", reading_keys()),
        many<&Draft::recordings, &Survey::recordings>(
            "recording", "a file from a recorder or utility, beside the survey", recording_keys()),
        many<&Draft::waveforms, &Survey::waveforms>("waveform", "a captured waveform, beside the survey",
                                                    waveform_keys()),
        many<&Draft::demands, &Survey::demands>("demand", "demand known from bills or a recorder's own report",
                                                demand_keys()),
        many<&Draft::limits, &Survey::limits>("limit", "a watch level of the surveyor's own", limit_keys()),
        many<&Draft::rounds, &Survey::rounds>("round", "a switching round of a mapping walk; file order is time order",
                                              round_keys()),
        one<&Draft::mapping, &Survey::mapping>("mapping", "what mapping reckons with", mapping_keys()),
        many<&Draft::trips, &Survey::trips>("trip", "a trip", trip_keys()),
        many<&Draft::hunts, &Survey::hunts>("hunt", "a fault that is being hunted, one entry per circuit", hunt_keys()),
        many<&Draft::trials, &Survey::trials>("trial", "a step of a hunt; file order within a circuit is time order",
                                              trial_keys()),
        many<&Draft::accepted, &Survey::accepted>("accepted", "a finding taken note of", accepted_keys()),
        many<&Draft::photos, &Survey::photos>("photo", "a picture, beside the survey", photo_keys()),
    };
}

std::string quoted_list(WordList words) {
    std::string list;
    for (const std::string_view word : words) {
        if (!list.empty()) list += ", ";
        list.append("\"").append(word).append("\"");
    }
    return list;
}

constexpr std::pair<Refers, std::string_view> referents[] = {
    {to_source, "source"}, {to_panel, "panel"}, {to_breaker, "breaker"}, {to_circuit, "circuit"},
    {to_outlet, "outlet"}, {to_load, "load"},   {to_managed, "managed"}};

std::string ids_of(const Field& field) {
    std::string kinds;
    for (const auto& [bit, name] : referents) {
        if ((field.refers & bit) == 0) continue;
        kinds.append(kinds.empty() ? name == "outlet" ? "an " : "a " : " or ").append(name);
    }
    const std::string ids = "id of " + kinds;
    return field.also.empty() ? ids : ids + ", or \"" + std::string(field.also) + "\"";
}

/// What a single text of this key may be.
std::string text_words(const Field& field) {
    if (field.refers == to_address) return "address, such as \"circuit:ID\"";
    if (field.refers == to_trip_of) return "address, such as \"breaker:ID\", or \"survey:\"";
    if (field.refers == to_hunt_place) return "place of a hunt, such as \"outlet:ID\", \"run:ID\" or \"home-run\"";
    if (field.refers != to_nothing) return ids_of(field);
    if (!field.words.empty()) return "one of " + quoted_list(field.words);
    return field.pattern ? std::string(field.pattern->words) : "text";
}

std::string number_words(const Field& field, std::string kind) {
    if (!field.unit.empty()) kind += ", " + std::string(field.unit);
    if (field.above_least) kind += ", above 0";
    if (field.least > 0) kind += fmt::format(", at least {}", field.least);
    if (field.most < 1e6) kind += fmt::format(", at most {}", field.most);
    return kind;
}

}  // namespace

std::string type_words(const Field& field) {
    switch (field.form) {
        case Form::text:
        case Form::text_or_number:
            return text_words(field);
        case Form::texts:
            return "list: " + text_words(field);
        case Form::text_or_texts:
            return text_words(field) + "; or a list of them";
        case Form::flag:
            return "true or false";
        case Form::number:
            return number_words(field, "number");
        case Form::whole:
            return number_words(field, "whole number");
        case Form::wholes:
            return number_words(field, "list: whole number");
        case Form::date:
            return "date, or date and time";
        case Form::clock:
            return "date and time";
        case Form::table:
            return "table (below)";
        case Form::volts_by_address:
            return "table: address = volts";
        case Form::columns:
            return "table: column = address or table";
        case Form::photos:
            return "list: file, or table of file, at, note";
    }
    return "";
}

std::string KeyTable::header() const {
    const std::string inside(name);
    return shape == Shape::one ? "[" + inside + "]" : "[[" + inside + "]]";
}

std::span<const KeyTable> all_tables() {
    static const std::vector<KeyTable> tables = make_tables();
    return tables;
}

const KeyTable& table_named(std::string_view name) { return *find_table(name); }

const KeyTable* find_table(std::string_view name) {
    const auto found = std::ranges::find(all_tables(), name, &KeyTable::name);
    return found == all_tables().end() ? nullptr : &*found;
}

std::string_view id_of(const Survey& survey, const KeyTable& table, std::size_t row) {
    std::string_view id;
    each_table([&](std::string_view name, auto member) {
        if constexpr (requires { (survey.*member)[row].id; })
            if (name == table.name) id = (survey.*member)[row].id;
    });
    return id;
}

}  // namespace doorcard
