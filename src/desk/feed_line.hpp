// SPDX-License-Identifier: MIT
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "base/words.hpp"
#include "sheet/sheet.hpp"
#include "survey/survey.hpp"

namespace doorcard {

/// What can be chosen on the feed line, mm, and what a screen reader says of it.
struct FeedPlace {
    enum class Kind { source, panel, more };  ///< `more`: panels that found no room
    Kind kind = Kind::panel;
    std::string id;  ///< of the source or the panel; of `more` that of the panel that feeds them
    Frame frame;
    std::string words;
};

/// The way of power as a single-line stroke: from the source over the panels on the way to the panel shown, what else
/// comes in there, and the panels that it feeds. `places` are in the order of a keyboard walk.
struct FeedLine {
    Page page;
    std::vector<FeedPlace> places;
    const FeedPlace* at(double x, double y) const;  ///< null where there is nothing
};

/// `panel` is the position of the panel shown; `width` in mm. Asks the survey's tables alone. Empty without a panel.
FeedLine feed_line(const Survey&, std::size_t panel, double width, const Words&);

}  // namespace doorcard
