// SPDX-License-Identifier: MIT
#pragma once
#include <doctest/doctest.h>

#include "sheet/sheet.hpp"
#include "sheet/type_case.hpp"

// Texts of a sheet measured against their cells and against one another.
namespace doorcard {

inline std::vector<TextMark> texts_of(const Page& page) {
    std::vector<TextMark> texts;
    for (const Mark& mark : page.marks)
        if (const auto* text = std::get_if<TextMark>(&mark)) texts.push_back(*text);
    return texts;
}

/// The ink of a text on its page, mm.
struct InkOnPage {
    double left, right, top, bottom;
};

inline InkOnPage ink_on_page(const TextMark& text) {
    const InkExtent ink = ink_extent(text.text, text.style);
    const double width = text_width(text.text, text.style);
    const double x = text.align == Align::left    ? text.x
                     : text.align == Align::right ? text.x - width
                                                  : text.x - width / 2;
    return {x + ink.left, x + ink.right, text.baseline + ink.top, text.baseline + ink.bottom};
}

inline bool overlap(const InkOnPage& a, const InkOnPage& b) {
    return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

constexpr double hair = 0.05;  // rounding of font outlines, mm

/// Every text inside its frame and the page, no text over another, none of a character that the fonts lack.
inline void check_texts(const Sheet& sheet) {
    for (const Page& page : sheet.pages) {
        const auto texts = texts_of(page);
        REQUIRE(texts.size() > 10);
        std::vector<InkOnPage> inks;
        for (const TextMark& text : texts) {
            INFO("text: ", text.text, " on ", page.title);
            const InkOnPage ink = ink_on_page(text);
            CHECK(unknown_characters(text.text, text.style) == 0);
            CHECK(ink.left >= text.frame.x - hair);
            CHECK(ink.right <= text.frame.right() + hair);
            CHECK(ink.top >= text.frame.y - hair);
            CHECK(ink.bottom <= text.frame.bottom() + hair);
            CHECK(ink.left >= 0);
            CHECK(ink.right <= page.paper.width);
            CHECK(ink.bottom <= page.paper.height);
            inks.push_back(ink);
        }
        for (std::size_t i = 0; i < inks.size(); ++i)
            for (std::size_t j = i + 1; j < inks.size(); ++j) {
                INFO("'", texts[i].text, "' over '", texts[j].text, "' on ", page.title);
                CHECK_FALSE(overlap(inks[i], inks[j]));
            }
    }
}

}  // namespace doorcard
