// SPDX-License-Identifier: MIT
#pragma once
#include <string>
#include <string_view>

#include "base/message.hpp"
#include "base/outcome.hpp"
#include "survey/survey.hpp"

namespace doorcard {

/// A survey after a line that was typed, and what the line did, as behind 'Undo'.
struct LineDone {
    Survey survey;
    Message name;
};

/// `Kitchen r6 l2 range`: the room, new where there is none of that name, and outlets in it. `line` is plain.
Outcome<LineDone> with_room_line(Survey, std::string_view panel, std::string_view line);

/// Whether a line is of outlets that are there, by their dots: `K3: behind the sofa`, `K3 gf`, `K1-K4 @5`.
bool is_outlet_line(const Survey&, std::string_view line);
Outcome<LineDone> with_outlet_line(Survey, std::string_view panel, std::string_view line);

}  // namespace doorcard
