// SPDX-License-Identifier: MIT
#pragma once
#include <stdexcept>
#include <string>
#include <string_view>

#include "survey/survey.hpp"

namespace doorcard {

/// A rewritten text that does not read as the survey it was made for: a mistake of ours. Such a text is never saved.
struct NotWhatWasMeant : std::logic_error {
    using std::logic_error::logic_error;
};

/// The text of a survey file after an edit. `text` is that of `before`; what is different in `after` is spliced in at
/// its place, and every other byte stays: newlines, byte-order mark, comments, blank lines, order, forms of numbers and
/// quotes. Laws: rewrite(t, s, s) == t, and the result reads as `after`, or NotWhatWasMeant is thrown.
std::string rewrite(std::string_view text, const Survey& before, const Survey& after);

/// The same without reading what came out: where `after` may break the laws of the file, its complaints are those of
/// read_survey.
std::string spliced(std::string_view text, const Survey& before, const Survey& after);

}  // namespace doorcard
