// SPDX-License-Identifier: MIT
#pragma once
#include <string_view>

#include "survey/edits/edit.hpp"

namespace doorcard {

/// A list that was pasted onto the face of a panel: one step that puts in what fits, and what does not, each by its
/// line or space.
struct PastedList {
    Edit edit;
    std::size_t rows = 0;  ///< breakers and empty spaces that go in
    std::vector<Complaint> refused;
};

/// An old directory or a spreadsheet's list (contract 4, 'new --from') as rows of this panel. All of it is a claim:
/// texts are old labels, circuits are traced by the old directory alone. What the panel has is never written over:
/// not a breaker, and not a space in which somebody looked and found nothing. Refused where nothing is left to put in.
Outcome<PastedList> pasted_list(const Survey&, std::string_view panel, std::string_view text);

/// Whether a text looks like a list rather than like what is typed on one row: several lines, or tabs.
bool looks_like_list(std::string_view text);

}  // namespace doorcard
