// SPDX-License-Identifier: MIT
#include <CLI/CLI.hpp>

#include "cli/commands.hpp"
#include "cli/find_command.hpp"

namespace doorcard {

void add_find_command(CLI::App& app, Run& run) {
    auto options = std::make_shared<FindOptions>();
    CLI::App* command = app.add_subcommand("find", "the circuit, breaker and panel of whatever matches, and how sure");
    command->footer("Example: doorcard find examples/alder-row.survey.toml freezer");
    command->add_option("FILE", options->file, "the survey")->required();
    command->add_option("WORDS", options->words, "what to look for; all of the words must match")->required();
    add_rules_option(*command, options->rules);
    command->add_flag("--json", options->json, "the result as JSON");
    command->callback([options, &run] {
        run = [options](std::ostream& out, std::ostream& err, const Words& words) {
            return run_find(*options, out, err, words);
        };
    });
}

}  // namespace doorcard
