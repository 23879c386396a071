// SPDX-License-Identifier: MIT
#pragma once
#include "sheet/sheet.hpp"

class wxWindow;

namespace doorcard {

/// Puts a sheet on paper through the system's own dialog, drawn by the painter of the files.
void print_sheet(wxWindow* parent, const Sheet&);

}  // namespace doorcard
