// SPDX-License-Identifier: MIT
#include "file/reading.hpp"

using namespace doorcard;

TEST_CASE("laws: ids are unique per kind, an error at the second") {
    CHECK(added("[[circuit]]\nid = \"c\"\n") ==
          Lines{"s:21:6: the id \"c\" of this circuit is that of the circuit at line 12; give one of them another id"});
    CHECK(added("[[room]]\nid = \"c\"\n").empty());
    CHECK(added("[[room]]\nid = \"C\"\n[[room]]\nid = \"c\"\n").empty());  // case-sensitive
    CHECK(complaints("format = 1\n[[dwelling]]\nunits = 1\n[[dwelling]]\nid = \"dwelling\"\n") ==
          Lines{"s:5:6: the id \"dwelling\" of this dwelling is that of the dwelling at line 2; give one of them "
                "another id"});
    CHECK(added("[[managed]]\nid = \"g\"\n[[managed]]\nid = \"g\"\n").size() == 1);
}

TEST_CASE("laws: ids are unique across outlets and loads") {
    CHECK(added("[[load]]\nid = \"K1\"\n") ==
          Lines{"s:21:6: the id \"K1\" of this load is that of the outlet at line 15; give one of them another id"});
    CHECK(complaints("format = 1\n[[load]]\nid = \"x\"\n[[outlet]]\nid = \"x\"\n") ==
          Lines{"s:5:6: the id \"x\" of this outlet is that of the load at line 3; give one of them another id"});
    CHECK(added("[[load]]\nid = \"c\"\n").empty());
}

TEST_CASE("laws: ids are unique across sources, panels and breakers") {
    CHECK(added("[[panel]]\nid = \"utility\"\n").size() == 1);
    CHECK(
        added("[[source]]\nid = \"MAIN:5\"\n") ==
        Lines{
            "s:21:6: the id \"MAIN:5\" of this source is that of the breaker at line 8; give one of them another id"});
    CHECK(added("[[breaker]]\nid = \"MAIN\"\npanel = \"MAIN\"\nspaces = [7]\n").size() == 1);
    CHECK(added("[[outlet]]\nid = \"MAIN\"\n").empty());
}

TEST_CASE("laws: the default id of a breaker") {
    const auto id = [](const std::string& rest) {
        return survey_of("format = 1\n[[panel]]\nid = \"MAIN\"\n[[breaker]]\npanel = \"MAIN\"\n" + rest).breakers[0].id;
    };
    CHECK(id("spaces = [5]\n") == "MAIN:5");
    CHECK(id("spaces = [4, 2]\n") == "MAIN:2+4");
    CHECK(id("spaces = [13]\nhalf = \"a\"\n") == "MAIN:13a");
    CHECK(id("spaces = [15, 13]\nhalf = [\"a\", \"b\"]\n") == "MAIN:13b+15a");
    CHECK(id("spaces = [10, 8, 12]\n") == "MAIN:8+10+12");
    CHECK(id("spaces = [13, 15]\nhalf = \"b\"\n") == "MAIN:13b+15b");
    CHECK(id("spaces = [5]\nid = \"B-5\"\n") == "B-5");
}

TEST_CASE("laws: two breakers of one default id, an error at the second; an overlap is none") {
    CHECK(
        added("[[breaker]]\npanel = \"MAIN\"\nspaces = [5]\n") ==
        Lines{
            "s:20:1: the id \"MAIN:5\" of this breaker is that of the breaker at line 8; give one of them another id"});
    CHECK(added("[[breaker]]\npanel = \"MAIN\"\nspaces = [5, 7]\n").empty());
    CHECK(added("[[breaker]]\npanel = \"MAIN\"\nspaces = [5]\nhalf = \"a\"\n").empty());
    CHECK(added("[[breaker]]\nid = \"other\"\npanel = \"MAIN\"\nspaces = [5]\n").empty());
    CHECK(added("[[breaker]]\npanel = \"MAIN\"\nspaces = [2, 4]\n[[breaker]]\npanel = \"MAIN\"\nspaces = [4, 2]\n")
              .size() == 1);
}

TEST_CASE("laws: a breaker's spaces differ, are of its panel, and have halves of their own") {
    const auto breaker = [](const std::string& rest) { return added("[[breaker]]\npanel = \"MAIN\"\n" + rest); };
    CHECK(breaker("spaces = [7, 9, 7]\n") ==
          Lines{"s:22:17: \"spaces\" in [[breaker]] names 7 twice; name every space once"});
    CHECK(breaker("spaces = [39, 41]\n") == Lines{"s:22:15: breaker \"MAIN:39+41\" sits in space 41 of panel \"MAIN\", "
                                                  "which has 40; name a space that it has, or "
                                                  "mend its \"spaces\""});
    CHECK(breaker("spaces = []\n") ==
          Lines{"s:22:10: \"spaces\" in [[breaker]] is empty; write spaces = list: whole number, at "
                "least 1, at most 999"});
    CHECK(breaker("spaces = [7, 9]\nhalf = [\"a\"]\n") ==
          Lines{"s:23:9: 1 halves for 2 spaces; give one letter, or one for each space"});
    CHECK(breaker("spaces = [7]\nhalf = \"c\"\n") ==
          Lines{"s:23:8: \"half\" in [[breaker]] is \"c\"; write half = one of \"a\", \"b\"; "
                "or a list of them"});
    CHECK(breaker("spaces = [40]\n").empty());
    CHECK(breaker("spaces = [7, 9]\nhalf = [\"a\", \"a\"]\n").empty());
}

TEST_CASE("laws: a panel's own lists of spaces stay within it") {
    CHECK(
        added("[[panel]]\nid = \"P\"\nspaces = 12\nempty_spaces = [11, 13]\ntandem_spaces = [14]\n") ==
        Lines{
            "s:23:21: space 13 in \"empty_spaces\" of panel \"P\", which has 12; name a space that it has, or mend its "
            "\"spaces\"",
            "s:24:18: space 14 in \"tandem_spaces\" of panel \"P\", which has 12; name a space that it has, or mend "
            "its "
            "\"spaces\""});
    CHECK(added("[[panel]]\nid = \"P\"\nspaces = 12\nempty_spaces = [11, 12]\n").empty());
    CHECK(added("[[panel]]\nid = \"P\"\nempty_spaces = [11, 13]\n").empty());
}

TEST_CASE("laws: a circle of upstream is an error at the key that closes it") {
    CHECK(added("[[outlet]]\nid = \"a\"\nupstream = \"b\"\n[[outlet]]\nid = \"b\"\nupstream = \"a\"\n[[outlet]]\nid = "
                "\"d\"\nupstream = \"a\"\n") == Lines{"s:25:1: outlet \"b\" is fed through \"a\", which is fed through "
                                                      "it; break the circle: name what really feeds "
                                                      "one of its outlets"});
    CHECK(added("[[outlet]]\nid = \"a\"\nupstream = \"a\"\n").size() == 1);
    CHECK(added("[[outlet]]\nid = \"a\"\nupstream = \"b\"\n[[outlet]]\nid = \"b\"\nupstream = \"K1\"\n").empty());
}

TEST_CASE("laws: two circles are two errors, and so is one of three things one") {
    std::string text;
    for (const char* pair : {"ab", "ba", "cd", "de", "ec"})
        text +=
            "[[outlet]]\nid = \"x" + std::string(1, pair[0]) + "\"\nupstream = \"x" + std::string(1, pair[1]) + "\"\n";
    const Lines lines = added(text);
    REQUIRE(lines.size() == 2);
    CHECK(lines[0].starts_with("s:25:1: "));
    CHECK(lines[1].starts_with("s:34:1: "));
}

TEST_CASE("laws: a circle of fed_by is an error at the key that closes it") {
    const std::string two =
        "format = 1\n[[breaker]]\npanel = \"A\"\nspaces = [1]\n[[breaker]]\npanel = \"B\"\nspaces = [1]\n";
    CHECK(complaints(two + "[[panel]]\nid = \"A\"\nfed_by = \"B:1\"\n[[panel]]\nid = \"B\"\nfed_by = [\"A:1\"]\n") ==
          Lines{"s:13:1: panel \"B\" is fed from panel \"A\", which is fed from it; break the circle: name what really "
                "feeds one "
                "of its panels"});
    CHECK(complaints(two + "[[panel]]\nid = \"A\"\nfed_by = \"A:1\"\n[[panel]]\nid = \"B\"\n").size() == 1);
    CHECK(complaints(two + "[[panel]]\nid = \"A\"\n[[panel]]\nid = \"B\"\nfed_by = [\"A:1\"]\n").empty());
}

TEST_CASE("laws: a diamond of feeds is no circle") {
    CHECK(complaints("format = 1\n[[panel]]\nid = \"A\"\n[[breaker]]\npanel = \"A\"\nspaces = [1]\n[[breaker]]\npanel "
                     "= \"A\"\nspaces = [2]\n"
                     "[[panel]]\nid = \"B\"\nfed_by = [\"A:1\", \"A:2\"]\n")
              .empty());
}

TEST_CASE("laws: one neutral has one size") {
    const std::string first = "[[circuit]]\nid = \"x\"\nneutral = \"N3\"\nneutral_size = \"12\"\n";
    CHECK(added(first + "[[circuit]]\nid = \"y\"\nneutral = \"N3\"\nneutral_size = \"14\"\n") ==
          Lines{"s:27:16: neutral \"N3\" is 14 here and 12 at circuit \"x\"; one neutral has one size"});
    CHECK(added(first + "[[circuit]]\nid = \"y\"\nneutral = \"N3\"\nneutral_size = \"12\"\n").empty());
    CHECK(added(first + "[[circuit]]\nid = \"y\"\nneutral = \"N3\"\n").empty());
    CHECK(added("[[circuit]]\nid = \"x\"\nneutral = \"own\"\nneutral_size = \"12\"\n[[circuit]]\nid = \"y\"\nneutral = "
                "\"own\"\nneutral_size = \"14\"\n")
              .empty());
}

TEST_CASE("laws: units are the sum of what its panels stand for") {
    const std::string dwelling = "[[panel]]\nid = \"P\"\n[dwelling]\npanels = [\"MAIN\", \"P\"]\n";
    CHECK(added(dwelling + "stands_for = [8, 4]\nunits = 13\n") ==
          Lines{"s:25:9: \"units\" is 13, and its panels stand for 12; write units = 12, or leave it out"});
    CHECK(added(dwelling + "stands_for = [8, 4, 1]\n") ==
          Lines{"s:24:1: \"stands_for\" has 3 numbers for 2 panels; give a number for each of its panels"});
    CHECK(added(dwelling + "stands_for = [8, 4]\nunits = 12\n").empty());
    CHECK(added(dwelling + "units = 13\n").empty());
}

TEST_CASE("laws: times of rounds follow the order of the file") {
    const auto at = [](const std::string& time) { return "[[round]]\noff = []\nat = " + time + "\n"; };
    CHECK(
        added(at("2026-05-14T10:05:00") + at("2026-05-14T10:04:59")) ==
        Lines{
            "s:25:6: this round is dated before the round above it, at line 22; the order of the file is the order of "
            "time: move the entry, or mend the time"});
    CHECK(added(at("2026-05-14T10:05:00") + at("2026-05-14T10:05:00")).empty());
    CHECK(added(at("2026-05-14T10:05:00Z") + at("2026-05-14T10:05:00+01:00")).size() == 1);
    CHECK(added(at("2026-05-14T10:05:00+01:00") + at("2026-05-14T09:05:00Z")).empty());
    CHECK(added(at("2026-05-14T10:05:00") + "[[round]]\noff = []\n" + at("2026-05-14T10:04:00")).size() == 1);
    CHECK(added(at("2026-05-14T10:05:00") + at("2026-05-14T10:04:00Z")).empty());  // nobody can tell
}

TEST_CASE("laws: times of trials follow the order of the file within a circuit") {
    const auto at = [](const std::string& circuit, const std::string& time) {
        return "[[trial]]\ncircuit = \"" + circuit + "\"\nkind = \"watch\"\nat = " + time + "\n";
    };
    const std::string other = "[[circuit]]\nid = \"d\"\n";
    CHECK(added(other + at("c", "2026-05-14T10:05:00") + at("c", "2026-05-13T10:05:00")).size() == 1);
    CHECK(added(other + at("c", "2026-05-14T10:05:00") + at("d", "2026-05-13T10:05:00")).empty());
}
