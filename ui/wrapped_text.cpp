// SPDX-License-Identifier: MIT
#include "ui/wrapped_text.hpp"

#include "ui/accessible.hpp"
#include "ui/text.hpp"

namespace doorcard {

WrappedText::WrappedText(wxWindow* parent, const std::string& text, const char* style)
    : wxStaticText(parent, wxID_ANY, wide(text)), text_(wide(text)) {
    if (style) give_style(this, style);
    SetMinSize({40, -1});
    Bind(wxEVT_SIZE, [this](wxSizeEvent& event) {
        event.Skip();
        if (event.GetSize().x == width_) return;
        width_ = event.GetSize().x;
        CallAfter([this] { wrap(); });
    });
}

void WrappedText::set(const std::string& text) {
    if (wide(text) == text_) return;
    text_ = wide(text);
    wrap();
}

void WrappedText::wrap() {
    const int before = GetMinSize().y;
    SetLabel(text_);
    if (width_ > 40) Wrap(width_);
    SetMinSize({40, -1});
    InvalidateBestSize();
    const int height = GetBestSize().y;
    SetMinSize({40, height});
    if (height != before) GetParent()->Layout();
}

}  // namespace doorcard
