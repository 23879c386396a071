// SPDX-License-Identifier: MIT
#pragma once
#include <iosfwd>
#include <optional>
#include <string>
#include <vector>

#include "base/words.hpp"

namespace doorcard {

/// `doorcard new FILE`: a survey to start from. What is not given is not guessed.
struct NewOptions {
    std::string file;
    std::optional<std::string> system;
    std::optional<int> spaces;
    std::optional<double> main_a;
    bool json = false;
    std::optional<std::string> from = std::nullopt;     ///< a list to begin from
    std::optional<std::string> panel = std::nullopt;    ///< of the list, where no column names one
    std::optional<std::string> columns = std::nullopt;  ///< `Ckt=space,...`
    std::vector<std::string> rules = {};                ///< local rules, looked whether they can be read
    bool skip_bad = false;                              ///< write although rows of the list were not understood
};

/// Exit 0; 2 where the system is unknown, or spaces or main are no ratings, or a column is none; 3 where the list
/// cannot be read, or not all of it and `skip_bad` is not set; 4 where the file exists or cannot be written, and what
/// was there is whole.
int run_new(const NewOptions&, std::ostream& out, std::ostream& err, const Words&);

/// Writes a survey that is not there yet: exit 0, or 4 after saying why not.
int write_new(const std::string& file, const std::string& text, std::ostream& err, const Words&);

}  // namespace doorcard
