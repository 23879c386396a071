// SPDX-License-Identifier: MIT
#include "ui/settings_kept.hpp"

#include <array>
#include <system_error>
#include <utility>

namespace doorcard {
namespace {

constexpr std::array<std::pair<Theme, const char*>, 4> themes = {
    {{Theme::system, "system"}, {Theme::light, "light"}, {Theme::dark, "dark"}, {Theme::contrast, "contrast"}}};

}  // namespace

SettingsKept::SettingsKept(Settings settings, std::string file)
    : settings_(std::move(settings)), file_(std::move(file)) {}

Theme SettingsKept::theme() const {
    for (const auto& [theme, name] : themes)
        if (settings_.theme == name) return theme;
    return Theme::system;
}

Units SettingsKept::units() const { return settings_.units == "metres" ? Units::metres : Units::feet; }

void SettingsKept::set_theme(Theme theme) {
    for (const auto& [one, name] : themes)
        if (one == theme) settings_.theme = name;
    write();
}

void SettingsKept::set_units(Units units) {
    settings_.units = units == Units::metres ? "metres" : "feet";
    write();
}

void SettingsKept::set_scale(double scale) {
    settings_.scale = scale;
    write();
}

void SettingsKept::set_language(const std::string& language) {
    settings_.language = language;
    write();
}

void SettingsKept::set_size(const wxSize& size) {
    settings_.width = size.x;
    settings_.height = size.y;
    write();
}

void SettingsKept::set_last_folder(const std::string& folder) {
    settings_.last_folder = folder;
    write();
}

void SettingsKept::remember(const std::string& path) {
    settings_ = with_recent(std::move(settings_), path);
    write();
}

void SettingsKept::write() const {
    try {
        keep_settings(file_, settings_);
    } catch (const std::system_error&) {  // the next start begins with the usual settings
    }
}

}  // namespace doorcard
