// SPDX-License-Identifier: MIT
#include "desk/face_gestures.hpp"

#include "desk/typing.hpp"

using namespace typing;

namespace {

/// 1 and 3 single poles (1 feeds a circuit), 2+4 a two-pole, 5 a spare, 7a and 7b halves, 9 and 11 tied, 6 empty.
const std::string house = R"(empty_spaces = [6]
[[breaker]]
panel = "MAIN"
spaces = [1]
amps = 20
[[breaker]]
panel = "MAIN"
spaces = [3]
amps = 20
[[breaker]]
panel = "MAIN"
spaces = [2, 4]
amps = 30
legs = "AB"
[[breaker]]
panel = "MAIN"
spaces = [5]
amps = 22
state = "spare"
[[breaker]]
panel = "MAIN"
spaces = [7]
half = "a"
[[breaker]]
panel = "MAIN"
spaces = [7]
half = "b"
[[breaker]]
panel = "MAIN"
spaces = [9]
amps = 15
tied_with = ["MAIN:11"]
[[breaker]]
panel = "MAIN"
spaces = [11]
amps = 20
tied_with = ["MAIN:9"]
[[circuit]]
id = "hall"
breaker = "MAIN:1"
traced = { how = "switching" }
[[circuit]]
id = "hearsay"
breaker = "MAIN:11"
traced = { how = "old-directory" }
[[reading]]
of = "breaker:MAIN:1"
amps = 5
)";

using Gesture = std::function<Outcome<Edit>(const Survey&)>;

Gesture at(Outcome<Edit> (*gesture)(const Survey&, const std::string&, Position), Position position) {
    return [=](const Survey& survey) { return gesture(survey, "MAIN", position); };
}
Gesture move(Position from, Position to) {
    return [=](const Survey& survey) { return move_to(survey, "MAIN", from, to); };
}

std::string ids_of(const Survey& survey) {
    std::string ids;
    for (const Breaker& breaker : survey.breakers) {
        ids += (ids.empty() ? "" : " ") + breaker.id.substr(5);
        if (breaker.tied_with) ids += "=" + fmt::format("{}", fmt::join(*breaker.tied_with, ","));
        if (breaker.state == BreakerState::spare) ids += " spare";
        if (breaker.state == BreakerState::off) ids += " off " + breaker.off_why.value_or("");
    }
    return ids;
}

/// Name and breakers after a gesture, or the refusal.
std::string done(const Gesture& gesture, const std::string& text = house) {
    const Written before = panel_of(24, text);
    const auto edit = gesture(before.survey);
    if (!edit) return "refused: " + refusal(edit);
    return said(edit->name) + " | " + ids_of(after(before, *edit));
}

struct Row {
    Gesture gesture;
    const char* gives;
};

void check(const std::vector<Row>& rows) {
    for (const Row& row : rows) {
        CAPTURE(row.gives);
        CHECK(done(row.gesture) == row.gives);
    }
}

const char* const untouched = "1 3 2+4 5 spare 7a 7b 9=MAIN:11 11=MAIN:9";

}  // namespace

TEST_CASE("a breaker is moved to a free space, or changes places with one of as many poles") {
    check(
        {{move({1}, {13}), "move breaker MAIN:1 to 13 | 13 3 2+4 5 spare 7a 7b 9=MAIN:11 11=MAIN:9"},
         {move({1}, {6}), "move breaker MAIN:1 to 6 | 6 3 2+4 5 spare 7a 7b 9=MAIN:11 11=MAIN:9"},
         {move({1}, {3}), "swap breakers MAIN:1 and MAIN:3 | 3 1 2+4 5 spare 7a 7b 9=MAIN:11 11=MAIN:9"},
         {move({9}, {13}), "move breaker MAIN:9 to 13 | 1 3 2+4 5 spare 7a 7b 13=MAIN:11 11=MAIN:13"},
         {move({2}, {8}), "move breaker MAIN:2+4 to 8+10 | 1 3 8+10 5 spare 7a 7b 9=MAIN:11 11=MAIN:9"},
         {move({4}, {4}), "move breaker MAIN:2+4 to 4+6 | 1 3 4+6 5 spare 7a 7b 9=MAIN:11 11=MAIN:9"},
         {move({7, 'a'}, {7, 'b'}), "swap breakers MAIN:7a and MAIN:7b | 1 3 2+4 5 spare 7b 7a 9=MAIN:11 11=MAIN:9"},
         {move({7, 'a'}, {13}), "move breaker MAIN:7a to 13 | 1 3 2+4 5 spare 13a 7b 9=MAIN:11 11=MAIN:9"},
         {move({1}, {1}), "refused: it sits there already; choose another space"},
         {move({2}, {2}), "refused: it sits there already; choose another space"},
         {move({1}, {2}), "refused: a breaker of 2 poles sits in 2; take that one out first, or choose a free space"},
         {move({2}, {1}), "refused: a breaker of one pole sits in 1; take that one out first, or choose a free space"},
         {move({1}, {7, 'a'}),
          "refused: a breaker of one pole sits in 7a; take that one out first, or choose a free space"},
         {move({2}, {24}), "refused: 2 poles do not fit from 24 down; choose a space further up"},
         {move({13}, {15}), "refused: no breaker is known in 13; type its rating there first"},
         {move({1}, {99}), "refused: 1 poles do not fit from 99 down; choose a space further up"}});
}

TEST_CASE("a two-pole that would end on another breaker is refused at once") {
    CHECK(done(move({2}, {1}),
               "[[breaker]]\npanel = \"MAIN\"\nspaces = [2, 4]\n[[breaker]]\npanel = \"MAIN\"\n"
               "spaces = [3]\n") == "refused: breaker \"MAIN:3\" sits there; move that one first, or swap the two");
}

TEST_CASE("legs that were noted for the old spaces are forgotten in the new ones") {
    const Written before = panel_of(24, house);
    const Survey moved = after(before, *move_to(before.survey, "MAIN", {2}, {8}));
    CHECK_FALSE(moved.breakers.find("MAIN:8+10")->legs);
}

TEST_CASE("two single poles become one two-pole where nothing is lost") {
    check({{at(two_pole_here, {1}), "two poles for breaker MAIN:1 | 1+3 2+4 5 spare 7a 7b 9=MAIN:11 11=MAIN:9"},
           {at(two_pole_here, {13}), "two poles in MAIN 13+15 | 1 3 2+4 5 spare 7a 7b 9=MAIN:11 11=MAIN:9 13+15"},
           {at(two_pole_here, {8}), "two poles in MAIN 8+10 | 1 3 2+4 5 spare 7a 7b 9=MAIN:11 11=MAIN:9 8+10"},
           {at(two_pole_here, {2}), "refused: it has more than one pole already; one pole again: from the same menu"},
           {at(two_pole_here, {3}),
            "refused: more is known of the breaker in 5 than that it is there; move or take that one out first"},
           {at(two_pole_here, {9}),
            "refused: more is known of the breaker in 11 than that it is there; move or take that one out first"},
           {at(two_pole_here, {7, 'a'}), "refused: this is half of a tandem; take the tandem out first"},
           {at(two_pole_here, {5}), "refused: breaker \"MAIN:7a\" sits there; move that one first, or swap the two"},
           {at(two_pole_here, {24}), "refused: two poles do not fit from 24 down; begin one space further up"}});
    const std::string pair =
        "[[breaker]]\npanel = \"MAIN\"\nspaces = [1]\ntied_with = [\"MAIN:3\"]\n[[breaker]]\n"
        "panel = \"MAIN\"\nspaces = [3]\namps = 30\ntied_with = [\"MAIN:1\"]\n";
    const Written before = panel_of(12, pair);
    const Survey merged = after(before, *two_pole_here(before.survey, "MAIN", {1}));
    CHECK(ids_of(merged) == "1+3");
    CHECK(merged.breakers[0].amps == Amperes(30));
}

TEST_CASE("one pole again, in the space that is chosen") {
    check({{at(one_pole_here, {4}), "one pole for breaker MAIN:2+4 | 1 3 4 5 spare 7a 7b 9=MAIN:11 11=MAIN:9"},
           {at(one_pole_here, {1}), "refused: it has one pole already; two poles: from the same menu"},
           {at(one_pole_here, {13}), "refused: no breaker is known in 13; type its rating there first"}});
}

TEST_CASE("ties join neighbours of one side") {
    check(
        {{at(tied_with_below, {1}), "tie MAIN:1 and MAIN:3 | 1=MAIN:3 3=MAIN:1 2+4 5 spare 7a 7b 9=MAIN:11 11=MAIN:9"},
         {at(tied_with_below, {7, 'a'}),
          "tie MAIN:7a and MAIN:7b | 1 3 2+4 5 spare 7a=MAIN:7b 7b=MAIN:7a 9=MAIN:11 11=MAIN:9"},
         {at(tied_with_below, {7, 'b'}),
          "tie MAIN:7b and MAIN:9 | 1 3 2+4 5 spare 7a 7b=MAIN:9 9=MAIN:11,MAIN:7b 11=MAIN:9"},
         {at(tied_with_below, {4}), "refused: no breaker is known below it; type that one first"},
         {at(untied, {9}), "untie breaker MAIN:9 | 1 3 2+4 5 spare 7a 7b 9 11"},
         {at(untied, {1}), "refused: no tie is noted on it; choose one that is tied"}});
    CHECK(done(at(tied_with_below, {23}),
               "[[breaker]]\npanel = \"MAIN\"\nspaces = [23]\n[[breaker]]\npanel = \"MAIN\"\n"
               "spaces = [2]\n") ==
          "refused: the next one hangs on the other side; a tie joins neighbours of one side");
}

TEST_CASE("spare, in use, kept off") {
    check(
        {{at(spare_or_in_use, {3}), "make breaker MAIN:3 a spare | 1 3 spare 2+4 5 spare 7a 7b 9=MAIN:11 11=MAIN:9"},
         {at(spare_or_in_use, {5}), "put breaker MAIN:5 in use | 1 3 2+4 5 7a 7b 9=MAIN:11 11=MAIN:9"},
         {at(spare_or_in_use, {11}), "make breaker MAIN:11 a spare | 1 3 2+4 5 spare 7a 7b 9=MAIN:11 11=MAIN:9 spare"},
         {at(spare_or_in_use, {1}),
          "refused: circuit hall is on breaker MAIN:1: it is no spare; take the circuit off it first, if nothing "
          "hangs on it"},
         {at(kept_off_or_on, {1}), "note breaker MAIN:1 as off | 1 off  3 2+4 5 spare 7a 7b 9=MAIN:11 11=MAIN:9"},
         {[](const Survey& survey) { return kept_off(survey, "MAIN", {1}, " wet\nbox "); },
          "note breaker MAIN:1 as off | 1 off wet box 3 2+4 5 spare 7a 7b 9=MAIN:11 11=MAIN:9"}});
}

TEST_CASE("what goes along with a breaker is said before it is taken out") {
    const Written before = panel_of(24, house);
    std::string said_before;
    for (const Message& one : what_goes_along(before.survey, "MAIN", {1})) said_before += said(one) + "\n";
    CHECK(said_before == "circuit hall is left without a breaker\na reading or other entry of it goes along\n");
    const Survey without = after(before, *taken_out(before.survey, "MAIN", {1}));
    CHECK(without.readings.empty());
    CHECK(without.circuits[0].breakers.empty());
    CHECK(what_goes_along(before.survey, "MAIN", {3}).empty());
    CHECK(what_goes_along(before.survey, "MAIN", {13}).empty());
    CHECK(done(at(taken_out, {9})) == std::string("take out breaker MAIN:9 | 1 3 2+4 5 spare 7a 7b 11"));
}

TEST_CASE("the rating next above and below goes by the standard list") {
    const auto book = built_in_book("NEC-2023");
    REQUIRE(book);
    const Written before = panel_of(24, house);
    const auto rated = [&](Position position, bool up) {
        const auto edit = next_rating(before.survey, *book, "MAIN", position, up);
        return edit ? said(edit->name) : "refused: " + refusal(edit);
    };
    CHECK(rated({1}, true) == "rate MAIN:1 at 25 A");
    CHECK(rated({1}, false) == "rate MAIN:1 at 15 A");
    CHECK(rated({5}, true) == "rate MAIN:5 at 25 A");
    CHECK(rated({5}, false) == "rate MAIN:5 at 20 A");
    CHECK(rated({7, 'a'}, true) == "refused: the rating of MAIN:7a was not read; type it on its row");
    CHECK(ids_of(before.survey) == untouched);
}
