// SPDX-License-Identifier: MIT
#pragma once
#include <wx/string.h>

#include <string>

namespace doorcard {

// Texts of the library are UTF-8; the toolkit's own conversions would lose what is not ASCII.
inline wxString wide(const std::string& utf8) { return wxString::FromUTF8(utf8.data(), utf8.size()); }
inline std::string utf8(const wxString& text) { return std::string(text.utf8_str()); }

}  // namespace doorcard
