// SPDX-License-Identifier: MIT
#include "assess/part.hpp"

#include <algorithm>

namespace doorcard {
namespace {

template <class T, class Wanted>
Table<T> those(const Table<T>& table, Wanted wanted) {
    std::vector<T> rows;
    for (std::size_t i = 0; i < table.size(); ++i)
        if (wanted(i)) rows.push_back(table[i]);
    return Table<T>(std::move(rows));
}

/// A panel that a chosen one feeds, or any other where the part would have one panel alone: with several, names of
/// breakers say which panel they mean.
class PanelChoice {
public:
    PanelChoice(const Survey& survey, const Homes& homes, const std::vector<bool>& chosen)
        : survey_(survey), homes_(homes), chosen_(chosen), wanted_(survey.panels.size()) {
        for (std::size_t p = 0; p < wanted_.size(); ++p) wanted_[p] = chosen[p] || is_fed_by_chosen(p);
        if (std::ranges::count(wanted_, true) != 1) return;
        for (std::size_t p = 0; p < wanted_.size(); ++p)
            if (!wanted_[p]) {
                wanted_[p] = true;
                return;
            }
    }
    bool operator()(std::size_t panel) const { return wanted_[panel]; }

private:
    bool is_fed_by_chosen(std::size_t panel) const {
        return std::ranges::any_of(survey_.panels[panel].fed_by, [&](const std::string& feed) {
            const std::size_t b = survey_.breakers.position(feed);
            return b < survey_.breakers.size() && chosen_[homes_.of_breaker(b)];
        });
    }

    const Survey& survey_;
    const Homes& homes_;
    const std::vector<bool>& chosen_;
    std::vector<bool> wanted_;
};

}  // namespace

std::size_t Part::position_of(std::size_t panel) const {
    const auto found = std::ranges::lower_bound(panels, panel);
    const auto at = static_cast<std::size_t>(found - panels.begin());
    return found != panels.end() && *found == panel ? at : panels.size();
}

Part part_of(const Survey& whole, const Homes& homes, const std::vector<bool>& chosen,
             const std::vector<PanelTotals>& totals) {
    Part part;
    part.survey = whole;  // what belongs to no panel stays: heading, sources, rooms, rounds ...
    const PanelChoice wanted(whole, homes, chosen);
    part.survey.panels = those(whole.panels, wanted);
    for (std::size_t p = 0; p < whole.panels.size(); ++p) {
        if (!wanted(p)) continue;
        if (!chosen[p]) part.known.emplace(part.panels.size(), totals[p]);
        part.panels.push_back(p);
    }
    part.survey.breakers = those(whole.breakers, [&](std::size_t i) { return chosen[homes.of_breaker(i)]; });
    part.survey.circuits = those(whole.circuits, [&](std::size_t i) { return chosen[homes.of_circuit(i)]; });
    part.survey.outlets = those(whole.outlets, [&](std::size_t i) { return chosen[homes.of_outlet(i)]; });
    part.survey.loads = those(whole.loads, [&](std::size_t i) { return chosen[homes.of_load(i)]; });
    part.survey.readings = those(whole.readings, [&](std::size_t i) {
        const Address& of = whole.readings[i].of;
        return of.kind == ThingKind::source || chosen[homes.of(whole, of)];
    });
    part.survey.limits =
        those(whole.limits, [&](std::size_t i) { return chosen[homes.of(whole, whole.limits[i].of)]; });
    part.survey.accepted = those(whole.accepted, [&](std::size_t i) {
        const auto of = parse_address(whole.accepted[i].of.value_or(""));
        return chosen[of ? homes.of(whole, *of) : homes.nowhere()];
    });
    return part;
}

}  // namespace doorcard
