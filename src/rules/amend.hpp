// SPDX-License-Identifier: MIT
#pragma once
#include <string_view>

#include "rules/book.hpp"

namespace doorcard {

/// Lays local rules (contract 5, docs/local-rules.md) over the book of an edition. What they amend is cited with the
/// source that they name from then on, with what it amends; `amendments()` lists it, and whether it is laxer than the
/// code. Laid over a book that was amended already, they hold where both name a figure.
/// Refuses, with every complaint by place, up to 50: a syntax error, another format, a base other than the book's
/// edition, unknown keys, tables, figures, columns, rows and options, a row that several match, figures that are not
/// positive, are beyond a twentieth and twenty times of the book's (or its own bounds), what cannot be amended, and one
/// figure amended twice.
Outcome<RuleBook> amend(RuleBook base, std::string_view text);

}  // namespace doorcard
