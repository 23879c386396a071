// SPDX-License-Identifier: MIT
#include "cli/find_command.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <ostream>

#include "assess/find.hpp"
#include "cli/load_survey.hpp"
#include "cli/terminal.hpp"

namespace doorcard {
namespace {

using Json = nlohmann::ordered_json;

template <class T>
Json or_null(const std::optional<T>& value) {
    return value ? Json(*value) : Json(nullptr);
}

Json match_json(const Survey& survey, const Match& match, const Words& words) {
    Json spaces = Json::array(), halves = Json::array(), also = Json::array();
    for (const Position position : match.positions) {
        spaces.push_back(position.space);
        if (position.half != ' ') halves.push_back(std::string(1, position.half));
    }
    for (const std::size_t breaker : match.also_fed_by) also.push_back(survey.breakers[breaker].id);
    return {{"of", match.of.text()},
            {"text", words.say(match.text)},
            {"circuit", match.circuit ? Json(survey.circuits[*match.circuit].id) : Json(nullptr)},
            {"breaker", match.breaker ? Json(survey.breakers[*match.breaker].id) : Json(nullptr)},
            {"panel", match.panel ? Json(survey.panels[*match.panel].id) : Json(nullptr)},
            {"spaces", std::move(spaces)},
            {"traced", or_null(match.traced)},
            {"halves", std::move(halves)},
            {"proved", match.proved},
            {"also_fed_by", std::move(also)}};
}

Json find_json(const Survey& survey, const FindResult& result, const Words& words) {
    Json matches = Json::array(), slips = Json::array();
    for (const Match& match : result.matches) matches.push_back(match_json(survey, match, words));
    for (const Slip& slip : result.slips) slips.push_back({{"wanted", slip.wanted}, {"taken", slip.taken}});
    return {{"matches", std::move(matches)}, {"slips", std::move(slips)}};
}

/// "MAIN 14"; the panel alone, or a dash, where no breaker is known.
std::string handle_of(const Survey& survey, const Match& match) {
    if (!match.panel) return "-";
    const std::string& panel = survey.panels[*match.panel].id;
    return match.breaker ? panel + " " + name_of(match.positions) : panel;
}

std::string what_of(const Match& match, const Words& words) {
    const std::string text = words.say(match.text);
    const std::string on = words.say(match.on);
    return on.empty() || on == text ? text : words.say({tr("{0} [{1}]"), {text, on}});
}

std::string sure_of(const Survey& survey, const Match& match, const Words& words) {
    std::string sure = words.say(match.sure);
    if (match.also_fed_by.empty()) return sure;
    std::vector<Message::Part> others;
    for (const std::size_t breaker : match.also_fed_by) {
        const Breaker& other = survey.breakers[breaker];
        others.emplace_back(other.panel + " " + name_of(positions_of(other)));
    }
    return words.say({tr("{0}; also fed by {1}: switch off all"), {sure, and_list(std::move(others))}});
}

void write_matches(std::ostream& out, const Survey& survey, const FindResult& result, const Words& words) {
    int handles = 0, texts = 0;
    for (const Match& match : result.matches) {
        handles = std::max(handles, width_of(handle_of(survey, match)));
        texts = std::max(texts, width_of(what_of(match, words)));
    }
    for (const Match& match : result.matches)
        out << padded(handle_of(survey, match), handles) << "  " << padded(what_of(match, words), texts) << "  "
            << sure_of(survey, match, words) << '\n';
}

std::string joined(const std::vector<std::string>& words) {
    std::string all;
    for (const std::string& word : words) all += (all.empty() ? "" : " ") + word;
    return all;
}

void write_find(std::ostream& out, const FindOptions& options, const Survey& survey, const FindResult& result,
                const Words& words) {
    if (result.matches.empty()) {
        out << words.say({tr("nothing in {0} matches '{1}'"), {options.file, joined(options.words)}}) << '\n';
        return;
    }
    for (const Slip& slip : result.slips)
        out << words.say({tr("nothing is called '{0}'; taken for '{1}'"), {slip.wanted, slip.taken}}) << '\n';
    write_matches(out, survey, result, words);
    out << '\n' << words(tr("Off is not proof of dead: test before touch.")) << '\n';
    if (std::ranges::any_of(result.matches,
                            [](const Match& match) { return !match.proved && match.of.kind != ThingKind::panel; }))
        out << words(tr("What is not proved may hang on another breaker: treat it as live.")) << '\n';
}

}  // namespace

int run_find(const FindOptions& options, std::ostream& out, std::ostream& err, const Words& words) {
    const auto loaded = load_survey(options.file, err, words, options.rules);
    if (!loaded) return exit_input;
    const FindResult result = find_in(network_of(loaded->survey), joined(options.words));
    if (options.json)
        out << find_json(loaded->survey, result, words).dump(2, ' ', false, Json::error_handler_t::replace) << '\n';
    else
        write_find(out, options, loaded->survey, result, words);
    return exit_done;
}

}  // namespace doorcard
