// SPDX-License-Identifier: MIT
#pragma once
#include <utility>

#include "desk/actions.hpp"
#include "desk/effects.hpp"

namespace doorcard {

/// The desk after an action, and what is to be done outside for it. Pure: asks no file, no clock, no window.
std::pair<Desk, Effects> update(Desk, Action);

}  // namespace doorcard
