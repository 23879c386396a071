// SPDX-License-Identifier: MIT
#pragma once
#include <optional>
#include <vector>

#include "base/message.hpp"
#include "survey/survey.hpp"

namespace doorcard {

/// An edit that was made: its name ('move breaker 5 to 9') and the survey as it was before (in `past`) or after (in
/// `future`). Surveys share their tables, so that a step costs what it changed.
struct Step {
    Message name;
    Survey survey;
};

/// What was done and what was undone, without limit. The survey of now is held by whoever holds the history.
class History {
public:
    /// `name` has led from `before` to another survey; what was undone can no longer be done again.
    void add(Message name, Survey before);
    /// Names of what the next undo and redo would do; nullopt where there is nothing.
    std::optional<Message> undo_name() const;
    std::optional<Message> redo_name() const;
    /// Gives the survey before the last edit, and keeps `now` for a redo; `now` itself where there is nothing to undo.
    Survey undo(Survey now);
    Survey redo(Survey now);

    const std::vector<Step>& past() const { return past_; }
    const std::vector<Step>& future() const { return future_; }  ///< the next to redo is the last

private:
    std::vector<Step> past_, future_;
};

}  // namespace doorcard
