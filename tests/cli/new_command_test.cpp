// SPDX-License-Identifier: MIT
#include "cli/new_command.hpp"

#include <doctest/doctest.h>
#include <stdlib.h>

#include <filesystem>
#include <nlohmann/json.hpp>
#include <sstream>

#include "base/write_whole.hpp"
#include "file/read_survey.hpp"
#include "file/read_text.hpp"

using namespace doorcard;
namespace fs = std::filesystem;

namespace {

struct Folder {
    fs::path path;
    Folder() {
        std::string name = (fs::temp_directory_path() / "new_command.XXXXXX").string();
        REQUIRE(::mkdtemp(name.data()) != nullptr);
        path = name;
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    ~Folder() { fs::remove_all(path); }
    std::string operator/(const std::string& name) const { return (path / name).string(); }
};

struct Ran {
    int status;
    std::string out, err;
};

Ran run(const NewOptions& options) {
    std::ostringstream out, err;
    const int status = run_new(options, out, err, Words::in("en"));
    return {status, out.str(), err.str()};
}

}  // namespace

TEST_CASE("new: writes a survey that reads back") {
    const Folder folder;
    const std::string file = folder / "house.survey.toml";
    const Ran ran = run({file, "120/240 1ph 3w", 40, 200.0, false});
    CHECK(ran.status == 0);
    CHECK(ran.out == file + ": written. Fill in what you see, then: doorcard check " + file + "\n");
    CHECK(ran.err.empty());
    const auto read = read_survey(*read_text(file));
    REQUIRE(read);
    CHECK(read->survey.panels[0].spaces == 40);
    CHECK(read->survey.panels[0].main_a == Amperes(200));
    CHECK(read->survey.sources[0].system == System::split_120_240);
}

TEST_CASE("new: names the file as JSON") {
    const Folder folder;
    NewOptions options;
    options.file = folder / "a";
    options.json = true;
    CHECK(nlohmann::json::parse(run(options).out) == nlohmann::json{{"files", nlohmann::json::array({options.file})}});
}

TEST_CASE("new: refuses an existing file and leaves it alone") {
    const Folder folder;
    NewOptions options;
    options.file = folder / "a";
    write_whole(options.file, "mine");
    const Ran ran = run(options);
    CHECK(ran.status == 4);
    CHECK(ran.err == options.file + ": exists already and was left alone; name a new file\n");
    CHECK(ran.out.empty());
    CHECK(read_text(options.file)->bytes == "mine");
}

TEST_CASE("new: a folder that is not there is an output that could not be written") {
    const Folder folder;
    NewOptions options;
    options.file = folder / "nowhere/a";
    CHECK(run(options).status == 4);
}

TEST_CASE("new: an unknown system, and figures that are no ratings, are wrong usage and write nothing") {
    const Folder folder;
    const std::string file = folder / "a";
    const Ran ran = run({file, "120/240", {}, {}, false});
    CHECK(ran.status == 2);
    CHECK(ran.err.starts_with("there is no system \"120/240\"; known are: 120/240 1ph 3w, 120/208 1ph 3w"));
    CHECK(run({file, {}, 0, {}, false}).err ==
          "\"spaces\" in [[panel]] is 0; write spaces = whole number, at least 1, at most 999\n");
    CHECK(run({file, {}, {}, -5.0, false}).status == 2);
    CHECK_FALSE(fs::exists(file));
}
