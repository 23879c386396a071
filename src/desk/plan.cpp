// SPDX-License-Identifier: MIT
#include "desk/plan.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "survey/edits/circuit_edits.hpp"

namespace doorcard {
namespace {

template <class... Visits>
struct Overloaded : Visits... {
    using Visits::operator()...;
};

bool names(const Ids& ids, const std::string& id) { return std::ranges::find(ids, id) != ids.end(); }

/// The breakers of a change, to look at or to set right.
template <class Change>
auto breakers_of(Change& change) {
    using Found = std::conditional_t<std::is_const_v<Change>, const FoundBreaker, FoundBreaker>;
    std::vector<Found*> found;
    std::visit(
        [&](auto& one) {
            using One = std::decay_t<decltype(one)>;
            if constexpr (std::same_as<One, PlannedSwap>)
                found = {&one.one, &one.other};
            else if constexpr (std::same_as<One, PlannedTie>)
                for (Found& breaker : one.breakers) found.push_back(&breaker);
            else if constexpr (!std::same_as<One, PlannedNeutral>)
                found = {&one.breaker};
        },
        change);
    return found;
}

/// Why a breaker is not, or may not be, the one that something was planned for.
std::optional<Complaint> not_as_found(const Survey& survey, const FoundBreaker& found) {
    constexpr const char* look = "look at it again, then plan anew or take this out of the plan";
    const Breaker* breaker = survey.breakers.find(found.id);
    if (!breaker) return Complaint{{}, fmt::format("breaker \"{}\" is no longer there", found.id), look};
    const FoundBreaker now = found_breaker(survey, *breaker);
    if (!(now.place == found.place))
        return Complaint{{}, fmt::format("breaker \"{}\" sits elsewhere than when this was planned", found.id), look};
    if (now.feeds != found.feeds)
        return Complaint{
            {}, fmt::format("breaker \"{}\" feeds something else than when this was planned", found.id), look};
    return std::nullopt;
}

std::optional<Complaint> not_as_found(const Survey& survey, const Planned& change) {
    for (const FoundBreaker* found : breakers_of(change))
        if (auto why = not_as_found(survey, *found)) return why;
    const auto* neutral = std::get_if<PlannedNeutral>(&change);
    if (!neutral) return std::nullopt;
    const Circuit* circuit = survey.circuits.find(neutral->circuit);
    if (!circuit)
        return Complaint{
            {}, fmt::format("circuit \"{}\" is no longer there", neutral->circuit), "take this out of the plan"};
    if (circuit->neutral != neutral->was)
        return Complaint{{},
                         fmt::format("circuit \"{}\" has another neutral than when this was planned", circuit->id),
                         "trace it again, then plan anew or take this out of the plan"};
    return std::nullopt;
}

/// The change as an edit of a survey in which some of the plan is done already: breakers keep their rows, not their
/// ids.
class ChangeEdit {
public:
    ChangeEdit(const Survey& found, const Survey& now) : found_(found), now_(now) {}

    Edit operator()(const PlannedMove& it) const { return move_breaker(id(it.breaker), it.to); }
    Edit operator()(const PlannedSwap& it) const { return swap_breakers(id(it.one), id(it.other)); }
    Edit operator()(const PlannedRating& it) const { return rate_breaker(id(it.breaker), it.amps); }
    Edit operator()(const PlannedTie& it) const {
        Ids ids;
        for (const FoundBreaker& breaker : it.breakers) ids.push_back(id(breaker));
        return tie_breakers(ids);
    }
    Edit operator()(const PlannedUntie& it) const { return untie_breaker(id(it.breaker)); }
    Edit operator()(const PlannedState& it) const {
        return it.state == BreakerState::spare ? make_spare(id(it.breaker)) : put_in_use(id(it.breaker));
    }
    Edit operator()(const PlannedNeutral& it) const { return share_neutral(it.circuit, it.neutral); }

private:
    const std::string& id(const FoundBreaker& breaker) const {
        return now_.breakers[found_.breakers.position(breaker.id)].id;
    }

    const Survey& found_;
    const Survey& now_;
};

Outcome<Survey> with_one(const Survey& found, const Survey& now, const Planned& change) {
    if (auto why = not_as_found(found, change)) return tl::unexpected(std::vector{std::move(*why)});
    return std::visit(ChangeEdit(found, now), change).apply(now);
}

/// Of what a change is: two of one kind and thing cannot both be meant.
std::string subject(const Planned& change) {
    std::string words = fmt::format("{}", change.index());
    for (const FoundBreaker* breaker : breakers_of(change)) words += '\n' + breaker->id;
    if (const auto* neutral = std::get_if<PlannedNeutral>(&change)) words += '\n' + neutral->circuit;
    return words;
}

/// The two of a swap in either order, and a tie in any: the same change.
bool is_of_same(const Planned& a, const Planned& b) {
    if (const auto* swap = std::get_if<PlannedSwap>(&a))
        if (subject(b) == subject(PlannedSwap{swap->other, swap->one})) return true;
    return subject(a) == subject(b);
}

bool leads_back(const Survey& survey, const Planned& change) {
    return std::visit(Overloaded{[](const PlannedMove& it) { return it.to == it.breaker.place; },
                                 [](const PlannedRating& it) { return it.amps == it.was; },
                                 [](const PlannedNeutral& it) { return it.neutral == it.was; },
                                 [&](const PlannedState& it) {
                                     const Breaker* breaker = survey.breakers.find(it.breaker.id);
                                     return breaker && breaker->state.value_or(BreakerState::in_use) == it.state;
                                 },
                                 [&](const PlannedUntie& it) {
                                     const Breaker* breaker = survey.breakers.find(it.breaker.id);
                                     return breaker && !breaker->tied_with;
                                 },
                                 [](const auto&) { return false; }},
                      change);
}

Outcome<Plan> that_can_be_done(const Survey& survey, Plan plan) {
    const auto outcome = with_plan(survey, plan);
    if (!outcome) return tl::unexpected(outcome.error());
    return plan;
}

Message as_planned(const Planned& change) { return {tr("{0} as planned"), {planned_words(change)}}; }

/// The only breaker that feeds just what that one fed, and something; null where none or several do.
const Breaker* feeding_the_same(const Survey& survey, const FoundBreaker& found) {
    if (found.feeds.empty()) return nullptr;
    Ids may_be;
    if (const Circuit* circuit = survey.circuits.find(found.feeds.front())) may_be = circuit->breakers;
    if (const Panel* panel = survey.panels.find(found.feeds.front()))
        may_be.insert(may_be.end(), panel->fed_by.begin(), panel->fed_by.end());
    const Breaker* same = nullptr;
    for (const std::string& id : may_be) {
        const Breaker* breaker = survey.breakers.find(id);
        if (!breaker || found_breaker(survey, *breaker).feeds != found.feeds) continue;
        if (same) return nullptr;
        same = breaker;
    }
    return same;
}

/// Alike in all but where it sits and what is tied to it.
bool is_same_device(const Breaker& a, Breaker b) {
    b.id = a.id, b.panel = a.panel, b.spaces = a.spaces, b.halves = a.halves, b.legs = a.legs,
    b.tied_with = a.tied_with;
    return a == b;
}

/// What has become of it: known by what it feeds, else by its id and place, else by its row and all else.
void follow(FoundBreaker& found, const Survey& before, const Survey& after) {
    const std::size_t row = before.breakers.position(found.id);
    if (not_as_found(before, found)) return;  // it was not that one before
    const Breaker* is = feeding_the_same(after, found);
    if (const Breaker* here = after.breakers.find(found.id); !is && here && place_of(*here) == found.place) is = here;
    if (!is && row < after.breakers.size() && is_same_device(before.breakers[row], after.breakers[row]))
        is = &after.breakers[row];
    if (is) found = found_breaker(after, *is);
}

}  // namespace

FoundBreaker found_breaker(const Survey& survey, const Breaker& breaker) {
    Ids feeds;
    for (const Circuit& circuit : survey.circuits)
        if (names(circuit.breakers, breaker.id)) feeds.push_back(circuit.id);
    for (const Panel& panel : survey.panels)
        if (names(panel.fed_by, breaker.id)) feeds.push_back(panel.id);
    return {breaker.id, place_of(breaker), std::move(feeds)};
}

PlannedSurvey planned_survey(const Survey& found, const Plan& plan) {
    PlannedSurvey planned{found, {}};
    for (std::size_t i = 0; i < plan.changes.size(); ++i) {
        auto outcome = with_one(found, planned.survey, plan.changes[i]);
        if (outcome)
            planned.survey = std::move(*outcome);
        else
            planned.not_done.push_back({i, std::move(outcome.error().front())});
    }
    return planned;
}

Outcome<Survey> with_plan(const Survey& found, const Plan& plan) {
    PlannedSurvey planned = planned_survey(found, plan);
    if (planned.not_done.empty()) return std::move(planned.survey);
    std::vector<Complaint> why;
    for (NotAsPlanned& one : planned.not_done) why.push_back(std::move(one.why));
    return tl::unexpected(std::move(why));
}

Outcome<Plan> with_change(const Survey& survey, Plan plan, Planned change) {
    const auto same = std::ranges::find_if(plan.changes, [&](const Planned& one) { return is_of_same(one, change); });
    const bool is_there = same != plan.changes.end();
    const bool goes = leads_back(survey, change) || (is_there && std::holds_alternative<PlannedSwap>(change));
    if (is_there && goes)
        plan.changes.erase(same);
    else if (is_there)
        *same = std::move(change);
    else if (goes)
        return refused("it is so already", "plan what is to be otherwise");
    else
        plan.changes.push_back(std::move(change));
    return that_can_be_done(survey, std::move(plan));
}

Outcome<Plan> without_change(const Survey& survey, Plan plan, std::size_t change) {
    if (change >= plan.changes.size())
        return refused("there is no such change in the plan", "choose one that is there");
    const auto failed_before = planned_survey(survey, plan).not_done;
    plan.changes.erase(plan.changes.begin() + static_cast<std::ptrdiff_t>(change));
    for (const NotAsPlanned& now : planned_survey(survey, plan).not_done) {
        const std::size_t was = now.change < change ? now.change : now.change + 1;
        if (std::ranges::find(failed_before, was, &NotAsPlanned::change) == failed_before.end())
            return refused("another planned change builds on this one: " + now.why.wrong, "take that one out first");
    }
    return plan;
}

Message planned_words(const Planned& change) {
    return std::visit(Overloaded{[](const PlannedMove& it) { return move_breaker(it.breaker.id, it.to).name; },
                                 [](const PlannedSwap& it) { return swap_breakers(it.one.id, it.other.id).name; },
                                 [](const PlannedRating& it) {
                                     if (!it.amps) return rate_breaker(it.breaker.id, it.amps).name;
                                     return Message{tr("set breaker {0} to {1} A"), {it.breaker.id, it.amps->value}};
                                 },
                                 [](const PlannedTie& it) {
                                     Ids ids;
                                     for (const FoundBreaker& breaker : it.breakers) ids.push_back(breaker.id);
                                     return tie_breakers(ids).name;
                                 },
                                 [](const PlannedUntie& it) { return untie_breaker(it.breaker.id).name; },
                                 [](const PlannedState& it) {
                                     return it.state == BreakerState::spare ? make_spare(it.breaker.id).name
                                                                            : put_in_use(it.breaker.id).name;
                                 },
                                 [](const PlannedNeutral& it) { return share_neutral(it.circuit, it.neutral).name; }},
                      change);
}

Outcome<Edit> carry_out(const Survey& survey, const Plan& plan) {
    if (plan.changes.empty()) return refused("nothing is planned", "move a breaker or set a rating first");
    if (const auto outcome = with_plan(survey, plan); !outcome) return tl::unexpected(outcome.error());
    Message name =
        plan.changes.size() == 1 ? as_planned(plan.changes.front()) : Message{tr("do all that is planned"), {}};
    return Edit{std::move(name), [plan](const Survey& found) { return with_plan(found, plan); }};
}

Outcome<CarriedOut> carry_out(const Survey& survey, const Plan& plan, std::size_t change) {
    if (change >= plan.changes.size())
        return refused("there is no such change in the plan", "choose one that is there");
    const Planned done = plan.changes[change];
    const auto after = with_one(survey, survey, done);
    if (!after) return tl::unexpected(after.error());
    Plan left = plan;
    left.changes.erase(left.changes.begin() + static_cast<std::ptrdiff_t>(change));
    return CarriedOut{{as_planned(done), [done](const Survey& found) { return with_one(found, found, done); }},
                      followed(std::move(left), survey, *after)};
}

Plan followed(Plan plan, const Survey& before, const Survey& after) {
    if (plan.changes.empty()) return plan;
    for (Planned& change : plan.changes) {
        for (FoundBreaker* breaker : breakers_of(change)) follow(*breaker, before, after);
        if (auto* neutral = std::get_if<PlannedNeutral>(&change))
            if (const Circuit* circuit = after.circuits.find(neutral->circuit)) neutral->was = circuit->neutral;
    }
    return plan;
}

std::map<std::string, PlannedFor> planned_by_breaker(const Survey& survey, const Plan& plan) {
    const PlannedSurvey planned = planned_survey(survey, plan);
    std::map<std::string, PlannedFor> by_id;
    for (std::size_t i = 0; i < plan.changes.size(); ++i) {
        const bool can = std::ranges::find(planned.not_done, i, &NotAsPlanned::change) == planned.not_done.end();
        for (const FoundBreaker* breaker : breakers_of(std::as_const(plan.changes[i]))) {
            PlannedFor& it = by_id[breaker->id];
            it.from = it.to = breaker->place;
            it.words.push_back(planned_words(plan.changes[i]));
            it.can_be_done = it.can_be_done && can;
        }
    }
    for (auto& [id, it] : by_id) {
        const std::size_t row = survey.breakers.position(id);
        if (row == survey.breakers.size()) continue;
        const Breaker& later = planned.survey.breakers[row];
        it.to = place_of(later);
        if (later.amps != survey.breakers[row].amps) it.amps = later.amps;
    }
    return by_id;
}

}  // namespace doorcard
