// SPDX-License-Identifier: MIT
#include "ui/findings_view.hpp"

#include <fmt/format.h>
#include <wx/button.h>
#include <wx/choice.h>
#include <wx/dataview.h>
#include <wx/scrolwin.h>
#include <wx/sizer.h>
#include <wx/stattext.h>
#include <wx/wupdlock.h>

#include <algorithm>
#include <array>

#include "desk/finding_detail.hpp"
#include "sheet/correction_parts.hpp"
#include "ui/accessible.hpp"
#include "ui/signal_strip.hpp"
#include "ui/text.hpp"
#include "ui/wrapped_text.hpp"

namespace doorcard {
namespace {

constexpr std::size_t most_shown = 400;

/// Rows whose signal word stands on its colour; as plain text, so that a screen reader reads it.
class SignalRows final : public wxDataViewListStore {
public:
    explicit SignalRows(const std::vector<const Finding*>& shown) : shown_(shown) {}
    bool GetAttrByRow(unsigned row, unsigned column, wxDataViewItemAttr& look) const override {
        if (column != 0 || row >= shown_.size()) return false;
        const SignalColours signal = signal_colours(shown_[row]->severity);
        look.SetBackgroundColour(signal.ground);
        look.SetColour(signal.ink);
        look.SetBold(true);
        return true;
    }

private:
    const std::vector<const Finding*>& shown_;
};

/// The word with colours of its own, which it keeps where its row is the chosen one.
std::string coloured(Severity severity, const Words& words) {
    const SignalColours signal = signal_colours(severity);
    return fmt::format("<span background=\"{}\" foreground=\"{}\" weight=\"bold\"> {} </span>",
                       utf8(signal.ground.GetAsString(wxC2S_HTML_SYNTAX)),
                       utf8(signal.ink.GetAsString(wxC2S_HTML_SYNTAX)), signal_word(severity, words));
}

}  // namespace

FindingsView::FindingsView(wxWindow* parent, Seat& seat) : wxPanel(parent), seat_(seat) {
    SetSizer(new wxBoxSizer(wxVERTICAL));
    add_head();
    auto* below = new wxBoxSizer(wxHORIZONTAL);
    GetSizer()->Add(below, wxSizerFlags(1).Expand());
    add_list();
    below->Add(list_, wxSizerFlags(3).Expand());
    add_detail();
    below->Add(detail_, wxSizerFlags(2).Expand().Border(wxLEFT, 12));
}

void FindingsView::add_head() {
    auto* head = new wxBoxSizer(wxHORIZONTAL);
    auto* name = new wxStaticText(this, wxID_ANY, wide(seat_.say(tr("Findings"))));
    give_style(name, "group");
    counts_ = new wxStaticText(this, wxID_ANY, "");
    give_style(counts_, "caption");
    scope_ = new wxChoice(this, wxID_ANY);
    for (const char* one : {tr("this panel"), tr("all panels")}) scope_->Append(wide(seat_.say(one)));
    scope_->SetSelection(1);
    scope_->Bind(wxEVT_CHOICE, [this](wxCommandEvent&) { look(); });
    name_for_readers(scope_, seat_.say(tr("Findings of")));
    head->Add(name, wxSizerFlags().CentreVertical());
    head->Add(counts_, wxSizerFlags(1).CentreVertical().Border(wxLEFT, 12));
    head->Add(scope_, wxSizerFlags().CentreVertical());
    GetSizer()->Add(head, wxSizerFlags().Expand());
}

void FindingsView::add_list() {
    list_ = new wxDataViewListCtrl(this, wxID_ANY, wxDefaultPosition, wxDefaultSize,
                                   wxDV_SINGLE | wxDV_NO_HEADER | wxBORDER_NONE);
    wxObjectDataPtr<SignalRows> rows(new SignalRows(shown_));
    list_->AssociateModel(rows.get());
    auto* signal = new wxDataViewTextRenderer("string", wxDATAVIEW_CELL_INERT, wxALIGN_CENTRE);
    signal->EnableMarkup();
    list_->AppendColumn(
        new wxDataViewColumn(wide(seat_.say(tr("signal"))), signal, 0, seat_.looks().pixels(132), wxALIGN_CENTRE));
    list_->AppendTextColumn(wide(seat_.say(tr("what"))), wxDATAVIEW_CELL_INERT, seat_.looks().pixels(560));
    list_->AppendTextColumn(wide(seat_.say(tr("figure"))), wxDATAVIEW_CELL_INERT, seat_.looks().pixels(90));
    list_->Bind(wxEVT_SIZE, [this](wxSizeEvent& event) {
        event.Skip();
        const int others = seat_.looks().pixels(132) + seat_.looks().pixels(100);
        list_->GetColumn(1)->SetWidth(std::max(seat_.looks().pixels(200), event.GetSize().x - others - 8));
    });
    pad_rows(list_, seat_.looks().pixels(9));
    name_for_readers(list_, seat_.say(tr("Findings")));
    list_->Bind(wxEVT_DATAVIEW_SELECTION_CHANGED, [this](wxDataViewEvent&) { show_detail(); });
    list_->Bind(wxEVT_DATAVIEW_ITEM_ACTIVATED, [this](wxDataViewEvent&) { go(); });
}

void FindingsView::add_detail() {
    detail_ = new wxScrolledWindow(this);
    detail_->SetScrollRate(0, 12);
    auto* inside = new wxBoxSizer(wxVERTICAL);
    what_ = new WrappedText(detail_, "", "figure");
    remedy_ = new WrappedText(detail_, "");
    go_ = new wxButton(detail_, wxID_ANY, wide(seat_.say(tr("Go to where to correct it"))));
    go_->Bind(wxEVT_BUTTON, [this](wxCommandEvent&) { go(); });
    text_ = new WrappedText(detail_, "");
    source_ = new WrappedText(detail_, "", "caption");
    inside->Add(what_, wxSizerFlags().Expand());
    inside->Add(remedy_, wxSizerFlags().Expand().Border(wxTOP, 4));
    inside->Add(go_, wxSizerFlags().Border(wxTOP | wxBOTTOM, 6));
    inside->Add(text_, wxSizerFlags().Expand());
    inside->Add(source_, wxSizerFlags().Expand().Border(wxTOP, 4));
    detail_->SetSizer(inside);
}

std::string FindingsView::key_of(const Finding& finding) const { return finding.rule + " " + finding.of.text(); }

void FindingsView::look() {
    const auto& findings = seat_.desk().assessed.assessment.findings;
    const auto panel = shown_panel(seat_.desk());
    std::array<long, 4> counts{};
    shown_.clear();
    for (const Finding& finding : findings) {
        if (scope_->GetSelection() == 0 && panel && finding.standing.panel != *panel) continue;
        ++counts[static_cast<std::size_t>(finding.severity)];
        if (shown_.size() < most_shown) shown_.push_back(&finding);
    }
    counts_->SetLabel(wide(counts_of_findings(counts, seat_.words())));
    fill();
}

void FindingsView::fill() {
    const wxWindowUpdateLocker still(list_);
    list_->DeleteAllItems();
    int chosen = wxNOT_FOUND;
    for (std::size_t i = 0; i < shown_.size(); ++i) {
        const Finding& finding = *shown_[i];
        wxVector<wxVariant> row;
        row.push_back(wide(coloured(finding.severity, seat_.words())));
        row.push_back(wide(seat_.words().say(finding.text)));
        row.push_back(wide(figure_text(finding, seat_.words())));
        list_->AppendItem(row);
        if (key_of(finding) == chosen_) chosen = static_cast<int>(i);
    }
    if (chosen == wxNOT_FOUND && !shown_.empty()) chosen = 0;
    if (chosen != wxNOT_FOUND) list_->SelectRow(static_cast<unsigned>(chosen));
    show_detail();
}

void FindingsView::show_detail() {
    const int row = list_->GetSelectedRow();
    const bool is_one = row >= 0 && static_cast<std::size_t>(row) < shown_.size();
    for (wxWindow* one : std::initializer_list<wxWindow*>{what_, text_, remedy_, source_, go_}) one->Show(is_one);
    if (is_one) {
        const Finding& finding = *shown_[static_cast<std::size_t>(row)];
        chosen_ = key_of(finding);
        const FindingDetail detail = detail_of(finding, seat_.desk().survey, seat_.desk().assessed.assessment);
        std::string reckoned;
        for (const Message& line : detail.arithmetic)
            reckoned += (reckoned.empty() ? "" : "\n") + seat_.words().say(line);
        what_->set(seat_.words().say(finding.text));
        text_->set(reckoned);
        remedy_->set(seat_.words().say(finding.remedy));
        source_->set(short_sources(finding.sources, seat_.words()));
    }
    CallAfter([this] {
        detail_->FitInside();
        detail_->Layout();
    });
}

void FindingsView::go() {
    const int row = list_->GetSelectedRow();
    if (row < 0 || static_cast<std::size_t>(row) >= shown_.size()) return;
    const FieldAtFault at = field_at_fault(*shown_[static_cast<std::size_t>(row)], seat_.desk().survey);
    seat_.act(Action{GoTo{at.address, at.key}});
}

void FindingsView::take_focus() { list_->SetFocus(); }

}  // namespace doorcard
