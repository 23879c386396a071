// SPDX-License-Identifier: MIT
#include <CLI/CLI.hpp>

#include "cli/commands.hpp"
#include "cli/set_command.hpp"

namespace doorcard {
namespace {

std::string has_equals_sign(const std::string& text) {
    return text.find('=') > 0 && text.find('=') != std::string::npos ? "" : "'" + text + "' is no KEY=VALUE";
}

}  // namespace

void add_set_command(CLI::App& app, Run& run) {
    auto options = std::make_shared<SetOptions>();
    CLI::App* command = app.add_subcommand("set", "changes, adds or takes out one entry, and saves the file");
    command->footer(
        "Example: doorcard set examples/alder-row.survey.toml breaker:MAIN:5 amps=15\n"
        "Only the lines of that entry change. A text may stand as it is; lists with commas between.");
    command->add_option("FILE", options->file, "the survey")->required();
    command
        ->add_option("ADDRESS", options->address, "KIND:ID, such as circuit:kitchen; reading:3 is the third; survey:")
        ->required();
    command->add_option("KEYS", options->keys, "what it shall say, such as amps=15 or wire.size=12")
        ->check(has_equals_sign)
        ->option_text("KEY=VALUE ...");
    command->add_option("--unset", options->unset, "a key to take out; may be given several times")
        ->option_text("KEY")
        ->allow_extra_args(false);
    auto* add = command->add_flag("--add", options->add, "a new entry");
    auto* remove = command->add_flag("--remove", options->remove, "take the entry out");
    remove->excludes(add);
    command->add_flag("--take-along", options->take_along, "with --remove: what names it goes too")->needs(remove);
    add_rules_option(*command, options->rules);
    command->add_flag("--json", options->json, "the result as JSON");
    command->callback([options, &run] {
        run = [options](std::ostream& out, std::ostream& err, const Words& words) {
            return run_set(*options, out, err, words);
        };
    });
}

}  // namespace doorcard
