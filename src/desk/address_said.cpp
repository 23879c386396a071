// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <optional>

#include "base/folded.hpp"
#include "desk/grid.hpp"
#include "desk/typed_words.hpp"

namespace doorcard {
namespace {

std::string upper(std::string_view text) {
    std::string letters(text);
    for (char& c : letters) c = static_cast<char>(std::toupper(static_cast<unsigned char>(c)));
    return letters;
}

bool are_legs(std::string_view text) {
    if (text == "N") return true;
    return !text.empty() && text.size() <= 3 && std::ranges::all_of(text, [](char c) { return c >= 'A' && c <= 'C'; });
}

/// The only id of a table that is this one but for upper and lower case; empty where there is none or several.
template <class T>
std::string id_like(const Table<T>& things, const std::string& said) {
    std::string id;
    for (const T& thing : things) {
        if (folded(thing.id) != said) continue;
        if (!id.empty()) return {};
        id = thing.id;
    }
    return id;
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

/// A thing whose id is this one but for upper and lower case.
std::optional<std::string> thing_like(const Survey& survey, const std::string& said) {
    const std::pair<std::string_view, std::string> ids[] = {
        {"panel:", id_like(survey.panels, said)},     {"outlet:", id_like(survey.outlets, said)},
        {"circuit:", id_like(survey.circuits, said)}, {"load:", id_like(survey.loads, said)},
        {"source:", id_like(survey.sources, said)},   {"breaker:", id_like(survey.breakers, said)}};
    for (const auto& [kind, id] : ids)
        if (!id.empty()) return std::string(kind) + id;
    return std::nullopt;
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
    return thing_like(survey, folded(said));
}

}  // namespace

std::optional<std::string> address_said(const Survey& survey, std::string_view panel, std::string_view typed) {
    const std::string_view said = trimmed(typed);
    if (parse_address(said)) return std::string(said);
    if (auto thing = thing_said(survey, panel, said)) return thing;
    const std::size_t blank = said.rfind(' ');
    if (blank == std::string_view::npos) return std::nullopt;
    const std::string legs = upper(said.substr(blank + 1));
    if (!are_legs(legs)) return std::nullopt;
    const auto thing = thing_said(survey, panel, trimmed(said.substr(0, blank)));
    if (!thing || !parse_address(*thing + "/" + legs)) return std::nullopt;
    const auto of = parse_address(*thing + "/" + legs);
    return of->legs == legs ? std::optional(of->text()) : std::nullopt;
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
