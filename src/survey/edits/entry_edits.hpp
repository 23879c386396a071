// SPDX-License-Identifier: MIT
#pragma once
#include "survey/edits/edit.hpp"

namespace doorcard {

// Entries without an id are known by their place in their table, from 0. What is added goes behind the others: among
// rounds, and among the trials of one circuit, that is the order of time.

Edit add_reading(Reading);
Edit change_reading(std::size_t at, Reading);
Edit remove_reading(std::size_t at);
Edit add_recording(Recording);
Edit change_recording(std::size_t at, Recording);
Edit remove_recording(std::size_t at);
Edit add_round(Round);
Edit change_round(std::size_t at, Round);
Edit remove_round(std::size_t at);
Edit add_trip(Trip);
Edit change_trip(std::size_t at, Trip);
Edit remove_trip(std::size_t at);
Edit add_hunt(Hunt);
Edit change_hunt(std::size_t at, Hunt);
Edit remove_hunt(std::size_t at);
Edit add_trial(Trial);
Edit change_trial(std::size_t at, Trial);
Edit remove_trial(std::size_t at);
Edit add_demand(Demand);
Edit change_demand(std::size_t at, Demand);
Edit remove_demand(std::size_t at);
Edit add_limit(Limit);
Edit change_limit(std::size_t at, Limit);
Edit remove_limit(std::size_t at);
Edit add_accepted(Accepted);
Edit change_accepted(std::size_t at, Accepted);
Edit remove_accepted(std::size_t at);

/// The heading, the grounding and what mapping reckons with.
Edit change_heading(Heading);
Edit change_grounding(std::optional<Grounding>);
Edit change_mapping(std::optional<Mapping>);

}  // namespace doorcard
