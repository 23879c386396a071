// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <fstream>
#include <iterator>
#include <regex>

#include "file/keys.hpp"
#include "file/reading.hpp"

using namespace doorcard;

namespace {

std::string page() {
    std::ifstream file(DOORCARD_SOURCE "/docs/survey-file.md", std::ios::binary);
    return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

/// What stands under a heading, up to the next of its rank or above; empty where there is none.
std::string section(const std::string& text, const std::string& heading) {
    const std::size_t begin = text.find("\n" + heading + "\n");
    if (begin == std::string::npos) return {};
    const std::string rank = heading.substr(0, heading.find(' '));
    std::size_t end = std::string::npos;
    for (std::string next = rank; next.size() >= 2; next.pop_back())
        end = std::min(end, text.find("\n" + next + " ", begin + 1));
    return text.substr(begin, end - begin);
}

/// The rows of its table that a list of keys asks for and a section lacks, or has and the list does not.
Lines lacking(const std::string& section, FieldList keys) {
    Lines lines;
    for (const Field& field : keys) {
        const std::string row = fmt::format("| `{}` | {} | {}{} |", field.name, type_words(field),
                                            field.is_required ? "**required**; " : "", field.meaning);
        if (section.find("\n" + row + "\n") == std::string::npos) lines.push_back(row);
    }
    return lines;
}

std::ptrdiff_t rows_of(const std::string& section) {
    const std::string own = section.substr(0, section.find("\n### ", 1));
    const std::regex row("\n\\| `");
    return std::distance(std::sregex_iterator(own.begin(), own.end(), row), std::sregex_iterator());
}

void check_section(const std::string& text, const std::string& heading, FieldList keys) {
    const std::string found = section(text, heading);
    CAPTURE(heading);
    CHECK_FALSE(found.empty());
    CHECK(lacking(found, keys) == Lines{});
    CHECK(rows_of(found) == static_cast<std::ptrdiff_t>(keys.size()));
    for (const Field& field : keys)
        if (field.form == Form::table) check_section(found, fmt::format("### `{}`", field.name), field.keys);
}

}  // namespace

TEST_CASE("page of the survey file: every table and key with its type and meaning, and no other") {
    const std::string text = page();
    for (const KeyTable& table : all_tables()) check_section(text, fmt::format("## `{}`", table.header()), table.keys);
    check_section(text, "### `columns`", recording_column_keys());
}

TEST_CASE("page of the survey file: a key that is not on it would be missed") {
    constexpr Field keys[] = {text<&Room::title>("titel", "what it is called in print")};
    CHECK(lacking(section(page(), "## `[[room]]`"), keys).size() == 1);
    CHECK(section(page(), "## `[[cellar]]`").empty());
}

TEST_CASE("page of the survey file: its examples, one after the other, are a survey that reads") {
    const std::string text = page();
    const std::regex block("```toml\n([^`]*)```");
    std::string survey;
    for (auto at = std::sregex_iterator(text.begin(), text.end(), block); at != std::sregex_iterator(); ++at)
        survey += (*at)[1].str() + "\n";
    CHECK(complaints(survey) == Lines{});
    CHECK(survey_of(survey).trials.size() == 1);
    for (const KeyTable& table : all_tables()) {
        CAPTURE(table.name);
        const bool shown = survey.find("[" + std::string(table.name) + "]") != std::string::npos;
        CHECK(shown);
    }
}
