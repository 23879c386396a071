// SPDX-License-Identifier: MIT
#include "ui/form_view.hpp"

#include <wx/button.h>
#include <wx/choice.h>
#include <wx/sizer.h>
#include <wx/stattext.h>
#include <wx/textctrl.h>

#include <algorithm>

#include "ui/accessible.hpp"
#include "ui/text.hpp"

namespace doorcard {

FormView::FormView(wxWindow* parent, Seat& seat) : wxScrolledWindow(parent), seat_(seat) {
    SetScrollRate(0, 12);
    SetSizer(new wxBoxSizer(wxVERTICAL));
}

// Two forms of one shape have the same fields with the same choices: only their values differ.
std::string FormView::shape_of(const std::vector<FormGroup>& groups) {
    std::string shape;
    for (const FormGroup& group : groups) {
        shape += "\n# " + group.title.pattern;
        for (const FormField& field : group.fields) {
            shape += "\n" + field.address + " " + field.key + " " + std::to_string(static_cast<int>(field.entry));
            for (const FieldChoice& choice : field.choices) shape += "|" + choice.value;
        }
    }
    return shape;
}

void FormView::show(const std::vector<FormGroup>& groups, const std::string& field) {
    const bool is_folded_away = std::ranges::any_of(groups, [&](const FormGroup& group) {
        return group.folded && std::ranges::any_of(group.fields, [&](const FormField& f) { return f.key == field; }) &&
               opened_.insert(seat_.words().say(group.title)).second;
    });
    shown_ = groups;
    if (const std::string shape = shape_of(groups); shape != shape_ || is_folded_away) {
        const auto focused = std::ranges::find_if(rows_, [](const Row& row) { return row.control->HasFocus(); });
        const FormField kept = focused == rows_.end() ? FormField{} : focused->field;
        shape_ = shape;
        rebuild(groups);
        for (const Row& row : rows_)
            if (!kept.key.empty() && row.field.key == kept.key && row.field.address == kept.address)
                row.control->SetFocus();
    }
    std::size_t at = 0;
    for (const FormGroup& group : groups) {
        if (group.folded && !opened_.contains(seat_.words().say(group.title))) continue;
        for (const FormField& one : group.fields) {
            rows_[at].field = one;
            fill(at++);
        }
    }
    if (field.empty()) return;
    const auto wanted = std::ranges::find_if(rows_, [&](const Row& row) { return row.field.key == field; });
    if (wanted != rows_.end()) wanted->control->SetFocus();
}

void FormView::focus_first() {
    if (!rows_.empty()) rows_.front().control->SetFocus();
}

// Not under a lock on painting: a field of many lines made under one crashes in the toolkit when it is filled (wx 3.2).
void FormView::rebuild(const std::vector<FormGroup>& groups) {
    rows_.clear();
    GetSizer()->Clear(true);
    for (const FormGroup& group : groups) add_group(group, GetSizer());
    GetSizer()->AddSpacer(seat_.looks().pixels(24));
    FitInside();
    Layout();
}

void FormView::add_group(const FormGroup& group, wxSizer* into) {
    const int gap = seat_.looks().pixels(8);
    const std::string title = seat_.words().say(group.title);
    const bool is_open = !group.folded || opened_.contains(title);
    if (group.folded) {
        auto* more = new wxButton(this, wxID_ANY, wide((is_open ? "- " : "+ ") + title), wxDefaultPosition,
                                  wxDefaultSize, wxBU_LEFT);
        more->Bind(wxEVT_BUTTON, [this, title, is_open](wxCommandEvent&) {
            CallAfter([this, title, is_open] { show_group(title, !is_open); });
        });
        into->Add(more, wxSizerFlags().Expand().Border(wxTOP, gap));
    } else if (!title.empty()) {
        auto* head = new wxStaticText(this, wxID_ANY, wide(title));
        give_style(head, "group");
        into->Add(head, wxSizerFlags().Border(wxTOP | wxBOTTOM, gap));
    }
    if (!is_open) return;
    auto* grid = new wxFlexGridSizer(2, seat_.looks().pixels(4), seat_.looks().pixels(12));
    grid->AddGrowableCol(1, 1);
    for (const FormField& field : group.fields) add_row(field, grid);
    into->Add(grid, wxSizerFlags().Expand().Border(wxBOTTOM, gap));
}

void FormView::add_row(const FormField& field, wxFlexGridSizer* grid) {
    const Words& words = seat_.words();
    std::string label = words.say(field.label);
    if (!field.unit.empty()) label += ", " + words(field.unit);
    auto* name = new wxStaticText(this, wxID_ANY, wide(label));
    name->Wrap(seat_.looks().pixels(180));
    name->SetMinSize({seat_.looks().pixels(180), -1});
    if (!field.important) give_style(name, "caption");
    auto* cell = new wxBoxSizer(wxVERTICAL);
    wxWindow* control = control_for(field);
    name_for_readers(control, label, words.say(field.hint));
    control->SetToolTip(wide(words.say(field.hint)));
    auto* below = new wxStaticText(this, wxID_ANY, "");
    give_style(below, "refusal");
    below->Hide();
    cell->Add(control, wxSizerFlags().Expand());
    cell->Add(below, wxSizerFlags().Expand());
    grid->Add(name, wxSizerFlags().CentreVertical());
    grid->Add(cell, wxSizerFlags(1).Expand());
    rows_.push_back({field, control, below});
    const std::size_t row = rows_.size() - 1;
    control->Bind(wxEVT_KILL_FOCUS, [this, row](wxFocusEvent& event) {
        event.Skip();
        CallAfter([this, row] { commit(row); });
    });
    // It may not have its place yet: seen to once the layout is done.
    control->Bind(wxEVT_SET_FOCUS, [this, row](wxFocusEvent& event) {
        event.Skip();
        CallAfter([this, row] { show_field(row); });
    });
}

// Scrolls until a field is seen whole.
void FormView::show_field(std::size_t row) {
    if (row >= rows_.size()) return;
    constexpr int step = 12;  // pixels of the scroll rate
    const wxWindow* control = rows_[row].control;
    const int top = control->GetPosition().y, bottom = top + control->GetSize().y, height = GetClientSize().y;
    if (top < 0 || bottom > height) Scroll(-1, std::max(0, (GetViewStart().y * step + top - height / 3) / step));
}

wxWindow* FormView::control_for(const FormField& field) {
    return field.entry == Entry::choice || field.entry == Entry::yes_no ? choice_for(field) : text_for(field);
}

wxWindow* FormView::text_for(const FormField& field) {
    const bool is_long = field.entry == Entry::long_text;
    auto* text = new wxTextCtrl(this, wxID_ANY, "", wxDefaultPosition, wxDefaultSize,
                                is_long ? wxTE_MULTILINE | wxTE_WORDWRAP : wxTE_PROCESS_ENTER);
    if (is_long) text->SetMinSize({-1, seat_.looks().pixels(72)});
    if (!is_long) text->SetHint(wide(seat_.words().say(field.hint)));
    const std::size_t row = rows_.size();
    if (is_long) return text;  // Enter begins a new line there
    text->Bind(wxEVT_TEXT_ENTER, [this, row, text](wxCommandEvent&) {
        commit(row);
        if (row < rows_.size() && !rows_[row].is_refused) text->Navigate();
    });
    return text;
}

wxWindow* FormView::choice_for(const FormField& field) {
    auto* choice = new wxChoice(this, wxID_ANY);
    for (const FieldChoice& one : field.choices) choice->Append(wide(seat_.words().say(one.label)));
    const std::size_t row = rows_.size();
    choice->Bind(wxEVT_CHOICE, [this, row](wxCommandEvent&) { CallAfter([this, row] { commit(row); }); });
    return choice;
}

void FormView::fill(std::size_t at) {
    Row& row = rows_[at];
    if (auto* choice = dynamic_cast<wxChoice*>(row.control)) {
        const auto found = std::ranges::find_if(row.field.choices,
                                                [&](const FieldChoice& one) { return one.value == row.field.value; });
        choice->SetSelection(found == row.field.choices.end() ? wxNOT_FOUND
                                                              : static_cast<int>(found - row.field.choices.begin()));
        return;
    }
    auto* text = static_cast<wxTextCtrl*>(row.control);
    if (row.is_refused && text->HasFocus()) return;
    if (utf8(text->GetValue()) != row.field.value) text->ChangeValue(wide(row.field.value));
    if (row.is_refused) say_below(row, "");
}

std::string FormView::typed_in(const Row& row) const {
    if (const auto* choice = dynamic_cast<const wxChoice*>(row.control)) {
        const int chosen = choice->GetSelection();
        return chosen == wxNOT_FOUND ? row.field.value : row.field.choices[static_cast<std::size_t>(chosen)].value;
    }
    return utf8(static_cast<const wxTextCtrl*>(row.control)->GetValue());
}

void FormView::commit(std::size_t at) {
    if (at >= rows_.size()) return;
    const std::string typed = typed_in(rows_[at]);
    if (typed == rows_[at].field.value) {
        if (rows_[at].is_refused) say_below(rows_[at], "");
        return;
    }
    const FormField field = rows_[at].field;
    auto edit = filled_in(seat_.desk().survey, field.address, field.key, typed, seat_.units());
    const std::size_t before = seat_.desk().edits;
    rows_[at].is_refused = true;  // until it is done: what was typed is not to be wiped
    seat_.act(std::move(edit));
    if (at >= rows_.size() || rows_[at].field.key != field.key) return;
    const bool is_done = seat_.desk().edits != before;
    const auto& said = seat_.desk().said;
    say_below(rows_[at], is_done || !said || said->complaints.empty()
                             ? ""
                             : said->complaints.front().wrong + "; " + said->complaints.front().right);
}

void FormView::say_below(Row& row, const std::string& text) {
    row.is_refused = !text.empty();
    row.below->SetLabel(wide(text));
    row.below->Show(!text.empty());
    FitInside();
    Layout();
}

void FormView::show_group(const std::string& title, bool open) {
    open ? void(opened_.insert(title)) : void(opened_.erase(title));
    shape_.clear();
    show(std::vector<FormGroup>(shown_));
}

}  // namespace doorcard
