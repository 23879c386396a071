// SPDX-License-Identifier: MIT
#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "base/place.hpp"

namespace doorcard {

/// One cell of a list, as it stands between its separators, quotes taken off; and where it begins.
struct ListCell {
    std::string text;
    Place place;
};

/// One row; rows may be longer and shorter than their neighbours. A row in quotes may run over several lines.
using ListRow = std::vector<ListCell>;

/// The rows of a CSV text (RFC 4180, and what people make of it): cells between `separator`, quoted ones with doubled
/// quotes and line breaks inside. A quote that never closes is itself; with `ditto_marks` one that fills its cell too.
std::vector<ListRow> csv_rows(std::string_view text, char separator, bool ditto_marks = true);

/// Lines such as `12 Kitchen counter`: two cells each, the spaces and the text.
std::vector<ListRow> plain_rows(std::string_view text);

/// Whether most lines are of that kind.
bool looks_plain(std::string_view text);

/// Of comma, semicolon and tab the one that makes the most even rows of two cells and more; '\0' where none does.
char separator_of(std::string_view text);

/// Without blanks at its ends, no-break spaces among them.
std::string_view trimmed(std::string_view text);

}  // namespace doorcard
