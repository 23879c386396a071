// SPDX-License-Identifier: MIT
#pragma once
#include <string>

class wxWindow;

namespace doorcard {

/// What a screen reader calls a window, and what it says of it beside; the toolkit's own names do not reach it.
void name_for_readers(wxWindow*, const std::string& name, const std::string& description = {});

/// Gives a window a class of the style sheet (see ui/looks.cpp).
void give_style(wxWindow*, const char* style);
void take_style(wxWindow*, const char* style);

/// Rows of a list as high as a finger asks: blank above and below their words, pixels.
void pad_rows(wxWindow* list, int pixels);

/// Lets a label break its lines where its width ends; the height that it takes at a width.
void let_wrap(wxWindow* label);
int wrapped_height(wxWindow* label, int width);

}  // namespace doorcard
