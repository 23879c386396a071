// SPDX-License-Identifier: MIT
#pragma once
#include <map>

#include "assess/assessment.hpp"
#include "assess/directory.hpp"

namespace doorcard {

/// A figure of each leg, by its letter; nullopt where it is not known.
template <class T>
using ByLeg = std::map<char, std::optional<T>>;

/// One pole of a row as it hangs: its space, its leg ('?' where not known), and what stands on its own line.
struct SchedulePole {
    Position position;
    char leg = '?';
    std::optional<VoltAmperes> va;
    std::optional<Amperes> measured_a;
};

/// One row of the panel schedule: a device, or a position without one. Unrounded; nullopt is unknown, never 0.
/// A feeder's row carries the figures of the panels it feeds. Source: contract 4 'schedule', 7; reckoning 'Amperes of a
/// leg'.
struct ScheduleRow {
    DirectoryRow entry;                      ///< what it is, in the words of the directory
    bool on_left = true;                     ///< of its first position; a single column hangs on the left
    std::vector<SchedulePole> poles;         ///< by ascending space; a position without a device is one pole
    std::vector<Duty> duties;                ///< classes of its loads, the largest connected first; each once
    std::vector<Wire> wires;                 ///< unlike conductors of its circuits; of a feeder those of the panels
    std::optional<std::string> ground_size;  ///< of all its circuits alike
    std::optional<std::string> neutral;      ///< the shared neutral, else "own"
    std::optional<std::string> traced;       ///< how; of several circuits the least sure
    ByLeg<VoltAmperes> va;                   ///< each load on the legs that carry it; a pair half on each
    ByLeg<Amperes> measured_a;
    std::optional<Amperes> measured_highest_a;  ///< of readings of its legs and of the whole
    bool va_complete = false;                   ///< nothing on it is unknown; else the figures are 'at least'
    std::optional<VoltAmperes> connected_va, continuous_va;
    std::optional<double> percent_of_rating;
    bool percent_measured = false;  ///< the larger of calculated and measured was measured

    const std::vector<Position>& positions() const { return entry.positions; }
};

/// One leg of a panel: all that hangs below, once; 'at least' where a row on it is not complete.
struct ScheduleLeg {
    char leg = 0;
    std::optional<VoltAmperes> connected_va;
    std::optional<Amperes> connected_a, measured_a;
    bool complete = false;
};

/// Spaces by number; a space whose halves differ counts as the fuller of them. `total` is unknown where the panel does
/// not say it.
struct SpaceCounts {
    std::optional<int> total;
    int used = 0, spare = 0, empty = 0, unseen = 0;
};

/// A gap: what is not known, and of which handles or spaces (empty: of the panel).
struct ScheduleGap {
    Message what;
    std::vector<std::string> handles;
    Message text() const;  ///< "neutral not traced: 5, 7"
};

/// The schedule of one panel.
struct PanelSchedule {
    std::size_t panel = 0;
    PanelDirectory directory;
    std::vector<ScheduleRow> rows;  ///< as `directory.rows`
    std::vector<ScheduleLeg> legs;
    ByLeg<VoltAmperes> set_on_panel;  ///< of loads whose circuit is not known: in the legs, in no row
    std::optional<VoltAmperes> connected_va;
    bool complete = false;  ///< every row is
    std::optional<Amperes> neutral_a, rating_a;
    std::optional<double> imbalance_percent, measured_imbalance_percent;
    std::optional<double> fault_ka;  ///< at the panel, else at the source that feeds it directly
    std::optional<Moment> fault_on;
    std::optional<double> least_interrupting_ka;  ///< of the devices whose rating was seen
    int interrupting_unseen = 0;
    SpaceCounts spaces;
    std::vector<NeutralFigures> neutrals;  ///< shared ones with a hot in the panel
    std::vector<Assumption> assumed;       ///< of the panel, its devices, circuits and loads
    std::vector<ScheduleGap> missing;
};

/// The schedule of every panel, in file order. Pure, as `assess`.
std::vector<PanelSchedule> schedules_of(const Network&, const Assessment&, const RuleBook&);

/// 'lighting', 'small appliance' ... as printed.
const char* class_text(Duty);
/// As the survey file writes it: "water-heater".
std::string_view class_word(Duty);
/// 'switching', 'told' ... as printed; null for a word that is none of the file's.
const char* traced_text(const std::string& how);

}  // namespace doorcard
