// SPDX-License-Identifier: MIT
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/words.hpp"
#include "desk/grid.hpp"
#include "rules/book.hpp"
#include "survey/load.hpp"

namespace doorcard {

/// An appliance as it usually is: a load until its nameplate is read, never instead of it.
struct Appliance {
    Message title;
    Load load;  ///< without id, title and place
    Citation source;
};

/// Those of the book of which a word begins with what was typed, in the language of the words; all of them for an empty
/// text. What begins so itself comes first.
std::vector<Appliance> appliances_like(const RuleBook&, std::string_view typed, const Words&);
/// The one of exactly that title.
std::optional<Appliance> appliance_called(const RuleBook&, std::string_view title, const Words&);

/// It as a load of the survey, with a note that says that its figures are typical, and where they come from.
Load load_of(const Appliance&, std::string id, const Words&);

/// What is left of a note that says so, once a figure of the nameplate is known; nullopt: the note does not say so.
std::optional<std::string> without_typical_note(std::string_view note);

/// An appliance chosen in a row of the grid of loads: the row at the end adds it; another takes what it does not say
/// yet, and no figure where it has one of its own.
Outcome<Edit> appliance_chosen(const Survey&, const Grid&, std::size_t row, const Appliance&, const Words&);

}  // namespace doorcard
