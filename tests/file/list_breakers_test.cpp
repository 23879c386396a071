// SPDX-License-Identifier: MIT
// What the rows of a list say: spaces, poles, amperes, guards, states, and what cannot be.
#include "listed.hpp"

using namespace doorcard;

namespace {

const std::string header = "Ckt,Description,Amps,Poles\n";

}  // namespace

TEST_CASE("lists: a space as people write it") {
    for (const char* two : {"\"2,4\"", "2/4", "2+4", "2-4", "2 & 4", "2 and 4", "4/2", "2\u20134"}) {
        CAPTURE(two);
        CHECK(breakers_of("Ckt,Description\n" + std::string(two) + ",Range\n") == Lines{"MAIN:2+4 'Range'"});
    }
    CHECK(breakers_of("Ckt,Description\n1-5,Lift\n2/4/6,Pump\n") == Lines{"MAIN:1+3+5 'Lift'", "MAIN:2+4+6 'Pump'"});
    CHECK(breakers_of("Ckt,Description\n8A,Hall\n8b,Bath\n#9,Attic\n07,Cellar\n11.0,Den\nCkt 12,Porch\n") ==
          Lines{"MAIN:8a 'Hall'", "MAIN:8b 'Bath'", "MAIN:9 'Attic'", "MAIN:7 'Cellar'", "MAIN:11 'Den'",
                "MAIN:12 'Porch'"});
    CHECK(breakers_of("Ckt,Description,Amps\n\"13b,15a\",Heater,30/2\n") == Lines{"MAIN:13b+15a 30 A 'Heater'"});
}

TEST_CASE("lists: a date that a spreadsheet made is named as one, and refused") {
    const std::string right = "write the spaces as 2,4";
    CHECK(refused_of("Ckt,Description\n4-Feb,Range\n") ==
          Lines{"l:2:1: \"4-Feb\" is a date, made by a spreadsheet of two numbers such as 2-4; " + right});
    for (const char* date : {"Feb-04", "2/4/2026", "2026-02-04", "04.02.2026", "4-Feb-26", "4-feb", "4-ago", "Feb 4"}) {
        CAPTURE(date);
        const Lines refused = refused_of("Ckt,Description\n" + std::string(date) + ",Range\n");
        REQUIRE(refused.size() == 1);
        CHECK(refused[0].find(" is a date, ") != std::string::npos);
    }
}

TEST_CASE("lists: spaces that cannot be are refused with their line") {
    CHECK(refused_of("Ckt,Description\n1,Hall\n1-2,Range\n45326,Bath\n0,Den\n5x,Attic\n1-9,All\n\"7,11\",Two\n8a/"
                     "8b,Tandem\n5,\n") ==
          Lines{"l:3:1: spaces 1, 2 do not lie together on one side; write a line for each breaker",
                "l:4:1: there is no space 45326; write a number from 1 to 999",
                "l:5:1: there is no space 0; write a number from 1 to 999",
                "l:6:1: \"5x\" is no space; write 5, 13a or 2,4",
                "l:7:1: 5 spaces for one breaker; write a line for each breaker",
                "l:8:1: spaces 7, 11 do not lie together on one side; write a line for each breaker",
                "l:9:1: spaces 8a, 8b do not lie together on one side; write a line for each breaker"});
}

TEST_CASE("lists: two spaces against the poles are refused and said") {
    CHECK(refused_of(header + "2-4,Range,50,1\n\"6,8\",Dryer,30/2P,3\n10-12,Heater,30/3,\n14-16,AC,30,2\n") ==
          Lines{"l:2:1: spaces 2, 4 are 2 poles, and the poles say 1; mend the spaces or the poles",
                "l:3:19: 3 poles here, and \"30/2P\" says 2; write the same number of poles in both",
                "l:4:1: spaces 10, 12 are 2 poles, and the poles say 3; mend the spaces or the poles"});
}

TEST_CASE("lists: amperes and poles as people write them") {
    for (const char* amps : {"30/2", "30/2P", "30A/2P", "30 A 2-pole", "2P30", "2P-30A", "30A2P", "30-2"}) {
        CAPTURE(amps);
        CHECK(breakers_of("Ckt,Description,Amps\n2,Dryer," + std::string(amps) + "\n") ==
              Lines{"MAIN:2+4 30 A 'Dryer'"});
    }
    for (const char* amps : {"20", "20A", "20 amps", "20.0", "20/1", "20A 1P", "\"20,0\""}) {
        CAPTURE(amps);
        CHECK(breakers_of("Ckt,Description,Amps\n2,Hall," + std::string(amps) + "\n") == Lines{"MAIN:2 20 A 'Hall'"});
    }
    CHECK(
        refused_of("Ckt,Description,Amps,Poles\n1,Hall,15/20,\n3,Bath,many,\n5,Den,0,\n7,Attic,20,4\n") ==
        Lines{
            "l:2:8: \"15/20\" is two ratings; write a line for each breaker, of a tandem for 5a and 5b; or poles: 20/1",
            "l:3:8: \"many\" is no rating; write 20, 20A, 20/1 or 30/2P",
            "l:4:7: \"0\" is no rating; write 20, 20A, 20/1 or 30/2P",
            "l:5:12: \"4\" is no number of poles; write 1, 2 or 3"});
}

TEST_CASE("lists: a blank or ditto row joins the breaker above that lacks poles") {
    const Lines range = {"MAIN:2+4 50 A 'Range'", "MAIN:6 20 A 'Bath'"};
    CHECK(breakers_of("2,Range,50/2\n4,,\n6,Bath,20\n") == range);
    CHECK(breakers_of("2,Range,50/2\n4,\",\n6,Bath,20\n") == range);
    CHECK(breakers_of("2,Range,50/2\n4,\"\"\"\",\"\"\"\"\n6,Bath,20\n") == range);
    CHECK(breakers_of("2,Range,50/2\n4,ditto,50/2\n6,Bath,20\n") == range);
    CHECK(breakers_of("2,Range,50/2\n4,RANGE,50/2\n6,Bath,20\n").size() == 2);
    CHECK(breakers_of("2,Range,50/2\n4,-,-\n6,Bath,20\n") == range);
    CHECK(breakers_of("2,Range,50/2\n6,Bath,20\n") == range);  // its other pole is where it must be
    CHECK(breakers_of("1,Lift,30/3\n3,,\n5,,\n7,Hall,20\n") == Lines{"MAIN:1+3+5 30 A 'Lift'", "MAIN:7 20 A 'Hall'"});
    CHECK(breakers_of("1,Hall,20,2,Range,50/2\n3,Bath,20,4,\",\"\n") ==
          Lines{"MAIN:1 20 A 'Hall'", "MAIN:2+4 50 A 'Range'", "MAIN:3 20 A 'Bath'"});
}

TEST_CASE("lists: strokes, arrows and 'cont.' go on like a ditto") {
    for (const char* mark : {"|", "||", "\u2193", "\u2502", "cont.", "CONT'D", "(continued)"}) {
        CAPTURE(mark);
        CHECK(breakers_of("1,Lift,30/3\n3," + std::string(mark) + ",\n5," + mark + ",\n7,Hall,20\n") ==
              Lines{"MAIN:1+3+5 30 A 'Lift'", "MAIN:7 20 A 'Hall'"});
    }
}

TEST_CASE("lists: a ditto below a breaker that is whole is a breaker of its own: two handles until somebody looks") {
    CHECK(breakers_of("2,Range,50\n4,\",\n6,do.,\"\n") ==
          Lines{"MAIN:2 50 A 'Range'", "MAIN:4 'Range'", "MAIN:6 'Range'"});
}

TEST_CASE("lists: a row that does not go on where poles are missing is refused") {
    CHECK(
        refused_of("2,Range,50/2\n4,Bath,20\n6,Hall,15\n") ==
        Lines{"l:2:1: space 4 belongs to the two-pole breaker of line 1; leave its text and amperes blank, or mend the "
              "poles there"});
    CHECK(refused_of("4,Bath,20\n2,Range,50/2\n6,Hall,15\n") ==
          Lines{"l:2:1: no room for a two-pole breaker at 2; write all its spaces, such as 2,4"});
    CHECK(refused_of("2,Hall,15\n13a,Heater,30/2\n") ==
          Lines{"l:2:1: a two-pole breaker in half 13a alone; write all its halves, such as 13b,15a"});
}

TEST_CASE("lists: a space that is listed twice is refused at the second") {
    CHECK(
        refused_of("5,Hall,15\n7,Bath,20\n5,Den,15\n7a,Attic,15\n") ==
        Lines{
            "l:3:1: space 5 is listed already at line 1; keep one of the two; the halves of a tandem are 5a and 5b",
            "l:4:1: space 7a is listed already at line 2; keep one of the two; the halves of a tandem are 5a and 5b"});
}

TEST_CASE("lists: 400 rows for a panel of 42 spaces") {
    std::string text = "Ckt,Description,Amps\n";
    for (int space = 1; space <= 400; ++space)
        text += std::to_string(space) + ",Room " + std::to_string(space) + ",20\n";
    ListOptions options;
    options.spaces = 42;
    const Listed list = listed(text, options);
    CHECK(list.counts() == "42 read, 358 not");
    CHECK(list.refused.front() ==
          "l:44:1: there is no space 43 in a panel of 42; write a space that it has, or another --spaces");
    CHECK(list.refused.back().starts_with("l:401:1: there is no space 400 "));
    CHECK(list.survey().panels[0].spaces == 42);
}

TEST_CASE("lists: spare, space, and amperes without text") {
    const Listed list = listed("1,SPARE,20\n3,Space,\n5,blank,\n7,,15\n9,-,\n11,,\n13,Reserva,15\n15-19,Space,\n");
    CHECK(list.breakers == Lines{"MAIN:1 20 A spare", "MAIN:7 15 A", "MAIN:13 15 A spare"});
    CHECK(list.survey().panels[0].empty_spaces == std::vector<int>{3, 5, 15, 17, 19});
    CHECK(list.survey().circuits.empty());
    CHECK(list.counts() == "8 read, 0 not");
    CHECK(refused_of("1,Space,20\n") ==
          Lines{"l:1:1: an empty space with amperes; write 'Spare' where a breaker sits there, or "
                "leave the amperes out"});
}

TEST_CASE("lists: GFCI, AFCI and dual function become guards of the breaker") {
    CHECK(breakers_of("Ckt,Description,Amps,Type,Notes\n1,Bath GFCI,20,,\n3,Bed,15 AFCI,,\n5,Kitchen,20,dual "
                      "function,\n7,Den,15,CAFCI,\n"
                      "9,Garage,20,,has GFI\n11,Washer,20,AFCI/GFCI,\n13,Hall,15,LTG,\n15,Snow "
                      "melt,30/2,GFPE,\n19,Well,20,fuse,\n") ==
          Lines{"MAIN:1 20 A ground 'Bath GFCI'", "MAIN:3 15 A arc 'Bed'", "MAIN:5 20 A arc ground 'Kitchen'",
                "MAIN:7 15 A arc 'Den'", "MAIN:9 20 A ground 'Garage' (has GFI)", "MAIN:11 20 A arc ground 'Washer'",
                "MAIN:13 15 A 'Hall' (Type: LTG)", "MAIN:15+17 30 A equipment-ground 'Snow melt'",
                "MAIN:19 20 A fuse 'Well'"});
}

TEST_CASE("lists: a guard at an outlet is none of the breaker, and nothing said is not looked at") {
    const Listed list = listed("1,GFCI receptacle bath,20\n3,Hall,15\n");
    CHECK_FALSE(list.survey().breakers[0].guards);
    CHECK_FALSE(list.survey().breakers[1].guards);
}

TEST_CASE("lists: a guard that is wanted, missing or doubted is none, wherever the list says so") {
    for (const char* words : {"No GFCI", "Not AFCI", "needs GFCI", "AFCI required", "GFCI?", "non-AFCI", "w/o GFI",
                              "GFI bad", "Sin GFCI", "add AFCI", "GFCI outlet"}) {
        CAPTURE(words);
        for (const char* row : {"1,Bath {},20,,", "1,Bath,20,{},", "1,Bath,20,,{}"}) {
            std::string text = std::string("Ckt,Description,Amps,Type,Notes\n") + row + "\n";
            text.replace(text.find("{}"), 2, words);
            const Listed list = listed(text);
            REQUIRE(list.survey().breakers.size() == 1);
            CHECK_FALSE(list.survey().breakers[0].guards);
            CHECK((list.breakers[0] + "\n").find(words) != std::string::npos);  // what was said is kept
        }
    }
    CHECK(breakers_of("1,Nook GFCI,20\n") == Lines{"MAIN:1 20 A ground 'Nook GFCI'"});
}

TEST_CASE("lists: texts are old labels, circuits are claims of the old directory") {
    const Listed list = listed("1,Kitchen counter,20\n");
    REQUIRE(list.survey().circuits.size() == 1);
    const Circuit& circuit = list.survey().circuits[0];
    CHECK(circuit.id == "MAIN-1");
    CHECK(circuit.breakers == Ids{"MAIN:1"});
    CHECK_FALSE(circuit.purpose);
    CHECK(circuit.traced == Traced{"old-directory", {}, {}});
    CHECK(list.survey().breakers[0].old_label == "Kitchen counter");
}

TEST_CASE("lists: wire, volt-amperes and watts; what has no key goes into the note") {
    const Listed list = listed(
        "Ckt,Description,Wire,VA,kW,Room,Breaker colour\n1,Hall,12/2 Cu,\"1,200\",,East,black\n"
        "2,Heat,#10 AWG,,4.5,,\n4,Odd,two 12s,,,,\n6,,12,100,,,\n");
    const Survey& survey = list.survey();
    CHECK(list.breakers == Lines{"MAIN:1 'Hall' (Room: East; Breaker colour: black)", "MAIN:2 'Heat'",
                                 "MAIN:4 'Odd' (Wire: two 12s)", "MAIN:6"});
    CHECK(survey.circuits[0].wire->size == "12");
    CHECK(survey.circuits[0].wire->metal == Metal::copper);
    CHECK(survey.circuits[1].wire->size == "10");
    CHECK_FALSE(survey.circuits[1].wire->metal);
    REQUIRE(survey.loads.size() == 3);
    CHECK(survey.loads[0].va == VoltAmperes(1200));
    CHECK(survey.loads[1].watts == Watts(4500));
    CHECK(survey.loads[0].circuit == "MAIN-1");
    CHECK(survey.loads[0].note == "all of the circuit together, as the old list says");
    CHECK(refused_of("Ckt,Description,VA\n1,Hall,lots\n").size() == 1);
}

TEST_CASE("lists: a load in a unit of its own, whatever the column says") {
    const Survey survey = listed(
                              "Ckt,Description,VA\n1,Range,8 kW\n2,Heater,4.5kVA\n3,Hall,1200 VA\n4,Den,\"1,500\"\n"
                              "6,Bath,900W\n")
                              .survey();
    std::vector<double> volt_amperes;
    for (const Load& load : survey.loads) volt_amperes.push_back(load.va->value);
    CHECK(volt_amperes == std::vector<double>{8000, 4500, 1200, 1500, 900});
    const Survey kilo = listed("Ckt,Description,kW\n1,Range,8\n2,Hall,800 W\n4,Lamp,0.125\n").survey();
    CHECK(kilo.loads[0].watts == Watts(8000));
    CHECK(kilo.loads[1].watts == Watts(800));
    CHECK(kilo.loads[2].watts == Watts(125));
    CHECK(refused_of("Ckt,Description,VA\n1,Hall,1.200\n2,Den,3 hp\n") ==
          Lines{"l:2:8: \"1.200\" may be a thousand times more; write 1200, 1.2 kVA or 1.2 kW",
                "l:3:7: \"3 hp\" is no figure; write volt-amperes or watts such as 1200"});
}

TEST_CASE("lists: a load without text and amperes is a breaker in use") {
    const Listed list = listed("Ckt,Description,Amps,VA\n1,,,1200\n3,,,\n");
    CHECK(list.breakers == Lines{"MAIN:1"});
    REQUIRE(list.survey().loads.size() == 1);
    CHECK(list.survey().loads[0].va == VoltAmperes(1200));
}

TEST_CASE("lists: all upper case, and apostrophes of a spreadsheet") {
    CHECK(breakers_of("CKT,DESCRIPTION,AMPS\n1,KITCHEN,20A\n3,SPARE,20\n'5,'=NORTH,15\n") ==
          Lines{"MAIN:1 20 A 'KITCHEN'", "MAIN:3 20 A spare", "MAIN:5 15 A '=NORTH'"});
}

TEST_CASE("lists: what is known beside the list") {
    ListOptions options;
    options.system = System::split_120_240;
    options.spaces = 20;
    options.main_a = 100;
    const Survey main = listed("1,Hall,20\n", options).survey();
    CHECK(main.sources[0].system == System::split_120_240);
    CHECK(main.panels[0].fed_by == Ids{"utility"});
    CHECK(main.panels[0].spaces == 20);
    CHECK(main.panels[0].main_a == Amperes(100));
    options.panel = "LP-1";
    const Survey named = listed("1,Hall,20\n", options).survey();
    CHECK(named.sources.empty());
    CHECK(named.panels[0].id == "LP-1");
    CHECK(named.panels[0].fed_by.empty());
    CHECK(named.panels[0].system == System::split_120_240);
}
