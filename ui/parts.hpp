// SPDX-License-Identifier: MIT
#pragma once
#include <wx/panel.h>

#include <functional>
#include <string>
#include <vector>

class wxSimplebook;
class wxToggleButton;

namespace doorcard {

/// Parts of a page of which one is shown at a time, each behind a button above them.
class Parts final : public wxPanel {
public:
    explicit Parts(wxWindow* parent);
    wxWindow* inside();  ///< what a part has to be a child of
    /// The first one added is shown.
    void add(const std::string& name, wxWindow* part, std::function<void()> take_focus);
    void take_focus();

private:
    struct Part {
        wxToggleButton* button;
        std::function<void()> take_focus;
    };
    void show(std::size_t which);

    wxSizer* buttons_ = nullptr;
    wxSimplebook* book_ = nullptr;
    std::vector<Part> parts_;
};

}  // namespace doorcard
