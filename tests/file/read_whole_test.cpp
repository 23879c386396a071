// SPDX-License-Identifier: MIT
#include "file/reading.hpp"

using namespace doorcard;

TEST_CASE("read: the least survey, and one that lacks its format") {
    CHECK(complaints("format = 1\n").empty());
    CHECK(complaints("[survey]\ntitle = \"x\"\n") ==
          Lines{"s:1:1: the file has no \"format\"; write format = 1 at its top"});
    CHECK(complaints("") == Lines{"s:1:1: the file has no \"format\"; write format = 1 at its top"});
}

TEST_CASE("read: another format is refused alone, with the version needed") {
    CHECK(complaints("format = 2\nnonsense = 1\n") ==
          Lines{"s:1:10: format 2 is newer than this doorcard reads; open it with a doorcard that reads format 2; this "
                "one reads format 1"});
    CHECK(complaints("format = 0\n") == Lines{"s:1:10: there is no format 0; write format = 1"});
    CHECK(complaints("format = \"1\"\n") == Lines{"s:1:10: \"format\" is text; write format = 1"});
}

TEST_CASE("read: the small house as a value") {
    const Survey survey = survey_of(small_house);
    REQUIRE(survey.breakers.size() == 1);
    CHECK(survey.breakers[0].id == "MAIN:5");
    CHECK_FALSE(survey.breakers[0].id_given);
    CHECK(survey.circuits[0].breakers == Ids{"MAIN:5"});
    CHECK(survey.outlets[0].circuits == Ids{"c"});
    CHECK(survey.loads[0].outlet == "K1");
    CHECK(survey.panels[0].fed_by == Ids{"utility"});
    CHECK(survey.panels[0].spaces == 40);
    CHECK_FALSE(survey.panels[0].bus_a);
}

TEST_CASE("read: the text comes back byte for byte") {
    const std::string text = "# a comment worth keeping\r\nformat = 1\r\n";
    CHECK(read_survey({"s", text})->text == text);
}

TEST_CASE("read: the order of the tables never matters") {
    const std::string one =
        "format = 1\n[[circuit]]\nid = \"c\"\nbreaker = \"M:1\"\n[[breaker]]\npanel = \"M\"\n"
        "spaces = [1]\n[[panel]]\nid = \"M\"\n";
    const std::string other =
        "format = 1\n[[panel]]\nid = \"M\"\n[[breaker]]\nspaces = [1]\npanel = \"M\"\n[[circuit]]\n"
        "breaker = \"M:1\"\nid = \"c\"\n";
    CHECK(survey_of(one) == survey_of(other));
}

TEST_CASE("read: a byte-order mark and CRLF are accepted, and places stay right") {
    CHECK(complaints("\xEF\xBB\xBF"
                     "format = 1\r\n[survey]\r\ntitle = \"x\"\r\n")
              .empty());
    CHECK(complaints("\xEF\xBB\xBF"
                     "format = 1\r\n[survey]\r\ntitle = 7\r\n") ==
          Lines{"s:3:9: \"title\" in [survey] is a whole number; write title = text"});
    CHECK(complaints("\xEF\xBB\xBF"
                     "format = 3\n")[0]
              .starts_with("s:1:10: format 3 is newer"));
}

TEST_CASE("read: columns count code points, and a tab is one") {
    CHECK(
        complaints("format = 1\n[survey]\n\ttitle = \"\xC3\xA9t\xC3\xA9\" # \xE2\x98\x83\n\"surv\xC3\xA9yor\" = 1\n") ==
        Lines{"s:4:1: unknown key \"surv\xC3\xA9yor\" in [survey]; did you mean \"surveyor\"?"});
    CHECK(complaints("format = 1\nround = [{ off = [], by = \"\xC3\xA9\xC3\xA9\", at = 1 }]\n") ==
          Lines{"s:2:38: \"at\" in [[round]] is a whole number; write at = date and time"});
}

TEST_CASE("read: a syntax error stands alone with its place") {
    const Lines lines = complaints("format = 1\n[survey]\ntitel = 1\ntitle = \n");
    REQUIRE(lines.size() == 1);
    CHECK(lines[0].starts_with("s:4:9: "));
    CHECK(lines[0].ends_with("; write it as TOML 1.0 has it; the rest was not read"));
}

TEST_CASE("read: a key given twice is a syntax error at the second") {
    const Lines lines = complaints("format = 1\n[survey]\ntitle = \"a\"\ntitle = \"b\"\n");
    REQUIRE(lines.size() == 1);
    CHECK(lines[0].starts_with("s:4:"));
}

TEST_CASE("read: bytes that are no text are a complaint, never a crash") {
    using namespace std::string_literals;
    for (const std::string& bytes :
         {"format = 1\n\0\n"s, "format = 1\n[survey]\ntitle = \"\xFF\"\n"s, "\xC3"s, "\0"s, "format = 1\n# \x01\n"s,
          "\xFF\xFE"
          "f\0o\0"s}) {
        const Lines lines = complaints(bytes);
        REQUIRE(lines.size() == 1);
        CHECK(lines[0].ends_with("the rest was not read"));
    }
}

TEST_CASE("read: every complaint in one run, by place, at most 50") {
    std::string text = "format = 1\n";
    for (int i = 0; i < 60; ++i) text += "[[room]]\nid = \"r" + std::to_string(i) + "\"\nx = 1\n";
    const Lines lines = complaints(text);
    REQUIRE(lines.size() == 50);
    CHECK(lines.front().starts_with("s:4:1: "));
    CHECK(lines.back().starts_with("s:151:1: "));
    CHECK(
        added("[[room]]\nfloor = 2\n[survey]\ntitle = 1\n") ==
        Lines{"s:20:1: [[room]] has no \"id\"; add id = ... (text of 1 to 64 printable characters, no \"/\", quote or "
              "control "
              "character, no space at either end)",
              "s:21:9: \"floor\" in [[room]] is a whole number; write floor = text",
              "s:23:9: \"title\" in [survey] is a whole number; write title = text"});
}

TEST_CASE("read: thousands of complaints keep the first 50, whatever the order of the tables") {
    std::string text = "format = 1\n";
    for (int i = 0; i < 3000; ++i) text += "[[waveform]]\n[[accepted]]\nx = 1\n";
    const Lines lines = complaints(text);
    REQUIRE(lines.size() == 50);
    CHECK(lines[0].starts_with("s:2:1: [[waveform]] has no \"file\""));
    CHECK(lines[1].starts_with("s:4:1: unknown key \"x\" in [[accepted]]"));
    CHECK(lines[49].starts_with("s:76:1: "));
}
