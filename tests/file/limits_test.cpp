// SPDX-License-Identifier: MIT
#include <chrono>

#include "file/key_scan.hpp"
#include "file/reading.hpp"

using namespace doorcard;

namespace {

std::string repeated(const std::string& part, int times) {
    std::string all;
    for (int i = 0; i < times; ++i) all += part;
    return all;
}

}  // namespace

TEST_CASE("limits: more than 64 dots in a key are refused before parsing") {
    CHECK(complaints("format = 1\n" + repeated("a.", 65) + "a = 1\n") ==
          Lines{"s:2:130: a key with more than 64 dots; no key of a survey has more than one or two"});
    CHECK(complaints("format = 1\n[" + repeated("a.", 100'000) + "a]\n").size() == 1);
    CHECK(complaints("format = 1\nx = { " + repeated("\"\xC3\xA4\" . ", 65) + "a = 1 }\n") ==
          Lines{"s:2:395: a key with more than 64 dots; no key of a survey has more than one or two"});
    CHECK(complaints("format = 1\n" + repeated("a.", 64) + "a = 1\n") ==
          Lines{"s:2:1: unknown key \"a\" in the survey file; the nearest known table is [[load]]"});
}

TEST_CASE("limits: dots in texts and comments are nobody's keys") {
    const std::string dots(200, '.');
    CHECK_FALSE(refused_before_parsing("a = \"" + dots + "\" # " + dots + "\nb = '" + dots + "'\n"));
    CHECK_FALSE(refused_before_parsing("a = \"\"\"\n\\\"\"" + dots + "\n\"\"\"\nb = '''\n'" + dots + "'''\n"));
    CHECK_FALSE(refused_before_parsing("a = \"\\\"" + dots + "\"\n"));
    CHECK_FALSE(refused_before_parsing("a = [\n" + repeated("1.5,\n", 100) + "]\n"));
    CHECK(refused_before_parsing("a = \"\"\"x\"\"\"\n" + repeated("a.", 70) + " = 1\n"));
    CHECK(refused_before_parsing("a = \"not closed\n" + repeated("a.", 70) + " = 1\n"));
}

TEST_CASE("limits: nesting is refused before it can hurt") {
    CHECK(complaints("format = 1\nx = " + std::string(100'000, '[')) ==
          Lines{"s:2:69: brackets nested more than 64 deep; nothing in a survey nests deeper than 3"});
    CHECK(complaints("format = 1\nx = " + repeated("{ a = ", 100'000)).size() == 1);
    CHECK_FALSE(refused_before_parsing(repeated("a = [{}]\n", 1000)));
}

TEST_CASE("limits: keys of 64 dots in 64 braces are still parsed") {
    std::string text = "format = 1\nx = ";
    for (int i = 0; i < 60; ++i) text += "{ " + repeated("a.", 64) + "a = ";
    text += "1" + std::string(60, '}') + "\n";
    CHECK(complaints(text) ==
          Lines{"s:2:1: unknown key \"x\" in the survey file; the nearest known table is [[room]]"});
}

TEST_CASE("limits: millions of values, or more than a million entries, are refused") {
    const std::string list = "format = 1\nx = [" + repeated("1,", most_values - 3) + "1";
    CHECK_FALSE(refused_before_parsing(list + "]\n"));
    CHECK(refused_before_parsing(list + ",]\n")->wrong == "more than 8000000 values and lists");
    CHECK(
        complaints("format = 1\nroom = [" + repeated("{},", 1'000'001) + "]\n") ==
        Lines{"s:2:1: the file has more than a million entries; a survey has some hundreds to some hundred thousands"});
}

TEST_CASE("limits: a file over 64 MiB is refused, one of 64 MiB is read") {
    std::string text = "format = 1\n";
    text.resize(most_bytes, '\n');
    CHECK(complaints(text).empty());
    text += '\n';
    CHECK(complaints(text) ==
          Lines{"s:1:1: the file is larger than 64 MiB; a survey is a text of some kilobytes to megabytes"});
}

TEST_CASE("limits: a long list, a long chain and a long circle take no longer than their length") {
    std::string list, chain = "[[outlet]]\nid = \"0\"\nupstream = \"20000\"\n";
    for (int i = 1; i <= 20'000; ++i) {
        list += "\"K1\",";
        chain += "[[outlet]]\nid = \"" + std::to_string(i) + "\"\nupstream = \"" + std::to_string(i - 1) + "\"\n";
    }
    const auto began = std::chrono::steady_clock::now();
    CHECK(added("[[round]]\noff = []\nstayed_on = [" + list + "]\n").size() == 50);
    CHECK(added(chain).size() == 1);
    CHECK(std::chrono::steady_clock::now() - began < std::chrono::seconds(20));
}
