// SPDX-License-Identifier: MIT
#include "survey/edits/breaker_edits.hpp"

#include <set>

#include "survey/edits/thing_edits.hpp"

namespace doorcard {
namespace {

using HalfSpaces = std::set<std::pair<int, char>>;

/// The halves of spaces that a breaker takes.
HalfSpaces half_spaces(const Breaker& breaker) {
    HalfSpaces taken;
    for (std::size_t i = 0; i < breaker.spaces.size(); ++i) {
        const char half = i < breaker.halves.size() ? breaker.halves[i] : ' ';
        for (const char each : {'a', 'b'})
            if (half == ' ' || half == each) taken.emplace(breaker.spaces[i], each);
    }
    return taken;
}

/// Another breaker in one of these spaces; null where there is none.
const Breaker* neighbour_in(const Survey& survey, const Breaker& breaker) {
    const HalfSpaces wanted = half_spaces(breaker);
    for (const Breaker& other : survey.breakers) {
        if (other.panel != breaker.panel || other.id == breaker.id) continue;
        const auto taken = half_spaces(other);
        if (std::ranges::any_of(taken, [&](const auto& place) { return wanted.contains(place); })) return &other;
    }
    return nullptr;
}

/// Spaces that a breaker sits in are not empty.
void take_from_empty(Survey& survey, const Breaker& breaker) {
    const Panel* panel = survey.panels.find(breaker.panel);
    if (!panel || !panel->empty_spaces) return;
    Panel with_one_more = *panel;
    const auto taken = [&](int space) { return std::ranges::find(breaker.spaces, space) != breaker.spaces.end(); };
    if (std::erase_if(*with_one_more.empty_spaces, taken) == 0) return;
    survey.panels = survey.panels.with_row(survey.panels.position(breaker.panel), std::move(with_one_more));
}

void rename_breaker(Survey& survey, const std::string& before, const std::string& after) {
    if (before != after) rename_all(survey, named_breaker, before, after);
}

/// A word that no id can be, for while two things change places.
const std::string between = "\x01";

void put(Survey& survey, const std::string& id, const BreakerPlace& to) {
    const std::size_t at = survey.breakers.position(id);
    Breaker breaker = survey.breakers[at];
    const bool is_elsewhere = !(place_of(breaker) == to);
    breaker.panel = to.panel;
    breaker.spaces = to.spaces;
    breaker.halves = to.halves;
    if (is_elsewhere) breaker.legs.reset();
    if (!breaker.id_given) breaker.id = breaker.default_id();
    survey.breakers = survey.breakers.with_row(at, breaker);
    take_from_empty(survey, breaker);
}

tl::unexpected<std::vector<Complaint>> no_breaker(const std::string& id) {
    return refused(fmt::format("there is no breaker \"{}\"", id), "name one that is there");
}

Outcome<Survey> moved(Survey survey, const std::string& id, const BreakerPlace& to) {
    const Breaker* breaker = survey.breakers.find(id);
    if (!breaker) return no_breaker(id);
    if (to.spaces.empty()) return refused("a breaker sits in one space at least", "name its spaces");
    if (!to.halves.empty() && to.halves.size() != to.spaces.size())
        return refused(fmt::format("{} halves for {} spaces", to.halves.size(), to.spaces.size()),
                       "give one letter for each space");
    Breaker wanted = *breaker;
    wanted.panel = to.panel, wanted.spaces = to.spaces, wanted.halves = to.halves;
    if (const Breaker* other = neighbour_in(survey, wanted))
        return refused(fmt::format("breaker \"{}\" sits there", other->id), "move that one first, or swap the two");
    const Survey before = survey;
    put(survey, id, to);
    rename_breaker(survey, id, wanted.id_given ? id : wanted.default_id());
    return kept_laws(before, std::move(survey));
}

std::string spaces_words(const std::vector<int>& spaces) { return fmt::format("{}", fmt::join(spaces, "+")); }

}  // namespace

BreakerPlace place_of(const Breaker& breaker) { return {breaker.panel, breaker.spaces, breaker.halves}; }

Edit add_breaker(Breaker breaker) {
    if (!breaker.id_given) breaker.id = breaker.default_id();
    Message name{tr("add breaker {0}"), {breaker.id}};
    return {std::move(name), [=](Survey survey) -> Outcome<Survey> {
                if (breaker.spaces.empty()) return refused("a breaker sits in one space at least", "name its spaces");
                if (const Breaker* other = neighbour_in(survey, breaker))
                    return refused(fmt::format("breaker \"{}\" sits there", other->id), "move that one first");
                take_from_empty(survey, breaker);
                return add_thing<Breaker>({}, &Survey::breakers, breaker).apply(std::move(survey));
            }};
}

Edit change_breaker(const Breaker& breaker) {
    std::string id = breaker.id;
    Message name{tr("change breaker {0}"), {id}};
    return change_thing<Breaker>(std::move(name), &Survey::breakers, std::move(id), [=](Breaker& it) {
        const BreakerPlace place = place_of(it);
        const bool id_given = it.id_given;
        it = breaker;
        it.panel = place.panel, it.spaces = place.spaces, it.halves = place.halves, it.id_given = id_given;
    });
}

Edit move_breaker(const std::string& id, const BreakerPlace& to) {
    Message name{tr("move breaker {0} to {1}"), {id, spaces_words(to.spaces)}};
    return {std::move(name), [=](Survey survey) { return moved(std::move(survey), id, to); }};
}

Edit swap_breakers(std::string one, std::string other) {
    Message name{tr("swap breakers {0} and {1}"), {one, other}};
    return {std::move(name), [=](Survey survey) -> Outcome<Survey> {
                const Breaker *first = survey.breakers.find(one), *second = survey.breakers.find(other);
                if (!first || !second) return no_breaker(first ? other : one);
                if (first->spaces.size() != second->spaces.size())
                    return refused(fmt::format("\"{}\" and \"{}\" do not have as many spaces", one, other),
                                   "move them one by one");
                const BreakerPlace here = place_of(*first), there = place_of(*second);
                Breaker first_there = *first, second_here = *second;
                first_there.panel = there.panel, first_there.spaces = there.spaces, first_there.halves = there.halves;
                second_here.panel = here.panel, second_here.spaces = here.spaces, second_here.halves = here.halves;
                const std::string first_id = first->id_given ? one : first_there.default_id();
                const std::string second_id = second->id_given ? other : second_here.default_id();
                const Survey before = survey;
                rename_breaker(survey, one, between);
                rename_breaker(survey, other, second_id);
                rename_breaker(survey, between, first_id);
                const std::size_t at = survey.breakers.position(one);
                put(survey, other, here);
                Breaker moved = survey.breakers[at];  // by its row: the ids may be alike for the moment
                moved.panel = there.panel, moved.spaces = there.spaces, moved.halves = there.halves;
                moved.legs.reset();
                moved.id = first_id;
                survey.breakers = survey.breakers.with_row(at, std::move(moved));
                take_from_empty(survey, first_there);
                return kept_laws(before, std::move(survey));
            }};
}

Edit remove_breaker(std::string id, Mentions mentions) {
    return remove_thing<Breaker>({tr("take out breaker {0}"), {id}}, &Survey::breakers, named_breaker, id, mentions);
}

Edit rate_breaker(std::string id, std::optional<Amperes> amps) {
    Message name{tr("set the rating of breaker {0}"), {id}};
    return change_thing<Breaker>(std::move(name), &Survey::breakers, std::move(id),
                                 [=](Breaker& it) { it.amps = amps; });
}

Edit tie_breakers(Ids ids) {
    Message name{tr("tie {0}"), {and_list({ids.begin(), ids.end()})}};
    return {std::move(name), [=](Survey survey) -> Outcome<Survey> {
                const Survey before = survey;
                for (const std::string& id : ids) {
                    if (!before.breakers.contains(id)) return no_breaker(id);
                    const std::size_t at = before.breakers.position(id);
                    Breaker tied = survey.breakers[at];
                    if (!tied.tied_with) tied.tied_with.emplace();
                    for (const std::string& other : ids)
                        if (other != id && std::ranges::find(*tied.tied_with, other) == tied.tied_with->end())
                            tied.tied_with->push_back(other);
                    survey.breakers = survey.breakers.with_row(at, std::move(tied));
                }
                return kept_laws(before, std::move(survey));
            }};
}

Edit untie_breaker(std::string id) {
    return {{tr("untie breaker {0}"), {id}}, [=](Survey survey) -> Outcome<Survey> {
                if (!survey.breakers.contains(id)) return no_breaker(id);
                const Survey before = survey;
                for (std::size_t at = 0; at < before.breakers.size(); ++at) {
                    Breaker untied = before.breakers[at];
                    if (!untied.tied_with) continue;
                    const bool names_it = std::erase(*untied.tied_with, id) > 0;
                    if (untied.id == id || (names_it && untied.tied_with->empty())) untied.tied_with.reset();
                    if (names_it || untied.id == id) survey.breakers = survey.breakers.with_row(at, std::move(untied));
                }
                return kept_laws(before, std::move(survey));
            }};
}

Edit make_spare(std::string id) {
    Message name{tr("make breaker {0} a spare"), {id}};
    return change_thing<Breaker>(std::move(name), &Survey::breakers, std::move(id), [](Breaker& it) {
        it.state = BreakerState::spare;
        it.off_why.reset();
    });
}

Edit put_in_use(std::string id) {
    Message name{tr("put breaker {0} in use"), {id}};
    return change_thing<Breaker>(std::move(name), &Survey::breakers, std::move(id), [](Breaker& it) {
        it.state = BreakerState::in_use;
        it.off_why.reset();
    });
}

Edit switch_off(std::string id, const std::string& why) {
    Message name{tr("note breaker {0} as off"), {id}};
    return change_thing<Breaker>(std::move(name), &Survey::breakers, std::move(id), [=](Breaker& it) {
        it.state = BreakerState::off;
        it.off_why = why.empty() ? std::nullopt : std::optional(why);
    });
}

}  // namespace doorcard
