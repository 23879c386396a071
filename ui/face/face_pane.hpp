// SPDX-License-Identifier: MIT
#pragma once
#include <wx/panel.h>

#include "ui/seat.hpp"

class wxDataViewListCtrl;

namespace doorcard {

class FaceView;
class WrappedText;

/// The left of the window: the panel's face, or the same panel as a plain list.
class FacePane final : public wxPanel {
public:
    FacePane(wxWindow* parent, Seat&);
    void look();
    void take_focus();
    void show_list(bool);
    bool is_list() const { return is_list_; }
    bool is_editing() const;
    void edit_row();

private:
    void add_list();
    void fill_list();

    Seat& seat_;
    FaceView* face_ = nullptr;
    wxDataViewListCtrl* list_ = nullptr;
    WrappedText* how_ = nullptr;
    std::vector<Position> positions_;
    bool is_list_ = false, is_filling_ = false;
};

}  // namespace doorcard
