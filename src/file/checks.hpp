// SPDX-License-Identifier: MIT
#pragma once
#include "file/complaints.hpp"
#include "file/marks.hpp"
#include "survey/survey.hpp"

namespace doorcard {

/// What the things of a file say of each other (contract 1, 'Laws of the file'), each check adding its complaints.
struct Checked {
    const Survey& survey;
    const Marks& marks;
    Complaints& complaints;
};

/// Before the survey is made: one half for every space, as many legs as spaces, no space twice, and the default ids.
void settle_breakers(Draft&, const Marks&, Complaints&);

void check_ids(const Checked&);         // no two things of one id where ids must be unique
void check_references(const Checked&);  // what is named is there
void check_spaces(const Checked&);      // no space above its panel's
void check_cycles(const Checked&);      // `upstream` and `fed_by` run in no circle
void check_order(const Checked&);       // the times of rounds and trials follow the order of the file
void check_values(const Checked&);      // units, phases, sizes of neutrals, keys of limits

/// 'outlet "K1"', or 'this reading' for what has no id.
std::string owner_name(const Survey&, const KeyTable&, std::size_t row);

}  // namespace doorcard
