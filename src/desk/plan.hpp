// SPDX-License-Identifier: MIT
#pragma once
#include <map>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "survey/edits/breaker_edits.hpp"

// What is planned on a panel that was taken down as found and locked: moves, ratings and the like, drawn dashed and on
// no card until they are done. A plan lives beside the survey, never in it.
namespace doorcard {

/// A breaker as it was found when something was planned for it: its id, its place, and the circuits and panels that it
/// feeds. Where one of these is no longer so, it may be another breaker, and nothing is done to it unasked.
struct FoundBreaker {
    std::string id;
    BreakerPlace place;
    Ids feeds;  ///< ids of circuits and panels, in the order of the survey
    bool operator==(const FoundBreaker&) const = default;
};

struct PlannedMove {
    FoundBreaker breaker;
    BreakerPlace to;
    bool operator==(const PlannedMove&) const = default;
};
struct PlannedSwap {
    FoundBreaker one, other;
    bool operator==(const PlannedSwap&) const = default;
};
/// Absent: the rating is to be taken as not known.
struct PlannedRating {
    FoundBreaker breaker;
    std::optional<Amperes> was, amps;
    bool operator==(const PlannedRating&) const = default;
};
/// An identified handle tie over all of these.
struct PlannedTie {
    std::vector<FoundBreaker> breakers;
    bool operator==(const PlannedTie&) const = default;
};
struct PlannedUntie {
    FoundBreaker breaker;
    bool operator==(const PlannedUntie&) const = default;
};
/// A spare, or in use.
struct PlannedState {
    FoundBreaker breaker;
    BreakerState state = BreakerState::spare;
    bool operator==(const PlannedState&) const = default;
};
/// The neutral of a circuit: shared under that name, or "own".
struct PlannedNeutral {
    std::string circuit;
    std::optional<std::string> was, neutral;
    bool operator==(const PlannedNeutral&) const = default;
};

/// A change that is planned.
using Planned =
    std::variant<PlannedMove, PlannedSwap, PlannedRating, PlannedTie, PlannedUntie, PlannedState, PlannedNeutral>;

struct Plan {
    bool as_found_locked = false;
    std::vector<Planned> changes;  ///< in the order in which they are to be done
    bool operator==(const Plan&) const = default;
};

FoundBreaker found_breaker(const Survey&, const Breaker&);

/// A change that cannot be done, or not any more, and why.
struct NotAsPlanned {
    std::size_t change = 0;  ///< its place in the plan
    Complaint why;
};

/// What a plan comes to: the survey with all of it that can be done, and every change that cannot.
struct PlannedSurvey {
    Survey survey;
    std::vector<NotAsPlanned> not_done;
};
PlannedSurvey planned_survey(const Survey&, const Plan&);

/// The survey with all that is planned, to draw and to judge; else why which change cannot be done.
Outcome<Survey> with_plan(const Survey&, const Plan&);

/// The plan with one change more. One for the same breaker and of the same kind is replaced; one that leads back to
/// what was found goes. Refused where it cannot be done after what is planned already.
Outcome<Plan> with_change(const Survey&, Plan, Planned);
/// The plan without that change: refused where another builds on it, and says which.
Outcome<Plan> without_change(const Survey&, Plan, std::size_t change);

/// 'move breaker MAIN:5 to 9'.
Message planned_words(const Planned&);

/// All that is planned carried out as one step, 'move breaker MAIN:5 to 9 as planned'; refused where a change cannot be
/// done. The plan is empty after it.
Outcome<Edit> carry_out(const Survey&, const Plan&);
/// One change carried out, and what is then left of the plan.
struct CarriedOut {
    Edit edit;
    Plan left;
};
Outcome<CarriedOut> carry_out(const Survey&, const Plan&, std::size_t change);

/// The plan after another edit, an undo or a redo: breakers that went elsewhere or got another id with it are followed.
/// What is no longer there stays in the plan, to be said.
Plan followed(Plan, const Survey& before, const Survey& after);

/// What is planned for one breaker.
struct PlannedFor {
    BreakerPlace from, to;        ///< the same where it is to stay
    std::optional<Amperes> amps;  ///< the rating that it is to get, where that is another
    std::vector<Message> words;   ///< one for each change
    bool can_be_done = true;
};
/// By id as found; breakers for which nothing is planned are left out.
std::map<std::string, PlannedFor> planned_by_breaker(const Survey&, const Plan&);

}  // namespace doorcard
