// SPDX-License-Identifier: MIT
#pragma once
#include "assess/figures.hpp"
#include "assess/schedule.hpp"

namespace doorcard {

/// The loads of all circuits of a row, each once.
struct RowLoads {
    std::vector<const PlacedLoad*> all;
    std::vector<const PlacedLoad*> known;  ///< those with a known current: they are in the legs

    std::optional<VoltAmperes> connected() const;
    std::optional<VoltAmperes> continuous() const;  ///< nullopt where no load is known
    std::vector<Duty> duties() const;               ///< the largest connected first
};
RowLoads loads_of(const Reckoned&, const DirectoryRow&);
/// What a row's outlets say of its class where no load does.
std::vector<Duty> duties_of_outlets(const Network&, const DirectoryRow&);
/// True where the circuit has a load, each with its VA, and no piece of equipment stands without one.
bool all_loads_known(const Reckoned&, std::size_t circuit);

/// A figure of a leg stands on the first pole on that leg.
template <class T>
void put_on_poles(const ByLeg<T>& figures, std::vector<SchedulePole>& poles, std::optional<T> SchedulePole::*member) {
    for (const auto& [leg, value] : figures)
        for (SchedulePole& pole : poles)
            if (pole.leg == leg) {
                pole.*member = value;
                break;
            }
}

// The parts of a row with a device.
void set_measured(const Reckoned&, ScheduleRow&);
void set_percent(const Reckoned&, ScheduleRow&);
void describe_conductors(const Network&, ScheduleRow&);  ///< wires, neutral, how traced

// The parts of a panel's foot.
void add_neutrals(const Network&, const Assessment&, PanelSchedule&);
void add_assumed(const Network&, const Assessment&, PanelSchedule&);
void add_gaps(const Network&, PanelSchedule&);

}  // namespace doorcard
