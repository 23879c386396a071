// SPDX-License-Identifier: MIT
#pragma once
#include "desk/face_facts.hpp"
#include "sheet/drawing.hpp"

namespace doorcard {

/// 0 to 100 % of a rating on a tick scale, the heavy tick at 80: a filled pointer from above is calculated, a hollow
/// one measured (from below where both are known). Past 100 % a pointer stays at the end with its head outward. Without
/// a load no pointer. From 2 mm high; 3.9 where both are known.
void draw_load_scale(Drawing&, const RowLoad&, const Frame&);

}  // namespace doorcard
