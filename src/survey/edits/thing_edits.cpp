// SPDX-License-Identifier: MIT
#include "survey/edits/thing_edits.hpp"

#include "survey/each_table.hpp"

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

/// Names of neutrals that no circuit has any more go by themselves.
void drop_lost_neutrals(Survey& survey) {
    for (const Reference& lost : dangling_references(survey))
        if (lost.kinds == named_neutral)
            rename_all(survey, [&](std::uint32_t kinds, const std::string& id) {
                return kinds == named_neutral && id == lost.id ? std::nullopt : std::optional(id);
            });
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
    rename_all(survey, [&](std::uint32_t may_be, const std::string& named) {
        return (may_be & kinds) && named == id ? std::nullopt : std::optional(named);
    });
    if (kinds == named_circuit && mentions == Mentions::take_along) {  // the neutral it alone had is gone with it
        Survey later = survey;
        auto rows = survey.circuits.rows();
        std::erase_if(rows, [&](const Circuit& circuit) { return circuit.id == id; });
        later.circuits = Table<Circuit>(std::move(rows));
        drop_lost_neutrals(later);
        later.circuits = survey.circuits;
        survey = std::move(later);
    }
    return survey;
}

}  // namespace doorcard
