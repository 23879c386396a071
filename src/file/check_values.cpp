// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <numeric>
#include <unordered_map>

#include "base/nearest_word.hpp"
#include "file/checks.hpp"

namespace doorcard {
namespace {

void check_list_of_spaces(const Checked& checked, std::string_view key) {
    for (const Mark& mark : checked.marks.of("panel", key)) {
        const Panel& panel = checked.survey.panels[mark.row];
        const auto& list = key == "empty_spaces" ? *panel.empty_spaces : *panel.tandem_spaces;
        const auto marks = of_row(checked.marks.of("panel", key), mark.row);
        const int space = list[static_cast<std::size_t>(&mark - marks.data())];
        if (panel.spaces && space > *panel.spaces)
            checked.complaints.add(
                mark.value,
                fmt::format("space {} in \"{}\" of panel \"{}\", which has {}", space, key, panel.id, *panel.spaces),
                "name a space that it has, or mend its \"spaces\"");
    }
}

void check_breaker_spaces(const Checked& checked) {
    const auto all = checked.marks.of("breaker", "spaces");
    std::size_t first = 0;
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (all[i].row != all[first].row) first = i;
        const Breaker& breaker = checked.survey.breakers[all[i].row];
        const Panel* panel = checked.survey.panels.find(breaker.panel);
        if (!panel || !panel->spaces || breaker.spaces[i - first] <= *panel->spaces) continue;
        checked.complaints.add(all[i].value,
                               fmt::format("breaker \"{}\" sits in space {} of panel \"{}\", which has {}", breaker.id,
                                           breaker.spaces[i - first], panel->id, *panel->spaces),
                               "name a space that it has, or mend its \"spaces\"");
    }
}

void check_phases(const Checked& checked) {
    for (const Mark& mark : checked.marks.of("load", "phases")) {
        if (checked.survey.loads[mark.row].phases != 2) continue;
        checked.complaints.add(mark.value, "\"phases\" in [[load]] is 2", "write phases = 1 (line to line too) or 3");
    }
}

void check_neutral_sizes(const Checked& checked) {
    struct First {
        std::string_view circuit;
        std::string_view size;
    };
    std::unordered_map<std::string_view, First> sizes;
    for (const Mark& mark : checked.marks.of("circuit", "neutral_size")) {
        const Circuit& circuit = checked.survey.circuits[mark.row];
        if (!circuit.names_neutral()) continue;
        const First& first =
            sizes.try_emplace(*circuit.neutral, First{circuit.id, *circuit.neutral_size}).first->second;
        if (first.size == *circuit.neutral_size) continue;
        checked.complaints.add(mark.value,
                               fmt::format("neutral \"{}\" is {} here and {} at circuit \"{}\"", *circuit.neutral,
                                           *circuit.neutral_size, first.size, first.circuit),
                               "one neutral has one size");
    }
}

void check_dwelling(const Checked& checked, std::size_t row, std::span<const Mark> stands_for,
                    std::span<const Mark> units) {
    const Dwelling& dwelling = checked.survey.dwellings[row];
    if (!dwelling.stands_for || stands_for.empty()) return;
    const std::size_t panels = dwelling.panels ? dwelling.panels->size() : 0;
    if (panels != dwelling.stands_for->size())
        checked.complaints.add(
            stands_for[0].key,
            fmt::format("\"stands_for\" has {} numbers for {} panels", dwelling.stands_for->size(), panels),
            "give a number for each of its panels");
    const int sum = std::accumulate(dwelling.stands_for->begin(), dwelling.stands_for->end(), 0);
    if (!units.empty() && *dwelling.units != sum)
        checked.complaints.add(units[0].value,
                               fmt::format("\"units\" is {}, and its panels stand for {}", *dwelling.units, sum),
                               fmt::format("write units = {}, or leave it out", sum));
}

void check_limit_keys(const Checked& checked) {
    for (const Mark& mark : checked.marks.of("limit", "key")) {
        NearestWord search(mark.text);
        for (const std::string_view key : measured_keys()) search.offer(key);
        if (search.nearest() == mark.text) continue;
        checked.complaints.add(mark.value, fmt::format("\"{}\" is no numeric key of readings or recordings", mark.text),
                               search.meant() ? fmt::format("did you mean \"{}\"?", *search.meant())
                                              : fmt::format("the nearest known key is \"{}\"", *search.nearest()));
    }
}

}  // namespace

void check_spaces(const Checked& checked) {
    check_breaker_spaces(checked);
    check_list_of_spaces(checked, "empty_spaces");
    check_list_of_spaces(checked, "tandem_spaces");
}

void check_values(const Checked& checked) {
    check_phases(checked);
    check_neutral_sizes(checked);
    check_limit_keys(checked);
    const auto stands_for = checked.marks.of("dwelling", "stands_for");
    const auto units = checked.marks.of("dwelling", "units");
    for (std::size_t row = 0; row < checked.survey.dwellings.size(); ++row)
        check_dwelling(checked, row, of_row(stands_for, row), of_row(units, row));
}

}  // namespace doorcard
