// SPDX-License-Identifier: MIT
#pragma once
#include "network/network.hpp"

namespace doorcard {

/// The place of an outlet as the survey says it: its own, else its room's; nullopt: not said.
std::optional<std::string> place_of(const Survey&, const Outlet&);

/// True where a guard of this kind is known to stand in an outlet, in one that feeds it, at its circuit's breakers, or
/// at a breaker above them.
bool is_guarded(const Network&, std::size_t outlet, std::size_t circuit, Guard);

/// True where one may: the way to the outlet is not known back to the panel, and another outlet of the circuit has such
/// a guard.
bool may_be_guarded(const Network&, std::size_t outlet, std::size_t circuit, Guard);

}  // namespace doorcard
