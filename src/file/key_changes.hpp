// SPDX-License-Identifier: MIT
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "survey/difference.hpp"

namespace doorcard {

/// What one key of one thing was and is, as the file writes it; of an entry that is added or removed the key is empty.
struct KeyChange {
    enum class What { added, removed, changed };
    What what = What::changed;
    std::string of;   ///< "breaker:MAIN:5", "reading:3" (its place in its table, from 1), "survey:"
    std::string key;  ///< "amps", "wire.size"
    std::optional<std::string> was, now;
    bool operator==(const KeyChange&) const = default;
};

/// Every difference of two surveys by kind, id and key, in the order of the contract's tables.
std::vector<KeyChange> key_changes(const Survey& before, const Survey& after);

}  // namespace doorcard
