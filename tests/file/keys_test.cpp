// SPDX-License-Identifier: MIT
#include "file/keys.hpp"

#include <algorithm>
#include <set>

#include "file/reading.hpp"

using namespace doorcard;

TEST_CASE("keys: an unknown key names the nearest known one") {
    CHECK(added("[[breaker]]\npanel = \"MAIN\"\nspaces = [7]\nampz = 20\n") ==
          Lines{"s:23:1: unknown key \"ampz\" in [[breaker]]; did you mean \"amps\"?"});
    CHECK(added("[[breaker]]\npanel = \"MAIN\"\nspaces = [7]\nzzzzzzzzz = 20\n") ==
          Lines{"s:23:1: unknown key \"zzzzzzzzz\" in [[breaker]]; the nearest known key is \"id\""});
    CHECK(added("[[breaker]]\npanel = \"MAIN\"\nspaces = [7]\namps = 20\n").empty());
}

TEST_CASE("keys: an unknown key inside a table of a thing, and inside a list of pictures") {
    CHECK(added("[[circuit]]\nid = \"d\"\nwire = { size = \"12\", length = 3 }\n") ==
          Lines{"s:22:23: unknown key \"length\" in wire of [[circuit]]; did you mean \"length_m\"?"});
    CHECK(added("[[room]]\nid = \"d\"\nphotos = [\"a.jpg\", { file = \"b.jpg\", of = \"panel:MAIN\" }]\n") ==
          Lines{"s:22:38: unknown key \"of\" in photos of [[room]]; the nearest known key is \"at\""});
    CHECK(added("[[circuit]]\nid = \"d\"\n[circuit.wire]\nsize = \"12\"\nlength_m = 3\n").empty());
}

TEST_CASE("keys: an unknown table, and a table headed the wrong way") {
    CHECK(added("[[braker]]\nx = 1\n") ==
          Lines{"s:20:3: unknown key \"braker\" in the survey file; did you mean [[breaker]]?"});
    CHECK(added("[room]\nid = \"r\"\n") == Lines{"s:20:1: \"room\" is a table; head it with [[room]]"});
    CHECK(added("[[survey]]\ntitle = \"r\"\n") == Lines{"s:20:1: \"survey\" is a list; head it with [survey]"});
    CHECK(complaints("format = 1\npanel = 3\n") == Lines{"s:2:9: \"panel\" is a whole number; head it with [[panel]]"});
    CHECK(complaints("format = 1\npanel = [3]\n") ==
          Lines{"s:2:10: an entry of \"panel\" is a whole number; head every entry with [[panel]]"});
}

TEST_CASE("keys: a single [dwelling] is one entry") {
    CHECK(survey_of("format = 1\n[dwelling]\nfloor_area_ft2 = 1850\n").dwellings[0].id == "dwelling");
    CHECK(survey_of("format = 1\n[[dwelling]]\nid = \"a\"\n[[dwelling]]\nid = \"b\"\n").dwellings.size() == 2);
}

TEST_CASE("keys: what is required, by table") {
    const auto missing = [](const std::string& text, const std::string& key) {
        const Lines lines = added(text);
        REQUIRE(lines.size() == 1);
        CHECK(lines[0].starts_with("s:20:1: "));
        CHECK(lines[0].find(" has no \"" + key + "\"; add " + key + " = ... (") != std::string::npos);
    };
    for (const char* table : {"source", "panel", "circuit", "room", "outlet", "load", "managed"})
        missing("[[" + std::string(table) + "]]\nnote = \"\"\n", "id");
    for (const char* table : {"reading", "limit", "trip", "demand"})
        missing("[[" + std::string(table) + "]]\nnote = \"\"\n", "of");
    for (const char* table : {"recording", "waveform", "photo"})
        missing("[[" + std::string(table) + "]]\nnote = \"\"\n", "file");
    missing("[[breaker]]\nspaces = [7]\n", "panel");
    missing("[[breaker]]\npanel = \"MAIN\"\n", "spaces");
    missing("[[trial]]\nkind = \"watch\"\n", "circuit");
    missing("[[trial]]\ncircuit = \"c\"\n", "kind");
    missing("[[round]]\nwent_out = []\n", "off");
}

TEST_CASE("keys: everything else may be missing") {
    CHECK(added("[survey]\n[dwelling]\n[[occupancy]]\n[grounding]\n[[source]]\nid = \"s\"\n[[panel]]\nid = "
                "\"p\"\n[[breaker]]\n"
                "panel = \"p\"\nspaces = [1]\n[[circuit]]\nid = \"x\"\n[[room]]\nid = \"r\"\n[[outlet]]\nid = "
                "\"o\"\n[[load]]\n"
                "id = \"l\"\n[[managed]]\nid = \"m\"\n[[reading]]\nof = \"panel:p\"\n[[recording]]\nfile = "
                "\"f\"\n[[waveform]]\n"
                "file = \"f\"\n[[demand]]\nof = \"panel:p\"\n[[limit]]\nof = \"panel:p\"\n[[round]]\noff = "
                "[]\n[mapping]\n[[trip]]\n"
                "of = \"survey:\"\n[[hunt]]\n[[trial]]\ncircuit = \"x\"\nkind = "
                "\"watch\"\n[[accepted]]\n[[photo]]\nfile = \"f\"\n")
              .empty());
}

TEST_CASE("keys: note and photos stand on every thing") {
    for (const KeyTable& table : all_tables()) {
        CAPTURE(table.name);
        CHECK(std::ranges::find(table.keys, "note", &Field::name) != table.keys.end());
        const bool has_photos = std::ranges::find(table.keys, "photos", &Field::name) != table.keys.end();
        CHECK(has_photos == (table.name != "photo"));
    }
    const Survey survey = survey_of(
        "format = 1\n[[room]]\nid = \"r\"\nnote = \"n\"\nphotos = [\"a.jpg\", { file = \"b.jpg\", at = "
        "2026-01-02T03:04:05, "
        "note = \"left\" }]\n");
    CHECK(added("[[photo]]\nfile = \"a\"\nof = \"panel:MAIN\"\n[[room]]\nid = \"r\"\nphotos = [{ file = \"b\" }]\n")
              .empty());
    REQUIRE(survey.rooms[0].photos->size() == 2);
    CHECK((*survey.rooms[0].photos)[0].file == "a.jpg");
    CHECK((*survey.rooms[0].photos)[1].note == "left");
}

TEST_CASE("keys: no name stands twice in a list, and every key says what it means") {
    for (const KeyTable& table : all_tables()) {
        std::set<std::string_view> names;
        for (const Field& field : table.keys) {
            CAPTURE(field.name);
            CHECK(names.insert(field.name).second);
            CHECK_FALSE(field.meaning.empty());
            CHECK_FALSE(type_words(field).empty());
        }
    }
}

TEST_CASE("keys: words of an enumeration are those of its values") {
    for (const SystemFacts& facts : all_systems())
        CHECK(enum_words<System>[static_cast<std::size_t>(facts.system)] == facts.name);
    CHECK(value_of_word<Duty>("water-heater") == Duty::water_heater);
    CHECK(value_of_word<Duty>("other") == Duty::other);
    CHECK(value_of_word<Numbering>("single-column") == Numbering::single_column);
    CHECK(value_of_word<OutletKind>("switch") == OutletKind::switch_);
    CHECK(value_of_word<MainKind>("split-bus") == MainKind::split_bus);
    CHECK(value_of_word<Guard>("equipment-ground") == Guard::equipment_ground);
    CHECK(value_of_word<Metal>("al") == Metal::aluminum);
    CHECK(value_of_word<Connection>("fixed") == Connection::fixed);
    CHECK(value_of_word<BreakerState>("off") == BreakerState::off);
}
