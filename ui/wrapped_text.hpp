// SPDX-License-Identifier: MIT
#pragma once
#include <wx/stattext.h>

#include <string>

namespace doorcard {

/// Words that take as many lines as the width leaves them.
class WrappedText final : public wxStaticText {
public:
    WrappedText(wxWindow* parent, const std::string& text, const char* style = nullptr);
    void set(const std::string& text);

private:
    void wrap();
    int width_ = 0;
};

}  // namespace doorcard
