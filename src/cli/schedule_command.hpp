// SPDX-License-Identifier: MIT
#pragma once
#include <iosfwd>
#include <optional>
#include <string>
#include <vector>

#include "base/words.hpp"
#include "sheet/schedule.hpp"

namespace doorcard {

/// `doorcard schedule FILE -o OUT`: the panel schedule.
struct ScheduleOptions {
    std::string file;
    std::string output;               ///< empty or "-": text to standard output; else the ending says what is written
    std::vector<std::string> panels;  ///< ids; empty: all
    std::string paper = "letter";     ///< letter | a4, landscape
    std::vector<std::string> rules;   ///< files of local rules, laid over in order
    bool json = false;
};

/// Exit 0; 2 for an unknown panel, paper or ending; 3 where the file is wrong. Throws where the output cannot be
/// written.
int run_schedule(const ScheduleOptions&, std::ostream& out, std::ostream& err, const Words&);

}  // namespace doorcard
