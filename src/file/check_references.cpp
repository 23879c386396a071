// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <unordered_set>

#include "base/nearest_word.hpp"
#include "file/checks.hpp"

namespace doorcard {
namespace {

/// What a text names: things of some kinds (bits of Refers, or to_neutral) by an id.
struct Named {
    std::uint32_t kinds;
    std::string_view id;
};

constexpr std::uint32_t to_neutral = 1u << 20;

std::uint32_t kinds_of(ThingKind kind) {
    switch (kind) {
        case ThingKind::source:
            return to_source;
        case ThingKind::panel:
            return to_panel;
        case ThingKind::breaker:
            return to_breaker;
        case ThingKind::circuit:
        case ThingKind::ground:
            return to_circuit;
        case ThingKind::neutral:
            return to_neutral;
        case ThingKind::outlet:
            return to_outlet;
        case ThingKind::load:
            return to_load;
        case ThingKind::survey:
            return to_nothing;
    }
    return to_nothing;
}

std::string_view behind_colon(std::string_view text) { return text.substr(text.find(':') + 1); }

Named named_by_address(std::string_view text) {
    const auto address = parse_address(text);
    const std::string_view rest = behind_colon(text);
    return {kinds_of(address->kind), rest.substr(0, rest.rfind('/'))};
}

Named named_by_place(std::string_view text) {
    if (text == "home-run") return {to_nothing, {}};
    if (text.starts_with("run:")) return {to_outlet, behind_colon(text)};
    return named_by_address(text);
}

Named named_by(const Field& field, std::string_view text) {
    if (!field.also.empty() && text == field.also) return {to_nothing, {}};
    if (field.refers == to_hunt_place) return named_by_place(text);
    if (field.refers == to_address || field.refers == to_trip_of) return named_by_address(text);
    return {field.refers, text};
}

class References {
public:
    explicit References(const Checked& checked) : checked_(checked) {
        for (const Circuit& circuit : checked.survey.circuits)
            if (circuit.names_neutral()) neutrals_.insert(*circuit.neutral);
    }

    void check(const KeyTable& table) {
        const TableMarks& marks = checked_.marks.of(table);
        for (std::size_t key = 0; key < table.keys.size(); ++key) {
            if (table.keys[key].refers == to_nothing) continue;
            for (const Mark& mark : marks.by_field[key]) check(table, named_by(table.keys[key], mark.text), mark);
        }
    }

private:
    void check(const KeyTable& table, Named named, const Mark& mark) {
        if (named.kinds == to_nothing || is_there(named) || !checked_.complaints.wants(mark.value)) return;
        checked_.complaints.add(mark.value,
                                fmt::format("{} \"{}\" of {} is not in the file", kind_words(named.kinds), named.id,
                                            owner_name(checked_.survey, table, mark.row)),
                                remedy(named));
    }

    /// Calls `visit(bit, header word, ids)` for every kind among the bits until it answers true.
    template <class Visit>
    bool any_kind(std::uint32_t kinds, Visit visit) const {
        const Survey& s = checked_.survey;
        return ((kinds & to_source) && visit("source", s.sources)) ||
               ((kinds & to_panel) && visit("panel", s.panels)) ||
               ((kinds & to_breaker) && visit("breaker", s.breakers)) ||
               ((kinds & to_circuit) && visit("circuit", s.circuits)) ||
               ((kinds & to_outlet) && visit("outlet", s.outlets)) || ((kinds & to_load) && visit("load", s.loads)) ||
               ((kinds & to_managed) && visit("managed", s.managed));
    }

    bool is_there(Named named) const {
        if (named.kinds == to_neutral) return neutrals_.contains(named.id);
        return any_kind(named.kinds, [&](std::string_view, const auto& table) { return table.contains(named.id); });
    }

    std::string kind_words(std::uint32_t kinds) const {
        if (kinds == to_neutral) return "neutral";
        std::string words;
        any_kind(kinds, [&](std::string_view name, const auto&) {
            words.append(words.empty() ? "" : " or ").append(name);
            return false;
        });
        return words;
    }

    std::string remedy(Named named) const {
        NearestWord search(named.id);
        std::string headers;
        for (const std::string_view neutral : neutrals_)
            if (named.kinds == to_neutral) search.offer(neutral);
        any_kind(named.kinds, [&](std::string_view name, const auto& table) {
            for (const auto& thing : table) search.offer(thing.id);
            const std::string_view before = !headers.empty() ? " or " : name == "outlet" ? "an " : "a ";
            headers.append(fmt::format("{}[[{}]]", before, name));
            return false;
        });
        const std::string add = named.kinds == to_neutral ? "name it as \"neutral\" of a [[circuit]]"
                                                          : fmt::format("add {} with that id", headers);
        return search.meant() ? fmt::format("did you mean \"{}\"? Else {}", *search.meant(), add) : add;
    }

    const Checked& checked_;
    std::unordered_set<std::string_view> neutrals_;
};

}  // namespace

std::string owner_name(const Survey& survey, const KeyTable& table, std::size_t row) {
    const std::string_view id = id_of(survey, table, row);
    return id.empty() ? fmt::format("this {}", table.name) : fmt::format("{} \"{}\"", table.name, id);
}

void check_references(const Checked& checked) {
    References references(checked);
    for (const KeyTable& table : all_tables()) references.check(table);
}

}  // namespace doorcard
