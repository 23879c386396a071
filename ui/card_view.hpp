// SPDX-License-Identifier: MIT
#pragma once
#include <functional>

#include "sheet/sheet.hpp"

class wxWindow;

namespace doorcard {

/// The pages of a sheet one below the other, as paper on a desk: painted by the painter of the printed files at any
/// zoom, scrolled by wheel, keys and bars. Zoom 1 is the size on paper, on a screen of 96 pixels to the inch.
class CardView {
public:
    virtual ~CardView() = default;
    virtual wxWindow* window() = 0;
    virtual void show(Sheet) = 0;
    virtual double zoom() const = 0;
    /// Keeps what is in the middle in the middle; held between 0.1 and 8.
    virtual void set_zoom(double) = 0;
};

/// A view inside `parent`, which owns it. `zoomed` is called after every change of zoom.
CardView* new_card_view(wxWindow* parent, std::function<void()> zoomed);

}  // namespace doorcard
