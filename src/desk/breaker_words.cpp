// SPDX-License-Identifier: MIT
#include "desk/breaker_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>

#include "base/folded.hpp"
#include "desk/typed_words.hpp"
#include "survey/edits/edit.hpp"

namespace doorcard {
namespace {

// Bounds of what is taken for a rating, in amperes; the highest is the largest of the standard sizes (240.6(A)).
constexpr double least_amps = 1, most_amps = 6000;

std::string_view behind_first_word(std::string_view text) { return trimmed(text.substr(first_word(text).size())); }

/// `/2`, `/2P`; 0 where it says no poles.
int poles_in(std::string_view word) {
    if (word.size() == 3 && (word[2] | 0x20) == 'p') word.remove_suffix(1);
    return word.size() == 2 && word[0] == '/' && word[1] >= '1' && word[1] <= '3' ? word[1] - '0' : 0;
}

/// `20`, `20A`, `30/2`, `15t`, `/2`: false where the word is no rating.
bool take_rating(std::string_view word, BreakerWords& into) {
    double amps = 0;
    const auto [end, fault] = std::from_chars(word.data(), word.data() + word.size(), amps, std::chars_format::fixed);
    const bool said = fault == std::errc() && std::isfinite(amps);
    std::string_view rest = said ? word.substr(static_cast<std::size_t>(end - word.data())) : word;
    if (said && !rest.empty() && (rest.front() | 0x20) == 'a') rest.remove_prefix(1);
    into.poles = poles_in(rest);
    into.tandem = said && folded(rest) == "t";
    if (into.poles == 0 && !into.tandem && (!said || !rest.empty())) return false;
    if (said) into.amps = amps;
    return true;
}

/// `20 A`: the unit as a word of its own.
bool is_unit(std::string_view word) { return word == "A" || word == "amp" || word == "amps"; }

bool are_guard_words(std::string_view rest) {
    Guards guards;
    for (; !rest.empty(); rest = behind_first_word(rest))
        if (!add_guard_word(first_word(rest), guards)) return false;
    return true;
}

/// Guards, and an s that nothing but guards follows.
std::string_view take_marks(std::string_view rest, BreakerWords& into) {
    for (; !rest.empty(); rest = behind_first_word(rest)) {
        const std::string_view word = first_word(rest);
        if (add_guard_word(word, into.guards)) continue;
        if (folded(word) != "s" || into.spare || !are_guard_words(behind_first_word(rest))) break;
        into.spare = true;
    }
    return rest;
}

bool is_quoted(std::string_view text) { return text.size() >= 2 && text.front() == '"' && text.back() == '"'; }

/// Whether the words are read as they are: with a text that begins with a rating or a guard they would not be.
bool reads_as(const BreakerWords& words, const std::string& typed) {
    const auto read = breaker_words(typed);
    return read && read->amps == words.amps && read->poles == words.poles && read->tandem == words.tandem &&
           read->spare == words.spare && read->guards == words.guards && read->text == words.text && typed != "-";
}

}  // namespace

Outcome<BreakerWords> breaker_words(std::string_view typed) {
    BreakerWords words;
    std::string_view rest = trimmed(typed);
    if (take_rating(first_word(rest), words)) {
        rest = behind_first_word(rest);
        if (words.amps && is_unit(first_word(rest))) rest = behind_first_word(rest);
    }
    if (words.amps && (*words.amps < least_amps || *words.amps > most_amps))
        return refused(fmt::format("{:g} A is no rating", *words.amps),
                       "write the rating first, as 20 Kitchen; a text that begins with a figure in quotes");
    rest = take_marks(rest, words);
    words.text = is_quoted(rest) ? rest.substr(1, rest.size() - 2) : rest;
    return words;
}

std::string typed_words_of(const BreakerWords& words) {
    std::string typed = words.amps ? fmt::format("{}", *words.amps) : "";
    if (words.tandem) typed += "t";
    if (words.poles > 0) typed += fmt::format("/{}", words.poles);
    typed += guards_typed(words.guards);
    if (words.spare) typed += " s";
    if (!words.text.empty()) {
        const std::string bare(trimmed(typed + " " + words.text));
        return reads_as(words, bare) ? bare : std::string(trimmed(typed + " \"" + words.text + "\""));
    }
    return std::string(trimmed(typed));
}

bool is_doubtful(std::string_view text) { return trimmed(text).ends_with('?'); }

}  // namespace doorcard
