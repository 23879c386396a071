// SPDX-License-Identifier: MIT
#include <wx/button.h>
#include <wx/panel.h>
#include <wx/sizer.h>
#include <wx/stattext.h>

#include "ui/accessible.hpp"
#include "ui/form_view.hpp"
#include "ui/frame_menus.hpp"
#include "ui/pages/pages.hpp"
#include "ui/text.hpp"

namespace doorcard {
namespace {

/// All about one thing, over the page; Esc or its button leads back to where one was.
class Slip final : public wxPanel, public View {
public:
    Slip(wxWindow* parent, Seat& seat) : wxPanel(parent), seat_(seat) {
        SetSizer(new wxBoxSizer(wxVERTICAL));
        auto* head = new wxBoxSizer(wxHORIZONTAL);
        title_ = new wxStaticText(this, wxID_ANY, "");
        give_style(title_, "title");
        auto* back = new wxButton(this, wxID_ANY, wide(seat.say(tr("Back (Esc)"))));
        back->Bind(wxEVT_BUTTON, [this](wxCommandEvent&) { seat_.act(Action{GoBack{}}); });
        head->Add(title_, wxSizerFlags(1).CentreVertical());
        head->Add(back, wxSizerFlags().CentreVertical());
        form_ = new FormView(this, seat);
        GetSizer()->Add(head, wxSizerFlags().Expand().Border(wxTOP | wxBOTTOM, 8));
        GetSizer()->Add(form_, wxSizerFlags(1).Expand());
    }
    wxWindow* window() override { return this; }

    void look() override {
        const Desk& desk = seat_.desk();
        const bool is_other = desk.spot.slip != shown_ || desk.spot.field != field_ || desk.spot.row != row_;
        shown_ = desk.spot.slip;
        field_ = desk.spot.field;
        row_ = desk.spot.row;
        title_->SetLabel(wide(title()));
        form_->show(groups(), is_other ? field_ : "");
        if (is_other && field_.empty()) form_->focus_first();
    }
    void take_focus() override { form_->focus_first(); }

private:
    bool is_of_row() const {
        const auto of = parse_address(shown_);
        return shown_ == row_address ||
               (row_ && of && (of->kind == ThingKind::breaker || of->kind == ThingKind::circuit));
    }
    std::vector<FormGroup> groups() const {
        const Desk& desk = seat_.desk();
        if (!is_of_row() || !row_) return form_of(desk.survey, shown_, seat_.units());
        return slip_of(desk.survey, desk.spot.panel, *row_, seat_.units());
    }
    std::string title() const {
        if (is_of_row() && row_) return seat_.desk().spot.panel + " " + name_of(*row_);
        const std::size_t colon = shown_.find(':');
        return shown_.substr(colon == std::string::npos ? 0 : colon + 1);
    }

    Seat& seat_;
    wxStaticText* title_ = nullptr;
    FormView* form_ = nullptr;
    std::string shown_, field_;
    std::optional<Position> row_;
};

}  // namespace

View* new_slip(wxWindow* parent, Seat& seat) { return new Slip(parent, seat); }

}  // namespace doorcard
