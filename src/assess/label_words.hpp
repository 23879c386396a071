// SPDX-License-Identifier: MIT
#pragma once
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "base/folded.hpp"

namespace doorcard {

/// A word of a label, as written and as compared: lower case, without accents.
struct LabelWord {
    std::string written;
    std::string folded;
    bool dotted = false;     ///< a period follows
    bool explained = false;  ///< an opening parenthesis follows
};

/// Words of a label in order. Apostrophes and hyphens stay inside; 'A/C' is one word, 'plugs/lights' are two.
std::vector<LabelWord> words_of(std::string_view label);

/// True where nothing is left of the label after generic words, figures and ratings ('Misc. plugs 2'), in English and
/// Spanish. Common practice, no source.
bool says_nothing(std::string_view label);

/// The words of a label that say something, folded, plugs and receptacles and the like as one; for comparing labels.
std::set<std::string> telling_words(std::string_view label);

/// The word that makes a label depend on who lives or works there: a person, a relation, a tenancy, a passing use.
/// Nullopt for roles and things ('Manager's office', 'Guest bath'). Common practice, no source.
std::optional<std::string> transient_word(std::string_view label);

/// True for a label that calls its position spare, unused or blank.
bool calls_it_spare(std::string_view label);

/// An abbreviation in a label, and what it means in English (a key of the catalogue); null where doorcard does not
/// know.
struct Abbreviation {
    std::string written;
    const char* meaning = nullptr;
};

/// Abbreviations in a label. `names` are ids of the survey, which explain themselves.
std::vector<Abbreviation> abbreviations_in(std::string_view label, const std::set<std::string>& names);

}  // namespace doorcard
