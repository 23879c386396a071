// SPDX-License-Identifier: MIT
#include <CLI/CLI.hpp>

#include "cli/commands.hpp"
#include "cli/schedule_command.hpp"

namespace doorcard {

void add_schedule_command(CLI::App& app, Run& run) {
    auto options = std::make_shared<ScheduleOptions>();
    CLI::App* command = app.add_subcommand("schedule", "the panel schedule: loads, devices and wires of every space");
    command->footer("Example: doorcard schedule examples/alder-row.survey.toml -o schedule.pdf --panel MAIN");
    command->add_option("FILE", options->file, "the survey")->required();
    command->add_option("-o", options->output, "OUT.pdf .svg .png .html .txt .csv; - or none: text to standard output");
    command->add_option("--panel", options->panels, "only this panel (all)")
        ->option_text("ID")
        ->allow_extra_args(false);
    command->add_option("--paper", options->paper, "letter or a4, landscape")->option_text("letter");
    add_rules_option(*command, options->rules);
    command->add_flag("--json", options->json, "the result as JSON");
    command->callback([options, &run] {
        run = [options](std::ostream& out, std::ostream& err, const Words& words) {
            return run_schedule(*options, out, err, words);
        };
    });
}

}  // namespace doorcard
