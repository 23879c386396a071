// SPDX-License-Identifier: MIT
#pragma once
#include "file/entry_scope.hpp"
#include "file/keys.hpp"

namespace doorcard {

/// Splices what is different between two versions of one thing into the keys of its entry.
void rewrite_keys(Splices&, const TomlOutline&, EntryScope&, FieldList, const void* before, const void* after);

/// Takes a section out, with the comment right above and below it and the blank lines before it.
void remove_section(Splices&, Span lead_to_tail);

}  // namespace doorcard
