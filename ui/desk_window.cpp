// SPDX-License-Identifier: MIT
#include "ui/desk_window.hpp"

#include <wx/notebook.h>
#include <wx/sizer.h>

#include "ui/face/face_pane.hpp"
#include "ui/findings_view.hpp"
#include "ui/head_view.hpp"
#include "ui/notice_strip.hpp"
#include "ui/pages/pages.hpp"
#include "ui/text.hpp"

namespace doorcard {

DeskWindow::DeskWindow(wxWindow* parent, Seat& seat) : wxPanel(parent), seat_(seat) {
    head_ = new HeadView(this, seat);
    notice_ = new NoticeStrip(this, seat);
    face_ = new FacePane(this, seat);
    book_ = new wxNotebook(this, wxID_ANY);
    add_pages();
    slip_ = new_slip(this, seat);
    slip_->window()->Hide();
    findings_ = new FindingsView(this, seat);
    lay_out();
}

// Pages go before their book: the toolkit complains of tabs whose page is gone.
DeskWindow::~DeskWindow() {
    is_looking_ = true;
    book_->DeleteAllPages();
}

void DeskWindow::add_pages() {
    const char* names[] = {tr("Arrival"), tr("Rooms"), tr("Measure"), tr("Card")};
    for (View* (*make)(wxWindow*, Seat&) : {new_arrival_page, new_rooms_page, new_measure_page, new_card_page}) {
        pages_.push_back(make(book_, seat_));
        book_->AddPage(pages_.back()->window(), wide(seat_.say(names[pages_.size() - 1])));
    }
    book_->Bind(wxEVT_NOTEBOOK_PAGE_CHANGED, [this](wxBookCtrlEvent& event) {
        event.Skip();
        if (is_looking_ || event.GetEventObject() != book_) return;  // a book on a page tells of its pages too
        CallAfter([this, to = event.GetSelection()] { seat_.act(Action{ShowPage{static_cast<JobPage>(to)}}); });
    });
}

void DeskWindow::lay_out() {
    const int gap = FromDIP(8);
    auto* middle = new wxBoxSizer(wxHORIZONTAL);
    // Both shares hold whatever stands in them.
    face_->SetMinSize({seat_.looks().pixels(400), 100});
    for (wxWindow* page : std::initializer_list<wxWindow*>{book_, slip_->window()}) page->SetMinSize({100, 100});
    middle->Add(face_, wxSizerFlags(46).Expand().Border(wxLEFT | wxRIGHT, gap));
    middle->Add(book_, wxSizerFlags(54).Expand().Border(wxRIGHT, gap));
    middle->Add(slip_->window(), wxSizerFlags(54).Expand().Border(wxRIGHT, gap));
    auto* all = new wxBoxSizer(wxVERTICAL);
    all->Add(head_, wxSizerFlags().Expand());
    all->Add(notice_, wxSizerFlags().Expand());
    all->Add(middle, wxSizerFlags(1).Expand());
    findings_->SetMinSize({-1, seat_.looks().pixels(190)});
    all->Add(findings_, wxSizerFlags().Expand().Border(wxALL, gap));
    SetSizer(all);
}

void DeskWindow::look() {
    const Desk& desk = seat_.desk();
    is_looking_ = true;
    head_->look();
    notice_->look();
    face_->look();
    const auto page = static_cast<std::size_t>(desk.spot.page);
    if (book_->GetSelection() != static_cast<int>(page)) book_->ChangeSelection(page);
    show_slip(!desk.spot.slip.empty());
    desk.spot.slip.empty() ? pages_[page]->look() : slip_->look();
    if (is_new_ || seen_edits_ != desk.edits || seen_panel_ != desk.spot.panel) findings_->look();
    seen_edits_ = desk.edits;
    seen_panel_ = desk.spot.panel;
    is_new_ = is_looking_ = false;
}

void DeskWindow::look_at_all() {
    is_new_ = true;
    look();
    Layout();
    Refresh();
}

void DeskWindow::show_slip(bool shown) {
    if (slip_->window()->IsShown() == shown) return;
    slip_->window()->Show(shown);
    book_->Show(!shown);
    Layout();
}

void DeskWindow::go_to_face() {
    area_ = 0;
    face_->take_focus();
}

void DeskWindow::go_to_page() {
    area_ = 1;
    seat_.desk().spot.slip.empty() ? pages_[static_cast<std::size_t>(seat_.desk().spot.page)]->take_focus()
                                   : slip_->take_focus();
}

void DeskWindow::go_to_findings() {
    area_ = 2;
    findings_->take_focus();
}

void DeskWindow::next_area() { area_ == 0 ? go_to_page() : area_ == 1 ? go_to_findings() : go_to_face(); }

void DeskWindow::show_list(bool shown) { face_->show_list(shown); }
bool DeskWindow::is_list() const { return face_->is_list(); }
bool DeskWindow::is_editing() const { return face_->is_editing(); }

}  // namespace doorcard
