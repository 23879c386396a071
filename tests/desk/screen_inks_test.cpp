// SPDX-License-Identifier: MIT
#include "desk/screen_inks.hpp"

#include <doctest/doctest.h>

#include <cmath>

using namespace doorcard;

namespace {

// Relative luminance and contrast ratio: Web Content Accessibility Guidelines 2.1, 1.4.3 and the definitions there.
double linear(double part) { return part <= 0.03928 ? part / 12.92 : std::pow((part + 0.055) / 1.055, 2.4); }
double luminance(Ink ink) { return 0.2126 * linear(ink.red) + 0.7152 * linear(ink.green) + 0.0722 * linear(ink.blue); }
double contrast(Ink a, Ink b) {
    const double high = std::max(luminance(a), luminance(b)), low = std::min(luminance(a), luminance(b));
    return (high + 0.05) / (low + 0.05);
}

}  // namespace

TEST_CASE("screen: every ink of a text stands out from its ground at 4.5 : 1, by day, by night, in high contrast") {
    for (const Ground ground : {Ground::day, Ground::night, Ground::contrast}) {
        const InkMap inks = screen_inks(ground);
        for (const Ink ink : {inks::text, inks::caption, inks::accent, inks::danger, inks::fire})
            CHECK(contrast(inks(ink), ground_ink(ground)) >= 4.5);
        CHECK(inks(inks::paper) == ground_ink(ground));
    }
}

TEST_CASE("screen: in high contrast text stands out at 7 : 1, rules at 3 : 1") {
    const InkMap inks = screen_inks(Ground::contrast);
    for (const Ink ink : {inks::text, inks::caption, inks::accent, inks::danger, inks::fire})
        CHECK(contrast(inks(ink), ground_ink(Ground::contrast)) >= 7);
    CHECK(contrast(inks(inks::faint), ground_ink(Ground::contrast)) >= 3);
}

TEST_CASE("screen: the strokes in the signs of findings stand out from them") {
    for (const Ground ground : {Ground::day, Ground::night, Ground::contrast}) {
        const InkMap inks = screen_inks(ground);
        CHECK(contrast(inks(inks::danger), inks(inks::paper)) >= 4.5);
        CHECK(contrast(inks(inks::black), inks(inks::warning)) >= 4.5);
        CHECK(contrast(inks(inks::black), inks(inks::caution)) >= 4.5);
    }
}
