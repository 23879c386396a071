// SPDX-License-Identifier: MIT
#pragma once
#include <string>
#include <vector>

#include "assess/assessment.hpp"
#include "base/words.hpp"
#include "sheet/sheet.hpp"

namespace doorcard {

constexpr Paper letter_paper{215.9, 279.4};
constexpr Paper a4_paper{210, 297};
constexpr Paper half_letter_paper{139.7, 215.9};
constexpr Paper usual_cut{132, 206};  // what a half-letter sheet leaves inside its marks; common practice, no source
constexpr Paper least_cut{104, 160};  // below it the smallest type no longer fits

/// What is to be printed of the panel directory.
struct CardChoice {
    std::vector<std::string> panels;  ///< ids; empty: all
    Paper paper = letter_paper;
    std::optional<Paper>
        cut;  ///< the door pocket as measured, at least `least_cut`; absent: `usual_cut`, measure first
    std::string source_label;   ///< what the rule on marking where a panel is fed from is cited as; may be empty
    bool back_follows = false;  ///< the back is printed too: the tag stands there, not below the front
};

/// A paper for a card of this size with its cut marks: half letter, letter, or as large as it takes.
Paper paper_for_cut(const Paper& cut);

/// The panel directory, front: one card or more for each panel, each on a page of its own.
Sheet card_sheet(const Network&, const Assessment&, const CardChoice&, const Words&);

/// The same directory as lines of plain text, at most 80 columns.
std::vector<std::string> card_lines(const Network&, std::size_t panel, const Words&);

}  // namespace doorcard
