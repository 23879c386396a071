// SPDX-License-Identifier: MIT
#include "desk/typed_breaker.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "desk/breaker_words.hpp"
#include "desk/row_words.hpp"
#include "desk/typed_words.hpp"
#include "survey/edits/breaker_edits.hpp"
#include "survey/edits/panel_edits.hpp"

namespace doorcard {
namespace {

constexpr int last_space = 999;  // of any panel (contract 1)

/// Guards as typed; one that has no typed word stays.
Guards guards_after(const Guards& before, const Guards& typed) {
    if (!typed) return before;
    Guards after = typed;
    for (const Guard guard : before.value_or(std::vector<Guard>{}))
        if (guard == Guard::equipment_ground) after->push_back(guard);
    return after;
}

/// A breaker with what was typed of it.
Outcome<Survey> with_said(Survey survey, Breaker breaker, const BreakerWords& words) {
    if (words.amps) breaker.amps = Amperes(*words.amps);
    breaker.guards = guards_after(breaker.guards, words.guards);
    if (!words.spare && !words.text.empty() && breaker.state == BreakerState::spare) breaker.state.reset();
    auto changed = change_breaker(breaker).apply(std::move(survey));
    if (!changed) return changed;
    return words.spare ? with_spare(*std::move(changed), breaker.id)
                       : with_row_words(*std::move(changed), breaker.id, words.text);
}

/// A new breaker in these spaces. A question mark alone says no more than that one sits there.
Outcome<Survey> with_new(Survey survey, const std::string& panel, const std::vector<int>& spaces,
                         const std::vector<char>& halves, BreakerWords words) {
    Breaker breaker;
    breaker.panel = panel;
    breaker.spaces = spaces;
    breaker.halves = halves;
    breaker.id = breaker.default_id();
    if (words.text == "?") words.text.clear();
    auto added = add_breaker(breaker).apply(std::move(survey));
    return added ? with_said(*std::move(added), breaker, words) : added;
}

/// The two halves of a tandem, each with its words, and with a rating of its own where one is given: `Hall|20 Bath`.
Outcome<Survey> with_tandem(Survey survey, const std::string& panel, int space, const BreakerWords& words) {
    std::string_view rest = words.text;
    for (const char half : {'a', 'b'}) {
        auto own = breaker_words(trimmed(rest.substr(0, rest.find('|'))));
        if (!own) return tl::unexpected(std::move(own.error()));
        if (!own->amps) own->amps = words.amps;
        if (!own->guards) own->guards = words.guards;
        own->spare = own->spare || words.spare;
        auto with = with_new(std::move(survey), panel, {space}, {half}, *std::move(own));
        if (!with) return with;
        survey = *std::move(with);
        rest = rest.find('|') == std::string_view::npos ? "" : rest.substr(rest.find('|') + 1);
    }
    return survey;
}

bool is_noted_empty(const Survey& survey, std::string_view panel_id, int space) {
    const Panel* panel = survey.panels.find(panel_id);
    return panel && panel->empty_spaces && std::ranges::find(*panel->empty_spaces, space) != panel->empty_spaces->end();
}

Outcome<Survey> with_empty(Survey survey, std::string_view panel_id, int space, bool empty) {
    if (!survey.panels.contains(panel_id)) return refused("there is no such panel", "choose one that is there");
    Panel panel = *survey.panels.find(panel_id);
    auto& spaces = panel.empty_spaces;
    if (!spaces) spaces.emplace();
    std::erase(*spaces, space);
    if (empty) spaces->insert(std::ranges::upper_bound(*spaces, space), space);
    if (spaces->empty()) spaces.reset();
    return change_panel(panel).apply(std::move(survey));
}

std::string position_words(std::string_view panel, Position at) { return fmt::format("{} {}", panel, name_of(at)); }

Edit empty_edit(std::string_view panel, Position at, bool empty) {
    return {{empty ? tr("note {0} as empty") : tr("note {0} as not seen"), {position_words(panel, at)}},
            [panel = std::string(panel), at, empty](Survey survey) {
                return with_empty(std::move(survey), panel, at.space, empty);
            }};
}

/// `-`, and what takes it back.
Outcome<Edit> emptied(const Survey& survey, std::string_view panel, Position at, bool empty) {
    for (const char half : {' ', 'a', 'b'})
        if (const Breaker* there = breaker_at(survey, panel, {at.space, half}))
            return refused(fmt::format("breaker {} sits in {}", there->id, at.space), "take it out first");
    if (!empty && !is_noted_empty(survey, panel, at.space))
        return refused("nothing was typed", "type a rating and what it feeds, as 20 Kitchen");
    return empty_edit(panel, at, empty);
}

Outcome<Edit> changed(std::string_view panel, Position at, const Breaker& breaker, const BreakerWords& words) {
    const bool has_poles = words.poles == 0 || static_cast<std::size_t>(words.poles) == breaker.poles();
    if (words.tandem || !has_poles)
        return refused(
            fmt::format("a breaker of {} sits in {}", breaker.poles() == 1 ? "one pole" : "more poles", name_of(at)),
            "take it out first, or change its poles from the menu");
    if (words.text == "?") return refused("a question mark alone says nothing of it", "write what it may be: Kitchen?");
    const bool only_rated = words.amps && !words.guards && !words.spare && words.text.empty();
    Message name = only_rated ? Message{tr("rate {0} at {1:g} A"), {position_words(panel, at), *words.amps}}
                              : Message{tr("change {0}"), {position_words(panel, at)}};
    return Edit{std::move(name), [id = breaker.id, words](Survey now) -> Outcome<Survey> {
                    const Breaker* there = now.breakers.find(id);
                    if (!there) return refused(fmt::format("there is no breaker \"{}\"", id), "type it anew");
                    const Breaker before = *there;
                    return with_said(std::move(now), before, words);
                }};
}

Outcome<Edit> entered(const Survey& survey, std::string_view panel, Position at, const BreakerWords& words) {
    Message name{tr("enter {0}"), {position_words(panel, at)}};
    const std::string of(panel);
    if (words.tandem && at.half != ' ')
        return refused("a tandem takes a whole space", "type it on a space that has no halves");
    if (words.tandem)
        return Edit{std::move(name), [=](Survey now) { return with_tandem(std::move(now), of, at.space, words); }};
    const int poles = std::max(1, words.poles);
    const auto spaces = spaces_down(survey, panel, at.space, poles);
    if (!spaces)
        return refused(fmt::format("{} poles do not fit from {} down", poles, name_of(at)),
                       "begin further up, or say how many spaces the panel has");
    const std::vector<char> halves(at.half == ' ' ? 0 : spaces->size(), at.half);
    return Edit{std::move(name), [=](Survey now) { return with_new(std::move(now), of, *spaces, halves, words); }};
}

Outcome<Edit> edit_of(const Survey& survey, std::string_view panel, Position at, const std::string& typed) {
    const Breaker* there = breaker_at(survey, panel, at);
    if (typed.empty() && there)
        return refused(fmt::format("breaker {} sits in {}", there->id, name_of(at)),
                       "take it out from the menu, or press Escape to leave it as it was");
    if (typed.empty() || typed == "-") return emptied(survey, panel, at, !typed.empty());
    if (typed == "x" || typed == "X")
        return refused("an x says nothing of it", "type - where nothing sits there; Escape leaves the row as it was");
    const auto words = breaker_words(typed);
    if (!words) return tl::unexpected(words.error());
    return there ? changed(panel, at, *there, *words) : entered(survey, panel, at, *words);
}

/// The row to go on with, in the survey that the edit made.
Position next_of(const Survey& after, std::string_view panel, Position at) {
    const bool halved = breaker_at(after, panel, {at.space, 'b'}) && at.half == ' ';
    const bool over = halved && after.panels.find(panel)->turned_over.value_or(false);
    return below(after, panel, halved ? Position{at.space, over ? 'a' : 'b'} : at).value_or(at);
}

}  // namespace

Outcome<TypedBreaker> typed_breaker(const Survey& survey, std::string_view panel, Position at, std::string_view typed) {
    const Panel* shown = survey.panels.find(panel);
    if (!shown) return refused("there is no such panel", "choose one that is there");
    if (at.space < 1 || at.space > shown->spaces.value_or(last_space))
        return refused(fmt::format("panel {} has no space {}", panel, at.space), "choose one that it has");
    auto plain = plain_line(typed);
    if (!plain) return tl::unexpected(std::move(plain.error()));
    auto edit = edit_of(survey, panel, at, *plain);
    if (!edit) return tl::unexpected(std::move(edit.error()));
    const auto after = edit->apply(survey);
    if (!after) return tl::unexpected(after.error());
    return TypedBreaker{*std::move(edit), next_of(*after, panel, at)};
}

std::string typed_text_of(const Survey& survey, std::string_view panel, Position at) {
    const Breaker* breaker = breaker_at(survey, panel, at);
    if (!breaker) return is_noted_empty(survey, panel, at.space) ? "-" : "";
    BreakerWords words;
    if (breaker->amps) words.amps = breaker->amps->value;
    if (breaker->poles() > 1) words.poles = static_cast<int>(breaker->poles());
    words.guards = breaker->guards;
    words.spare = breaker->state == BreakerState::spare;
    words.text = words.spare ? "" : row_words(survey, *breaker);
    return typed_words_of(words);
}

}  // namespace doorcard
