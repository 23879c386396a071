// SPDX-License-Identifier: MIT
// tests/cases: what a user types and reads, whole. DOORCARD_WRITE_CASES=1 writes what came out into the files instead:
// read the difference before you keep it.
#include <algorithm>
#include <vector>

#include "cli/case_file.hpp"
#include "cli/ran_program.hpp"

namespace {

namespace fs = std::filesystem;

const char* const survey_name = "house.survey.toml";

std::vector<fs::path> case_paths() {
    std::vector<fs::path> paths;
    for (const auto& entry : fs::directory_iterator(DOORCARD_SOURCE "/tests/cases"))
        if (entry.path().extension() == ".case") paths.push_back(entry.path());
    std::sort(paths.begin(), paths.end());
    return paths;
}

std::string with_file_named(std::string line) {
    for (std::size_t at = line.find("FILE"); at != std::string::npos; at = line.find("FILE", at))
        line.replace(at, 4, survey_name);
    return line;
}

/// The case with what its commands leave behind in place of what it expects.
CaseFile played(const CaseFile& given) {
    const TemporaryFolder folder;
    CaseFile came = given;
    if (!given.survey.empty()) write_file(folder / survey_name, given.survey);
    for (const auto& [name, body] : given.files) write_file(folder / name, body);
    for (CaseCommand& command : came.commands) {
        const Ran left = ran(folder.path(), "doorcard " + with_file_named(command.line));
        command.output = left.output;
        command.errors = left.errors;
        command.status = left.status;
    }
    for (auto& [name, body] : came.left) body = file_text(folder / name);
    return came;
}

}  // namespace

TEST_CASE("cases: what a user types and reads") {
    const auto paths = case_paths();
    CHECK(paths.size() >= 20);
    for (const fs::path& path : paths) {
        const std::string text = file_text(path);
        const CaseFile given = parse_case(text);
        const std::string came = case_text(played(given));
        if (std::getenv("DOORCARD_WRITE_CASES"))
            write_file(path, came);
        else
            CHECK_MESSAGE(came == text, path.filename().string() << "\n--- expected\n" << text << "--- came\n" << came);
    }
}

TEST_CASE("cases: each begins with a sentence, has a command, and is laid out as the writer lays it out") {
    for (const fs::path& path : case_paths()) {
        CAPTURE(path.filename().string());
        const std::string text = file_text(path);
        const CaseFile given = parse_case(text);
        CHECK(given.about.size() > 10);
        CHECK_FALSE(given.commands.empty());
        CHECK(case_text(given) == text);
    }
}

TEST_CASE("cases: in a pipe no colour, never") {
    for (const fs::path& path : case_paths()) CHECK(file_text(path).find('\033') == std::string::npos);
    const Ran piped = ran(DOORCARD_SOURCE, "doorcard check examples/alder-row.survey.toml | cat", "unset NO_COLOR");
    CHECK(piped.output.find("DANGER") != std::string::npos);
    CHECK(piped.output.find('\033') == std::string::npos);
}
