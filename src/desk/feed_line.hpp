// SPDX-License-Identifier: MIT
#pragma once
#include <string>
#include <vector>

#include "base/words.hpp"
#include "sheet/sheet.hpp"
#include "survey/survey.hpp"

namespace doorcard {

/// A name on the feed line that leads somewhere.
struct FeedPlace {
    Frame frame;
    std::string id;
    bool is_panel = true;  ///< else a source
};

/// The feeds as a single-line stroke, mm.
struct FeedLine {
    Page page;
    std::vector<FeedPlace> places;  ///< from the source on
};

/// From the source over the panels above to the panel shown, and on to those that it feeds; as many as the width takes,
/// the rest as a number.
FeedLine feed_line(const Survey&, std::size_t shown_panel, double width, const Words&);

}  // namespace doorcard
