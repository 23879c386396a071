// SPDX-License-Identifier: MIT
#include "desk/feed_line.hpp"

#include <doctest/doctest.h>

#include <algorithm>

#include "desk/face_panels.hpp"
#include "sheet/texts.hpp"

using namespace doorcard;

namespace {

FeedLine feeds_of(const Survey& survey, const std::string& panel, double width = 240, const char* language = "en") {
    return feed_line(survey, survey.panels.position(panel), width, Words::in(language));
}

std::vector<std::string> ids_of(const FeedLine& line) {
    std::vector<std::string> ids;
    for (const FeedPlace& place : line.places) ids.push_back(place.id);
    return ids;
}

void check_apart(const FeedLine& line) {
    std::vector<InkOnPage> inks;
    for (const TextMark& text : texts_of(line.page)) {
        const InkOnPage ink = ink_on_page(text);
        INFO(text.text);
        CHECK(ink.right <= line.page.paper.width);
        CHECK(ink.bottom <= line.page.paper.height);
        CHECK(ink.top >= 0);
        for (const InkOnPage& other : inks) CHECK_FALSE(overlap(ink, other));
        inks.push_back(ink);
    }
}

}  // namespace

TEST_CASE("feed line: source, panel shown and its sub-panel stand in the order of the power") {
    const FeedLine line = feeds_of(example::house(), "MAIN");
    CHECK(ids_of(line) == std::vector<std::string>{"utility", "MAIN", "solar", "SHOP"});
    CHECK(line.places[0].is_panel == false);
    CHECK(line.places[1].words == "panel Main panel, shown");
    CHECK(line.places[3].words == "panel Workshop, fed from MAIN 17+19, 50 A");
    check_apart(line);
}

TEST_CASE("feed line: from a sub-panel the way back up is there") {
    const FeedLine line = feeds_of(example::house(), "SHOP");
    CHECK(ids_of(line) == std::vector<std::string>{"utility", "MAIN", "solar", "SHOP"});
    CHECK(line.places[1].words == "panel Main panel");
    CHECK(line.places[3].words == "panel Workshop, shown");
    check_apart(line);
}

TEST_CASE("feed line: panels that find no room are counted, and the count leads to the first of them") {
    const Survey survey = example::many_panels(9);
    const FeedLine line = feeds_of(survey, "MAIN", 180);
    CHECK(line.places.size() < 12);
    CHECK(line.places.back().words.find("more") != std::string::npos);
    const auto ids = ids_of(line);
    CHECK(std::ranges::count(ids, line.places.back().id) == 1);
    check_apart(line);
    CHECK(feeds_of(survey, "MAIN", 600).places.size() == 12);
}

TEST_CASE("feed line: places lie beside each other, narrow and wide, in both languages") {
    for (const Survey& survey : {example::house(), example::many_panels(9), example::many_panels(2)})
        for (const double width : {90.0, 140.0, 240.0})
            for (const char* language : {"en", "es"}) {
                const FeedLine line = feeds_of(survey, "MAIN", width, language);
                check_apart(line);
                for (const FeedPlace& a : line.places)
                    for (const FeedPlace& b : line.places)
                        if (&a != &b)
                            CHECK_FALSE((a.frame.x < b.frame.right() - 0.01 && b.frame.x < a.frame.right() - 0.01 &&
                                         a.frame.y < b.frame.bottom() - 0.01 && b.frame.y < a.frame.bottom() - 0.01));
            }
}

TEST_CASE("feed line: a feed that nobody knows is said, and no panel is no line") {
    Survey survey = example::house();
    std::vector<Panel> panels = survey.panels.rows();
    panels[0].fed_by.clear();
    survey.panels = Table(panels);
    const FeedLine line = feeds_of(survey, "MAIN");
    CHECK(std::ranges::any_of(texts_of(line.page), [](const TextMark& t) { return t.text == "feed not known"; }));
    CHECK(feed_line(Survey{}, 0, 200, Words::in("en")).places.empty());
}
