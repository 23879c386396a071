// SPDX-License-Identifier: MIT
// The forms that lists come in: separators, encodings, headers, sides.
#include <algorithm>

#include "listed.hpp"

using namespace doorcard;

TEST_CASE("lists: plain lines") {
    CHECK(breakers_of("12 Kitchen counter\n2,4 Range\n13a Hall\n") ==
          Lines{"MAIN:12 'Kitchen counter'", "MAIN:2+4 'Range'", "MAIN:13a 'Hall'"});
    CHECK(breakers_of("1. Kitchen, east\n3) Bath\n5: Hall\n7 - Freezer\n#9 Attic\n 2, 4 Range\n") ==
          Lines{"MAIN:1 'Kitchen, east'", "MAIN:3 'Bath'", "MAIN:5 'Hall'", "MAIN:7 'Freezer'", "MAIN:9 'Attic'",
                "MAIN:2+4 'Range'"});
}

TEST_CASE("lists: plain lines with spaces that are joined by words and marks between blanks") {
    CHECK(
        breakers_of("1 Hall\n8 & 10 A/C 30\n12 and 14 Dryer\n3 + 5 Well\n4 - 6 - Range\n16 y 18 Horno\n7 = Attic\n") ==
        Lines{"MAIN:1 'Hall'", "MAIN:8+10 'A/C 30'", "MAIN:12+14 'Dryer'", "MAIN:3+5 'Well'", "MAIN:4+6 'Range'",
              "MAIN:16+18 'Horno'", "MAIN:7 'Attic'"});
    CHECK(breakers_of("10 2nd floor\n12 - 2nd floor\n14 / 2nd floor\n2 - 20 amp kitchen\n1 - 2 bedrooms\n") ==
          Lines{"MAIN:10 '2nd floor'", "MAIN:12 '2nd floor'", "MAIN:14 '/ 2nd floor'", "MAIN:2 '20 amp kitchen'",
                "MAIN:1 '2 bedrooms'"});
}

TEST_CASE("lists: one space or two, where only the surveyor can say") {
    CHECK(refused_of("1 Hall\n3 - 5 Range\n7 Bath\n") ==
          Lines{"l:2:1: \"3 - 5 Range\" is no space; write 5, 13a or 2,4"});
}

TEST_CASE("lists: a title above plain lines is left out, a line without a space between them is told") {
    CHECK(breakers_of("Main panel, cellar\nMay 2019\n1 Hall\n") == Lines{"MAIN:1 'Hall'"});
    CHECK(refused_of("1 Hall\nBath\n2 Attic\n") ==
          Lines{"l:2:1: no space is named here; write the space, or take the line out"});
}

TEST_CASE("lists: comma, semicolon and tab") {
    for (const char separator : {',', ';', '\t'}) {
        std::string text = "1,Hall,15\n2,Bath,20\n";
        std::ranges::replace(text, ',', separator);
        CHECK(breakers_of(text) == Lines{"MAIN:1 15 A 'Hall'", "MAIN:2 20 A 'Bath'"});
    }
    CHECK(breakers_of("1;Hall, upstairs;15\n2;Bath, upstairs;20\n") ==
          Lines{"MAIN:1 15 A 'Hall, upstairs'", "MAIN:2 20 A 'Bath, upstairs'"});
    CHECK(breakers_of("sep=;\n1;Hall;15\n") == Lines{"MAIN:1 15 A 'Hall'"});
}

TEST_CASE("lists: quotes, doubled quotes, commas and line breaks inside them") {
    CHECK(breakers_of("1,\"Hall, upstairs\",15\n2,\"the \"\"good\"\" room\",20\n3,\"two\nlines\",20\n4,Attic,15\n") ==
          Lines{"MAIN:1 15 A 'Hall, upstairs'", "MAIN:2 20 A 'the \"good\" room'", "MAIN:3 20 A 'two lines'",
                "MAIN:4 15 A 'Attic'"});
    CHECK(refused_of("1,\"two\nlines\",20\nx,Attic,15\n") ==
          Lines{"l:3:1: \"x\" is no space; write 5, 13a or 2,4"});  // lines are those of the file
}

TEST_CASE("lists: a quote that never closes is itself") {
    CHECK(breakers_of("1,\"Hall,15\n2,Bath 3\" pipe,20\n") ==
          Lines{"MAIN:1 15 A '\"Hall'", "MAIN:2 20 A 'Bath 3\" pipe'"});
}

TEST_CASE("lists: byte order mark, CRLF, no final line break") {
    CHECK(breakers_of("\xEF\xBB\xBF"
                      "1,Hall,15\r\n2,Bath,20") == Lines{"MAIN:1 15 A 'Hall'", "MAIN:2 20 A 'Bath'"});
    CHECK(breakers_of("1,Hall,15\r2,Bath,20\r") == Lines{"MAIN:1 15 A 'Hall'", "MAIN:2 20 A 'Bath'"});
}

TEST_CASE("lists: Latin-1, with the punctuation of spreadsheets") {
    CHECK(breakers_of("1;Ba\xF1o ni\xF1os;15\n2;Kid\x92s room \x96 east;20\n") ==
          Lines{"MAIN:1 15 A 'Ba\u00F1o ni\u00F1os'", "MAIN:2 20 A 'Kid\u2019s room \u2013 east'"});
}

TEST_CASE("lists: what is no list is told in one line") {
    CHECK(refused_of("PK\x03\x04...") ==
          Lines{"l:1:1: this is a spreadsheet or document, not a list; save the list as CSV (UTF-8 or Latin-1) or as "
                "plain lines"});
    CHECK(refused_of(std::string("\xFF\xFE"
                                 "1\0",
                                 4))
              .size() == 1);
    CHECK(refused_of(std::string((8u << 20) + 1, '1')).size() == 1);
    CHECK(listed("").counts() == "0 read, 0 not");
    CHECK(listed("\n\n,,,\n").counts() == "0 read, 0 not");
}

TEST_CASE("lists: header words in any case and order, in English and Spanish") {
    CHECK(breakers_of("AMPS,Load Served,CKT\n20,Hall,1\n15,Bath,2\n") ==
          Lines{"MAIN:1 20 A 'Hall'", "MAIN:2 15 A 'Bath'"});
    CHECK(breakers_of("#,Label,Breaker,Poles,Notes\n2,Range,50,2,gas now\n") ==
          Lines{"MAIN:2+4 50 A 'Range' (gas now)"});
    CHECK(breakers_of("Circuito;Descripci\u00F3n;Amperios;Polos\n1;Ba\u00F1o;20;1\n") ==
          Lines{"MAIN:1 20 A 'Ba\u00F1o'"});
    CHECK(breakers_of("No.,Circuit,Trip\n1,Hall,20\n") == Lines{"MAIN:1 20 A 'Hall'"});
    CHECK(breakers_of("Breaker,Description,Size\n1,Hall,20\n") == Lines{"MAIN:1 20 A 'Hall'"});
}

TEST_CASE("lists: a header some lines down under a title, and again on a second page") {
    CHECK(breakers_of("Panel directory,,\nUpdated "
                      "2019,,\n,,\nCkt,Description,Amps\n1,Hall,20\n,,\nAmps,Ckt,Description\n15,3,Bath\n") ==
          Lines{"MAIN:1 20 A 'Hall'", "MAIN:3 15 A 'Bath'"});
}

TEST_CASE("lists: --columns names what a head means; a head that is not there is told") {
    ListOptions options;
    options.columns = *named_columns("Ort=space, Was dort haengt=description,A=ignored");
    CHECK(breakers_of("Ort,Was dort haengt,A\n1,Hall,20\n", options) == Lines{"MAIN:1 'Hall'"});
    CHECK(listed("Ort,Text\n1,Hall\n", options).read.unknown_columns ==
          std::vector<std::string>{"Was dort haengt", "A"});
    options.columns = *named_columns("1=amps,2=space,3=description");
    CHECK(breakers_of("20,1,Hall\n15,2,Bath\n", options) == Lines{"MAIN:1 20 A 'Hall'", "MAIN:2 15 A 'Bath'"});
    CHECK(named_columns("Ckt").error() == "Ckt");
    CHECK(named_columns("Ckt=room,=space").error() == "=space");
    CHECK(named_columns("Ckt=where").error() == "Ckt=where");
}

TEST_CASE("lists: two-sided, with a header or without, mirrored or not") {
    const Lines both = {"MAIN:1 20 A 'Hall'", "MAIN:2 15 A 'Bath'", "MAIN:3 20 A 'Attic'", "MAIN:4 30 A 'Dryer'"};
    CHECK(breakers_of("Ckt,Description,Amps,Ckt,Description,Amps\n1,Hall,20,2,Bath,15\n3,Attic,20,4,Dryer,30\n") ==
          both);
    CHECK(breakers_of("Description,Amps,Ckt,Ph,Ckt,Amps,Description\nHall,20,1,A,2,15,Bath\nAttic,20,3,B,4,30,Dryer\n")
              .front() == "MAIN:1 20 A 'Hall' (Leg: A)");
    CHECK(breakers_of("1,Hall,20,2,Bath,15\n3,Attic,20,4,Dryer,30\n") == both);
    CHECK(breakers_of("Hall,20,1,2,15,Bath\nAttic,20,3,4,30,Dryer\n") == both);
    CHECK(breakers_of("1,Hall,2,Bath\n3,Attic,4,Dryer\n") ==
          Lines{"MAIN:1 'Hall'", "MAIN:2 'Bath'", "MAIN:3 'Attic'", "MAIN:4 'Dryer'"});
    CHECK(breakers_of("Ckt,Load,Load,Ckt\n1,Hall,Bath,2\n") == Lines{"MAIN:1 'Hall'", "MAIN:2 'Bath'"});
}

TEST_CASE("lists: a half of a two-sided row may be blank") {
    CHECK(breakers_of("1,Hall,20,2,Bath,15\n3,Attic,20\n,,,4,Dryer,30\n") ==
          Lines{"MAIN:1 20 A 'Hall'", "MAIN:2 15 A 'Bath'", "MAIN:3 20 A 'Attic'", "MAIN:4 30 A 'Dryer'"});
}

TEST_CASE("lists: rows of sums at the foot are left out") {
    CHECK(
        listed("Ckt,Description,VA\n1,Hall,200\n,Total connected load,200\nTotal,,200\nDemand load,,160\n").counts() ==
        "1 read, 0 not");
    CHECK(breakers_of("1,Total gym lights,20\n") == Lines{"MAIN:1 20 A 'Total gym lights'"});
}

TEST_CASE("lists: several panels by a column, their names as they can be") {
    const Listed two = listed("Panel,Ckt,Description\nLP-1,1,Hall\nLP-2,1,Bath\n,3,Attic\n");
    CHECK(two.breakers == Lines{"LP-1:1 'Hall'", "LP-2:1 'Bath'", "MAIN:3 'Attic'"});
    CHECK(two.survey().panels.size() == 3);
    CHECK(two.survey().sources.empty());
    CHECK(refused_of("Panel,Ckt,Description\nA:1,1,Hall\n").size() == 1);
}
