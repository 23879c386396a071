// SPDX-License-Identifier: MIT
#pragma once
#include <string>

namespace doorcard {

/// The text that the clipboard has; empty where it has none.
std::string clipboard_text();
void put_on_clipboard(const std::string&);

}  // namespace doorcard
