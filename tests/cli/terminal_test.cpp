// SPDX-License-Identifier: MIT
// check on a terminal: a pseudo-terminal made by `script`. Colour is never the only sign.
#include "cli/terminal.hpp"

#include <regex>
#include <sstream>

#include "cli/ran_program.hpp"
#include "cli/text_table.hpp"

using namespace doorcard;

namespace {

/// What check of the example writes to a terminal of so many columns.
std::string on_terminal(int columns, const std::string& before) {
    const std::string inner = "stty cols " + std::to_string(columns) + " rows 40; " + before +
                              " doorcard check examples/alder-row.survey.toml";
    std::string text = ran(DOORCARD_SOURCE, "script -qec '" + inner + "' /dev/null", "unset NO_COLOR").output;
    std::erase(text, '\r');
    return text;
}

std::string without_colour(const std::string& text) {
    static const std::regex code("\033\\[[0-9;]*m");
    return std::regex_replace(text, code, "");
}

int longest_line(const std::string& text) {
    int longest = 0;
    std::istringstream lines(text);
    for (std::string line; std::getline(lines, line);) longest = std::max(longest, width_of(line));
    return longest;
}

std::string table_text(const TextTable& table, int columns) {
    std::ostringstream out;
    table.write(out, Terminal{columns, false});
    return out.str();
}

TextTable two_circuits() {
    TextTable table({{"no.", TextTable::Kind::figure, 0},
                     {"circuit", TextTable::Kind::text, 0},
                     {"VA", TextTable::Kind::figure, 2},
                     {"of A", TextTable::Kind::figure, 1}});
    table.add({"5", "Kitchen counter, east wall", "1,500", "62 %"});
    table.add({"10+12", "Dryer", "-", "-"});
    return table;
}

}  // namespace

TEST_CASE("terminal: signal words are coloured, and still written; the rest is that of a pipe") {
    const std::string coloured = on_terminal(80, "");
    CHECK(coloured.find("\033[1;97;41mDANGER\033[0m") != std::string::npos);
    CHECK(coloured.find("\033[97;44mNOTICE\033[0m") != std::string::npos);
    const Ran piped = ran(DOORCARD_SOURCE, "doorcard check examples/alder-row.survey.toml");
    CHECK(without_colour(coloured) == piped.output);
}

TEST_CASE("terminal: NO_COLOR is heeded") {
    const std::string plain = on_terminal(80, "NO_COLOR=1");
    CHECK(plain.find("DANGER") != std::string::npos);
    CHECK(plain.find('\033') == std::string::npos);
}

TEST_CASE("terminal: no line is longer than the terminal is wide") {
    for (const int columns : {50, 80, 120}) {
        CAPTURE(columns);
        CHECK(longest_line(without_colour(on_terminal(columns, ""))) <= columns);
    }
}

TEST_CASE("terminal: the table of the example fits 80 columns in Spanish too") {
    CHECK(longest_line(ran(DOORCARD_SOURCE, "doorcard --language es check examples/alder-row.survey.toml").output) <=
          80);
}

TEST_CASE("text: widths are counted in code points; wrapping keeps a number with its unit") {
    CHECK(width_of("Küche") == 5);
    CHECK(padded("ü", 3) == "ü  ");
    CHECK(padded_left("ü", 3) == "  ü");
    CHECK(clipped("Küchenlicht", 6) == "Küche…");
    CHECK(clipped("Küche", 5) == "Küche");
    CHECK(wrapped("80 % of 20 A is 16 A", 18) == std::vector<std::string>{"80 % of 20 A is", "16 A"});
    CHECK(wrapped("", 10) == std::vector<std::string>{""});
}

TEST_CASE("text: pieces stay whole and apart") {
    CHECK(flowed({"Alder Row 9", "main 200 A", "2026"}, 3, 24) ==
          std::vector<std::string>{"Alder Row 9   main 200 A", "2026"});
}

TEST_CASE("table: columns as wide as their contents, two blanks apart, figures at the right") {
    CHECK(table_text(two_circuits(), 80) ==
          "   no.  circuit                        VA  of A\n"
          "     5  Kitchen counter, east wall  1,500  62 %\n"
          " 10+12  Dryer                           -     -\n");
}

TEST_CASE("table: where it is narrow the text wraps, then the least needed columns go") {
    CHECK(table_text(two_circuits(), 40) ==
          "   no.  circuit                 VA  of A\n"
          "     5  Kitchen counter,     1,500  62 %\n"
          "        east wall\n"
          " 10+12  Dryer                    -     -\n");
    CHECK(table_text(two_circuits(), 32) ==
          "   no.  circuit             of A\n"
          "     5  Kitchen counter,    62 %\n"
          "        east wall\n"
          " 10+12  Dryer                  -\n");
}
