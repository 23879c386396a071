// SPDX-License-Identifier: MIT
#pragma once
#include "base/outcome.hpp"
#include "survey/planned.hpp"

namespace doorcard {

/// What is kept beside a survey, in `.NAME.plan`, and never in it: what is planned, whether what was found is locked,
/// and the whole text of the survey as it was before the first switching round.
struct SideNotes {
    Plan plan;
    std::optional<std::string> snapshot;
    bool operator==(const SideNotes&) const = default;
    bool empty() const { return *this == SideNotes(); }
};

/// JSON, with the version of its form.
std::string side_notes_text(const SideNotes&);
/// All of it, or why not: never half a plan. One of a later version is refused with that version.
Outcome<SideNotes> read_side_notes(std::string_view text);

std::string side_notes_file_of(const std::string& survey);
/// Empty where there is no such file.
Outcome<SideNotes> kept_side_notes(const std::string& survey);
/// Swapped in whole, as private as the survey; empty notes leave no file. One that is there and cannot be read is set
/// aside first, as `.NAME.plan.broken`. Throws std::system_error.
void keep_side_notes(const std::string& survey, const SideNotes&);
void drop_side_notes(const std::string& survey);

}  // namespace doorcard
