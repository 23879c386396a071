// SPDX-License-Identifier: MIT
#include "ui/signal_strip.hpp"

#include <wx/panel.h>
#include <wx/sizer.h>
#include <wx/stattext.h>

#include "sheet/finding_words.hpp"
#include "ui/accessible.hpp"
#include "ui/text.hpp"
#include "ui/wrapped_text.hpp"

namespace doorcard {

SignalColours signal_colours(Severity severity) {
    switch (severity) {
        case Severity::danger:
            return {{0xc8, 0x10, 0x2e}, *wxWHITE};
        case Severity::warning:
            return {{0xff, 0x82, 0x00}, *wxBLACK};
        case Severity::caution:
            return {{0xff, 0xd1, 0x00}, *wxBLACK};
        case Severity::notice:
            return {{0x00, 0x57, 0xb8}, *wxWHITE};
    }
    return {};
}

wxWindow* new_signal_strip(wxWindow* parent, Seat& seat, Severity severity, const std::string& text) {
    constexpr const char* styles[] = {"danger", "warning", "caution", "notice"};
    auto* strip = new wxPanel(parent);
    auto* row = new wxBoxSizer(wxHORIZONTAL);
    auto* word = new wxStaticText(strip, wxID_ANY, wide(" " + signal_word(severity, seat.words()) + " "));
    give_style(word, styles[static_cast<std::size_t>(severity)]);
    auto* what = new WrappedText(strip, text);
    row->Add(word, wxSizerFlags().CentreVertical());
    row->Add(what, wxSizerFlags(1).CentreVertical().Border(wxLEFT, 10));
    strip->SetSizer(row);
    return strip;
}

}  // namespace doorcard
