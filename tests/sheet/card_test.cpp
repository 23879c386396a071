// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "sheet/card.hpp"
#include "sheet/example_panels.hpp"
#include "sheet/texts.hpp"
#include "sheet/type_case.hpp"

using namespace doorcard;

namespace {

Sheet card_of(const Survey& survey, CardChoice choice = {}, const Words& words = Words::in("en")) {
    const Network network = network_of(survey);
    return card_sheet(network, assess(network, *built_in_book("NEC-2023")), choice, words);
}

bool says(const Sheet& sheet, const std::string& words) {
    for (const Page& page : sheet.pages)
        for (const TextMark& text : texts_of(page))
            if (text.text.find(words) != std::string::npos) return true;
    return false;
}

std::string all_words(const Sheet& sheet) {
    std::string words;
    for (const Page& page : sheet.pages)
        for (const TextMark& text : texts_of(page)) words += text.text + " ";
    return words;
}

double smallest_type(const Sheet& sheet) {
    double points = 99;
    for (const Page& page : sheet.pages)
        for (const TextMark& text : texts_of(page)) points = std::min(points, text.style.points);
    return points;
}

const TextMark& mark_of(const Sheet& sheet, const std::string& words) {
    for (const Page& page : sheet.pages)
        for (const Mark& mark : page.marks)
            if (const auto* text = std::get_if<TextMark>(&mark); text && text->text == words) return *text;
    throw std::runtime_error("no text '" + words + "'");
}

CardChoice pocket(double width, double height) {
    CardChoice choice;
    choice.cut = Paper{width, height};
    choice.paper = paper_for_cut(*choice.cut);
    return choice;
}

}  // namespace

TEST_CASE("card: every text stays in its room and off every other, from 8 to 84 spaces") {
    for (const Survey& survey :
         {example::house(), example::small_panel(), example::full_panel(24), example::full_panel(42),
          example::full_panel(84), example::tandems(), example::column(12), example::long_texts(8),
          example::long_texts(24), example::long_texts(42)})
        for (const CardChoice& choice : {CardChoice{}, pocket(132, 206), pocket(140, 250), pocket(160, 190)})
            check_texts(card_of(survey, choice));
}

TEST_CASE("card: the same in Spanish") {
    for (const Survey& survey : {example::house(), example::tandems(), example::full_panel(42)})
        check_texts(card_of(survey, {}, Words::in("es")));
}

TEST_CASE("card: the smallest card keeps its texts apart") {
    for (const Survey& survey : {example::house(), example::full_panel(42), example::tandems(), example::long_texts(8)})
        check_texts(card_of(survey, pocket(least_cut.width, least_cut.height)));
}

TEST_CASE("card: breakers that interlock are parted where no row is a clean end, and nothing is lost") {
    const Sheet sheet = card_of(example::interlocked(84));
    CHECK(sheet.pages.size() == 3);
    CHECK(says(sheet, "is one handle"));  // a pole alone must not read as a one-pole breaker
    CHECK_FALSE(says(card_of(example::full_panel(84)), "is one handle"));
    check_texts(sheet);
    for (int space = 1; space <= 84; ++space) CHECK_NOTHROW(mark_of(sheet, std::to_string(space)));
}

TEST_CASE("card: 24 spaces on one card, 42 on two, 84 on several") {
    CHECK(card_of(example::full_panel(8)).pages.size() == 1);
    CHECK(card_of(example::full_panel(24)).pages.size() == 1);
    CHECK(card_of(example::full_panel(42)).pages.size() == 2);
    const auto pages = card_of(example::full_panel(84)).pages.size();
    CHECK(pages >= 3);
    CHECK(pages <= 4);
}

TEST_CASE("card: more cards before smaller type") {
    const Sheet sheet = card_of(example::long_texts(24));
    CHECK(sheet.pages.size() > 1);
    for (const Page& page : sheet.pages)
        for (const TextMark& text : texts_of(page))
            if (text.text.find("Receptacles") != std::string::npos) CHECK(text.style.points >= 8);
    CHECK(smallest_type(sheet) >= 5);  // the word in a handle of the legend
}

TEST_CASE("card: every space of a panel stands on exactly one card") {
    for (const int spaces : {8, 24, 42, 84}) {
        const Sheet sheet = card_of(example::full_panel(spaces));
        for (int space = 1; space <= spaces; ++space) {
            int count = 0;
            for (const Page& page : sheet.pages)
                for (const TextMark& text : texts_of(page))
                    count += text.text == std::to_string(space) && text.style.points == 12;
            INFO("space ", space, " of ", spaces);
            CHECK(count == 1);
        }
    }
}

TEST_CASE("card: numbers are bold 12 pt, ratings bold 10, texts 9 or 8") {
    const Sheet sheet = card_of(example::house(), pocket(132, 206));
    CHECK(mark_of(sheet, "13").style.points == 12);
    CHECK(mark_of(sheet, "13").style.bold);
    CHECK(mark_of(sheet, "50").style.points == 10);
    CHECK(mark_of(sheet, "Range").style.points == 9);
    CHECK_FALSE(mark_of(sheet, "Range").style.italic);
}

TEST_CASE("card: what is only claimed is italic, dotted and boxed") {
    const Sheet sheet = card_of(example::house(), pocket(132, 206));
    const TextMark& claimed = mark_of(sheet, "Bath receptacle");
    CHECK(claimed.style.italic);
    CHECK(std::any_of(sheet.pages[0].marks.begin(), sheet.pages[0].marks.end(), [&](const Mark& mark) {
        const auto* line = std::get_if<LineMark>(&mark);
        return line && !line->dashes.empty() && line->x1 == claimed.x && std::abs(line->y1 - claimed.baseline) < 1.2;
    }));
    CHECK(says(sheet, "only said, not traced: treat as live."));
}

TEST_CASE("card: what is off is kept off, in words above the table and in its handle") {
    const Sheet sheet = card_of(example::house());
    CHECK(says(sheet, "Do not switch on 18"));
    CHECK(says(sheet, "Off: cable damaged"));
    CHECK(says(sheet, "WARNING"));
    CHECK(mark_of(sheet, "OFF").style.bold);
    const Sheet without = card_of(example::small_panel());
    CHECK_FALSE(says(without, "Do not switch on"));
    CHECK_FALSE(says(without, "WARNING"));
}

TEST_CASE("card: a second source is shouted where it comes in, not below it") {
    const Sheet sheet = card_of(example::house());
    const std::string words = all_words(sheet);
    CHECK(words.find("MULTIPLE SOURCES OF POWER") != std::string::npos);
    CHECK(words.find("Shut off both: main, here; Solar: 22+24 and north wall.") != std::string::npos);
    CHECK(words.find("line side of the main stays live.") != std::string::npos);
    Sheet shop;
    CardChoice choice;
    choice.panels = {"SHOP"};
    shop = card_of(example::house(), choice);
    REQUIRE(shop.pages.size() == 1);
    CHECK_FALSE(says(shop, "MULTIPLE SOURCES"));
}

TEST_CASE("card: a source in a panel below is a second source of the panel above") {
    example::Building h = example::empty_house(8);
    h.breaker("MAIN", {1, 3}, 50);
    Panel shop;
    shop.id = "SHOP";
    shop.fed_by = {"MAIN:1+3"};
    shop.spaces = 8;
    h.panels.push_back(shop);
    h.breaker("SHOP", {2, 4}, 30);
    Source wind;
    wind.id = "wind";
    wind.kind = "wind";
    wind.through = "SHOP:2+4";
    h.sources.push_back(wind);
    const Sheet sheet = card_of(h.survey());
    const std::string words = all_words(sheet);
    CHECK(words.find("Wind: SHOP 2+4") != std::string::npos);
    CHECK(words.find("MAIN 1+3") != std::string::npos);  // where SHOP's own feed is shut off
}

TEST_CASE("card: shared neutrals say which handles go off together, and where no tie is") {
    CHECK(says(card_of(example::house()), "5 and 7 off together"));
    example::Building h = example::empty_house(8);
    for (const int space : {1, 3}) {
        h.row({space}, 20, "Counter " + std::to_string(space));
        h.circuits.back().neutral = "N1";
    }
    const Sheet untied = card_of(h.survey());
    CHECK(says(untied, "1 and 3 NOT TIED"));
    CHECK_FALSE(says(untied, "off together"));
    CHECK(says(untied, "Switch off all of them."));
    check_texts(untied);
}

TEST_CASE("card: neutrals of handles apart, and of another panel, are said in the rows") {
    example::Building h = example::empty_house(12);
    h.row({1}, 20, "Counter, left");
    h.circuits.back().neutral = "N1";
    h.row({5}, 20, "Counter, right");
    h.circuits.back().neutral = "N1";
    Panel shop;
    shop.id = "SHOP";
    shop.spaces = 4;
    h.panels.push_back(shop);
    h.breaker("SHOP", {2}, 15);
    h.circuit("bench", "Bench").neutral = "N2";
    h.row({8}, 20, "Porch");
    h.circuits.back().neutral = "N2";
    const Sheet sheet = card_of(h.survey());
    CHECK(says(sheet, "N1: 1 and 5 NOT TIED"));
    CHECK(all_words(sheet).find("SHOP 2 and 8 NOT TIED") != std::string::npos);
    check_texts(sheet);
}

TEST_CASE("card: what must stay on is on a dated tag outside the card, never in the directory") {
    const Sheet sheet = card_of(example::house());
    const TextMark& tag = mark_of(sheet, "14 (sump pump)");
    const double card_bottom = 15 + usual_cut.height;
    CHECK(tag.frame.y > card_bottom);
    CHECK(says(sheet, "As of 2026-05-14."));
    CHECK(says(sheet, "except in an emergency"));
    // Where the sheet has no room below the card, the tag is left to the back.
    CHECK_FALSE(says(card_of(example::house(), pocket(132, 206)), "(sump pump)"));
}

TEST_CASE("card: a measured door pocket is said on the cut line; else it asks for it") {
    CHECK(says(card_of(example::small_panel(), pocket(120, 200)), "cut to 120 × 200 mm, the door pocket as measured"));
    CHECK(says(card_of(example::small_panel()), "measure the door pocket first"));
    CHECK(card_of(example::small_panel(), pocket(120, 200)).pages[0].paper == half_letter_paper);
    CHECK(paper_for_cut({180, 250}) == letter_paper);
    CHECK(paper_for_cut({300, 400}).width > 300);
}

TEST_CASE("card: the foot says how much is traced, and 'undated'") {
    const Sheet sheet = card_of(example::house());
    CHECK(says(sheet, "13 of 16"));
    CHECK(says(sheet, "2026-05-14"));
    Survey survey = example::small_panel();
    survey.heading = {};
    const Sheet plain = card_of(survey);
    CHECK(says(plain, "undated"));
    CHECK(plain.created == "2000-01-01T00:00:00Z");
}

TEST_CASE("card: abbreviations that the rows use are explained, others are not") {
    const std::string words = all_words(card_of(example::house()));
    CHECK(words.find("HVAC: heating, ventilation, air conditioning.") != std::string::npos);
    CHECK(words.find("GFCI") == std::string::npos);
    CHECK(all_words(card_of(example::small_panel())).find("HVAC") == std::string::npos);
}

TEST_CASE("card: defaults that it shows are listed as assumed") {
    CHECK(all_words(card_of(example::small_panel()))
              .find("Assumed: the system of what feeds it; odd numbers on the left; "
                    "legs AB down the rows from space 1.") != std::string::npos);
    Survey survey = example::small_panel();
    std::vector<Panel> panels = survey.panels.rows();
    panels[0].legs_down = "AB";
    panels[0].numbering = Numbering::odd_left;
    panels[0].system = System::split_120_240;
    survey.panels = Table(panels);
    CHECK_FALSE(says(card_of(survey), "Assumed"));
}

TEST_CASE("card: fire alarm circuits are named so, in red") {
    example::Building h = example::empty_house(8);
    h.row({1}, 20, "Panel in the lobby");
    h.breakers.back().system = "fire-alarm";
    h.row({2}, 20, "Lobby receptacles");
    const Sheet sheet = card_of(h.survey());
    const TextMark& name = mark_of(sheet, "FIRE ALARM CIRCUIT");
    CHECK(name.ink.red > 2 * name.ink.blue);
    CHECK(name.ink.red > 2 * name.ink.green);
    CHECK(says(sheet, "Panel in the lobby"));
    CHECK(mark_of(sheet, "Lobby receptacles").ink == mark_of(sheet, "2").ink);
}

TEST_CASE("card: rows hang as the panel does") {
    const auto y_of = [](const Sheet& sheet, const std::string& number) { return mark_of(sheet, number).baseline; };
    const auto x_of = [](const Sheet& sheet, const std::string& number) { return mark_of(sheet, number).x; };
    example::Building h = example::empty_house(8);
    for (int space = 1; space <= 8; ++space) h.row({space}, 20, "Room of the " + std::to_string(space) + "th");
    SUBCASE("odd left") {
        const Sheet sheet = card_of(h.survey());
        CHECK(x_of(sheet, "1") < x_of(sheet, "2"));
        CHECK(y_of(sheet, "1") == doctest::Approx(y_of(sheet, "2")));
        CHECK(y_of(sheet, "1") < y_of(sheet, "3"));
    }
    SUBCASE("odd right") {
        h.panels[0].numbering = Numbering::odd_right;
        const Sheet sheet = card_of(h.survey());
        CHECK(x_of(sheet, "1") > x_of(sheet, "2"));
    }
    SUBCASE("down the left, then down the right") {
        h.panels[0].numbering = Numbering::down_left;
        const Sheet sheet = card_of(h.survey());
        CHECK(x_of(sheet, "1") == x_of(sheet, "4"));
        CHECK(x_of(sheet, "5") > x_of(sheet, "4"));
        CHECK(y_of(sheet, "1") == doctest::Approx(y_of(sheet, "5")));
    }
    SUBCASE("turned over") {
        h.panels[0].turned_over = true;
        const Sheet sheet = card_of(h.survey());
        CHECK(y_of(sheet, "1") > y_of(sheet, "7"));
        check_texts(sheet);
    }
}

TEST_CASE("card: halves stand by number, the low one low when turned over") {
    const Sheet upright = card_of(example::tandems());
    CHECK(mark_of(upright, "1a").baseline < mark_of(upright, "1b").baseline);
    Survey survey = example::tandems();
    std::vector<Panel> panels = survey.panels.rows();
    panels[0].turned_over = true;
    survey.panels = Table(panels);
    const Sheet turned = card_of(survey);
    CHECK(mark_of(turned, "1a").baseline > mark_of(turned, "1b").baseline);
    check_texts(turned);
}

TEST_CASE("card: several circuits on one breaker are joined") {
    example::Building h = example::empty_house(8);
    h.row({1}, 20, "Porch light");
    h.circuit("more", "Gate motor");
    CHECK(says(card_of(h.survey()), "Porch light and"));
}

TEST_CASE("card: two breakers in one space are both shown") {
    example::Building h = example::empty_house(8);
    h.row({1}, 20, "Porch light");
    h.breaker("MAIN", {1, 3}, 30);
    h.breakers.back().id = "other";
    h.circuit("dryer", "Dryer");
    const Sheet sheet = card_of(h.survey());
    CHECK(says(sheet, "Porch light"));
    CHECK(says(sheet, "Dryer"));
    check_texts(sheet);
}

TEST_CASE("card: a panel without anything known can be printed") {
    Survey survey;
    Panel bare;
    bare.id = "P";
    survey.panels = Table(std::vector<Panel>{bare});
    const Sheet sheet = card_of(survey);
    REQUIRE(sheet.pages.size() == 1);
    CHECK(says(sheet, "not known"));
    CHECK(says(sheet, "Not seen"));
    check_texts(sheet);
}

TEST_CASE("card: the label of 408.4(B) is named where it is due") {
    example::Building h = example::empty_house(8);
    h.breaker("MAIN", {1, 3}, 50);
    Panel shop;
    shop.id = "SHOP";
    shop.fed_by = {"MAIN:1+3"};
    shop.spaces = 8;
    h.panels.push_back(shop);
    CardChoice choice;
    choice.panels = {"SHOP"};
    choice.source_label = "NEC 2023 408.4(B)";
    CHECK(all_words(card_of(h.survey(), choice)).find("408.4(B)") == std::string::npos);  // a dwelling of one unit
    Survey survey = h.survey();
    Dwelling flats;
    flats.units = 12;
    survey.dwellings = Table(std::vector<Dwelling>{flats});
    CHECK(all_words(card_of(survey, choice)).find("408.4(B)") != std::string::npos);
    choice.panels = {"MAIN"};
    CHECK(all_words(card_of(survey, choice)).find("408.4(B)") == std::string::npos);  // fed by the utility
}

TEST_CASE("card: only the panels asked for") {
    CardChoice choice;
    choice.panels = {"SHOP"};
    const Sheet sheet = card_of(example::house(), choice);
    REQUIRE(sheet.pages.size() == 1);
    CHECK(sheet.pages[0].of == "SHOP");
}
