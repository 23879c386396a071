// SPDX-License-Identifier: MIT
#pragma once
#include "assess/schedule.hpp"
#include "base/words.hpp"
#include "sheet/paint.hpp"
#include "sheet/sheet.hpp"

namespace doorcard {

constexpr Paper letter_landscape{279.4, 215.9};
constexpr Paper a4_landscape{297, 210};

/// What is to be printed of the panel schedules.
struct ScheduleChoice {
    std::vector<std::string> panels;  ///< ids; empty: all
    Paper paper = letter_landscape;
};

/// The panel schedules: for each panel a sheet, on one page up to 42 spaces where its words leave room.
Sheet schedule_sheet(const Network&, const std::vector<PanelSchedule>&, const ScheduleChoice&, const Words&);

/// The same as lines of plain text, at most 80 columns.
std::vector<std::string> schedule_lines(const Network&, const PanelSchedule&, const Words&);

/// A line per pole, and one per space that was seen empty: RFC 4180, UTF-8 without byte order mark. A text that begins
/// with = + - @, tab or return stands behind an apostrophe, so that no spreadsheet takes it for a formula. Empty
/// panels: all.
Bytes schedule_csv(const Network&, const std::vector<PanelSchedule>&, const std::vector<std::string>& panels,
                   const Words&);

}  // namespace doorcard
