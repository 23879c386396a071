// SPDX-License-Identifier: MIT
#include "desk/face_picture.hpp"

#include <doctest/doctest.h>

#include <algorithm>

#include "desk/face_panels.hpp"
#include "sheet/inks.hpp"
#include "sheet/texts.hpp"

using namespace doorcard;

namespace {

constexpr double px = 25.4 / 96;

FaceLook look_of(double width_px, double height_px) {
    FaceLook look;
    look.width = width_px * px;
    look.height = height_px * px;
    return look;
}

FaceFacts facts_of(const Survey& survey, const std::string& panel = "MAIN") {
    return face_facts(example::assessed(survey), survey.panels.position(panel));
}

FacePicture drawn(const Survey& survey, const FaceLook& look = look_of(600, 800), const char* language = "en") {
    return face_picture(facts_of(survey), look, Words::in(language));
}

void check_page(FacePicture picture) {
    Sheet sheet;
    sheet.pages.push_back(std::move(picture.page));
    check_texts(sheet);
}

const TextMark* text_with(const Page& page, const std::string& words) {
    for (const Mark& mark : page.marks)
        if (const auto* text = std::get_if<TextMark>(&mark); text && text->text.find(words) != std::string::npos)
            return text;
    return nullptr;
}

FaceListRow listed(const FaceFacts& facts, Position position, const FaceLook& look = {}) {
    for (const FaceListRow& row : face_list(facts, Words::in("en"), look))
        if (row.position == position) return row;
    throw std::runtime_error("no row " + name_of(position));
}

std::vector<Survey> hard_panels() {
    return {example::house(),           example::tandems(),      example::twenty_tandems(),
            example::full_panel(42),    example::full_panel(84), example::column(12),
            example::nested_neutrals(), example::three_phases(), example::long_texts(24)};
}

std::size_t rows_in(const FaceFacts& facts) { return facts.directory.rows.size(); }

}  // namespace

TEST_CASE("face: every text stays in its room and off every other, narrow and wide, low and high") {
    for (const Survey& survey : hard_panels())
        for (const FaceLook& look : {look_of(430, 500), look_of(600, 800), look_of(760, 1100)})
            check_page(drawn(survey, look));
}

TEST_CASE("face: the same in Spanish") {
    for (const Survey& survey : hard_panels()) check_page(drawn(survey, look_of(460, 700), "es"));
}

TEST_CASE("face: a finger finds the row it points at, and no row is lost") {
    for (const Survey& survey : hard_panels()) {
        const FaceFacts facts = facts_of(survey);
        const FacePicture picture = face_picture(facts, look_of(600, 500), Words::in("en"));
        for (const DirectoryRow& row : facts.directory.rows) {
            const FaceRowPlace* place = picture.place_of(row.positions.front());
            REQUIRE(place != nullptr);
            const Frame& frame = place->row;
            CHECK(picture.at(frame.x + frame.width / 2, frame.y + frame.height / 2) == row.positions.front());
        }
        CHECK(picture.places.size() >= rows_in(facts));
        CHECK_FALSE(picture.at(1, picture.page.paper.height + 5));
    }
}

TEST_CASE("face: rows grow with the window and shrink to 28 px, then the picture gets longer than what is seen") {
    const auto height_of_row = [](const FacePicture& picture) { return picture.place_of({1, ' '})->row.height / px; };
    const FacePicture low = drawn(example::full_panel(42), look_of(600, 300));
    const FacePicture high = drawn(example::full_panel(42), look_of(600, 2000));
    CHECK(height_of_row(low) >= 28 - 0.1);
    CHECK(height_of_row(low) < 29);
    CHECK(low.page.paper.height > 300 * px);
    CHECK(height_of_row(high) == doctest::Approx(54).epsilon(0.01));
}

TEST_CASE("face: figures never touch the handle") {
    for (const Survey& survey : hard_panels())
        for (const FaceLook& look : {look_of(430, 500), look_of(760, 900)})
            for (const FaceRowPlace& place : drawn(survey, look).places) {
                if (place.figures.width <= 0) continue;
                const bool left = place.handle.x > place.text.x;
                CHECK((left ? place.handle.x - place.figures.right() : place.figures.x - place.handle.right()) > 1.4);
            }
}

TEST_CASE("face: neutrals say which spaces they join; two hots on one leg stand in danger's ink and in bold") {
    const FacePicture picture = drawn(example::nested_neutrals());
    const TextMark* wrong = text_with(picture.page, "9 and 13: neutral");
    REQUIRE(wrong != nullptr);
    CHECK(wrong->text.find("same leg") != std::string::npos);
    CHECK(wrong->ink == inks::danger);
    CHECK(wrong->style.bold);
    const TextMark* sound = text_with(picture.page, "1 and 7: neutral");
    REQUIRE(sound != nullptr);
    CHECK(sound->ink != inks::danger);
    CHECK(text_with(picture.page, "2 and 17: neutral") != nullptr);  // across both sides
    const FaceFacts facts = facts_of(example::nested_neutrals());
    CHECK(listed(facts, {13, ' '}).neutral == wrong->text);
}

TEST_CASE("face: past its rating a load stands in bold and danger's ink") {
    example::Building h = example::empty_house(4);
    h.row({1}, 15, "Kiln");
    example::load_on(h, "c1", 2400);
    h.row({2}, 20, "Lamp");
    example::load_on(h, "c2", 600);
    const FacePicture picture = drawn(h.survey());
    const TextMark* over = text_with(picture.page, "20.0 of 15");
    REQUIRE(over != nullptr);
    CHECK(over->style.bold);
    CHECK(over->ink == inks::danger);
    const TextMark* sound = text_with(picture.page, "5.0 of 20");
    REQUIRE(sound != nullptr);
    CHECK_FALSE(sound->style.bold);
    CHECK(listed(facts_of(h.survey()), {1, ' '}).load == "calculated 20.0 A, of 15 A: 133 %, past the rating");
}

TEST_CASE("face: an unknown load is a dash, never a nought") {
    example::Building h = example::empty_house(4);
    h.row({1}, 15, "Lamp");
    const FaceFacts facts = facts_of(h.survey());
    CHECK(listed(facts, {1, ' '}).load == "load not known, of 15 A");
    CHECK(text_with(face_picture(facts, look_of(600, 400), Words::in("en")).page, "0.0 of") == nullptr);
}

TEST_CASE("face: what is not traced stands in bold beside hatching, and says 'treat as live'") {
    const FacePicture picture = drawn(example::house());
    const TextMark* text = text_with(picture.page, "Not traced");
    REQUIRE(text != nullptr);
    CHECK(text->style.bold);
    const auto slanted = std::ranges::count_if(picture.page.marks, [](const Mark& mark) {
        const auto* line = std::get_if<LineMark>(&mark);
        return line && line->x1 != line->x2 && line->y1 != line->y2;
    });
    CHECK(slanted > 8);
}

TEST_CASE("face: handles that a round has off are drawn off, and what to throw is said in the list") {
    FaceLook look = look_of(600, 800);
    const auto offs = [&] {
        const Page page = drawn(example::house(), look).page;
        return std::ranges::count_if(texts_of(page), [](const TextMark& text) { return text.text == "OFF"; });
    };
    const auto before = offs();
    look.off_now = {{1, ' '}, {3, ' '}};
    look.to_throw = {{1, ' '}};
    CHECK(offs() == before + 2);
    CHECK(listed(facts_of(example::house()), {1, ' '}, look).device.find("to be switched off now") !=
          std::string::npos);
}

TEST_CASE("face: a planned change stands at its target with its words; the old place keeps its own") {
    FaceLook look = look_of(600, 800);
    look.planned = {{{{3, ' '}}, {{20, ' '}}, {}, "3 moves to 20"}};
    const FacePicture picture = drawn(example::house(), look);
    const TextMark* words = text_with(picture.page, "3 moves to 20");
    REQUIRE(words != nullptr);
    const Frame& target = picture.place_of({20, ' '})->row;
    CHECK(words->baseline > target.y);
    CHECK(words->baseline < target.bottom());
    CHECK(text_with(picture.page, "Hall, stair") != nullptr);
    CHECK(listed(facts_of(example::house()), {20, ' '}, look).what.find("planned: 3 moves to 20") != std::string::npos);
    check_page(picture);
}

TEST_CASE("face: what is chosen is framed; with the keyboard elsewhere its corners remain") {
    FaceLook look = look_of(600, 800);
    const auto accents = [&] {
        std::pair<int, int> boxes_and_lines;
        for (const Mark& mark : drawn(example::house(), look).page.marks) {
            if (const auto* box = std::get_if<BoxMark>(&mark); box && box->ink == inks::accent) ++boxes_and_lines.first;
            if (const auto* line = std::get_if<LineMark>(&mark); line && line->ink == inks::accent)
                ++boxes_and_lines.second;
        }
        return boxes_and_lines;
    };
    CHECK(accents() == std::pair(0, 0));
    look.selected = Position{13, ' '};
    CHECK(accents() == std::pair(0, 8));
    look.selected_has_focus = true;
    CHECK(accents() == std::pair(1, 0));
}

TEST_CASE("face: dashes say 'planned' and nothing else") {
    for (const Survey& survey : hard_panels())
        for (const Mark& mark : drawn(survey).page.marks)
            if (const auto* box = std::get_if<BoxMark>(&mark)) CHECK(box->dashes.empty());
}

TEST_CASE("face: the main is drawn at its end of the bus with its rating and what feeds it") {
    const FacePicture above = drawn(example::house());
    const TextMark* main = text_with(above.page, "main 200 A");
    REQUIRE(main != nullptr);
    CHECK(main->baseline < above.places.front().row.y);
    CHECK(text_with(above.page, "fed from") != nullptr);
    const FacePicture below = drawn(example::three_phases());
    REQUIRE(text_with(below.page, "main 200 A") != nullptr);
    CHECK(text_with(below.page, "main 200 A")->baseline > below.places.back().row.bottom());
}

TEST_CASE("face: a panel fed from another has its legs, though only a part of the survey is looked at") {
    const FaceFacts facts = facts_of(example::house(), "SHOP");
    CHECK(listed(facts, {1, ' '}).device == "20 A, leg A");
    CHECK(face_head_words(facts, Words::in("en")).find("MAIN 17+19") != std::string::npos);
}

TEST_CASE("face: every word in a row's picture is in the list too") {
    const auto words_of = [](std::string text) {
        for (char& c : text)
            c = std::string("(),;:+").find(c) == std::string::npos ? static_cast<char>(std::tolower(c)) : ' ';
        std::vector<std::string> words{""};
        for (const char c : text) c == ' ' ? void(words.emplace_back()) : words.back().push_back(c);
        std::erase(words, "");
        return words;
    };
    for (const Survey& survey : {example::house(), example::nested_neutrals(), example::three_phases()}) {
        const FaceFacts facts = facts_of(survey);
        const FacePicture picture = face_picture(facts, look_of(1000, 1200), Words::in("en"));
        for (const TextMark& text : texts_of(picture.page)) {
            const auto position = picture.at(text.frame.x + text.frame.width / 2, text.baseline - 0.5);
            if (!position || text.text == "–" || text.text == "?") continue;
            std::string listed_words;
            for (const FaceListRow& row : face_list(facts, Words::in("en")))  // a leg's letter is that of both sides
                listed_words +=
                    " " + row.space + " " + row.what + " " + row.device + " " + row.load + " " + row.neutral;
            const auto known = words_of(listed_words);
            INFO(text.text);
            for (const std::string& word : words_of(text.text)) CHECK(std::ranges::find(known, word) != known.end());
        }
    }
}
