// SPDX-License-Identifier: MIT
#pragma once
#include "sheet/drawing.hpp"

namespace doorcard {

/// The words of the one head that all sheets have.
struct HeadWords {
    std::string name;         ///< bold, its first stem on the margin, the accent bar as wide as it
    std::string title;        ///< beside it
    std::string owner;        ///< at the right, bold: the survey's title
    std::string under_owner;  ///< below it
};

/// Name, title, rule and accent bar in a room whose height does not matter; returns the bottom.
double draw_head(Drawing&, const Frame& room, const HeadWords&, double most_points);

/// A column of words below the stroke of the feeds.
struct FeedColumn {
    double x = 0, width = 0;
    std::string caption, text;
};
/// Returns the bottom.
double draw_feed_column(Drawing&, const FeedColumn&, double top);
/// A breaker on the stroke is our own handle, 7 mm wide, its lever toward the bus.
void draw_stroke_handle(Drawing&, double x, double y, bool bus_right, bool fuse);

}  // namespace doorcard
