// SPDX-License-Identifier: MIT
#include "cli/card_json.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>

#include "assess/directory.hpp"
#include "cli/json_parts.hpp"

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

}  // namespace

Json card_json(const Network& network, const Sheet& sheet, const Words& words) {
    Json panels = Json::array();
    const auto& all = network.survey().panels;
    for (std::size_t panel = 0; panel < all.size(); ++panel) {
        const auto cards = std::count_if(sheet.pages.begin(), sheet.pages.end(),
                                         [&](const Page& page) { return page.of == all[panel].id; });
        if (cards == 0) continue;
        Json rows = Json::array();
        for (const DirectoryRow& row : directory_of(network, panel).rows) rows.push_back(row_json(network, row, words));
        panels.push_back({{"id", all[panel].id}, {"cards", cards}, {"rows", std::move(rows)}});
    }
    return {{"panels", std::move(panels)}};
}

}  // namespace doorcard
