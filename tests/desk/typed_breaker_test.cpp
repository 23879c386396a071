// SPDX-License-Identifier: MIT
#include "desk/typed_breaker.hpp"

#include "assess/directory.hpp"
#include "desk/typing.hpp"

using namespace typing;

namespace {

/// A breaker as one line: id, amperes, guards, state, old label; then its circuits: text, how traced.
std::string line_of(const Survey& survey, const Breaker& breaker) {
    std::string line = breaker.id;
    if (breaker.amps) line += fmt::format(" {:g} A", breaker.amps->value);
    if (breaker.guards)
        for (const Guard guard : *breaker.guards)
            line += guard == Guard::ground ? " ground" : guard == Guard::arc ? " arc" : " equipment";
    if (breaker.state == BreakerState::spare) line += " spare";
    if (breaker.old_label) line += " label '" + *breaker.old_label + "'";
    for (const Circuit& circuit : survey.circuits)
        if (circuit.breakers == Ids{breaker.id})
            line += " circuit '" + circuit.purpose.value_or("") + "' " +
                    (circuit.traced ? circuit.traced->how.value_or("-") : "-");
    return line;
}

std::string lines_of(const Survey& survey) {
    std::string lines;
    for (const Breaker& breaker : survey.breakers) lines += (lines.empty() ? "" : "; ") + line_of(survey, breaker);
    return lines;
}

/// What typing on a row of an empty panel of 12 gives, and the row that follows; or the refusal.
std::string typed_on_empty(Position at, const std::string& typed) {
    const Written panel = panel_of(12);
    const auto entered = typed_breaker(panel.survey, "MAIN", at, typed);
    if (!entered) return "refused: " + refusal(entered);
    return lines_of(after(panel, entered->edit)) + " -> " + name_of(entered->next);
}

std::string printed(const Survey& survey, std::size_t row) {
    const Network network = network_of(survey);
    const auto directory = directory_of(network, 0);
    return (directory.rows[row].claimed ? "[?] " : "") + said(directory.rows[row].text);
}

const std::string one_circuit =
    "[[breaker]]\npanel = \"MAIN\"\nspaces = [5]\namps = 20\nguards = [\"arc\", \"equipment-ground\"]\n"
    "[[circuit]]\nid = \"k\"\nbreaker = \"MAIN:5\"\npurpose = \"Kitchen\"\ntraced = { how = \"switching\" }\n"
    "wire = { size = \"12\" }\n";

}  // namespace

TEST_CASE("typing on a free row enters a whole breaker and steps on down the side") {
    struct Row {
        Position at;
        const char *typed, *gives;
    };
    const Row rows[] = {
        {{1}, "20 Kitchen?", "MAIN:1 20 A label 'Kitchen?' circuit '' old-directory -> 3"},
        {{1}, "20 Kitchen", "MAIN:1 20 A label 'Kitchen' circuit '' old-directory -> 3"},
        {{1}, "30/2 Dryer", "MAIN:1+3 30 A label 'Dryer' circuit '' old-directory -> 5"},
        {{2}, "50/3", "MAIN:2+4+6 50 A -> 8"},
        {{9}, "30/2 Dryer", "MAIN:9+11 30 A label 'Dryer' circuit '' old-directory -> 2"},
        {{11}, "20", "MAIN:11 20 A -> 2"},
        {{12}, "20", "MAIN:12 20 A -> 12"},
        {{3},
         "15t Hall|Bath",
         "MAIN:3a 15 A label 'Hall' circuit '' old-directory; MAIN:3b 15 A label 'Bath' circuit '' old-directory -> 5"},
        {{3}, "15t", "MAIN:3a 15 A; MAIN:3b 15 A -> 5"},
        {{3},
         "15t gf Hall | 20 arc Bath",
         "MAIN:3a 15 A ground label 'Hall' circuit '' old-directory; "
         "MAIN:3b 20 A arc label 'Bath' circuit '' old-directory -> 5"},
        {{3}, "15t s|Bath", "MAIN:3a 15 A spare; MAIN:3b 15 A label 'Bath' circuit '' old-directory -> 5"},
        {{1}, "20 gf", "MAIN:1 20 A ground -> 3"},
        {{1}, "20 arc Bedroom", "MAIN:1 20 A arc label 'Bedroom' circuit '' old-directory -> 3"},
        {{1}, "20 gf arc", "MAIN:1 20 A ground arc -> 3"},
        {{1}, "20 GFCI AFCI", "MAIN:1 20 A ground arc -> 3"},
        {{1}, "20 dual dual", "MAIN:1 20 A ground arc -> 3"},
        {{1}, "s", "MAIN:1 spare -> 3"},
        {{1}, "20 s", "MAIN:1 20 A spare -> 3"},
        {{1}, "20 s gf", "MAIN:1 20 A ground spare -> 3"},
        {{1}, "20 S porch", "MAIN:1 20 A label 'S porch' circuit '' old-directory -> 3"},
        {{1}, "20 spare", "MAIN:1 20 A label 'spare' circuit '' old-directory -> 3"},
        {{1}, "Kitchen", "MAIN:1 label 'Kitchen' circuit '' old-directory -> 3"},
        {{1}, "?", "MAIN:1 -> 3"},
        {{1}, "20 ?", "MAIN:1 20 A -> 3"},
        {{1}, "  20A\t Kitchen  counter ", "MAIN:1 20 A label 'Kitchen counter' circuit '' old-directory -> 3"},
        {{1}, "20 A Kitchen", "MAIN:1 20 A label 'Kitchen' circuit '' old-directory -> 3"},
        {{1}, "30/2P Dryer", "MAIN:1+3 30 A label 'Dryer' circuit '' old-directory -> 5"},
        {{1}, "/2 Dryer", "MAIN:1+3 label 'Dryer' circuit '' old-directory -> 5"},
        {{1}, "/1", "MAIN:1 -> 3"},
        {{1}, "20 \"3 lamps\"", "MAIN:1 20 A label '3 lamps' circuit '' old-directory -> 3"},
        {{1}, "\"20\"", "MAIN:1 label '20' circuit '' old-directory -> 3"},
        {{1}, "3rd floor", "MAIN:1 label '3rd floor' circuit '' old-directory -> 3"},
        {{1}, "12/2 cable", "MAIN:1+3 12 A label 'cable' circuit '' old-directory -> 5"},
        {{1}, "12/4 cable", "MAIN:1 label '12/4 cable' circuit '' old-directory -> 3"},
        {{1}, "nan", "MAIN:1 label 'nan' circuit '' old-directory -> 3"},
        {{1}, "1e3 x", "MAIN:1 label '1e3 x' circuit '' old-directory -> 3"},
        {{1}, "20 Cocina baño?", "MAIN:1 20 A label 'Cocina baño?' circuit '' old-directory -> 3"},
        {{1}, "20 台所", "MAIN:1 20 A label '台所' circuit '' old-directory -> 3"},
        {{1},
         "20 Kit\x01"
         "chen",
         "MAIN:1 20 A label 'Kitchen' circuit '' old-directory -> 3"},
    };
    for (const Row& row : rows) {
        CAPTURE(row.typed);
        CHECK(typed_on_empty(row.at, row.typed) == row.gives);
    }
}

TEST_CASE("what cannot be entered is refused with what would be right") {
    struct Row {
        Position at;
        const char *typed, *gives;
    };
    const Row rows[] = {
        {{1}, "", "refused: nothing was typed; type a rating and what it feeds, as 20 Kitchen"},
        {{1}, "   ", "refused: nothing was typed; type a rating and what it feeds, as 20 Kitchen"},
        {{1},
         "x",
         "refused: an x says nothing of it; type - where nothing sits there; Escape leaves the row as it was"},
        {{11},
         "30/2",
         "refused: 2 poles do not fit from 11 down; begin further up, or say how many spaces the panel has"},
        {{99}, "30/2", "refused: panel MAIN has no space 99; choose one that it has"},
        {{0}, "-", "refused: panel MAIN has no space 0; choose one that it has"},
        {{1},
         "0 Kitchen",
         "refused: 0 A is no rating; write the rating first, as 20 Kitchen; a text that begins with a figure in "
         "quotes"},
        {{1},
         "70000",
         "refused: 70000 A is no rating; write the rating first, as 20 Kitchen; a text that begins with a figure in "
         "quotes"},
        {{1}, "\xff\xfe", "refused: that is no text; type it anew"},
    };
    for (const Row& row : rows) {
        CAPTURE(row.typed);
        CHECK(typed_on_empty(row.at, row.typed) == row.gives);
    }
    CHECK(refusal(typed_breaker(panel_of(12).survey, "SHOP", {1}, "20")) ==
          "there is no such panel; choose one that is there");
    CHECK(refusal(typed_breaker(panel_of(12).survey, "MAIN", {1}, std::string(500, 'k'))) ==
          "that is too long for one row; shorten it to a few words");
}

TEST_CASE("a two-pole breaker does not fit where something sits below") {
    const Written panel = panel_of(12, "[[breaker]]\npanel = \"MAIN\"\nspaces = [3]\n");
    CHECK(refusal(typed_breaker(panel.survey, "MAIN", {1}, "30/2 Dryer")) ==
          "breaker \"MAIN:3\" sits there; move that one first");
    CHECK(refusal(typed_breaker(panel.survey, "MAIN", {3}, "30/2 Dryer")) ==
          "a breaker of one pole sits in 3; take it out first, or change its poles from the menu");
    CHECK(refusal(typed_breaker(panel.survey, "MAIN", {3}, "15t")) ==
          "a breaker of one pole sits in 3; take it out first, or change its poles from the menu");
}

TEST_CASE("a minus says that somebody looked and nothing is there; emptying the row takes it back") {
    Written panel = panel_of(12);
    auto entered = typed_breaker(panel.survey, "MAIN", {5}, "-");
    REQUIRE(entered);
    CHECK(said(entered->edit.name) == "note MAIN 5 as empty");
    panel.survey = after(panel, entered->edit);
    CHECK(panel.survey.panels[0].empty_spaces == std::vector{5});
    CHECK(typed_text_of(panel.survey, "MAIN", {5}) == "-");
    entered = typed_breaker(panel.survey, "MAIN", {5}, "");
    REQUIRE(entered);
    CHECK(said(entered->edit.name) == "note MAIN 5 as not seen");
    CHECK_FALSE(entered->edit.apply(panel.survey)->panels[0].empty_spaces);
    entered = typed_breaker(panel.survey, "MAIN", {5}, "20");
    CHECK_FALSE(entered->edit.apply(panel.survey)->panels[0].empty_spaces->size());
}

TEST_CASE("where half of a tandem sits nothing is empty") {
    const Written panel = panel_of(12, "[[breaker]]\npanel = \"MAIN\"\nspaces = [5]\nhalf = \"a\"\n");
    CHECK(refusal(typed_breaker(panel.survey, "MAIN", {5, 'b'}, "-")) ==
          "breaker MAIN:5a sits in 5; take it out first");
    const auto entered = typed_breaker(panel.survey, "MAIN", {5, 'b'}, "15 Bath");
    REQUIRE(entered);
    CHECK(lines_of(after(panel, entered->edit)) == "MAIN:5a; MAIN:5b 15 A label 'Bath' circuit '' old-directory");
    CHECK(name_of(entered->next) == "7");
}

TEST_CASE("typing over a breaker changes what was said and keeps the rest") {
    const Written panel = panel_of(12, one_circuit);
    struct Row {
        const char *typed, *gives, *name;
    };
    const Row rows[] = {
        {"15", "MAIN:5 15 A arc equipment circuit 'Kitchen' switching", "rate MAIN 5 at 15 A"},
        {"20/1", "MAIN:5 20 A arc equipment circuit 'Kitchen' switching", "rate MAIN 5 at 20 A"},
        {"gf", "MAIN:5 20 A ground equipment circuit 'Kitchen' switching", "change MAIN 5"},
        {"15 Pantry", "MAIN:5 15 A arc equipment circuit 'Pantry' switching", "change MAIN 5"},
        {"Pantry", "MAIN:5 20 A arc equipment circuit 'Pantry' switching", "change MAIN 5"},
        {"15 arc Kitchen", "MAIN:5 15 A arc equipment circuit 'Kitchen' switching", "change MAIN 5"},
    };
    for (const Row& row : rows) {
        CAPTURE(row.typed);
        const auto entered = typed_breaker(panel.survey, "MAIN", {5}, row.typed);
        REQUIRE_MESSAGE(entered, refusal(entered));
        const Survey changed = after(panel, entered->edit);
        CHECK(lines_of(changed) == row.gives);
        CHECK(said(entered->edit.name) == row.name);
        CHECK(changed.circuits[0].wire->size == "12");
    }
}

TEST_CASE("what was traced carries no doubt and is no spare") {
    const Written panel = panel_of(12, one_circuit);
    CHECK(refusal(typed_breaker(panel.survey, "MAIN", {5}, "Pantry?")) ==
          "circuit k was traced, and carries no question mark; write what it feeds, or change on its slip how it was "
          "traced");
    CHECK(refusal(typed_breaker(panel.survey, "MAIN", {5}, "20 s")) ==
          "circuit k is on breaker MAIN:5: it is no spare; take the circuit off it first, if nothing hangs on it");
    CHECK(refusal(typed_breaker(panel.survey, "MAIN", {5}, "-")) == "breaker MAIN:5 sits in 5; take it out first");
    CHECK(refusal(typed_breaker(panel.survey, "MAIN", {5}, "?")) ==
          "a question mark alone says nothing of it; write what it may be: Kitchen?");
    CHECK(refusal(typed_breaker(panel.survey, "MAIN", {5}, "")) ==
          "breaker MAIN:5 sits in 5; take it out from the menu, or press Escape to leave it as it was");
}

TEST_CASE("nothing typed before it was traced ever prints as traced") {
    Written panel = panel_of(12);
    for (const char* typed : {"20 Kitchen?", "20 Kitchen"}) {
        CAPTURE(typed);
        auto entered = typed_breaker(panel.survey, "MAIN", {5}, typed);
        REQUIRE(entered);
        Survey survey = after(panel, entered->edit);
        CHECK(printed(survey, 4) == "[?] " + std::string(typed).substr(3));
        auto circuits = survey.circuits.rows();
        circuits[0].traced = Traced{"switching", {}, {}};
        survey.circuits = Table<Circuit>(circuits);
        CHECK(printed(survey, 4) == "Traced, not described");
        CHECK(typed_text_of(survey, "MAIN", {5}) == "20");
        entered = typed_breaker(survey, "MAIN", {5}, "20 Kitchen");
        REQUIRE(entered);
        CHECK(printed(*entered->edit.apply(survey), 4) == "Kitchen");
    }
}

TEST_CASE("words of a claimed circuit go to where those stand that are shown") {
    struct Row {
        const char *circuit, *typed, *gives;
    };
    const Row rows[] = {
        {"purpose = \"Hall\"", "Bath", "MAIN:5 label 'old' circuit 'Bath' -"},
        {"purpose = \"Hall\"", "Bath?", "MAIN:5 label 'Bath?' circuit '' old-directory"},
        {"traced = { how = \"told\" }", "Bath", "MAIN:5 label 'old' circuit 'Bath' told"},
        {"traced = { how = \"old-directory\" }", "Bath", "MAIN:5 label 'Bath' circuit '' old-directory"},
        {"traced = { how = \"old-directory\" }", "Bath?", "MAIN:5 label 'Bath?' circuit '' old-directory"},
        {"traced = { how = \"old-directory\" }", "s", "MAIN:5 spare label 'old'"},
        {"traced = { how = \"tracer\" }", "Bath", "MAIN:5 label 'old' circuit 'Bath' tracer"},
    };
    for (const Row& row : rows) {
        CAPTURE(row.circuit);
        CAPTURE(row.typed);
        const Written panel =
            panel_of(12,
                     "[[breaker]]\npanel = \"MAIN\"\nspaces = [5]\nold_label = \"old\"\n[[circuit]]\nid = \"c\"\n"
                     "breaker = \"MAIN:5\"\n" +
                         std::string(row.circuit) + "\n");
        const auto entered = typed_breaker(panel.survey, "MAIN", {5}, row.typed);
        REQUIRE_MESSAGE(entered, refusal(entered));
        CHECK(lines_of(after(panel, entered->edit)) == row.gives);
    }
}

TEST_CASE("a feeder, a main and a breaker of two circuits are rated on the row, not named") {
    const Written panel = panel_of(
        12,
        "[[panel]]\nid = \"SHOP\"\nfed_by = \"MAIN:2+4\"\n[[breaker]]\npanel = \"MAIN\"\nspaces = [2, 4]\namps = 60\n"
        "[[breaker]]\npanel = \"MAIN\"\nspaces = [1]\namps = 100\nserves_as_main = true\n"
        "[[breaker]]\npanel = \"MAIN\"\nspaces = [5]\namps = 20\n[[circuit]]\nid = \"a\"\nbreaker = \"MAIN:5\"\n"
        "purpose = \"A\"\n[[circuit]]\nid = \"b\"\nbreaker = \"MAIN:5\"\npurpose = \"B\"\n");
    CHECK(refusal(typed_breaker(panel.survey, "MAIN", {4}, "Shop")) ==
          "breaker MAIN:2+4 feeds panel SHOP; leave the text out: the row says so by itself");
    CHECK(refusal(typed_breaker(panel.survey, "MAIN", {1}, "Main")) ==
          "breaker MAIN:1 serves as the main; leave the text out: the row says so by itself");
    CHECK(refusal(typed_breaker(panel.survey, "MAIN", {5}, "Hall")) ==
          "2 circuits are on breaker MAIN:5; name each on its slip");
    CHECK(typed_text_of(panel.survey, "MAIN", {2}) == "60/2");
    CHECK(typed_text_of(panel.survey, "MAIN", {5}) == "20");
    for (const Position at : {Position{2}, Position{1}, Position{5}}) {
        const auto entered = typed_breaker(panel.survey, "MAIN", at, "50");
        REQUIRE_MESSAGE(entered, refusal(entered));
        CHECK(breaker_at(after(panel, entered->edit), "MAIN", at)->amps == Amperes(50));
    }
}

TEST_CASE("a spare is rated as a spare, and words put it in use") {
    const Written panel = panel_of(12, "[[breaker]]\npanel = \"MAIN\"\nspaces = [5]\namps = 20\nstate = \"spare\"\n");
    CHECK(typed_text_of(panel.survey, "MAIN", {5}) == "20 s");
    const auto rated = typed_breaker(panel.survey, "MAIN", {5}, "15 s");
    CHECK(lines_of(after(panel, rated->edit)) == "MAIN:5 15 A spare");
    const auto used = typed_breaker(panel.survey, "MAIN", {5}, "Freezer?");
    CHECK(lines_of(after(panel, used->edit)) == "MAIN:5 20 A label 'Freezer?' circuit '' old-directory");
}

TEST_CASE("what one would type to get what is there gives it back, whatever its words") {
    const char* texts[] = {"Kitchen", "20",       "15t Hall", "gf pump",    "s",     "-",         "x",    "3 lamps",
                           "\"12\"",  "\"quoted", "/2",       "A building", "20 20", "Hall|Bath", "dual", "?"};
    for (const std::string text : texts)
        for (const bool rated : {true, false})
            for (const char* guards : {"", "guards = [\"ground\"]\n", "guards = [\"arc\", \"ground\"]\n"}) {
                CAPTURE(text);
                CAPTURE(guards);
                Written panel = panel_of(12, std::string("[[breaker]]\npanel = \"MAIN\"\nspaces = [5, 7]\n") +
                                                 (rated ? "amps = 20\n" : "") + guards +
                                                 "[[circuit]]\nid = \"c\"\nbreaker = \"MAIN:5+7\"\ntraced = { how = "
                                                 "\"seen\" }\npurpose = '" +
                                                 text + "'\n");
                const std::string typed = typed_text_of(panel.survey, "MAIN", {7});
                CAPTURE(typed);
                const auto entered = typed_breaker(panel.survey, "MAIN", {7}, typed);
                if (text == "?") continue;  // doubt alone is no text to type
                REQUIRE_MESSAGE(entered, refusal(entered));
                CHECK(*entered->edit.apply(panel.survey) == panel.survey);
            }
}

TEST_CASE("typing goes down the side as the panel hangs") {
    struct Row {
        const char* panel;
        std::vector<int> order;
    };
    const Row rows[] = {{"", {1, 3, 5, 2, 4, 6}},
                        {"numbering = \"odd-right\"", {2, 4, 6, 1, 3, 5}},
                        {"numbering = \"down-left\"", {1, 2, 3, 4, 5, 6}},
                        {"numbering = \"single-column\"", {1, 2, 3, 4, 5, 6}},
                        {"turned_over = true", {5, 3, 1, 6, 4, 2}}};
    for (const Row& row : rows) {
        CAPTURE(row.panel);
        Written panel = panel_of(6, row.panel);
        Position at{row.order[0]};
        std::vector<int> order;
        for (std::size_t i = 0; i < row.order.size(); ++i) {
            order.push_back(at.space);
            const auto entered = typed_breaker(panel.survey, "MAIN", at, "20");
            REQUIRE(entered);
            panel.survey = *entered->edit.apply(panel.survey);
            at = entered->next;
        }
        CHECK(order == row.order);
        CHECK(panel.survey.breakers.size() == 6);
    }
}

TEST_CASE("two poles go down the side as the panel hangs") {
    const Written over = panel_of(6, "turned_over = true");
    auto entered = typed_breaker(over.survey, "MAIN", {5}, "30/2");
    REQUIRE(entered);
    CHECK(lines_of(after(over, entered->edit)) == "MAIN:3+5 30 A");
    CHECK(name_of(entered->next) == "1");
    const Written column = panel_of(6, "numbering = \"single-column\"");
    entered = typed_breaker(column.survey, "MAIN", {5}, "30/2");
    REQUIRE(entered);
    CHECK(lines_of(after(column, entered->edit)) == "MAIN:5+6 30 A");
    CHECK(refusal(typed_breaker(column.survey, "MAIN", {6}, "30/2")) ==
          "2 poles do not fit from 6 down; begin further up, or say how many spaces the panel has");
}
