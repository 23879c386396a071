// SPDX-License-Identifier: MIT
#include "cli/check_command.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <ostream>

#include "cli/check_json.hpp"
#include "cli/check_text.hpp"
#include "cli/load_survey.hpp"

namespace doorcard {
namespace {

void keep_asked_for(const CheckOptions& options, std::vector<Finding>& findings) {
    std::erase_if(findings, [&](const Finding& finding) {
        if (options.only_required && finding.basis != Basis::required) return true;
        return options.applies && finding.applies != *options.applies && finding.applies != Applies::any;
    });
}

}  // namespace

int run_check(const CheckOptions& options, std::ostream& out, std::ostream& err, const Words& words) {
    const auto loaded = load_survey(options.file, err, words, options.rules);
    if (!loaded) return exit_input;
    const Network network = network_of(loaded->survey);
    Assessment assessment = assess(network, loaded->book);
    keep_asked_for(options, assessment.findings);
    keep_asked_for(options, assessment.accepted);
    if (options.json)
        out << check_json(assessment, words).dump(2) << '\n';
    else
        write_check(out, network, assessment, words, Terminal::of_stdout());
    const bool found = std::ranges::any_of(assessment.findings,
                                           [&](const Finding& finding) { return finding.severity <= options.fail_at; });
    return found ? exit_found : exit_done;
}

}  // namespace doorcard
