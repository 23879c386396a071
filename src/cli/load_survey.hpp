// SPDX-License-Identifier: MIT
#pragma once
#include <iosfwd>
#include <optional>
#include <string>
#include <vector>

#include "base/words.hpp"
#include "file/read_survey.hpp"
#include "rules/book.hpp"

namespace doorcard {

/// Exit statuses of every command (docs/commands.md).
enum ExitStatus { exit_done = 0, exit_found = 1, exit_usage = 2, exit_input = 3, exit_output = 4 };

/// The rule book where a survey names none.
constexpr const char* usual_edition = "NEC-2023";

/// A survey that was read, and the rule book that it asks for, local rules laid over it.
struct LoadedSurvey {
    Survey survey;
    RuleBook book;
};

/// Reads FILE. Where that fails, writes every complaint to `err` and returns nothing: exit 3.
std::optional<ReadSurvey> load_text(const std::string& file, std::ostream& err);
/// True where these local rules can be laid over the book of an edition; else says why not.
bool rules_hold(const std::vector<std::string>& rules, const std::string& edition, std::ostream& err);
/// Reads FILE, its rule book, its local rules and over them those of `--rules`, in the order given. Where any of it
/// fails, writes every complaint to `err` and returns nothing: exit 3.
std::optional<LoadedSurvey> load_survey(const std::string& file, std::ostream& err, const Words&,
                                        const std::vector<std::string>& rules = {});

}  // namespace doorcard
