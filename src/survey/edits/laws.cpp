// SPDX-License-Identifier: MIT
#include "survey/edits/laws.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <functional>
#include <unordered_map>
#include <unordered_set>

#include "survey/each_table.hpp"
#include "survey/name_reader.hpp"
#include "survey/references.hpp"
#include "survey/row_changes.hpp"

namespace doorcard {
namespace {

using Refusal = std::optional<Complaint>;

template <class T>
Refusal taken_twice(std::string_view kind, const Table<T>& rows, std::unordered_set<std::string_view>& ids) {
    for (const T& row : rows)
        if (!ids.insert(row.id).second)
            return Complaint{
                {},
                fmt::format("there would be two things of the id \"{}\", one of them this {}", row.id, kind),
                "give one of them another place or id"};
    return std::nullopt;
}

Refusal ids_twice(const Survey& s) {
    std::unordered_set<std::string_view> feeds, ends, circuits, rooms, dwellings, managed;
    for (const Refusal& refusal : {taken_twice("source", s.sources, feeds), taken_twice("panel", s.panels, feeds),
                                   taken_twice("breaker", s.breakers, feeds), taken_twice("outlet", s.outlets, ends),
                                   taken_twice("load", s.loads, ends), taken_twice("circuit", s.circuits, circuits),
                                   taken_twice("room", s.rooms, rooms), taken_twice("dwelling", s.dwellings, dwellings),
                                   taken_twice("managed", s.managed, managed)})
        if (refusal) return refusal;
    return std::nullopt;
}

Refusal dangling(const Survey& survey) {
    const auto found = dangling_references(survey);
    if (found.empty()) return std::nullopt;
    return Complaint{{},
                     fmt::format("\"{}\" of {} would name \"{}\", which is not there", found.front().key,
                                 entry_words(survey, found.front()), found.front().id),
                     "take that name out first"};
}

/// Whether a walk from one to the next, as `next` says, comes back.
template <class T, class Next>
Refusal circle(std::string_view kind, const Table<T>& rows, Next next) {
    std::vector<char> state(rows.size());  // 1: on the way, 2: done
    std::function<bool(std::size_t)> closes = [&](std::size_t at) {
        if (state[at] == 1) return true;
        if (std::exchange(state[at], state[at] == 2 ? 2 : 1) == 2) return false;
        for (const std::size_t other : next(rows[at]))
            if (other < rows.size() && closes(other)) return true;
        state[at] = 2;
        return false;
    };
    for (std::size_t i = 0; i < rows.size(); ++i)
        if (closes(i))
            return Complaint{{},
                             fmt::format("{} \"{}\" would be fed by itself, in a circle", kind, rows[i].id),
                             "name what really feeds it"};
    return std::nullopt;
}

Refusal panel_circle(const Survey& s) {
    const auto above_panel = [&](const Panel& panel) {
        std::vector<std::size_t> above;
        for (const std::string& id : panel.fed_by)
            if (const Breaker* breaker = s.breakers.find(id)) above.push_back(s.panels.position(breaker->panel));
        return above;
    };
    return circle("panel", s.panels, above_panel);
}

Refusal outlet_circle(const Survey& s) {
    // Ways of outlets may be long: each is walked once, without recursion.
    std::vector<std::size_t> walk(s.outlets.size());
    for (std::size_t i = 0; i < walk.size(); ++i) {
        for (std::size_t at = i; at < walk.size() && walk[at] != i + 1;) {
            if (walk[at] != 0) break;
            walk[at] = i + 1;
            const auto& upstream = s.outlets[at].upstream;
            at = upstream ? s.outlets.position(*upstream) : walk.size();
            if (at < walk.size() && walk[at] == i + 1)
                return Complaint{{},
                                 fmt::format("outlet \"{}\" would be fed through itself", s.outlets[at].id),
                                 "name the outlet that it is really fed through"};
        }
    }
    return std::nullopt;
}

/// A space of the breaker that its panel does not have.
std::optional<int> space_beyond(const Breaker& breaker, const Panel* panel) {
    for (const int space : breaker.spaces)
        if (space < 1 || space > 999 || (panel && panel->spaces && space > *panel->spaces)) return space;
    return std::nullopt;
}

Refusal spaces_beyond(const Survey& s) {
    for (const Breaker& breaker : s.breakers)
        if (const auto space = space_beyond(breaker, s.panels.find(breaker.panel)))
            return Complaint{{},
                             fmt::format("breaker \"{}\" would sit in space {}, which panel \"{}\" does not have",
                                         breaker.id, *space, breaker.panel),
                             "name a space that it has, or mend its \"spaces\""};
    return std::nullopt;
}

Refusal two_sizes(const Survey& s) {
    std::unordered_map<std::string_view, std::string_view> sizes;
    for (const Circuit& circuit : s.circuits) {
        if (!circuit.names_neutral() || !circuit.neutral_size) continue;
        const auto [at, is_new] = sizes.emplace(*circuit.neutral, *circuit.neutral_size);
        if (!is_new && at->second != *circuit.neutral_size)
            return Complaint{
                {},
                fmt::format("neutral \"{}\" would be {} and {}", *circuit.neutral, at->second, *circuit.neutral_size),
                "one neutral has one size"};
    }
    return std::nullopt;
}

/// What an edit may have broken, from the rows that it changed: those that are gone and those that have come.
class EditedRows {
public:
    EditedRows(const Survey& before, const Survey& after) : before_(before), after_(after) {}

    bool keep_laws() {
        bool kept = true;
        each_table([&](std::string_view, auto member) {
            const auto &before = before_.*member, &after = after_.*member;
            if (!kept || before.is_same(after)) return;
            const RowChanges rows(before, after);
            for (const std::size_t at : rows.gone) note_gone(before[at], after);
            for (const std::size_t at : rows.come) kept = kept && keeps(after[at]);
        });
        return kept && neutrals_named() && none_lost_is_named() && (!feeds_differ() || !panel_circle(after_));
    }

private:
    struct Lost {
        std::uint32_t kinds;
        std::string_view id;
    };

    template <class T>
    static constexpr std::uint32_t kind_of() {
        if constexpr (std::same_as<T, Source>) return named_source;
        if constexpr (std::same_as<T, Panel>) return named_panel;
        if constexpr (std::same_as<T, Breaker>) return named_breaker;
        if constexpr (std::same_as<T, Circuit>) return named_circuit;
        if constexpr (std::same_as<T, Outlet>) return named_outlet;
        if constexpr (std::same_as<T, Load>) return named_load;
        if constexpr (std::same_as<T, Managed>) return named_managed;
        return 0;
    }

    template <class T>
    void note_gone(const T& row, const Table<T>& after) {
        if constexpr (kind_of<T>() != 0)
            if (!after.contains(row.id)) lost_.push_back({kind_of<T>(), row.id});
        if constexpr (std::same_as<T, Circuit>)
            if (row.names_neutral() && !circuit_names(*row.neutral)) lost_.push_back({named_neutral, *row.neutral});
    }

    bool circuit_names(std::string_view neutral) const {
        return std::ranges::any_of(after_.circuits, [&](const Circuit& circuit) {
            return circuit.names_neutral() && *circuit.neutral == neutral;
        });
    }

    template <class T>
    bool keeps(const T& row) {
        read_names_of(row, [&](std::uint32_t kinds, const char*, const std::string& id, bool) {
            if (kinds == named_neutral)
                neutrals_.push_back(id);
            else
                all_there_ = all_there_ && (kinds == 0 || is_there(after_, kinds, id));
        });
        if constexpr (HasId<T>)
            if (!is_alone(row)) return false;
        return all_there_ && fits(row);
    }

    template <class T>
    bool is_alone(const T& row) const {
        const auto things = [&](const auto&... tables) { return (tables.count(row.id) + ...); };
        if constexpr (std::same_as<T, Source> || std::same_as<T, Panel> || std::same_as<T, Breaker>)
            return things(after_.sources, after_.panels, after_.breakers) == 1;
        else if constexpr (std::same_as<T, Outlet> || std::same_as<T, Load>)
            return things(after_.outlets, after_.loads) == 1;
        else if constexpr (std::same_as<T, Circuit>)
            return things(after_.circuits) == 1;
        else if constexpr (std::same_as<T, Room>)
            return things(after_.rooms) == 1;
        else if constexpr (std::same_as<T, Dwelling>)
            return things(after_.dwellings) == 1;
        else if constexpr (std::same_as<T, Managed>)
            return things(after_.managed) == 1;
        else
            return true;
    }

    template <class T>
    bool fits(const T&) const {
        return true;
    }
    bool fits(const Breaker& breaker) const { return !space_beyond(breaker, after_.panels.find(breaker.panel)); }
    bool fits(const Panel& panel) const {
        return std::ranges::none_of(after_.breakers, [&](const Breaker& breaker) {
            return breaker.panel == panel.id && space_beyond(breaker, &panel);
        });
    }
    /// Another size of the same neutral.
    bool fits(const Circuit& circuit) const {
        if (!circuit.names_neutral() || !circuit.neutral_size) return true;
        return std::ranges::none_of(after_.circuits, [&](const Circuit& other) {
            return other.neutral == circuit.neutral &&
                   other.neutral_size.value_or(*circuit.neutral_size) != *circuit.neutral_size;
        });
    }
    /// Not fed through itself: the way up from it ends.
    bool fits(const Outlet& outlet) const {
        const Outlet* at = &outlet;
        for (std::size_t steps = 0; at && steps <= after_.outlets.size(); ++steps)
            at = at->upstream ? after_.outlets.find(*at->upstream) : nullptr;
        return !at;
    }

    bool neutrals_named() const {
        return std::ranges::all_of(neutrals_, [&](const std::string& id) { return circuit_names(id); });
    }

    bool none_lost_is_named() const {
        bool named = false;
        for (const Lost& lost : lost_)
            each_table([&](std::string_view, auto member) {
                using Row = std::decay_t<decltype((after_.*member)[0])>;
                if (!(NameableKinds::in<Row>() & lost.kinds)) return;
                each_near_name(after_.*member, lost.id, [&](std::size_t, const Row& row) {
                    read_names_of(row, [&](std::uint32_t may_be, const char*, const std::string& id, bool) {
                        named = named || ((may_be & lost.kinds) && id == lost.id && !is_there(after_, may_be, id));
                    });
                });
            });
        return !named;
    }

    bool feeds_differ() const {
        return !before_.panels.is_same(after_.panels) || !before_.breakers.is_same(after_.breakers);
    }

    const Survey& before_;
    const Survey& after_;
    std::vector<Lost> lost_;
    std::vector<std::string> neutrals_;
    bool all_there_ = true;
};

}  // namespace

std::optional<Complaint> broken_law(const Survey& survey) {
    for (const auto law : {dangling, ids_twice, panel_circle, outlet_circle, spaces_beyond, two_sizes})
        if (auto refusal = law(survey)) return refusal;
    return std::nullopt;
}

bool still_keeps_laws(const Survey& before, const Survey& after) { return EditedRows(before, after).keep_laws(); }

}  // namespace doorcard
