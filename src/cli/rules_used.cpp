// SPDX-License-Identifier: MIT
#include "cli/rules_used.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <nlohmann/json.hpp>
#include <ostream>

namespace doorcard {
namespace {

using Json = nlohmann::ordered_json;

/// "15 A", "0.75": units that are words of the tables alone are left out.
std::string figure_text(const Cell& cell, const std::string& unit) {
    if (const std::string* words = std::get_if<std::string>(&cell)) return *words;
    constexpr std::array<std::string_view, 3> bare = {"factor", "count", "year"};
    const bool with_unit = !unit.empty() && std::ranges::find(bare, unit) == bare.end();
    return fmt::format("{:g}", std::get<double>(cell)) + (with_unit ? " " + unit : "");
}

Message line_of(const Amendment& amendment) {
    const std::string name = amendment.id + (amendment.part.empty() ? "" : ", " + amendment.part);
    return {amendment.laxer ? tr("{0}: {1} in place of {2}, laxer than the code; {3}")
                            : tr("{0}: {1} in place of {2}; {3}"),
            {name, figure_text(amendment.value, amendment.unit), figure_text(amendment.was, amendment.unit),
             amendment.source.standard}};
}

Json cell_json(const Cell& cell) {
    return std::visit([](const auto& value) { return Json(value); }, cell);
}

Json amendment_json(const Amendment& amendment) {
    return {{"id", amendment.id},
            {"row", amendment.part.empty() ? Json(nullptr) : Json(amendment.part)},
            {"value", cell_json(amendment.value)},
            {"was", cell_json(amendment.was)},
            {"unit", amendment.unit.empty() ? Json(nullptr) : Json(amendment.unit)},
            {"source", amendment.source.standard},
            {"amends", amendment.source.amends},
            {"reason", amendment.reason.empty() ? Json(nullptr) : Json(amendment.reason)},
            {"laxer", amendment.laxer}};
}

}  // namespace

void write_rules_used(std::ostream& out, const RulesUsed& rules, const Words& words, const Terminal& terminal) {
    if (rules.amendments.empty()) return;
    std::string edition = rules.edition;
    std::ranges::replace(edition, '-', ' ');
    out << words.say({tr("Local rules over {0}"), {edition}}) << '\n';
    for (const Amendment& amendment : rules.amendments)
        for (const std::string& line : wrapped(words.say(line_of(amendment)), terminal.columns - 2))
            out << "  " << line << '\n';
    out << '\n';
}

nlohmann::ordered_json rules_used_json(const RulesUsed& rules) {
    Json amended = Json::array(), options = Json::object();
    for (const Amendment& amendment : rules.amendments) amended.push_back(amendment_json(amendment));
    for (const auto& [id, value] : rules.options) options[id] = value;
    return {{"edition", rules.edition}, {"amended", std::move(amended)}, {"options", std::move(options)}};
}

}  // namespace doorcard
