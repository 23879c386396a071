// SPDX-License-Identifier: MIT
#include "survey/history.hpp"

#include <utility>

namespace doorcard {
namespace {

std::optional<Message> last_name(const std::vector<Step>& steps) {
    if (steps.empty()) return std::nullopt;
    return steps.back().name;
}

/// Moves the last step to the other list, where it holds `now`.
Survey take_step(std::vector<Step>& from, std::vector<Step>& to, Survey now) {
    if (from.empty()) return now;
    Step step = std::move(from.back());
    from.pop_back();
    std::swap(step.survey, now);
    to.push_back(std::move(step));
    return now;
}

}  // namespace

void History::add(Message name, Survey before) {
    past_.push_back({std::move(name), std::move(before)});
    future_.clear();
}

std::optional<Message> History::undo_name() const { return last_name(past_); }
std::optional<Message> History::redo_name() const { return last_name(future_); }
Survey History::undo(Survey now) { return take_step(past_, future_, std::move(now)); }
Survey History::redo(Survey now) { return take_step(future_, past_, std::move(now)); }

}  // namespace doorcard
