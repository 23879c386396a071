// SPDX-License-Identifier: MIT
#pragma once
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "survey/planned.hpp"

// Moves, ratings and the like that are planned: drawn dashed, on no card until they are done.
namespace doorcard {

/// As it is now, to plan something for.
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
