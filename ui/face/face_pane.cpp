// SPDX-License-Identifier: MIT
#include "ui/face/face_pane.hpp"

#include <wx/dataview.h>
#include <wx/sizer.h>

#include "desk/face_picture.hpp"
#include "desk/plan_gestures.hpp"
#include "ui/accessible.hpp"
#include "ui/face/face_view.hpp"
#include "ui/text.hpp"
#include "ui/wrapped_text.hpp"

namespace doorcard {

FacePane::FacePane(wxWindow* parent, Seat& seat) : wxPanel(parent), seat_(seat) {
    SetSizer(new wxBoxSizer(wxVERTICAL));
    face_ = new FaceView(this, seat);
    add_list();
    how_ = new WrappedText(
        this,
        seat.say(tr("Type on a row:  20 Kitchen,  30/2 Dryer (two poles),  15t Hall|Bath (tandem),  20 gf (ground "
                    "guard),  s (spare),  - (empty).  Enter opens it, Ctrl Enter shows all about it.")),
        "caption");
    GetSizer()->Add(face_, wxSizerFlags(1).Expand());
    GetSizer()->Add(list_, wxSizerFlags(1).Expand());
    GetSizer()->Add(how_, wxSizerFlags().Expand().Border(wxTOP, 6));
    list_->Hide();
}

void FacePane::add_list() {
    list_ = new wxDataViewListCtrl(this, wxID_ANY, wxDefaultPosition, wxDefaultSize, wxDV_SINGLE | wxDV_HORIZ_RULES);
    const std::pair<const char*, int> columns[] = {{tr("Space"), 70}, {tr("What"), 260},    {tr("Device"), 210},
                                                   {tr("Load"), 110}, {tr("Neutral"), 200}, {tr("Found"), 240}};
    for (const auto& [name, width] : columns)
        list_->AppendTextColumn(wide(seat_.say(name)), wxDATAVIEW_CELL_INERT, seat_.looks().pixels(width));
    pad_rows(list_, seat_.looks().pixels(9));
    name_for_readers(list_, seat_.say(tr("Panel as a list")));
    list_->Bind(wxEVT_DATAVIEW_SELECTION_CHANGED, [this](wxDataViewEvent&) {
        const int row = list_->GetSelectedRow();
        if (!is_filling_ && row >= 0) seat_.act(Action{ChooseRow{positions_[static_cast<std::size_t>(row)]}});
    });
    list_->Bind(wxEVT_DATAVIEW_ITEM_ACTIVATED, [this](wxDataViewEvent&) {
        show_list(false);
        face_->edit_row();
    });
}

void FacePane::fill_list() {
    is_filling_ = true;
    list_->DeleteAllItems();
    positions_.clear();
    if (const auto panel = shown_panel(seat_.desk())) {
        const FaceFacts facts = face_facts(seat_.desk().assessed, *panel);
        FaceLook look;
        look.planned =
            planned_marks(seat_.desk().survey, seat_.desk().notes.plan, seat_.desk().spot.panel, seat_.words());
        for (const FaceListRow& line : face_list(facts, seat_.words(), look)) {
            wxVector<wxVariant> row;
            for (const std::string* cell :
                 {&line.space, &line.what, &line.device, &line.load, &line.neutral, &line.finding})
                row.push_back(wide(*cell));
            list_->AppendItem(row);
            positions_.push_back(line.position);
            if (seat_.desk().spot.row == line.position) list_->SelectRow(static_cast<unsigned>(positions_.size() - 1));
        }
    }
    is_filling_ = false;
}

void FacePane::look() {
    face_->look();
    if (is_list_) fill_list();
}

void FacePane::take_focus() { is_list_ ? list_->SetFocus() : face_->SetFocus(); }

void FacePane::show_list(bool shown) {
    is_list_ = shown;
    if (shown) fill_list();
    face_->Show(!shown);
    list_->Show(shown);
    Layout();
    take_focus();
}

bool FacePane::is_editing() const { return face_->is_editing(); }
void FacePane::edit_row() { face_->edit_row(); }

}  // namespace doorcard
