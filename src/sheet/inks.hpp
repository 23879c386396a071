// SPDX-License-Identifier: MIT
#pragma once
#include "sheet/sheet.hpp"

// Inks and line widths of every sheet: solid, never a tint, so that they survive grey and a laser printer.
namespace doorcard::inks {

constexpr Ink text{0x16 / 255.0, 0x20 / 255.0, 0x2a / 255.0};
constexpr Ink caption{0x41 / 255.0, 0x4c / 255.0, 0x56 / 255.0};
constexpr Ink accent{0x7a / 255.0, 0x4b / 255.0, 0x12 / 255.0};
constexpr Ink paper{1, 1, 1};
constexpr Ink black{0, 0, 0};
// Safety colours after ANSI Z535.1: yellow for CAUTION, orange for WARNING, red for DANGER and fire alarm circuits.
constexpr Ink caution{0xff / 255.0, 0xd1 / 255.0, 0x00 / 255.0};
constexpr Ink warning{0xff / 255.0, 0x82 / 255.0, 0x00 / 255.0};
constexpr Ink danger{0xc8 / 255.0, 0x10 / 255.0, 0x2e / 255.0};
constexpr Ink faint{0xb9 / 255.0, 0xb6 / 255.0, 0xac / 255.0};  // rules, on screens alone: paper has no tints
constexpr Ink fire{0xb5 / 255.0, 0x12 / 255.0, 0x1b / 255.0};

}  // namespace doorcard::inks

namespace doorcard::lines {  // mm

constexpr double hair = 0.10;     // rows of tables
constexpr double row = 0.18;      // rows of the card, between groups
constexpr double outline = 0.30;  // boxes, strips
constexpr double heavy = 0.55;    // head, ends of a table, bracket of a shared neutral

}  // namespace doorcard::lines
