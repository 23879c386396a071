// SPDX-License-Identifier: MIT
#include "assess/find.hpp"

#include <doctest/doctest.h>

#include "assess/find_words.hpp"
#include "file/read_survey.hpp"
#include "findings_of.hpp"
#include "lines_shown.hpp"

using namespace doorcard;

namespace {

/// Each match in one line: "MAIN:5 circuit:k Kitchen; proved by switching".
Lines found_in(const std::string& survey, const std::string& question) {
    const auto read = read_survey({"s", survey});
    REQUIRE(read);
    Lines lines;
    for (const Match& match : find_in(network_of(read->survey), question).matches) {
        std::string line = match.breaker ? read->survey.breakers[*match.breaker].id : "-";
        line += " " + match.of.text() + " " + said(match.text) + "; " + said(match.sure);
        for (const std::size_t other : match.also_fed_by) line += " + " + read->survey.breakers[other].id;
        lines.push_back(line);
    }
    return lines;
}

std::vector<Slip> slips_in(const std::string& survey, const std::string& question) {
    return find_in(network_of(read_survey({"s", survey})->survey), question).slips;
}

const std::string traced = "traced = { how = \"switching\" }\n";
const std::string rooms = "[[room]]\nid = \"bed\"\ntitle = \"Niños' bedroom\"\nfloor = \"upstairs\"\n";
const std::string home =
    house + branch("k", "5", 20, "purpose = \"Kitchen counter\"\n" + traced, "old_label = \"Freezer\"\n") +
    branch("f", "14", 15, traced, "note = \"hums\"\n") +
    outlet("F1", "f", "kind = \"receptacle\"\nroom = \"Cellar\"\nlabel = \"behind the door\"") +
    "[[load]]\nid = \"ice\"\noutlet = \"F1\"\ntitle = \"Freezer\"\n" + rooms +
    branch("b", "7", 15, "traced = { how = \"told\" }\n") + outlet("B1", "b", "kind = \"lighting\"\nroom = \"bed\"") +
    breaker("9", 20, "old_label = \"Café lights\"\n") +
    "[[outlet]]\nid = \"X\"\nlabel = \"attic fan\"\nold_breakers = [\"MAIN:9\"]\n[[outlet]]\nid = \"Y\"\nlabel = "
    "\"gate motor\"\n";

}  // namespace

TEST_CASE("find: a load names its circuit; an old label elsewhere comes after it, as a claim") {
    CHECK(found_in(home, "freezer") == Lines{"MAIN:14 circuit:f Freezer; proved by switching",
                                             "MAIN:5 breaker:MAIN:5 'Freezer' in the old directory; not proved: "
                                             "tracing found something else than the old directory says"});
}

TEST_CASE("find: a load beside others is named itself, with its circuit") {
    const std::string two = house + branch("c", "1", 20, "purpose = \"Cellar\"\n" + traced) + outlet("O", "c") +
                            "[[load]]\nid = \"ice\"\noutlet = \"O\"\ntitle = \"Freezer\"\n";
    CHECK(found_in(two, "freezer") == Lines{"MAIN:1 load:ice Freezer; proved by switching"});
    CHECK(said(find_in(network_of(read_survey({"s", two})->survey), "freezer").matches[0].on) == "Cellar");
}

TEST_CASE("find: all words must fit on one circuit, wherever they stand") {
    CHECK(found_in(home, "cellar freezer") == Lines{"MAIN:14 circuit:f Freezer; proved by switching"});
    CHECK(found_in(home, "the freezer in the cellar").size() == 1);
    CHECK(found_in(home, "kitchen cellar") == Lines{});
    CHECK(found_in(home, "hums") == Lines{"MAIN:14 circuit:f Freezer; proved by switching"});
}

TEST_CASE("find: case, accents, plurals and beginnings do not matter") {
    for (const char* question : {"NIÑOS", "ninos", "niño", "Nin"}) CHECK(found_in(home, question).size() == 1);
    CHECK(found_in(home, "cafe") ==
          Lines{"MAIN:9 breaker:MAIN:9 'Café lights' in the old directory; not proved: the old directory says so"});
    CHECK(found_in(home, "counters").size() == 1);
}

TEST_CASE("find: English and Spanish find each other") {
    CHECK(found_in(home, "congelador").front() == "MAIN:14 circuit:f Freezer; proved by switching");
    CHECK(found_in(home, "dormitorio arriba") ==
          Lines{"MAIN:7 circuit:b Niños' bedroom lighting; not proved: somebody said so"});
    CHECK(found_in(house + branch("c", "1", 20, "purpose = \"Cocina\"\n" + traced), "kitchen").size() == 1);
    CHECK(fit_of_words("light", "luces") > 0.9);
    CHECK(fit_of_words("horno", "range") > 0.9);  // the oven is most often that of a range, not a furnace
    CHECK(fit_of_words("oven", "range") > 0.9);
    CHECK(fit_of_words("enchufe", "receptacles") > 0.9);
}

TEST_CASE("find: a near miss is found where nothing fits, and said") {
    CHECK(found_in(home, "frezer").front() == "MAIN:14 circuit:f Freezer; proved by switching");
    CHECK(slips_in(home, "frezer") == std::vector<Slip>{{"frezer", "freezer"}});
    CHECK(slips_in(home, "freezer").empty());
    CHECK(found_in(home, "zebra") == Lines{});
    CHECK_FALSE(is_near_miss("fan", "van"));
    CHECK_FALSE(is_near_miss("14", "15"));
}

TEST_CASE("find: what hangs on no known breaker says so; the old directory's breaker is a claim") {
    CHECK(found_in(home, "gate motor") ==
          Lines{"- outlet:Y gate motor (outlet Y); its breaker is not known: treat as live"});
    CHECK(found_in(home, "attic fan") ==
          Lines{"MAIN:9 outlet:X attic fan (outlet X); not proved: the old directory says so"});
    CHECK(found_in(house + circuit("c", "[]", "purpose = \"Sauna\""), "sauna") ==
          Lines{"- circuit:c Sauna; its breaker is not known: treat as live"});
    CHECK(found_in(house + "[[load]]\nid = \"w\"\npanel = \"MAIN\"\ntitle = \"Welder\"\n", "welder") ==
          Lines{"- load:w Welder; its breaker is not known: treat as live"});
}

TEST_CASE("find: two breakers that feed it at once are both named") {
    CHECK(found_in(house + breaker("1", 20) + breaker("3", 20) +
                       circuit("c", "[\"MAIN:1\", \"MAIN:3\"]", "purpose = \"Den\"\n" + traced),
                   "den") == Lines{"MAIN:1 circuit:c Den; proved by switching + MAIN:3",
                                   "MAIN:3 circuit:c Den; proved by switching + MAIN:1"});
}

TEST_CASE("find: by handle; a panel alone is the panel, not all that is in it") {
    CHECK(found_in(home, "main 14") == Lines{"MAIN:14 circuit:f Freezer; proved by switching"});
    CHECK(found_in(home, "MAIN:5") == Lines{"MAIN:5 circuit:k Kitchen counter; proved by switching"});
    CHECK(found_in(home, "main") == Lines{"- panel:MAIN MAIN; a panel"});
    CHECK(found_in(
              house + breaker("2, 4", 60) + "[[panel]]\nid = \"SUB\"\ntitle = \"Shed panel\"\nfed_by = \"MAIN:2+4\"\n",
              "shed") == Lines{"MAIN:2+4 panel:SUB Shed panel; a panel; this feeds it"});
}

TEST_CASE("find: spares and breakers that nobody traced") {
    CHECK(found_in(house + breaker("1", 20, "state = \"spare\"\n"), "spare") ==
          Lines{"MAIN:1 breaker:MAIN:1 Spare; recorded as spare"});
    CHECK(found_in(house + breaker("1", 20, "note = \"red tape\"\n"), "tape") ==
          Lines{"MAIN:1 breaker:MAIN:1 a breaker that nobody described; not traced: treat as live"});
}

TEST_CASE("find: a question without words finds nothing") {
    CHECK(found_in(home, "") == Lines{});
    CHECK(found_in(home, "?!") == Lines{});
    CHECK(wanted_words("the light of the hall") == std::vector<std::string>{"light", "hall"});
    CHECK(wanted_words("the") == std::vector<std::string>{"the"});
}
