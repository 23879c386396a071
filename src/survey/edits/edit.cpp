// SPDX-License-Identifier: MIT
#include "survey/edits/edit.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <unordered_map>
#include <unordered_set>

#include "survey/references.hpp"

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

Refusal circles(const Survey& s) {
    const auto above_panel = [&](const Panel& panel) {
        std::vector<std::size_t> above;
        for (const std::string& id : panel.fed_by)
            if (const Breaker* breaker = s.breakers.find(id)) above.push_back(s.panels.position(breaker->panel));
        return above;
    };
    if (auto refusal = circle("panel", s.panels, above_panel)) return refusal;
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

Refusal spaces_beyond(const Survey& s) {
    for (const Breaker& breaker : s.breakers) {
        const Panel* panel = s.panels.find(breaker.panel);
        for (const int space : breaker.spaces)
            if (space < 1 || space > 999 || (panel && panel->spaces && space > *panel->spaces))
                return Complaint{{},
                                 fmt::format("breaker \"{}\" would sit in space {}, which panel \"{}\" does not have",
                                             breaker.id, space, breaker.panel),
                                 "name a space that it has, or mend its \"spaces\""};
    }
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

}  // namespace

tl::unexpected<std::vector<Complaint>> refused(std::string wrong, std::string right) {
    return tl::unexpected(std::vector{Complaint{{}, std::move(wrong), std::move(right)}});
}

Outcome<Survey> kept_laws(Survey survey) {
    for (const auto law : {dangling, ids_twice, circles, spaces_beyond, two_sizes})
        if (auto refusal = law(survey)) return tl::unexpected(std::vector{std::move(*refusal)});
    return survey;
}

Edit together(Message name, std::vector<Edit> edits) {
    return {std::move(name), [edits = std::move(edits)](Survey survey) {
                Outcome<Survey> outcome = std::move(survey);
                for (const Edit& edit : edits) {
                    if (!outcome) return outcome;
                    outcome = edit.apply(std::move(*outcome));
                }
                return outcome;
            }};
}

}  // namespace doorcard
