// SPDX-License-Identifier: MIT
#pragma once
#include <iosfwd>
#include <optional>
#include <string>

#include "base/words.hpp"

namespace doorcard {

/// `doorcard new FILE`: a survey to start from. What is not given is not guessed.
struct NewOptions {
    std::string file;
    std::optional<std::string> system;
    std::optional<int> spaces;
    std::optional<double> main_a;
    bool json = false;
};

/// Exit 0; 2 where the system is unknown, or spaces or main are no ratings; 4 where the file exists or cannot be
/// written, and what was there is whole.
int run_new(const NewOptions&, std::ostream& out, std::ostream& err, const Words&);

}  // namespace doorcard
