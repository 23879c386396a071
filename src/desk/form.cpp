// SPDX-License-Identifier: MIT
#include "desk/form.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <span>

#include "desk/entry_keys.hpp"
#include "desk/face_places.hpp"
#include "desk/field_typed.hpp"
#include "desk/form_order.hpp"
#include "desk/neutral_choices.hpp"

namespace doorcard {
namespace {

using Keys = std::span<const std::string_view>;

std::string_view table_of(std::string_view address) { return address.substr(0, address.find(':')); }

/// Fills groups with the keys of one entry.
class FormMaking {
public:
    FormMaking(const Survey& survey, Units units) : survey_(survey), units_(units) {}

    void add(Message title, const std::string& address, Keys keys, bool folded = false) {
        FormGroup group{std::move(title), {}, folded};
        for (const std::string_view key : keys) add_field(group, address, key, !folded);
        if (!group.fields.empty()) groups_.push_back(std::move(group));
    }

    /// All keys of the table that are not among these.
    void add_rest(Message title, const std::string& address, Keys but) {
        const std::vector<std::string> all = form_keys(table_of(address));
        std::vector<std::string_view> rest;
        for (const std::string& key : all)
            if (std::ranges::find(but, key) == but.end()) rest.push_back(key);
        add(std::move(title), address, rest, true);
    }

    void add_group(FormGroup group) {
        if (!group.fields.empty()) groups_.push_back(std::move(group));
    }

    void add_field(FormGroup& group, const std::string& address, std::string_view key, bool important) const {
        const auto entry = entry_of(survey_, address);
        const Field* field = entry ? field_named(entry->keys, key) : nullptr;
        if (!field) return;
        const std::string_view table = table_of(address);
        FormField made{address, std::string(key), label_of(table, key), entry_kind(table, key), {}, {}, {}, {}, {}};
        made.value = value_shown(survey_, *entry, key, {panel_of_entry(survey_, address), units_});
        made.unit = unit_in(*entry, key, *field);
        made.choices = table == "circuit" && key == "neutral" ? neutral_choices(survey_, address.substr(8))
                                                              : choices_of(survey_, table, key);
        made.hint = hint_of(table, key);
        made.important = important;
        settle_choices(made);
        group.fields.push_back(std::move(made));
    }

    std::vector<FormGroup> done() && { return std::move(groups_); }

private:
    std::string unit_in(const EntryKeys& entry, std::string_view key, const Field& field) const {
        const MeasureKeys measure = measure_keys(list_with(entry.keys, key), key);
        if (measure.metres.empty() || units_ == Units::feet) return std::string(field.unit);
        return std::string(field_named(entry.keys, measure.metres)->unit);
    }

    /// What stands in the file is among the choices, whatever it is; what has none to choose from is typed.
    static void settle_choices(FormField& field) {
        if (field.entry != Entry::choice) return;
        if (field.choices.empty()) {
            field.entry = Entry::text;
        } else if (std::ranges::find(field.choices, field.value, &FieldChoice::value) == field.choices.end()) {
            field.choices.push_back({field.value, verbatim(field.value)});
        }
    }

    const Survey& survey_;
    Units units_;
    std::vector<FormGroup> groups_;
};

struct TableTitle {
    std::string_view table;
    const char* title;
    const char* more;
};
constexpr TableTitle titles[] = {
    {"survey", tr("The survey"), ""},
    {"dwelling", tr("Dwelling {0}"), ""},
    {"occupancy", tr("Use {0}"), ""},
    {"grounding", tr("Grounding"), ""},
    {"source", tr("Source {0}"), tr("More of this source")},
    {"panel", tr("Panel {0}"), tr("More of this panel")},
    {"breaker", tr("Breaker {0}"), tr("More of this breaker")},
    {"circuit", tr("Circuit: {0}"), tr("More of this circuit")},
    {"room", tr("Room {0}"), ""},
    {"outlet", tr("Outlet {0}"), tr("More of this outlet")},
    {"load", tr("Load {0}"), tr("More of this load")},
    {"managed", tr("Energy management {0}"), ""},
    {"reading", tr("Reading {0}"), tr("More of this reading")},
    {"recording", tr("Recording {0}"), ""},
    {"waveform", tr("Waveform {0}"), ""},
    {"demand", tr("Demand {0}"), ""},
    {"limit", tr("Watch level {0}"), ""},
    {"round", tr("Round {0}"), tr("More of this round")},
    {"mapping", tr("Mapping"), ""},
    {"trip", tr("Trip {0}"), tr("More of this trip")},
    {"hunt", tr("Hunt {0}"), ""},
    {"trial", tr("Step {0} of a hunt"), tr("More of this step")},
    {"accepted", tr("Accepted finding {0}"), ""},
    {"photo", tr("Photo {0}"), ""},
};

const TableTitle& title_of_table(std::string_view table) {
    return *std::ranges::find(titles, table, &TableTitle::table);
}

/// What an entry is called above its fields; a circuit by its text.
Message thing_title(const Survey& survey, std::string_view address) {
    std::string id(address.substr(address.find(':') + 1));
    const TableTitle& title = title_of_table(table_of(address));
    const Circuit* circuit = title.table == "circuit" ? survey.circuits.find(id) : nullptr;
    return {title.title, {circuit ? circuit->purpose.value_or(id) : id}};
}

void add_thing(FormMaking& form, const Survey& survey, const std::string& address) {
    const Keys usual = usual_keys(table_of(address));
    if (!usual.empty()) {
        form.add(thing_title(survey, address), address, usual);
        return form.add_rest({title_of_table(table_of(address)).more, {}}, address, usual);
    }
    const std::vector<std::string> all = form_keys(table_of(address));
    const std::vector<std::string_view> keys(all.begin(), all.end());
    form.add(thing_title(survey, address), address, keys);
}

std::vector<std::string> circuits_on(const Survey& survey, const Breaker& breaker) {
    std::vector<std::string> circuits;
    for (const Circuit& circuit : survey.circuits)
        if (std::ranges::find(circuit.breakers, breaker.id) != circuit.breakers.end()) circuits.push_back(circuit.id);
    return circuits;
}

constexpr std::array<std::string_view, 8> first_look = {
    "deadfront", "condition", "open_spaces_unfilled", "neutrals_doubled",
    "place",     "service",   "all_breakers_entered", "photos"};

/// What the breakers of a panel must stay on for: those that have a reason, and behind them, folded, all the others.
class StayingOn {
public:
    StayingOn(const FormMaking& form, const Survey& survey, std::string_view panel) {
        for (const Breaker& breaker : survey.breakers)
            if (breaker.panel == panel) add(form, survey, breaker);
    }
    FormGroup known{{tr("What must stay on"), {}}, {}, false};
    FormGroup others{{tr("Must anything else stay on?"), {}}, {}, true};

private:
    void add(const FormMaking& form, const Survey& survey, const Breaker& breaker) {
        FormGroup& group = breaker.keep_on ? known : others;
        form.add_field(group, "breaker:" + breaker.id, "keep_on", true);
        std::string name = name_of(positions_of(breaker));
        for (const std::string& id : circuits_on(survey, breaker))
            name += " " + survey.circuits.find(id)->purpose.value_or(id);
        if (circuits_on(survey, breaker).empty() && breaker.old_label) name += " " + *breaker.old_label;
        group.fields.back().label = verbatim(name);
    }
};

void add_panel(FormMaking& form, const Survey& survey, std::string_view panel) {
    const std::string of_panel = "panel:" + std::string(panel);
    form.add({tr("First look: heat, smell, water, cover"), {}}, of_panel, first_look);
    StayingOn staying(form, survey, panel);
    form.add_group(std::move(staying.known));
    form.add_group(std::move(staying.others));
}

void add_panel_facts(FormMaking& form, std::string_view panel) {
    const std::string of_panel = "panel:" + std::string(panel);
    const Keys usual = usual_keys("panel");
    form.add({tr("The panel"), {}}, of_panel, usual);
    std::vector<std::string_view> shown(usual.begin(), usual.end());
    shown.insert(shown.end(), first_look.begin(), first_look.end());
    form.add_rest({tr("More of the panel"), {}}, of_panel, shown);
}

void add_sources(FormMaking& form, const Survey& survey) {
    constexpr std::size_t few = 3;
    for (const Source& source : survey.sources)
        form.add(thing_title(survey, "source:" + source.id), "source:" + source.id, usual_keys("source"),
                 survey.sources.size() > few);
}

void add_building(FormMaking& form, const Survey& survey) {
    constexpr std::array<std::string_view, 2> building = {"built", "address"};
    constexpr std::array<std::string_view, 4> dwelling = {"floor_area_ft2", "garage_ft2", "small_appliance_circuits",
                                                          "laundry_circuits"};
    form.add({tr("The building"), {}}, "survey:", building);
    for (const Dwelling& one : survey.dwellings)
        form.add({tr("Dwelling {0}"), {one.id}}, "dwelling:" + one.id, dwelling, true);
    if (survey.dwellings.empty()) form.add({tr("If it is a dwelling"), {}}, "dwelling:", dwelling, true);
    const std::vector<std::string> all = form_keys("grounding");
    const std::vector<std::string_view> keys(all.begin(), all.end());
    form.add({tr("Grounding"), {}}, "grounding:", keys, true);
}

}  // namespace

std::vector<FormGroup> form_of(const Survey& survey, std::string_view address, Units units) {
    FormMaking form(survey, units);
    const auto entry = entry_of(survey, address);
    const bool may_be_absent = address == "grounding:" || address == "mapping:" || address == "dwelling:";
    if (entry && (entry->thing || may_be_absent)) add_thing(form, survey, std::string(address));
    return std::move(form).done();
}

std::vector<FormGroup> slip_of(const Survey& survey, std::string_view panel, Position at, Units units) {
    FormMaking form(survey, units);
    const Breaker* breaker = breaker_at(survey, panel, at);
    if (!breaker) return {};
    add_thing(form, survey, "breaker:" + breaker->id);
    for (const std::string& circuit : circuits_on(survey, *breaker)) add_thing(form, survey, "circuit:" + circuit);
    return std::move(form).done();
}

std::vector<FormGroup> arrival_of(const Survey& survey, std::string_view panel, Units units) {
    constexpr std::array<std::string_view, 4> who = {"worker", "surveyor", "date", "title"};
    constexpr std::array<std::string_view, 1> story = {"complaint"};
    constexpr std::array<std::string_view, 9> papers = {"contact",     "permit", "licence", "revision", "rules",
                                                        "local_rules", "notes",  "note",    "photos"};
    FormMaking form(survey, units);
    form.add({tr("Who works"), {}}, "survey:", who);
    form.add({tr("The story"), {}}, "survey:", story);
    if (survey.panels.contains(panel)) add_panel(form, survey, panel);
    add_sources(form, survey);
    if (survey.panels.contains(panel)) add_panel_facts(form, panel);
    add_building(form, survey);
    form.add({tr("For the papers"), {}}, "survey:", papers, true);
    return std::move(form).done();
}

}  // namespace doorcard
