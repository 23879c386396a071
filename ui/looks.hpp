// SPDX-License-Identifier: MIT
#pragma once
#include <wx/colour.h>

#include <string>

#include "desk/screen_inks.hpp"

namespace doorcard {

enum class Theme { system, light, dark, contrast };

/// The colours of a screen, each with one use.
struct Colours {
    wxColour ground, field, ink, caption, rule, accent, danger;
};

/// How everything looks: theme and scale. One style sheet for the toolkit's own controls, one set of colours for what
/// is drawn.
class Looks {
public:
    static constexpr double least_scale = 0.6, most_scale = 3;

    Looks(Theme, double scale);
    void set(Theme, double scale);  ///< takes hold in every window at once

    Theme theme() const { return theme_; }
    double scale() const { return scale_; }
    Ground ground() const { return ground_; }
    const Colours& colours() const { return colours_; }
    int pixels(double at_scale_1) const { return static_cast<int>(at_scale_1 * scale_ + 0.5); }
    int target() const { return pixels(44); }  ///< height of what a finger has to hit

private:
    void take_hold();
    std::string style_sheet() const;

    Theme theme_;
    double scale_;
    Ground ground_ = Ground::day;
    Colours colours_;
    void* provider_ = nullptr;
};

}  // namespace doorcard
