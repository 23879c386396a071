// SPDX-License-Identifier: MIT
#pragma once
#include "assess/finding.hpp"
#include "ui/seat.hpp"

class wxWindow;

namespace doorcard {

/// A caution as it stands on a sign: the signal word on its colour, and what it is about beside it.
wxWindow* new_signal_strip(wxWindow* parent, Seat&, Severity, const std::string& text);

struct SignalColours {
    wxColour ground, ink;
};
/// After ANSI Z535.1; the word is always written beside.
SignalColours signal_colours(Severity);

}  // namespace doorcard
