// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <functional>
#include <iterator>
#include <nlohmann/json.hpp>
#include <sstream>

#include "cli/card_command.hpp"

using namespace doorcard;
namespace fs = std::filesystem;

namespace {

const char* const survey_text = R"(format = 1
[survey]
title = "Alder Row 9"
[[source]]
id = "utility"
kind = "utility"
system = "120/240 1ph 3w"
[[panel]]
id = "MAIN"
fed_by = "utility"
spaces = 8
empty_spaces = [8]
[[panel]]
id = "SHOP"
spaces = 4
[[breaker]]
panel = "MAIN"
spaces = [1]
amps = 20
guards = ["arc", "ground"]
[[breaker]]
panel = "MAIN"
spaces = [2, 4]
amps = 30
[[breaker]]
panel = "MAIN"
spaces = [3]
half = "a"
amps = 15
guards = []
[[circuit]]
id = "k"
breaker = "MAIN:1"
purpose = "Kitchen counter"
neutral = "N1"
traced = { how = "switching" }
[[circuit]]
id = "d"
breaker = "MAIN:2+4"
purpose = "Dryer"
traced = { how = "told" }
)";

/// A folder of its own with a survey in it, gone in the end.
struct Folder {
    fs::path path;
    Folder() {
        std::string name = fs::temp_directory_path() / "doorcard-card-XXXXXX";
        REQUIRE(mkdtemp(name.data()) != nullptr);
        path = name;
        std::ofstream(path / "house.survey.toml") << survey_text;
    }
    ~Folder() { fs::remove_all(path); }
    std::string file(const std::string& name) const { return path / name; }
    std::size_t files() const {
        return static_cast<std::size_t>(std::distance(fs::directory_iterator(path), fs::directory_iterator()));
    }
};

struct Result {
    int status;
    std::string out, err;
};

Result run(const CardOptions& options) {
    std::ostringstream out, err;
    const int status = run_card(options, out, err, Words::in("en"));
    return {status, out.str(), err.str()};
}

CardOptions options_for(const Folder& folder) {
    CardOptions options;
    options.file = folder.file("house.survey.toml");
    return options;
}

std::string bytes_of(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

}  // namespace

TEST_CASE("card: without -o, or with -o -, the directory is printed as text") {
    const Folder folder;
    CardOptions options = options_for(folder);
    const Result plain = run(options);
    CHECK(plain.status == 0);
    CHECK(plain.out.find("Kitchen counter") != std::string::npos);
    CHECK(plain.out.find("[?] Dryer") != std::string::npos);
    options.output = "-";
    CHECK(run(options).out == plain.out);
    CHECK(folder.files() == 1);
}

TEST_CASE("card: the ending of the name says what is painted, in any case") {
    const Folder folder;
    const std::pair<const char*, const char*> starts[] = {{"card.pdf", "%PDF"},
                                                          {"card.PNG", "\x89PNG"},
                                                          {"card.svg", "<?xml"},
                                                          {"card.html", "<!doctype"},
                                                          {"card.txt", "MAIN"}};
    for (const auto& [name, start] : starts)
        for (const char* side : {"panel", "both"}) {
            CardOptions options = options_for(folder);
            options.output = folder.file(name);
            options.side = side;
            const Result result = run(options);
            INFO(name);
            INFO(side);
            CHECK(result.status == 0);
            CHECK(result.out.empty());
            CHECK(bytes_of(options.output).starts_with(start));
        }
}

TEST_CASE("card: two runs write the same bytes") {
    const Folder folder;
    CardOptions options = options_for(folder);
    options.output = folder.file("a.pdf");
    run(options);
    options.output = folder.file("b.pdf");
    run(options);
    CHECK(bytes_of(folder.file("a.pdf")) == bytes_of(folder.file("b.pdf")));
}

TEST_CASE("card: wrong usage is exit 2, says what is right, and writes nothing") {
    const Folder folder;
    const auto refused = [&](const std::function<void(CardOptions&)>& spoil, const std::string& says) {
        CardOptions options = options_for(folder);
        spoil(options);
        const Result result = run(options);
        INFO(result.err);
        CHECK(result.status == 2);
        CHECK(result.err.find(says) != std::string::npos);
        CHECK(result.out.empty());
    };
    refused([](CardOptions& o) { o.panels = {"GARAGE"}; }, "panels are MAIN, SHOP");
    refused([](CardOptions& o) { o.side = "back"; }, "--side back: panel (the front), rooms (the back) or both");
    refused([](CardOptions& o) { o.since = "old.toml"; }, "--since");
    refused([](CardOptions& o) { o.paper = "a5"; }, "letter, a4, half-letter");
    refused([](CardOptions& o) { o.paper = "20x20mm"; }, "at least 104x160mm");
    refused([&](CardOptions& o) { o.output = folder.file("card.doc"); }, ".pdf .svg .png .html or .txt");
    CHECK(folder.files() == 1);
}

TEST_CASE("card: a wrong survey is exit 3") {
    const Folder folder;
    CardOptions options = options_for(folder);
    options.file = folder.file("none.toml");
    CHECK(run(options).status == 3);
}

TEST_CASE("card: an output that cannot be written throws, and what was there is whole") {
    const Folder folder;
    CardOptions options = options_for(folder);
    options.output = folder.file("no/such/folder/card.pdf");
    CHECK_THROWS(run(options));
    CHECK(folder.files() == 1);
}

TEST_CASE("card --json: the keys of the contract, on every row") {
    const Folder folder;
    CardOptions options = options_for(folder);
    options.json = true;
    const auto json = nlohmann::json::parse(run(options).out);
    REQUIRE(json.at("panels").size() == 2);
    const auto& main = json["panels"][0];
    CHECK(main.at("id") == "MAIN");
    CHECK(main.at("cards") == 1);
    for (const auto& row : main.at("rows"))
        for (const char* key : {"spaces", "text", "amps", "poles", "legs", "guards", "neutral", "traced", "changed"}) {
            INFO(row.dump(), " ", key);
            CHECK(row.contains(key));
        }
    const auto& kitchen = main["rows"][0];
    CHECK(kitchen ==
          nlohmann::json::parse(
              R"({"spaces": [1], "halves": [], "text": "Kitchen counter", "under": null, "amps": 20.0, "poles": 1,
        "legs": ["A"], "guards": ["arc", "ground"], "neutral": "N1", "traced": true, "claimed": false, "changed": null})"));
    const auto& dryer = main["rows"][1];
    CHECK(dryer["spaces"] == nlohmann::json::parse("[2, 4]"));
    CHECK(dryer["legs"] == nlohmann::json::parse(R"(["A", "B"])"));
    CHECK(dryer["guards"].is_null());
    CHECK(dryer["neutral"].is_null());
    CHECK(dryer["traced"] == false);
    CHECK(dryer["claimed"] == true);
    const auto& half = main["rows"][2];
    CHECK(half["halves"] == nlohmann::json::parse(R"(["a"])"));
    CHECK(half["text"] == "Not traced: treat as live");
    CHECK(half["guards"].empty());
    const auto& space = main["rows"].back();
    CHECK(space["text"] == "Space");
    CHECK(space["amps"].is_null());
}

TEST_CASE("card --json beside -o: the file is written, the result is printed") {
    const Folder folder;
    CardOptions options = options_for(folder);
    options.json = true;
    options.output = folder.file("card.pdf");
    options.panels = {"SHOP"};
    const auto json = nlohmann::json::parse(run(options).out);
    CHECK(json["panels"].size() == 1);
    CHECK(fs::exists(options.output));
}

TEST_CASE("card: papers by name and the pocket by measure") {
    CHECK(paper_choice("letter")->paper == letter_paper);
    CHECK_FALSE(paper_choice("letter")->cut.has_value());
    CHECK(paper_choice("a4")->paper == a4_paper);
    CHECK(paper_choice("half-letter")->paper == half_letter_paper);
    CHECK(paper_choice("140x200.5mm")->cut == Paper{140, 200.5});
    for (const char* wrong : {"", "mm", "x", "xmm", "140x", "140x200", "nanxnanmm", "infxinfmm", "140x200cm",
                              "-140x200mm", "140x200x3mm", "9999x200mm"}) {
        INFO(wrong);
        CHECK_FALSE(paper_choice(wrong).has_value());
    }
}
