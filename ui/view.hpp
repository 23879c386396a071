// SPDX-License-Identifier: MIT
#pragma once

class wxWindow;

namespace doorcard {

/// A part of the window that shows something of the desk.
class View {
public:
    virtual ~View() = default;
    virtual wxWindow* window() = 0;
    virtual void look() = 0;  ///< at the desk as it is now
    virtual void take_focus() = 0;
};

}  // namespace doorcard
