// SPDX-License-Identifier: MIT
#include "desk/neutral_choices.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "survey/edits/circuit_edits.hpp"

namespace doorcard {
namespace {

constexpr std::string_view with_neighbour = "with:";

std::string panel_of(const Survey& survey, const Circuit& circuit) {
    const Breaker* breaker = circuit.breakers.empty() ? nullptr : survey.breakers.find(circuit.breakers.front());
    return breaker ? breaker->panel : std::string();
}

std::string name_of_circuit(const Survey& survey, const Circuit& circuit) {
    const Breaker* breaker = circuit.breakers.empty() ? nullptr : survey.breakers.find(circuit.breakers.front());
    const std::string spaces = breaker ? name_of(positions_of(*breaker)) + " " : "";
    return spaces + circuit.purpose.value_or(circuit.id);
}

std::string new_neutral(const Survey& survey) {
    for (int n = 1;; ++n) {
        const std::string id = fmt::format("N{}", n);
        if (std::ranges::none_of(survey.circuits, [&](const Circuit& one) { return one.neutral == id; })) return id;
    }
}

}  // namespace

std::vector<FieldChoice> neutral_choices(const Survey& survey, const std::string& id) {
    std::vector<FieldChoice> choices{{"", {tr("not traced"), {}}}, {"own", {tr("its own, shared with nobody"), {}}}};
    const Circuit* circuit = survey.circuits.find(id);
    if (!circuit) return choices;
    const std::string panel = panel_of(survey, *circuit);
    std::map<std::string, std::vector<Message::Part>> shared;
    std::vector<FieldChoice> neighbours;
    for (const Circuit& one : survey.circuits) {
        if (panel_of(survey, one) != panel) continue;
        if (one.names_neutral()) shared[*one.neutral].emplace_back(name_of_circuit(survey, one));
        if (!one.names_neutral() && one.id != id)
            neighbours.push_back(
                {std::string(with_neighbour) + one.id, {tr("shared with {0}"), {name_of_circuit(survey, one)}}});
    }
    for (auto& [neutral, names] : shared)
        choices.push_back({neutral, {tr("{0}: {1}"), {neutral, and_list(std::move(names))}}});
    choices.insert(choices.end(), neighbours.begin(), neighbours.end());
    return choices;
}

Outcome<Edit> neutral_chosen(const Survey& survey, const std::string& circuit, const std::string& choice) {
    if (choice.empty()) return share_neutral(circuit, std::nullopt);
    if (!choice.starts_with(with_neighbour)) return share_neutral(circuit, choice);
    const std::string other = choice.substr(with_neighbour.size());
    if (!survey.circuits.contains(other)) return refused("there is no such circuit", "choose one that is there");
    const std::string neutral = new_neutral(survey);
    Message name{tr("{0} and {1} share a neutral"), {circuit, other}};
    return together(std::move(name), {share_neutral(circuit, neutral), share_neutral(other, neutral)});
}

}  // namespace doorcard
