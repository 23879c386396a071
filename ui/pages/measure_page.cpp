// SPDX-License-Identifier: MIT
#include <wx/simplebook.h>
#include <wx/sizer.h>
#include <wx/stattext.h>
#include <wx/tglbtn.h>

#include "desk/appliances.hpp"
#include "ui/accessible.hpp"
#include "ui/grid_view.hpp"
#include "ui/pages/pages.hpp"
#include "ui/signal_strip.hpp"
#include "ui/text.hpp"

namespace doorcard {
namespace {

/// What was read with an instrument, and what the nameplates say: two grids.
class MeasurePage final : public wxPanel, public View {
public:
    MeasurePage(wxWindow* parent, Seat& seat) : wxPanel(parent), seat_(seat) {
        SetSizer(new wxBoxSizer(wxVERTICAL));
        add_caution();
        add_choice();
        add_grids();
    }
    wxWindow* window() override { return this; }
    void look() override {
        readings_->look();
        loads_->look();
        if (seat_.desk().spot.field == "loads") show(1);
    }
    void take_focus() override { (grids_->GetSelection() == 0 ? readings_ : loads_)->focus_new_row(); }

private:
    void add_caution() {
        GetSizer()->Add(
            new_signal_strip(this, seat_, Severity::warning,
                             seat_.say(tr("Shock and arc flash with covers off: qualified persons only, protective "
                                          "equipment after NFPA 70E. De-energise where you can; test before touch."))),
            wxSizerFlags().Expand().Border(wxTOP | wxBOTTOM, 8));
    }

    void add_choice() {
        auto* row = new wxBoxSizer(wxHORIZONTAL);
        const char* names[] = {tr("Readings"), tr("Nameplates")};
        for (std::size_t i = 0; i < 2; ++i) {
            which_[i] = new wxToggleButton(this, wxID_ANY, wide(seat_.say(names[i])));
            which_[i]->Bind(wxEVT_TOGGLEBUTTON, [this, i](wxCommandEvent&) {
                show(i);
                take_focus();
            });
            row->Add(which_[i], wxSizerFlags());
        }
        GetSizer()->Add(row, wxSizerFlags().Border(wxBOTTOM, 8));
    }

    void add_grids() {
        grids_ = new wxSimplebook(this);
        readings_ = new GridView(grids_, seat_, seat_.say(tr("Readings")), [this](const Desk& desk) {
            return readings_grid(desk.survey, desk.spot.panel, seat_.units(), seat_.words());
        });
        loads_ = new GridView(grids_, seat_, seat_.say(tr("Nameplates")), [this](const Desk& desk) {
            return loads_grid(desk.survey, desk.spot.panel, seat_.units(), seat_.words());
        });
        loads_->set_offers([this](const std::string& column, const std::string& typed) {
            return column == "title" ? offers_like(typed) : std::vector<std::string>{};
        });
        loads_->set_taken([this](const Grid& grid, std::size_t row, const std::string& column,
                                 const std::string& typed) -> std::optional<Outcome<Edit>> {
            const auto known =
                column == "title" ? appliance_called(*seat_.desk().book, typed, seat_.words()) : std::nullopt;
            if (!known) return std::nullopt;
            return appliance_chosen(seat_.desk().survey, grid, row, *known, seat_.words());
        });
        grids_->AddPage(readings_, "");
        grids_->AddPage(loads_, "");
        GetSizer()->Add(grids_, wxSizerFlags(1).Expand());
        show(0);
    }

    std::vector<std::string> offers_like(const std::string& typed) const {
        std::vector<std::string> titles;
        for (const Appliance& one : appliances_like(*seat_.desk().book, typed, seat_.words()))
            titles.push_back(seat_.words().say(one.title));
        return titles;
    }

    void show(std::size_t which) {
        grids_->SetSelection(which);
        for (std::size_t i = 0; i < 2; ++i) which_[i]->SetValue(i == which);
    }

    Seat& seat_;
    wxToggleButton* which_[2] = {};
    wxSimplebook* grids_ = nullptr;
    GridView *readings_ = nullptr, *loads_ = nullptr;
};

}  // namespace

View* new_measure_page(wxWindow* parent, Seat& seat) { return new MeasurePage(parent, seat); }

}  // namespace doorcard
