// SPDX-License-Identifier: MIT
#include "desk/typed_breaker.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <charconv>
#include <cmath>

#include "base/folded.hpp"
#include "desk/claimed_circuit.hpp"
#include "desk/new_ids.hpp"
#include "survey/edits/breaker_edits.hpp"
#include "survey/edits/circuit_edits.hpp"
#include "survey/edits/panel_edits.hpp"

namespace doorcard {
namespace {

std::string_view trimmed(std::string_view text) {
    while (!text.empty() && std::isspace(static_cast<unsigned char>(text.front()))) text.remove_prefix(1);
    while (!text.empty() && std::isspace(static_cast<unsigned char>(text.back()))) text.remove_suffix(1);
    return text;
}

std::string_view first_word(std::string_view text) { return text.substr(0, text.find(' ')); }

/// What was typed, taken apart.
struct TypedWords {
    std::optional<double> amps;
    int poles = 0;  ///< 0: not said
    bool tandem = false, spare = false;
    Guards guards;
    std::string text;
};

/// `20`, `20A`, `30/2`, `15t`: the rating at the begin of what was typed. False where the word is none.
bool take_rating(std::string_view word, TypedWords& into) {
    double amps = 0;
    const auto [end, fault] = std::from_chars(word.data(), word.data() + word.size(), amps);
    if (fault != std::errc() || amps <= 0 || !std::isfinite(amps)) return false;
    std::string_view rest(end, static_cast<std::size_t>(word.data() + word.size() - end));
    if (rest.starts_with('A') || rest.starts_with('a')) rest.remove_prefix(1);
    if (rest.size() == 2 && rest[0] == '/' && rest[1] >= '1' && rest[1] <= '3')
        into.poles = rest[1] - '0';
    else if (rest == "t")
        into.tandem = true;
    else if (!rest.empty())
        return false;
    into.amps = amps;
    return true;
}

bool take_guard(const std::string& word, TypedWords& into) {
    struct Known {
        std::string_view word;
        bool ground, arc;
    };
    constexpr Known known[] = {{"gf", true, false}, {"gfci", true, false}, {"gfi", true, false}, {"arc", false, true},
                               {"af", false, true}, {"afci", false, true}, {"dual", true, true}};
    const auto found = std::ranges::find(known, word, &Known::word);
    if (found == std::end(known)) return false;
    if (!into.guards) into.guards.emplace();
    const auto add = [&](Guard guard) {
        if (std::ranges::find(*into.guards, guard) == into.guards->end()) into.guards->push_back(guard);
    };
    if (found->ground) add(Guard::ground);
    if (found->arc) add(Guard::arc);
    return true;
}

TypedWords taken_apart(std::string_view typed) {
    TypedWords words;
    std::string_view rest = trimmed(typed);
    if (take_rating(first_word(rest), words)) rest = trimmed(rest.substr(first_word(rest).size()));
    while (!rest.empty()) {
        const std::string word = folded(first_word(rest));
        if (word == "s" && !words.spare)
            words.spare = true;
        else if (!take_guard(word, words))
            break;
        rest = trimmed(rest.substr(first_word(rest).size()));
    }
    words.text = std::string(rest);
    return words;
}

std::string without_doubt(std::string_view text) {
    while (!text.empty() && (text.back() == '?' || text.back() == ' ')) text.remove_suffix(1);
    return std::string(text);
}

const Circuit* circuit_on(const Survey& survey, const std::string& breaker) {
    const auto found = std::ranges::find_if(survey.circuits, [&](const Circuit& one) {
        return std::ranges::find(one.breakers, breaker) != one.breakers.end();
    });
    return found == survey.circuits.end() ? nullptr : &*found;
}

/// The words of a breaker, as an edit of the survey that has it.
Outcome<Survey> with_text(Survey survey, const std::string& breaker, const std::string& typed) {
    if (typed.empty()) return survey;
    const std::string text = without_doubt(typed);
    if (const Circuit* known = circuit_on(survey, breaker))
        return name_circuit(known->id, text).apply(std::move(survey));
    Breaker labelled = *survey.breakers.find(breaker);
    labelled.old_label = typed;
    Circuit circuit;
    circuit.id = new_circuit_id(survey, text.empty() ? breaker : text);
    circuit.breakers = {breaker};
    if (!text.empty()) circuit.purpose = text;
    circuit.traced = Traced{"old-directory", std::nullopt, std::nullopt};
    auto changed = change_breaker(labelled).apply(std::move(survey));
    return changed ? add_circuit(circuit).apply(*std::move(changed)) : changed;
}

/// A new breaker in these spaces with its words.
Outcome<Survey> with_new(Survey survey, std::string_view panel, std::vector<int> spaces, std::vector<char> halves,
                         const TypedWords& words, const std::string& text) {
    Breaker breaker;
    breaker.panel = panel;
    breaker.spaces = std::move(spaces);
    breaker.halves = std::move(halves);
    if (words.amps) breaker.amps = Amperes(*words.amps);
    breaker.guards = words.guards;
    if (words.spare) breaker.state = BreakerState::spare;
    breaker.id = breaker.default_id();
    auto added = add_breaker(breaker).apply(std::move(survey));
    return added && !words.spare ? with_text(*std::move(added), breaker.id, text) : added;
}

/// The two halves of a tandem, each with its words: `Hall|Bath`.
Outcome<Survey> with_tandem(Survey survey, std::string_view panel, int space, const TypedWords& words) {
    const std::size_t bar = words.text.find('|');
    const std::string upper(trimmed(std::string_view(words.text).substr(0, bar)));
    const std::string lower(bar == std::string::npos ? "" : trimmed(std::string_view(words.text).substr(bar + 1)));
    auto one = with_new(std::move(survey), panel, {space}, {'a'}, words, upper);
    return one ? with_new(*std::move(one), panel, {space}, {'b'}, words, lower) : one;
}

Outcome<Survey> with_changed(Survey survey, Breaker breaker, const TypedWords& words) {
    if (words.amps) breaker.amps = Amperes(*words.amps);
    if (words.guards) breaker.guards = words.guards;
    if (words.spare) breaker.state = BreakerState::spare;
    if (!words.spare && !words.text.empty() && breaker.state == BreakerState::spare) breaker.state.reset();
    const std::string id = breaker.id;
    auto changed = change_breaker(breaker).apply(std::move(survey));
    return changed && !words.spare ? with_text(*std::move(changed), id, words.text) : changed;
}

Outcome<Survey> with_empty(Survey survey, std::string_view panel_id, Position at) {
    Panel panel = *survey.panels.find(panel_id);
    if (!panel.empty_spaces) panel.empty_spaces.emplace();
    panel.empty_spaces->push_back(at.space);
    std::ranges::sort(*panel.empty_spaces);
    panel.empty_spaces->erase(std::unique(panel.empty_spaces->begin(), panel.empty_spaces->end()),
                              panel.empty_spaces->end());
    return change_panel(panel).apply(std::move(survey));
}

std::string position_words(std::string_view panel, Position at) { return fmt::format("{} {}", panel, name_of(at)); }

Edit empty_edit(std::string_view panel, Position at) {
    return {{tr("note {0} as empty"), {position_words(panel, at)}},
            [panel = std::string(panel), at](Survey survey) { return with_empty(std::move(survey), panel, at); }};
}

Edit change_edit(const Survey& survey, std::string_view panel, Position at, const Breaker& breaker,
                 const TypedWords& words) {
    const Circuit* known = circuit_on(survey, breaker.id);
    const bool only_rated = words.amps && !words.guards && !words.spare && (!known || words.text.empty());
    return {only_rated && words.text.empty()
                ? Message{tr("rate {0} at {1:g} A"), {position_words(panel, at), *words.amps}}
                : Message{tr("change {0}"), {position_words(panel, at)}},
            [breaker, words](Survey now) { return with_changed(std::move(now), breaker, words); }};
}

Outcome<Edit> new_edit(const Survey& survey, std::string_view panel, Position at, const TypedWords& words) {
    Message name{tr("enter {0}"), {position_words(panel, at)}};
    const std::string of(panel);
    if (words.tandem) {
        if (at.half != ' ') return refused("a tandem takes a whole space", "type it on a space that has no halves");
        return Edit{std::move(name), [=](Survey now) { return with_tandem(std::move(now), of, at.space, words); }};
    }
    const int poles = std::max(1, words.poles);
    const auto spaces = spaces_down(survey, panel, at.space, poles);
    if (!spaces)
        return refused(fmt::format("{} poles do not fit below {}", poles, name_of(at)),
                       "begin further up, or say how many spaces the panel has");
    const std::vector<char> halves(at.half == ' ' ? 0 : spaces->size(), at.half);
    return Edit{std::move(name),
                [=](Survey now) { return with_new(std::move(now), of, *spaces, halves, words, words.text); }};
}

std::string guards_typed(const Guards& guards) {
    if (!guards) return {};
    std::string text;
    for (const Guard guard : *guards)
        if (guard != Guard::equipment_ground) text += guard == Guard::ground ? " gf" : " arc";
    return text;
}

}  // namespace

Outcome<TypedBreaker> typed_breaker(const Survey& survey, std::string_view panel, Position at, std::string_view typed) {
    if (!survey.panels.contains(panel)) return refused("there is no such panel", "choose one that is there");
    const std::string_view all = trimmed(typed);
    const Breaker* there = breaker_at(survey, panel, at);
    const Position next = below(survey, panel, at).value_or(at);
    if (all == "-") {
        if (there) return refused(fmt::format("a breaker sits in {}", name_of(at)), "take it out first");
        return TypedBreaker{empty_edit(panel, at), next};
    }
    if (all.empty()) return refused("nothing was typed", "type a rating and what it feeds, as 20 Kitchen");
    const TypedWords words = taken_apart(all);
    if (there && (words.tandem || (words.poles > 0 && static_cast<std::size_t>(words.poles) != there->poles())))
        return refused(
            fmt::format("a breaker of {} sits in {}", there->poles() == 1 ? "one pole" : "more poles", name_of(at)),
            "take it out first, or change its poles from the menu");
    if (there) return TypedBreaker{change_edit(survey, panel, at, *there, words), next};
    auto edit = new_edit(survey, panel, at, words);
    if (!edit) return tl::unexpected(std::move(edit.error()));
    const auto spaces = spaces_down(survey, panel, at.space, std::max(1, words.poles));
    const auto last = spaces && words.poles > 1
                          ? below(survey, panel, {spaces->back() > at.space ? spaces->back() : spaces->front(), ' '})
                          : std::optional(next);
    return TypedBreaker{*std::move(edit), last.value_or(at)};
}

std::string typed_text_of(const Survey& survey, std::string_view panel_id, Position at) {
    const Breaker* breaker = breaker_at(survey, panel_id, at);
    const Panel* panel = survey.panels.find(panel_id);
    if (!breaker) {
        const bool empty = panel && panel->empty_spaces &&
                           std::ranges::find(*panel->empty_spaces, at.space) != panel->empty_spaces->end();
        return empty ? "-" : "";
    }
    std::string text = breaker->amps ? fmt::format("{:g}", breaker->amps->value) : "";
    if (breaker->amps && breaker->poles() > 1) text += fmt::format("/{}", breaker->poles());
    if (breaker->state == BreakerState::spare) text += " s";
    text += guards_typed(breaker->guards);
    const Circuit* circuit = circuit_on(survey, breaker->id);
    const std::string words = circuit && circuit->purpose ? *circuit->purpose : breaker->old_label.value_or("");
    if (!words.empty()) text += " " + words;
    return std::string(trimmed(text));
}

}  // namespace doorcard
