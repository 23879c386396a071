// SPDX-License-Identifier: MIT
#include "desk/typed_outlets.hpp"

#include "desk/typing.hpp"

using namespace typing;

namespace {

/// An outlet as one line: id, kind, room, label, guards, circuits, what was said of its breaker.
std::string line_of(const Survey& survey, const Outlet& outlet) {
    const char* kinds[] = {"receptacle", "light", "equipment", "switch", "box"};
    std::string line = outlet.id;
    if (outlet.kind) line += std::string(" ") + kinds[static_cast<int>(*outlet.kind)];
    if (outlet.room) {
        const Room* room = survey.rooms.find(*outlet.room);
        line += room ? " in " + room->title.value_or(room->id) : " in text " + *outlet.room;
    }
    if (outlet.label) line += " '" + *outlet.label + "'";
    if (outlet.guards)
        for (const Guard guard : *outlet.guards) line += guard == Guard::ground ? " ground" : " arc";
    for (const std::string& circuit : outlet.circuits) line += " on " + circuit;
    for (const std::string& breaker : outlet.old_breakers.value_or(Ids{})) line += " said " + breaker;
    return line;
}

std::string outlets_of(const Survey& survey) {
    std::string lines;
    for (const Outlet& outlet : survey.outlets) lines += (lines.empty() ? "" : "; ") + line_of(survey, outlet);
    return lines;
}

const std::string panel = R"(
[[breaker]]
panel = "MAIN"
spaces = [5]
[[breaker]]
panel = "MAIN"
spaces = [2, 4]
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
[[circuit]]
id = "proved"
breaker = "MAIN:9"
traced = { how = "switching" }
)";

/// The same with a kitchen of three outlets and a round.
const std::string kitchen = panel + R"(
[[room]]
id = "kitchen"
title = "Kitchen"
[[outlet]]
id = "K1"
room = "kitchen"
kind = "receptacle"
[[outlet]]
id = "K2"
room = "kitchen"
kind = "receptacle"
circuit = "proved"
[[outlet]]
id = "K4"
room = "kitchen"
kind = "lighting"
[[round]]
off = ["MAIN:5"]
went_out = ["K1"]
)";

std::string typed_on(const std::string& text, const std::string& typed) {
    const Written survey = panel_of(12, text);
    const auto edit = typed_outlets(survey.survey, "MAIN", typed);
    if (!edit) return "refused: " + refusal(edit);
    return said(edit->name) + " | " + outlets_of(after(survey, *edit));
}

std::string list_of(const char* name, const std::optional<Ids>& ids) {
    return ids ? fmt::format(" {} {}", name, fmt::join(*ids, " ")) : "";
}

/// The last round after a line.
std::string round_after(const std::string& text, const std::string& typed) {
    const Written survey = panel_of(12, text);
    const auto edit = typed_outlets(survey.survey, "MAIN", typed);
    if (!edit) return "refused: " + refusal(edit);
    const Survey changed = after(survey, *edit);
    const Round& round = changed.rounds[changed.rounds.size() - 1];
    return fmt::format("{} | round {} off {}{}{}{}", said(edit->name), changed.rounds.size(), fmt::join(round.off, " "),
                       list_of("out", round.went_out), list_of("stayed", round.stayed_on), list_of("odd", round.odd));
}

struct Row {
    const char *typed, *gives;
};

}  // namespace

TEST_CASE("a room and what is in it: numbered like the dots of tape") {
    const Row rows[] = {
        {"Kitchen r2 l1 range",
         "add K1 to K4 in Kitchen | K1 receptacle in Kitchen; K2 receptacle in Kitchen; K3 light in Kitchen; "
         "K4 equipment in Kitchen 'range'"},
        {"Kitchen", "add room Kitchen | "},
        {"Living room r1", "add L1 in Living room | L1 receptacle in Living room"},
        {"Bath s b l", "add B1 to B3 in Bath | B1 switch in Bath; B2 box in Bath; B3 light in Bath"},
        {"Bath: water heater, fan",
         "add B1 to B2 in Bath | B1 equipment in Bath 'water heater'; B2 equipment in Bath 'fan'"},
        {"Bath r1, fan heater r1",
         "add B1 to B3 in Bath | B1 receptacle in Bath; B2 equipment in Bath 'fan heater'; B3 receptacle in Bath"},
        {"Bath:r1", "add B1 in Bath | B1 receptacle in Bath"},
        {"\"Room r2\" r1", "add R1 in Room r2 | R1 receptacle in Room r2"},
        {"Room B2 r1", "add R1 in Room B2 | R1 receptacle in Room B2"},
        {"KITCHEN R1 L", "add K1 to K2 in KITCHEN | K1 receptacle in KITCHEN; K2 light in KITCHEN"},
        {"Kitchen r1 gf l1", "add K1 to K2 in Kitchen | K1 receptacle in Kitchen ground; K2 light in Kitchen"},
        {"Kitchen r1 dual", "add K1 in Kitchen | K1 receptacle in Kitchen ground arc"},
        {"Baño r1", "add B1 in Baño | B1 receptacle in Baño"},
        {"Österreich r1", "add O1 in Österreich | O1 receptacle in Österreich"},
        {"台所 r1", "add R1 in 台所 | R1 receptacle in 台所"},
        {"Kitchen r0", "refused: 1 to 99 outlets of a kind go in at once; write as many as there are, as r6"},
        {"Kitchen r100", "refused: 1 to 99 outlets of a kind go in at once; write as many as there are, as r6"},
        {"Kitchen: gf", "refused: \"gf\" stands before any outlet; write it behind those that have it: r2 gf"},
        {"r6", "refused: no room is named; begin with the room: Kitchen r6 l2"},
        {"", "refused: nothing was typed; type a room and what is in it: Kitchen r6 l2 range"},
        {" \n \t\n", "refused: nothing was typed; type a room and what is in it: Kitchen r6 l2 range"},
        {"\xff", "refused: that is no text; type it anew"},
        {":", "refused: no room is named; begin with the room: Kitchen r6 l2"},
    };
    for (const Row& row : rows) {
        CAPTURE(row.typed);
        CHECK(typed_on(panel, row.typed) == row.gives);
    }
}

TEST_CASE("a room that is there goes on numbering, whatever its case and accents") {
    const std::string there = outlets_of(panel_of(12, kitchen).survey) + "; ";
    const Row rows[] = {
        {"kitchen r1", "K5 receptacle in Kitchen"},           {"KITCHEN R1", "K5 receptacle in Kitchen"},
        {"Kitchen range", "K5 equipment in Kitchen 'range'"}, {"Kitchen: range", "K5 equipment in Kitchen 'range'"},
        {"Knee wall r1", "KN1 receptacle in Knee wall"},
    };
    for (const Row& row : rows) {
        CAPTURE(row.typed);
        const std::string all = typed_on(kitchen, row.typed);
        CHECK(all.substr(all.find(" | ") + 3) == there + row.gives);
    }
    CHECK(typed_on("[[outlet]]\nid = \"x\"\nroom = \"Cocina\"\n", "cocína r1") ==
          "add C1 in Cocina | x in text Cocina; C1 receptacle in text Cocina");
}

TEST_CASE("outlets said to be on a breaker are only claimed") {
    const Row rows[] = {
        {"Kitchen r1@5", "K1 receptacle in Kitchen on main-5 said MAIN:5"},
        {"Kitchen r1 on 5", "K1 receptacle in Kitchen on main-5 said MAIN:5"},
        {"Kitchen r1 en 5", "K1 receptacle in Kitchen on main-5 said MAIN:5"},
        {"Kitchen r1 @ 5", "K1 receptacle in Kitchen on main-5 said MAIN:5"},
        {"Kitchen r1 @5", "K1 receptacle in Kitchen on main-5 said MAIN:5"},
        {"Kitchen r1@MAIN:5", "K1 receptacle in Kitchen on main-5 said MAIN:5"},
        {"Kitchen r1 on MAIN:5", "K1 receptacle in Kitchen on main-5 said MAIN:5"},
        {"Kitchen r1 on 2/4", "K1 receptacle in Kitchen on main-2-4 said MAIN:2+4"},
        {"Kitchen r1@7b", "K1 receptacle in Kitchen on main-7b said MAIN:7b"},
        {"Kitchen r1 l1 on 5",
         "K1 receptacle in Kitchen on main-5 said MAIN:5; K2 light in Kitchen on main-5 said MAIN:5"},
        {"Kitchen r1 on 5 l1 on 4",
         "K1 receptacle in Kitchen on main-5 said MAIN:5; K2 light in Kitchen on main-2-4 said MAIN:2+4"},
        {"Kitchen r1@5 l1", "K1 receptacle in Kitchen on main-5 said MAIN:5; K2 light in Kitchen"},
        {"Kitchen r1@9", "K1 receptacle in Kitchen said MAIN:9"},
    };
    for (const Row& row : rows) {
        CAPTURE(row.typed);
        const std::string all = typed_on(panel, row.typed);
        CHECK(all.substr(std::min(all.size(), all.find(" | ") + 3)) == row.gives);
    }
    const Row refusals[] = {
        {"Kitchen r1@11", "no breaker is known in 11 of MAIN; type it on the face first"},
        {"Kitchen r1@7", "a tandem sits in 7; say which half: 7a or 7b"},
        {"Kitchen r1@five", "\"five\" is no space; write a space of the panel, as 5 or 13a"},
        {"Kitchen r1@SHOP:5", "there is no panel \"SHOP\"; name one that is there"},
        {"Kitchen r1 on", "nothing stands behind \"on\"; write the breaker's space"},
        {"Kitchen: on 5", "no outlet stands before the breaker; write it behind its outlets: r2 on 5"},
    };
    for (const Row& row : refusals) {
        CAPTURE(row.typed);
        CHECK(typed_on(panel, row.typed) == "refused: " + std::string(row.gives));
    }
}

TEST_CASE("a claim is told, never traced; a feeder takes no outlets") {
    const Written survey = panel_of(12, panel);
    const Survey claimed = after(survey, *typed_outlets(survey.survey, "MAIN", "Kitchen r1@5"));
    const Circuit* circuit = claimed.circuits.find("main-5");
    REQUIRE(circuit);
    CHECK(circuit->traced == Traced{"told", {}, {}});
    CHECK_FALSE(circuit->purpose);
    const Written fed =
        panel_of(12, "[[breaker]]\npanel = \"MAIN\"\nspaces = [5]\n[[panel]]\nid = \"SHOP\"\nfed_by = \"MAIN:5\"\n");
    CHECK(refusal(typed_outlets(fed.survey, "MAIN", "Shop r1@5")) ==
          "breaker MAIN:5 feeds panel SHOP; name the breaker of the circuit itself");
}

TEST_CASE("an outlet that is there is described by its dot") {
    const Row rows[] = {
        {"K1: behind the sofa", "K1 receptacle in Kitchen 'behind the sofa'"},
        {"k1: behind the sofa", "K1 receptacle in Kitchen 'behind the sofa'"},
        {"K1 gf", "K1 receptacle in Kitchen ground"},
        {"K1: gf left of sink", "K1 receptacle in Kitchen 'left of sink' ground"},
        {"K1@5", "K1 receptacle in Kitchen on main-5 said MAIN:5"},
        {"K1 on 5", "K1 receptacle in Kitchen on main-5 said MAIN:5"},
        {"K1: on 5", "K1 receptacle in Kitchen on main-5 said MAIN:5"},
        {"K1: on the wall", "K1 receptacle in Kitchen 'on the wall'"},
        {"K1 sofa", "refused: \"sofa\" is no word for an outlet; write its label behind a colon: K3: behind sofa"},
        {"K1-K2 @5",
         "refused: outlet K2 is traced already; what was proved is not changed by what is said: see its row in the "
         "list"},
    };
    for (const Row& row : rows) {
        CAPTURE(row.typed);
        const std::string all = typed_on(kitchen, row.typed);
        const std::string from = all.substr(all.find(" | ") == std::string::npos ? 0 : all.find(" | ") + 3);
        CHECK(from.substr(0, from.starts_with("refused") ? std::string::npos : from.find(';')) == row.gives);
    }
    CHECK(typed_on(kitchen, "K1-4 arc") ==
          "describe K1-4 | K1 receptacle in Kitchen arc; K2 receptacle in Kitchen arc on proved; K4 light in Kitchen "
          "arc");
}

TEST_CASE("off begins a round, and a row of answers goes into it") {
    const Row rows[] = {
        {"off 5 7a", "begin a round: 5 and 7a off | round 2 off MAIN:5 MAIN:7a"},
        {"Off 5, 4, 2", "begin a round: 5 and 2+4 off | round 2 off MAIN:5 MAIN:2+4"},
        {"apagado 5", "begin a round: 5 off | round 2 off MAIN:5"},
        {"off", "refused: no handle is named; write all that are off now: off 5 7"},
        {"off 7", "refused: a tandem sits in 7; say which half: 7a or 7b"},
        {"off 11", "refused: no breaker is known in 11 of MAIN; type it on the face first"},
        {"off 5 lamp", "refused: \"lamp\" is no space; write a space of the panel, as 5 or 13a"},
        {"K: s o d", "answers of K | round 1 off MAIN:5 out K2 stayed K1 odd K4"},
        {"k: SO.", "answers of k | round 1 off MAIN:5 out K2 stayed K1"},
        {"Kitchen: . s", "answers of Kitchen | round 1 off MAIN:5 stayed K2"},
        {"K: .", "answers of K | round 1 off MAIN:5"},
        {"K2: o, d", "answers of K2 | round 1 off MAIN:5 out K1 K2 odd K4"},
        {"K: o o o o",
         "refused: 4 answers for 3 outlets from K1 on; write one for each outlet that is there, a period where it was "
         "not seen"},
        {"off 9\nK: s s o", "enter 2 lines | round 2 off MAIN:9 out K4 stayed K1 K2"},
    };
    for (const Row& row : rows) {
        CAPTURE(row.typed);
        CHECK(round_after(kitchen, row.typed) == row.gives);
    }
    CHECK(round_after("[[outlet]]\nid = \"K1\"\n", "K: o") ==
          "refused: no round was begun; write first which handles are off: off 5 7");
}

TEST_CASE("several lines are one edit, or none at all: every line that is wrong is named") {
    CHECK(typed_on(panel, "Kitchen r1\r\n\r\nBath l1\n") ==
          "enter 2 lines | K1 receptacle in Kitchen; B1 light in Bath");
    CHECK(typed_on(panel, "Kitchen r0\nBath l1\noff 11") ==
          "refused: line 1: 1 to 99 outlets of a kind go in at once; write as many as there are, as r6\n"
          "line 3: no breaker is known in 11 of MAIN; type it on the face first");
}

TEST_CASE("a room that has used up its dots is refused, not numbered twice") {
    std::string all;
    for (int i = 0; i < 12; ++i) all += "Kitchen r99\n";
    const Written survey = panel_of(12);
    const auto edit = typed_outlets(survey.survey, "MAIN", all);
    REQUIRE(edit);
    CHECK(after(survey, *edit).outlets[1187].id == "K1188");
    CHECK(typed_on("[[outlet]]\nid = \"K99999\"\nroom = \"Kitchen\"\n", "Kitchen r1").starts_with("refused"));
}
