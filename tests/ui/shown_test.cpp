// SPDX-License-Identifier: MIT
#include "ui/shown.hpp"

#include <doctest/doctest.h>

#include <filesystem>
#include <fstream>

using namespace doorcard;

namespace {

const Words english = Words::in("en");

Shown shown_of(const std::string& text, const std::string& name = "cellar.survey.toml") {
    const auto folder = std::filesystem::path(DOORCARD_BIN).parent_path() / "shown";
    std::filesystem::create_directories(folder);
    std::ofstream(folder / name, std::ios::binary) << text;
    return shown_from((folder / name).string(), english);
}

const std::string cellar = R"(format = 1
[survey]
title = "Nine steps down"
[[panel]]
id = "MAIN"
spaces = 8
[[breaker]]
panel = "MAIN"
spaces = [1]
amps = 20
[[circuit]]
id = "bench"
breaker = "MAIN:1"
purpose = "Workbench"
)";

}  // namespace

TEST_CASE("window: a survey is shown as the pages of its card and as text") {
    const Shown shown = shown_of(cellar);
    CHECK(shown.complaints.empty());
    CHECK(shown.title == "Nine steps down");
    CHECK(shown.card.pages.size() == 1);
    CHECK(shown.text.find("Workbench") != std::string::npos);
}

TEST_CASE("window: a survey without a title is named by its file") {
    CHECK(shown_of("format = 1\n").title == "cellar.survey.toml");
}

TEST_CASE("window: a survey without a panel is no mistake, and shows no page") {
    const Shown shown = shown_of("format = 1\n");
    CHECK(shown.complaints.empty());
    CHECK(shown.card.pages.empty());
}

TEST_CASE("window: a bad file shows every complaint with its place, and no card") {
    const Shown shown = shown_of(cellar + "colour = \"red\"\n[[panel]]\nspacs = 4\n", "bad.survey.toml");
    REQUIRE(shown.complaints.size() >= 2);
    CHECK(shown.complaints.front().starts_with("bad.survey.toml:15:1: "));
    CHECK(shown.card.pages.empty());
    CHECK(shown.title == "bad.survey.toml");
}

TEST_CASE("window: a file that is not there is a complaint") {
    const Shown shown = shown_from("/nowhere/at-all.survey.toml", Words::in("es"));
    CHECK(shown.complaints == std::vector<std::string>{"no se puede leer; dé la ruta de un archivo de levantamiento"});
    CHECK(shown.title == "at-all.survey.toml");
}

TEST_CASE("window: an edition that no rule book has is a complaint") {
    CHECK(shown_of("format = 1\n[survey]\nrules = \"NEC-1923\"\n").complaints.size() == 1);
}
