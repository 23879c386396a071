// SPDX-License-Identifier: MIT
#include "ui/wrapped_text.hpp"

#include "ui/accessible.hpp"
#include "ui/text.hpp"

namespace doorcard {

WrappedText::WrappedText(wxWindow* parent, const std::string& text, const char* style)
    : wxStaticText(parent, wxID_ANY, wide(text)) {
    if (style) give_style(this, style);
    let_wrap(this);
    SetMinSize({40, -1});
    Bind(wxEVT_SIZE, [this](wxSizeEvent& event) {
        event.Skip();
        if (event.GetSize().x == width_) return;
        width_ = event.GetSize().x;
        CallAfter([this] { wrap(); });
    });
}

void WrappedText::set(const std::string& text) {
    if (wide(text) == GetLabelText()) return;
    SetLabelText(wide(text));
    let_wrap(this);
    wrap();
}

void WrappedText::wrap() {
    if (width_ <= 40) return;
    const int height = wrapped_height(this, width_);
    if (height == GetMinSize().y) return;
    SetMinSize({40, height});
    InvalidateBestSize();
    for (wxWindow* around = GetParent(); around && !around->IsTopLevel(); around = around->GetParent())
        around->Layout();
}

}  // namespace doorcard
