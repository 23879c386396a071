// SPDX-License-Identifier: MIT
#include "file/settings.hpp"

#include <doctest/doctest.h>

#include <filesystem>
#include <system_error>

#include "cli/ran_program.hpp"
#include "file/own_folders.hpp"

using namespace doorcard;

namespace {

namespace fs = std::filesystem;
using Paths = std::vector<std::string>;

Settings changed_everywhere() {
    Settings settings;
    settings.recent = {"/surveys/alder row.survey.toml",
                       "/surveys/ca\xC3\xB1"
                       "ada.survey.toml"};
    settings.scale = 1.4;
    settings.theme = "contrast";
    settings.language = "es";
    settings.units = "metres";
    settings.width = 1920;
    settings.height = 1000;
    settings.last_folder = "/surveys";
    return settings;
}

Settings after(const std::string& text) { return read_settings(text); }

}  // namespace

TEST_CASE("settings: what was kept is there at the next start") {
    CHECK(read_settings(settings_text(changed_everywhere())) == changed_everywhere());
    CHECK(read_settings(settings_text({})) == Settings());
}

TEST_CASE("settings: what is no settings at all is as at the first start") {
    for (const char* text : {"", "{", "[]", "null", "scale = 2", "\xFF\xFE", "{\"scale\": 2", "{\"scale\": 1e999}"})
        CHECK_MESSAGE(read_settings(text) == Settings(), text);
    CHECK(read_settings(std::string(100'000, '[')) == Settings());
}

TEST_CASE("settings: one wrong value spoils no other") {
    const Settings read = after(R"({"scale": "big", "theme": "pink", "units": 3, "width": null, "language": "es"})");
    CHECK(read.language == "es");
    CHECK(read.scale == 1);
    CHECK(read.theme == "system");
    CHECK(read.units == "feet");
    CHECK(read.width == Settings().width);
}

TEST_CASE("settings: a size nobody could work with comes back within bounds") {
    CHECK(after(R"({"scale": 1e300})").scale == 3.0);
    CHECK(after(R"({"scale": -4})").scale == 0.6);
    CHECK(after(R"({"width": 1e12, "height": 3})").width == 8000);
    CHECK(after(R"({"width": 1e12, "height": 3})").height == 480);
}

TEST_CASE("settings: recent surveys are whole paths, once each, at most 12") {
    CHECK(after(R"({"recent": ["/b", 7, "a", "/a", "/b", null]})").recent == Paths{"/b", "/a"});
    std::string many = R"({"recent": ["/0")";
    for (int i = 1; i < 40; ++i) many += ", \"/" + std::to_string(i) + '"';
    CHECK(after(many + "]}").recent.size() == 12);
    CHECK(after(many + "]}").recent.back() == "/11");
}

TEST_CASE("settings: the survey just opened stands first, the others keep their order") {
    Settings settings;
    for (const char* path : {"/a", "/b", "/c", "/a"}) settings = with_recent(settings, path);
    CHECK(settings.recent == Paths{"/a", "/c", "/b"});
    CHECK(without_recent(settings, "/c").recent == Paths{"/a", "/b"});
    for (int i = 0; i < 12; ++i) settings = with_recent(settings, "/" + std::to_string(i));
    CHECK(settings.recent.size() == 12);
    CHECK(settings.recent.front() == "/11");
    CHECK(settings.recent.back() == "/0");
}

TEST_CASE("settings: kept in a folder that is made for it, for nobody else to look into") {
    const TemporaryFolder home;
    const std::string file = home / ".config/doorcard/settings.json";
    CHECK(load_settings(file) == Settings());
    keep_settings(file, changed_everywhere());
    CHECK(load_settings(file) == changed_everywhere());
    CHECK(fs::status(home / ".config/doorcard").permissions() == fs::perms::owner_all);
    keep_settings(file, {});
    CHECK(load_settings(file) == Settings());
}

TEST_CASE("settings: a broken file is set aside, and the next one is kept again") {
    const TemporaryFolder home;
    const std::string file = home / "settings.json";
    write_file(file, "{\"recent\": [\"/surveys/al");
    CHECK(load_settings(file) == Settings());
    CHECK_FALSE(fs::exists(file));
    CHECK(file_text(file + ".broken") == "{\"recent\": [\"/surveys/al");
    keep_settings(file, changed_everywhere());
    CHECK(load_settings(file) == changed_everywhere());
}

TEST_CASE("settings: a folder in place of the file stops nobody from starting") {
    const TemporaryFolder home;
    fs::create_directories(home / "settings.json");
    CHECK(load_settings(home / "settings.json") == Settings());
    CHECK_THROWS_AS(keep_settings(home / "settings.json", {}), std::system_error);
}

TEST_CASE("own folders: where the XDG variables say, else below home") {
    CHECK(settings_file({"/conf", "", "/home/x"}) == "/conf/doorcard/settings.json");
    CHECK(settings_file({"", "", "/home/x"}) == "/home/x/.config/doorcard/settings.json");
    CHECK(state_folder({"/conf", "/state", "/home/x"}) == "/state/doorcard");
    CHECK(state_folder({"/conf", "", "/home/x"}) == "/home/x/.local/state/doorcard");
}

TEST_CASE("own folders: a variable that is no absolute path counts as not there") {
    CHECK(settings_file({"conf", "", "/home/x"}) == "/home/x/.config/doorcard/settings.json");
    CHECK(settings_file({"conf", "state", ""}).empty());
    CHECK(state_folder({"conf", "state", "home"}).empty());
}

TEST_CASE("own folders: examples as installed, then those of the source tree") {
    const auto folders = example_folders("/usr/bin/doorcard-ui");
    REQUIRE(folders.size() == 2);
    CHECK(fs::path(folders[0]).lexically_normal() == "/usr/share/doc/doorcard/examples");
    CHECK(fs::path(example_folders("/src/.build/bin/doorcard-ui")[1]).lexically_normal() == "/src/examples");
}
