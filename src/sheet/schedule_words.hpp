// SPDX-License-Identifier: MIT
#pragma once
#include "assess/schedule.hpp"
#include "base/words.hpp"

// The schedule's figures and facts as they are printed, rounded here.
namespace doorcard {

/// "1,200", "≥ 1,200" where it is known in part, a dash where it is not known.
std::string va_text(std::optional<VoltAmperes>, bool complete);
std::string amps_text(std::optional<Amperes>, bool complete = true);  ///< one decimal
std::string percent_text(std::optional<double>, bool complete);
/// "small appliance · by switching · N1"
std::string class_text(const ScheduleRow&, const Words&);
/// "12 cu", "12, 14 cu"; a dash where not known, empty for a position without conductors of its own.
std::string wire_text(const ScheduleRow&);
std::string poles_text(const ScheduleRow&, const Words&);                   ///< "2-pole"
std::string guards_text(const Network&, const ScheduleRow&, const Words&);  ///< "arc", "none", a dash
/// Where it stands on no leg: '(highest leg)' beside a reading of several poles.
bool only_highest_known(const ScheduleRow&);
std::string conductors_text(const std::optional<Wire>&, const Words&);  ///< "2/0 cu, THWN-2"
std::string fault_text(const PanelSchedule&, const Words&);
std::string interrupting_text(const PanelSchedule&, const Words&);

/// The blocks of the foot, as lines.
std::vector<std::string> leg_lines(const PanelSchedule&, const Words&);
std::vector<std::string> demand_lines(const PanelSchedule&, const Words&);
std::vector<std::string> space_lines(const Network&, const PanelSchedule&, const Words&);
std::vector<std::string> open_lines(const Network&, const PanelSchedule&, const Words&);  ///< assumed, not known

}  // namespace doorcard
