// SPDX-License-Identifier: MIT
#include "desk/field_typed.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cmath>

#include "base/folded.hpp"
#include "base/words.hpp"
#include "desk/appliances.hpp"
#include "desk/form_order.hpp"
#include "desk/grid.hpp"
#include "desk/moment_typed.hpp"
#include "desk/number_typed.hpp"
#include "desk/typed_words.hpp"
#include "file/write_value.hpp"

namespace doorcard {
namespace {

using Toml = std::optional<std::string>;

bool is_one_of(std::string_view word, std::initializer_list<std::string_view> words) {
    return std::ranges::find(words, word) != words.end();
}

bool says_none(std::string_view typed) { return is_one_of(folded(typed), {"none", "ninguno", "ninguna", "[]"}); }

/// Wire sizes as the tables have them: `#12`, `12 AWG`, `250 kcmil`.
std::string size_typed(std::string_view typed) {
    std::string text(trimmed(typed));
    if (text.starts_with('#')) text.erase(0, 1);
    for (const std::string_view unit : {"awg", "kcmil", "mcm"})
        if (folded(text).ends_with(unit)) text.resize(text.size() - unit.size());
    return std::string(trimmed(text));
}

bool is_size(std::string_view key) { return key == "size" || key.ends_with("_size"); }

/// What is typed into one field, as TOML.
class FieldTyping {
public:
    FieldTyping(const Survey& survey, const EntryKeys& entry, std::string_view key, const TypingPlace& place)
        : survey_(survey), entry_(entry), key_(key), place_(place), field_(*field_named(entry.keys, key)) {}

    Outcome<Toml> value(std::string_view typed) const {
        const std::string text(trimmed(typed));
        if (text.empty()) return Toml();
        switch (field_.form) {
            case Form::number:
            case Form::whole:
                return number(text);
            case Form::date:
            case Form::clock:
                return moment_typed(text, field_.form == Form::clock).map([](std::string m) { return Toml(m); });
            case Form::flag:
                return flag(text);
            case Form::text:
                return single(text);
            case Form::text_or_number:
                return Toml(quoted(horsepower(text)));
            case Form::volts_by_address:
                return volts(text);
            case Form::columns:
                return Toml("{ " + text + " }");
            default:
                return list(text);
        }
    }

private:
    Outcome<Toml> number(const std::string& text) const {
        return number_typed(text, field_.unit).map([](double n) { return Toml(written_number(n)); });
    }

    static Outcome<Toml> flag(const std::string& text) {
        const std::string word = folded(text);
        if (is_one_of(word, {"true", "yes", "y", "si", "s"})) return Toml("true");
        if (is_one_of(word, {"false", "no", "n"})) return Toml("false");
        return refused(fmt::format("\"{}\" is neither yes nor no", text), "yes, no, or nothing: not looked");
    }

    static std::string horsepower(const std::string& text) {
        return std::string(folded(text).ends_with("hp") ? trimmed(text.substr(0, text.size() - 2)) : text);
    }

    Outcome<Toml> single(const std::string& text) const {
        const std::string said = one(text);
        if ((field_.refers == to_address || field_.refers == to_trip_of) && !parse_address(said))
            return refused(fmt::format("nothing is called \"{}\"", text), "say it as 5, 2+4, 9 N, MAIN A, K3");
        return Toml(quoted(said));
    }

    std::string one(const std::string& text) const {
        if (is_size(field_.name)) return size_typed(text);
        return reference_said(survey_, field_, place_.panel, text);
    }

    Outcome<Toml> list(const std::string& text) const {
        if (says_none(text) && field_.form != Form::text_or_texts) return Toml("[]");
        if (field_.form == Form::photos) return photos(text);
        if (field_.form == Form::text_or_texts && one(text) != text) return Toml(quoted(one(text)));
        std::vector<std::string> written;
        for (const std::string& item : items_of(text)) {
            if (field_.form == Form::wholes) {
                written.push_back(item);
                continue;
            }
            for (const std::string& word : words_of(item)) written.push_back(quoted(one(word)));
        }
        if (written.size() == 1 && field_.form == Form::text_or_texts) return Toml(written.front());
        return Toml(fmt::format("[{}]", fmt::join(written, ", ")));
    }

    /// An item of a list of closed words, as it is written; guards may be typed as on the face.
    std::vector<std::string> words_of(const std::string& item) const {
        if (field_.words.empty()) return {item};
        Guards guards;
        if (std::ranges::find(field_.words, "equipment-ground") != field_.words.end() && add_guard_word(item, guards)) {
            std::vector<std::string> words;
            for (const Guard guard : *guards) words.emplace_back(enum_words<Guard>[static_cast<std::size_t>(guard)]);
            return words;
        }
        return {choice_said(word_choices(field_.words), item)};
    }

    /// Pictures by their files; one that was there keeps what is said of it.
    Toml photos(const std::string& text) const {
        const auto held = value_held(entry_, key_);
        const Photos before = held ? std::get<Photos>(*held) : Photos{};
        std::vector<std::string> written;
        for (const std::string& file : items_of(text)) {
            const auto known = std::ranges::find(before, file, &Photo::file);
            written.push_back(known == before.end() ? quoted(file) : written_photo(*known));
        }
        return fmt::format("[{}]", fmt::join(written, ", "));
    }

    /// `13 = 0.4, K3 = 119`.
    Outcome<Toml> volts(const std::string& text) const {
        std::vector<std::string> written;
        for (const std::string& item : items_of(text)) {
            const std::size_t sign = std::min(item.rfind('='), item.size());
            const auto to = address_said(survey_, place_.panel, item.substr(0, sign));
            if (!to || sign == item.size())
                return refused(fmt::format("\"{}\" does not say volts to what", item), "write it as 13 = 0.4");
            auto number = number_typed(item.substr(sign + 1), "V");
            if (!number) return tl::unexpected(std::move(number.error()));
            written.push_back(fmt::format("{} = {}", quoted(*to), written_number(*number)));
        }
        return Toml(fmt::format("{{ {} }}", fmt::join(written, ", ")));
    }

    const Survey& survey_;
    const EntryKeys& entry_;
    std::string_view key_;
    const TypingPlace& place_;
    const Field& field_;
};

/// Keys that may not stand beside this one, to be taken out before it is set.
std::vector<KeyEdit> others_out(const EntryKeys& entry, std::string_view key) {
    const Field& field = *field_named(entry.keys, key);
    std::vector<KeyEdit> out;
    if (field.group.empty()) return out;
    const std::string before(key.substr(0, key.size() - field.name.size()));
    for (const Field& other : list_with(entry.keys, key))
        if (other.group == field.group && other.name != field.name && other.name != field.beside &&
            value_held(entry, before + std::string(other.name)))
            out.push_back({before + std::string(other.name), std::nullopt});
    return out;
}

/// The key of a length that is typed in these units.
std::string key_in(const EntryKeys& entry, std::string_view key, Units units) {
    const MeasureKeys measure = measure_keys(list_with(entry.keys, key), key);
    if (measure.feet.empty()) return std::string(key);
    return units == Units::feet ? measure.feet : measure.metres;
}

std::string held_key(const EntryKeys& entry, std::string_view key) {
    const std::string feet = key_in(entry, key, Units::feet);
    return value_held(entry, feet) ? feet : key_in(entry, key, Units::metres);
}

double in_units(double written, std::string_view from, Units to) {
    const bool is_area = from.ends_with('2');
    const double feet = is_area ? square_feet_per_square_metre : feet_per_metre;
    return to == Units::feet ? written * feet : written / feet;
}

/// A length or area as it is shown: as it was written, or in the other unit to a tenth.
std::string measure_shown(const EntryKeys& entry, std::string_view key, Units units) {
    const std::string held = held_key(entry, key);
    if (held == key_in(entry, key, units)) return value_read(entry, held);
    const auto value = value_held(entry, held);
    if (!value) return {};
    return fmt::format("{}", std::round(in_units(std::get<double>(*value), held, units) * 10) / 10);
}

bool is_nameplate(std::string_view key) {
    return is_one_of(key, {"va", "watts", "amps", "hp", "min_circuit_a", "max_device_a"});
}

/// The note that a load is only typical goes with the first figure of its own nameplate.
void drop_typical_note(std::vector<KeyEdit>& keys, std::string_view table, const EntryKeys& entry,
                       std::string_view key) {
    if (table != "load" || !is_nameplate(key)) return;
    const std::string note = value_read(entry, "note");
    if (const auto left = without_typical_note(note))
        keys.push_back({"note", left->empty() ? Toml() : Toml(quoted(*left))});
}

}  // namespace

std::string panel_of_entry(const Survey& survey, std::string_view address) {
    const std::string_view id = address.substr(std::min(address.find(':') + 1, address.size()));
    const auto panel_of_breaker = [&](std::string_view breaker) {
        const Breaker* found = survey.breakers.find(breaker);
        return found ? found->panel : std::string();
    };
    if (address.starts_with("panel:")) return std::string(id);
    if (address.starts_with("breaker:")) return panel_of_breaker(id);
    const Circuit* circuit = address.starts_with("circuit:") ? survey.circuits.find(id) : nullptr;
    if (circuit && !circuit->breakers.empty()) return panel_of_breaker(circuit->breakers.front());
    return survey.panels.size() == 1 ? survey.panels[0].id : std::string();
}

std::string choice_said(const std::vector<FieldChoice>& choices, std::string_view typed) {
    const std::string wanted = folded(trimmed(typed));
    for (const FieldChoice& choice : choices)
        if (choice.value == typed) return choice.value;
    for (const FieldChoice& choice : choices)
        if (!choice.value.empty() && folded(choice.value) == wanted) return choice.value;
    for (const std::string& language : Words::languages()) {
        const Words words = Words::in(language);
        for (const FieldChoice& choice : choices)
            if (folded(words.say(choice.label)) == wanted) return choice.value;
    }
    return std::string(typed);
}

std::string value_shown(const Survey& survey, const EntryKeys& entry, std::string_view key, const TypingPlace& place) {
    const Field* field = field_named(entry.keys, key);
    const auto value = field ? value_held(entry, held_key(entry, key)) : std::nullopt;
    if (!value) return {};
    if (!measure_keys(list_with(entry.keys, key), key).feet.empty()) return measure_shown(entry, key, place.units);
    if (field->form == Form::text_or_texts && std::get<Ids>(*value).size() == 1) return std::get<Ids>(*value).front();
    const std::string read = value_read(entry, key);
    return field->refers == to_address || field->refers == to_trip_of
               ? (field->form == Form::text ? said_of(survey, place.panel, read) : read)
               : read;
}

Outcome<std::vector<KeyEdit>> keys_typed(const Survey& survey, std::string_view table, const EntryKeys& entry,
                                         std::string_view key, std::string_view typed, const TypingPlace& place) {
    const Field* field = field_named(entry.keys, key);
    if (!field || field->form == Form::table) return refused("there is no such field", "choose one that is there");
    const bool is_measure = !measure_keys(list_with(entry.keys, key), key).feet.empty();
    if (is_measure && !trimmed(typed).empty() && typed == measure_shown(entry, key, place.units))
        return std::vector<KeyEdit>{{held_key(entry, key), value_read(entry, held_key(entry, key))}};
    const std::string to = key_in(entry, key, place.units);
    const std::string text = choice_said(choices_of(survey, table, key), typed);
    auto value = FieldTyping(survey, entry, to, place).value(text);
    if (!value) return tl::unexpected(std::move(value.error()));
    if (!*value) return std::vector<KeyEdit>{{held_key(entry, key), std::nullopt}};
    std::vector<KeyEdit> keys = others_out(entry, to);
    keys.push_back({to, *std::move(value)});
    drop_typical_note(keys, table, entry, key);
    return keys;
}

}  // namespace doorcard
