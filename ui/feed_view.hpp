// SPDX-License-Identifier: MIT
#pragma once
#include "desk/feed_line.hpp"
#include "ui/painted.hpp"
#include "ui/seat.hpp"

namespace doorcard {

/// The feeds as one stroke, from the sources to the panel that is shown and on to those that it feeds.
class FeedView final : public Painted {
public:
    FeedView(wxWindow* parent, Seat&);
    void look();

private:
    void draw(cairo_t*) override;
    void lay_out();
    void on_click(wxMouseEvent&);
    void on_key(wxKeyEvent&);

    Seat& seat_;
    FeedLine line_;
};

}  // namespace doorcard
