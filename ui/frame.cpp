// SPDX-License-Identifier: MIT
#include "ui/frame.hpp"

#include <wx/dnd.h>
#include <wx/filedlg.h>
#include <wx/frame.h>
#include <wx/msgdlg.h>
#include <wx/sizer.h>
#include <wx/timer.h>
#include <wx/wupdlock.h>

#include <filesystem>

#include "desk/additions.hpp"
#include "desk/face_places.hpp"
#include "desk/update.hpp"
#include "file/read_text.hpp"
#include "ui/desk_window.hpp"
#include "ui/errands.hpp"
#include "ui/frame_menus.hpp"
#include "ui/notice_strip.hpp"
#include "ui/opening.hpp"
#include "ui/settings_kept.hpp"
#include "ui/start_view.hpp"
#include "ui/text.hpp"

namespace doorcard {
namespace {

/// Takes a file that is dropped on the window; of several the first.
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

class SurveyFrame final : public wxFrame, public Seat, public FrameActs {
public:
    SurveyFrame(const Words& words, const Settings& settings, const Folders& folders,
                const std::optional<std::string>& file)
        : wxFrame(nullptr, wxID_ANY, "doorcard"),
          words_(words),
          folders_(folders),
          kept_(settings, folders.settings_file),
          looks_(kept_.theme(), settings.scale),
          errands_(unnamed_path(folders.state, wxGetProcessId()),
                   [this](Action action) { CallAfter([this, action] { act(action); }); }) {
        SetInitialSize(FromDIP(wxSize(settings.width, settings.height)));
        SetMinSize(FromDIP(wxSize(720, 520)));
        SetSizer(new wxBoxSizer(wxVERTICAL));
        set_menus(this, menu_lists(*this, *this));
        SetDropTarget(new Drop([this](const std::string& path) { dropped(path); }));
        watch_.Bind(wxEVT_TIMER, [this](wxTimerEvent&) { look_at_file(); });
        watch_.Start(1000);
        Bind(wxEVT_CLOSE_WINDOW, &SurveyFrame::on_close, this);
        Bind(wxEVT_CHAR_HOOK, &SurveyFrame::on_key, this);
        file ? open(*file) : show_start();
    }

    // What looks at the desk goes before the desk.
    ~SurveyFrame() override { clear(); }

    // --- Seat
    const Desk& desk() const override { return desk_; }
    const Words& words() const override { return words_; }
    const Looks& looks() const override { return looks_; }
    Units units() const override { return kept_.units(); }
    using Seat::act;
    void act(Action action) override {
        auto [next, effects] = update(std::move(desk_), std::move(action));
        desk_ = std::move(next);
        for (Effect& effect : effects) carry_out(std::move(effect));
        if (desk_.is_open && !window_) show_desk();
        look();
    }

    // --- FrameActs
    void begin_new() override {
        if (!may_leave()) return;
        desk_ = Desk{};
        show_start();
    }
    void ask_to_open() override {
        wxFileDialog dialog(
            this, wide(say(tr("Open a survey"))), wide(kept_.last_folder()), "",
            wide(say(tr("Surveys"))) + " (*.survey.toml)|*.survey.toml|" + wide(say(tr("All files"))) + "|*",
            wxFD_OPEN | wxFD_FILE_MUST_EXIST);
        if (dialog.ShowModal() == wxID_OK) open(utf8(dialog.GetPath()));
    }
    void save() override { desk_.file.path.empty() ? void(ask_to_save()) : act(Action{Save{}}); }
    void save_as() override { ask_to_save(); }
    void close() override { Close(); }
    void larger() override { set_scale(looks_.scale() * 1.1); }
    void smaller() override { set_scale(looks_.scale() / 1.1); }
    void usual_size() override { set_scale(1); }
    void set_theme(Theme theme) override {
        kept_.set_theme(theme);
        looks_.set(theme, looks_.scale());
        look_anew();
    }
    void set_units(Units units) override {
        kept_.set_units(units);
        look_anew();
    }
    void set_language(const std::string& language) override {
        words_ = Words::in(language);
        kept_.set_language(language);
        set_menus(this, menu_lists(*this, *this));
        build_again();
    }
    void show_page(JobPage page) override {
        act(Action{ShowPage{page}});
        window_->go_to_page();
    }
    void go_to_face() override {
        if (window_) window_->go_to_face();
    }
    void go_to_findings() override {
        if (window_) window_->go_to_findings();
    }
    void next_area() override {
        if (window_) window_->next_area();
    }
    void toggle_list() override {
        if (window_) window_->show_list(!window_->is_list());
    }
    bool is_list() const override { return window_ && window_->is_list(); }
    void open_row_slip() override { act(Action{OpenSlip{row_address, ""}}); }

private:
    void open(const std::string& path) {
        if (!may_leave()) return;
        kept_.set_last_folder(std::filesystem::path(path).parent_path().string());
        act(opened_from(path));
        if (!desk_.is_open && !start_) show_start();
    }

    // A survey is opened; any other file is taken for a picture of what is chosen.
    void dropped(const std::string& path) {
        if (!desk_.is_open || path.ends_with(".toml")) return open(path);
        const auto folder = std::filesystem::path(desk_.file.path).parent_path();
        const std::string beside =
            desk_.file.path.empty() ? path : std::filesystem::path(path).lexically_proximate(folder).string();
        const Breaker* breaker = desk_.spot.row ? breaker_at(desk_.survey, desk_.spot.panel, *desk_.spot.row) : nullptr;
        const std::string of = breaker                    ? "breaker:" + breaker->id
                               : desk_.spot.panel.empty() ? ""
                                                          : "panel:" + desk_.spot.panel;
        act(Action{Apply{photo_added(desk_.survey, beside, of).edit}});
    }

    // An example is a survey of one's own to try things on: it has no file, and the example stays as it is.
    void open_example(const std::string& path) {
        if (!may_leave()) return;
        Action action = opened_from(path);
        if (auto* example = std::get_if<Opened>(&action))
            *example = {"", example->text, example->survey, example->book, {}, {}};
        act(std::move(action));
    }

    /// True where nothing on the desk would be lost: it is in the file, or the user lets it wait beside it.
    bool may_leave() {
        errands_.finish();
        if (!desk_.is_open || !desk_.is_changed) return true;
        wxMessageDialog question(this, wide(say(tr("These changes are kept, but not yet in the file."))),
                                 wide(words_.say(title_of(desk_))), wxYES_NO | wxCANCEL | wxICON_NONE);
        question.SetYesNoCancelLabels(wide(say(tr("Save"))), wide(say(tr("Leave them kept"))), wide(say(tr("Stay"))));
        const int answer = question.ShowModal();
        if (answer != wxID_YES) return answer == wxID_NO;
        if (desk_.file.path.empty() && !ask_to_save()) return false;
        if (!desk_.file.path.empty()) act(Action{Save{}});
        errands_.finish();
        wxTheApp->ProcessPendingEvents();
        return !desk_.is_changed;
    }

    bool ask_to_save() {
        wxFileDialog dialog(this, wide(say(tr("Save the survey as"))), wide(kept_.last_folder()),
                            wide(words_.say(title_of(desk_)) + ".survey.toml"),
                            wide(say(tr("Surveys"))) + " (*.survey.toml)|*.survey.toml",
                            wxFD_SAVE | wxFD_OVERWRITE_PROMPT);
        if (dialog.ShowModal() != wxID_OK) return false;
        std::string path = utf8(dialog.GetPath());
        if (!path.ends_with(".toml")) path += ".survey.toml";
        kept_.set_last_folder(std::filesystem::path(path).parent_path().string());
        act(Action{SaveAs{path}});
        return true;
    }

    void carry_out(Effect effect) {
        if (const auto* file = std::get_if<Remember>(&effect)) return kept_.remember(file->path);
        if (const auto* wanted = std::get_if<ReadRules>(&effect)) {
            auto book = rules_of(wanted->path, wanted->edition, wanted->local_rules);
            const Action action = book ? Action{RulesRead{*book}} : Action{Refuse{book.error()}};
            return CallAfter([this, action] { act(action); });
        }
        errands_.add(std::move(effect));
    }

    // Once a second: did somebody else write the file? Its bytes are read only where its date or size have changed.
    void look_at_file() {
        if (!desk_.is_open || desk_.file.path.empty()) return;
        std::error_code none;
        const auto changed = std::filesystem::last_write_time(desk_.file.path, none);
        if (none || changed == file_seen_) return;
        file_seen_ = changed;
        errands_.finish();
        if (auto read = read_text(desk_.file.path)) act(Action{FileChanged{std::move(read->bytes)}});
    }

    // --- what is in the window
    void show_start() {
        clear();
        start_ = new StartView(
            this, *this,
            {kept_.recent(), left_unnamed(folders_.state), examples(), [this](const NewSurvey& known) { begin(known); },
             [this](const std::string& path) { open(path); },
             [this](const std::string& path) { open_example(path); },
             [this](const std::string& path) { take_left(path); },
             [this] { ask_to_open(); }});
        notice_ = new NoticeStrip(this, *this);
        GetSizer()->Add(notice_, wxSizerFlags().Expand());
        GetSizer()->Add(start_, wxSizerFlags(1).Expand());
        SetTitle("doorcard");
        notice_->look();
        Layout();
        start_->take_focus();
    }

    std::vector<std::string> examples() const {
        std::vector<std::string> paths;
        std::error_code none;
        for (const auto& entry : std::filesystem::directory_iterator(folders_.examples, none))
            if (entry.path().string().ends_with(".survey.toml")) paths.push_back(entry.path().string());
        std::ranges::sort(paths);
        return paths;
    }

    void begin(const NewSurvey& known) {
        auto book = rules_of("", "NEC-2023", "");
        if (book) act(Action{BeginNew{known, *book}});
        go_to_face();
    }

    // A survey that never had a file: it is begun anew, and what was kept of it is offered.
    void take_left(const std::string& path) {
        const auto left = left_journal(path, "");
        begin({});
        if (!left) return;
        act(Action{LeftFound{*left}});
        act(Action{TakeJournal{}});
        errands_.finish();
        drop_journal(path);
    }

    void clear() {
        start_ = nullptr;
        notice_ = nullptr;
        window_ = nullptr;
        DestroyChildren();
    }

    void show_desk() {
        const wxWindowUpdateLocker still(this);
        clear();
        window_ = new DeskWindow(this, *this);
        GetSizer()->Add(window_, wxSizerFlags(1).Expand());
        Layout();
    }

    void look() {
        if (notice_) notice_->look();
        if (!window_) return;
        SetTitle(wide(words_.say(title_of(desk_))) + " - doorcard");
        window_->look();
    }

    void look_anew() {
        looks_again(this);
        if (window_) window_->look_at_all();
        Layout();
        Refresh();
    }

    static void looks_again(wxWindow* window) {
        window->InvalidateBestSize();
        for (wxWindow* child : window->GetChildren()) looks_again(child);
    }

    void build_again() {
        if (!desk_.is_open) return show_start();
        show_desk();
        look();
    }

    void set_scale(double scale) {
        looks_.set(looks_.theme(), scale);
        kept_.set_scale(looks_.scale());
        build_again();
    }

    void on_key(wxKeyEvent& event) {
        const bool leaves =
            event.GetKeyCode() == WXK_ESCAPE && desk_.is_open && !desk_.spot.slip.empty() && !window_->is_editing();
        if (!leaves) return event.Skip();
        act(Action{GoBack{}});
        go_to_face();
    }

    void on_close(wxCloseEvent& event) {
        if (event.CanVeto() && !may_leave()) return event.Veto();
        kept_.set_size(ToDIP(GetSize()));
        errands_.finish();
        Destroy();
    }

    Words words_;
    Folders folders_;
    SettingsKept kept_;
    Looks looks_;
    Desk desk_;
    Errands errands_;
    wxTimer watch_;
    std::filesystem::file_time_type file_seen_;
    StartView* start_ = nullptr;
    NoticeStrip* notice_ = nullptr;  ///< of the start; an open desk has its own
    DeskWindow* window_ = nullptr;
};

}  // namespace

wxFrame* new_frame(const Words& words, const Settings& settings, const Folders& folders,
                   const std::optional<std::string>& file) {
    return new SurveyFrame(words, settings, folders, file);
}

}  // namespace doorcard
