// SPDX-License-Identifier: MIT
#include "cli/case_file.hpp"

#include <doctest/doctest.h>

#include <sstream>

namespace {

const std::string mark = "=== ";

/// Where the lines after a section's head belong.
std::string* begin_section(CaseFile& found, const std::string& head) {
    const auto colon = head.find(": ");
    const std::string kind = head.substr(0, colon);
    const std::string rest = colon == std::string::npos ? "" : head.substr(colon + 2);
    if (kind == "survey") return &found.survey;
    if (kind == "file") return &found.files.emplace_back(rest, "").second;
    if (kind == "left") return &found.left.emplace_back(rest, "").second;
    if (kind == "command") {
        found.commands.push_back({rest, "", "", 0});
        return nullptr;
    }
    REQUIRE_MESSAGE(!found.commands.empty(), "no command before: " << head);
    CaseCommand& command = found.commands.back();
    if (kind == "output") return &command.output;
    if (kind == "errors") return &command.errors;
    REQUIRE_MESSAGE(kind == "status", "no section: " << head);
    command.status = std::stoi(rest);
    return nullptr;
}

void add_section(std::string& text, const std::string& head, const std::string& body) {
    text += mark + head + "\n" + body;
}

}  // namespace

CaseFile parse_case(const std::string& text) {
    CaseFile found;
    std::string* into = &found.about;
    std::istringstream lines(text);
    for (std::string line; std::getline(lines, line);) {
        if (line.starts_with(mark))
            into = begin_section(found, line.substr(mark.size()));
        else if (into)
            *into += line + "\n";
        else
            FAIL("a line that belongs to no section: " << line);
    }
    return found;
}

std::string case_text(const CaseFile& given) {
    std::string text = given.about;
    if (!given.survey.empty()) add_section(text, "survey", given.survey);
    for (const auto& [name, body] : given.files) add_section(text, "file: " + name, body);
    for (const CaseCommand& command : given.commands) {
        add_section(text, "command: " + command.line, "");
        if (!command.output.empty()) add_section(text, "output", command.output);
        if (!command.errors.empty()) add_section(text, "errors", command.errors);
        if (command.status != 0) add_section(text, "status: " + std::to_string(command.status), "");
    }
    for (const auto& [name, body] : given.left) add_section(text, "left: " + name, body);
    return text;
}
