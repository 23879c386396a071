// SPDX-License-Identifier: MIT
#include "ui/frame.hpp"

#include <wx/dnd.h>
#include <wx/filedlg.h>
#include <wx/filename.h>
#include <wx/frame.h>
#include <wx/menu.h>
#include <wx/sizer.h>
#include <wx/stattext.h>
#include <wx/textctrl.h>

#include <cmath>
#include <functional>

#include "ui/card_view.hpp"
#include "ui/shown.hpp"

namespace doorcard {
namespace {

constexpr double zoom_step = 1.25;

wxString wide(const std::string& utf8) { return wxString::FromUTF8(utf8.data(), utf8.size()); }
std::string utf8(const wxString& text) { return std::string(text.utf8_str()); }

// Takes a file that is dropped on the window; of several the first.
class Drop final : public wxFileDropTarget {
public:
    explicit Drop(std::function<void(std::string)> open) : open_(std::move(open)) {}
    bool OnDropFiles(wxCoord, wxCoord, const wxArrayString& files) override {
        if (files.empty()) return false;
        open_(utf8(files.front()));
        return true;
    }

private:
    std::function<void(std::string)> open_;
};

class SurveyFrame final : public wxFrame {
public:
    SurveyFrame(const Words& words, const std::optional<std::string>& file)
        : wxFrame(nullptr, wxID_ANY, "doorcard", wxDefaultPosition, wxDefaultSize), words_(words) {
        SetInitialSize(FromDIP(wxSize(900, 960)));
        add_menus();
        add_caution();
        add_contents();
        add_foot();
        SetDropTarget(new Drop([this](const std::string& path) { open(path); }));
        file ? open(*file) : show_text(words_(tr("Open a survey: File > Open, or drop its file on this window.")));
    }

private:
    wxString say(const char* english) const { return wide(words_(english)); }

    void add_menus() {
        auto* file = new wxMenu;
        add(file, say(tr("&Open...")) + "\tCtrl+O", &SurveyFrame::ask_for_file);
        again_ = add(file, say(tr("Open &again")) + "\tF5", &SurveyFrame::open_again);
        again_->Enable(false);
        file->AppendSeparator();
        add(file, say(tr("&Quit")) + "\tCtrl+Q", &SurveyFrame::quit);
        auto* view = new wxMenu;
        add(view, say(tr("&Larger")) + "\tCtrl++", &SurveyFrame::larger);
        add(view, say(tr("&Smaller")) + "\tCtrl+-", &SurveyFrame::smaller);
        add(view, say(tr("&Actual size")) + "\tCtrl+0", &SurveyFrame::actual_size);
        view->AppendSeparator();
        as_text_ = view->AppendCheckItem(wxID_ANY, say(tr("Card as &text")) + "\tCtrl+T");
        Bind(
            wxEVT_MENU, [this](wxCommandEvent&) { lay_out(); }, as_text_->GetId());
        auto* bar = new wxMenuBar;
        bar->Append(file, say(tr("&File")));
        bar->Append(view, say(tr("&View")));
        SetMenuBar(bar);
        add_key_for_larger();
    }

    wxMenuItem* add(wxMenu* menu, const wxString& label, void (SurveyFrame::*act)()) {
        wxMenuItem* item = menu->Append(wxID_ANY, label);
        Bind(
            wxEVT_MENU, [this, act](wxCommandEvent&) { (this->*act)(); }, item->GetId());
        return item;
    }

    // Most keyboards have the plus above the equals sign: Ctrl and that key make larger without Shift too.
    void add_key_for_larger() {
        const int id = wxWindow::NewControlId();
        wxAcceleratorEntry keys[] = {{wxACCEL_CTRL, '=', id}, {wxACCEL_CTRL, WXK_NUMPAD_ADD, id}};
        Bind(
            wxEVT_MENU, [this](wxCommandEvent&) { larger(); }, id);
        SetAcceleratorTable(wxAcceleratorTable(2, keys));
    }

    void add_caution() {
        auto* line = new wxPanel(this);
        line->SetBackgroundColour(wxColour(255, 205, 0));
        auto* text = new wxStaticText(
            line, wxID_ANY, say(tr("CAUTION  Off is not proof of dead: test before touch. A card may be wrong.")));
        text->SetForegroundColour(*wxBLACK);
        text->SetFont(text->GetFont().Bold());
        auto* inside = new wxBoxSizer(wxVERTICAL);
        inside->Add(text, wxSizerFlags().Border(wxALL, FromDIP(6)));
        line->SetSizer(inside);
        SetSizer(new wxBoxSizer(wxVERTICAL));
        GetSizer()->Add(line, wxSizerFlags().Expand());
    }

    void add_contents() {
        view_ = new_card_view(this, [this] { say_state(); });
        text_ = new wxTextCtrl(this, wxID_ANY, "", wxDefaultPosition, wxDefaultSize,
                               wxTE_MULTILINE | wxTE_READONLY | wxTE_WORDWRAP | wxBORDER_NONE);
        text_->SetFont(wxFont(wxFontInfo(11).Family(wxFONTFAMILY_TELETYPE)));
        GetSizer()->Add(view_->window(), wxSizerFlags(1).Expand());
        GetSizer()->Add(text_, wxSizerFlags(1).Expand().Border(wxALL, FromDIP(12)));
    }

    void add_foot() {
        CreateStatusBar(2);
        const int widths[] = {-1, FromDIP(180)};
        SetStatusWidths(2, widths);
        SetStatusText(say(tr("Read only: this window shows the card; it does not edit yet.")), 0);
    }

    void ask_for_file() {
        wxFileDialog dialog(this, say(tr("Open a survey")), "", "",
                            say(tr("Surveys")) + " (*.survey.toml)|*.survey.toml|" + say(tr("All files")) + "|*",
                            wxFD_OPEN | wxFD_FILE_MUST_EXIST);
        if (dialog.ShowModal() == wxID_OK) open(utf8(dialog.GetPath()));
    }

    void open(const std::string& path) {
        path_ = path;
        shown_ = shown_from(path, words_);
        again_->Enable(true);
        SetTitle(wide(shown_.title) + " - doorcard");
        view_->show(shown_.card);
        lay_out();
    }
    void open_again() { open(path_); }
    void quit() { Close(); }
    void larger() { view_->set_zoom(view_->zoom() * zoom_step); }
    void smaller() { view_->set_zoom(view_->zoom() / zoom_step); }
    void actual_size() { view_->set_zoom(1); }

    // The card, or text in its place: what is wrong with the file, or the card in words where that was asked for.
    void lay_out() {
        if (!shown_.complaints.empty()) return show_text(complaints());
        if (as_text_->IsChecked() || shown_.card.pages.empty()) return show_text(shown_.text);
        exchange(view_->window(), text_);
        say_state();
    }

    std::string complaints() const {
        std::string lines = words_.count(trn("{0} complaint about this file; there is no card of it yet.",
                                             "{0} complaints about this file; there is no card of it yet."),
                                         static_cast<long>(shown_.complaints.size())) +
                            "\n\n";
        for (const std::string& complaint : shown_.complaints) lines += complaint + "\n";
        return lines;
    }

    void show_text(const std::string& text) {
        text_->ChangeValue(wide(text));
        exchange(text_, view_->window());
        say_state();
    }

    void exchange(wxWindow* shown, wxWindow* hidden) {
        hidden->Hide();
        shown->Show();
        Layout();
        shown->SetFocus();
    }

    void say_state() {
        const auto pages = static_cast<long>(shown_.card.pages.size());
        const std::string zoom = std::to_string(std::lround(100 * view_->zoom())) + " %";
        SetStatusText(wide(pages > 0 ? words_.count(trn("{0} page", "{0} pages"), pages) + ", " + zoom : ""), 1);
    }

    Words words_;
    std::string path_;
    Shown shown_;
    wxMenuItem* again_ = nullptr;
    wxMenuItem* as_text_ = nullptr;
    CardView* view_ = nullptr;
    wxTextCtrl* text_ = nullptr;
};

}  // namespace

wxFrame* new_frame(const Words& words, const std::optional<std::string>& file) { return new SurveyFrame(words, file); }

}  // namespace doorcard
