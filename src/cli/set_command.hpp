// SPDX-License-Identifier: MIT
#pragma once
#include <iosfwd>
#include <string>
#include <vector>

#include "base/words.hpp"

namespace doorcard {

/// `doorcard set FILE ADDRESS KEY=VALUE ...`: one entry of a survey changed, added or taken out, and the file saved.
struct SetOptions {
    std::string file;
    std::string address;
    std::vector<std::string> keys;  ///< KEY=VALUE
    std::vector<std::string> unset;
    bool add = false;
    bool remove = false;
    bool take_along = false;
    std::vector<std::string> rules;  ///< local rules, looked whether they can be read
    bool json = false;
};

/// Exit 0; 2 where there is no such entry or key, or the value is wrong; 3 where the survey is; 4 where it could not be
/// saved, and what was there is whole.
int run_set(const SetOptions&, std::ostream& out, std::ostream& err, const Words&);

}  // namespace doorcard
