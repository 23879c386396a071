// SPDX-License-Identifier: MIT
#include <wx/app.h>
#include <wx/cmdline.h>
#include <wx/frame.h>

#include <clocale>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>

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

// XDG base directories: the variable where it names an absolute path, else what it stands for below the home.
fs::path xdg(const char* variable, const char* below_home) {
    const std::string named = environment(variable);
    if (named.starts_with('/')) return named;
    return fs::path(environment("HOME")) / below_home;
}

fs::path examples_beside_program() {
    std::error_code none;
    const fs::path program = fs::read_symlink("/proc/self/exe", none);
    for (const fs::path& folder : {program.parent_path().parent_path() / "share/doc/doorcard/examples",
                                   program.parent_path().parent_path().parent_path() / "examples"})
        if (fs::is_directory(folder, none)) return folder;
    return {};
}

Folders folders_of_environment() {
    return {(xdg("XDG_CONFIG_HOME", ".config") / "doorcard/settings.json").string(),
            (xdg("XDG_STATE_HOME", ".local/state") / "doorcard").string(), examples_beside_program().string()};
}

Settings settings_in(const std::string& file) {
    std::ifstream in(file, std::ios::binary);
    return doorcard::read_settings(std::string{std::istreambuf_iterator<char>(in), {}});
}

class App final : public wxApp {
public:
    bool OnInit() override {
        std::setlocale(LC_NUMERIC, "C");  // numbers of a survey file are written with a point everywhere
        if (!wxApp::OnInit()) return false;
        SetAppName("doorcard");
        const Folders folders = folders_of_environment();
        const Settings settings = settings_in(folders.settings_file);
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
