// SPDX-License-Identifier: MIT
#include "assess/panel_sums.hpp"

#include <algorithm>
#include <string_view>
#include <tuple>

namespace doorcard {
namespace {

/// A load as a panel sees it: on the legs of the circuit it is set on, or as what a transformer asks of its feeding
/// poles.
struct PanelLoad {
    std::size_t key = 0;
    LoadCurrent current;
    double count = 1;
};
using PanelLoads = std::vector<PanelLoad>;

/// By load; among the ways of one load those that reach the neutral first, so that the order of the file does not
/// matter.
bool comes_before(const PanelLoad& a, const PanelLoad& b) {
    const auto rank = [](const PanelLoad& load) {
        return std::tuple(load.key, load.current.placing, load.current.legs_known, std::string_view(load.current.legs));
    };
    return rank(a) < rank(b);
}

void join_ways(LoadCurrent& kept, const LoadCurrent& other) {
    kept.va = std::max(kept.va, other.va);
    kept.fundamental = std::max(kept.fundamental, other.fundamental);
    kept.third = std::max(kept.third, other.third);
    if (kept.legs == other.legs) return;
    for (const char leg : other.legs)
        if (kept.legs.find(leg) == std::string::npos) kept.legs += leg;
    std::sort(kept.legs.begin(), kept.legs.end());
    kept.legs_known = false;
}

/// A load that came by several ways counts once, with the largest of its currents, on every leg that it may use.
void merge_doubles(PanelLoads& loads) {
    std::sort(loads.begin(), loads.end(), comes_before);
    PanelLoads once;
    once.reserve(loads.size());
    for (PanelLoad& load : loads) {
        if (once.empty() || once.back().key != load.key)
            once.push_back(std::move(load));
        else
            join_ways(once.back().current, load.current);
    }
    loads = std::move(once);
}

std::vector<std::size_t> panels_of(const Network& network, const std::vector<std::size_t>& breakers) {
    std::vector<std::size_t> panels;
    panels.reserve(breakers.size());
    for (const std::size_t b : breakers) panels.push_back(network.panel_of(b));
    std::sort(panels.begin(), panels.end());
    panels.erase(std::unique(panels.begin(), panels.end()), panels.end());
    return panels;
}

bool stands_at(const PanelSupply& supply, char leg) { return supply.has(leg) && supply.to_neutral.contains(leg); }

bool same_direction(Phasor a, Phasor b) { return std::abs(a - b) < 1e-12; }

bool is_tree(const Network& network) {
    const Survey& survey = network.survey();
    for (std::size_t p = 0; p < survey.panels.size(); ++p)
        if (panels_above(network, p).size() > 1) return false;
    for (std::size_t c = 0; c < survey.circuits.size(); ++c)
        if (network.breakers_of(c).size() > 1 && panels_of(network, network.breakers_of(c)).size() > 1) return false;
    for (std::size_t o = 0; o < survey.outlets.size(); ++o) {
        const auto& circuits = network.circuits_at(o);
        if (circuits.size() < 2) continue;
        std::vector<std::size_t> breakers;
        for (const std::size_t c : circuits)
            breakers.insert(breakers.end(), network.breakers_of(c).begin(), network.breakers_of(c).end());
        if (panels_of(network, breakers).size() > 1) return false;
    }
    return true;
}

}  // namespace

std::vector<std::size_t> panels_above(const Network& network, std::size_t panel) {
    std::vector<std::size_t> above;
    for (const std::size_t b : network.breakers_feeding(panel)) {
        const std::size_t p = network.panel_of(b);
        if (p < network.survey().panels.size() && std::ranges::find(above, p) == above.end()) above.push_back(p);
    }
    return above;
}

bool stands_alike(const PanelSupply& below, const PanelSupply& above) {
    if (!below.system || !above.system) return false;
    for (const char a : below.legs) {
        if (!stands_at(below, a) || !stands_at(above, a)) return false;
        if (!same_direction(below.to_neutral.at(a), above.to_neutral.at(a))) return false;
        for (const char b : below.legs)
            if (a < b && stands_at(below, b) && stands_at(above, b) &&
                !same_direction(below.line_direction(a, b), above.line_direction(a, b)))
                return false;
        if (below.legs.size() == 3 && !same_direction(below.middle_direction(a), above.middle_direction(a)))
            return false;
    }
    return true;
}

/// Adds panel by panel, from the bottom up.
class PanelSummer {
public:
    PanelSummer(PanelSums& result, const Network& network, const RuleBook& book, const PlacedLoads& placed,
                const KnownTotals& known)
        : result_(result),
          network_(network),
          book_(book),
          placed_(placed),
          loads_(network.survey().panels.size()),
          alike_below_(loads_.size()) {
        result_.is_tree_ = is_tree(network);
        result_.totals_.resize(loads_.size());
        gather_own();
        const auto& order = network.panels_from_the_top();
        for (auto p = order.rbegin(); p != order.rend(); ++p) {
            merge_doubles(loads_[*p]);
            if (const auto given = known.find(*p); given != known.end())
                result_.totals_[*p] = given->second;
            else
                total(*p);
            pass_up(*p);
        }
    }

private:
    void gather_own() {
        for (std::size_t p = 0; p < loads_.size(); ++p)
            for (const PlacedLoad& load : placed_.on_panel[p]) take(p, load);
        for (std::size_t c = 0; c < network_.survey().circuits.size(); ++c)
            for (const std::size_t p : panels_of(network_, network_.breakers_of(c)))
                if (p < loads_.size())
                    for (const PlacedLoad& load : placed_.on_circuit[c]) take(p, load);
    }

    void take(std::size_t panel, const PlacedLoad& load) {
        if (load.current.known()) loads_[panel].push_back({load.key, load.current, load.count});
    }

    void total(std::size_t p) {
        PanelTotals& total = result_.totals_[p];
        const PanelSupply& supply = network_.supply(p);
        const auto connect = [&](std::optional<VoltAmperes> va, double count) {
            if (va) total.connected = total.connected.value_or(VoltAmperes(0)) + *va * count;
        };
        for (const PanelLoad& load : loads_[p]) {
            connect(load.current.va, load.count);
            if (supply.system) total.sums.add(load.current, supply, load.count);
        }
        std::sort(alike_below_[p].begin(), alike_below_[p].end());
        for (const std::size_t below : alike_below_[p]) {
            connect(result_.totals_[below].connected, 1);
            total.sums.add(result_.totals_[below].sums);
        }
    }

    void pass_up(std::size_t panel) {
        for (const std::size_t above : panels_above(network_, panel)) {
            if (network_.survey().panels[panel].transformer)
                pass_through_transformer(panel, above);
            else if (result_.is_tree_ && stands_alike(network_.supply(panel), network_.supply(above)))
                alike_below_[above].push_back(panel);
            else
                pass_loads(panel, above);
        }
    }

    /// Every load below, one by one.
    void pass_loads(std::size_t panel, std::size_t above) {
        loads_[above].insert(loads_[above].end(), loads_[panel].begin(), loads_[panel].end());
        for (const std::size_t below : alike_below_[panel]) pass_loads(below, above);
    }

    /// The first of the feeding breakers that hang in the panel above.
    std::size_t breaker_in(std::size_t panel, std::size_t above) const {
        return *std::ranges::find_if(network_.breakers_feeding(panel),
                                     [&](std::size_t b) { return network_.panel_of(b) == above; });
    }

    void pass_through_transformer(std::size_t panel, std::size_t above) {
        const auto va = result_.connected(panel);
        if (!va) return;
        std::string legs = network_.breaker_legs(breaker_in(panel, above));
        std::sort(legs.begin(), legs.end());
        legs.erase(std::unique(legs.begin(), legs.end()), legs.end());
        if (legs.find('?') != std::string::npos) legs.clear();
        Load as_load;
        as_load.va = va;
        if (legs.size() == 3) as_load.phases = 3;
        const LoadPlace place{&network_.supply(above), legs, false};
        const std::size_t key = network_.survey().loads.size() + network_.survey().outlets.size() + panel;
        loads_[above].push_back({key, current_of(as_load, place, book_), 1});
        result_.primary_.emplace(panel, loads_[above].back().current);
    }

    PanelSums& result_;
    const Network& network_;
    const RuleBook& book_;
    const PlacedLoads& placed_;
    std::vector<PanelLoads> loads_;                      // by panel: own, and from below one by one
    std::vector<std::vector<std::size_t>> alike_below_;  // by panel: panels whose sums hold here too
};

PanelSums::PanelSums(const Network& network, const RuleBook& book, const PlacedLoads& placed,
                     const KnownTotals& known) {
    PanelSummer(*this, network, book, placed, known);
}

const LoadCurrent* PanelSums::asked_of_primary(std::size_t panel) const {
    const auto found = primary_.find(panel);
    return found == primary_.end() ? nullptr : &found->second;
}

}  // namespace doorcard
