// SPDX-License-Identifier: MIT
#pragma once
#include "file/field.hpp"

namespace doorcard {

// Grammars of texts (contract 1, 'Laws of the file').
extern const Pattern id_pattern;        // 1 to 64 printable characters ...
extern const Pattern panel_id_pattern;  // ... without : and +
extern const Pattern hp_pattern;        // "3/4", "1.5"
extern const Pattern leg_letters;       // A, B, C, any number, any order
extern const Pattern load_legs;         // "A" | "AB" | "ABC" | "AN+BN"
extern const Pattern slash_volts;       // "120/240", "240"

}  // namespace doorcard
