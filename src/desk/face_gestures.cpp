// SPDX-License-Identifier: MIT
#include "desk/face_gestures.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "desk/row_words.hpp"
#include "desk/typed_words.hpp"
#include "rules/lookups.hpp"
#include "survey/edits/breaker_edits.hpp"
#include "survey/references.hpp"

namespace doorcard {
namespace {

tl::unexpected<std::vector<Complaint>> no_breaker_here(Position at) {
    return refused(fmt::format("no breaker is known in {}", name_of(at)), "type its rating there first");
}

/// The edit, if it can be applied; else why not.
Outcome<Edit> tried(const Survey& survey, Edit edit) {
    const auto after = edit.apply(survey);
    if (!after) return tl::unexpected(after.error());
    return edit;
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

/// Whether nothing would be lost with the breaker below but that it is there: no circuit, no label, no reading, no tie
/// but to the one above, and no other rating than that one has.
bool gives_way(const Survey& survey, const Breaker& lower, const Breaker& upper) {
    if (lower.old_label || lower.note || lower.keep_on || lower.poles() != 1) return false;
    if (lower.amps && upper.amps && *lower.amps != *upper.amps) return false;
    const auto references = references_to(survey, named_breaker, lower.id);
    return std::ranges::all_of(references, [&](const Reference& one) {
        return one.table == "breaker" && survey.breakers[one.row].id == upper.id;
    });
}

/// What a two-pole breaker takes over of the two that it is made of.
Edit merged(const Breaker& upper, const Breaker* lower, const std::vector<int>& spaces, Message name) {
    std::vector<Edit> steps;
    if (lower) steps.push_back(remove_breaker(lower->id, Mentions::take_along));
    if (lower && lower->amps && !upper.amps) steps.push_back(rate_breaker(upper.id, lower->amps));
    steps.push_back(resized(upper, spaces, name));
    return together(std::move(name), std::move(steps));
}

/// The lowest of the positions of the handle that has this one.
Position lowest_of(const Survey& survey, const std::string& panel, Position at) {
    for (const bool left : {true, false})
        for (const FacePlaceRun& run : face_side(survey, panel, left))
            if (std::ranges::find(run, at) != run.end()) return run.back();
    return at;
}

bool is_next_down(const Survey& survey, const std::string& panel, Position at, Position next) {
    if (at.space == next.space) return true;
    const auto down = spaces_down(survey, panel, at.space, 2);
    return down && std::ranges::find(*down, next.space) != down->end();
}

/// Of the standard list, the rating next above; nullopt over the largest.
std::optional<Amperes> rating_above(const RuleBook& book, Amperes amps) {
    constexpr double least_step = 0.01;  // A, less than any two of the list lie apart
    return standard_rating_at_least(book, amps + Amperes(least_step));
}
std::optional<Amperes> rating_below(const RuleBook& book, Amperes amps) {
    std::optional<Amperes> best;
    for (auto one = rating_above(book, Amperes(0)); one && *one < amps; one = rating_above(book, *one)) best = one;
    return best;
}

}  // namespace

Outcome<Edit> move_to(const Survey& survey, const std::string& panel, Position from, Position to) {
    const Breaker* breaker = breaker_at(survey, panel, from);
    if (!breaker) return no_breaker_here(from);
    const Breaker* other = breaker_at(survey, panel, to);
    if (other && other != breaker && other->poles() == breaker->poles() &&
        other->halves.size() == breaker->halves.size())
        return tried(survey, swap_breakers(breaker->id, other->id));
    if (other && other != breaker)
        return refused(other->poles() == 1
                           ? fmt::format("a breaker of one pole sits in {}", name_of(to))
                           : fmt::format("a breaker of {} poles sits in {}", other->poles(), name_of(to)),
                       "take that one out first, or choose a free space");
    auto place = place_at(survey, panel, *breaker, to);
    if (!place) return tl::unexpected(std::move(place.error()));
    if (*place == place_of(*breaker)) return refused("it sits there already", "choose another space");
    return tried(survey, move_breaker(breaker->id, *place));
}

Outcome<Edit> two_pole_here(const Survey& survey, const std::string& panel, Position at) {
    const Breaker* breaker = breaker_at(survey, panel, at);
    const auto spaces = spaces_down(survey, panel, at.space, 2);
    if (!spaces)
        return refused(fmt::format("two poles do not fit from {} down", name_of(at)), "begin one space further up");
    if (at.half != ' ') return refused("this is half of a tandem", "take the tandem out first");
    if (breaker && breaker->poles() != 1)
        return refused("it has more than one pole already", "one pole again: from the same menu");
    const int next = spaces->front() == at.space ? spaces->back() : spaces->front();
    const Breaker* lower = breaker_at(survey, panel, {next, ' '});
    if (!breaker) {
        Breaker added;
        added.panel = panel;
        added.spaces = *spaces;
        Edit edit = add_breaker(added);
        edit.name = {tr("two poles in {0}"), {fmt::format("{} {}", panel, fmt::join(*spaces, "+"))}};
        return tried(survey, std::move(edit));
    }
    if (lower && !gives_way(survey, *lower, *breaker))
        return refused(fmt::format("more is known of the breaker in {} than that it is there", next),
                       "move or take that one out first");
    return tried(survey, merged(*breaker, lower, *spaces, named(tr("two poles for breaker {0}"), *breaker)));
}

Outcome<Edit> one_pole_here(const Survey& survey, const std::string& panel, Position at) {
    const Breaker* breaker = breaker_at(survey, panel, at);
    if (!breaker) return no_breaker_here(at);
    if (breaker->poles() == 1) return refused("it has one pole already", "two poles: from the same menu");
    if (!breaker->halves.empty()) return refused("it is part of a tandem", "take it out, and type it anew");
    return tried(survey, resized(*breaker, {at.space}, named(tr("one pole for breaker {0}"), *breaker)));
}

Outcome<Edit> tied_with_below(const Survey& survey, const std::string& panel, Position at) {
    const Breaker* breaker = breaker_at(survey, panel, at);
    if (!breaker) return no_breaker_here(at);
    const auto next = below(survey, panel, at);
    const Breaker* lower = next ? breaker_at(survey, panel, *next) : nullptr;
    if (!lower) return refused("no breaker is known below it", "type that one first");
    if (!is_next_down(survey, panel, lowest_of(survey, panel, at), *next))
        return refused("the next one hangs on the other side", "a tie joins neighbours of one side");
    return tried(survey, tie_breakers({breaker->id, lower->id}));
}

Outcome<Edit> untied(const Survey& survey, const std::string& panel, Position at) {
    const Breaker* breaker = breaker_at(survey, panel, at);
    if (!breaker) return no_breaker_here(at);
    const bool is_tied = breaker->tied_with && !breaker->tied_with->empty();
    const bool is_named = std::ranges::any_of(survey.breakers, [&](const Breaker& other) {
        return other.tied_with && std::ranges::find(*other.tied_with, breaker->id) != other.tied_with->end();
    });
    if (!is_tied && !is_named) return refused("no tie is noted on it", "choose one that is tied");
    return untie_breaker(breaker->id);
}

Outcome<Edit> spare_or_in_use(const Survey& survey, const std::string& panel, Position at) {
    const Breaker* breaker = breaker_at(survey, panel, at);
    if (!breaker) return no_breaker_here(at);
    if (breaker->state == BreakerState::spare) return put_in_use(breaker->id);
    return tried(survey, {make_spare(breaker->id).name,
                          [id = breaker->id](Survey now) { return with_spare(std::move(now), id); }});
}

Outcome<Edit> kept_off_or_on(const Survey& survey, const std::string& panel, Position at) {
    const Breaker* breaker = breaker_at(survey, panel, at);
    if (!breaker) return no_breaker_here(at);
    return breaker->state == BreakerState::off ? put_in_use(breaker->id) : switch_off(breaker->id, "");
}

Outcome<Edit> kept_off(const Survey& survey, const std::string& panel, Position at, const std::string& why) {
    const Breaker* breaker = breaker_at(survey, panel, at);
    if (!breaker) return no_breaker_here(at);
    auto reason = plain_line(why);
    if (!reason) return tl::unexpected(std::move(reason.error()));
    return switch_off(breaker->id, *reason);
}

Outcome<Edit> taken_out(const Survey& survey, const std::string& panel, Position at) {
    const Breaker* breaker = breaker_at(survey, panel, at);
    if (!breaker) return no_breaker_here(at);
    return tried(survey, remove_breaker(breaker->id, Mentions::take_along));
}

std::vector<Message> what_goes_along(const Survey& survey, const std::string& panel, Position at) {
    std::vector<Message> said;
    const Breaker* breaker = breaker_at(survey, panel, at);
    if (!breaker) return said;
    double entries = 0;
    for (const Reference& one : references_to(survey, named_breaker, breaker->id)) {
        if (one.is_needed) ++entries;
        if (one.table == "circuit" && survey.circuits[one.row].breakers.size() == 1)
            said.push_back({tr("circuit {0} is left without a breaker"), {survey.circuits[one.row].id}});
        if (one.table == "panel") said.push_back({tr("panel {0} is left without a feed"), {survey.panels[one.row].id}});
    }
    if (entries == 1) said.push_back({tr("a reading or other entry of it goes along"), {}});
    if (entries > 1) said.push_back({tr("{0:.0f} readings and other entries of it go along"), {entries}});
    return said;
}

Outcome<Edit> next_rating(const Survey& survey, const RuleBook& book, const std::string& panel, Position at, bool up) {
    const Breaker* breaker = breaker_at(survey, panel, at);
    if (!breaker) return no_breaker_here(at);
    if (!breaker->amps) return refused(fmt::format("the rating of {} was not read", breaker->id), "type it on its row");
    const auto next = up ? rating_above(book, *breaker->amps) : rating_below(book, *breaker->amps);
    if (!next)
        return refused(fmt::format("no standard rating is {} {:g} A", up ? "over" : "under", breaker->amps->value),
                       "type what is written on its handle");
    Edit edit = rate_breaker(breaker->id, next);
    edit.name = {tr("rate {0} at {1:g} A"), {breaker->id, next->value}};
    return edit;
}

}  // namespace doorcard
