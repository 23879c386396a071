// SPDX-License-Identifier: MIT
#pragma once
#include <wx/panel.h>

#include <vector>

#include "ui/seat.hpp"
#include "ui/view.hpp"

class wxNotebook;

namespace doorcard {

class HeadView;
class NoticeStrip;
class FacePane;
class FindingsView;

/// All of the window once a survey is open: feeds, face, pages of the call, findings.
class DeskWindow final : public wxPanel {
public:
    DeskWindow(wxWindow* parent, Seat&);
    ~DeskWindow() override;
    void look();
    /// Looks at everything again, whatever has changed: other words, other colours.
    void look_at_all();

    void go_to_face();
    void go_to_page();
    void go_to_findings();
    void next_area();
    void show_list(bool);
    bool is_list() const;
    bool is_editing() const;

private:
    void add_pages();
    void lay_out();
    void show_slip(bool);

    Seat& seat_;
    HeadView* head_ = nullptr;
    NoticeStrip* notice_ = nullptr;
    FacePane* face_ = nullptr;
    wxNotebook* book_ = nullptr;
    View* slip_ = nullptr;
    FindingsView* findings_ = nullptr;
    std::vector<View*> pages_;
    std::size_t seen_edits_ = 0;
    std::string seen_panel_;
    bool is_looking_ = false, is_new_ = true;
    int area_ = 0;  ///< face, page, findings
};

}  // namespace doorcard
