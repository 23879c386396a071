// SPDX-License-Identifier: MIT
#include "sheet/correction_list.hpp"

#include <doctest/doctest.h>

#include <fmt/format.h>

#include <algorithm>

#include "file/read_survey.hpp"
#include "sheet/card.hpp"
#include "sheet/paint.hpp"
#include "sheet/type_case.hpp"

using namespace doorcard;

namespace {

Sheet list_of(const std::string& text, const Words& words = Words::in("en"),
              CorrectionChoice choice = {letter_paper, "NEC-2023", ""}) {
    const auto read = read_survey({"s", text});
    REQUIRE(read);
    const Network network = network_of(read->survey);
    return correction_list(network, assess(network, *built_in_book("NEC-2023")), choice, words);
}

std::string words_on(const Page& page) {
    std::string words;
    for (const Mark& mark : page.marks)
        if (const auto* text = std::get_if<TextMark>(&mark)) words += text->text + " ";
    return words;
}

std::string words_on(const Sheet& sheet) {
    std::string words;
    for (const Page& page : sheet.pages) words += words_on(page);
    return words;
}

struct InkOnPage {
    double left, right, top, bottom;
};

InkOnPage ink_on_page(const TextMark& text) {
    const InkExtent ink = ink_extent(text.text, text.style);
    const double width = text_width(text.text, text.style);
    const double x = text.align == Align::left    ? text.x
                     : text.align == Align::right ? text.x - width
                                                  : text.x - width / 2;
    return {x + ink.left, x + ink.right, text.baseline + ink.top, text.baseline + ink.bottom};
}

bool overlap(const InkOnPage& a, const InkOnPage& b) {
    return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

/// Every text inside its frame and the page, none over another, no character that the fonts lack.
void check_texts(const Sheet& sheet) {
    constexpr double hair = 0.05, hook = 0.15;  // a j reaches left of its stem
    for (const Page& page : sheet.pages) {
        std::vector<InkOnPage> inks;
        for (const Mark& mark : page.marks) {
            const auto* text = std::get_if<TextMark>(&mark);
            if (!text) continue;
            INFO("text: ", text->text, " on ", page.title);
            const InkOnPage ink = ink_on_page(*text);
            CHECK(unknown_characters(text->text, text->style) == 0);
            CHECK(ink.left >= text->frame.x - hook);
            CHECK(ink.right <= text->frame.right() + hair);
            CHECK(ink.right <= page.paper.width);
            CHECK(ink.bottom <= page.paper.height);
            for (const InkOnPage& other : inks) CHECK_FALSE(overlap(ink, other));
            inks.push_back(ink);
        }
        CHECK(inks.size() > 5);
    }
}

long boxes_to_tick(const Page& page) {
    return std::ranges::count_if(page.marks, [](const Mark& mark) {
        const auto* box = std::get_if<BoxMark>(&mark);
        return box && box->width == box->height && !box->fill;
    });
}

std::string panel(const std::string& id) {
    return fmt::format(
        "[[panel]]\nid = \"{}\"\ntitle = \"Panel of the house\"\nfed_by = \"u\"\nspaces = 42\nmain = "
        "\"breaker\"\nmain_a = 200\n",
        id);
}

const std::string source =
    "format = 1\n[survey]\ntitle = \"Alder Row 9\"\n[[source]]\nid = \"u\"\nsystem = \"120/240 1ph 3w\"\n";

/// Two hots of one neutral on one leg, at two spaces of a panel.
std::string same_leg(const std::string& panel, int space) {
    std::string text;
    for (const int at : {space, space + 4})
        text += fmt::format(
            "[[breaker]]\npanel = \"{0}\"\nspaces = [{1}]\namps = 20\n[[circuit]]\nid = \"{0}-{1}\"\nbreaker = "
            "\"{0}:{1}\"\nneutral = "
            "\"N{0}{2}\"\npurpose = \"Workshop bench {1}\"\n",
            panel, at, space);
    return text;
}

}  // namespace

TEST_CASE("correction list: place, figure, source, remedy and boxes, by panel") {
    const Sheet sheet = list_of(source + panel("MAIN") + panel("LP") + same_leg("LP", 1) + same_leg("MAIN", 1));
    REQUIRE(sheet.pages.size() == 2);
    CHECK(sheet.pages[0].title == "MAIN");
    CHECK(sheet.pages[1].title == "LP");
    const std::string words = words_on(sheet.pages[0]);
    for (const char* said :
         {"DANGER", "MAIN 1 and MAIN 5 share", "40\u00A0A", "NEC 2023", "200.4(A)", "required", "Move one of them",
          "date", "initials", "1 of 2", "NEC-2023", "Alder Row 9", "Not a permit.", "Off here is not proof of dead."})
        CHECK_MESSAGE(words.find(said) != std::string::npos, said << " in " << words);
    CHECK(boxes_to_tick(sheet.pages[0]) >= 2);
    check_texts(sheet);
}

TEST_CASE("correction list: notices of one rule stand in one line with a box, all their handles named") {
    std::string text = source + panel("MAIN");
    for (int space = 1; space <= 20; ++space)
        text += fmt::format("[[breaker]]\npanel = \"MAIN\"\nspaces = [{}]\namps = 20\n", space);
    const Sheet sheet = list_of(text);
    const std::string words = words_on(sheet);
    CHECK(words.find("17, 18, 19, 20") != std::string::npos);
    CHECK(words.find("Notices, and what nobody has looked at yet") != std::string::npos);
    check_texts(sheet);
}

TEST_CASE("correction list: as many pages as it takes, each with head, foot and number") {
    std::string text = source + panel("MAIN");
    for (int space = 1; space + 4 <= 42; space += space % 4 == 2 ? 7 : 1)
        if (space % 8 < 5 && space % 8 > 0) text += same_leg("MAIN", space);
    const Sheet sheet = list_of(text);
    REQUIRE(sheet.pages.size() >= 2);
    for (std::size_t i = 0; i < sheet.pages.size(); ++i) {
        const std::string words = words_on(sheet.pages[i]);
        CHECK(words.find(fmt::format("{} of {}", i + 1, sheet.pages.size())) != std::string::npos);
        CHECK((words.find("(continued)") != std::string::npos) == (i > 0));
        CHECK(words.find("Off here is not proof of dead.") != std::string::npos);
    }
    check_texts(sheet);
}

TEST_CASE("correction list: nothing found is no proof") {
    const Sheet sheet = list_of("format = 1\n");
    REQUIRE(sheet.pages.size() == 1);
    CHECK(words_on(sheet).find("That is not a proof that there is nothing") != std::string::npos);
    CHECK(boxes_to_tick(sheet.pages[0]) == 0);
    check_texts(sheet);
}

TEST_CASE("correction list: in Spanish and on A4, every text in its room") {
    for (const char* language : {"en", "es"}) {
        const Sheet sheet = list_of(source + panel("MAIN") + same_leg("MAIN", 1), Words::in(language),
                                    {a4_paper, "NEC-2023", "Only what is required."});
        CHECK(sheet.pages[0].paper == a4_paper);
        check_texts(sheet);
    }
}

TEST_CASE("correction list: as text in 80 columns, and as a table") {
    const Sheet sheet = list_of(source + panel("MAIN") + same_leg("MAIN", 1));
    const Bytes text = paint_text(sheet);
    CHECK(text.find("[ ] 1 DANGER: ") != std::string::npos);
    CHECK(text.find("initials") != std::string::npos);
    for (const std::string& line : sheet.pages[0].lines) CHECK(line.size() <= 84);  // bytes; some are of two
    CHECK(sheet.pages[0].table.size() >= 2);
    for (const auto& row : sheet.pages[0].table) CHECK(row.size() == sheet.pages[0].table[0].size());
    CHECK(paint_html(sheet).find("<td>") != std::string::npos);
}
