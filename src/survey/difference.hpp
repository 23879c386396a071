// SPDX-License-Identifier: MIT
#pragma once
#include <cstddef>
#include <optional>
#include <string_view>
#include <vector>

#include "survey/survey.hpp"

namespace doorcard {

/// How the entries of one table became those of another. Things are the same by their id; a breaker without a given id
/// also by what it feeds, or where it is alike in all but its place; entries without an id by the longest run that both
/// tables have, and what is changed between two of such by what it is of.
struct TableDifference {
    std::string_view table;                       ///< as the file names its entries: "breaker"
    std::vector<std::optional<std::size_t>> was;  ///< for each entry of the later table its place in the earlier
    std::vector<std::size_t> removed;             ///< places in the earlier
    std::vector<std::size_t> changed;             ///< places in the later, of those that were there, with other keys
};

/// What is added, removed, changed and put in another order between two surveys; tables that are equal are left out, at
/// once where they are shared.
struct Difference {
    bool heading = false, grounding = false, mapping = false;
    std::vector<TableDifference> tables;
    bool empty() const { return !heading && !grounding && !mapping && tables.empty(); }
    /// Null where that table is as it was.
    const TableDifference* of(std::string_view table) const;
};

Difference difference(const Survey& before, const Survey& after);

}  // namespace doorcard
