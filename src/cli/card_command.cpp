// SPDX-License-Identifier: MIT
#include "cli/card_command.hpp"

#include <charconv>
#include <nlohmann/json.hpp>
#include <ostream>

#include "cli/card_json.hpp"
#include "cli/load_survey.hpp"
#include "cli/sheet_output.hpp"

namespace doorcard {
namespace {

/// What is wrong with the command line; empty: nothing.
std::string misuse(const CardOptions& options, const Words& words) {
    if (options.side != "panel" && options.side != "rooms" && options.side != "both")
        return words.say({tr("--side {0}: panel (the front), rooms (the back) or both"), {options.side}});
    if (!options.since.empty()) return words(tr("surveys are not compared yet: leave --since out"));
    if (!paper_choice(options.paper))
        return words.say(
            {tr("--paper {0}: letter, a4, half-letter, or the door pocket as WxHmm, at least {1:.0f}x{2:.0f}mm"),
             {options.paper, least_cut.width, least_cut.height}});
    if (!is_stdout(options.output) && !painter_for(options.output))
        return words.say({tr("-o {0}: the name must end in .pdf .svg .png .html or .txt"), {options.output}});
    return "";
}

CardChoice choice_of(const CardOptions& options, const RuleBook& book) {
    const PaperChoice paper = *paper_choice(options.paper);
    CardChoice choice;
    choice.panels = options.panels;
    choice.paper = paper.paper;
    choice.cut = paper.cut;
    choice.back_follows = options.side == "both";
    choice.source_label = book.cite("nec-408-4-b").text();
    return choice;
}

Sheet sheet_of(const CardOptions& options, const Network& network, const RuleBook& book, const Words& words) {
    const CardChoice choice = choice_of(options, book);
    const Assessment assessment = assess(network, book);
    if (options.side == "panel") return card_sheet(network, assessment, choice, words);
    const Sheet backs = card_back_sheet(network, assessment, choice, words);
    if (options.side == "rooms") return backs;
    return both_sides(card_sheet(network, assessment, choice, words), backs, choice, words);
}

std::optional<double> millimetres(std::string_view text) {
    double number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error != std::errc() || end != text.data() + text.size()) return std::nullopt;
    return number;
}

}  // namespace

std::optional<PaperChoice> paper_choice(const std::string& name) {
    if (name == "letter") return PaperChoice{letter_paper, {}};
    if (name == "a4") return PaperChoice{a4_paper, {}};
    if (name == "half-letter") return PaperChoice{half_letter_paper, {}};
    const auto cross = name.find('x');
    if (cross == std::string::npos || !name.ends_with("mm")) return std::nullopt;
    const auto width = millimetres(std::string_view(name).substr(0, cross));
    const auto height = millimetres(std::string_view(name).substr(cross + 1, name.size() - cross - 3));
    constexpr double most = 1000;
    if (!width || !height ||
        !(*width >= least_cut.width && *width <= most && *height >= least_cut.height && *height <= most))
        return std::nullopt;
    const Paper cut{*width, *height};
    return PaperChoice{paper_for_cut(cut), cut};
}

int run_card(const CardOptions& options, std::ostream& out, std::ostream& err, const Words& words) {
    if (const std::string wrong = misuse(options, words); !wrong.empty()) {
        err << "doorcard card: " << wrong << '\n';
        return exit_usage;
    }
    const auto loaded = load_survey(options.file, err, words, options.rules);
    if (!loaded) return exit_input;
    if (loaded->survey.panels.empty() && !options.json) {
        err << words.say({tr("{0}:1:1: it has no panel, so there is no card; add a [[panel]]"), {options.file}})
            << '\n';
        return exit_input;
    }
    if (!all_panels_known(options.panels, loaded->survey, options.file, err, words)) return exit_usage;
    const Network network = network_of(loaded->survey);
    Sheet sheet = sheet_of(options, network, loaded->book, words);
    date_by_environment(sheet);
    deliver(sheet, options.output, options.json, out);
    if (options.json) out << card_json(network, sheet, options.side == "both" ? 2 : 1, words).dump(2) << '\n';
    return exit_done;
}

}  // namespace doorcard
