// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "desk/entry_keys.hpp"
#include "desk/field_labels.hpp"
#include "desk/form.hpp"

namespace doorcard {
namespace {

const Field* field_of(std::string_view table, std::string_view key) {
    const KeyTable* keys = find_table(table);
    return keys ? field_named(keys->keys, key) : nullptr;
}

bool is_long(std::string_view key) { return key == "complaint" || key == "notes" || key == "note"; }

/// `5 Kitchen counter`: a breaker and what is on it.
Message breaker_choice(const Survey& survey, const Breaker& breaker) {
    std::string text = survey.panels.size() > 1 ? breaker.panel + " " : "";
    text += name_of(positions_of(breaker));
    for (const Circuit& circuit : survey.circuits)
        if (circuit.purpose && std::ranges::find(circuit.breakers, breaker.id) != circuit.breakers.end())
            return verbatim(text + " " + *circuit.purpose);
    return verbatim(breaker.old_label ? text + " " + *breaker.old_label : text);
}

Message circuit_choice(const Survey& survey, const Circuit& circuit) {
    const Breaker* breaker = circuit.breakers.empty() ? nullptr : survey.breakers.find(circuit.breakers.front());
    const std::string place = breaker ? name_of(positions_of(*breaker)) + " " : "";
    return verbatim(place + circuit.purpose.value_or(circuit.id));
}

Message outlet_choice(const Survey&, const Outlet& outlet) {
    return verbatim(outlet.id + (outlet.label ? " " + *outlet.label : ""));
}
Message load_choice(const Survey&, const Load& load) { return verbatim(load.title.value_or(load.id)); }
Message panel_choice(const Survey&, const Panel& panel) { return verbatim(panel.title.value_or(panel.id)); }
Message source_choice(const Survey&, const Source& source) { return verbatim(source.title.value_or(source.id)); }
Message managed_choice(const Survey&, const Managed& managed) { return verbatim(managed.id); }

/// What a field may name, as choices; more than anybody scrolls through are typed instead.
class Referents {
public:
    Referents(const Survey& survey, const Field& field) : survey_(survey), kinds_(field.refers) {
        if (!field.also.empty()) add(std::string(field.also), {tr("straight from the panel"), {}});
        add_things(to_source, survey.sources, source_choice);
        add_things(to_panel, survey.panels, panel_choice);
        add_things(to_breaker, survey.breakers, breaker_choice);
        add_things(to_circuit, survey.circuits, circuit_choice);
        add_things(to_outlet, survey.outlets, outlet_choice);
        add_things(to_load, survey.loads, load_choice);
        add_things(to_managed, survey.managed, managed_choice);
    }
    std::vector<FieldChoice> choices() && {
        constexpr std::size_t most = 300;
        return choices_.size() > 1 && choices_.size() <= most ? std::move(choices_) : std::vector<FieldChoice>{};
    }

private:
    void add(std::string id, Message label) { choices_.push_back({std::move(id), std::move(label)}); }

    template <class T>
    void add_things(std::uint32_t bit, const Table<T>& things, Message (*label)(const Survey&, const T&)) {
        constexpr std::size_t most = 300;
        if (!(kinds_ & bit)) return;
        for (std::size_t i = 0; i < std::min(things.size(), most + 1); ++i)
            add(things[i].id, label(survey_, things[i]));
    }

    const Survey& survey_;
    std::uint32_t kinds_;
    std::vector<FieldChoice> choices_{{"", {tr("not known"), {}}}};
};

bool names_one(const Field& field) {
    return (field.form == Form::text || field.form == Form::text_or_texts) && field.refers != to_nothing &&
           field.refers < to_address;
}

/// `= X` in what a key means: what is taken where nothing is said. Only where X is a word in quotes or a number.
std::string default_in(std::string_view meaning) {
    const std::size_t at = meaning.rfind("= ");
    if (at == std::string_view::npos) return {};
    std::string_view value = meaning.substr(at + 2);
    value = value.substr(0, value.find_first_of(";,"));
    const bool in_quotes = value.size() > 2 && value.front() == '"' && value.back() == '"';
    if (in_quotes) return std::string(value.substr(1, value.size() - 2));
    if (value == "false" || value == "true") return std::string(value);
    const bool is_number = value.find_first_not_of("0123456789.") == std::string_view::npos;
    return is_number ? std::string(value) : std::string();
}

Message word_label(const std::string& word) {
    const auto known = std::ranges::find(word_labels(), std::string_view(word), &WordLabel::word);
    return known == word_labels().end() ? verbatim(word) : Message{known->label, {}};
}

Message list_hint(const Field& field) {
    if (field.words.empty()) return {tr("with commas between; none: looked, there is none"), {}};
    std::vector<Message::Part> words;
    for (const std::string_view word : field.words) words.emplace_back(word_label(std::string(word)));
    return {tr("{0}; none: looked, there is none"), {and_list(std::move(words))}};
}

}  // namespace

Message label_of(std::string_view table, std::string_view key) {
    for (const FieldLabel& one : field_labels())
        if ((one.table == table || one.table == "*") && one.key == key) return {one.label, {}};
    return verbatim(std::string(key));
}

Message hint_of(std::string_view table, std::string_view key) {
    for (const FieldLabel& one : field_hints())
        if (one.table == table && one.key == key) return {one.label, {}};
    const Field* field = field_of(table, key);
    if (!field) return {};
    if (field->form == Form::date) return {tr("2026-05-14"), {}};
    if (field->form == Form::clock) return {tr("2026-05-14 09:30"), {}};
    if (field->form == Form::texts || field->form == Form::wholes) return list_hint(*field);
    const std::string usual = default_in(field->meaning);
    return usual.empty() ? Message{} : Message{tr("taken as {0} where nothing is said"), {word_label(usual)}};
}

Entry entry_kind(std::string_view table, std::string_view key) {
    const Field* field = field_of(table, key);
    if (!field) return Entry::text;
    if (is_long(key)) return Entry::long_text;
    if (table == "circuit" && key == "neutral") return Entry::choice;
    if (names_one(*field)) return Entry::choice;
    switch (field->form) {
        case Form::flag:
            return Entry::yes_no;
        case Form::number:
            return Entry::number;
        case Form::whole:
            return Entry::whole;
        case Form::date:
        case Form::clock:
            return Entry::date;
        case Form::text:
            return field->words.empty() ? Entry::text : Entry::choice;
        case Form::text_or_texts:
        case Form::texts:
        case Form::wholes:
        case Form::photos:
            return Entry::list;
        default:
            return Entry::text;
    }
}

std::string unit_of(std::string_view table, std::string_view key) {
    const Field* field = field_of(table, key);
    return field ? std::string(field->unit) : std::string();
}

std::vector<FieldChoice> word_choices(WordList words) {
    std::vector<FieldChoice> choices{{"", {tr("not known"), {}}}};
    for (const std::string_view word : words) choices.push_back({std::string(word), word_label(std::string(word))});
    return choices;
}

std::vector<FieldChoice> choices_of(const Survey& survey, std::string_view table, std::string_view key) {
    const Field* field = field_of(table, key);
    if (!field) return {};
    if (field->form == Form::flag)
        return {{"", {tr("not looked"), {}}}, {"true", {tr("yes"), {}}}, {"false", {tr("no"), {}}}};
    if (field->form == Form::text && !field->words.empty()) return word_choices(field->words);
    return names_one(*field) ? Referents(survey, *field).choices() : std::vector<FieldChoice>{};
}

}  // namespace doorcard
