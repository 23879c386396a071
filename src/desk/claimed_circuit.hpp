// SPDX-License-Identifier: MIT
#pragma once
#include <string>

#include "base/outcome.hpp"
#include "survey/survey.hpp"

namespace doorcard {

/// An id that no circuit has yet, made of the words of its text: 'kitchen', 'kitchen-2'.
std::string new_circuit_id(const Survey&, std::string_view text);

/// The circuits of a breaker, by their place in the table.
std::vector<std::size_t> circuits_on(const Survey&, std::string_view breaker);

/// Why no circuit can be said to be on a breaker: it feeds a panel, brings in a source, or serves as the main; empty
/// where one can.
std::string why_no_circuit_on(const Survey&, const Breaker&);

/// The survey in which a person says that these outlets are on this breaker. A claim never joins what is proved: the
/// outlets go onto the breaker's one circuit where that is only claimed itself, onto a new one ('told') where it has
/// none, and else keep the breaker as what was said of them (`old_breakers`) until they are traced. Refused where no
/// circuit can be on the breaker, and for an outlet that is traced already.
Outcome<Survey> with_claim(Survey, const std::string& breaker, const Ids& outlets);

}  // namespace doorcard
