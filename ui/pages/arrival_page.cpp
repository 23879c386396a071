// SPDX-License-Identifier: MIT
#include <wx/panel.h>
#include <wx/sizer.h>

#include "ui/form_view.hpp"
#include "ui/grid_view.hpp"
#include "ui/pages/pages.hpp"
#include "ui/parts.hpp"
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
        parts_ = new Parts(this);
        form_ = new FormView(parts_->inside(), seat);
        photos_ = new GridView(parts_->inside(), seat, seat.say(tr("Photos")), [&seat](const Desk& desk) {
            return photos_grid(desk.survey, desk.spot.panel, seat.units(), seat.words());
        });
        parts_->add(seat.say(tr("The call")), form_, [this] { form_->focus_first(); });
        parts_->add(seat.say(tr("Photos")), photos_, [this] { photos_->focus_new_row(); });
        GetSizer()->Add(parts_, wxSizerFlags(1).Expand());
    }
    wxWindow* window() override { return this; }
    void look() override {
        const Desk& desk = seat_.desk();
        form_->show(arrival_of(desk.survey, desk.spot.panel, seat_.units()),
                    desk.spot.slip.empty() ? desk.spot.field : "");
        photos_->look();
    }
    void take_focus() override { parts_->take_focus(); }

private:
    Seat& seat_;
    Parts* parts_ = nullptr;
    FormView* form_ = nullptr;
    GridView* photos_ = nullptr;
};

}  // namespace

View* new_arrival_page(wxWindow* parent, Seat& seat) { return new ArrivalPage(parent, seat); }

}  // namespace doorcard
