// SPDX-License-Identifier: MIT
#include <CLI/CLI.hpp>

#include "cli/card_command.hpp"
#include "cli/commands.hpp"

namespace doorcard {

void add_card_command(CLI::App& app, Run& run) {
    auto options = std::make_shared<CardOptions>();
    CLI::App* command = app.add_subcommand("card", "the panel directory for the door");
    command->footer("Example: doorcard card examples/alder-row.survey.toml -o card.pdf --paper 132x206mm");
    command->add_option("FILE", options->file, "the survey")->required();
    add_rules_option(*command, options->rules);
    command->add_option("-o", options->output, "OUT.pdf .svg .png .html .txt; - or none: text to standard output");
    command->add_option("--panel", options->panels, "only this panel (all)")
        ->option_text("ID")
        ->allow_extra_args(false);
    command->add_option("--side", options->side, "panel (the front); rooms and both come with the back")
        ->option_text("panel");
    command->add_option("--paper", options->paper,
                        "letter, a4, half-letter, or the door pocket as measured: 132x206mm");
    command->add_option("--since", options->since, "marks what changed since an older survey (not built yet)")
        ->option_text("OLD");
    command->add_flag("--json", options->json, "the result as JSON");
    command->callback([options, &run] {
        run = [options](std::ostream& out, std::ostream& err, const Words& words) {
            return run_card(*options, out, err, words);
        };
    });
}

}  // namespace doorcard
