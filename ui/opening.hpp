// SPDX-License-Identifier: MIT
#pragma once
#include <string>

#include "desk/actions.hpp"

namespace doorcard {

/// Reads a survey file, the local rules that it names and what a crash left of it: Opened, or NotOpened with every
/// complaint, each with its file and place. No wx in it, so that tests can ask it without a screen.
Action opened_from(const std::string& path);

/// The rules that a survey names; complaints name the file they are about.
Outcome<std::shared_ptr<const RuleBook>> rules_of(const std::string& survey_path, const std::string& edition,
                                                  const std::string& local_rules);

/// Where the journal of a survey that has no file yet is kept, by process: `FOLDER/unnamed-PID.survey.toml`.
std::string unnamed_path(const std::string& state_folder, long process);
/// Those that crashed programs left there.
std::vector<std::string> left_unnamed(const std::string& state_folder);

}  // namespace doorcard
