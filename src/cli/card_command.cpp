// SPDX-License-Identifier: MIT
#include "cli/card_command.hpp"

#include <algorithm>
#include <cctype>
#include <charconv>
#include <cstdlib>
#include <ctime>
#include <filesystem>
#include <map>
#include <nlohmann/json.hpp>
#include <ostream>

#include "base/write_whole.hpp"
#include "cli/card_json.hpp"
#include "cli/load_survey.hpp"
#include "sheet/paint.hpp"

namespace doorcard {
namespace {

using Painter = Bytes (*)(const Sheet&);

Bytes paint_png_usual(const Sheet& sheet) { return paint_png(sheet); }

/// By the ending of the output's name, in any case; null: none.
Painter painter_for(const std::string& output) {
    std::string ending = std::filesystem::path(output).extension().string();
    std::transform(ending.begin(), ending.end(), ending.begin(),
                   [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    static const std::map<std::string, Painter> painters = {{".pdf", paint_pdf},
                                                            {".svg", paint_svg},
                                                            {".png", paint_png_usual},
                                                            {".html", paint_html},
                                                            {".txt", paint_text}};
    const auto found = painters.find(ending);
    return found == painters.end() ? nullptr : found->second;
}

bool to_stdout(const CardOptions& options) { return options.output.empty() || options.output == "-"; }

/// What is wrong with the command line; empty: nothing.
std::string misuse(const CardOptions& options, const Words& words) {
    if (options.side != "panel") return words(tr("the back by room is not built yet: --side panel is what there is"));
    if (!options.since.empty()) return words(tr("surveys are not compared yet: leave --since out"));
    if (!paper_choice(options.paper))
        return words.say(
            {tr("--paper {0}: letter, a4, half-letter, or the door pocket as WxHmm, at least {1:.0f}x{2:.0f}mm"),
             {options.paper, least_cut.width, least_cut.height}});
    if (!to_stdout(options) && !painter_for(options.output))
        return words.say({tr("-o {0}: the name must end in .pdf .svg .png .html or .txt"), {options.output}});
    return "";
}

std::string unknown_panel(const CardOptions& options, const Survey& survey) {
    for (const std::string& id : options.panels)
        if (!survey.panels.contains(id)) return id;
    return "";
}

std::string panel_ids(const Survey& survey) {
    std::string ids;
    for (const Panel& panel : survey.panels) ids += (ids.empty() ? "" : ", ") + panel.id;
    return ids;
}

/// The reproducible-builds convention: seconds since 1970 in SOURCE_DATE_EPOCH stand for 'now'.
std::optional<std::string> date_of_environment() {
    const char* value = std::getenv("SOURCE_DATE_EPOCH");
    if (value == nullptr) return std::nullopt;
    const std::string_view text(value);
    std::time_t seconds = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), seconds);
    std::tm utc{};
    if (error != std::errc() || end != text.data() + text.size() || gmtime_r(&seconds, &utc) == nullptr)
        return std::nullopt;
    char date[32];
    if (std::strftime(date, sizeof date, "%Y-%m-%dT%H:%M:%SZ", &utc) == 0) return std::nullopt;
    return std::string(date);
}

CardChoice choice_of(const CardOptions& options, const RuleBook& book) {
    const PaperChoice paper = *paper_choice(options.paper);
    CardChoice choice;
    choice.panels = options.panels;
    choice.paper = paper.paper;
    choice.cut = paper.cut;
    choice.source_label = book.cite("nec-408-4-b").text();
    return choice;
}

std::optional<double> millimetres(std::string_view text) {
    double number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error != std::errc() || end != text.data() + text.size()) return std::nullopt;
    return number;
}

void deliver(const CardOptions& options, const Sheet& sheet, std::ostream& out) {
    if (!to_stdout(options)) write_whole(options.output, painter_for(options.output)(sheet));
    if (to_stdout(options) && !options.json) out << paint_text(sheet);
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
    if (const std::string id = unknown_panel(options, loaded->survey); !id.empty()) {
        err << words.say({tr("{0}: no panel '{1}'; panels are {2}"), {options.file, id, panel_ids(loaded->survey)}})
            << '\n';
        return exit_usage;
    }
    const Network network = network_of(loaded->survey);
    Sheet sheet = card_sheet(network, assess(network, loaded->book), choice_of(options, loaded->book), words);
    if (const auto date = date_of_environment()) sheet.created = *date;
    deliver(options, sheet, out);
    if (options.json) out << card_json(network, sheet, words).dump(2) << '\n';
    return exit_done;
}

}  // namespace doorcard
