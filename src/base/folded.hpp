// SPDX-License-Identifier: MIT
#pragma once
#include <string>
#include <string_view>

namespace doorcard {

/// Lower case, without accents and with plain apostrophes: for comparing texts that people wrote. What is no UTF-8
/// comes back as it is, in lower case where it is ASCII.
std::string folded(std::string_view text);

/// Typographic apostrophes as the plain one.
std::string straight_apostrophes(std::string_view text);

}  // namespace doorcard
