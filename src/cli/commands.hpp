// SPDX-License-Identifier: MIT
#pragma once
#include <functional>
#include <iosfwd>
#include <memory>
#include <string>
#include <vector>

#include "base/words.hpp"

namespace CLI {
class App;
}

namespace doorcard {

/// What a parsed command line asks for: run it with the streams and the words of the language; it returns the exit
/// status.
using Run = std::function<int(std::ostream& out, std::ostream& err, const Words&)>;

/// `--rules OVERLAY`, which every command that reads a survey has.
void add_rules_option(CLI::App& command, std::vector<std::string>& rules);

// Each adds its command and options to the application; when the command is the one given, `run` is set.
void add_new_command(CLI::App&, Run& run);
void add_check_command(CLI::App&, Run& run);
void add_card_command(CLI::App&, Run& run);
void add_set_command(CLI::App&, Run& run);
void add_find_command(CLI::App&, Run& run);
void add_schedule_command(CLI::App&, Run&);

}  // namespace doorcard
