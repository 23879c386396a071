// SPDX-License-Identifier: MIT
#include "desk/claimed_circuit.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "desk/new_ids.hpp"
#include "survey/edits/edit.hpp"

namespace doorcard {
namespace {

bool is_proved(const Circuit& circuit) { return circuit.traced && circuit.traced->proves(); }

/// Whether the outlet, or what it is fed through, hangs on a circuit that is proved.
bool is_traced(const Survey& survey, const Outlet& outlet) {
    const auto proved = [&](const std::string& id) {
        const Circuit* circuit = survey.circuits.find(id);
        return circuit && is_proved(*circuit);
    };
    const Outlet* at = &outlet;
    for (std::size_t steps = 0; at && steps <= survey.outlets.size(); ++steps) {
        if (!at->circuits.empty()) return std::ranges::any_of(at->circuits, proved);
        at = at->upstream ? survey.outlets.find(*at->upstream) : nullptr;
    }
    return false;
}

/// The breaker's one circuit that is only claimed, or a new one; empty where it has proved ones, or several.
std::string claimed_circuit(Survey& survey, const std::string& breaker) {
    const auto there = circuits_on(survey, breaker);
    if (there.size() > 1) return {};
    if (there.size() == 1) return is_proved(survey.circuits[there[0]]) ? "" : survey.circuits[there[0]].id;
    Circuit circuit;
    circuit.id = new_circuit_id(survey, breaker);
    circuit.breakers = {breaker};
    circuit.traced = Traced{"told", std::nullopt, std::nullopt};
    survey.circuits = survey.circuits.with_added(circuit);
    return circuit.id;
}

/// What something hangs on is no spare.
void put_in_use(Survey& survey, const std::string& id) {
    const std::size_t at = survey.breakers.position(id);
    Breaker breaker = survey.breakers[at];
    if (breaker.state != BreakerState::spare) return;
    breaker.state.reset();
    survey.breakers = survey.breakers.with_row(at, std::move(breaker));
}

}  // namespace

std::string new_circuit_id(const Survey& survey, std::string_view text) {
    const std::string id = id_of_words(text, "circuit");
    std::string unique = id;
    for (int n = 2; survey.circuits.contains(unique); ++n) unique = fmt::format("{}-{}", id, n);
    return unique;
}

std::string why_no_circuit_on(const Survey& survey, const Breaker& breaker) {
    for (const Panel& panel : survey.panels)
        if (std::ranges::find(panel.fed_by, breaker.id) != panel.fed_by.end())
            return fmt::format("breaker {} feeds panel {}", breaker.id, panel.id);
    for (const Source& source : survey.sources)
        if (source.through == breaker.id) return fmt::format("{} comes in through breaker {}", source.id, breaker.id);
    if (breaker.serves_as_main.value_or(false)) return fmt::format("breaker {} serves as the main", breaker.id);
    return {};
}

std::vector<std::size_t> circuits_on(const Survey& survey, std::string_view breaker) {
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < survey.circuits.size(); ++i)
        if (std::ranges::find(survey.circuits[i].breakers, breaker) != survey.circuits[i].breakers.end())
            found.push_back(i);
    return found;
}

Outcome<Survey> with_claim(Survey survey, const std::string& breaker, const Ids& outlets) {
    if (const std::string why = why_no_circuit_on(survey, *survey.breakers.find(breaker)); !why.empty())
        return refused(why, "name the breaker of the circuit itself");
    for (const std::string& id : outlets)
        if (is_traced(survey, *survey.outlets.find(id)))
            return refused(fmt::format("outlet {} is traced already", id),
                           "what was proved is not changed by what is said: see its row in the list");
    const std::string circuit = claimed_circuit(survey, breaker);
    for (const std::string& id : outlets) {
        Outlet outlet = *survey.outlets.find(id);
        outlet.old_breakers = Ids{breaker};
        outlet.circuits = circuit.empty() ? Ids{} : Ids{circuit};
        survey.outlets = survey.outlets.with_row(survey.outlets.position(id), std::move(outlet));
    }
    put_in_use(survey, breaker);
    return survey;
}

}  // namespace doorcard
