// SPDX-License-Identifier: MIT
// The commands and their options, all in one file: the library that reads them takes its time to compile.
#include "cli/commands.hpp"

#include <CLI/CLI.hpp>
#include <memory>

#include "cli/card_command.hpp"
#include "cli/check_command.hpp"
#include "cli/find_command.hpp"
#include "cli/new_command.hpp"
#include "cli/schedule_command.hpp"
#include "cli/set_command.hpp"

namespace doorcard {
namespace {

/// When the command is the one given, `run` does it with the options that were read.
template <class Options>
void on_call(CLI::App& command, Run& run, std::shared_ptr<Options> options,
             int (*go)(const Options&, std::ostream&, std::ostream&, const Words&)) {
    command.callback([options, &run, go] {
        run = [options, go](std::ostream& out, std::ostream& err, const Words& words) {
            return go(*options, out, err, words);
        };
    });
}

/// `--rules OVERLAY`, which every command has.
void add_rules_option(CLI::App& command, std::vector<std::string>& rules) {
    command.add_option("--rules", rules, "local rules laid over those of the survey; several are laid in order")
        ->option_text("OVERLAY")
        ->allow_extra_args(false);
}

std::string has_equals_sign(const std::string& text) {
    return text.find('=') > 0 && text.find('=') != std::string::npos ? "" : "'" + text + "' is no KEY=VALUE";
}

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
    on_call(*command, run, options, &run_new);
}

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
    on_call(*command, run, options, &run_check);
}

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
    command
        ->add_option("--side", options->side,
                     "panel (the front), rooms (the back, for the occupant), or both, to print on two sides")
        ->option_text("panel");
    command->add_option("--paper", options->paper,
                        "letter, a4, half-letter, or the door pocket as measured: 132x206mm");
    command->add_option("--since", options->since, "marks what changed since an older survey (not built yet)")
        ->option_text("OLD");
    command->add_flag("--json", options->json, "the result as JSON");
    on_call(*command, run, options, &run_card);
}

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
    on_call(*command, run, options, &run_set);
}

void add_find_command(CLI::App& app, Run& run) {
    auto options = std::make_shared<FindOptions>();
    CLI::App* command = app.add_subcommand("find", "the circuit, breaker and panel of whatever matches, and how sure");
    command->footer("Example: doorcard find examples/alder-row.survey.toml freezer");
    command->add_option("FILE", options->file, "the survey")->required();
    command->add_option("WORDS", options->words, "what to look for; all of the words must match")->required();
    add_rules_option(*command, options->rules);
    command->add_flag("--json", options->json, "the result as JSON");
    on_call(*command, run, options, &run_find);
}

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
    on_call(*command, run, options, &run_schedule);
}

}  // namespace

void add_commands(CLI::App& app, Run& run) {
    add_new_command(app, run);
    add_check_command(app, run);
    add_card_command(app, run);
    add_set_command(app, run);
    add_find_command(app, run);
    add_schedule_command(app, run);
}

}  // namespace doorcard
