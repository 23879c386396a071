// SPDX-License-Identifier: MIT
#include "file/reading.hpp"

using namespace doorcard;

TEST_CASE("references: one that is missing names both ends") {
    CHECK(added("[[circuit]]\nid = \"kitchen-east\"\n[[outlet]]\nid = \"K2\"\ncircuit = \"kitchen-est\"\n") ==
          Lines{"s:24:11: circuit \"kitchen-est\" of outlet \"K2\" is not in the file; did you mean \"kitchen-east\"? "
                "Else add "
                "a [[circuit]] with that id"});
    CHECK(added("[[outlet]]\nid = \"K2\"\ncircuit = \"garage\"\n") ==
          Lines{"s:22:11: circuit \"garage\" of outlet \"K2\" is not in the file; add a [[circuit]] with that id"});
    CHECK(added("[[outlet]]\nid = \"K2\"\ncircuit = \"c\"\n").empty());
}

TEST_CASE("references: a list is looked at element by element") {
    CHECK(added("[[outlet]]\nid = \"K2\"\ncircuit = [\"c\", \"garage\"]\n") ==
          Lines{"s:22:17: circuit \"garage\" of outlet \"K2\" is not in the file; add a [[circuit]] with that id"});
    CHECK(survey_of(small_house + "[[circuit]]\nid = \"d\"\n[[outlet]]\nid = \"K2\"\ncircuit = [\"c\", \"d\"]\n")
              .outlets[1]
              .circuits == Ids{"c", "d"});
}

TEST_CASE("references: every key that names something") {
    const auto missing = [](const std::string& text) {
        CAPTURE(text);
        const Lines lines = added(text);
        REQUIRE(lines.size() == 1);
        CHECK(lines[0].find(" is not in the file; ") != std::string::npos);
    };
    missing("[dwelling]\npanels = [\"X\"]\n");
    missing("[[occupancy]]\npanel = \"X\"\n");
    missing("[[source]]\nid = \"gen\"\nthrough = \"MAIN:9\"\n");
    missing("[[panel]]\nid = \"SUB\"\nfed_by = \"MAIN:9\"\n");
    missing("[[panel]]\nid = \"SUB\"\nfed_by = [\"utility\", \"gen\"]\n");
    missing("[[breaker]]\npanel = \"X\"\nspaces = [7]\n");
    missing("[[breaker]]\npanel = \"MAIN\"\nspaces = [7]\ntied_with = [\"MAIN:9\"]\n");
    missing("[[circuit]]\nid = \"d\"\nbreaker = \"MAIN:9\"\n");
    missing("[[outlet]]\nid = \"K2\"\nupstream = \"K9\"\n");
    missing("[[outlet]]\nid = \"K2\"\nswitched_by = [\"K9\"]\n");
    missing("[[outlet]]\nid = \"K2\"\nold_breakers = [\"MAIN:9\"]\n");
    missing("[[load]]\nid = \"l\"\noutlet = \"K9\"\n");
    missing("[[load]]\nid = \"l\"\ncircuit = \"K1\"\n");
    missing("[[load]]\nid = \"l\"\npanel = \"SUB\"\n");
    missing("[[load]]\nid = \"l\"\nsupplements = \"hp\"\n");
    missing("[[load]]\nid = \"l\"\nnever_with = [\"ac\"]\n");
    missing("[[load]]\nid = \"l\"\nmanaged = \"g1\"\n");
    missing("[[reading]]\nof = \"breaker:MAIN:9\"\n");
    missing("[[reading]]\nof = \"circuit:c\"\nvolts_to = { \"breaker:MAIN:9\" = 0.4 }\n");
    missing("[[recording]]\nfile = \"f\"\ncolumns = { a = \"panel:SUB/A\" }\n");
    missing("[[recording]]\nfile = \"f\"\ncolumns = { a = { of = \"panel:SUB/A\", unit = \"kW\" } }\n");
    missing("[[waveform]]\nfile = \"f\"\nof = \"circuit:d\"\n");
    missing("[[demand]]\nof = \"panel:SUB\"\n");
    missing("[[limit]]\nof = \"outlet:K9\"\n");
    missing("[[round]]\noff = [\"MAIN:9\"]\n");
    for (const char* key : {"went_out", "stayed_on", "odd", "stuck"})
        missing("[[round]]\noff = []\n" + std::string(key) + " = [\"K9\"]\n");
    missing("[[round]]\noff = []\nwould_not_reset = [\"MAIN:9\"]\n");
    missing("[[trip]]\nof = \"breaker:MAIN:9\"\n");
    missing("[[trip]]\nof = \"survey:\"\nrunning = [\"kettle\"]\n");
    missing("[[trip]]\nof = \"survey:\"\nalso_tripped = [\"MAIN:9\"]\n");
    missing("[[hunt]]\ncircuit = \"d\"\n");
    missing("[[hunt]]\nbreaker = \"MAIN:9\"\n");
    missing("[[trial]]\ncircuit = \"d\"\nkind = \"watch\"\n");
    missing("[[trial]]\ncircuit = \"c\"\nkind = \"watch\"\nremoved = [\"outlet:K9\"]\n");
    missing("[[trial]]\ncircuit = \"c\"\nkind = \"ohms\"\nsection = [\"run:K9\"]\n");
    missing("[[accepted]]\nrule = \"voltage-drop\"\nof = \"circuit:d\"\n");
    missing("[[photo]]\nfile = \"f\"\nof = \"panel:SUB\"\n");
}

TEST_CASE("references: the same keys, where what they name is there") {
    CHECK(
        added(
            "[dwelling]\npanels = [\"MAIN\"]\n[[occupancy]]\npanel = \"MAIN\"\n[[source]]\nid = \"gen\"\nthrough = "
            "\"MAIN:5\"\n"
            "[[panel]]\nid = \"SUB\"\nfed_by = [\"MAIN:5\", \"gen\"]\n[[outlet]]\nid = \"K2\"\nupstream = "
            "\"K1\"\nswitched_by = "
            "[\"K1\"]\nold_breakers = [\"MAIN:5\"]\n[[outlet]]\nid = \"K3\"\nupstream = \"home-run\"\n[[managed]]\nid "
            "= "
            "\"g1\"\nsource = \"as marked\"\n[[load]]\nid = \"l\"\npanel = \"SUB\"\nsupplements = \"t\"\nnever_with = "
            "[\"t\"]\nmanaged = \"g1\"\n[[reading]]\nof = \"breaker:MAIN:5\"\nvolts_to = { \"panel:SUB/A\" = 0 }\n"
            "[[recording]]\nfile = \"f\"\ncolumns = { a = \"panel:SUB/A\", b = { of = \"source:gen\" } "
            "}\n[[round]]\noff = "
            "[\"MAIN:5\"]\nwent_out = [\"K1\", \"t\"]\n[[trip]]\nof = \"outlet:K1\"\nrunning = [\"t\"]\nalso_tripped = "
            "[\"MAIN:5\", \"K2\"]\n[[hunt]]\nbreaker = \"MAIN:5\"\n[[trial]]\ncircuit = \"MAIN:5\"\nkind = "
            "\"watch\"\nremoved = "
            "[\"home-run\", \"run:K1\", \"outlet:K1\", \"load:t\", \"breaker:MAIN:5\"]\n[[accepted]]\nof = "
            "\"ground:c\"\n")
            .empty());
}

TEST_CASE("references: addresses by kind, with and without legs") {
    const auto of = [](const std::string& address) { return added("[[reading]]\nof = \"" + address + "\"\n"); };
    for (const char* good : {"source:utility", "source:utility/A", "panel:MAIN/AB", "panel:MAIN/N", "breaker:MAIN:5/B",
                             "circuit:c/A", "outlet:K1", "load:t", "ground:c", "survey:"})
        CHECK(of(good).empty());
    CHECK(of("circuits:c") ==
          Lines{"s:21:6: \"of\" in [[reading]] is \"circuits:c\"; write of = address, such as \"circuit:ID\""});
    for (const char* bad : {"c", "outlet:K1/A", "panel:MAIN/", "panel:MAIN/D", "panel:MAIN/AN", "circuit:", "survey:x"})
        CHECK(of(bad).size() == 1);
    CHECK(survey_of(small_house + "[[reading]]\nof = \"breaker:MAIN:5/B\"\n").readings[0].of ==
          Address{ThingKind::breaker, "MAIN:5", "B"});
}

TEST_CASE("references: a neutral is there when a circuit names it; 'own' is nobody's") {
    const std::string shared = "[[circuit]]\nid = \"d\"\nneutral = \"N3\"\n";
    CHECK(added(shared + "[[reading]]\nof = \"neutral:N3\"\n").empty());
    CHECK(added(shared + "[[reading]]\nof = \"neutral:N4\"\n") ==
          Lines{"s:24:6: neutral \"N4\" of this reading is not in the file; did you mean \"N3\"? Else name it as "
                "\"neutral\" of a "
                "[[circuit]]"});
    CHECK(added("[[circuit]]\nid = \"d\"\nneutral = \"own\"\n[[reading]]\nof = \"neutral:own\"\n").size() == 1);
}

TEST_CASE("references: a trip is of something that trips, a place of a hunt is of its kinds") {
    CHECK(
        added("[[trip]]\nof = \"load:t\"\n") ==
        Lines{"s:21:6: \"of\" in [[trip]] is \"load:t\"; write of = address, such as \"breaker:ID\", or \"survey:\""});
    CHECK(added("[[trial]]\ncircuit = \"c\"\nkind = \"watch\"\nremoved = [\"K1\"]\n") ==
          Lines{"s:23:12: \"removed\" in [[trial]] is \"K1\"; write removed = list: place of a hunt, such as "
                "\"outlet:ID\", "
                "\"run:ID\" or \"home-run\""});
}
