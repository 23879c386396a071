// SPDX-License-Identifier: MIT
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "base/place.hpp"
#include "survey/names.hpp"

namespace doorcard {

/// Where a thing is named: by a key of an entry of a table.
struct Reference {
    std::string table;
    std::size_t row = 0;
    std::string key;
    std::uint32_t kinds = 0;  ///< what the id may be of
    std::string id;
    bool is_needed = false;  ///< the entry says nothing without it
};

/// All places that name a thing.
std::vector<Reference> references_to(const Survey&, std::uint32_t kinds, const std::string& id);
/// All places that name what is not there.
std::vector<Reference> dangling_references(const Survey&);

/// Whether there is such a thing; a neutral is there where a circuit names it, which this does not look for.
bool is_there(const Survey&, std::uint32_t kinds, const std::string& id);

/// Gives that thing another name wherever it is named; without one, the name goes, and with it an entry that says
/// nothing without. Tables that do not name it stay as they are. Two names that become one stand once in a list.
void rename_all(Survey&, std::uint32_t kinds, const std::string& id, const std::optional<std::string>& other);

/// 'circuit "kitchen"', 'reading 3': an entry, for a sentence.
std::string entry_words(const Survey&, const Reference&);

}  // namespace doorcard
