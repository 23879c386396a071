// SPDX-License-Identifier: MIT
#pragma once
#include "ui/seat.hpp"
#include "ui/view.hpp"

namespace doorcard {

// The pages of a call, in its order. Each is a window of its parent, which owns it.
View* new_arrival_page(wxWindow* parent, Seat&);
View* new_rooms_page(wxWindow* parent, Seat&);
View* new_measure_page(wxWindow* parent, Seat&);
View* new_card_page(wxWindow* parent, Seat&);
/// The slip of one thing, which lies over the page until it is closed.
View* new_slip(wxWindow* parent, Seat&);

}  // namespace doorcard
