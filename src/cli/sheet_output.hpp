// SPDX-License-Identifier: MIT
#pragma once
#include <iosfwd>
#include <optional>
#include <string>
#include <vector>

#include "base/words.hpp"
#include "sheet/paint.hpp"
#include "survey/survey.hpp"

// Where a command's sheet goes, and what all commands that print one ask alike.
namespace doorcard {

using Painter = Bytes (*)(const Sheet&);

/// By the ending of the output's name, in any case; null: none.
Painter painter_for(const std::string& output);
/// The ending in lower case: ".pdf".
std::string ending_of(const std::string& output);
/// No output, or "-".
bool is_stdout(const std::string& output);

/// Says so, and what panels there are, where one of these is none of the survey's; false then.
bool all_panels_known(const std::vector<std::string>& panels, const Survey&, const std::string& file, std::ostream& err,
                      const Words&);

/// The reproducible-builds convention: SOURCE_DATE_EPOCH in the environment stands for 'now' in the sheet.
void date_by_environment(Sheet&);

/// To the file by its ending; to standard output as text, unless JSON goes there.
void deliver(const Sheet&, const std::string& output, bool json, std::ostream& out);

}  // namespace doorcard
