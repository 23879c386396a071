// SPDX-License-Identifier: MIT
#include "survey/edits/thing_edits.hpp"

namespace doorcard {
namespace {

constexpr std::size_t most_named = 3;  // in one sentence

std::string places_words(const Survey& survey, const std::vector<Reference>& references) {
    std::string words;
    for (std::size_t i = 0; i < std::min(references.size(), most_named); ++i)
        words += (words.empty() ? "" : ", ") + entry_words(survey, references[i]);
    if (references.size() > most_named) words += fmt::format(" and {} more", references.size() - most_named);
    return words;
}

/// A floor area that was of one panel would be of the whole premises without it: that is for a person to say.
const Reference* area_of(const std::vector<Reference>& references) {
    const auto found = std::ranges::find_if(references, [](const Reference& reference) {
        return reference.table == "dwelling" || reference.table == "occupancy";
    });
    return found == references.end() ? nullptr : &*found;
}

/// The breakers that go because the panel which they sit in goes.
std::vector<std::string> breakers_in(const Survey& survey, const std::string& panel) {
    std::vector<std::string> ids;
    for (const Breaker& breaker : survey.breakers)
        if (breaker.panel == panel) ids.push_back(breaker.id);
    return ids;
}

/// The name of a neutral that only this circuit has is named nowhere once it is gone.
void drop_lost_neutral(Survey& survey, const Circuit& gone) {
    if (!gone.names_neutral()) return;
    const std::string neutral = *gone.neutral;
    const auto has_it = [&](const Circuit& circuit) { return circuit.id != gone.id && circuit.neutral == neutral; };
    if (std::ranges::none_of(survey.circuits, has_it)) rename_all(survey, named_neutral, neutral, std::nullopt);
}

}  // namespace

Outcome<Survey> without_mentions(Survey survey, std::uint32_t kinds, const std::string& id, Mentions mentions) {
    const auto references = references_to(survey, kinds, id);
    if (mentions == Mentions::refuse && !references.empty())
        return refused(fmt::format("\"{}\" is named by {}", id, places_words(survey, references)),
                       "take it out there first, or take them along");
    if (const Reference* area = area_of(references))
        return refused(fmt::format("the area of {} is that of \"{}\"", entry_words(survey, *area), id),
                       "name another panel there, or take that entry out first");
    if (kinds == named_panel)
        for (const std::string& breaker : breakers_in(survey, id)) {
            auto without = without_mentions(std::move(survey), named_breaker, breaker, Mentions::take_along);
            if (!without) return without;
            survey = std::move(*without);
        }
    rename_all(survey, kinds, id, std::nullopt);
    const Circuit* circuit = kinds == named_circuit ? survey.circuits.find(id) : nullptr;
    if (circuit && mentions == Mentions::take_along) drop_lost_neutral(survey, Circuit(*circuit));
    return survey;
}

}  // namespace doorcard
