// SPDX-License-Identifier: MIT
#pragma once
#include "file/read_survey.hpp"

namespace doorcard {

/// The bytes of a file. A file that is missing, closed to us, a folder, or larger than 64 MiB is a Complaint at its
/// first place; a disk that fails while reading throws std::system_error.
Outcome<SourceText> read_text(const std::string& path);

}  // namespace doorcard
