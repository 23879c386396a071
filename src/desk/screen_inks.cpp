// SPDX-License-Identifier: MIT
#include "desk/screen_inks.hpp"

#include <array>

namespace doorcard {
namespace {

struct Pair {
    Ink sheet, screen;
};

constexpr Ink ink(int rgb) { return {((rgb >> 16) & 0xff) / 255.0, ((rgb >> 8) & 0xff) / 255.0, (rgb & 0xff) / 255.0}; }

template <std::size_t N>
InkMap mapped(const std::array<Pair, N>& pairs) {
    return [pairs](Ink of_sheet) {
        for (const Pair& one : pairs)
            if (one.sheet == of_sheet) return one.screen;
        return of_sheet;
    };
}

}  // namespace

Ink ground_ink(Ground ground) {
    return ground == Ground::day ? ink(0xfbfaf6) : ground == Ground::night ? ink(0x111a24) : ink(0x000000);
}

InkMap screen_inks(Ground ground) {
    if (ground == Ground::day) return mapped(std::array{Pair{inks::paper, ground_ink(ground)}});
    if (ground == Ground::night)
        return mapped(std::array{Pair{inks::paper, ground_ink(ground)}, Pair{inks::text, ink(0xe8e4da)},
                                 Pair{inks::caption, ink(0xb4b8ba)}, Pair{inks::faint, ink(0x3c4a58)},
                                 Pair{inks::accent, ink(0xd9a45b)}, Pair{inks::danger, ink(0xff8a80)},
                                 Pair{inks::fire, ink(0xff8a80)}});
    return mapped(std::array{Pair{inks::paper, ink(0x000000)}, Pair{inks::text, ink(0xffffff)},
                             Pair{inks::faint, ink(0xffffff)}, Pair{inks::caption, ink(0xffffff)},
                             Pair{inks::accent, ink(0xffe000)}, Pair{inks::danger, ink(0xff8080)},
                             Pair{inks::fire, ink(0xff8080)}});
}

}  // namespace doorcard
