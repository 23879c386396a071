// SPDX-License-Identifier: MIT
#include "cli/card_json.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>

#include "assess/directory.hpp"
#include "cli/json_parts.hpp"
#include "sheet/card_back_words.hpp"

namespace doorcard {
namespace {

Json legs_json(const std::string& legs) {
    Json letters = Json::array();
    for (const char leg : legs) letters.push_back(leg == '?' ? Json(nullptr) : Json(std::string(1, leg)));
    return letters;
}

/// The neutral that the row's circuits name; a shared one before "own".
Json neutral_json(const Survey& survey, const DirectoryRow& row) {
    Json found = nullptr;
    for (const std::size_t circuit : row.circuits) {
        const Circuit& thing = survey.circuits[circuit];
        if (thing.names_neutral()) return *thing.neutral;
        if (thing.neutral) found = *thing.neutral;
    }
    return found;
}

bool row_traced(const Network& network, const DirectoryRow& row) {
    if (!row.breaker || row.claimed) return false;
    if (!network.panels_fed_by(*row.breaker).empty()) return true;
    return std::any_of(row.circuits.begin(), row.circuits.end(), [&](std::size_t circuit) {
        const auto& traced = network.survey().circuits[circuit].traced;
        return traced && traced->proves();
    });
}

Json row_json(const Network& network, const DirectoryRow& row, const Words& words) {
    const Survey& survey = network.survey();
    const Breaker* breaker = row.breaker ? &survey.breakers[*row.breaker] : nullptr;
    return {{"spaces", spaces_json(row.positions)},
            {"halves", halves_json(row.positions)},
            {"text", words.say(row.text)},
            {"under", row.under.empty() ? Json(nullptr) : Json(words.say(row.under))},
            {"amps", breaker && breaker->amps ? Json(breaker->amps->value) : Json(nullptr)},
            {"poles", breaker ? Json(breaker->poles()) : Json(nullptr)},
            {"legs", breaker ? legs_json(network.breaker_legs(*row.breaker)) : Json::array()},
            {"guards", breaker ? guards_json(*breaker) : Json(nullptr)},
            {"neutral", neutral_json(survey, row)},
            {"traced", row_traced(network, row)},
            {"claimed", row.claimed},
            {"changed", nullptr}};
}

Json ids_json(const Survey& survey, const std::vector<std::size_t>& breakers) {
    Json ids = Json::array();
    for (const std::size_t breaker : breakers) ids.push_back(survey.breakers[breaker].id);
    return ids;
}

const char* trust_word(HandleTrust trust) {
    switch (trust) {
        case HandleTrust::traced:
            return "traced";
        case HandleTrust::claimed:
            return "claimed";
        case HandleTrust::not_traced:
            return "not-traced";
        case HandleTrust::kept_off:
            return "kept-off";
        case HandleTrust::fire_alarm:
            return "fire-alarm";
        default:
            return "several-sides";
    }
}

Json line_json(const Survey& survey, const RoomDirectory& directory, const RoomPart& part, const RoomLine& line,
               const HandleNames& names, const Words& words) {
    const bool proved = line.trust == HandleTrust::traced;
    const bool said = line.trust == HandleTrust::claimed;
    return {{"room", part.heading == RoomHeading::room ? Json(words.say(part.name)) : Json(nullptr)},
            {"heading", heading_of(directory, part, words)},
            {"what", what_of(part, line, words)},
            {"sure", trust_word(line.trust)},
            {"throw", ids_json(survey, proved ? line.breakers : std::vector<std::size_t>{})},
            {"said", ids_json(survey, said ? line.breakers : std::vector<std::size_t>{})},
            {"kept_off", ids_json(survey, line.kept_off)},
            {"text", answer_of(line, names, words).text}};
}

void add_rooms(Json& panel, const Network& network, std::size_t index, const Words& words) {
    const Survey& survey = network.survey();
    const RoomDirectory directory = rooms_of(network, index);
    const HandleNames names(network, directory, words);
    panel["rooms"] = Json::array();
    for (const RoomPart& part : directory.parts)
        for (const RoomLine& line : part.lines)
            panel["rooms"].push_back(line_json(survey, directory, part, line, names, words));
    panel["leave_on"] = Json::array();
    for (const LeaveOn& entry : directory.leave_on)
        panel["leave_on"].push_back(
            {{"breakers", ids_json(survey, entry.breakers)}, {"sure", trust_word(entry.trust)}, {"why", entry.why}});
    panel["keep_off"] = ids_json(survey, directory.kept_off);
}

}  // namespace

Json card_json(const Network& network, const Sheet& sheet, int sides, const Words& words) {
    Json panels = Json::array();
    const auto& all = network.survey().panels;
    for (std::size_t panel = 0; panel < all.size(); ++panel) {
        const auto cards = std::count_if(sheet.pages.begin(), sheet.pages.end(),
                                         [&](const Page& page) { return page.of == all[panel].id; });
        if (cards == 0) continue;
        Json rows = Json::array();
        for (const DirectoryRow& row : directory_of(network, panel).rows) rows.push_back(row_json(network, row, words));
        panels.push_back({{"id", all[panel].id}, {"cards", cards / sides}, {"rows", std::move(rows)}});
        add_rooms(panels.back(), network, panel, words);
    }
    return {{"panels", std::move(panels)}};
}

}  // namespace doorcard
