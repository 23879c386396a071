// SPDX-License-Identifier: MIT
#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "base/words.hpp"
#include "rules/book.hpp"
#include "survey/load.hpp"

namespace doorcard {

/// An appliance as it usually is: a load until its nameplate is read, never instead of it.
struct Appliance {
    Message title;
    Load load;  ///< without id, title and place
    Citation source;
};

/// Those of the book whose title begins like what was typed, in the language of the words; all of them for an empty
/// text.
std::vector<Appliance> appliances_like(const RuleBook&, std::string_view typed, const Words&);

}  // namespace doorcard
