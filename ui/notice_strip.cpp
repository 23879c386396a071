// SPDX-License-Identifier: MIT
#include "ui/notice_strip.hpp"

#include <wx/button.h>
#include <wx/sizer.h>

#include "ui/accessible.hpp"
#include "ui/text.hpp"
#include "ui/wrapped_text.hpp"

namespace doorcard {

NoticeStrip::NoticeStrip(wxWindow* parent, Seat& seat) : wxPanel(parent), seat_(seat) {
    give_style(this, "strip");
    auto* row = new wxBoxSizer(wxHORIZONTAL);
    text_ = new WrappedText(this, "");
    first_ = new wxButton(this, wxID_ANY, "");
    second_ = new wxButton(this, wxID_ANY, "");
    first_->Bind(wxEVT_BUTTON, [this](wxCommandEvent&) { seat_.act(Action(offer_.on_first)); });
    second_->Bind(wxEVT_BUTTON, [this](wxCommandEvent&) { seat_.act(Action(offer_.on_second)); });
    row->Add(text_, wxSizerFlags(1).CentreVertical().Border(wxALL, 8));
    row->Add(first_, wxSizerFlags().CentreVertical().Border(wxALL, 4));
    row->Add(second_, wxSizerFlags().CentreVertical().Border(wxALL, 4));
    SetSizer(row);
    Hide();
}

std::string NoticeStrip::said_now() const {
    const auto& said = seat_.desk().said;
    if (!said) return {};
    std::string text = seat_.words().say(said->what);
    for (const Complaint& one : said->complaints) {
        text += text.empty() ? "" : "\n";
        text += one.wrong;
        if (!one.right.empty()) text += "; " + one.right;
    }
    return text;
}

NoticeStrip::Offer NoticeStrip::offer_now() const {
    const Desk& desk = seat_.desk();
    if (desk.theirs)
        return {seat_.say(tr("Somebody else has changed this file since you opened it.")),
                seat_.say(tr("Take theirs (can be undone)")), seat_.say(tr("Keep mine")), TakeTheirs{}, KeepMine{}};
    if (desk.left)
        return {
            seat_.say(
                desk.left->is_based_on_file
                    ? tr("The program ended before these changes were saved. They were kept.")
                    : tr("Changes were kept that were never saved; the file has been changed by somebody else since.")),
            seat_.say(tr("Show them (can be undone)")), seat_.say(tr("Throw them away")), TakeJournal{}, DropLeft{}};
    const std::string said = said_now();
    return {said, said.empty() ? "" : seat_.say(tr("Close")), "", Hush{}, Hush{}};
}

void NoticeStrip::look() {
    offer_ = offer_now();
    text_->set(offer_.text);
    const bool is_refusal = seat_.desk().said && seat_.desk().said->kind == Said::Kind::refused;
    is_refusal ? give_style(text_, "refusal") : take_style(text_, "refusal");
    const auto offer = [](wxButton* button, const std::string& label) {
        button->Show(!label.empty());
        if (!label.empty()) button->SetLabel(wide(label));
    };
    offer(first_, offer_.first);
    offer(second_, offer_.second);
    const bool is_there = !offer_.text.empty();
    if (IsShown() != is_there) {
        Show(is_there);
        GetParent()->Layout();
    }
    if (is_there) Layout();
}

}  // namespace doorcard
