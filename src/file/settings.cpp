// SPDX-License-Identifier: MIT
#include "file/settings.hpp"

#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <initializer_list>
#include <nlohmann/json.hpp>
#include <system_error>

#include "base/write_whole.hpp"
#include "file/read_text.hpp"

namespace doorcard {
namespace {

using Json = nlohmann::json;
constexpr std::size_t most_recent = 12;

Json parsed(std::string_view text) { return Json::parse(text, nullptr, false); }

/// The value of a key where it has the right type; null otherwise.
const Json* value_of(const Json& all, const char* key, bool (Json::*is_right)() const noexcept) {
    const auto found = all.find(key);
    return found != all.end() && ((*found).*is_right)() ? &*found : nullptr;
}

void take_text(const Json& all, const char* key, std::string& into) {
    if (const Json* value = value_of(all, key, &Json::is_string)) into = value->get<std::string>();
}

void take_word(const Json& all, const char* key, std::initializer_list<std::string_view> words, std::string& into) {
    std::string word;
    take_text(all, key, word);
    if (std::find(words.begin(), words.end(), word) != words.end()) into = word;
}

template <class Number>
void take_number(const Json& all, const char* key, Number least, Number most, Number& into) {
    if (const Json* value = value_of(all, key, &Json::is_number))
        into = static_cast<Number>(std::clamp<double>(value->get<double>(), least, most));
}

/// Those that are texts, once each; a path that is not whole would mean another file tomorrow.
std::vector<std::string> paths_of(const Json& all) {
    std::vector<std::string> paths;
    const Json* list = value_of(all, "recent", &Json::is_array);
    if (!list) return paths;
    for (const Json& one : *list) {
        if (!one.is_string() || paths.size() == most_recent) continue;
        auto path = one.get<std::string>();
        const bool is_new = std::find(paths.begin(), paths.end(), path) == paths.end();
        if (path.starts_with('/') && is_new) paths.push_back(std::move(path));
    }
    return paths;
}

Settings settings_of(const Json& all) {
    Settings settings;
    settings.recent = paths_of(all);
    take_number(all, "scale", 0.6, 3.0, settings.scale);
    take_word(all, "theme", {"system", "light", "dark", "contrast"}, settings.theme);
    take_text(all, "language", settings.language);
    take_word(all, "units", {"feet", "metres"}, settings.units);
    take_number(all, "width", 640, 8000, settings.width);
    take_number(all, "height", 480, 6000, settings.height);
    std::string folder;
    take_text(all, "last_folder", folder);
    if (!folder.empty()) settings.last_folder = folder;
    return settings;
}

}  // namespace

Settings read_settings(std::string_view text) {
    const Json all = parsed(text);
    return all.is_object() ? settings_of(all) : Settings();
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

Settings without_recent(Settings settings, const std::string& path) {
    std::erase(settings.recent, path);
    return settings;
}

Settings load_settings(const std::string& file) try {
    const auto text = read_text(file);
    if (!text) return {};
    const Json all = parsed(text->bytes);
    if (all.is_object()) return settings_of(all);
    std::rename(file.c_str(), (file + ".broken").c_str());
    return {};
} catch (const std::system_error&) {  // a disk that fails while reading
    return {};
}

void keep_settings(const std::string& file, const Settings& settings) {
    const std::filesystem::path folder = folder_of(file);
    if (std::filesystem::create_directories(folder))
        std::filesystem::permissions(folder, std::filesystem::perms::owner_all);
    write_whole(file, settings_text(settings));
}

}  // namespace doorcard
