// SPDX-License-Identifier: MIT
#pragma once
#include "file/keys.hpp"
#include "property/draw.hpp"

/// A survey with entries of every table and keys of every form, as far as the laws of the file let them be drawn: most
/// of them can be read.
doorcard::Draft random_draft(Draw&);

/// Some keys changed, put in or left out; entries taken out, added, or put in another order.
void edit_at_random(doorcard::Draft&, Draw&);
/// One key of one entry changed, put in or left out.
void edit_one_key(doorcard::Draft&, Draw&);

/// How wildly a text is laid out: `plain` has a header for each entry and a line for each key.
enum class Wildness { plain, odd };

/// A text of a draft: tables in any order, comments, blank lines, indentation; where odd, also dotted keys, inline
/// tables, lists over many lines, headers of inner tables, a byte-order mark, CRLF, no newline at the end.
std::string random_layout(const doorcard::Draft&, Draw&, Wildness);
/// One entry after another, a line for each key.
std::string plain_text(const doorcard::Draft&);
std::size_t row_count(const doorcard::Draft&, const doorcard::KeyTable&);
