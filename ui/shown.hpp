// SPDX-License-Identifier: MIT
#pragma once
#include <string>
#include <vector>

#include "base/words.hpp"
#include "sheet/sheet.hpp"

namespace doorcard {

/// What the window shows of one survey file: the door cards of its panels, on paper and as plain text; or, where the
/// file cannot be read, what is wrong with it, a line each (then there is no card).
struct Shown {
    std::string title;
    Sheet card;
    std::string text;
    std::vector<std::string> complaints;
};

/// Reads the file and lays out its card. A file that cannot be opened is a complaint too.
Shown shown_from(const std::string& path, const Words&);

}  // namespace doorcard
