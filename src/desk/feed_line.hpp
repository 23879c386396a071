// SPDX-License-Identifier: MIT
#pragma once
#include <string>
#include <vector>

#include "base/words.hpp"
#include "sheet/sheet.hpp"
#include "survey/survey.hpp"

namespace doorcard {

/// A name on the feed line that leads somewhere, mm, and what a screen reader says of it. 'and 12 more' leads to the
/// first panel that found no room.
struct FeedPlace {
    Frame frame;
    std::string id;
    bool is_panel = true;  ///< else a source
    std::string words;
};

/// The way of power as a single-line stroke: from the source over the panels above to the panel shown, what else comes
/// in on the way, and the panels that it feeds; as many as the width takes, the rest as a number. As high as it needs:
/// `page.paper.height`.
struct FeedLine {
    Page page;
    std::vector<FeedPlace> places;  ///< in the order of a keyboard walk
};

FeedLine feed_line(const Survey&, std::size_t shown_panel, double width, const Words&);

}  // namespace doorcard
