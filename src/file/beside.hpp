// SPDX-License-Identifier: MIT
#pragma once
#include <string>
#include <string_view>

namespace doorcard {

/// `.NAME.what` in the folder of a survey; where that is a link, of what it points to.
std::string file_beside(const std::string& survey, std::string_view what);
/// Swapped in whole, as private as the survey. Throws std::system_error.
void write_beside(const std::string& survey, std::string_view what, std::string_view bytes);

}  // namespace doorcard
