// SPDX-License-Identifier: MIT
#pragma once
#include "sheet/face_painting.hpp"
#include "sheet/schedule.hpp"

namespace doorcard {

/// What every part of a schedule's sheet is drawn from.
struct ScheduleContent {
    const Network& network;
    const PanelSchedule& schedule;
    const Words& words;
    PanelFace& face;
    std::size_t page = 0, pages = 1;

    const Survey& survey() const { return network.survey(); }
    const Panel& panel() const { return survey().panels[schedule.panel]; }
    double left() const { return face.columns.left; }
    double right() const { return face.columns.right; }
    double width() const { return right() - left(); }
};

/// Where the columns of one side begin and end, mm from the left edge of the room between number and handle.
struct ScheduleColumns {
    double device = 0;       ///< poles and guards, next to the handle
    double description = 0;  ///< widths from here on
    double wire = 0, va = 0, measured = 0, percent = 0;
    std::size_t legs = 2;
};
ScheduleColumns schedule_columns(const FaceColumns&, const std::string& legs);

/// Height that the words of a run need, mm.
double words_height(const ScheduleContent&, const FaceRun&);

// Each part draws from `top` and returns its bottom.
double draw_schedule_head(Drawing&, const ScheduleContent&, double top);
double draw_schedule_feeds(Drawing&, const ScheduleContent&, double top);
double draw_schedule_captions(Drawing&, const ScheduleContent&, double top);
void draw_schedule_rows(Drawing&, const ScheduleContent&, std::pair<int, int> rows, double top, double bottom);
double draw_schedule_foot(Drawing&, const ScheduleContent&, double top);

/// The four blocks below the rows: a title over lines.
struct FootBlock {
    std::string title;
    std::vector<std::string> lines;  ///< already broken to the block's width
};
struct FootBlocks {
    std::vector<FootBlock> blocks;
    std::vector<double> widths;
};
FootBlocks foot_blocks(const ScheduleContent&);
double blocks_height(const FootBlocks&);
/// Draws so many lines of each block as the height takes and leaves the others in `blocks`.
double draw_blocks(Drawing&, const ScheduleContent&, FootBlocks&, double top, double height);

}  // namespace doorcard
