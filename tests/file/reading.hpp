// SPDX-License-Identifier: MIT
#pragma once
#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "file/read_survey.hpp"

namespace doorcard {

using Lines = std::vector<std::string>;

/// Every complaint about a text, as a line that names the file 's'; empty where it reads.
inline Lines complaints(const std::string& text) {
    const auto read = read_survey({"s", text});
    Lines lines;
    if (!read)
        for (const Complaint& complaint : read.error()) lines.push_back(complaint_line("s", complaint));
    return lines;
}

/// The survey of a text that must read.
inline Survey survey_of(const std::string& text) {
    const auto read = read_survey({"s", text});
    for (const std::string& line : complaints(text)) FAIL(line);
    return read->survey;
}

/// Below this stands a panel MAIN of 40 spaces with breaker MAIN:5, circuit c, outlet K1 and load t, in 19 lines; what
/// is added begins in line 20.
inline const std::string small_house =
    "format = 1\n[[source]]\nid = \"utility\"\n[[panel]]\nid = \"MAIN\"\nfed_by = \"utility\"\nspaces = 40\n"
    "[[breaker]]\npanel = \"MAIN\"\nspaces = [5]\n[[circuit]]\nid = \"c\"\nbreaker = \"MAIN:5\"\n"
    "[[outlet]]\nid = \"K1\"\ncircuit = \"c\"\n[[load]]\nid = \"t\"\noutlet = \"K1\"\n";

inline Lines added(const std::string& text) { return complaints(small_house + text); }

}  // namespace doorcard

template <>
struct doctest::StringMaker<doorcard::Lines> {
    static String convert(const doorcard::Lines& lines) {
        std::string all;
        for (const std::string& line : lines) all += "\n    " + line;
        return all.c_str();
    }
};
