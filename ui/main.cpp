// SPDX-License-Identifier: MIT
#include <wx/app.h>
#include <wx/cmdline.h>
#include <wx/frame.h>

#include <clocale>
#include <cstdlib>
#include <filesystem>

#include "file/own_folders.hpp"
#include "ui/frame.hpp"

namespace {

using doorcard::Folders;
using doorcard::Settings;
using doorcard::Words;
namespace fs = std::filesystem;

std::string environment(const char* name) {
    const char* value = std::getenv(name);
    return value ? value : "";
}

// The language of messages as the environment names it (POSIX: the first of these that is set), else English.
std::string language_of_environment() {
    for (const char* name : {"LC_ALL", "LC_MESSAGES", "LANG"})
        if (const std::string value = environment(name); !value.empty()) return value.substr(0, 2);
    return "en";
}

Words words_of(const Settings& settings) {
    const std::string wanted = settings.language.empty() ? language_of_environment() : settings.language;
    for (const std::string& known : Words::languages())
        if (known == wanted) return Words::in(known);
    return Words::in("en");
}

// The first folder of examples that is there, beside the program or in its source tree.
std::string examples_of_program() {
    std::error_code none;
    const fs::path program = fs::read_symlink("/proc/self/exe", none);
    for (const std::string& folder : doorcard::example_folders(program.string()))
        if (fs::is_directory(folder, none)) return folder;
    return {};
}

Folders folders_of_environment() {
    const doorcard::FolderVariables variables{environment("XDG_CONFIG_HOME"), environment("XDG_STATE_HOME"),
                                              environment("HOME")};
    return {doorcard::settings_file(variables), doorcard::state_folder(variables), examples_of_program()};
}

class App final : public wxApp {
public:
    bool OnInit() override {
        std::setlocale(LC_NUMERIC, "C");  // numbers of a survey file are written with a point everywhere
        if (!wxApp::OnInit()) return false;
        SetAppName("doorcard");
        const Folders folders = folders_of_environment();
        const Settings settings = doorcard::load_settings(folders.settings_file);
        doorcard::new_frame(words_of(settings), settings, folders, file_)->Show();
        return true;
    }

    void OnInitCmdLine(wxCmdLineParser& parser) override {
        parser.AddSwitch("h", "help", "show this help", wxCMD_LINE_OPTION_HELP);
        parser.AddParam("FILE", wxCMD_LINE_VAL_STRING, wxCMD_LINE_PARAM_OPTIONAL);
    }

    bool OnCmdLineParsed(wxCmdLineParser& parser) override {
        if (parser.GetParamCount() > 0) file_ = fs::absolute(std::string(parser.GetParam(0).utf8_str())).string();
        return true;
    }

private:
    std::optional<std::string> file_;
};

}  // namespace

wxIMPLEMENT_APP(App);
