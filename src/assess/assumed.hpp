// SPDX-License-Identifier: MIT
#pragma once
#include "assess/figures.hpp"

namespace doorcard {

/// The defaults that the figures stand on, where the survey leaves a key out: legs of rows, terminals, ambient,
/// insulation, power factors of motors, what a neutral shares ... Each once, by panel and in the
/// order of the survey; those of no panel stand behind the last panel's.
std::vector<std::vector<Assumption>> assumptions(const Reckoned&);

}  // namespace doorcard
