// SPDX-License-Identifier: MIT
#include "file/settings.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>

namespace doorcard {
namespace {

using Json = nlohmann::json;
constexpr std::size_t most_recent = 12;

/// The value of a key where it has the right type.
template <class T>
void take(const Json& all, const char* key, T& into) {
    const auto found = all.find(key);
    if (found == all.end()) return;
    try {
        into = found->get<T>();
    } catch (const Json::exception&) {
    }
}

}  // namespace

Settings read_settings(std::string_view text) {
    Settings settings;
    const Json all = Json::parse(text, nullptr, false);
    if (!all.is_object()) return settings;
    take(all, "recent", settings.recent);
    take(all, "scale", settings.scale);
    take(all, "theme", settings.theme);
    take(all, "language", settings.language);
    take(all, "units", settings.units);
    take(all, "width", settings.width);
    take(all, "height", settings.height);
    std::string folder;
    take(all, "last_folder", folder);
    if (!folder.empty()) settings.last_folder = folder;
    if (settings.recent.size() > most_recent) settings.recent.resize(most_recent);
    settings.scale = std::clamp(settings.scale, 0.6, 3.0);
    settings.width = std::clamp(settings.width, 640, 8000);
    settings.height = std::clamp(settings.height, 480, 6000);
    return settings;
}

std::string settings_text(const Settings& settings) {
    nlohmann::ordered_json all;
    all["recent"] = settings.recent;
    all["scale"] = settings.scale;
    all["theme"] = settings.theme;
    all["language"] = settings.language;
    all["units"] = settings.units;
    all["width"] = settings.width;
    all["height"] = settings.height;
    if (settings.last_folder) all["last_folder"] = *settings.last_folder;
    return all.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

Settings with_recent(Settings settings, const std::string& path) {
    std::erase(settings.recent, path);
    settings.recent.insert(settings.recent.begin(), path);
    if (settings.recent.size() > most_recent) settings.recent.resize(most_recent);
    return settings;
}

}  // namespace doorcard
