// SPDX-License-Identifier: MIT
#pragma once
#include <iosfwd>

#include "assess/assessment.hpp"
#include "base/words.hpp"
#include "cli/terminal.hpp"

namespace doorcard {

/// The findings for a person: what matters first, gaps and other notices of one rule and panel in one line, then the
/// table of circuits, neutrals, feeders and legs.
void write_check(std::ostream&, const Network&, const Assessment&, const Words&, const Terminal&);

}  // namespace doorcard
