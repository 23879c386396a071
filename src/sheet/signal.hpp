// SPDX-License-Identifier: MIT
#pragma once
#include "sheet/drawing.hpp"

namespace doorcard {

/// A framed signal word in its safety colour, with its words beside it, in a room whose height does not matter; returns
/// the bottom.
double draw_signal(Drawing&, const Frame& room, const std::string& signal, Ink colour, const std::string& title,
                   const std::string& text);

}  // namespace doorcard
