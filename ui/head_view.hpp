// SPDX-License-Identifier: MIT
#pragma once
#include <wx/panel.h>

#include "ui/seat.hpp"

class wxStaticText;

namespace doorcard {

class FeedView;

/// The head of the window: the feeds as one stroke, whose survey it is, and where its changes are.
class HeadView final : public wxPanel {
public:
    HeadView(wxWindow* parent, Seat&);
    void look();

private:
    Seat& seat_;
    FeedView* feeds_ = nullptr;
    wxStaticText *title_ = nullptr, *keeping_ = nullptr;
};

}  // namespace doorcard
