// SPDX-License-Identifier: MIT
#include <wx/panel.h>
#include <wx/sizer.h>

#include "ui/form_view.hpp"
#include "ui/pages/pages.hpp"
#include "ui/wrapped_text.hpp"

namespace doorcard {
namespace {

class ArrivalPage final : public wxPanel, public View {
public:
    ArrivalPage(wxWindow* parent, Seat& seat) : wxPanel(parent), seat_(seat) {
        SetSizer(new wxBoxSizer(wxVERTICAL));
        auto* caution =
            new WrappedText(this,
                            seat.say(tr("Look, smell, listen before you touch. Covers stay on until you are qualified, "
                                        "equipped and sure. Every part here may be left out.")),
                            "caption");
        GetSizer()->Add(caution, wxSizerFlags().Expand().Border(wxTOP | wxBOTTOM, 8));
        form_ = new FormView(this, seat);
        GetSizer()->Add(form_, wxSizerFlags(1).Expand());
    }
    wxWindow* window() override { return this; }
    void look() override {
        const Desk& desk = seat_.desk();
        form_->show(arrival_of(desk.survey, desk.spot.panel, seat_.units()),
                    desk.spot.slip.empty() ? desk.spot.field : "");
    }
    void take_focus() override { form_->focus_first(); }

private:
    Seat& seat_;
    FormView* form_ = nullptr;
};

}  // namespace

View* new_arrival_page(wxWindow* parent, Seat& seat) { return new ArrivalPage(parent, seat); }

}  // namespace doorcard
