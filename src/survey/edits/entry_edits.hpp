// SPDX-License-Identifier: MIT
#pragma once
#include "survey/edits/edit.hpp"

namespace doorcard {

// Entries without an id are known by their place in their table, from 0. What is added goes behind the others: among
// rounds, and among the trials of one circuit, that is the order of time.

Edit add_reading(const Reading&);
Edit change_reading(std::size_t at, const Reading&);
Edit remove_reading(std::size_t at);
Edit add_recording(const Recording&);
Edit change_recording(std::size_t at, const Recording&);
Edit remove_recording(std::size_t at);
Edit add_round(const Round&);
Edit change_round(std::size_t at, const Round&);
Edit remove_round(std::size_t at);
Edit add_trip(const Trip&);
Edit change_trip(std::size_t at, const Trip&);
Edit remove_trip(std::size_t at);
Edit add_hunt(const Hunt&);
Edit change_hunt(std::size_t at, const Hunt&);
Edit remove_hunt(std::size_t at);
Edit add_trial(const Trial&);
Edit change_trial(std::size_t at, const Trial&);
Edit remove_trial(std::size_t at);
Edit add_demand(const Demand&);
Edit change_demand(std::size_t at, const Demand&);
Edit remove_demand(std::size_t at);
Edit add_limit(const Limit&);
Edit change_limit(std::size_t at, const Limit&);
Edit remove_limit(std::size_t at);
Edit add_accepted(const Accepted&);
Edit change_accepted(std::size_t at, const Accepted&);
Edit remove_accepted(std::size_t at);

/// The heading, the grounding and what mapping reckons with.
Edit change_heading(const Heading&);
Edit change_grounding(const std::optional<Grounding>&);
Edit change_mapping(const std::optional<Mapping>&);

}  // namespace doorcard
