// SPDX-License-Identifier: MIT
#include "ui/head_view.hpp"

#include <wx/sizer.h>
#include <wx/stattext.h>

#include "ui/accessible.hpp"
#include "ui/feed_view.hpp"
#include "ui/text.hpp"

namespace doorcard {

HeadView::HeadView(wxWindow* parent, Seat& seat) : wxPanel(parent), seat_(seat) {
    auto* row = new wxBoxSizer(wxHORIZONTAL);
    feeds_ = new FeedView(this, seat);
    auto* names = new wxBoxSizer(wxVERTICAL);
    title_ = new wxStaticText(this, wxID_ANY, "", wxDefaultPosition, wxDefaultSize, wxALIGN_RIGHT);
    give_style(title_, "group");
    keeping_ = new wxStaticText(this, wxID_ANY, "", wxDefaultPosition, wxDefaultSize, wxALIGN_RIGHT);
    give_style(keeping_, "caption");
    names->Add(title_, wxSizerFlags().Right());
    names->Add(keeping_, wxSizerFlags().Right());
    row->Add(feeds_, wxSizerFlags(1).Expand());
    row->Add(names, wxSizerFlags().CentreVertical().Border(wxALL, 8));
    SetSizer(row);
}

void HeadView::look() {
    const wxString title = wide(seat_.words().say(title_of(seat_.desk())));
    const wxString keeping = wide(seat_.words().say(keeping_of(seat_.desk())));
    const bool is_other = title_->GetLabel() != title || keeping_->GetLabel() != keeping;
    title_->SetLabel(title);
    keeping_->SetLabel(keeping);
    if (is_other) Layout();
    feeds_->look();
}

}  // namespace doorcard
