// SPDX-License-Identifier: MIT
#include "ui/opening.hpp"

#include <doctest/doctest.h>
#include <unistd.h>

#include "disk.hpp"

using namespace doorcard;

namespace {

Action opened(const std::string& folder, const std::string& text) {
    put(folder + "/cellar.survey.toml", text);
    return opened_from(folder + "/cellar.survey.toml");
}

std::vector<Complaint> complaints_of(const Action& action) {
    const auto* refused = std::get_if<NotOpened>(&action);
    return refused ? refused->complaints : std::vector<Complaint>();
}

}  // namespace

TEST_CASE("open: a survey comes with its bytes, what they say and the rules of today") {
    const Action action = opened(own_folder("open"), cellar);
    const auto* file = std::get_if<Opened>(&action);
    REQUIRE(file);
    CHECK(file->text == cellar);
    CHECK(file->survey.heading.title == "Nine steps down");
    CHECK(file->survey.circuits.find("bench")->purpose == "Workbench");
    CHECK(file->book->edition() == "NEC-2023");
    CHECK_FALSE(file->left);
}

TEST_CASE("open: a bad file is refused with every complaint, each with its place") {
    const auto complaints =
        complaints_of(opened(own_folder("bad"), cellar + "colour = \"red\"\n[[panel]]\nspacs = 4\n"));
    REQUIRE(complaints.size() >= 2);
    CHECK(complaints.front().wrong.starts_with("cellar.survey.toml:15:1: "));
}

TEST_CASE("open: a file that is not there is refused, by its path") {
    const Action action = opened_from("/nowhere/at-all.survey.toml");
    REQUIRE(std::holds_alternative<NotOpened>(action));
    CHECK(std::get<NotOpened>(action).path == "/nowhere/at-all.survey.toml");
    CHECK(std::get<NotOpened>(action).complaints.size() == 1);
}

TEST_CASE("open: rules that nobody has written are refused, and those there are named") {
    const auto complaints = complaints_of(opened(own_folder("rules"), "format = 1\n[survey]\nrules = \"NEC-1923\"\n"));
    REQUIRE(complaints.size() == 1);
    CHECK(complaints.front().right.find("NEC-2020") != std::string::npos);
}

TEST_CASE("open: the edition that the survey names is the one that judges it") {
    const Action action = opened(own_folder("edition"), "format = 1\n[survey]\nrules = \"NEC-2020\"\n");
    REQUIRE(std::holds_alternative<Opened>(action));
    CHECK(std::get<Opened>(action).book->edition() == "NEC-2020");
}

TEST_CASE("open: local rules that are missing, or wrong, are refused by their own file's name") {
    const std::string folder = own_folder("local"), survey = "format = 1\n[survey]\nlocal_rules = \"town.toml\"\n";
    auto complaints = complaints_of(opened(folder, survey));
    REQUIRE(complaints.size() == 1);
    CHECK(complaints.front().wrong.starts_with("town.toml:"));
    put(folder + "/town.toml", "nonsense = [\n");
    complaints = complaints_of(opened(folder, survey));
    REQUIRE_FALSE(complaints.empty());
    CHECK(complaints.front().wrong.starts_with("town.toml:"));
}

TEST_CASE("open: what a crash left is found, and whether the file is still the one it belongs to") {
    const std::string folder = own_folder("left"), path = folder + "/cellar.survey.toml";
    put(path, cellar);
    write_journal(path, cellar, cellar + "\n# more\n");
    Action action = opened_from(path);
    REQUIRE(std::get<Opened>(action).left);
    CHECK(std::get<Opened>(action).left->text == cellar + "\n# more\n");
    CHECK(std::get<Opened>(action).left->is_based_on_file);
    put(path, cellar + "# theirs\n");
    action = opened_from(path);
    REQUIRE(std::get<Opened>(action).left);
    CHECK_FALSE(std::get<Opened>(action).left->is_based_on_file);
}

TEST_CASE("start: surveys without a file are offered once their program has gone, and not before") {
    const std::string folder = own_folder("unnamed");
    constexpr long never_a_process = 4194305;  // one above the most that a Linux kernel gives out (proc(5), pid_max)
    CHECK(left_unnamed(folder).empty());
    const std::string gone = unnamed_path(folder, never_a_process), mine = unnamed_path(folder, ::getpid());
    write_journal(mine, "", cellar);
    CHECK(left_unnamed(folder).empty());
    write_journal(gone, "", cellar);
    CHECK(left_unnamed(folder) == std::vector{gone});
    put(folder + "/.other.survey.toml.journal", "");
    CHECK(left_unnamed(folder) == std::vector{gone});
}

TEST_CASE("start: without a folder of its own nothing is left") { CHECK(left_unnamed("/nowhere/at-all").empty()); }
