// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "sheet/card_back.hpp"
#include "sheet/card_back_words.hpp"
#include "sheet/example_panels.hpp"
#include "sheet/inks.hpp"
#include "sheet/texts.hpp"

using namespace doorcard;

namespace {

Sheet back_of(const Survey& survey, CardChoice choice = {}, const Words& words = Words::in("en")) {
    const Network network = network_of(survey);
    return card_back_sheet(network, assess(network, *built_in_book("NEC-2023")), choice, words);
}

CardChoice cut_to_pocket(double width, double height) {
    CardChoice choice;
    choice.cut = Paper{width, height};
    choice.paper = paper_for_cut(*choice.cut);
    return choice;
}

std::string words_of(const Sheet& sheet) {
    std::string words;
    for (const Page& page : sheet.pages)
        for (const TextMark& text : texts_of(page)) words += text.text + " ";
    return words;
}

bool says(const Sheet& sheet, const std::string& words) { return words_of(sheet).find(words) != std::string::npos; }

const TextMark& mark_of(const Sheet& sheet, const std::string& words) {
    for (const Page& page : sheet.pages)
        for (const Mark& mark : page.marks)
            if (const auto* text = std::get_if<TextMark>(&mark); text && text->text == words) return *text;
    throw std::runtime_error("no text '" + words + "'");
}

/// 'Kitchen | counter | 5 and 7' for every line of the table.
std::vector<std::string> table_of(const Sheet& sheet) {
    std::vector<std::string> lines;
    for (const Page& page : sheet.pages)
        for (std::size_t i = 1; i < page.table.size(); ++i)
            lines.push_back(page.table[i][0] + " | " + page.table[i][1] + " | " + page.table[i][2]);
    return lines;
}

bool has_line(const Survey& survey, const std::string& line) {
    const auto lines = table_of(back_of(survey));
    for (const std::string& known : lines) INFO(known);
    return std::ranges::find(lines, line) != lines.end();
}

/// A house of eight spaces with a circuit in each of 1 to 6, and nothing in its rooms yet.
example::Building wired(const std::string& how = "switching") {
    example::Building h = example::empty_house(8);
    for (int space = 1; space <= 6; ++space) {
        h.breaker("MAIN", {space}, 20);
        h.circuit("c" + std::to_string(space), "", how);
    }
    return h;
}

/// Rooms, several panels, everything that a back can show.
Survey furnished(int spaces, int rooms, int kept) {
    example::Building h = example::empty_house(spaces);
    for (int space = 1; space <= spaces; ++space) {
        h.breaker("MAIN", {space}, 20);
        if (space <= kept) h.breakers.back().keep_on = "freezer number " + std::to_string(space);
        if (space == spaces) h.breakers.back().state = BreakerState::off;
        h.circuit("c" + std::to_string(space), "", space % 5 == 0 ? "told" : "switching");
        Outlet& outlet = h.outlet("o" + std::to_string(space), h.circuits.back().id,
                                  "Room " + std::to_string(space % rooms) + " above the garage",
                                  space % 3 == 0 ? OutletKind::lighting : OutletKind::receptacle);
        outlet.label = "wall " + std::to_string(space) + ", behind the tall shelf";
        if (space % 4 == 0) outlet.guards = std::vector<Guard>{Guard::ground};
    }
    h.outlet("lost", "", "Cellar", OutletKind::receptacle).circuits.clear();
    return h.survey();
}

}  // namespace

TEST_CASE("card back: every text stays in its room and off every other") {
    for (const Survey& survey :
         {example::house(), example::small_panel(), example::full_panel(42), example::full_panel(84),
          example::tandems(), example::column(12), example::long_texts(24), furnished(24, 7, 3), furnished(84, 11, 10)})
        for (const CardChoice& choice : {CardChoice{}, cut_to_pocket(132, 206), cut_to_pocket(160, 190),
                                         cut_to_pocket(least_cut.width, least_cut.height)})
            for (const char* language : {"en", "es"}) check_texts(back_of(survey, choice, Words::in(language)));
}

TEST_CASE("card back: everything stands inside the cut, with paper to hold") {
    for (const Survey& survey : {example::house(), furnished(84, 11, 10), example::long_texts(42)})
        for (const CardChoice& choice : {CardChoice{}, cut_to_pocket(least_cut.width, least_cut.height)}) {
            const Paper cut = choice.cut.value_or(usual_cut);
            for (const Page& page : back_of(survey, choice).pages)
                for (const TextMark& text : texts_of(page)) {
                    if (text.style.points < 7) continue;  // the size to cut to stands outside
                    INFO(text.text);
                    const InkOnPage ink = ink_on_page(text);
                    CHECK(ink.left >= (page.paper.width - cut.width) / 2 + 5);
                    CHECK(ink.right <= (page.paper.width + cut.width) / 2 - 5);
                    CHECK(ink.bottom <= std::min(15.0, (page.paper.height - cut.height) / 2) + cut.height - 3);
                }
        }
}

TEST_CASE("card back: outlets of one kind and one handle are one line") {
    example::Building h = wired();
    for (const char* side : {"left", "right"}) {
        h.outlet(std::string("k") + side, "c1", "Kitchen", OutletKind::receptacle).label =
            std::string("Counter, ") + side;
        h.outlet(std::string("l") + side, "c2", "Kitchen", OutletKind::lighting);
    }
    CHECK(table_of(back_of(h.survey())) == std::vector<std::string>{
                                               "Kitchen | counter | 1",
                                               "Kitchen | lights | 2",
                                           });
}

TEST_CASE("card back: handles of one shared neutral go off together, tied or not") {
    example::Building h = wired();
    h.circuits[0].neutral = "N1";
    h.circuits[2].neutral = "N1";
    h.outlet("k", "c1", "Kitchen", OutletKind::lighting);
    CHECK(has_line(h.survey(), "Kitchen | lights | 1 and 3"));
}

TEST_CASE("card back: an outlet that two circuits feed wants both handles off") {
    example::Building h = wired();
    h.outlet("k", "c1", "Kitchen", OutletKind::lighting).circuits = {"c1", "c4"};
    CHECK(has_line(h.survey(), "Kitchen | lights | 1 and 4"));
}

TEST_CASE("card back: only what was switched, loaded or seen may be thrown") {
    for (const char* how : {"switching", "test-load", "seen"}) {
        example::Building h = wired(how);
        h.outlet("k", "c1", "Kitchen", OutletKind::lighting);
        INFO(how);
        CHECK(has_line(h.survey(), "Kitchen | lights | 1"));
    }
    for (const char* how : {"told", "tracer", "old-directory", ""}) {
        example::Building h = wired(how);
        h.outlet("k", "c1", "Kitchen", OutletKind::lighting);
        INFO(how);
        const Sheet sheet = back_of(h.survey());
        const TextMark& said = mark_of(sheet, "said to be 1");
        CHECK(said.style.italic);
        CHECK_FALSE(said.style.bold);
        CHECK(mark_of(sheet, "?").style.bold);
        CHECK(says(sheet, "only said, not traced: treat as live."));
    }
}

TEST_CASE("card back: one claimed feed among proved ones makes the line a claim") {
    example::Building h = wired();
    h.circuits[3].traced = Traced{"told", {}, {}};
    h.outlet("k", "c1", "Kitchen", OutletKind::lighting).circuits = {"c1", "c4"};
    CHECK(has_line(h.survey(), "Kitchen | lights | said to be 1 and 4"));
}

TEST_CASE("card back: what nobody traced is hatched, bold, and has no number") {
    example::Building h = wired();
    h.outlet("k", "", "Kitchen", OutletKind::lighting).circuits.clear();
    const Sheet sheet = back_of(h.survey());
    CHECK(mark_of(sheet, "not traced: treat as live").style.bold);
    CHECK(has_line(h.survey(), "Kitchen | lights | not traced: treat as live"));
}

TEST_CASE("card back: a kind that is partly traced does not read as the whole of it") {
    example::Building h = wired();
    h.outlet("a", "c1", "Hall", OutletKind::receptacle);
    h.outlet("b", "", "Hall", OutletKind::receptacle).circuits.clear();
    CHECK(has_line(h.survey(), "Hall | receptacles, some of them | 1"));
    CHECK(has_line(h.survey(), "Hall | receptacles, some of them | not traced: treat as live"));
    h.outlets[1].circuits = {"c2"};  // both traced, and nobody says which is which: both handles
    CHECK(has_line(h.survey(), "Hall | receptacles | 1 and 2"));
}

TEST_CASE("card back: what stays off is a framed warning, never a number to throw") {
    example::Building h = wired();
    h.breakers[1].state = BreakerState::off;
    h.breakers[1].off_why = "cable damaged";
    h.outlet("y", "c2", "Yard", OutletKind::lighting);
    h.outlet("z", "c1", "Yard", OutletKind::receptacle).circuits = {"c1", "c2"};
    const Sheet sheet = back_of(h.survey());
    CHECK(says(sheet, "Do not switch on 2"));
    CHECK(says(sheet, "2: cable damaged."));
    CHECK(has_line(h.survey(), "Yard | lights | kept off: see WARNING"));
    CHECK(has_line(h.survey(), "Yard | receptacle | 1; see WARNING"));
    for (const Page& page : sheet.pages)
        for (const TextMark& text : texts_of(page)) CHECK_FALSE((text.text == "2" && text.style.points == 12));
}

TEST_CASE("card back: a fire alarm circuit is left on, in red") {
    example::Building h = wired();
    h.breakers[0].system = "fire-alarm";
    h.outlet("f", "c1", "Hall", OutletKind::equipment).label = "Alarm panel";
    const Sheet sheet = back_of(h.survey());
    const TextMark& answer = mark_of(sheet, "FIRE ALARM: leave on");
    CHECK(answer.ink.red > 2 * answer.ink.blue);
    CHECK(has_line(h.survey(), "Hall | alarm panel | FIRE ALARM: leave on"));
}

TEST_CASE("card back: rooms in file order, plain ones after, then what has no room, circuits and panels") {
    example::Building h = wired();
    for (const char* id : {"attic", "bath"}) {
        Room room;
        room.id = id;
        room.title = std::string(id) == "attic" ? "Attic" : "Bath";
        h.rooms.push_back(room);
    }
    h.outlet("1", "c1", "Porch", OutletKind::lighting);
    h.outlet("2", "c2", "bath", OutletKind::lighting);
    h.outlet("3", "c3", "attic", OutletKind::lighting);
    h.outlet("4", "c4", "", OutletKind::lighting).room.reset();
    h.circuits[4].purpose = "Gate motor";
    CHECK(table_of(back_of(h.survey())) == std::vector<std::string>{"Attic | lights | 3", "Bath | lights | 2",
                                                                    "Porch | lights | 1", "Room not noted | lights | 4",
                                                                    "Other circuits | Gate motor | 5"});
}

TEST_CASE("card back: other panels have a letter, and the key names it") {
    const Survey survey = [] {
        example::Building h = example::empty_house(8);
        h.breaker("MAIN", {1, 3}, 50);
        Panel shop;
        shop.id = "SHOP";
        shop.location = "garage";
        shop.fed_by = {"MAIN:1+3"};
        shop.spaces = 8;
        h.panels.push_back(shop);
        h.breaker("SHOP", {1}, 20);
        h.circuit("bench", "");
        h.breaker("SHOP", {2, 4}, 20);
        h.circuit("heat", "");
        h.breaker("MAIN", {2}, 20);
        h.circuit("door", "");
        h.outlet("1", "bench", "Garage", OutletKind::lighting).circuits = {"bench", "heat"};
        h.outlet("2", "door", "Garage", OutletKind::receptacle);
        h.outlet("3", "door", "Porch", OutletKind::receptacle);
        return h.survey();
    }();
    CardChoice only;
    only.panels = {"MAIN"};
    const Sheet main = back_of(survey, only);
    CHECK(says(main, "Numbers are handles in MAIN, cellar stair. S: handles in SHOP, garage."));
    CHECK(says(main, "S1 and S2+S4"));
    CHECK(says(main, "all of SHOP, garage"));
    only.panels = {"SHOP"};
    const Sheet shop = back_of(survey, only);  // its rooms whole, with what the other panel feeds there
    CHECK(table_of(shop) == std::vector<std::string>{"Garage | lights | 1 and 2+4", "Garage | receptacle | M2"});
    CHECK(says(shop, "M: handles in MAIN, cellar stair."));
    check_texts(main);
    check_texts(shop);
}

TEST_CASE("card back: letters part panels, and never read as figures") {
    const auto key_of = [](const std::vector<std::string>& ids) {
        example::Building h = example::empty_house(40);
        int space = 1;
        for (const std::string& id : ids) {
            h.breaker("MAIN", {space, space + 2}, 50);
            Panel panel;
            panel.id = id;
            panel.fed_by = {h.breakers.back().id};
            panel.spaces = 4;
            h.panels.push_back(panel);
            h.breaker(id, {2}, 20);
            h.circuit("of " + id, "Things of " + id);
            space += 4;
        }
        const Network network = network_of(h.survey());
        const RoomDirectory directory = rooms_of(network, 0);
        return HandleNames(network, directory, Words::in("en")).names({1, 3});
    };
    CHECK(key_of({"SHOP", "BARN"}) == "S2 and B2");
    CHECK(key_of({"SHOP", "SHED"}) == "SHO2 and SHE2");
    CHECK(key_of({"IRON", "OVEN"}) == "IR2 and OV2");
    CHECK(key_of({"P1", "P2"}) == "P1:2 and P2:2");
}

TEST_CASE("card back: of another dwelling it names the panel alone") {
    example::Building h = example::empty_house(8);
    h.breaker("MAIN", {1, 3}, 60);
    Panel flat;
    flat.id = "FLAT";
    flat.fed_by = {"MAIN:1+3"};
    flat.spaces = 8;
    h.panels.push_back(flat);
    h.breaker("FLAT", {1}, 20);
    h.circuit("f", "");
    h.outlet("1", "f", "Kitchen", OutletKind::lighting);
    Survey survey = h.survey();
    Dwelling unit;
    unit.panels = Ids{"FLAT"};
    survey.dwellings = Table(std::vector<Dwelling>{unit});
    CardChoice only;
    only.panels = {"MAIN"};
    CHECK(table_of(back_of(survey, only)) == std::vector<std::string>{"Whole panels | all of FLAT | 1+3"});
}

TEST_CASE("card back: the warning stands before the reset, and the proof of dead right above the tag") {
    const Sheet sheet = back_of(example::house());
    const std::string words = words_of(sheet);
    const auto at = [&](const std::string& text) {
        INFO(text);
        const auto found = words.find(text);
        REQUIRE(found != std::string::npos);
        return found;
    };
    CHECK(at("Heat, smell, smoke, buzz, flicker, shock, water") < at("If it trips"));
    CHECK(at("If it trips") < at("Off here is not proof of dead"));
    CHECK(at("Off here is not proof of dead") < at("Leave on"));
    CHECK(at("Main: top of this panel, cellar stair") > at("Everything off"));
    CHECK(says(sheet, "Solar: 22+24"));
    CHECK(says(sheet, "The line side of the main stays live."));
    CHECK(says(sheet, "A tripped handle may look on."));
    const double proof = mark_of(sheet, "Off here is not proof of dead. Test before you touch.").baseline;
    const double tag = mark_of(sheet, "Leave on").baseline;
    for (const TextMark& text : texts_of(sheet.pages[0]))
        CHECK_FALSE((text.baseline > proof + 0.1 && text.baseline < tag - 0.1 && text.style.points < 13));
}

TEST_CASE("card back: the tag is dated, says why, and what feeds it from above") {
    const Sheet sheet = back_of(example::house());
    CHECK(mark_of(sheet, "14").style.points == 20);
    CHECK(says(sheet, "sump pump"));
    CHECK(says(sheet, "As of 2026-05-14."));
    CHECK(says(sheet, "except in an emergency; ask first"));
    example::Building h = wired("told");
    h.outlet("o", "c1", "Bedroom", OutletKind::receptacle).keep_on = "oxygen";
    h.outlet("s", "", "Cellar", OutletKind::receptacle).keep_on = "sump pump";
    h.outlets.back().circuits.clear();
    const Sheet unsure = back_of(h.survey());
    CHECK(says(unsure, "handle not traced"));
    CHECK(says(unsure, "sump pump"));
    const auto lines = table_of(unsure);
    for (const std::string& line : lines) CHECK(line.find("oxygen") == std::string::npos);  // never in the directory
    check_texts(unsure);
}

TEST_CASE("card back: more cards before smaller type") {
    const Sheet sheet = back_of(furnished(84, 11, 10), cut_to_pocket(132, 206));
    CHECK(sheet.pages.size() >= 3);
    for (const Page& page : sheet.pages)
        for (const TextMark& text : texts_of(page))
            if (text.text.starts_with("receptacle, wall")) CHECK(text.style.points == 9.5);
    std::set<std::string> seen;
    for (const std::string& line : table_of(sheet)) CHECK(seen.insert(line).second);  // each on one card
    CHECK(says(sheet, "everything off: card 1."));
}

TEST_CASE("card back: RESET is pressed where ground guards are, once") {
    example::Building h = wired();
    Outlet& guarded = h.outlet("g", "c1", "Garage", OutletKind::receptacle);
    guarded.label = "North wall";
    guarded.guards = std::vector<Guard>{Guard::ground};
    CHECK(says(back_of(h.survey()), "Dead receptacle?"));
    CHECK(says(back_of(h.survey()), "Press RESET once: Garage: north wall."));
    CHECK_FALSE(says(back_of(wired().survey()), "Dead receptacle?"));
}

TEST_CASE("card back: a panel of fuses has no handle to reset") {
    example::Building h = wired();
    for (Breaker& breaker : h.breakers) breaker.device = "fuse";
    const Sheet sheet = back_of(h.survey());
    CHECK(says(sheet, "A fuse that has blown: call a licensed electrician."));
    CHECK_FALSE(says(sheet, "Push the handle"));
    CHECK_FALSE(says(sheet, "may look on"));
}

TEST_CASE("card back: front then back, page by page, an empty side where one is missing") {
    const Survey survey = example::full_panel(42);
    const Network network = network_of(survey);
    const Assessment assessment = assess(network, *built_in_book("NEC-2023"));
    const Words words = Words::in("en");
    const CardChoice choice;
    const Sheet fronts = card_sheet(network, assessment, choice, words);
    const Sheet backs = card_back_sheet(network, assessment, choice, words);
    const Sheet both = both_sides(fronts, backs, choice, words);
    CHECK(both.pages.size() == 2 * std::max(fronts.pages.size(), backs.pages.size()));
    for (std::size_t i = 0; i < both.pages.size(); ++i) {
        const auto& side = i % 2 == 0 ? fronts : backs;
        if (i / 2 < side.pages.size())
            CHECK(both.pages[i].title == side.pages[i / 2].title);
        else
            CHECK(texts_of(both.pages[i])[1].text == "This side is empty.");
    }
}

TEST_CASE("card back: the front leaves the tag to the back that follows") {
    const Network network = network_of(example::house());
    CardChoice choice;
    choice.back_follows = true;
    const Sheet front = card_sheet(network, assess(network, *built_in_book("NEC-2023")), choice, Words::in("en"));
    CHECK_FALSE(says(front, "sump pump)"));
}

TEST_CASE("card back: no ink but the text's, the accent and the safety colours") {
    const std::vector<Ink> known = {inks::text,  inks::caption, inks::accent, inks::paper,
                                    inks::black, inks::warning, inks::fire};
    const auto check = [&](const std::optional<Ink>& ink) {
        if (ink) CHECK(std::ranges::find(known, *ink) != known.end());
    };
    for (const Page& page : back_of(furnished(24, 7, 3)).pages)
        for (const Mark& mark : page.marks) {
            if (const auto* text = std::get_if<TextMark>(&mark)) check(text->ink);
            if (const auto* box = std::get_if<BoxMark>(&mark)) check(box->fill);
            if (const auto* line = std::get_if<LineMark>(&mark)) check(line->ink);
        }
}

TEST_CASE("card back: as text, at most 80 columns, and 'throw' only before what is proved") {
    for (const Survey& survey : {example::house(), furnished(24, 7, 3), example::long_texts(8)}) {
        const Network network = network_of(survey);
        for (const std::string& line : card_back_lines(network, 0, Words::in("en"))) {
            INFO(line);
            CHECK(line.size() <= 82);  // in bytes
            if (line.find("said to be") != std::string::npos) CHECK(line.find("throw") == std::string::npos);
        }
    }
}
