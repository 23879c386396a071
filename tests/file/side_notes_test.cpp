// SPDX-License-Identifier: MIT
#include "file/side_notes.hpp"

#include <doctest/doctest.h>

#include <filesystem>

#include "cli/ran_program.hpp"

using namespace doorcard;

namespace {

namespace fs = std::filesystem;

/// A survey in a folder of its own.
std::string survey_in(const TemporaryFolder& folder) {
    write_file(folder / "house.survey.toml", "format = 1\n");
    return (folder / "house.survey.toml").string();
}

FoundBreaker some_breaker(std::string id, int space) {
    return {std::move(id), {"M", {space}, {}}, {"kitchen", "bäth \"2\""}};
}

SideNotes all_kinds() {
    const FoundBreaker one = some_breaker("M:1", 1), two = some_breaker("M:3", 3);
    FoundBreaker half = some_breaker("M:5a", 5);
    half.place.halves = {'a'};
    return {{true,
             {PlannedMove{one, {"M", {9, 11}, {}}}, PlannedMove{half, {"M", {7}, {'b'}}}, PlannedSwap{one, two},
              PlannedRating{one, Amperes(20), Amperes(12.5)}, PlannedRating{two, std::nullopt, std::nullopt},
              PlannedTie{{one, two}}, PlannedUntie{two}, PlannedState{one, BreakerState::spare},
              PlannedState{two, BreakerState::in_use}, PlannedNeutral{"kitchen", std::nullopt, "N1"},
              PlannedNeutral{"bath", "N1", "own"}}},
            "format = 1\r\n# as it was\t\x01\n"};
}

std::string complaint(const std::string& text) {
    const auto read = read_side_notes(text);
    return read ? "read" : read.error().front().wrong;
}

std::string replaced(std::string text, std::string_view what, std::string_view by) {
    const std::size_t at = text.find(what);
    REQUIRE(at != std::string::npos);
    return text.replace(at, what.size(), by);
}

}  // namespace

TEST_CASE("side notes: what is written is read again") {
    CHECK(read_side_notes(side_notes_text(all_kinds())).value() == all_kinds());
    CHECK(read_side_notes(side_notes_text({})).value() == SideNotes());
}

TEST_CASE("side notes: cut off anywhere, nothing of it is read") {
    const std::string text = side_notes_text(all_kinds());
    for (std::size_t length = 0; length + 2 < text.size(); ++length)
        CHECK_FALSE(read_side_notes(text.substr(0, length)));
}

TEST_CASE("side notes: what somebody made of it is refused whole, with the reason") {
    const std::string text = side_notes_text(all_kinds());
    const auto begins = [](const std::string& wrong, const char* reason) {
        return wrong == std::string("the plan kept beside the survey cannot be read: ") + reason;
    };
    CHECK(begins(complaint(replaced(text, "\"doorcard_plan\": 1", "\"doorcard_plan\": 2")),
                 "it is of version 2, this doorcard knows 1"));
    CHECK(begins(complaint(replaced(text, "\"move\"", "\"lift\"")), "no change is of the kind \"lift\""));
    CHECK(begins(complaint(replaced(text, "12.5", "-12.5")), "a rating is a number of amperes above 0"));
    CHECK(begins(complaint(replaced(text, "12.5", "\"many\"")), "a rating is a number of amperes above 0"));
    CHECK(begins(complaint(replaced(text, "\"halves\": \"a\"", "\"halves\": \"c\"")), "a half of a space is a or b"));
    CHECK(begins(complaint(replaced(text, "\"halves\": \"a\"", "\"halves\": \"ab\"")),
                 "there is one half for each space"));
    const char* spaces = "a space is a whole number from 1 to 999";
    for (const char* space : {"1000", "0", "-1", "1.5", "99999999999999999999", "\"1\"", "null"})
        CHECK(begins(complaint(replaced(text, "            1\n", std::string("            ") + space + "\n")), spaces));
    for (const char* rubbish :
         {"", "[]", "null", "{}", "\xff\xfe", "{\"doorcard_plan\": 1}", "not JSON",
          "{\"doorcard_plan\": \"1\", \"as_found_locked\": true, \"changes\": [], \"snapshot\": null}",
          "{\"doorcard_plan\": 1, \"as_found_locked\": 1, \"changes\": [], \"snapshot\": null}",
          "{\"doorcard_plan\": 1, \"as_found_locked\": true, \"changes\": {}, \"snapshot\": null}",
          "{\"doorcard_plan\": 1, \"as_found_locked\": true, \"changes\": [], \"snapshot\": 7}"})
        CHECK_FALSE(read_side_notes(rubbish));
    CHECK_FALSE(read_side_notes(std::string(100'000, '[')));
}

TEST_CASE("side notes: kept beside the survey, as private, and gone when there is nothing to keep") {
    const TemporaryFolder folder;
    const std::string survey = survey_in(folder);
    CHECK(kept_side_notes(survey).value().empty());
    fs::permissions(survey, fs::perms(0600));
    keep_side_notes(survey, all_kinds());
    const std::string file = side_notes_file_of(survey);
    CHECK(file.ends_with("/.house.survey.toml.plan"));
    CHECK((fs::status(file).permissions() & fs::perms::all) == fs::perms(0600));
    CHECK(kept_side_notes(survey).value() == all_kinds());
    CHECK(file_text(survey) == "format = 1\n");
    keep_side_notes(survey, {});
    CHECK_FALSE(fs::exists(file));
    keep_side_notes(survey, all_kinds());
    drop_side_notes(survey);
    CHECK_FALSE(fs::exists(file));
}

TEST_CASE("side notes: a file that cannot be read is said, and set aside before it is written over") {
    const TemporaryFolder folder;
    const std::string survey = survey_in(folder);
    const std::string file = side_notes_file_of(survey);
    write_file(file, "{ by hand");
    CHECK_FALSE(kept_side_notes(survey));
    keep_side_notes(survey, all_kinds());
    CHECK(kept_side_notes(survey).value() == all_kinds());
    CHECK(file_text(file + ".broken") == "{ by hand");
}
