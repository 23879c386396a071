// SPDX-License-Identifier: MIT
// docs/commands.md: its command lines run, and it names what --help names.
#include <doctest/doctest.h>

#include <map>
#include <regex>
#include <set>
#include <sstream>
#include <vector>

#include "cli/ran_program.hpp"

namespace {

namespace fs = std::filesystem;

const std::string document = file_text(DOORCARD_SOURCE "/docs/commands.md");

/// A folder that looks like the project's top to a command line, so that nothing is written there.
void copy_examples(const TemporaryFolder& folder) {
    fs::copy(DOORCARD_SOURCE "/examples", folder / "examples", fs::copy_options::recursive);
}

/// Lines of the boxes marked as runnable, box by box.
std::vector<std::vector<std::string>> runnable_boxes() {
    std::vector<std::vector<std::string>> boxes;
    std::istringstream lines(document);
    bool inside = false;
    for (std::string line; std::getline(lines, line);) {
        if (line == "```sh run") {
            boxes.emplace_back();
            inside = true;
        } else if (line == "```") {
            inside = false;
        } else if (inside) {
            boxes.back().push_back(line);
        }
    }
    return boxes;
}

/// What a line says it exits with: "# exit 4: ..."; 0 where it says nothing.
int said_status(const std::string& line) {
    static const std::regex remark("# exit ([0-9])");
    std::smatch found;
    return std::regex_search(line, found, remark) ? std::stoi(found[1]) : 0;
}

std::set<std::string> options_in(const std::string& text) {
    static const std::regex option("--[a-z][a-z-]*");
    return {std::sregex_token_iterator(text.begin(), text.end(), option), std::sregex_token_iterator()};
}

/// From "## NAME" to the next heading of that rank.
std::string section(const std::string& name) {
    const auto begin = document.find("\n## " + name + "\n");
    if (begin == std::string::npos) return "";
    return document.substr(begin, document.find("\n## ", begin + 1) - begin);
}

std::string help(const std::string& command) { return ran(DOORCARD_SOURCE, "doorcard " + command + " --help").output; }

/// The names under "Subcommands:".
std::vector<std::string> commands() {
    std::vector<std::string> names;
    std::istringstream lines(help(""));
    bool listed = false;
    for (std::string line; std::getline(lines, line);) {
        if (line.starts_with("Subcommands:"))
            listed = true;
        else if (listed && line.starts_with("  "))
            names.push_back(line.substr(2, line.find(' ', 2) - 2));
        else
            listed = false;
    }
    return names;
}

}  // namespace

TEST_CASE("commands: every line in a runnable box ends as it says") {
    std::size_t run = 0;
    for (const auto& box : runnable_boxes()) {
        const TemporaryFolder folder;
        copy_examples(folder);
        for (const std::string& line : box) {
            CAPTURE(line);
            const Ran left = ran(folder.path(), line);
            CHECK_MESSAGE(left.status == said_status(line), left.errors);
            ++run;
        }
    }
    CHECK(run >= 10);
}

TEST_CASE("commands: there is a section for each that is built, and for none that is not") {
    const auto built = commands();
    CHECK(built.size() >= 3);
    for (const std::string& name : built) CHECK_MESSAGE(!section(name).empty(), name);
    static const std::regex heading("\n## ([a-z]+)\n");
    for (std::sregex_iterator at(document.begin(), document.end(), heading), end; at != end; ++at)
        CHECK_MESSAGE(std::find(built.begin(), built.end(), (*at)[1]) != built.end(), (*at)[1].str());
}

TEST_CASE("commands: the document names the options that --help names, and no others") {
    const std::set<std::string> common = options_in(section("For every command"));
    for (const std::string& name : commands()) {
        CAPTURE(name);
        for (const std::string& option : options_in(help(name)))
            CHECK_MESSAGE((common.contains(option) || section(name).find("`" + option) != std::string::npos), option);
        const std::set<std::string> offered = options_in(help(name) + help(""));
        for (const std::string& option : options_in(section(name))) CHECK_MESSAGE(offered.contains(option), option);
    }
}

TEST_CASE("commands: --help shows an example, and the example works") {
    for (const std::string& name : commands()) {
        CAPTURE(name);
        const std::string text = help(name);
        const std::string mark = "Example: ";
        const auto at = text.find(mark + "doorcard " + name);
        REQUIRE(at != std::string::npos);
        const TemporaryFolder folder;
        copy_examples(folder);
        const std::string line = text.substr(at + mark.size(), text.find('\n', at) - at - mark.size());
        CHECK(ran(folder.path(), line).status <= 1);
    }
}

TEST_CASE("commands: its example of an error is what the program says") {
    const TemporaryFolder folder;
    write_file(folder / "house.survey.toml", "format = 1\n[survey]\ntitel = \"Alder Row 9\"\n");
    const std::string errors = ran(folder.path(), "doorcard check house.survey.toml").errors;
    CHECK_FALSE(errors.empty());
    CHECK(document.find("```\n" + errors + "```\n") != std::string::npos);
}

TEST_CASE("commands: it names the schemas, and they are there") {
    for (const std::string& name : commands()) {
        const std::string schema = "docs/schemas/" + name + ".schema.json";
        CHECK_MESSAGE(section(name).find(schema) != std::string::npos, schema);
        CHECK(fs::exists(std::string(DOORCARD_SOURCE) + "/" + schema));
    }
}

TEST_CASE("commands: the man page has a section for each, with the options that --help names, and no others") {
    const std::string page =
        std::regex_replace(file_text(DOORCARD_SOURCE "/docs/man/doorcard.1"), std::regex(R"(\\-)"), "-");
    const auto part = [&](const std::string& heading) {
        const auto begin = page.find(heading);
        return begin == std::string::npos ? "" : page.substr(begin, page.find("\n.S", begin + 1) - begin);
    };
    std::set<std::string> named = options_in(part("\n.SH OPTIONS")), offered;
    for (const std::string& name : commands()) {
        CAPTURE(name);
        const std::string own = part("\n.SS \"doorcard " + name + " ");
        CHECK_FALSE(own.empty());
        for (const std::string& option : options_in(help(name) + help("")))
            CHECK_MESSAGE((options_in(own).contains(option) || named.contains(option)), option);
        offered.merge(options_in(help(name) + help("")));
        for (const std::string& option : options_in(own)) CHECK_MESSAGE(offered.contains(option), option);
    }
    for (const std::string& option : options_in(page)) CHECK_MESSAGE(offered.contains(option), option);
}
