// SPDX-License-Identifier: MIT
#pragma once
#include <iosfwd>
#include <string>
#include <vector>

#include "base/words.hpp"

namespace doorcard {

/// `doorcard find FILE WORDS`: the circuit, breaker and panel of whatever matches, and how sure.
struct FindOptions {
    std::string file;
    std::vector<std::string> words;
    std::vector<std::string> rules;  ///< files of local rules, laid over in order
    bool json = false;
};

/// Exit 0, also where nothing was found; 3 where the file is wrong.
int run_find(const FindOptions&, std::ostream& out, std::ostream& err, const Words&);

}  // namespace doorcard
