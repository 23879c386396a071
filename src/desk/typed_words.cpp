// SPDX-License-Identifier: MIT
#include "desk/typed_words.hpp"

#include <fmt/format.h>
#include <glib.h>

#include <algorithm>
#include <charconv>

#include "base/folded.hpp"
#include "desk/face_places.hpp"
#include "survey/edits/edit.hpp"

namespace doorcard {
namespace {

constexpr std::size_t most_typed = 400;  // bytes of one line

bool is_blank(gunichar code) { return code == '\t' || g_unichar_isspace(code); }

struct GuardWord {
    std::string_view word;
    bool ground, arc;
};
constexpr GuardWord guard_words[] = {
    {"gf", true, false}, {"gfi", true, false}, {"gfci", true, false}, {"arc", false, true},
    {"af", false, true}, {"afi", false, true}, {"afci", false, true}, {"dual", true, true},
};

void add_guard(Guard guard, Guards& guards) {
    if (!guards) guards.emplace();
    if (std::ranges::find(*guards, guard) == guards->end()) guards->push_back(guard);
}

/// The number at the begin of a word, which is taken off; nullopt where there is none that a space can have.
std::optional<int> take_space(std::string_view& word) {
    constexpr int last_space = 999;
    int space = 0;
    const auto [end, fault] = std::from_chars(word.data(), word.data() + word.size(), space);
    if (fault != std::errc() || space < 1 || space > last_space) return std::nullopt;
    word.remove_prefix(static_cast<std::size_t>(end - word.data()));
    return space;
}

char take_half(std::string_view& word) {
    const char half = word.empty() ? ' ' : static_cast<char>(word.front() | 0x20);
    if (half != 'a' && half != 'b') return ' ';
    word.remove_prefix(1);
    return half;
}

}  // namespace

std::string_view first_word(std::string_view text) { return text.substr(0, text.find(' ')); }

Outcome<std::string> plain_line(std::string_view typed) {
    if (typed.size() > most_typed) return refused("that is too long for one row", "shorten it to a few words");
    if (!g_utf8_validate(typed.data(), static_cast<gssize>(typed.size()), nullptr))
        return refused("that is no text", "type it anew");
    const std::string whole(typed);
    std::string line;
    for (const char* at = whole.c_str(); at < whole.c_str() + whole.size(); at = g_utf8_next_char(at)) {
        const gunichar code = g_utf8_get_char(at);
        if (is_blank(code)) {
            if (!line.empty() && line.back() != ' ') line += ' ';
        } else if (g_unichar_isgraph(code)) {
            line.append(at, static_cast<std::size_t>(g_utf8_next_char(at) - at));
        }
    }
    return std::string(trimmed(line));
}

std::vector<std::string_view> lines_of(std::string_view text) {
    std::vector<std::string_view> lines;
    while (!text.empty()) {
        const std::size_t end = text.find_first_of("\r\n");
        lines.push_back(text.substr(0, end));
        if (end == std::string_view::npos) break;
        text.remove_prefix(end + (text.substr(end).starts_with("\r\n") ? 2 : 1));
    }
    return lines;
}

bool add_guard_word(std::string_view word, Guards& guards) {
    const auto found = std::ranges::find(guard_words, folded(word), &GuardWord::word);
    if (found == std::end(guard_words)) return false;
    if (found->ground) add_guard(Guard::ground, guards);
    if (found->arc) add_guard(Guard::arc, guards);
    return true;
}

std::string guards_typed(const Guards& guards) {
    std::string text;
    for (const Guard guard : guards.value_or(std::vector<Guard>{}))
        if (guard != Guard::equipment_ground) text += guard == Guard::ground ? " gf" : " arc";
    return text;
}

std::optional<TypedPlace> typed_place(std::string_view word, std::string_view panel) {
    TypedPlace place{std::string(panel), {}};
    if (const auto colon = word.find(':'); colon != std::string_view::npos) {
        place.panel = word.substr(0, colon);
        word.remove_prefix(colon + 1);
    }
    const auto space = take_space(word);
    if (!space) return std::nullopt;
    place.at = {*space, take_half(word)};
    while (word.starts_with('+') || word.starts_with('/')) {
        word.remove_prefix(1);
        if (!take_space(word)) return std::nullopt;
        take_half(word);
    }
    return word.empty() ? std::optional(place) : std::nullopt;
}

Outcome<const Breaker*> typed_breaker_place(const Survey& survey, std::string_view panel, std::string_view word) {
    const auto place = typed_place(word, panel);
    if (!place) return refused(fmt::format("\"{}\" is no space", word), "write a space of the panel, as 5 or 13a");
    if (!survey.panels.contains(place->panel))
        return refused(fmt::format("there is no panel \"{}\"", place->panel), "name one that is there");
    if (const Breaker* there = breaker_at(survey, place->panel, place->at)) return there;
    if (place->at.half == ' ' && (breaker_at(survey, place->panel, {place->at.space, 'a'}) ||
                                  breaker_at(survey, place->panel, {place->at.space, 'b'})))
        return refused(fmt::format("a tandem sits in {}", place->at.space),
                       fmt::format("say which half: {0}a or {0}b", place->at.space));
    return refused(fmt::format("no breaker is known in {} of {}", name_of(place->at), place->panel),
                   "type it on the face first");
}

}  // namespace doorcard
