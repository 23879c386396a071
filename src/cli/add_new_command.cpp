// SPDX-License-Identifier: MIT
#include <CLI/CLI.hpp>

#include "cli/commands.hpp"
#include "cli/new_command.hpp"

namespace doorcard {

void add_new_command(CLI::App& app, Run& run) {
    auto options = std::make_shared<NewOptions>();
    CLI::App* command = app.add_subcommand("new", "a survey to start from; refuses an existing file");
    command->footer("Example: doorcard new house.survey.toml --system \"120/240 1ph 3w\" --spaces 40 --main 200");
    command->add_option("FILE", options->file, "the survey to write")->required();
    command->add_option("--system", options->system, "volts, phases and wires of the service, where known");
    command->add_option("--spaces", options->spaces, "number of spaces of the main panel, where known");
    command->add_option("--main", options->main_a, "rating of its main in amperes, where known");
    command
        ->add_option("--from", options->from,
                     "an old directory or a spreadsheet's list to begin from: CSV or plain lines")
        ->option_text("LIST");
    auto* from = command->get_option("--from");
    command->add_option("--panel", options->panel, "the panel of the list, where no column names one (MAIN)")
        ->needs(from);
    command
        ->add_option("--columns", options->columns,
                     "what columns of the list hold, such as \"Ckt=space,Serves=description\"")
        ->needs(from)
        ->option_text("HEAD=WORD,...");
    command->add_flag("--skip-bad", options->skip_bad, "write what was understood, without the rows that were not")
        ->needs(from);
    add_rules_option(*command, options->rules);
    command->add_flag("--json", options->json, "the result as JSON");
    command->callback([options, &run] {
        run = [options](std::ostream& out, std::ostream& err, const Words& words) {
            return run_new(*options, out, err, words);
        };
    });
}

}  // namespace doorcard
