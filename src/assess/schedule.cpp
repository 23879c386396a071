// SPDX-License-Identifier: MIT
#include "assess/schedule.hpp"

#include <algorithm>

#include "assess/schedule_parts.hpp"

namespace doorcard {
namespace {

void add(ByLeg<VoltAmperes>& sums, const ByLeg<VoltAmperes>& more) {
    for (const auto& [leg, va] : more)
        if (va) sums[leg] = sums[leg].value_or(VoltAmperes(0)) + *va;
}

ByLeg<VoltAmperes> on_legs(const LegSums& sums, const std::string& legs) {
    ByLeg<VoltAmperes> found;
    for (const char leg : legs) found[leg] = sums.any_known() ? std::optional(sums.va(leg)) : std::nullopt;
    return found;
}

std::string known_letters(std::string legs) {
    std::sort(legs.begin(), legs.end());
    legs.erase(std::unique(legs.begin(), legs.end()), legs.end());
    std::erase(legs, '?');
    return legs;
}

/// The space in the fullest of the ways in which its halves are taken: used, spare, empty, unseen.
void count_spaces(const Network& network, PanelSchedule& schedule) {
    std::map<int, int> fullest;
    for (const DirectoryRow& row : schedule.directory.rows) {
        const int rank = row.kind == RowKind::not_seen ? 0
                         : row.kind == RowKind::space  ? 1
                         : row.kind == RowKind::spare  ? 2
                                                       : 3;
        for (const Position position : row.positions) {
            const auto [at, fresh] = fullest.try_emplace(position.space, rank);
            if (!fresh) at->second = std::max(at->second, rank);
        }
    }
    int* const counts[] = {&schedule.spaces.unseen, &schedule.spaces.empty, &schedule.spaces.spare,
                           &schedule.spaces.used};
    for (const auto& [space, rank] : fullest) ++*counts[rank];
    schedule.spaces.total = network.survey().panels[schedule.panel].spaces;
}

class PanelBuild {
public:
    PanelBuild(const Reckoned& all, const std::vector<PanelSchedule>& done, std::size_t panel)
        : all_(all), network_(all.network), survey_(network_.survey()), done_(done), panel_(panel) {}

    PanelSchedule build() {
        PanelSchedule schedule;
        schedule.panel = panel_;
        schedule.directory = directory_of(network_, panel_);
        for (const DirectoryRow& entry : schedule.directory.rows) schedule.rows.push_back(row_of(entry));
        set_legs(schedule);
        set_panel_figures(schedule);
        count_spaces(network_, schedule);
        return schedule;
    }

private:
    const Panel& thing() const { return survey_.panels[panel_]; }

    ScheduleRow row_of(const DirectoryRow& entry) const {
        ScheduleRow row;
        row.entry = entry;
        row.on_left = network_.geometry(panel_).on_left(entry.positions.front().space);
        set_poles(row);
        if (entry.breaker) {
            set_connected(row);
            set_measured(all_, row);
            set_percent(all_, row);
            describe_conductors(network_, row);
        }
        row.va_complete = is_complete(row);
        if (row.duties.empty()) row.duties = duties_of_outlets(network_, entry);
        return row;
    }

    void set_poles(ScheduleRow& row) const {
        const std::string legs = row.entry.breaker ? network_.breaker_legs(*row.entry.breaker) : "";
        const bool alternate = thing().half_legs == "alternate";
        for (std::size_t i = 0; i < row.positions().size(); ++i) {
            const Position position = row.positions()[i];
            const char leg = !row.entry.breaker ? network_.geometry(panel_).leg(network_.supply(panel_), position.space,
                                                                                position.half, alternate)
                             : i < legs.size()  ? legs[i]
                                                : '?';
            row.poles.push_back({position, leg, {}, {}});
        }
    }

    std::string letters(const ScheduleRow& row) const {
        return known_letters(network_.breaker_legs(*row.entry.breaker));
    }

    void set_connected(ScheduleRow& row) const {
        for (const char leg : letters(row)) row.va[leg] = std::nullopt;
        const RowLoads loads = loads_of(all_, row.entry);
        LegSums sums;
        for (const PlacedLoad* load : loads.known) sums.add(load->current, network_.supply(panel_), load->count);
        if (network_.supply(panel_).system) add(row.va, on_legs(sums, letters(row)));
        row.connected_va = loads.connected();
        row.continuous_va = loads.continuous();
        row.duties = loads.duties();
        for (const std::size_t fed : network_.panels_fed_by(*row.entry.breaker)) add_fed_panel(row, fed);
        put_on_poles(row.va, row.poles, &SchedulePole::va);
    }

    // Across a transformer a load of the panel's connected VA on all feeding poles.
    void add_fed_panel(ScheduleRow& row, std::size_t fed) const {
        const auto connected = all_.feeders[fed].connected_va;
        if (connected) row.connected_va = row.connected_va.value_or(VoltAmperes(0)) + *connected;
        row.continuous_va.reset();
        if (!survey_.panels[fed].transformer)
            return add(row.va,
                       on_legs(all_.panel_totals[fed].sums, known_letters(network_.breaker_legs(*row.entry.breaker))));
        add(row.va, on_legs(all_.feeder_sums[fed], letters(row)));
    }

    bool is_complete(const ScheduleRow& row) const {
        switch (row.entry.kind) {
            case RowKind::spare:
            case RowKind::space:
            case RowKind::main:
            case RowKind::source:
                return true;
            case RowKind::not_seen:
            case RowKind::not_traced:
                return false;
            default:
                break;
        }
        const auto& fed = network_.panels_fed_by(*row.entry.breaker);
        const auto& circuits = row.entry.circuits;
        if (fed.empty() && circuits.empty()) return false;
        return std::ranges::all_of(fed, [&](std::size_t p) { return done_[p].complete; }) &&
               std::ranges::all_of(circuits, [&](std::size_t c) { return all_loads_known(all_, c); });
    }

    void set_legs(PanelSchedule& schedule) const {
        for (const PanelLegFigures& figures : all_.panels[panel_].legs)
            schedule.legs.push_back({figures.leg, figures.va, figures.amps, figures.measured_a, true});
        schedule.complete = true;
        for (const ScheduleRow& row : schedule.rows) {
            if (row.va_complete) continue;
            schedule.complete = false;
            for (const SchedulePole& pole : row.poles) open_leg(schedule, pole.leg);
        }
        for (const PlacedLoad& load : all_.placed.on_panel[panel_])
            if (!load.current.known()) {
                schedule.complete = false;
                open_leg(schedule, '?');
            }
    }

    static void open_leg(PanelSchedule& schedule, char letter) {
        for (ScheduleLeg& leg : schedule.legs)
            if (letter == '?' || leg.leg == letter) leg.complete = false;
    }

    void set_panel_figures(PanelSchedule& schedule) const {
        const PanelFigures& figures = all_.panels[panel_];
        schedule.connected_va = all_.feeders[panel_].connected_va;
        schedule.neutral_a = figures.neutral_amps;
        schedule.imbalance_percent = figures.imbalance_percent;
        schedule.measured_imbalance_percent = measured_imbalance(schedule);
        schedule.rating_a = all_.feeders[panel_].rating_a;
        LegSums sums;
        for (const PlacedLoad& load : all_.placed.on_panel[panel_])
            if (load.current.known()) sums.add(load.current, network_.supply(panel_), load.count);
        schedule.set_on_panel = on_legs(sums, network_.supply(panel_).legs);
        set_fault(schedule);
        set_interrupting(schedule);
    }

    std::optional<double> measured_imbalance(const PanelSchedule& schedule) const {
        std::vector<Amperes> legs;
        for (const ScheduleLeg& leg : schedule.legs) {
            if (leg.leg == network_.supply(panel_).high_leg) continue;
            if (!leg.measured_a) return std::nullopt;
            legs.push_back(*leg.measured_a);
        }
        return imbalance_percent(legs);
    }

    void set_fault(PanelSchedule& schedule) const {
        schedule.fault_ka = thing().fault_ka;
        schedule.fault_on = thing().fault_on;
        if (schedule.fault_ka || thing().fed_by.size() != 1) return;
        const Source* source = survey_.sources.find(thing().fed_by.front());
        if (source == nullptr) return;
        schedule.fault_ka = source->fault_ka;
        schedule.fault_on = source->fault_on;
    }

    void set_interrupting(PanelSchedule& schedule) const {
        for (const std::size_t b : network_.breakers_in(panel_)) {
            const auto& seen = survey_.breakers[b].interrupting_ka;
            if (!seen) ++schedule.interrupting_unseen;
            if (seen) schedule.least_interrupting_ka = std::min(schedule.least_interrupting_ka.value_or(*seen), *seen);
        }
    }

    const Reckoned& all_;
    const Network& network_;
    const Survey& survey_;
    const std::vector<PanelSchedule>& done_;
    std::size_t panel_;
};

}  // namespace

std::vector<PanelSchedule> schedules_of(const Network& network, const Assessment& assessment, const RuleBook& book) {
    const Readings readings(network.survey());
    const Reckoned all = reckon(network, book, readings);
    std::vector<PanelSchedule> schedules(network.survey().panels.size());
    const auto& order = network.panels_from_the_top();
    for (auto p = order.rbegin(); p != order.rend(); ++p) {
        schedules[*p] = PanelBuild(all, schedules, *p).build();
        add_neutrals(network, assessment, schedules[*p]);
        add_assumed(network, assessment, schedules[*p]);
        add_gaps(network, schedules[*p]);
    }
    return schedules;
}

}  // namespace doorcard
