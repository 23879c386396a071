// SPDX-License-Identifier: MIT
#pragma once
#include "assess/assessment.hpp"
#include "assess/homes.hpp"

namespace doorcard {

/// A survey with all that follows from it, and what the next edit builds on.
struct Assessed {
    Survey survey;
    Homes homes;
    Assessment assessment;
    std::size_t panels_anew = 0;  ///< panels that were looked at for it
};

Assessed assess_all(const Survey&, const RuleBook&);

/// The same as `assess_all(after)`, from what followed from the survey before an edit: only panels that the edit
/// reaches, those that feed them and those judged together with them are looked at anew. Where the edit reaches further
/// (heading, sources, which panels there are and what feeds them, ways that meet again) all is.
Assessed reassess(Assessed before, const Survey& after, const RuleBook&);

}  // namespace doorcard
