// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <unordered_map>

#include "file/checks.hpp"

namespace doorcard {
namespace {

struct Named {
    std::string_view kind;
    Place place;
};

/// Where the id of a row stands: its value, or the entry where it is the default.
Place place_of_id(const Marks& marks, std::string_view table, std::span<const Mark> ids, std::size_t row) {
    const auto given = of_row(ids, row);
    return given.empty() ? marks.entries(table)[row] : given[0].value;
}

/// The ids of kinds that must not share one.
class Uniqueness {
public:
    explicit Uniqueness(const Checked& checked) : checked_(checked) {}

    template <class T>
    Uniqueness& add(std::string_view kind, const Table<T>& things) {
        const auto ids = checked_.marks.of(kind, "id");
        for (std::size_t row = 0; row < things.size(); ++row)
            if (!things[row].id.empty()) add_one(things[row].id, {kind, place_of_id(checked_.marks, kind, ids, row)});
        return *this;
    }

private:
    void add_one(std::string_view id, Named named) {
        const auto [entry, is_new] = first_.emplace(id, named);
        if (is_new) return;
        Named& first = entry->second;
        if (named.place < first.place) std::swap(named, first);
        if (!checked_.complaints.wants(named.place)) return;
        checked_.complaints.add(named.place,
                                fmt::format("the id \"{}\" of this {} is that of the {} at line {}", id, named.kind,
                                            first.kind, first.place.line),
                                "give one of them another id");
    }

    const Checked& checked_;
    std::unordered_map<std::string_view, Named> first_;
};

}  // namespace

void check_ids(const Checked& checked) {
    const Survey& survey = checked.survey;
    Uniqueness(checked).add("source", survey.sources).add("panel", survey.panels).add("breaker", survey.breakers);
    Uniqueness(checked).add("outlet", survey.outlets).add("load", survey.loads);
    Uniqueness(checked).add("circuit", survey.circuits);
    Uniqueness(checked).add("room", survey.rooms);
    Uniqueness(checked).add("dwelling", survey.dwellings);
    Uniqueness(checked).add("managed", survey.managed);
}

}  // namespace doorcard
