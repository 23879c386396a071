// SPDX-License-Identifier: MIT
#include "file/save_survey.hpp"

#include <doctest/doctest.h>
#include <sys/stat.h>

#include <filesystem>

#include "base/file_lock.hpp"
#include "base/write_whole.hpp"
#include "cli/ran_program.hpp"
#include "file/journal.hpp"

using namespace doorcard;
namespace fs = std::filesystem;

namespace {

std::ptrdiff_t files_in(const fs::path& folder) {
    return std::distance(fs::directory_iterator(folder), fs::directory_iterator());
}

std::string path_in(const TemporaryFolder& folder) { return (folder / "h.toml").string(); }

}  // namespace

TEST_CASE("save: in place of what was read, and of nothing else") {
    const TemporaryFolder folder;
    write_file(path_in(folder), "old");
    save_survey(path_in(folder), "old", "new");
    CHECK(file_text(path_in(folder)) == "new");
    CHECK_THROWS_AS(save_survey(path_in(folder), "old", "newer"), NotSaved);
    CHECK(file_text(path_in(folder)) == "new");
    fs::remove(path_in(folder));
    CHECK_THROWS_AS(save_survey(path_in(folder), "new", "newer"), NotSaved);
    CHECK(files_in(folder.path()) == 0);
}

TEST_CASE("save: strays of killed saves are swept when they are old, ours and nobody's") {
    const TemporaryFolder folder;
    write_file(path_in(folder), "old");
    const auto hour_ago = fs::file_time_type::clock::now() - std::chrono::hours(1);
    for (const char* name : {".doorcard-1.new", ".doorcard-22.new", ".doorcard-x.new", ".doorcard-.new", "notes.new"}) {
        write_file(folder / name, "x");
        fs::last_write_time(folder / name, hour_ago);
    }
    write_file(folder / ".doorcard-3.new", "just written");
    save_survey(path_in(folder), "old", "new");
    CHECK_FALSE(fs::exists(folder / ".doorcard-1.new"));
    CHECK_FALSE(fs::exists(folder / ".doorcard-22.new"));
    CHECK(fs::exists(folder / ".doorcard-3.new"));
    CHECK(files_in(folder.path()) == 5);
}

TEST_CASE("save: a second lock on one file waits and is not given; it is given when the first has gone") {
    const TemporaryFolder folder;
    write_file(path_in(folder), "old");
    {
        const FileLock first(path_in(folder));
        CHECK(first.is_held());
        fs::create_symlink("h.toml", folder / "link");
        CHECK_FALSE(FileLock((folder / "link").string()).is_held());  // by another name too
        CHECK_THROWS_AS(save_survey(path_in(folder), "old", "new"), NotSaved);
    }
    CHECK(FileLock(path_in(folder)).is_held());
    CHECK(file_text(path_in(folder)) == "old");
    CHECK(files_in(folder.path()) == 2);
}

TEST_CASE("save: a new survey is none where one is") {
    const TemporaryFolder folder;
    save_new_survey(path_in(folder), "mine");
    CHECK_THROWS_AS(save_new_survey(path_in(folder), "other"), std::system_error);
    CHECK(file_text(path_in(folder)) == "mine");
}

TEST_CASE("journal: kept beside the survey, offered after a crash, gone after a save") {
    const TemporaryFolder folder;
    write_file(path_in(folder), "saved\n");
    CHECK_FALSE(left_journal(path_in(folder), "saved\n"));
    write_journal(path_in(folder), "saved\n", "edited\n");
    write_journal(path_in(folder), "saved\n", "edited again\n");
    CHECK(files_in(folder.path()) == 2);
    const auto left = left_journal(path_in(folder), "saved\n");
    REQUIRE(left);
    CHECK(left->text == "edited again\n");
    CHECK(left->is_based_on_file);
    CHECK_FALSE(left_journal(path_in(folder), "changed by somebody\n")->is_based_on_file);
    CHECK_FALSE(left_journal(path_in(folder), "edited again\n"));  // saved, then killed before it was dropped
    drop_journal(path_in(folder));
    CHECK_FALSE(left_journal(path_in(folder), "saved\n"));
}

TEST_CASE("journal: a broken one is none") {
    const TemporaryFolder folder;
    write_file(path_in(folder), "saved\n");
    write_journal(path_in(folder), "saved\n", "edited\n");
    const fs::path journal = journal_file_of(path_in(folder));
    const std::string whole = file_text(journal);
    for (std::size_t length = 0; length < whole.size(); ++length) {
        write_file(journal, whole.substr(0, length));
        CHECK_FALSE(left_journal(path_in(folder), "saved\n"));
    }
    for (const char* other : {"", "\n", "doorcard journal 1 zzzzzzzzzzzzzzzz 0 0\nx", "edited\n"}) {
        write_file(journal, other);
        CHECK_FALSE(left_journal(path_in(folder), "saved\n"));
    }
}

TEST_CASE("journal: as private as the survey") {
    const TemporaryFolder folder;
    write_file(path_in(folder), "saved\n");
    REQUIRE(::chmod(path_in(folder).c_str(), 0600) == 0);
    write_journal(path_in(folder), "saved\n", "edited\n");
    CHECK((fs::status(journal_file_of(path_in(folder))).permissions() & fs::perms::all) == fs::perms(0600));
}
