// SPDX-License-Identifier: MIT
#include <CLI/CLI.hpp>

#include "cli/check_command.hpp"
#include "cli/commands.hpp"

namespace doorcard {

void add_check_command(CLI::App& app, Run& run) {
    auto options = std::make_shared<CheckOptions>();
    CLI::App* command = app.add_subcommand("check", "findings, and the table of circuits, neutrals, feeders and legs");
    command->footer("Example: doorcard check examples/alder-row.survey.toml --fail-at danger");
    command->add_option("FILE", options->file, "the survey")->required();
    add_rules_option(*command, options->rules);
    command->add_flag("--json", options->json, "the result as JSON");
    command->add_option("-o", options->output, "print them as a correction list: .pdf .svg .png .html .txt; - is text")
        ->option_text("OUT");
    command->add_option("--paper", options->paper, "of the correction list: letter or a4")
        ->check(CLI::IsMember({"letter", "a4"}))
        ->option_text("letter|a4");
    const std::map<std::string, Severity> severities = {{"danger", Severity::danger},
                                                        {"warning", Severity::warning},
                                                        {"caution", Severity::caution},
                                                        {"notice", Severity::notice}};
    command
        ->add_option_function<std::string>(
            "--fail-at", [options, severities](const std::string& word) { options->fail_at = severities.at(word); },
            "exit 1 from this signal word on (warning)")
        ->check(CLI::IsMember({"danger", "warning", "caution", "notice"}))
        ->option_text("danger|warning|caution|notice");
    command
        ->add_option_function<std::string>(
            "--only", [options](const std::string&) { options->only_required = true; },
            "only findings of this basis: required")
        ->check(CLI::IsMember({"required"}))
        ->option_text("required");
    command
        ->add_option_function<std::string>(
            "--applies",
            [options](const std::string& word) {
                options->applies = word == "new-work" ? Applies::new_work : Applies::existing;
            },
            "only findings for this work: new-work, existing")
        ->check(CLI::IsMember({"new-work", "existing"}))
        ->option_text("new-work|existing");
    command->callback([options, &run] {
        run = [options](std::ostream& out, std::ostream& err, const Words& words) {
            return run_check(*options, out, err, words);
        };
    });
}

}  // namespace doorcard
