// SPDX-License-Identifier: MIT
#include "ui/painted.hpp"

#include <cairo.h>
#include <wx/dcclient.h>

namespace doorcard {

Painted::Painted(wxWindow* parent, const Looks& looks)
    : wxScrolledCanvas(parent, wxID_ANY, wxDefaultPosition, wxDefaultSize,
                       wxVSCROLL | wxWANTS_CHARS | wxFULL_REPAINT_ON_RESIZE),
      looks_(looks) {
    SetBackgroundStyle(wxBG_STYLE_PAINT);
    DisableKeyboardScrolling();
    SetScrollRate(1, 1);
    Bind(wxEVT_PAINT, [this](wxPaintEvent&) { paint(); });
}

double Painted::pixels_per_mm() const { return 96 / 25.4 * looks_.scale(); }

wxPoint Painted::scrolled(const wxPoint& in_window) const { return CalcUnscrolledPosition(in_window); }

void Painted::paint() {
    wxPaintDC dc(this);
    auto* cairo = static_cast<cairo_t*>(dc.GetHandle());
    const wxColour& ground = looks_.colours().ground;
    cairo_save(cairo);
    cairo_set_source_rgb(cairo, ground.Red() / 255.0, ground.Green() / 255.0, ground.Blue() / 255.0);
    cairo_paint(cairo);
    const wxPoint corner = CalcScrolledPosition(wxPoint(0, 0));
    cairo_translate(cairo, corner.x, corner.y);
    draw(cairo);
    cairo_restore(cairo);
}

}  // namespace doorcard
