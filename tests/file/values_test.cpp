// SPDX-License-Identifier: MIT
#include "file/reading.hpp"

using namespace doorcard;

namespace {

/// A breaker in space 7 with this line, which is line 23.
Lines breaker(const std::string& line) { return added("[[breaker]]\npanel = \"MAIN\"\nspaces = [7]\n" + line + "\n"); }
/// A load with this line, which is line 22.
Lines load(const std::string& line) { return added("[[load]]\nid = \"l\"\n" + line + "\n"); }

}  // namespace

TEST_CASE("values: a key of another type says what it takes") {
    CHECK(breaker("amps = \"20\"") ==
          Lines{"s:23:8: \"amps\" in [[breaker]] is text; write amps = number, A, at least 1"});
    CHECK(breaker("full_rated = 1") ==
          Lines{"s:23:14: \"full_rated\" in [[breaker]] is a whole number; write full_rated = true or false"});
    CHECK(breaker("conductors = 1.5") ==
          Lines{"s:23:14: \"conductors\" in [[breaker]] is a number; write conductors = whole number"});
    CHECK(breaker("old_label = 5") ==
          Lines{"s:23:13: \"old_label\" in [[breaker]] is a whole number; write old_label = text"});
    CHECK(breaker("tested = true") ==
          Lines{"s:23:10: \"tested\" in [[breaker]] is true or false; write tested = table (below)"});
    CHECK(breaker("tied_with = \"MAIN:5\"") ==
          Lines{"s:23:13: \"tied_with\" in [[breaker]] is text; write tied_with = list: id of a breaker"});
    CHECK(breaker("tied_with = [\"MAIN:5\", 3]") ==
          Lines{"s:23:24: \"tied_with\" in [[breaker]] is a whole number; write tied_with = list: id of a breaker"});
    CHECK(breaker("amps = 20").empty());
    CHECK(breaker("amps = 20.5").empty());
    CHECK(breaker("tied_with = [\"MAIN:5\"]").empty());
}

TEST_CASE("values: numbers are finite and 0 or more") {
    CHECK(load("va = -1") == Lines{"s:22:6: \"va\" in [[load]] is -1; write va = number, VA"});
    CHECK(load("va = nan") == Lines{"s:22:6: \"va\" in [[load]] is not finite; write va = number, VA"});
    CHECK(load("va = inf") == Lines{"s:22:6: \"va\" in [[load]] is not finite; write va = number, VA"});
    CHECK(load("va = 1e300") == Lines{"s:22:6: \"va\" in [[load]] is 1e+300; write va = number, VA"});
    CHECK(load("gallons = -0.5") == Lines{"s:22:11: \"gallons\" in [[load]] is -0.5; write gallons = number, gallons"});
    CHECK(load("va = 0").empty());
    CHECK(load("va = 0.5").empty());
}

TEST_CASE("values: ratings, spaces, count and yokes are 1 or more") {
    CHECK(breaker("amps = 0") == Lines{"s:23:8: \"amps\" in [[breaker]] is 0; write amps = number, A, at least 1"});
    CHECK(load("count = 0") == Lines{"s:22:9: \"count\" in [[load]] is 0; write count = whole number, at least 1"});
    CHECK(added("[[outlet]]\nid = \"o\"\nyokes = 0\n") ==
          Lines{"s:22:9: \"yokes\" in [[outlet]] is 0; write yokes = whole number, at least 1"});
    CHECK(added("[[panel]]\nid = \"p\"\nspaces = 0\nbus_a = 0.5\nmain_a = 0\n").size() == 3);
    CHECK(added("[[source]]\nid = \"s\"\namps = 0\n").size() == 1);
    CHECK(added("[[breaker]]\npanel = \"MAIN\"\nspaces = [0]\n") ==
          Lines{"s:22:11: \"spaces\" in [[breaker]] is 0; write spaces = list: whole number, at least 1, at most 999"});
    CHECK(added("[[panel]]\nid = \"p\"\nspaces = 1\nbus_a = 1\nmain_a = 1\n").empty());
    CHECK(load("count = 1").empty());
    CHECK(load("count = 99999999999") ==
          Lines{"s:22:9: \"count\" in [[load]] is 99999999999; write count = whole number, at least 1"});
}

TEST_CASE("values: a power factor is above 0 and at most 1") {
    for (const char* bad : {"0", "1.01", "-0.5"}) CHECK(load("power_factor = " + std::string(bad)).size() == 1);
    CHECK(load("power_factor = 0.0") ==
          Lines{"s:22:16: \"power_factor\" in [[load]] is 0; write power_factor = number, above 0, at most 1"});
    CHECK(added("[[reading]]\nof = \"circuit:c\"\npower_factor = 2\n").size() == 1);
    for (const char* good : {"1", "0.01", "1.0"}) CHECK(load("power_factor = " + std::string(good)).empty());
}

TEST_CASE("values: a closed set of words names the nearest by listing them") {
    CHECK(breaker("state = \"sparee\"") ==
          Lines{"s:23:9: \"state\" in [[breaker]] is \"sparee\"; write state = one of \"in-use\", \"spare\", \"off\""});
    CHECK(breaker("guards = [\"arc\", \"gfci\"]") ==
          Lines{"s:23:18: \"guards\" in [[breaker]] is \"gfci\"; write guards = list: one of \"arc\", \"ground\", "
                "\"equipment-ground\""});
    CHECK(breaker("state = \"spare\"\nguards = [\"arc\", \"ground\"]").empty());
    CHECK(load("duty = \"heater\"").size() == 1);
    CHECK(load("duty = \"water-heater\"").empty());
    CHECK(load("phases = 2") ==
          Lines{"s:22:10: \"phases\" in [[load]] is 2; write phases = 1 (line to line too) or 3"});
    CHECK(load("phases = 3").empty());
}

TEST_CASE("values: places, conditions and rooms are open") {
    CHECK(added("[[outlet]]\nid = \"o\"\nplace = \"boathouse\"\nroom = \"Under the stair\"\n").empty());
    CHECK(added("[[panel]]\nid = \"p\"\ncondition = [\"wasps\"]\n").empty());
    CHECK(added("[[panel]]\nid = \"p\"\nplace = \"attic\"\n").size() == 1);
}

TEST_CASE("values: a rule book is one of the known editions") {
    CHECK(added("[survey]\nrules = \"NEC-2020\"\n").empty());
    CHECK(added("[survey]\nrules = \"NEC-2022\"\n") ==
          Lines{"s:21:9: \"rules\" in [survey] is \"NEC-2022\"; write rules = one of \"NEC-2023\", \"NEC-2020\""});
}

TEST_CASE("values: every system of the contract, and no other") {
    for (const SystemFacts& facts : all_systems())
        CHECK(added("[[source]]\nid = \"s\"\nsystem = \"" + std::string(facts.name) + "\"\n").empty());
    CHECK(added("[[source]]\nid = \"s\"\nsystem = \"240/120 1ph 3w\"\n").size() == 1);
}

TEST_CASE("values: dates and times; 'at' needs a time of day") {
    CHECK(added("[[reading]]\nof = \"circuit:c\"\nat = 2026-05-14\n") ==
          Lines{"s:22:6: \"at\" in [[reading]] is a date without a time of day; write at = date and time"});
    CHECK(added("[[reading]]\nof = \"circuit:c\"\nat = 09:30:00\n") ==
          Lines{"s:22:6: \"at\" in [[reading]] is a time of day without a date; write at = date and time"});
    CHECK(added("[survey]\ndate = \"2026-05-14\"\n") ==
          Lines{"s:21:8: \"date\" in [survey] is text; write date = date, or date and time"});
    CHECK(added("[[reading]]\nof = \"circuit:c\"\nat = 2026-05-14T09:30:00\n").empty());
    CHECK(added("[survey]\ndate = 2026-05-14\n").empty());
}

TEST_CASE("values: a moment is kept as written, never converted") {
    const Survey survey =
        survey_of(small_house + "[[reading]]\nof = \"circuit:c\"\nat = 2026-05-14T09:30:00.5-05:00\n");
    const Moment at = *survey.readings[0].at;
    CHECK(at == Moment{2026, 5, 14, (9 * 3600 + 30 * 60) * 1'000'000'000LL + 500'000'000, -300});
    CHECK(survey_of("format = 1\n[survey]\ndate = 2026-05-14\n").heading.date == Moment{2026, 5, 14, {}, {}});
}

TEST_CASE("values: at most one key of an 'or' group") {
    CHECK(load("va = 5\nwatts = 5") ==
          Lines{"s:23:1: \"watts\" beside \"va\" in [[load]]; give one of va, watts, amps, hp"});
    CHECK(load("outlet = \"K1\"\ncircuit = \"c\"") ==
          Lines{"s:23:1: \"circuit\" beside \"outlet\" in [[load]]; give one of outlet, circuit, panel"});
    CHECK(load("length_ft = 5\nlength_m = 5").size() == 1);
    CHECK(load("hp = 1\nwatts = 5").size() == 1);
    CHECK(load("hp = 1\namps = 5").empty());
    CHECK(load("amps = 5\nhp = \"3/4\"").empty());
    CHECK(load("amps = 5\nhp = 1\nva = 5") ==
          Lines{"s:24:1: \"va\" beside \"amps\" in [[load]]; give one of va, watts, amps, hp"});
    CHECK(added("[[outlet]]\nid = \"o\"\nrun_ft = 1\nrun_m = 1\n") ==
          Lines{"s:23:1: \"run_m\" beside \"run_ft\" in [[outlet]]; give one of run_ft, run_m"});
    CHECK(added("[dwelling]\nfloor_area_m2 = 1\nfloor_area_ft2 = 1\ngarage_ft2 = 1\n").size() == 1);
    CHECK(added("[[demand]]\nof = \"panel:MAIN\"\nkw = 1\nkva = 1\namps = 1\n").size() == 2);
    CHECK(added("[[limit]]\nof = \"circuit:c\"\nabove = 1\nbelow = 1\n").size() == 1);
    CHECK(added("[[circuit]]\nid = \"d\"\nwire = { length_ft = 1, length_m = 1 }\n") ==
          Lines{"s:22:25: \"length_m\" beside \"length_ft\" in wire of [[circuit]]; give one of length_ft, length_m"});
}

TEST_CASE("values: lengths and areas in either unit") {
    const Survey survey = survey_of(
        "format = 1\n[dwelling]\nfloor_area_m2 = 100\ngarage_ft2 = 400\n[[outlet]]\nid = \"o\"\nrun_m = 3.048\n");
    CHECK(survey.dwellings[0].floor_area == Area{100, true});
    CHECK(survey.dwellings[0].garage == Area{400, false});
    CHECK(survey.outlets[0].run->feet().value == doctest::Approx(10));
}

TEST_CASE("values: horsepower is a number or a fraction") {
    const auto hp = [](const std::string& written) {
        return survey_of("format = 1\n[[load]]\nid = \"l\"\nhp = " + written + "\n").loads[0].hp;
    };
    CHECK(hp("\"3/4\"") == "3/4");
    CHECK(hp("1.5") == "1.5");
    CHECK(hp("5") == "5");
    CHECK(load("hp = \"1-1/2\"") ==
          Lines{"s:22:6: \"hp\" in [[load]] is \"1-1/2\"; write hp = number, or a text such as \"3/4\""});
    CHECK(load("hp = \"3/0\"").size() == 1);
    CHECK(load("hp = true").size() == 1);
}

TEST_CASE("values: legs of loads and breakers") {
    for (const char* good : {"A", "AB", "CA", "ABC", "AN+BN"})
        CHECK(load("legs = \"" + std::string(good) + "\"").empty());
    for (const char* bad : {"", "AA", "D", "AN", "AN+AN", "a"})
        CHECK(load("legs = \"" + std::string(bad) + "\"").size() == 1);
    CHECK(breaker("legs = \"AB\"") ==
          Lines{"s:23:8: 2 legs for 1 spaces; give a letter for each space, in the order of spaces"});
    CHECK(breaker("legs = \"B\"").empty());
    CHECK(added("[[breaker]]\npanel = \"MAIN\"\nspaces = [7, 9]\nlegs = \"AA\"\n").empty());  // a finding, no error
}

TEST_CASE("values: an id keeps the rules of ids") {
    const auto room = [](const std::string& id) { return added("[[room]]\nid = '''" + id + "'''\n"); };
    for (const std::string bad : {"a/b", "a\"b", "it's", " a", "a ", "a\xC2\xA0", "tab\there", "\xE2\x80\x8B"}) {
        CAPTURE(bad);
        REQUIRE(room(bad).size() == 1);
        CHECK(room(bad)[0].starts_with("s:21:6: \"id\" in [[room]] is "));
    }
    CHECK(room(std::string(65, 'x')).size() == 1);
    CHECK(room("").size() == 1);
    for (const std::string good : {"a b", "K-1_(x).+:",
                                   "k\xC3\xBC"
                                   "che",
                                   "\xE5\xAE\xA4"})
        CHECK(room(good).empty());
    CHECK(room(std::string(64, 'x')).empty());
    std::string long_umlauts;
    for (int i = 0; i < 64; ++i) long_umlauts += "\xC3\xBC";
    CHECK(room(long_umlauts).empty());
    CHECK(room(long_umlauts + "x").size() == 1);
}

TEST_CASE("values: a panel's id has no ':' and no '+', another's may") {
    for (const char* bad : {"A:1", "A+B"}) CHECK(added("[[panel]]\nid = \"" + std::string(bad) + "\"\n").size() == 1);
    for (const char* good : {"A:1", "A+B"}) CHECK(added("[[source]]\nid = \"" + std::string(good) + "\"\n").empty());
}

TEST_CASE("values: a neutral's name keeps the rules of ids") {
    CHECK(added("[[circuit]]\nid = \"d\"\nneutral = \"N/3\"\n").size() == 1);
    CHECK(added("[[circuit]]\nid = \"d\"\nneutral = \"own\"\n").empty());
}

TEST_CASE("values: a list names nothing twice") {
    CHECK(
        breaker("tied_with = [\"MAIN:5\", \"MAIN:5\"]") ==
        Lines{"s:23:24: \"tied_with\" in [[breaker]] names \"MAIN:5\" twice; write tied_with = list: id of a breaker"});
}

TEST_CASE("values: looked, and there is none, differs from not seen") {
    const Survey survey = survey_of(
        "format = 1\n[[panel]]\nid = \"M\"\nmain = \"lugs\"\nempty_spaces = []\n[[breaker]]\npanel = \"M\"\nspaces = "
        "[1]\nguards = []\n"
        "[[breaker]]\npanel = \"M\"\nspaces = [2]\n");
    CHECK(survey.panels[0].main == MainKind::lugs);
    CHECK(survey.panels[0].empty_spaces->empty());
    CHECK(survey.breakers[0].guards->empty());
    CHECK_FALSE(survey.breakers[1].guards);
}

TEST_CASE("values: the key of a limit is one that is measured") {
    CHECK(added("[[limit]]\nof = \"circuit:c\"\nkey = \"ampz\"\n") ==
          Lines{"s:22:7: \"ampz\" is no numeric key of readings or recordings; did you mean \"amps\"?"});
    CHECK(added("[[limit]]\nof = \"circuit:c\"\nkey = \"instrument\"\n").size() == 1);
    CHECK(added("[[limit]]\nof = \"circuit:c\"\nkey = \"demand15_a\"\nabove = 14\n").empty());
    CHECK(added("[[limit]]\nof = \"circuit:c\"\nkey = \"leakage_ma\"\n").empty());
}
