// SPDX-License-Identifier: MIT
#pragma once
#include <wx/panel.h>
#include <wx/scrolwin.h>

#include "ui/seat.hpp"

class wxDataViewListCtrl;
class wxStaticText;
class wxButton;
class wxChoice;

namespace doorcard {

class WrappedText;

/// The drawer below: what was found, by weight; the chosen one opens to its arithmetic, its source and its remedy, and
/// leads to what it is about.
class FindingsView final : public wxPanel {
public:
    FindingsView(wxWindow* parent, Seat&);
    void look();
    void take_focus();

private:
    void add_head();
    void add_list();
    void add_detail();
    void fill();
    void show_detail();
    void go();
    std::string key_of(const Finding&) const;

    Seat& seat_;
    wxStaticText* counts_ = nullptr;
    wxChoice* scope_ = nullptr;
    wxDataViewListCtrl* list_ = nullptr;
    wxScrolledWindow* detail_ = nullptr;
    WrappedText *what_ = nullptr, *text_ = nullptr, *remedy_ = nullptr, *source_ = nullptr;
    wxButton* go_ = nullptr;
    std::vector<const Finding*> shown_;
    std::string chosen_;  ///< rule and address of the finding that is chosen: it stays so after an edit
};

}  // namespace doorcard
