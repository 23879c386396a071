// SPDX-License-Identifier: MIT
#include "desk/row_words.hpp"

#include <fmt/format.h>

#include "desk/breaker_words.hpp"
#include "desk/claimed_circuit.hpp"
#include "survey/edits/breaker_edits.hpp"
#include "survey/edits/circuit_edits.hpp"
#include "survey/references.hpp"

namespace doorcard {
namespace {

const Traced from_old_directory{"old-directory", std::nullopt, std::nullopt};

bool is_from_old_directory(const Circuit& circuit) { return circuit.traced && circuit.traced->how == "old-directory"; }

/// Somebody followed the circuit, with more or less proof: its words are no mere hearsay.
bool was_looked_for(const Circuit& circuit) {
    return circuit.traced && (circuit.traced->proves() || circuit.traced->how == "tracer");
}

void set_old_label(Survey& survey, const std::string& id, const std::string& text) {
    const std::size_t at = survey.breakers.position(id);
    Breaker breaker = survey.breakers[at];
    breaker.old_label = text;
    survey.breakers = survey.breakers.with_row(at, std::move(breaker));
}

/// Words of a breaker that nothing is known of: what the old directory says.
Outcome<Survey> with_first_words(Survey survey, const std::string& breaker, const std::string& typed) {
    Circuit circuit;
    circuit.id = new_circuit_id(survey, typed);
    circuit.breakers = {breaker};
    circuit.traced = from_old_directory;
    set_old_label(survey, breaker, typed);
    return add_circuit(circuit).apply(std::move(survey));
}

/// Words of a circuit that is only claimed: to where those stand that are shown now.
Outcome<Survey> with_claimed_words(Survey survey, Circuit circuit, const std::string& breaker,
                                   const std::string& typed) {
    const bool has_own_text = circuit.purpose || !is_from_old_directory(circuit);
    if (is_doubtful(typed)) {
        circuit.purpose.reset();
        circuit.traced = from_old_directory;
    } else if (has_own_text) {
        circuit.purpose = typed;
    }
    if (is_doubtful(typed) || !has_own_text) set_old_label(survey, breaker, typed);
    return change_circuit(circuit).apply(std::move(survey));
}

}  // namespace

std::string row_words(const Survey& survey, const Breaker& breaker) {
    const auto circuits = circuits_on(survey, breaker.id);
    if (circuits.size() > 1 || !why_no_circuit_on(survey, breaker).empty()) return {};
    if (circuits.empty()) return breaker.old_label.value_or("");
    const Circuit& circuit = survey.circuits[circuits[0]];
    if (circuit.purpose) return *circuit.purpose;
    const bool is_alone = circuit.breakers.size() == 1;
    return is_from_old_directory(circuit) && is_alone ? breaker.old_label.value_or("") : "";
}

Outcome<Survey> with_row_words(Survey survey, const std::string& id, const std::string& typed) {
    const Breaker* breaker = survey.breakers.find(id);
    if (!breaker) return refused(fmt::format("there is no breaker \"{}\"", id), "name one that is there");
    if (typed.empty() || typed == row_words(survey, *breaker)) return survey;
    if (const std::string why = why_no_circuit_on(survey, *breaker); !why.empty())
        return refused(why, "leave the text out: the row says so by itself");
    const auto circuits = circuits_on(survey, id);
    if (circuits.empty()) return with_first_words(std::move(survey), id, typed);
    if (circuits.size() > 1)
        return refused(fmt::format("{} circuits are on breaker {}", circuits.size(), id), "name each on its slip");
    Circuit circuit = survey.circuits[circuits[0]];
    if (!was_looked_for(circuit)) return with_claimed_words(std::move(survey), circuit, id, typed);
    if (is_doubtful(typed))
        return refused(fmt::format("circuit {} was traced, and carries no question mark", circuit.id),
                       "write what it feeds, or change on its slip how it was traced");
    circuit.purpose = typed;
    return change_circuit(circuit).apply(std::move(survey));
}

Outcome<Survey> with_spare(Survey survey, const std::string& breaker) {
    for (const std::size_t at : circuits_on(survey, breaker)) {
        const Circuit circuit = survey.circuits[at];
        const bool is_hearsay = is_from_old_directory(circuit) && !circuit.purpose && circuit.breakers.size() == 1 &&
                                references_to(survey, named_circuit, circuit.id).empty();
        if (!is_hearsay)
            return refused(fmt::format("circuit {} is on breaker {}: it is no spare", circuit.id, breaker),
                           "take the circuit off it first, if nothing hangs on it");
        auto without = remove_circuit(circuit.id, Mentions::take_along).apply(std::move(survey));
        if (!without) return without;
        return with_spare(*std::move(without), breaker);
    }
    return make_spare(breaker).apply(std::move(survey));
}

}  // namespace doorcard
