// SPDX-License-Identifier: MIT
#include "ui/start_view.hpp"

#include <wx/button.h>
#include <wx/choice.h>
#include <wx/sizer.h>
#include <wx/stattext.h>

#include <array>
#include <filesystem>

#include "ui/accessible.hpp"
#include "ui/start_face.hpp"
#include "ui/text.hpp"

namespace doorcard {
namespace {

constexpr std::array usual_spaces = {6, 8, 12, 16, 20, 24, 30, 32, 40, 42, 54, 60, 84};
constexpr std::array usual_mains = {0, 60, 70, 100, 125, 150, 200, 225, 320, 400};  // 0: not known

std::string name_of_survey(const std::string& path) {
    const std::string file = std::filesystem::path(path).filename().string();
    constexpr std::string_view end = ".survey.toml";
    return file.ends_with(end) ? file.substr(0, file.size() - end.size()) : file;
}

}  // namespace

StartView::StartView(wxWindow* parent, Seat& seat, StartChoices choices)
    : wxScrolledWindow(parent), seat_(seat), choices_(std::move(choices)) {
    SetScrollRate(0, 12);
    auto* middle = new wxBoxSizer(wxVERTICAL);
    auto* name = new wxStaticText(this, wxID_ANY, "doorcard");
    give_style(name, "title");
    auto* what = new wxStaticText(
        this, wxID_ANY, wide(seat.say(tr("What hangs on which breaker, what it carries, and why it trips."))));
    give_style(what, "caption");
    middle->Add(name, wxSizerFlags().Border(wxTOP, 36));
    middle->Add(what, wxSizerFlags().Border(wxBOTTOM, 24));
    auto* halves = new wxBoxSizer(wxHORIZONTAL);
    auto* left = new wxBoxSizer(wxVERTICAL);
    auto* right = new wxBoxSizer(wxVERTICAL);
    add_new(left);
    left->AddSpacer(seat.looks().pixels(28));
    add_open(left);
    face_ = new StartFace(this, seat);
    face_->SetMinSize({seat.looks().pixels(460), seat.looks().pixels(620)});
    right->Add(face_, wxSizerFlags(1).Expand());
    face_->show(chosen());
    halves->Add(left, wxSizerFlags(1).Expand().Border(wxRIGHT, 48));
    halves->Add(right, wxSizerFlags(1).Expand());
    middle->Add(halves, wxSizerFlags().Expand());
    auto* page = new wxBoxSizer(wxHORIZONTAL);
    page->AddStretchSpacer(1);
    middle->SetMinSize({seat.looks().pixels(860), -1});
    page->Add(middle, wxSizerFlags(0));
    page->AddStretchSpacer(1);
    SetSizer(page);
}

void StartView::add_new(wxSizer* into) {
    auto* head = new wxStaticText(this, wxID_ANY, wide(seat_.say(tr("New survey"))));
    give_style(head, "group");
    into->Add(head, wxSizerFlags().Border(wxBOTTOM, 8));
    const auto add = [&](const char* label) {
        const std::string name = seat_.say(label);
        auto* caption = new wxStaticText(this, wxID_ANY, wide(name));
        give_style(caption, "caption");
        auto* choice = new wxChoice(this, wxID_ANY);
        name_for_readers(choice, name);
        into->Add(caption, wxSizerFlags().Border(wxTOP, 8));
        into->Add(choice, wxSizerFlags().Expand());
        choice->Bind(wxEVT_CHOICE, [this](wxCommandEvent&) { face_->show(chosen()); });
        return choice;
    };
    system_ = add(tr("System, volts and phases"));
    system_->Append(wide(seat_.say(tr("not known yet"))));
    for (const SystemFacts& one : all_systems()) system_->Append(wide(std::string(one.name)));
    system_->SetSelection(1);
    spaces_ = add(tr("Spaces in the panel"));
    spaces_->Append(wide(seat_.say(tr("not known yet"))));
    for (const int one : usual_spaces) spaces_->Append(wxString::Format("%d", one));
    spaces_->SetSelection(6);
    main_ = add(tr("Main, A"));
    for (const int one : usual_mains)
        main_->Append(one == 0 ? wide(seat_.say(tr("not known yet"))) : wxString::Format("%d", one));
    main_->SetSelection(0);
    add_button(
        into, seat_.say(tr("Begin")), [this] { choices_.begin(chosen()); }, true);
}

NewSurvey StartView::chosen() const {
    NewSurvey known;
    if (const int at = system_->GetSelection(); at > 0)
        known.system = all_systems()[static_cast<std::size_t>(at - 1)].system;
    if (const int at = spaces_->GetSelection(); at > 0) known.spaces = usual_spaces[static_cast<std::size_t>(at - 1)];
    if (const int at = main_->GetSelection(); at > 0) known.main_a = usual_mains[static_cast<std::size_t>(at)];
    return known;
}

void StartView::add_open(wxSizer* into) {
    auto* head = new wxStaticText(this, wxID_ANY, wide(seat_.say(tr("Go on"))));
    give_style(head, "group");
    into->Add(head, wxSizerFlags().Border(wxBOTTOM, 16));
    for (const std::string& path : choices_.left)
        add_button(
            into, seat_.say(tr("Kept, never saved: look at it")), [this, path] { choices_.take_left(path); }, true);
    add_button(into, seat_.say(tr("Open a survey...")), choices_.ask_for_file);
    for (const std::string& path : choices_.recent)
        add_button(into, name_of_survey(path), [this, path] { choices_.open(path); });
    for (const std::string& path : choices_.examples)
        add_button(into, seat_.words().say({tr("The example {0}"), {name_of_survey(path)}}),
                   [this, path] { choices_.open_example(path); });
    auto* drop = new wxStaticText(this, wxID_ANY, wide(seat_.say(tr("or drop a survey's file on this window"))));
    give_style(drop, "caption");
    into->Add(drop, wxSizerFlags().Border(wxTOP, 8));
}

void StartView::add_button(wxSizer* into, const std::string& label, std::function<void()> act, bool is_main) {
    auto* button = new wxButton(this, wxID_ANY, wide(label));
    if (is_main) give_style(button, "main");
    // What it does may take this view away: it is done once the click is over.
    button->Bind(wxEVT_BUTTON, [this, act](wxCommandEvent&) { GetParent()->CallAfter(act); });
    into->Add(button, wxSizerFlags().Expand().Border(wxTOP, 8));
}

void StartView::take_focus() { system_->SetFocus(); }

}  // namespace doorcard
