// SPDX-License-Identifier: MIT
#include <wx/sizer.h>
#include <wx/textctrl.h>

#include "desk/typed_outlets.hpp"
#include "ui/accessible.hpp"
#include "ui/clipboard.hpp"
#include "ui/grid_view.hpp"
#include "ui/pages/pages.hpp"
#include "ui/text.hpp"
#include "ui/wrapped_text.hpp"

namespace doorcard {
namespace {

/// Rooms and their outlets at typing speed: a line for each room, and what stands there so far below it.
class RoomsPage final : public wxPanel, public View {
public:
    RoomsPage(wxWindow* parent, Seat& seat) : wxPanel(parent), seat_(seat) {
        SetSizer(new wxBoxSizer(wxVERTICAL));
        auto* how =
            new WrappedText(this,
                            seat.say(tr("Type a room and what is in it:  Kitchen r6 l2 range  (r receptacles, l "
                                        "lights, s switches, b boxes, anything else by its name).  Answers from paper: "
                                        " off 5 7  and then  K: o o s . o  (out, stayed, not seen).")),
                            "caption");
        line_ = new wxTextCtrl(this, wxID_ANY, "", wxDefaultPosition, wxDefaultSize, wxTE_PROCESS_ENTER);
        line_->SetHint("Kitchen r6 l2 range");
        name_for_readers(line_, seat.say(tr("Room and its outlets, or a row of answers")));
        line_->Bind(wxEVT_TEXT_ENTER, [this](wxCommandEvent&) { take_line(); });
        line_->Bind(wxEVT_TEXT_PASTE, &RoomsPage::on_paste, this);
        outlets_ = new GridView(this, seat, seat.say(tr("Outlets")), [&seat](const Desk& desk) {
            return outlets_grid(desk.survey, desk.spot.panel, seat.units(), seat.words());
        });
        GetSizer()->Add(how, wxSizerFlags().Expand().Border(wxTOP | wxBOTTOM, 8));
        GetSizer()->Add(line_, wxSizerFlags().Expand().Border(wxBOTTOM, 8));
        GetSizer()->Add(outlets_, wxSizerFlags(1).Expand());
    }
    wxWindow* window() override { return this; }
    void look() override { outlets_->look(); }
    void take_focus() override { line_->SetFocus(); }

private:
    void take_line() {
        const std::string typed = utf8(line_->GetValue());
        const std::size_t before = seat_.desk().edits;
        seat_.act(typed_outlets(seat_.desk().survey, seat_.desk().spot.panel, typed));
        if (seat_.desk().edits != before) line_->Clear();
    }
    // Several lines are done at once; one is put into the line as usual.
    void on_paste(wxClipboardTextEvent& event) {
        const std::string text = clipboard_text();
        if (text.find('\n') == std::string::npos) return event.Skip();
        seat_.act(typed_outlets(seat_.desk().survey, seat_.desk().spot.panel, text));
    }

    Seat& seat_;
    wxTextCtrl* line_ = nullptr;
    GridView* outlets_ = nullptr;
};

}  // namespace

View* new_rooms_page(wxWindow* parent, Seat& seat) { return new RoomsPage(parent, seat); }

}  // namespace doorcard
