// SPDX-License-Identifier: MIT
#include <wx/panel.h>
#include <wx/simplebook.h>
#include <wx/sizer.h>
#include <wx/tglbtn.h>

#include "ui/form_view.hpp"
#include "ui/grid_view.hpp"
#include "ui/pages/pages.hpp"
#include "ui/text.hpp"
#include "ui/wrapped_text.hpp"

namespace doorcard {
namespace {

/// What is asked and looked at before anything is touched; and the pictures taken.
class ArrivalPage final : public wxPanel, public View {
public:
    ArrivalPage(wxWindow* parent, Seat& seat) : wxPanel(parent), seat_(seat) {
        SetSizer(new wxBoxSizer(wxVERTICAL));
        auto* caution = new WrappedText(
            this,
            seat.say(tr("Look, smell, listen before you touch. Covers stay on until you are qualified, equipped and "
                        "sure. Every part here may be left out.")),
            "caption");
        GetSizer()->Add(caution, wxSizerFlags().Expand().Border(wxTOP | wxBOTTOM, 8));
        add_choice();
        parts_ = new wxSimplebook(this);
        form_ = new FormView(parts_, seat);
        photos_ = new GridView(parts_, seat, seat.say(tr("Photos")), [&seat](const Desk& desk) {
            return photos_grid(desk.survey, desk.spot.panel, seat.units(), seat.words());
        });
        parts_->AddPage(form_, "");
        parts_->AddPage(photos_, "");
        GetSizer()->Add(parts_, wxSizerFlags(1).Expand());
        show(0);
    }
    wxWindow* window() override { return this; }
    void look() override {
        const Desk& desk = seat_.desk();
        form_->show(arrival_of(desk.survey, desk.spot.panel, seat_.units()),
                    desk.spot.slip.empty() ? desk.spot.field : "");
        photos_->look();
    }
    void take_focus() override { parts_->GetSelection() == 0 ? form_->focus_first() : photos_->focus_new_row(); }

private:
    void add_choice() {
        auto* row = new wxBoxSizer(wxHORIZONTAL);
        const char* names[] = {tr("The call"), tr("Photos")};
        for (std::size_t i = 0; i < 2; ++i) {
            which_[i] = new wxToggleButton(this, wxID_ANY, wide(seat_.say(names[i])));
            which_[i]->Bind(wxEVT_TOGGLEBUTTON, [this, i](wxCommandEvent&) {
                show(i);
                take_focus();
            });
            row->Add(which_[i], wxSizerFlags());
        }
        GetSizer()->Add(row, wxSizerFlags().Border(wxBOTTOM, 4));
    }

    void show(std::size_t which) {
        parts_->SetSelection(which);
        for (std::size_t i = 0; i < 2; ++i) which_[i]->SetValue(i == which);
    }

    Seat& seat_;
    wxToggleButton* which_[2] = {};
    wxSimplebook* parts_ = nullptr;
    FormView* form_ = nullptr;
    GridView* photos_ = nullptr;
};

}  // namespace

View* new_arrival_page(wxWindow* parent, Seat& seat) { return new ArrivalPage(parent, seat); }

}  // namespace doorcard
