// SPDX-License-Identifier: MIT
#pragma once
#include <wx/panel.h>

#include <functional>

#include "ui/seat.hpp"

class wxButton;

namespace doorcard {

class WrappedText;

/// What the desk has to say, and what it offers, in a strip of the window: never a box that stops the work.
class NoticeStrip final : public wxPanel {
public:
    NoticeStrip(wxWindow* parent, Seat&);
    void look();

private:
    struct Offer {
        std::string text, first, second;
        Action on_first, on_second;
    };
    Offer offer_now() const;
    std::string said_now() const;

    Seat& seat_;
    WrappedText* text_ = nullptr;
    wxButton *first_ = nullptr, *second_ = nullptr;
    Offer offer_;
};

}  // namespace doorcard
