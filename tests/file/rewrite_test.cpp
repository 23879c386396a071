// SPDX-License-Identifier: MIT
#include "file/rewrite_survey.hpp"

#include <functional>

#include "file/reading.hpp"
#include "survey/edits/breaker_edits.hpp"
#include "survey/edits/circuit_edits.hpp"
#include "survey/edits/entry_edits.hpp"
#include "survey/edits/outlet_edits.hpp"
#include "survey/edits/panel_edits.hpp"
#include "survey/edits/room_edits.hpp"
#include "survey/edits/source_edits.hpp"

using namespace doorcard;

namespace {

/// The text after an edit of its survey.
std::string after(const std::string& text, const Edit& edit) {
    const Survey before = survey_of(text);
    const auto edited = edit.apply(before);
    REQUIRE(edited);
    return rewrite(text, before, *edited);
}

/// The text after its survey was changed.
std::string changed(const std::string& text, const std::function<void(Survey&)>& change) {
    const Survey before = survey_of(text);
    Survey edited = before;
    change(edited);
    return rewrite(text, before, edited);
}

template <class T>
void alter(Table<T>& table, const std::function<void(std::vector<T>&)>& change) {
    auto rows = table.rows();
    change(rows);
    table = Table<T>(std::move(rows));
}

template <class T>
T named(const std::string& id) {
    T thing;
    thing.id = id;
    return thing;
}

Room room(const std::string& id) { return named<Room>(id); }

const std::string head = "format = 1\n";

}  // namespace

TEST_CASE("rewrite: nothing changed is the same bytes") {
    const std::string text =
        "\xEF\xBB\xBF"
        "format = 0x1 # one\r\n\r\n[survey]\r\n'title'   =  'x'";
    CHECK(changed(text, [](Survey&) {}) == text);
}

TEST_CASE("rewrite: a value keeps its place, its quotes and the remark behind it") {
    const std::string text =
        "\xEF\xBB\xBF"
        "format = 1\r\n[survey]\r\n  'title'   =  'x' # old\r\n# below";
    CHECK(changed(text, [](Survey& s) { s.heading.title = "y"; }) ==
          "\xEF\xBB\xBF"
          "format = 1\r\n[survey]\r\n  'title'   =  'y' # old\r\n# below");
    CHECK(changed(text, [](Survey& s) { s.heading.title = "it's"; }) ==
          "\xEF\xBB\xBF"
          "format = 1\r\n[survey]\r\n  'title'   =  \"it's\" # old\r\n# below");
}

TEST_CASE("rewrite: a new key stands behind the last, in the file's newlines, indentation and columns") {
    CHECK(changed("format = 1\r\n[survey]\r\n  title  = \"x\"\r\n  permit = \"7\"\r\n\r\n[[room]]\r\nid = \"r\"\r\n",
                  [](Survey& s) { s.heading.built = 1978; }) ==
          "format = 1\r\n[survey]\r\n  title  = \"x\"\r\n  permit = \"7\"\r\n  built  = 1978\r\n\r\n[[room]]\r\nid = "
          "\"r\"\r\n");
    CHECK(changed("format=1\n[survey]\ntitle=\"x\"", [](Survey& s) { s.heading.built = 1978; }) ==
          "format=1\n[survey]\ntitle=\"x\"\nbuilt=1978");
}

TEST_CASE("rewrite: a text of both kinds of newlines that ends without one") {
    CHECK(changed("format = 1\n[survey]\r\ntitle = \"x\"", [](Survey& s) { s.heading.title.reset(); }) ==
          "format = 1\n[survey]");
}

TEST_CASE("rewrite: a key that goes takes its line") {
    CHECK(changed(head + "[survey]\ntitle = \"\"\"\na\n[[b]]\n# c\n\"\"\" # gone\n# stays\nbuilt = 1978\n",
                  [](Survey& s) { s.heading.title.reset(); }) == head + "[survey]\n# stays\nbuilt = 1978\n");
}

TEST_CASE("rewrite: a heading that was not there stands first, other new tables in the contract's order") {
    CHECK(changed(head + "\n[[room]]\nid = \"r\"\n", [](Survey& s) { s.heading.title = "x"; }) ==
          head + "\n[survey]\ntitle = \"x\"\n\n[[room]]\nid = \"r\"\n");
    CHECK(after(head + "\n[survey]\n\n# rooms\n\n[[room]]\nid = \"r\"\n", add_source(named<Source>("u"))) ==
          head + "\n[survey]\n\n[[source]]\nid = \"u\"\n\n# rooms\n\n[[room]]\nid = \"r\"\n");
    CHECK(changed(head, [](Survey& s) { s.mapping.emplace(); }) == head + "\n[mapping]\n");
}

TEST_CASE("rewrite: an entry stands behind the last of its kind; one that goes takes its remark along, and no other") {
    const std::string text =
        head +
        "\n# rooms of the ground floor\n\n# with stove\n[[room]]\nid = \"a\"\n\n[[room]]\nid = \"b\"\n"
        "# not heated\n\n# the end\n";
    CHECK(after(text, add_room(room("c"))) == head +
                                                  "\n# rooms of the ground floor\n\n# with stove\n[[room]]\nid = "
                                                  "\"a\"\n\n[[room]]\nid = \"b\"\n# not heated\n"
                                                  "\n[[room]]\nid = \"c\"\n\n# the end\n");
    CHECK(after(text, remove_room("a")) ==
          head + "\n# rooms of the ground floor\n\n[[room]]\nid = \"b\"\n# not heated\n\n# the end\n");
    CHECK(after(text, remove_room("b")) ==
          head + "\n# rooms of the ground floor\n\n# with stove\n[[room]]\nid = \"a\"\n\n# the end\n");
}

TEST_CASE("rewrite: entries that change places keep their remarks") {
    const std::string text =
        head + "\n# first\n[[room]]\nid = \"a\"\n\n[[room]] # second\nid = \"b\"\n\n[[room]]\nid = \"c\"\n";
    CHECK(changed(text,
                  [](Survey& s) {
                      alter<Room>(s.rooms, [](auto& rows) { std::swap(rows[0], rows[1]), rows[1].title = "A"; });
                  }) == head +
                            "\n[[room]] # second\nid = \"b\"\n\n# first\n[[room]]\nid = \"a\"\ntitle = "
                            "\"A\"\n\n[[room]]\nid = \"c\"\n");
}

TEST_CASE("rewrite: rounds in another order move whole, and one that is changed is the same round") {
    const std::string text = head + "[[round]]\noff = []\nby = \"x\" # one\n[[round]]\noff = []\nby = \"y\" # two\n";
    CHECK(changed(text, [](Survey& s) { alter<Round>(s.rounds, [](auto& rows) { std::swap(rows[0], rows[1]); }); }) ==
          head + "[[round]]\noff = []\nby = \"y\" # two\n[[round]]\noff = []\nby = \"x\" # one\n");
    CHECK(changed(text, [](Survey& s) { alter<Round>(s.rounds, [](auto& rows) { rows[1].by = "z"; }); }) ==
          head + "[[round]]\noff = []\nby = \"x\" # one\n[[round]]\noff = []\nby = \"z\" # two\n");
}

TEST_CASE("rewrite: a breaker that moves is one line, and so is each place that names it") {
    const std::string text = head +
                             "[[panel]]\nid = \"M\"\n\n# kitchen\n[[breaker]]\npanel = \"M\"\nspaces = [5] # left\n"
                             "[[breaker]]\npanel = \"M\"\nspaces = [7]\ntied_with = [ 'M:5' ]\n"
                             "[[circuit]]\nid = \"c\"\nbreaker = 'M:5' # seen\n[[reading]]\nof = \"breaker:M:5/A\"\n";
    std::string moved = text;
    for (const auto& [from, to] :
         {std::pair{"[5]", "[9]"}, {"[ 'M:5' ]", "[ \"M:9\" ]"}, {"= 'M:5' #", "= 'M:9' #"}, {":M:5/A", ":M:9/A"}})
        moved.replace(moved.find(from), std::string(from).size(), to);
    CHECK(after(text, move_breaker("M:5", {"M", {9}, {}})) == moved);
}

TEST_CASE("rewrite: keys of inner tables in braces, dotted, under a header of their own") {
    const auto wired = [](const std::string& wire) { return head + "[[circuit]]\nid = \"c\"\n" + wire; };
    const auto edit = [](Survey& s) {
        alter<Circuit>(s.circuits, [](auto& rows) { rows[0].wire->size = "10", rows[0].wire->method = "cable"; });
    };
    CHECK(changed(wired("wire = { size = '12', metal = \"cu\" } # w\n"), edit) ==
          wired("wire = { size = '10', metal = \"cu\", method = \"cable\" } # w\n"));
    CHECK(changed(wired("wire.size = '12'\nwire . metal = \"cu\" # w\nnote = \"n\"\n"), edit) ==
          wired("wire.size = '10'\nwire . metal = \"cu\" # w\nwire.method = \"cable\"\nnote = \"n\"\n"));
    CHECK(changed(wired("[circuit.wire] # w\nsize = '12'\n\n[[room]]\nid = \"r\"\n"), edit) ==
          wired("[circuit.wire] # w\nsize = '10'\nmethod = \"cable\"\n\n[[room]]\nid = \"r\"\n"));
    CHECK(changed(wired("wire = {}\n"), edit) == wired("wire = { size = \"10\", method = \"cable\" }\n"));
}

TEST_CASE("rewrite: an inner table that goes, in every form") {
    const auto edit = [](Survey& s) { alter<Circuit>(s.circuits, [](auto& rows) { rows[0].wire.reset(); }); };
    const std::string bare = head + "[[circuit]]\nid = \"c\"\n";
    for (const char* wire : {"wire = { size = '12' } # w\n", "wire.size = '12'\nwire.metal = \"cu\"\n", "wire = {}\n",
                             "[circuit.wire]\nsize = '12'\n"})
        CHECK(changed(bare + wire, edit) == bare);
    CHECK(changed(head + "circuit = [{ id = \"c\", wire = { size = '12' } }]\n", edit) ==
          head + "circuit = [{ id = \"c\" }]\n");
    CHECK(changed(head + "circuit = [{ wire.size = '12', wire.metal = \"cu\", id = \"c\" }]\n", edit) ==
          head + "circuit = [{ id = \"c\" }]\n");
}

TEST_CASE("rewrite: lists over many lines keep what stands beside their elements") {
    const auto off = [](const std::string& list) {
        return head +
               "[[panel]]\nid = \"M\"\n[[breaker]]\npanel = \"M\"\nspaces = [1]\n[[breaker]]\npanel = \"M\"\nspaces = "
               "[2]\n"
               "[[breaker]]\npanel = \"M\"\nspaces = [3]\n[[round]]\noff = " +
               list + " # all\n";
    };
    const auto to = [](Ids ids) {
        return [ids](Survey& s) { alter<Round>(s.rounds, [&](auto& rows) { rows[0].off = ids; }); };
    };
    const std::string lines = "[\n  'M:1', # one\n  # the second\n  'M:2', # two\n]";
    CHECK(changed(off(lines), to({"M:1", "M:2", "M:3"})) ==
          off("[\n  'M:1', # one\n  # the second\n  'M:2', # two\n  \"M:3\",\n]"));
    CHECK(changed(off(lines), to({"M:3", "M:1", "M:2"})) ==
          off("[\n  \"M:3\",\n  'M:1', # one\n  # the second\n  'M:2', # two\n]"));
    CHECK(changed(off(lines), to({"M:2"})) == off("[\n  # the second\n  'M:2', # two\n]"));
    CHECK(changed(off(lines), to({"M:1"})) == off("[\n  'M:1', # one\n  # the second\n]"));
    CHECK(changed(off(lines), to({})) == off("[]"));
    CHECK(changed(off("[ 'M:1','M:2' ]"), to({"M:1", "M:3", "M:2"})) == off("[ 'M:1',\"M:3\", 'M:2' ]"));
    CHECK(changed(off("['M:1',]"), to({"M:1", "M:3"})) == off("['M:1', \"M:3\",]"));
    CHECK(changed(off("[]"), to({"M:3"})) == off("[\"M:3\"]"));
    CHECK(changed(off("[\n  'M:1' # last\n]"), to({"M:1", "M:3"})) == off("[\n  'M:1', # last\n  \"M:3\"\n]"));
}

TEST_CASE("rewrite: tables in a list of the root") {
    const std::string text = head + "room = [\n  { id = \"a\" }, # one\n  { id = \"b\", floor = '1' }\n]\n";
    CHECK(after(text, add_room(room("c"))) ==
          head + "room = [\n  { id = \"a\" }, # one\n  { id = \"b\", floor = '1' },\n  { id = \"c\" }\n]\n");
    CHECK(after(text, remove_room("a")) == head + "room = [\n  { id = \"b\", floor = '1' }\n]\n");
    CHECK(changed(text, [](Survey& s) { alter<Room>(s.rooms, [](auto& rows) { rows[1].floor = "2"; }); }) ==
          head + "room = [\n  { id = \"a\" }, # one\n  { id = \"b\", floor = '2' }\n]\n");
}

TEST_CASE("rewrite: a single dwelling becomes a list of them") {
    const auto second = [](Survey& s) {
        alter<Dwelling>(s.dwellings, [](auto& rows) { rows.push_back(named<Dwelling>("b")); });
    };
    CHECK(changed(head + "[ dwelling ] # one\nunits = 2\n", second) ==
          head + "[[ dwelling ]] # one\nunits = 2\n\n[[dwelling]]\nid = \"b\"\n");
    CHECK(changed(head + "dwelling.units = 2 # one\n\n# end\n", second) ==
          head + "\n# end\n\n[[dwelling]]\nid = \"dwelling\"\nunits = 2\n\n[[dwelling]]\nid = \"b\"\n");
}

TEST_CASE("rewrite: keys in quotes, tables of one's own keys, lengths in another unit") {
    const std::string text =
        head +
        "[[panel]]\nid = \"M\"\n[[recording]]\nfile = \"a\"\n[recording.columns]\n\"L1 (A)\" = 'panel:M/A' # one\n"
        "[recording.columns.P1]\nof = \"panel:M\"\nunit = \"kW\" # two\n";
    std::string expected = text;
    expected.replace(expected.find("'panel:M/A'"), 11, "\"panel:M/B\"");
    expected.replace(expected.find("\"kW\""), 4, "\"W\"");
    CHECK(changed(text, [](Survey& s) {
              alter<Recording>(s.recordings, [](auto& rows) {
                  rows[0].columns.at("L1 (A)").of.legs = "B";
                  rows[0].columns.at("P1").unit = "W";
              });
          }) == expected);
    CHECK(changed(head + "[[outlet]]\nid = \"o\"\nrun_ft = 11 # paced\n", [](Survey& s) {
              alter<Outlet>(s.outlets, [](auto& rows) { rows[0].run = Length{3.5, true}; });
          }) == head + "[[outlet]]\nid = \"o\"\nrun_m = 3.5\n");
}

TEST_CASE("rewrite: a table that was only implied gets its header") {
    CHECK(changed(head + "[grounding.gec]\nsize = \"4\"\n", [](Survey& s) { s.grounding->bonded = true; }) ==
          head + "[grounding]\nbonded = true\n[grounding.gec]\nsize = \"4\"\n");
    CHECK(changed(head + "mapping.misread = 0.1\n", [](Survey& s) { s.mapping->misread.reset(); }) ==
          head + "\n[mapping]\n");
}

TEST_CASE("rewrite: a survey that breaks the laws of the file is never given as a text") {
    const std::string text = head + "[[circuit]]\nid = \"c\"\n";
    const Survey before = survey_of(text);
    Survey broken = before;
    alter<Circuit>(broken.circuits, [](auto& rows) { rows[0].breakers = {"nowhere"}; });
    CHECK_THROWS_AS(rewrite(text, before, broken), NotWhatWasMeant);
    CHECK_THROWS_AS(rewrite(head, before, broken), std::exception);  // not the text of that survey
}
