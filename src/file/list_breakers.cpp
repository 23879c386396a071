// SPDX-License-Identifier: MIT
#include "file/list_breakers.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "base/folded.hpp"

namespace doorcard {
namespace {

constexpr int next_of_side = 2;
constexpr int last_space = 999;
constexpr std::size_t most_poles = 3;

std::string names_of(const std::vector<ListSpace>& spaces) {
    std::string names;
    for (const ListSpace space : spaces) names += (names.empty() ? "" : ", ") + name_of(space);
    return names;
}

std::string poles_word(std::size_t poles) { return poles == 1 ? "one-pole" : poles == 2 ? "two-pole" : "three-pole"; }

std::size_t poles_of(const ListEntry& entry) {
    return entry.poles ? static_cast<std::size_t>(*entry.poles) : entry.spaces.size();
}

/// Whether a row says no more than that the breaker above goes on here.
bool goes_on(const ListEntry& entry, const ListEntry& above) {
    if (entry.spare != above.spare && entry.spare) return false;
    if (entry.empty_space) return false;
    if (entry.amps && entry.amps != above.amps) return false;
    return entry.text.empty() || entry.ditto || folded(entry.text) == folded(above.text);
}

void add_to(std::optional<double>& sum, const std::optional<double>& more) {
    if (more) sum = sum.value_or(0) + *more;
}

}  // namespace

const ListBreakers::Taken* ListBreakers::taken(const std::string& panel, ListSpace space) const {
    for (const char half : {' ', 'a', 'b'}) {
        if (space.half != ' ' && half != ' ' && half != space.half) continue;
        const auto found = taken_.find({panel, space.number, half});
        if (found != taken_.end()) return &found->second;
    }
    return nullptr;
}

void ListBreakers::take(const ListEntry& entry, std::optional<std::size_t> breaker) {
    for (const ListSpace space : entry.spaces) taken_[{entry.panel, space.number, space.half}] = {entry.place, breaker};
}

std::optional<Complaint> ListBreakers::unfit(const ListEntry& entry) const {
    const std::size_t count = entry.spaces.size();
    const auto wrong = [&](std::string what, std::string right) {
        return Complaint{entry.place, std::move(what), std::move(right)};
    };
    if (most_ && entry.spaces.back().number > *most_)
        return wrong(fmt::format("there is no space {} in a panel of {}", entry.spaces.back().number, *most_),
                     "write a space that it has, or another --spaces");
    if (entry.empty_space)
        return entry.amps ? std::optional(wrong("an empty space with amperes",
                                                "write 'Spare' where a breaker sits there, or leave the amperes out"))
                          : std::nullopt;
    if (count > 1 && !lie_together(entry.spaces))
        return wrong(fmt::format("spaces {} do not lie together on one side", names_of(entry.spaces)),
                     "write a line for each breaker");
    const auto full = [](ListSpace space) { return space.half == ' '; };
    if (std::ranges::any_of(entry.spaces, full) && !std::ranges::all_of(entry.spaces, full))
        return wrong(fmt::format("a half and a whole space in {}", names_of(entry.spaces)), "write 13b,15a or 13,15");
    if (count > most_poles)
        return wrong(fmt::format("{} spaces for one breaker", count), "write a line for each breaker");
    if (count > 1 && poles_of(entry) != count)
        return wrong(
            fmt::format("spaces {} are {} poles, and the poles say {}", names_of(entry.spaces), count, poles_of(entry)),
            "mend the spaces or the poles");
    if (count == 1 && entry.spaces[0].half != ' ' && poles_of(entry) > 1)
        return wrong(
            fmt::format("a {} breaker in half {} alone", poles_word(poles_of(entry)), name_of(entry.spaces[0])),
            "write all its halves, such as 13b,15a");
    return std::nullopt;
}

/// The breaker that ends just above on the same side and lacks poles.
std::optional<std::size_t> ListBreakers::open_above(const ListEntry& entry) const {
    if (entry.spaces.size() != 1 || entry.spaces[0].half != ' ') return std::nullopt;
    const auto above = taken_.find({entry.panel, entry.spaces[0].number - next_of_side, ' '});
    if (above == taken_.end() || !above->second.breaker) return std::nullopt;
    const ListEntry& breaker = breakers_[*above->second.breaker];
    return poles_of(breaker) > breaker.spaces.size() ? above->second.breaker : std::nullopt;
}

std::optional<Complaint> ListBreakers::joined(const ListEntry& entry, std::size_t above) {
    ListEntry& breaker = breakers_[above];
    if (!goes_on(entry, breaker) || (entry.poles && entry.poles != breaker.poles))
        return Complaint{entry.place,
                         fmt::format("space {} belongs to the {} breaker of line {}", name_of(entry.spaces[0]),
                                     poles_word(poles_of(breaker)), breaker.place.line),
                         "leave its text and amperes blank, or mend the poles there"};
    breaker.spaces.push_back(entry.spaces[0]);
    add_to(breaker.va, entry.va);
    add_to(breaker.watts, entry.watts);
    if (!breaker.wire) breaker.wire = entry.wire;
    if (!entry.notes.empty()) breaker.notes += (breaker.notes.empty() ? "" : "; ") + entry.notes;
    take(entry, above);
    return std::nullopt;
}

void ListBreakers::keep_empty(const ListEntry& entry) {
    for (const ListSpace space : entry.spaces) {
        if (space.half == ' ') empty_[entry.panel].insert(space.number);
        if (space.half == ' ' && entry.notes.empty()) continue;
        std::string& notes = notes_[entry.panel];
        notes += fmt::format("{}space {}: {}", notes.empty() ? "" : "; ", name_of(space),
                             space.half == ' ' ? entry.notes : "empty");
    }
    take(entry, std::nullopt);
}

std::optional<Complaint> ListBreakers::add(const ListEntry& entry) {
    if (auto wrong = unfit(entry)) return wrong;
    for (const ListSpace space : entry.spaces)
        if (const Taken* first = taken(entry.panel, space))
            return Complaint{entry.place,
                             fmt::format("space {} is listed already at line {}", name_of(space), first->place.line),
                             "keep one of the two; the halves of a tandem are 5a and 5b"};
    if (std::ranges::find(panels_, entry.panel) == panels_.end()) panels_.push_back(entry.panel);
    if (const auto above = open_above(entry)) return joined(entry, *above);
    if (entry.empty_space) {
        keep_empty(entry);
        return std::nullopt;
    }
    if (entry.says_nothing()) return std::nullopt;  // its number is all that the list knows of it
    breakers_.push_back(entry);
    take(entry, breakers_.size() - 1);
    return std::nullopt;
}

bool ListBreakers::extended(std::size_t index) {
    ListEntry& breaker = breakers_[index];
    while (breaker.spaces.size() < poles_of(breaker)) {
        const ListSpace next{breaker.spaces.back().number + next_of_side, ' '};
        if (next.number > most_.value_or(last_space) || taken(breaker.panel, next)) return false;
        breaker.spaces.push_back(next);
        taken_[{breaker.panel, next.number, ' '}] = {breaker.place, index};
    }
    return true;
}

std::vector<Complaint> ListBreakers::finish() {
    std::vector<Complaint> complaints;
    std::vector<ListEntry> whole;
    for (std::size_t i = 0; i < breakers_.size(); ++i) {
        if (extended(i))
            whole.push_back(breakers_[i]);
        else
            complaints.push_back({breakers_[i].place,
                                  fmt::format("no room for a {} breaker at {}", poles_word(poles_of(breakers_[i])),
                                              names_of(breakers_[i].spaces)),
                                  "write all its spaces, such as 2,4"});
    }
    breakers_ = std::move(whole);
    return complaints;
}

}  // namespace doorcard
