// SPDX-License-Identifier: MIT
#include <wx/app.h>
#include <wx/cmdline.h>
#include <wx/frame.h>

#include <clocale>
#include <cstdlib>

#include "ui/frame.hpp"

namespace {

using doorcard::Words;

// The language of messages as the environment names it (POSIX: the first of these that is set), else English.
std::string language_of_environment() {
    for (const char* name : {"LC_ALL", "LC_MESSAGES", "LANG"})
        if (const char* value = std::getenv(name); value && *value) return std::string(value).substr(0, 2);
    return "en";
}

Words words_of_environment() {
    const std::string language = language_of_environment();
    for (const std::string& known : Words::languages())
        if (known == language) return Words::in(known);
    return Words::in("en");
}

class App final : public wxApp {
public:
    bool OnInit() override {
        std::setlocale(LC_NUMERIC, "C");  // numbers of a survey file are written with a point everywhere
        if (!wxApp::OnInit()) return false;
        doorcard::new_frame(words_of_environment(), file_)->Show();
        return true;
    }

    void OnInitCmdLine(wxCmdLineParser& parser) override {
        parser.AddSwitch("h", "help", "show this help", wxCMD_LINE_OPTION_HELP);
        parser.AddParam("FILE", wxCMD_LINE_VAL_STRING, wxCMD_LINE_PARAM_OPTIONAL);
    }

    bool OnCmdLineParsed(wxCmdLineParser& parser) override {
        if (parser.GetParamCount() > 0) file_ = std::string(parser.GetParam(0).utf8_str());
        return true;
    }

private:
    std::optional<std::string> file_;
};

}  // namespace

wxIMPLEMENT_APP(App);
