// SPDX-License-Identifier: MIT
#include "desk/form_order.hpp"

#include <algorithm>
#include <array>

#include "desk/entry_keys.hpp"

namespace doorcard {
namespace {

template <std::size_t N>
using KeyNames = std::array<std::string_view, N>;

constexpr KeyNames<5> usual_breaker = {"amps", "state", "guards", "old_label", "keep_on"};
constexpr KeyNames<11> usual_circuit = {"purpose",     "traced.how",  "neutral",         "three_wire",
                                        "wire.size",   "wire.metal",  "wire.insulation", "wire.length_ft",
                                        "wire.method", "ground.kind", "ground.size"};
constexpr KeyNames<9> usual_outlet = {"label",  "room",  "kind",  "circuit", "upstream",
                                      "guards", "wired", "place", "keep_on"};
constexpr KeyNames<12> usual_load = {"title", "outlet", "circuit", "count", "watts",      "va",
                                     "amps",  "hp",     "volts",   "duty",  "continuous", "connection"};
constexpr KeyNames<7> usual_source = {"title", "kind", "amps", "system", "starts", "disconnect", "labelled"};
constexpr KeyNames<9> usual_panel = {"title", "location", "fed_by",  "system", "bus_a",
                                     "main",  "main_a",   "main_at", "spaces"};
constexpr KeyNames<9> usual_reading = {"of",    "at",         "together",   "amps", "volts",
                                       "hours", "leakage_ma", "instrument", "by"};
constexpr KeyNames<10> usual_trip = {"of",         "at",     "running", "just_before", "device_says",
                                     "bare_reset", "resets", "signs",   "weather",     "new_since"};
constexpr KeyNames<8> usual_trial = {"circuit", "kind", "removed", "hours", "trips", "result", "at", "by"};
constexpr KeyNames<7> usual_round = {"off", "went_out", "stayed_on", "odd", "would_not_reset", "with", "at"};

constexpr KeyElsewhere elsewhere[] = {
    {"*", "id", tr("an id never changes")},
    {"breaker", "panel", tr("moved on the face")},
    {"breaker", "spaces", tr("moved on the face")},
    {"breaker", "half", tr("moved on the face")},
};

void add_keys(std::vector<std::string>& keys, FieldList list, std::string_view table, const std::string& before) {
    for (const Field& field : list) {
        const std::string key = before + std::string(field.name);
        if (is_edited_elsewhere(table, key)) continue;
        const MeasureKeys measure = measure_keys(list, field.name);
        if (field.form == Form::table)
            add_keys(keys, field.keys, table, key + ".");
        else if (measure.metres.empty() || measure.feet == field.name)
            keys.push_back(key);
    }
}

bool is_in(FieldList list, std::string_view name) { return std::ranges::find(list, name, &Field::name) != list.end(); }

}  // namespace

std::span<const std::string_view> usual_keys(std::string_view table) {
    if (table == "breaker") return usual_breaker;
    if (table == "circuit") return usual_circuit;
    if (table == "outlet") return usual_outlet;
    if (table == "load") return usual_load;
    if (table == "source") return usual_source;
    if (table == "panel") return usual_panel;
    if (table == "reading") return usual_reading;
    if (table == "trip") return usual_trip;
    if (table == "trial") return usual_trial;
    if (table == "round") return usual_round;
    return {};
}

std::vector<std::string> form_keys(std::string_view table) {
    std::vector<std::string> keys;
    if (const KeyTable* of = find_table(table)) add_keys(keys, of->keys, table, "");
    return keys;
}

std::span<const KeyElsewhere> keys_elsewhere() { return elsewhere; }

bool is_edited_elsewhere(std::string_view table, std::string_view key) {
    return std::ranges::any_of(
        elsewhere, [&](const KeyElsewhere& one) { return (one.table == table || one.table == "*") && one.key == key; });
}

MeasureKeys measure_keys(FieldList list, std::string_view key) {
    const std::size_t dot = key.rfind('.');
    const std::string before(key.substr(0, dot == std::string_view::npos ? 0 : dot + 1));
    const std::string_view name = key.substr(before.size());
    for (const auto& [feet, metres] : {std::pair<std::string_view, std::string_view>{"_ft2", "_m2"}, {"_ft", "_m"}}) {
        if (!name.ends_with(feet) && !name.ends_with(metres)) continue;
        const std::string stem(name.substr(0, name.rfind('_')));
        const std::string in_feet = stem + std::string(feet), in_metres = stem + std::string(metres);
        if (is_in(list, in_feet) && is_in(list, in_metres)) return {before + in_feet, before + in_metres};
    }
    return {};
}

}  // namespace doorcard
