// SPDX-License-Identifier: MIT
#include "desk/form.hpp"

#include <algorithm>
#include <array>
#include <initializer_list>
#include <span>

#include "desk/entry_keys.hpp"
#include "desk/face_places.hpp"
#include "desk/field_labels.hpp"
#include "desk/neutral_choices.hpp"

namespace doorcard {
namespace {

using Keys = std::span<const std::string_view>;

std::string_view table_of(std::string_view address) { return address.substr(0, address.find(':')); }

bool is_of_other_units(std::string_view key, Units units) {
    const bool feet = key.ends_with("_ft") || key.ends_with("_ft2"),
               metres = key.ends_with("_m") || key.ends_with("_m2");
    return (feet && units == Units::metres) || (metres && units == Units::feet);
}

/// The same length in the other unit: "run_ft" for "run_m".
std::string sibling(std::string_view key) {
    if (key.ends_with("_ft2")) return std::string(key.substr(0, key.size() - 4)) + "_m2";
    if (key.ends_with("_m2")) return std::string(key.substr(0, key.size() - 3)) + "_ft2";
    if (key.ends_with("_ft")) return std::string(key.substr(0, key.size() - 3)) + "_m";
    return std::string(key.substr(0, key.size() - 2)) + "_ft";
}

bool is_long(std::string_view key) { return key == "complaint" || key == "notes" || key == "note"; }

const Field* field_of(std::string_view table, std::string_view key) {
    const KeyTable* keys = find_table(table);
    return keys ? field_named(keys->keys, key) : nullptr;
}

/// Fills groups with the keys of one entry.
class FormMaking {
public:
    FormMaking(const Survey& survey, Units units) : survey_(survey), units_(units) {}

    void add(Message title, const std::string& address, Keys keys, bool folded = false) {
        FormGroup group{std::move(title), {}, folded};
        for (const std::string_view key : keys) add_field(group, address, key, !folded);
        if (!group.fields.empty()) groups_.push_back(std::move(group));
    }

    /// All labelled keys of the table that are not among these.
    void add_rest(Message title, const std::string& address, Keys but) {
        std::vector<std::string_view> rest;
        for (const FieldLabel& label : field_labels())
            if (label.table == table_of(address) && std::ranges::find(but, label.key) == but.end() && label.key != "id")
                rest.push_back(label.key);
        rest.push_back("note");
        rest.push_back("photos");
        add(std::move(title), address, rest, true);
    }

    std::vector<FormGroup> done() && { return std::move(groups_); }

private:
    void add_field(FormGroup& group, const std::string& address, std::string_view key, bool important) {
        const auto entry = entry_of(survey_, address);
        const Field* field = entry ? field_named(entry->keys, key) : nullptr;
        if (!field) return;
        const std::string value = value_read(*entry, key);
        if (is_of_other_units(key, units_) && value.empty()) return;
        if (!is_of_other_units(key, units_) && field_named(entry->keys, sibling(key)) && value.empty() &&
            (key.ends_with("_ft") || key.ends_with("_m") || key.ends_with("_ft2") || key.ends_with("_m2")) &&
            !value_read(*entry, sibling(key)).empty())
            return;
        const std::string_view table = table_of(address);
        FormField made;
        made.address = address;
        made.key = key;
        made.label = label_of(table, key);
        made.entry = entry_kind(table, key);
        made.value = value == "[]" ? "none" : value;
        made.unit = field->unit;
        made.choices = table == "circuit" && key == "neutral" ? neutral_choices(survey_, address.substr(8))
                                                              : choices_of(survey_, table, key);
        made.hint = hint_of(*field, made.entry);
        made.important = important;
        group.fields.push_back(std::move(made));
    }

    static Message hint_of(const Field& field, Entry entry) {
        if (entry == Entry::date) return {tr("2026-05-14"), {}};
        if (entry == Entry::list && !field.words.empty()) {
            std::string words;
            for (const auto word : field.words) words += (words.empty() ? "" : ", ") + std::string(word);
            return {tr("{0}; none: looked"), {words}};
        }
        return {};
    }

    const Survey& survey_;
    Units units_;
    std::vector<FormGroup> groups_;
};

constexpr std::array<std::string_view, 5> usual_breaker = {"amps", "state", "guards", "old_label", "keep_on"};
constexpr std::array<std::string_view, 9> usual_circuit = {"purpose",        "traced.how",    "neutral",
                                                           "wire.size",      "wire.metal",    "wire.insulation",
                                                           "wire.length_ft", "wire.length_m", "wire.method"};
constexpr std::array<std::string_view, 9> usual_outlet = {"label",  "room",  "kind",  "circuit", "upstream",
                                                          "guards", "wired", "place", "keep_on"};
constexpr std::array<std::string_view, 11> usual_load = {"title", "outlet", "circuit", "count",      "watts",     "va",
                                                         "amps",  "volts",  "duty",    "continuous", "connection"};
constexpr std::array<std::string_view, 7> usual_source = {"title",  "kind",       "amps",    "system",
                                                          "starts", "disconnect", "labelled"};
constexpr std::array<std::string_view, 9> usual_panel = {"title", "location", "fed_by",  "system", "bus_a",
                                                         "main",  "main_a",   "main_at", "spaces"};
constexpr std::array<std::string_view, 6> first_look = {"deadfront", "condition", "open_spaces_unfilled",
                                                        "place",     "service",   "all_breakers_entered"};

Keys usual_of(std::string_view table) {
    if (table == "breaker") return usual_breaker;
    if (table == "circuit") return usual_circuit;
    if (table == "outlet") return usual_outlet;
    if (table == "load") return usual_load;
    if (table == "source") return usual_source;
    if (table == "panel") return usual_panel;
    return {};
}

Message thing_title(const Survey& survey, std::string_view address) {
    const std::string id(address.substr(address.find(':') + 1));
    if (table_of(address) == "circuit")
        if (const Circuit* circuit = survey.circuits.find(id))
            return {tr("Circuit: {0}"), {circuit->purpose.value_or(id)}};
    if (table_of(address) == "breaker") return {tr("Breaker {0}"), {id}};
    if (table_of(address) == "outlet") return {tr("Outlet {0}"), {id}};
    if (table_of(address) == "load") return {tr("Load {0}"), {id}};
    if (table_of(address) == "panel") return {tr("Panel {0}"), {id}};
    if (table_of(address) == "source") return {tr("Source {0}"), {id}};
    return {};
}

void add_thing(FormMaking& form, const Survey& survey, const std::string& address) {
    const std::string_view table = table_of(address);
    const Keys usual = usual_of(table);
    form.add(thing_title(survey, address), address, usual);
    const Message more = table == "breaker"   ? Message{tr("More of this breaker"), {}}
                         : table == "circuit" ? Message{tr("More of this circuit"), {}}
                                              : Message{tr("More"), {}};
    if (usual.empty()) {
        std::vector<std::string_view> all;
        for (const FieldLabel& label : field_labels())
            if (label.table == table && label.key != "id") all.push_back(label.key);
        return form.add({}, address, all);
    }
    form.add_rest(more, address, usual);
}

std::string outlet_label(const Outlet& outlet) { return outlet.id + (outlet.label ? " " + *outlet.label : ""); }

std::vector<FieldChoice> words_of(const Field& field) {
    std::vector<FieldChoice> choices{{"", {tr("not known"), {}}}};
    for (const auto word : field.words) {
        const auto known = std::ranges::find(word_labels(), word, &WordLabel::word);
        choices.push_back({std::string(word),
                           known == word_labels().end() ? verbatim(std::string(word)) : Message{known->label, {}}});
    }
    return choices;
}

std::vector<FieldChoice> references(const Survey& survey, std::string_view table, std::string_view key) {
    constexpr std::size_t most = 300;  // more are typed by their id
    std::vector<FieldChoice> choices{{"", {tr("not known"), {}}}};
    if ((table == "outlet" || table == "load") && key == "circuit" && survey.circuits.size() <= most)
        for (const Circuit& one : survey.circuits)
            choices.push_back({one.id, verbatim((one.breakers.empty() ? "" : one.breakers.front() + "  ") +
                                                one.purpose.value_or(one.id))});
    if (table == "load" && key == "outlet" && survey.outlets.size() <= most)
        for (const Outlet& one : survey.outlets) choices.push_back({one.id, verbatim(outlet_label(one))});
    if (key == "panel")
        for (const Panel& one : survey.panels) choices.push_back({one.id, verbatim(one.title.value_or(one.id))});
    return choices.size() > 1 ? choices : std::vector<FieldChoice>{};
}

}  // namespace

Message label_of(std::string_view table, std::string_view key) {
    for (const FieldLabel& one : field_labels())
        if ((one.table == table || one.table == "*") && one.key == key) return {one.label, {}};
    return verbatim(std::string(key));
}

Entry entry_kind(std::string_view table, std::string_view key) {
    const Field* field = field_of(table, key);
    if (!field) return Entry::text;
    if (is_long(key)) return Entry::long_text;
    if (table == "circuit" && key == "neutral") return Entry::choice;
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
            return key == "circuit" ? Entry::choice : Entry::list;
        case Form::texts:
        case Form::wholes:
            return Entry::list;
        default:
            return Entry::text;
    }
}

std::string unit_of(std::string_view table, std::string_view key) {
    const Field* field = field_of(table, key);
    return field ? std::string(field->unit) : std::string();
}

std::vector<FieldChoice> choices_of(const Survey& survey, std::string_view table, std::string_view key) {
    const Field* field = field_of(table, key);
    if (!field) return {};
    if (field->form == Form::flag)
        return {{"", {tr("not looked"), {}}}, {"true", {tr("yes"), {}}}, {"false", {tr("no"), {}}}};
    if (field->form == Form::text && !field->words.empty()) return words_of(*field);
    return references(survey, table, key);
}

std::vector<FormGroup> form_of(const Survey& survey, std::string_view address, Units units) {
    FormMaking form(survey, units);
    if (const auto entry = entry_of(survey, address); entry && (entry->thing || table_of(address) == "grounding"))
        add_thing(form, survey, std::string(address));
    return std::move(form).done();
}

std::vector<FormGroup> slip_of(const Survey& survey, std::string_view panel, Position at, Units units) {
    FormMaking form(survey, units);
    const Breaker* breaker = breaker_at(survey, panel, at);
    if (!breaker) return {};
    std::vector<std::string> circuits;
    for (const Circuit& circuit : survey.circuits)
        if (std::ranges::find(circuit.breakers, breaker->id) != circuit.breakers.end())
            circuits.push_back("circuit:" + circuit.id);
    add_thing(form, survey, "breaker:" + breaker->id);
    for (const std::string& circuit : circuits) add_thing(form, survey, circuit);
    return std::move(form).done();
}

std::vector<FormGroup> arrival_of(const Survey& survey, std::string_view panel, Units units) {
    constexpr std::array<std::string_view, 4> who = {"worker", "surveyor", "date", "title"};
    constexpr std::array<std::string_view, 1> story = {"complaint"};
    constexpr std::array<std::string_view, 2> building = {"built", "address"};
    constexpr std::array<std::string_view, 6> dwelling = {
        "floor_area_ft2", "floor_area_m2", "garage_ft2", "garage_m2", "small_appliance_circuits", "laundry_circuits"};
    constexpr std::array<std::string_view, 8> papers = {"contact", "permit",      "licence", "revision",
                                                        "rules",   "local_rules", "notes",   "photos"};
    FormMaking form(survey, units);
    const std::string of_panel = "panel:" + std::string(panel);
    form.add({tr("Who works"), {}}, "survey:", who);
    form.add({tr("The story"), {}}, "survey:", story);
    if (!panel.empty()) {
        form.add({tr("First look: heat, smell, water, cover"), {}}, of_panel, first_look);
        form.add({tr("The panel"), {}}, of_panel, usual_panel);
        std::vector<std::string_view> shown(usual_panel.begin(), usual_panel.end());
        shown.insert(shown.end(), first_look.begin(), first_look.end());
        form.add_rest({tr("More of the panel"), {}}, of_panel, shown);
    }
    for (const Source& source : survey.sources)
        form.add(thing_title(survey, "source:" + source.id), "source:" + source.id, usual_source,
                 survey.sources.size() > 1);
    form.add({tr("The building"), {}}, "survey:", building);
    for (const Dwelling& one : survey.dwellings)
        form.add({tr("Dwelling {0}"), {one.id}}, "dwelling:" + one.id, dwelling, true);
    form.add({tr("For the papers"), {}}, "survey:", papers, true);
    return std::move(form).done();
}

Outcome<Edit> filled_in(const Survey& survey, std::string_view address, std::string_view key, std::string_view typed,
                        Units) {
    if (address.starts_with("circuit:") && key == "neutral")
        return neutral_chosen(survey, std::string(address.substr(8)), std::string(typed));
    const auto entry = entry_of(survey, address);
    const Field* field = entry ? field_named(entry->keys, key) : nullptr;
    if (!field) return refused("there is no such field", "choose one that is there");
    const bool is_none = field->form == Form::texts || field->form == Form::wholes;
    auto value = is_none && typed == "none" ? std::optional<std::string>("[]") : value_typed(*field, typed);
    const std::string id(address.substr(address.find(':') + 1));
    Message name{id.empty() ? tr("change: {0}") : tr("change of {1}: {0}"), {label_of(table_of(address), key), id}};
    return keys_edit(
        std::move(name),
        {EntryEdit::Kind::change, std::string(address), {{std::string(key), std::move(value)}}, Mentions::refuse});
}

}  // namespace doorcard
