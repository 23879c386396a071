// SPDX-License-Identifier: MIT
#include <wx/button.h>
#include <wx/choice.h>
#include <wx/filedlg.h>
#include <wx/panel.h>
#include <wx/sizer.h>
#include <wx/tglbtn.h>
#include <wx/wrapsizer.h>

#include <array>
#include <filesystem>
#include <system_error>

#include "base/write_whole.hpp"
#include "desk/papers.hpp"
#include "sheet/paint.hpp"
#include "survey/edits/circuit_edits.hpp"
#include "ui/accessible.hpp"
#include "ui/pages/card_view.hpp"
#include "ui/pages/pages.hpp"
#include "ui/pages/printing.hpp"
#include "ui/text.hpp"

namespace doorcard {
namespace {

/// The papers of the panel shown, each as it will be printed: edited where it stands, saved, printed.
class CardPage final : public wxPanel, public View {
public:
    CardPage(wxWindow* parent, Seat& seat) : wxPanel(parent), seat_(seat) {
        SetSizer(new wxBoxSizer(wxVERTICAL));
        auto* row = new wxWrapSizer(wxHORIZONTAL, wxREMOVE_LEADING_SPACES);  // words of some languages take two lines
        add_kinds(row);
        row->AddSpacer(seat.looks().pixels(12));
        add_papers(row);
        add_button(row, tr("Save as..."), [this] { save(); });
        add_button(row, tr("Print..."), [this] { print(); });
        view_ = new CardView(this, seat.looks(),
                             {[this](const std::string& of) { return text_of(of); },
                              [this](const std::string& of, const std::string& text) { change(of, text); }});
        name_for_readers(view_, seat.say(tr("The sheet as it will be printed")));
        GetSizer()->Add(row, wxSizerFlags().Expand().Border(wxTOP | wxBOTTOM, 8));
        GetSizer()->Add(view_, wxSizerFlags(1).Expand());
        show_kind(PaperKind::front);
    }
    wxWindow* window() override { return this; }
    void take_focus() override { view_->SetFocus(); }

    void look() override {
        view_->show(sheet());
        for (std::size_t i = 0; i < kinds_.size(); ++i) kinds_[i]->SetValue(i == static_cast<std::size_t>(kind_));
    }

private:
    Sheet sheet() const {
        const Desk& desk = seat_.desk();
        return paper_sheet({kind_, desk.spot.panel, chosen_paper()}, desk.assessed, *desk.book, seat_.words());
    }

    void add_kinds(wxSizer* row) {
        for (const PaperKind kind : paper_kinds) {
            auto* button = new wxToggleButton(this, wxID_ANY, wide(seat_.words().say(name_of(kind))));
            button->Bind(wxEVT_TOGGLEBUTTON, [this, kind](wxCommandEvent&) { show_kind(kind); });
            kinds_.push_back(button);
            row->Add(button, wxSizerFlags());
        }
    }

    void show_kind(PaperKind kind) {
        kind_ = kind;
        look();
        view_->Scroll(0, 0);
    }

    void add_papers(wxSizer* row) {
        paper_ = new wxChoice(this, wxID_ANY);
        for (const char* name : {tr("letter"), tr("A4"), tr("half letter")}) paper_->Append(wide(seat_.say(name)));
        paper_->SetSelection(0);
        paper_->Bind(wxEVT_CHOICE, [this](wxCommandEvent&) { look(); });
        name_for_readers(paper_, seat_.say(tr("Paper")));
        row->Add(paper_, wxSizerFlags().CentreVertical().Border(wxRIGHT, 8));
    }
    PaperSize chosen_paper() const { return static_cast<PaperSize>(std::max(0, paper_ ? paper_->GetSelection() : 0)); }

    void add_button(wxSizer* row, const char* label, std::function<void()> act) {
        auto* button = new wxButton(this, wxID_ANY, wide(seat_.say(label)));
        button->Bind(wxEVT_BUTTON, [act](wxCommandEvent&) { act(); });
        row->Add(button, wxSizerFlags().Border(wxLEFT, 4));
    }

    void save() {
        wxFileDialog dialog(this, wide(seat_.say(tr("Save the sheet as"))), "", wide(seat_.desk().spot.panel + ".pdf"),
                            "PDF (*.pdf)|*.pdf|SVG (*.svg)|*.svg|PNG (*.png)|*.png", wxFD_SAVE | wxFD_OVERWRITE_PROMPT);
        if (dialog.ShowModal() != wxID_OK) return;
        std::string path = utf8(dialog.GetPath());
        if (!std::filesystem::path(path).has_extension()) {
            constexpr std::array endings = {".pdf", ".svg", ".png"};
            path += endings[static_cast<std::size_t>(dialog.GetFilterIndex())];
        }
        write(path);
    }

    void write(const std::string& path) {
        const Sheet shown = sheet();
        const std::string ending = std::filesystem::path(path).extension().string();
        try {
            write_whole(path, ending == ".svg"   ? paint_svg(shown)
                              : ending == ".png" ? paint_png(shown)
                                                 : paint_pdf(shown));
            seat_.act(Action{Tell{Said::Kind::done, {tr("Saved as {0}"), {path}}}});
        } catch (const std::exception& error) {
            seat_.act(Action{Tell{Said::Kind::refused, {tr("Not saved: {0}"), {error.what()}}}});
        }
    }

    void print() { print_sheet(this, sheet()); }

    // The words of a circuit; of a breaker that feeds none that is known, what the old directory says.
    std::string text_of(const std::string& of) const {
        const auto address = parse_address(of);
        const Circuit* circuit = address ? seat_.desk().survey.circuits.find(address->id) : nullptr;
        return circuit ? circuit->purpose.value_or("") : "";
    }
    void change(const std::string& of, const std::string& text) {
        const auto address = parse_address(of);
        if (!address) return;
        if (address->kind == ThingKind::circuit) return seat_.act(Outcome<Edit>(name_circuit(address->id, text)));
        seat_.act(filled_in(seat_.desk().survey, of, "old_label", text, seat_.units()));
    }

    Seat& seat_;
    PaperKind kind_ = PaperKind::front;
    std::vector<wxToggleButton*> kinds_;
    wxChoice* paper_ = nullptr;
    CardView* view_ = nullptr;
};

}  // namespace

View* new_card_page(wxWindow* parent, Seat& seat) { return new CardPage(parent, seat); }

}  // namespace doorcard
