// SPDX-License-Identifier: MIT
#include "cli/check_command.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <ostream>

#include "cli/check_json.hpp"
#include "cli/check_text.hpp"
#include "cli/load_survey.hpp"
#include "cli/sheet_output.hpp"
#include "sheet/card.hpp"
#include "sheet/correction_list.hpp"

namespace doorcard {
namespace {

void keep_asked_for(const CheckOptions& options, std::vector<Finding>& findings) {
    std::erase_if(findings, [&](const Finding& finding) {
        if (options.only_required && finding.basis != Basis::required) return true;
        return options.applies && finding.applies != *options.applies && finding.applies != Applies::any;
    });
}

std::string misuse(const CheckOptions& options, const Words& words) {
    if (is_stdout(options.output) || painter_for(options.output)) return "";
    return words.say({tr("-o {0}: the name must end in .pdf .svg .png .html or .txt"), {options.output}});
}

/// What a list shows of the findings, where not all.
std::string left_out(const CheckOptions& options, const Words& words) {
    std::string text;
    if (options.only_required) text = words(tr("Only what is required; advice, practice and gaps are left out."));
    if (!options.applies) return text;
    const bool new_work = *options.applies == Applies::new_work;
    text += (text.empty() ? "" : " ") +
            words(new_work ? tr("Only what holds for new work.") : tr("Only what holds for existing work."));
    return text;
}

Sheet list_sheet(const CheckOptions& options, const Network& network, const Assessment& assessment,
                 const RuleBook& book, const Words& words) {
    const CorrectionChoice choice{options.paper == "a4" ? a4_paper : letter_paper, book.edition(),
                                  left_out(options, words)};
    Sheet sheet = correction_list(network, assessment, choice, words);
    date_by_environment(sheet);
    return sheet;
}

}  // namespace

int run_check(const CheckOptions& options, std::ostream& out, std::ostream& err, const Words& words) {
    if (const std::string wrong = misuse(options, words); !wrong.empty()) {
        err << "doorcard check: " << wrong << '\n';
        return exit_usage;
    }
    const auto loaded = load_survey(options.file, err, words, options.rules);
    if (!loaded) return exit_input;
    const Network network = network_of(loaded->survey);
    Assessment assessment = assess(network, loaded->book);
    keep_asked_for(options, assessment.findings);
    keep_asked_for(options, assessment.accepted);
    if (!options.output.empty())
        deliver(list_sheet(options, network, assessment, loaded->book, words), options.output, options.json, out);
    if (options.json)
        out << check_json(assessment, words).dump(2) << '\n';
    else if (options.output.empty())
        write_check(out, network, assessment, words, Terminal::of_stdout());
    const bool found = std::ranges::any_of(assessment.findings,
                                           [&](const Finding& finding) { return finding.severity <= options.fail_at; });
    return found ? exit_found : exit_done;
}

}  // namespace doorcard
