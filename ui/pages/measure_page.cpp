// SPDX-License-Identifier: MIT
#include <wx/sizer.h>
#include <wx/stattext.h>

#include "desk/appliances.hpp"
#include "ui/accessible.hpp"
#include "ui/grid_view.hpp"
#include "ui/pages/pages.hpp"
#include "ui/parts.hpp"
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
        add_grids();
    }
    wxWindow* window() override { return this; }
    void look() override {
        readings_->look();
        loads_->look();
    }
    void take_focus() override { parts_->take_focus(); }

private:
    void add_caution() {
        GetSizer()->Add(
            new_signal_strip(
                this, seat_, Severity::warning,
                seat_.say(tr("Shock and arc flash with covers off: de-energize and lock out before work. Measure live "
                             "only if qualified and protected after NFPA 70E. Test before touch."))),
            wxSizerFlags().Expand().Border(wxTOP | wxBOTTOM, 8));
    }

    void add_grids() {
        parts_ = new Parts(this);
        readings_ = new GridView(parts_->inside(), seat_, seat_.say(tr("Readings")), [this](const Desk& desk) {
            return readings_grid(desk.survey, desk.spot.panel, seat_.units(), seat_.words());
        });
        loads_ = new GridView(parts_->inside(), seat_, seat_.say(tr("Nameplates")), [this](const Desk& desk) {
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
        parts_->add(seat_.say(tr("Readings")), readings_, [this] { readings_->focus_new_row(); });
        parts_->add(seat_.say(tr("Nameplates")), loads_, [this] { loads_->focus_new_row(); });
        GetSizer()->Add(parts_, wxSizerFlags(1).Expand());
    }

    std::vector<std::string> offers_like(const std::string& typed) const {
        std::vector<std::string> titles;
        for (const Appliance& one : appliances_like(*seat_.desk().book, typed, seat_.words()))
            titles.push_back(seat_.words().say(one.title));
        return titles;
    }

    Seat& seat_;
    Parts* parts_ = nullptr;
    GridView *readings_ = nullptr, *loads_ = nullptr;
};

}  // namespace

View* new_measure_page(wxWindow* parent, Seat& seat) { return new MeasurePage(parent, seat); }

}  // namespace doorcard
