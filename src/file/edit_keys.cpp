// SPDX-License-Identifier: MIT
#include "file/edit_keys.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "base/nearest_word.hpp"
#include "file/entry_reader.hpp"
#include "file/write_value.hpp"
#include "survey/edits/breaker_edits.hpp"
#include "survey/edits/thing_edits.hpp"

namespace doorcard {
namespace {

using Refusals = std::vector<Complaint>;

bool is_list(Form form) { return form == Form::texts || form == Form::wholes || form == Form::photos; }
bool is_text(Form form) { return form == Form::text || form == Form::text_or_texts || form == Form::text_or_number; }

std::string trimmed(std::string_view text) {
    const std::size_t first = text.find_first_not_of(" \t"), last = text.find_last_not_of(" \t");
    return first == std::string_view::npos ? "" : std::string(text.substr(first, last - first + 1));
}

/// `a, b` as a list in brackets.
std::string bracketed(const Field& field, std::string_view text) {
    std::string list;
    while (!text.empty()) {
        const std::size_t comma = std::min(text.find(','), text.size());
        const std::string item = trimmed(text.substr(0, comma));
        list += (list.empty() ? "" : ", ") + (field.form == Form::wholes ? item : quoted(item));
        text.remove_prefix(std::min(comma + 1, text.size()));
    }
    return "[" + list + "]";
}

/// What somebody typed, as TOML.
std::string as_toml(const Field& field, const std::string& typed) {
    const bool is_toml = typed.starts_with('"') || typed.starts_with('\'') || typed.starts_with('[');
    if (is_list(field.form)) return typed.starts_with('[') ? typed : bracketed(field, typed);
    if (is_text(field.form))
        return is_toml && (field.form == Form::text_or_texts || typed[0] != '[') ? typed : quoted(typed);
    return typed.empty() ? "\"\"" : typed;
}

/// The form of a value for somebody who typed one that is none.
std::string form_words(const Field& field) {
    if (field.form == Form::date) return "date, such as 2026-05-14";
    if (field.form == Form::clock) return "date and time, such as 2026-05-14T09:30:00";
    return type_words(field);
}

/// Where a dotted key leads: the list that its last part is in, and the thing that holds it.
struct Target {
    FieldList fields;
    void* owner;
    std::string where, key;
};

class KeySetter {
public:
    KeySetter(const KeyTable& table, void* owner) : table_(table), owner_(owner) {}

    void set(const KeyEdit& edit) {
        const Target target = target_of(edit);
        const auto field = std::ranges::find(target.fields, target.key, &Field::name);
        if (field != target.fields.end() && !edit.value) {
            if (field->is_required)
                refuse(fmt::format("{} needs \"{}\"", target.where, target.key), "give it another value");
            else
                field->clear(target.owner);
            return;
        }
        const bool known = field != target.fields.end();
        read(target, known ? as_toml(*field, *edit.value) : quoted(edit.value.value_or("")), known ? &*field : nullptr);
    }
    Refusals& refusals() { return refusals_; }

private:
    Target target_of(const KeyEdit& edit) {
        const std::size_t dot = edit.key.find('.');
        const auto outer = std::ranges::find(table_.keys, edit.key.substr(0, dot), &Field::name);
        const bool is_inner = dot != std::string::npos && outer != table_.keys.end() && outer->form == Form::table;
        if (!is_inner) return {table_.keys, owner_, table_.header(), edit.key};
        const void* there = outer->look(owner_);
        void* inner = there ? const_cast<void*>(there) : outer->open(owner_);  // NOLINT: a part of what we change
        return {outer->keys, inner, fmt::format("{} of {}", outer->name, table_.header()), edit.key.substr(dot + 1)};
    }

    void read(const Target& target, const std::string& value, const Field* field) {
        const std::string line = fmt::format("{} = {}\n", written_key(target.key), value);
        const auto parsed = TomlText::parse(line);
        if (!parsed)
            return refuse(fmt::format("{} = {} is no value", target.key, value),
                          field ? fmt::format("write {} = {}", target.key, form_words(*field))
                                : "write a text, number, date or list");
        std::vector<Field> fields(target.fields.begin(), target.fields.end());
        for (Field& field : fields) field.is_required = false;  // what is not given now is there already
        Complaints complaints;
        EntryReader(complaints).read(parsed->root(), fields, target.owner, target.where, nullptr, 0);
        for (Complaint& complaint : complaints.sorted()) refusals_.push_back(std::move(complaint));
    }

    void refuse(std::string wrong, std::string right) { refusals_.push_back({{}, std::move(wrong), std::move(right)}); }

    const KeyTable& table_;
    void* owner_;
    Refusals refusals_;
};

/// An entry of a table, by an address.
struct Entry {
    const KeyTable* table;
    std::string name;  // its id, or its place from 1
    std::size_t row;   // the number of entries where it is none of them
};

Outcome<Entry> entry_at(const Survey& survey, const std::string& address) {
    const std::size_t colon = std::min(address.find(':'), address.size());
    const std::string kind = address.substr(0, colon);
    Entry entry{find_table(kind), address.substr(std::min(colon + 1, address.size())), 0};
    if (!entry.table) {
        if (survey.breakers.find(address))
            return refused(fmt::format("\"{}\" is an id without its kind", address),
                           fmt::format("did you mean \"breaker:{}\"?", address));
        NearestWord search(kind);
        for (const KeyTable& table : all_tables()) search.offer(table.name);
        return refused(fmt::format("there is no kind \"{}\" in a survey", kind),
                       fmt::format("the nearest is \"{}\"", *search.nearest()));
    }
    const std::size_t count = entry.table->count(survey);
    if (entry.table->shape == Shape::one) return entry;
    while (entry.row < count) {
        const std::string_view id = id_of(survey, *entry.table, entry.row);
        if (entry.name == (id.empty() ? std::to_string(entry.row + 1) : id)) break;
        ++entry.row;
    }
    return entry;
}

tl::unexpected<Refusals> not_there(const Survey& survey, const Entry& entry) {
    NearestWord search(entry.name);
    for (std::size_t row = 0; row < entry.table->count(survey); ++row) search.offer(id_of(survey, *entry.table, row));
    return refused(
        fmt::format("there is no {} \"{}\"", entry.table->name, entry.name),
        search.meant() ? fmt::format("did you mean \"{}\"?", *search.meant()) : "name one that the survey has");
}

void settle_halves(Breaker& breaker) {
    if (breaker.halves.size() == 1) breaker.halves.assign(breaker.spaces.size(), breaker.halves.front());
}

/// A breaker goes to its new place first, with all that names it; then it gets its other keys.
Outcome<Survey> with_breaker(const Survey& survey, const Breaker& before, Breaker wanted) {
    settle_halves(wanted);
    if (place_of(before) == place_of(wanted)) return change_breaker(wanted).apply(survey);
    if (wanted.legs == before.legs) wanted.legs.reset();
    auto moved = move_breaker(before.id, place_of(wanted)).apply(survey);
    if (!moved) return moved;
    if (!wanted.id_given) wanted.id = wanted.default_id();
    if (wanted.tied_with == before.tied_with) wanted.tied_with = moved->breakers.find(wanted.id)->tied_with;
    return change_breaker(wanted).apply(std::move(*moved));
}

Outcome<Survey> changed(const Survey& survey, const Entry& entry, const EntryEdit& edit) {
    Survey after = survey;
    if (entry.table->shape == Shape::one && entry.table->count(survey) == 0) entry.table->add(after);
    if (entry.row >= entry.table->count(after)) return not_there(survey, entry);
    Refusals refusals;
    entry.table->alter(after, entry.row, [&](void* owner) {
        KeySetter setter(*entry.table, owner);
        for (const KeyEdit& key : edit.keys)
            if (key.key == "id")
                setter.refusals().push_back(
                    {{}, "an id in the file never changes", "add a new entry, and take this one out"});
            else
                setter.set(key);
        refusals = std::move(setter.refusals());
    });
    if (!refusals.empty()) return tl::unexpected(std::move(refusals));
    if (entry.table->name != "breaker") return after;
    return with_breaker(survey, survey.breakers[entry.row], after.breakers[entry.row]);
}

Outcome<Survey> added(const Survey& survey, const Entry& entry, const EntryEdit& edit) {
    const std::size_t row = entry.table->count(survey);
    const bool has_id = std::ranges::find(entry.table->keys, "id", &Field::name) != entry.table->keys.end();
    if (has_id && !entry.name.empty() && entry.row < row)
        return refused(fmt::format("{} \"{}\" is there already", entry.table->name, entry.name), "give it another id");
    Survey after = survey;
    if (entry.table->shape != Shape::one || row == 0) entry.table->add(after);
    Refusals refusals;
    entry.table->alter(after, entry.table->shape == Shape::one ? 0 : row, [&](void* owner) {
        KeySetter setter(*entry.table, owner);
        if (has_id && !entry.name.empty()) setter.set({"id", entry.name});
        for (const KeyEdit& key : edit.keys) setter.set(key);
        refusals = std::move(setter.refusals());
    });
    if (!refusals.empty()) return tl::unexpected(std::move(refusals));
    if (entry.table->name != "breaker") return after;
    Breaker breaker = after.breakers[row];
    breaker.id_given = !breaker.id.empty();
    settle_halves(breaker);
    return add_breaker(breaker).apply(survey);
}

std::uint32_t kind_of(std::string_view table) {
    constexpr std::pair<std::string_view, std::uint32_t> kinds[] = {
        {"source", named_source}, {"panel", named_panel}, {"breaker", named_breaker}, {"circuit", named_circuit},
        {"outlet", named_outlet}, {"load", named_load},   {"managed", named_managed}};
    const auto found = std::ranges::find(kinds, table, &std::pair<std::string_view, std::uint32_t>::first);
    return found == std::end(kinds) ? 0 : found->second;
}

Outcome<Survey> removed(const Survey& survey, const Entry& entry, Mentions mentions) {
    if (entry.row >= entry.table->count(survey)) return not_there(survey, entry);
    auto without = without_mentions(survey, kind_of(entry.table->name), entry.name, mentions);
    if (!without) return without;
    // Entries may have gone with it, so that it is looked for again.
    const auto again = kind_of(entry.table->name)
                           ? entry_at(*without, std::string(entry.table->name) + ":" + entry.name)
                           : Outcome<Entry>(entry);
    entry.table->erase(*without, again->row);
    return without;
}

}  // namespace

Outcome<Survey> edited(const Survey& survey, const EntryEdit& edit) {
    const auto entry = entry_at(survey, edit.address);
    if (!entry) return tl::unexpected(entry.error());
    switch (edit.kind) {
        case EntryEdit::Kind::add:
            return added(survey, *entry, edit);
        case EntryEdit::Kind::remove:
            return removed(survey, *entry, edit.mentions);
        case EntryEdit::Kind::change:
            break;
    }
    return changed(survey, *entry, edit);
}

}  // namespace doorcard
