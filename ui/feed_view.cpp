// SPDX-License-Identifier: MIT
#include "ui/feed_view.hpp"

#include <cairo.h>

#include <algorithm>

#include "ui/accessible.hpp"

namespace doorcard {

FeedView::FeedView(wxWindow* parent, Seat& seat) : Painted(parent, seat.looks()), seat_(seat) {
    name_for_readers(this, seat.say(tr("Feeds: left and right choose a panel")));
    Bind(wxEVT_LEFT_DOWN, &FeedView::on_click, this);
    Bind(wxEVT_KEY_DOWN, &FeedView::on_key, this);
    Bind(wxEVT_SIZE, [this](wxSizeEvent& event) {
        event.Skip();
        lay_out();
    });
}

void FeedView::look() { lay_out(); }

void FeedView::lay_out() {
    const auto panel = shown_panel(seat_.desk());
    line_ =
        panel ? feed_line(seat_.desk().survey, *panel, GetClientSize().x / pixels_per_mm(), seat_.words()) : FeedLine{};
    const int height = std::max(looks().pixels(58), static_cast<int>(line_.page.paper.height * pixels_per_mm()) + 2);
    if (height != GetMinSize().y) {
        SetMinSize({-1, height});
        for (wxWindow* around = GetParent(); around && !around->IsTopLevel(); around = around->GetParent())
            around->Layout();
    }
    Refresh();
}

void FeedView::draw(cairo_t* cairo) {
    const double scale = pixels_per_mm() / (72 / 25.4);
    cairo_scale(cairo, scale, scale);
    paint_page(cairo, line_.page, screen_inks(looks().ground()));
}

void FeedView::on_click(wxMouseEvent& event) {
    const double x = event.GetX() / pixels_per_mm(), y = event.GetY() / pixels_per_mm();
    for (const FeedPlace& place : line_.places) {
        const Frame& frame = place.frame;
        if (x < frame.x || x > frame.right() || y < frame.y || y > frame.bottom()) continue;
        if (place.is_panel) return seat_.act(Action{ShowPanel{place.id}});
        return seat_.act(Action{OpenSlip{"source:" + place.id, ""}});
    }
}

void FeedView::on_key(wxKeyEvent& event) {
    const int step = event.GetKeyCode() == WXK_RIGHT ? 1 : event.GetKeyCode() == WXK_LEFT ? -1 : 0;
    std::vector<std::string> panels;
    for (const FeedPlace& place : line_.places)
        if (place.is_panel) panels.push_back(place.id);
    const auto at = std::ranges::find(panels, seat_.desk().spot.panel);
    const auto next = at - panels.begin() + step;
    if (step == 0 || next < 0 || next >= static_cast<std::ptrdiff_t>(panels.size())) return event.Skip();
    seat_.act(Action{ShowPanel{panels[static_cast<std::size_t>(next)]}});
}

}  // namespace doorcard
