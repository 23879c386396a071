// SPDX-License-Identifier: MIT
#pragma once
#include <wx/gdicmn.h>

#include "desk/form.hpp"
#include "file/settings.hpp"
#include "ui/looks.hpp"

namespace doorcard {

/// What the window remembers from one time to the next; written whenever it changes. A file that cannot be written is
/// no reason to stop anybody.
class SettingsKept {
public:
    SettingsKept(Settings, std::string file);

    Theme theme() const;
    Units units() const;
    const std::vector<std::string>& recent() const { return settings_.recent; }
    std::string last_folder() const { return settings_.last_folder.value_or(""); }

    void set_theme(Theme);
    void set_units(Units);
    void set_scale(double);
    void set_language(const std::string&);
    void set_size(const wxSize&);
    void set_last_folder(const std::string&);
    void remember(const std::string& path);

private:
    void write() const;
    Settings settings_;
    std::string file_;
};

}  // namespace doorcard
