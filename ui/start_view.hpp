// SPDX-License-Identifier: MIT
#pragma once
#include <wx/scrolwin.h>

#include <functional>
#include <optional>

#include "file/new_survey.hpp"
#include "ui/seat.hpp"

class wxChoice;
class wxTextCtrl;
class wxBoxSizer;

namespace doorcard {

class StartFace;

/// What can be begun from here.
struct StartChoices {
    std::vector<std::string> recent;    ///< paths
    std::vector<std::string> left;      ///< surveys without a file that a crash left
    std::vector<std::string> examples;  ///< paths
    std::function<void(NewSurvey)> begin;
    std::function<void(const std::string&)> open, open_example;
    std::function<void(const std::string&)> take_left;
    std::function<void()> ask_for_file;
};

/// The empty window: a new survey (its face appears as it is chosen), one that is there, the example.
class StartView final : public wxScrolledWindow {
public:
    StartView(wxWindow* parent, Seat&, StartChoices);
    void take_focus();

private:
    void add_new(wxSizer*);
    void add_open(wxSizer*);
    void add_button(wxSizer*, const std::string& label, std::function<void()>, bool is_main = false);
    NewSurvey chosen() const;

    Seat& seat_;
    StartChoices choices_;
    StartFace* face_ = nullptr;
    wxChoice *system_ = nullptr, *spaces_ = nullptr, *main_ = nullptr;
};

}  // namespace doorcard
