// SPDX-License-Identifier: MIT
#include "ui/clipboard.hpp"

#include <wx/clipbrd.h>

#include "ui/text.hpp"

namespace doorcard {

std::string clipboard_text() {
    wxTextDataObject text;
    if (!wxTheClipboard->Open()) return {};
    const bool is_there = wxTheClipboard->GetData(text);
    wxTheClipboard->Close();
    return is_there ? utf8(text.GetText()) : std::string();
}

void put_on_clipboard(const std::string& text) {
    if (!wxTheClipboard->Open()) return;
    wxTheClipboard->SetData(new wxTextDataObject(wide(text)));
    wxTheClipboard->Close();
}

}  // namespace doorcard
