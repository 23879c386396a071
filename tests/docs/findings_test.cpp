// SPDX-License-Identifier: MIT
// docs/findings.md against the rules: every rule of the list has its section there, in that order, and nothing else
// has.
#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <regex>
#include <set>

#include "assess/rule_list.hpp"
#include "rules/book.hpp"

using namespace doorcard;

namespace {

const std::string top = DOORCARD_SOURCE;

std::string text_of(const std::filesystem::path& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

/// All texts of a folder whose names end so.
std::string texts_of(const std::string& folder, const std::string& ending) {
    std::string all;
    for (const auto& entry : std::filesystem::directory_iterator(top + "/" + folder))
        if (entry.path().filename().string().ends_with(ending)) all += text_of(entry.path());
    return all;
}

const std::string& document() {
    static const std::string text = text_of(top + "/docs/findings.md");
    return text;
}

std::vector<std::string> rule_names() {
    std::vector<std::string> names;
    for (const RuleEntry& entry : rule_list()) names.emplace_back(entry.name);
    return names;
}

bool is_rule(const std::string& name) {
    const auto names = rule_names();
    return std::ranges::find(names, name) != names.end();
}

/// What the first group of a pattern matches, in order.
std::vector<std::string> matches(const std::string& text, const std::string& pattern) {
    const std::regex expression(pattern);
    std::vector<std::string> found;
    for (std::sregex_iterator at(text.begin(), text.end(), expression), end; at != end; ++at)
        found.push_back((*at)[1].str());
    return found;
}

/// The text of each section, by the rule of its heading.
std::map<std::string, std::string> sections() {
    std::map<std::string, std::string> found;
    for (std::size_t at = document().find("\n### "); at != std::string::npos;) {
        const std::size_t line = document().find('\n', at + 5);
        const std::size_t next = document().find("\n##", line);
        found[document().substr(at + 5, line - at - 5)] = document().substr(line, next - line);
        at = document().find("\n### ", line);
    }
    return found;
}

/// Keys of rules as the sources raise them: the first text in a call that begins a finding.
std::set<std::string> raised() {
    const auto found = matches(texts_of("src/assess", ".cpp"),
                               R"re((?:_finding|gap|\badd)\(\s*(?:all, )?"([a-z0-9]+(?:-[a-z0-9]+)+)")re");
    return {found.begin(), found.end()};
}

}  // namespace

TEST_CASE("findings: every rule has its section, in the order of the list, and no other has") {
    CHECK(matches(document(), "\n### ([^\n]+)") == rule_names());
}

TEST_CASE("findings: a name in code is a rule, or a figure of the rule book") {
    const RuleBook book = *built_in_book("NEC-2023");
    for (const std::string& name : matches(document(), "`([a-z0-9]+(?:-[a-z0-9]+)+)`"))
        CHECK_MESSAGE((is_rule(name) || book.has(name)), name);
}

TEST_CASE("findings: every section says all there is to say") {
    for (const auto& [rule, text] : sections())
        for (const char* part : {"**Fires when**", "**Example.**", "**Signal word.**", "**Basis and source.**",
                                 "**Silent**", "**Remedy.**"})
            CHECK_MESSAGE(text.find(part) != std::string::npos, rule << " lacks " << part);
}

TEST_CASE("findings: every section gives the signal word that its rule has at its worst") {
    const auto all = sections();
    for (const RuleEntry& entry : rule_list()) {
        const auto section = all.find(entry.name);
        REQUIRE_MESSAGE(section != all.end(), std::string(entry.name));
        const auto words = matches(section->second, R"(\*\*Signal word\.\*\* (\w+))");
        REQUIRE(words.size() == 1);
        std::string word = words.front();
        word.front() = static_cast<char>(std::tolower(static_cast<unsigned char>(word.front())));
        CHECK_MESSAGE(word == name_of(entry.worst), std::string(entry.name));
    }
}

TEST_CASE("findings: what the sources raise is what the list has") {
    const auto names = rule_names();
    CHECK(raised() == std::set<std::string>(names.begin(), names.end()));
}

TEST_CASE("findings: every rule is named by a test of the assessment") {
    const std::string tests = texts_of("tests/assess", "_test.cpp");
    for (const std::string& name : rule_names()) CHECK_MESSAGE(tests.find('"' + name + '"') != std::string::npos, name);
}
