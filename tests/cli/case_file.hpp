// SPDX-License-Identifier: MIT
#pragma once
#include <map>
#include <string>
#include <vector>

/// One command of a case, and what it is to print.
struct CaseCommand {
    std::string line;  ///< what follows `doorcard`; FILE stands for the survey's name
    std::string output, errors;
    int status = 0;
};

/// A case: a literal survey, commands, and whole outputs. Laid out as sections, each begun by a line of its own:
///     a sentence or two of what is shown
///     === survey
///     === file: NAME       a further file, before the first command
///     === command: check FILE
///     === output           absent: nothing
///     === errors           absent: nothing
///     === status: 3        absent: 0
///     === left: NAME       a file after the last command, whole
struct CaseFile {
    std::string about, survey;
    std::vector<std::pair<std::string, std::string>> files, left;
    std::vector<CaseCommand> commands;
};

/// Fails the test on a section that is none.
CaseFile parse_case(const std::string& text);
std::string case_text(const CaseFile&);
