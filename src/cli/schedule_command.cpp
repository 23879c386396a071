// SPDX-License-Identifier: MIT
#include "cli/schedule_command.hpp"

#include <nlohmann/json.hpp>
#include <ostream>

#include "base/write_whole.hpp"
#include "cli/load_survey.hpp"
#include "cli/schedule_json.hpp"
#include "cli/sheet_output.hpp"

namespace doorcard {
namespace {

std::optional<Paper> paper_named(const std::string& name) {
    if (name == "letter") return letter_landscape;
    if (name == "a4") return a4_landscape;
    return std::nullopt;
}

bool is_csv(const ScheduleOptions& options) { return ending_of(options.output) == ".csv"; }

/// What is wrong with the command line; empty: nothing.
std::string misuse(const ScheduleOptions& options, const Words& words) {
    if (!paper_named(options.paper)) return words.say({tr("--paper {0}: letter or a4"), {options.paper}});
    if (!is_stdout(options.output) && !is_csv(options) && !painter_for(options.output))
        return words.say({tr("-o {0}: the name must end in .pdf .svg .png .html .txt or .csv"), {options.output}});
    return "";
}

}  // namespace

int run_schedule(const ScheduleOptions& options, std::ostream& out, std::ostream& err, const Words& words) {
    if (const std::string wrong = misuse(options, words); !wrong.empty()) {
        err << "doorcard schedule: " << wrong << '\n';
        return exit_usage;
    }
    const auto loaded = load_survey(options.file, err, words, options.rules);
    if (!loaded) return exit_input;
    if (loaded->survey.panels.empty() && !options.json) {
        err << words.say({tr("{0}:1:1: it has no panel, so there is no schedule; add a [[panel]]"), {options.file}})
            << '\n';
        return exit_input;
    }
    if (!all_panels_known(options.panels, loaded->survey, options.file, err, words)) return exit_usage;
    const Network network = network_of(loaded->survey);
    const auto schedules = schedules_of(network, assess(network, loaded->book), loaded->book);
    if (is_csv(options)) {
        write_whole(options.output, schedule_csv(network, schedules, options.panels, words));
    } else if (!is_stdout(options.output) || !options.json) {
        Sheet sheet = schedule_sheet(network, schedules, {options.panels, *paper_named(options.paper)}, words);
        date_by_environment(sheet);
        deliver(sheet, options.output, options.json, out);
    }
    if (options.json) out << schedule_json(network, schedules, options.panels, words).dump(2) << '\n';
    return exit_done;
}

}  // namespace doorcard
