// SPDX-License-Identifier: MIT
#pragma once
#include <wx/scrolwin.h>

#include <functional>

#include "ui/looks.hpp"

typedef struct _cairo cairo_t;

namespace doorcard {

/// A window that is drawn in millimetres by the painter of the sheets, scrolled by pixels.
class Painted : public wxScrolledCanvas {
public:
    Painted(wxWindow* parent, const Looks&);

protected:
    /// Millimetres to pixels of the window, at the scale of the moment.
    double pixels_per_mm() const;
    /// Draws with the origin at the top left corner of what is scrolled, in pixels.
    virtual void draw(cairo_t*) = 0;
    /// Where a place of the window lies in what is scrolled, in pixels.
    wxPoint scrolled(const wxPoint& in_window) const;
    const Looks& looks() const { return looks_; }

private:
    void paint();
    const Looks& looks_;
};

}  // namespace doorcard
