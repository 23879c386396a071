// SPDX-License-Identifier: MIT
#include "ui/parts.hpp"

#include <wx/simplebook.h>
#include <wx/sizer.h>
#include <wx/tglbtn.h>

#include "ui/text.hpp"

namespace doorcard {

Parts::Parts(wxWindow* parent)
    : wxPanel(parent), buttons_(new wxBoxSizer(wxHORIZONTAL)), book_(new wxSimplebook(this)) {
    SetSizer(new wxBoxSizer(wxVERTICAL));
    GetSizer()->Add(buttons_, wxSizerFlags().Border(wxBOTTOM, 8));
    GetSizer()->Add(book_, wxSizerFlags(1).Expand());
}

wxWindow* Parts::inside() { return book_; }

void Parts::add(const std::string& name, wxWindow* part, std::function<void()> take_focus) {
    const std::size_t which = parts_.size();
    auto* button = new wxToggleButton(this, wxID_ANY, wide(name));
    button->MoveBeforeInTabOrder(book_);
    button->Bind(wxEVT_TOGGLEBUTTON, [this, which](wxCommandEvent&) {
        show(which);
        parts_[which].take_focus();
    });
    buttons_->Add(button, wxSizerFlags());
    book_->AddPage(part, "");
    parts_.push_back({button, std::move(take_focus)});
    if (which == 0) show(0);
}

void Parts::show(std::size_t which) {
    book_->SetSelection(which);
    for (std::size_t i = 0; i < parts_.size(); ++i) parts_[i].button->SetValue(i == which);
}

void Parts::take_focus() { parts_[static_cast<std::size_t>(book_->GetSelection())].take_focus(); }

}  // namespace doorcard
