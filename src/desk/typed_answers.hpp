// SPDX-License-Identifier: MIT
#pragma once
#include "desk/typed_room.hpp"

namespace doorcard {

/// Whether a line begins a round: `off 5 7`.
bool is_round_line(std::string_view line);
Outcome<LineDone> with_round_line(Survey, std::string_view panel, std::string_view line);

/// Whether a line is a row of answers from paper: `K: o o s . d`, or from the third on `K3: s .`.
bool is_answers_line(const Survey&, std::string_view line);
/// They go into the last round, in place of what it said of these outlets: o went out, s stayed on, a period not seen,
/// d odd.
Outcome<LineDone> with_answers_line(Survey, std::string_view line);

}  // namespace doorcard
