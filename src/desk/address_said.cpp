// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <optional>

#include "desk/grid.hpp"

namespace doorcard {
namespace {

std::string_view trimmed(std::string_view text) {
    const std::size_t first = text.find_first_not_of(" \t"), last = text.find_last_not_of(" \t");
    return first == std::string_view::npos ? std::string_view{} : text.substr(first, last - first + 1);
}

bool are_legs(std::string_view text) {
    if (text == "N") return true;
    return !text.empty() && text.size() <= 3 && std::ranges::all_of(text, [](char c) { return c >= 'A' && c <= 'C'; });
}

/// "5", "2+4", "13a": a breaker of the panel by its spaces.
const Breaker* breaker_said(const Survey& survey, std::string_view panel, std::string_view spaces) {
    for (const Breaker& breaker : survey.breakers)
        if (breaker.panel == panel && name_of(positions_of(breaker)) == spaces) return &breaker;
    for (const Breaker& breaker : survey.breakers) {
        if (breaker.panel != panel) continue;
        for (const Position one : positions_of(breaker))
            if (name_of(one) == spaces) return &breaker;
    }
    return nullptr;
}

std::optional<std::string> thing_said(const Survey& survey, std::string_view panel, std::string_view said) {
    if (const Breaker* breaker = breaker_said(survey, panel, said)) return "breaker:" + breaker->id;
    if (survey.breakers.contains(said)) return "breaker:" + std::string(said);
    if (said == "panel" && survey.panels.contains(panel)) return "panel:" + std::string(panel);
    if (survey.panels.contains(said)) return "panel:" + std::string(said);
    if (survey.outlets.contains(said)) return "outlet:" + std::string(said);
    if (survey.circuits.contains(said)) return "circuit:" + std::string(said);
    if (survey.loads.contains(said)) return "load:" + std::string(said);
    if (survey.sources.contains(said)) return "source:" + std::string(said);
    for (const Circuit& circuit : survey.circuits)
        if (circuit.neutral == said) return "neutral:" + std::string(said);
    const std::size_t blank = said.find(' ');
    if (blank != std::string_view::npos && survey.panels.contains(said.substr(0, blank)))
        if (const Breaker* breaker = breaker_said(survey, said.substr(0, blank), trimmed(said.substr(blank))))
            return "breaker:" + breaker->id;
    return std::nullopt;
}

}  // namespace

std::optional<std::string> address_said(const Survey& survey, std::string_view panel, std::string_view typed) {
    const std::string_view said = trimmed(typed);
    if (parse_address(said)) return std::string(said);
    if (auto thing = thing_said(survey, panel, said)) return thing;
    const std::size_t blank = said.rfind(' ');
    if (blank == std::string_view::npos || !are_legs(said.substr(blank + 1))) return std::nullopt;
    auto thing = thing_said(survey, panel, trimmed(said.substr(0, blank)));
    if (thing) *thing += "/" + std::string(said.substr(blank + 1));
    return thing;
}

std::string said_of(const Survey& survey, std::string_view panel, const std::string& address) {
    const auto of = parse_address(address);
    if (!of) return address;
    std::string thing = of->id;
    if (const Breaker* breaker = of->kind == ThingKind::breaker ? survey.breakers.find(of->id) : nullptr;
        breaker && breaker->panel == panel)
        thing = name_of(positions_of(*breaker));
    std::string said = of->legs.empty() ? thing : thing + " " + of->legs;
    const auto back = address_said(survey, panel, said);
    return back && *back == address ? said : address;
}

}  // namespace doorcard
