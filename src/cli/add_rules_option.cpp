// SPDX-License-Identifier: MIT
#include <CLI/CLI.hpp>

#include "cli/commands.hpp"

namespace doorcard {

void add_rules_option(CLI::App& command, std::vector<std::string>& rules) {
    command.add_option("--rules", rules, "local rules laid over those of the survey; several are laid in order")
        ->option_text("OVERLAY")
        ->allow_extra_args(false);
}

}  // namespace doorcard
