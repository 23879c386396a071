// SPDX-License-Identifier: MIT
// The CSV of `schedule` read back: a line per pole.
#include "listed.hpp"

using namespace doorcard;

namespace {

const std::string first_line =
    "panel,space,half,leg,pole,poles,description,class,device,amps,guards,tied_with,state,wire_size,wire_metal,wire_"
    "method,"
    "ground_size,neutral,length_ft,va,va_complete,continuous_va,measured_a,traced,note\n";

}  // namespace

TEST_CASE("schedule rows: a breaker is its lines, pole by pole") {
    const Listed list =
        listed(first_line +
               "MAIN,5,,A,1,1,\"Kitchen, east\",,breaker,20,arc+ground,MAIN:7,in-use,12,cu,cable,12,N3,62,"
               "1200,true,300,11.2,switching,wet\n"
               "MAIN,7,,B,1,1,Kitchen west,,breaker,20,none,MAIN:5,in-use,12,cu,cable,12,N3,55,,false,,,,\n"
               "MAIN,2,,A,1,2,Range,,breaker,50,,,,6,cu,,,own,,6000,true,,20,,\n"
               "MAIN,4,,B,2,2,Range,,breaker,50,,,,6,cu,,,own,,6000,true,,21,,\n"
               "LP-1,1,a,,1,1,Spare,,,15,,,spare,,,,,,,,,,,,\n"
               "LP-1,3,,,,,,,,,,,space,,,,,,,,,,,,\n"
               "LP-1,4,,,,,,,,,,,not-seen,,,,,,,,,,,,\n");
    CHECK(list.refused == Lines{});
    CHECK(list.breakers == Lines{"MAIN:5 20 A arc ground breaker 'Kitchen, east' (wet)",
                                 "MAIN:7 20 A breaker 'Kitchen west'", "MAIN:2+4 50 A breaker 'Range'",
                                 "LP-1:1a 15 A spare"});
    CHECK(list.counts() == "7 read, 0 not");
    const Survey& survey = list.survey();
    CHECK(survey.breakers[0].tied_with == Ids{"MAIN:7"});
    CHECK(survey.breakers[1].guards == std::vector<Guard>{});
    CHECK_FALSE(survey.breakers[2].guards);
    CHECK(survey.breakers[2].legs == "AB");
    CHECK(survey.panels[1].empty_spaces == std::vector<int>{3});
    CHECK_FALSE(survey.panels[0].empty_spaces);
    CHECK(survey.circuits[0].neutral == "N3");
    CHECK(survey.circuits[0].wire->length->feet() == Feet(62));
    CHECK(survey.circuits[0].ground->size == "12");
    CHECK(survey.circuits[0].traced->how == "old-directory");
    REQUIRE(survey.loads.size() == 3);
    CHECK(survey.loads[0].va == VoltAmperes(900));
    CHECK(survey.loads[1].va == VoltAmperes(300));
    CHECK(survey.loads[1].continuous == true);
    CHECK(survey.loads[2].va == VoltAmperes(12000));
    REQUIRE(survey.readings.size() == 3);
    CHECK(survey.readings[0].of.text() == "breaker:MAIN:5");
    CHECK(survey.readings[2].of.text() == "breaker:MAIN:2+4/B");
    CHECK(survey.readings[2].amps == Amperes(21));
}

TEST_CASE("schedule rows: the apostrophe that keeps a text from being a formula comes off again") {
    CHECK(
        breakers_of(first_line + "MAIN,1,,,1,1,'=1+1,,,,,,,,,,,,,,,,,,'-x\nMAIN,3,,,1,1,'plain,,,,,,,,,,,,,,,,,,\n") ==
        Lines{"MAIN:1 '=1+1' (-x)", "MAIN:3 ''plain'"});
}

TEST_CASE("schedule rows: texts stay as they are, with line breaks, quotes and blanks") {
    CHECK(breakers_of(first_line + "MAIN,1,,,1,1,\" a\nb \"\"c\"\" \",,,,,,,,,,,,,,,,,,\n") ==
          Lines{"MAIN:1 ' a\nb \"c\" '"});
}

TEST_CASE("schedule rows: a spreadsheet may have saved it with semicolons") {
    std::string text = first_line + "MAIN,1,,,1,1,Hall,,,20,,,,,,,,,,,,,,,\n";
    for (char& c : text)
        if (c == ',') c = ';';
    CHECK(breakers_of(text) == Lines{"MAIN:1 20 A 'Hall'"});
}

TEST_CASE("schedule rows: what cannot be is told, with every line of its breaker") {
    CHECK(refused_of(first_line + "MAIN,1,,,1,1,Hall,,lamp,20,,,,,,,,,,,,,,,\n"
                                  "MAIN,3,c,,1,1,Hall,,,20,,,,,,,,,,,,,,,\n"
                                  "MAIN,0,,,1,1,Hall,,,20,,,,,,,,,,,,,,,\n"
                                  "MAIN,5,,,1,2,Dryer,,,30,,,,,,,,,,,,,,,\n"
                                  "MAIN,9,,,1,1,Den,,,20,surge,,,,,,,,,,,,,,\n"
                                  "MAIN,11,,,1,1,Den,,,20,,,gone,,,,,,,,,,,,\n"
                                  "MAIN,13,,,1,1,Den,,,20,,,,,tin,,,,,,,,,,\n"
                                  "MAIN,15,,,1,1,Bath,,,20,,,,,,,,,,,,,,,\n"
                                  "MAIN,15,,,1,1,Bath,,,20,,,,,,,,,,,,,,,\n") ==
          Lines{"l:2:20: \"lamp\" is no word for device; write one of: breaker, fuse, pullout",
                "l:3:8: \"c\" is no word for half; write one of: a, b",
                "l:4:6: \"0\" is no figure for space; write a number, or leave it blank",
                "l:5:1: 1 of 2 poles of this breaker are listed here; keep a line for each pole, from pole 1 on",
                "l:6:23: \"surge\" are no guards; write arc, ground, equipment-ground with + between, or none",
                "l:7:26: \"gone\" is no state; write in-use, spare, off, space or not-seen",
                "l:8:28: \"tin\" is no metal; write cu or al",
                "l:10:1: breaker MAIN:15 is listed already; keep one of the two"});
}

TEST_CASE("schedule rows: a tie to what is not in the list stays as a remark") {
    CHECK(breakers_of(first_line + "MAIN,1,,,1,1,Hall,,,20,,LP:1,,,,,,,,,,,,,\n") ==
          Lines{"MAIN:1 20 A 'Hall' (tied with LP:1)"});
}

TEST_CASE("schedule rows: ties of several breakers, blanks in their names") {
    const Listed list =
        listed(first_line + "LP 1,1,,,1,1,A,,,20,,LP 1:3 LP 1:5,,,,,,,,,,,,,\n" +
               "LP 1,3,,,1,1,B,,,20,,,,,,,,,,,,,,,\n" + "LP 1,5,,,1,1,C,,,20,,LP 1:1;gone,,,,,,,,,,,,,\n");
    CHECK(list.survey().breakers[0].tied_with == Ids{"LP 1:3", "LP 1:5"});
    CHECK(list.survey().breakers[2].tied_with == Ids{"LP 1:1"});
    CHECK(list.survey().breakers[2].note == "tied with gone");
}

TEST_CASE("schedule rows: feeders, sources and mains are no circuits; a class is the duty of the load") {
    const Listed list = listed(first_line +
                               "MAIN,1,,,1,1,Feeder to Shop,,,60,,,,,,,,,,5000,yes,,,,\n"
                               "MAIN,3,,,1,1,Main: shuts off this panel,,,60,,,,,,,,,,,no,,,,\n"
                               "MAIN,5,,,1,1,Water heater,water-heater,,30,,,,,,,,,,2250.123456789,yes,,,,\n");
    CHECK(list.survey().circuits.size() == 1);
    CHECK(list.breakers[0] == "MAIN:1 60 A 'Feeder to Shop'");
    REQUIRE(list.survey().loads.size() == 1);
    CHECK(list.survey().loads[0].duty == Duty::water_heater);
    CHECK(list.survey().loads[0].va == VoltAmperes(2250.123456789));
}
