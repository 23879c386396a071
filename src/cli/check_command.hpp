// SPDX-License-Identifier: MIT
#pragma once
#include <iosfwd>
#include <optional>
#include <string>
#include <vector>

#include "assess/finding.hpp"
#include "base/words.hpp"

namespace CLI {
class App;
}

namespace doorcard {

/// `doorcard check FILE`: findings, and the table of circuits, neutrals, feeders and legs behind them.
struct CheckOptions {
    std::string file;
    std::vector<std::string> rules;  ///< files of local rules laid over those of the survey
    Severity fail_at = Severity::warning;
    bool json = false;
    bool only_required = false;
    std::optional<Applies> applies;
    std::string output;            ///< a correction list by its ending; empty: none
    std::string paper = "letter";  ///< letter | a4
};

/// Exit 0, or 1 where a finding stands at or above `fail_at`; 2 where an option is none; 3 where the file is wrong.
int run_check(const CheckOptions&, std::ostream& out, std::ostream& err, const Words&);

}  // namespace doorcard
