// SPDX-License-Identifier: MIT
#pragma once
#include <string>
#include <string_view>

#include "base/outcome.hpp"

namespace doorcard {

constexpr std::size_t most_list_bytes = 8u << 20;  // of a list: no panel's directory is near that

/// The text of a list in UTF-8, without byte order mark. What is no UTF-8 is read as Latin-1 (with the punctuation that
/// spreadsheets put into its unused places). A file of a spreadsheet or word processor itself, UTF-16, and more than 8
/// MiB are refused.
Outcome<std::string> list_text(std::string_view bytes);

}  // namespace doorcard
