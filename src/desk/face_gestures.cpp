// SPDX-License-Identifier: MIT
#include "desk/face_gestures.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "survey/edits/breaker_edits.hpp"

namespace doorcard {
namespace {

tl::unexpected<std::vector<Complaint>> no_breaker_here(Position at) {
    return refused(fmt::format("no breaker is known in {}", name_of(at)), "type its rating there first");
}

Message named(const char* pattern, const Breaker& breaker) { return {pattern, {breaker.id}}; }

/// A place for a breaker of that many poles, of a tandem in the same half.
Outcome<BreakerPlace> place_at(const Survey& survey, const std::string& panel, const Breaker& breaker, Position to) {
    const auto spaces = spaces_down(survey, panel, to.space, static_cast<int>(breaker.poles()));
    if (!spaces)
        return refused(fmt::format("{} poles do not fit from {} down", breaker.poles(), name_of(to)),
                       "choose a space further up");
    std::vector<char> halves;
    if (!breaker.halves.empty()) halves.assign(spaces->size(), to.half == ' ' ? breaker.halves.front() : to.half);
    return BreakerPlace{panel, *spaces, halves};
}

/// The same breaker in other spaces: moved, with what names it, in one step.
Edit resized(const Breaker& breaker, const std::vector<int>& spaces, Message name) {
    Edit edit = move_breaker(breaker.id, {breaker.panel, spaces, {}});
    edit.name = std::move(name);
    return edit;
}

bool says_nothing(const Survey& survey, const Breaker& breaker) {
    const bool feeds = std::ranges::any_of(survey.circuits, [&](const Circuit& one) {
        return std::ranges::find(one.breakers, breaker.id) != one.breakers.end();
    });
    return !feeds && !breaker.old_label && !breaker.note;
}

}  // namespace

Outcome<Edit> move_to(const Survey& survey, const std::string& panel, Position from, Position to) {
    const Breaker* breaker = breaker_at(survey, panel, from);
    if (!breaker) return no_breaker_here(from);
    const Breaker* other = breaker_at(survey, panel, to);
    if (other == breaker) return refused("it sits there already", "choose another space");
    if (other && other->poles() == breaker->poles() && other->halves.size() == breaker->halves.size())
        return swap_breakers(breaker->id, other->id);
    if (other)
        return refused(fmt::format("a breaker of {} poles sits in {}", other->poles(), name_of(to)),
                       "take that one out first, or choose a free space");
    auto place = place_at(survey, panel, *breaker, to);
    if (!place) return tl::unexpected(std::move(place.error()));
    return move_breaker(breaker->id, *place);
}

Outcome<Edit> two_pole_here(const Survey& survey, const std::string& panel, Position at) {
    const Breaker* breaker = breaker_at(survey, panel, at);
    const auto spaces = spaces_down(survey, panel, at.space, 2);
    if (!spaces)
        return refused(fmt::format("two poles do not fit from {} down", name_of(at)), "begin one space further up");
    if (at.half != ' ') return refused("this is half of a tandem", "take the tandem out first");
    if (!breaker) {
        Breaker added;
        added.panel = panel;
        added.spaces = *spaces;
        Edit edit = add_breaker(added);
        edit.name = {tr("two poles in {0}"), {fmt::format("{} {}", panel, fmt::join(*spaces, "+"))}};
        return edit;
    }
    if (breaker->poles() != 1) return refused("it has two poles already", "one pole again: from the same menu");
    const int next = spaces->front() == at.space ? spaces->back() : spaces->front();
    const Breaker* lower = breaker_at(survey, panel, {next, ' '});
    if (lower && !says_nothing(survey, *lower))
        return refused(fmt::format("the breaker in {} feeds something of its own", next),
                       "move or take that one out first");
    const Message name = named(tr("two poles for breaker {0}"), *breaker);
    std::vector<Edit> steps;
    if (lower) steps.push_back(remove_breaker(lower->id, Mentions::take_along));
    steps.push_back(resized(*breaker, *spaces, name));
    return together(name, std::move(steps));
}

Outcome<Edit> one_pole_here(const Survey& survey, const std::string& panel, Position at) {
    const Breaker* breaker = breaker_at(survey, panel, at);
    if (!breaker) return no_breaker_here(at);
    if (breaker->poles() == 1) return refused("it has one pole already", "two poles: from the same menu");
    if (!breaker->halves.empty()) return refused("it is part of a tandem", "take it out, and type it anew");
    return resized(*breaker, {at.space}, named(tr("one pole for breaker {0}"), *breaker));
}

Outcome<Edit> tied_with_below(const Survey& survey, const std::string& panel, Position at) {
    const Breaker* breaker = breaker_at(survey, panel, at);
    if (!breaker) return no_breaker_here(at);
    const auto next = below(survey, panel, at);
    const Breaker* lower = next ? breaker_at(survey, panel, *next) : nullptr;
    if (!lower) return refused("no breaker is known below it", "type that one first");
    const auto one = spaces_down(survey, panel, at.space, static_cast<int>(breaker->poles()) + 1);
    if (!one || std::ranges::find(*one, next->space) == one->end())
        return refused("the next one hangs on the other side", "a tie joins neighbours of one side");
    return tie_breakers({breaker->id, lower->id});
}

Outcome<Edit> untied(const Survey& survey, const std::string& panel, Position at) {
    const Breaker* breaker = breaker_at(survey, panel, at);
    if (!breaker) return no_breaker_here(at);
    return untie_breaker(breaker->id);
}

Outcome<Edit> spare_or_in_use(const Survey& survey, const std::string& panel, Position at) {
    const Breaker* breaker = breaker_at(survey, panel, at);
    if (!breaker) return no_breaker_here(at);
    return breaker->state == BreakerState::spare ? put_in_use(breaker->id) : make_spare(breaker->id);
}

Outcome<Edit> kept_off_or_on(const Survey& survey, const std::string& panel, Position at) {
    const Breaker* breaker = breaker_at(survey, panel, at);
    if (!breaker) return no_breaker_here(at);
    return breaker->state == BreakerState::off ? put_in_use(breaker->id) : switch_off(breaker->id, "");
}

Outcome<Edit> taken_out(const Survey& survey, const std::string& panel, Position at) {
    const Breaker* breaker = breaker_at(survey, panel, at);
    if (!breaker) return no_breaker_here(at);
    return remove_breaker(breaker->id, Mentions::take_along);
}

}  // namespace doorcard
