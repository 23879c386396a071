// SPDX-License-Identifier: MIT
#pragma once
#include "base/words.hpp"
#include "sheet/sheet.hpp"
#include "survey/survey.hpp"

// How every sheet begins, whatever is printed on it.
namespace doorcard {

/// Without pages yet: title ("Panel schedule, {0}", to be filled with the survey's), author, date and language.
Sheet begun_sheet(const char* title, const Survey&, const Words&);

/// "MAIN", or "MAIN 2/3" where that panel takes several pages; `number` counts from 0.
std::string page_title(const std::string& of, std::size_t number, std::size_t count);

}  // namespace doorcard
