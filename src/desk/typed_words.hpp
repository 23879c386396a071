// SPDX-License-Identifier: MIT
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "assess/directory.hpp"
#include "base/outcome.hpp"
#include "file/list_table.hpp"
#include "survey/survey.hpp"

namespace doorcard {

std::string_view first_word(std::string_view);

/// What was typed, fit to be kept: signs that cannot be printed are gone, every kind of blank is a blank, one at a
/// time; refused where it is no text or longer than anybody types.
Outcome<std::string> plain_line(std::string_view typed);

/// The lines of what was pasted, without their ends.
std::vector<std::string_view> lines_of(std::string_view);

/// gf, gfci, arc, af, afci, dual: adds what the word says; false where it is no such word.
bool add_guard_word(std::string_view word, Guards&);
std::string guards_typed(const Guards&);

/// A position as it is typed: `5`, `13a`, `2/4` or `2+4` (the first of them), `SHOP:3`; of the panel shown where none
/// is named.
struct TypedPlace {
    std::string panel;
    Position at;
};
std::optional<TypedPlace> typed_place(std::string_view word, std::string_view panel);

/// The breaker of a position as it is typed; refused where the word is none, where no breaker is known there, or where
/// it may be either half of a tandem.
Outcome<const Breaker*> typed_breaker_place(const Survey&, std::string_view panel, std::string_view word);

}  // namespace doorcard
