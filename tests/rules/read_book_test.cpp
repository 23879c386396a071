// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <stdexcept>

#include "rules/book.hpp"

using namespace doorcard;

namespace {

/// Every complaint about a text as one string, a line each; "" where it loads.
std::string complaints(const std::string& text) {
    const Outcome<RuleBook> book = read_book("NEC-2023", text);
    std::string lines;
    if (book) return lines;
    for (const Complaint& complaint : book.error()) lines += complaint_line("t.toml", complaint) + "\n";
    return lines;
}

const char* const small_book = R"toml([book]
editions = ["NEC-2023", "NEC-2020"]

[[table]]
id = "some-table"
title = "Amperes of sizes"
unit = "A"
source = { standard = "NEC 2023", place = "Table 1" }
columns = ["size", "cu"]
rows = [
    ["12", 20],
    ["10", 30.5],
]

[[fact]]
id = "some-fact"
title = "A share"
value = 0.5
unit = "factor"
source = { practice = true }

[[rule]]
id = "some-rule"
source = { standard = "NEC 2023", place = "210.4(B)" }
)toml";

}  // namespace

TEST_CASE("a book is read: tables, facts and rules with their citations") {
    const RuleBook book = read_book("NEC-2020", small_book).value();
    CHECK(book.edition() == "NEC-2020");
    const RuleTable& table = book.table("some-table");
    CHECK(table.title == "Amperes of sizes");
    CHECK(table.unit == "A");
    CHECK(table.source.text() == "NEC 2023 Table 1");
    CHECK(table.rows.size() == 2);
    CHECK(table.text(1, 0) == "10");
    CHECK(table.number(1, table.column("cu")) == 30.5);
    CHECK_THROWS_AS(table.number(0, 0), std::bad_variant_access);
    CHECK_THROWS_AS(table.number(2, 1), std::out_of_range);
    CHECK(book.figure("some-fact") == 0.5);
    CHECK(book.fact("some-fact").unit == "factor");
    CHECK(book.cite("some-fact").practice);
    CHECK(book.cite("some-rule").text() == "NEC 2023 210.4(B)");
    CHECK(editions_of(small_book) == std::vector<std::string>{"NEC-2023", "NEC-2020"});
}

TEST_CASE("a text over a base: its ids stand in the place of the base's, the rest stays") {
    const RuleBook base = read_book("NEC-2023", small_book).value();
    const RuleBook book = read_book("NEC-2023", R"([[fact]]
id = "some-rule"
title = "Now a figure"
value = 15
unit = "A"
source = { standard = "County ordinance 12-34", place = "section 2" }
)",
                                    base)
                              .value();
    CHECK(book.figure("some-rule") == 15);
    CHECK(book.cite("some-rule").text() == "County ordinance 12-34 section 2");
    CHECK(book.rules().empty());
    CHECK(book.table("some-table").rows.size() == 2);
}

TEST_CASE("a text for another edition is refused") {
    CHECK(complaints("[book]\neditions = [\"NEC-2020\"]\n") ==
          "t.toml:2:12: not for the edition NEC-2023; editions = [\"NEC-2023\"]\n");
    CHECK(complaints("[book]\n") == "t.toml:1:1: no 'editions'; give 'editions'\n");
    CHECK(complaints("book = 3\n") == "t.toml:1:8: 'book' is not a table; write [book]\n");
}

TEST_CASE("a syntax error stands alone, at its place") {
    const std::string said = complaints("[[rule]]\nid = \"a\nsource = 3\n");
    CHECK(said.starts_with("t.toml:2:"));
    CHECK(said.ends_with("; write it as TOML 1.0\n"));
    CHECK(editions_of("[book\n").empty());
}

TEST_CASE("no citation, no load: all that lack one, each at its header") {
    CHECK(complaints("[[rule]]\nid = \"a\"\n\n[[fact]]\nid = \"b\"\ntitle = \"t\"\nvalue = 1\nunit = \"A\"\n") ==
          "t.toml:1:1: no 'source'; give 'source'\n"
          "t.toml:4:1: no 'source'; give 'source'\n");
    CHECK(complaints("[[rule]]\nid = \"a\"\nsource = \"NEC\"\n") ==
          "t.toml:3:10: 'source' is not a citation; { standard = \"...\", place = \"...\" }\n");
    CHECK(complaints("[[rule]]\nid = \"a\"\nsource = { standard = \"NEC 2023\" }\n") ==
          "t.toml:3:10: no 'place'; give 'place'\n");
    CHECK(complaints("[[rule]]\nid = \"a\"\nsource = { standard = \"\", place = \"1\" }\n") ==
          "t.toml:3:23: 'standard' is not a text; write it in quotes, not empty\n");
    CHECK(complaints("[[rule]]\nid = \"a\"\nsource = { practice = false }\n") ==
          "t.toml:3:23: 'practice' is not true; true, or a standard and a place\n");
    CHECK(complaints("[[rule]]\nid = \"a\"\nsource = { practice = true, place = \"1\" }\n") ==
          "t.toml:3:29: unknown key 'place'; known here: practice\n");
}

TEST_CASE("a bad row is named with line and column") {
    const std::string head =
        "[[table]]\nid = \"t\"\ntitle = \"t\"\nunit = \"A\"\n"
        "source = { standard = \"NEC 2023\", place = \"1\" }\ncolumns = [\"size\", \"cu\"]\n";
    CHECK(complaints(head + "rows = [\n  [\"12\", 20],\n  [\"10\"],\n  7,\n]\n") ==
          "t.toml:9:3: a row of 1 cells; 2: size, cu\n"
          "t.toml:10:3: a row of 0 cells; 2: size, cu\n");
    CHECK(complaints(head + "rows = [\n  [\"12\", 20],\n  [\"10\", \"30\"],\n  [8, 40],\n]\n") ==
          "t.toml:9:10: text and numbers in column 'cu'; write all its cells as numbers, or all in quotes\n"
          "t.toml:10:4: text and numbers in column 'size'; write all its cells as numbers, or all in quotes\n");
    CHECK(complaints(head + "rows = [[\"12\", nan], [\"12\", true]]\n") ==
          "t.toml:7:16: not a finite number; write a number without quotes\n"
          "t.toml:7:29: not a finite number; write a number without quotes\n");
    CHECK(complaints(head + "rows = []\n") == "t.toml:7:8: 'rows' is no list of rows; [[...], [...]]\n");
    CHECK(complaints(head) == "t.toml:1:1: no 'rows'; give 'rows'\n");
}

TEST_CASE("bad columns are named") {
    const std::string head =
        "[[table]]\nid = \"t\"\ntitle = \"t\"\nunit = \"A\"\nsource = { practice = true }\nrows = [[1, 2]]\n";
    CHECK(complaints(head + "columns = [\"a\", \"a\"]\n") ==
          "t.toml:7:17: a second column 'a'; give each column its own name\n");
    CHECK(complaints(head + "columns = [\"a\", 3]\n") ==
          "t.toml:7:17: not the name of a column; write it in quotes, not empty\n");
    CHECK(complaints(head + "columns = \"a\"\n") == "t.toml:7:11: 'columns' is no list of names; [\"...\", \"...\"]\n");
}

TEST_CASE("ids are lower case, kebab-case and stand once") {
    CHECK(complaints("[[rule]]\nid = \"Nec_1\"\nsource = { practice = true }\n") ==
          "t.toml:2:6: 'Nec_1' is not an id; lower-case letters, digits and single hyphens\n");
    for (const char* bad : {"-a", "a-", "a--b", "a b", "a.b"})
        CHECK_FALSE(complaints("[[rule]]\nid = \"" + std::string(bad) + "\"\nsource = { practice = true }\n").empty());
    CHECK(complaints("[[rule]]\nid = \"a\"\nsource = { practice = true }\n"
                     "[[rule]]\nid = \"a\"\nsource = { practice = true }\n") ==
          "t.toml:5:6: a second 'a'; the first is in line 2\n");
}

TEST_CASE("unknown keys, values that are no numbers and lists that are none are refused, all in one run, in order") {
    CHECK(complaints("[[fact]]\nid = \"a\"\ntitle = \"t\"\nvalue = \"3\"\nunit = \"A\"\nnote = \"\"\n"
                     "source = { practice = true }\n[other]\n") ==
          "t.toml:4:9: not a finite number; write a number without quotes\n"
          "t.toml:6:1: unknown key 'note'; known here: id, title, value, unit, source, laxer, fixed, least, most\n"
          "t.toml:8:2: unknown key 'other'; known here: book, table, fact, rule, option, cite\n");
    CHECK(
        complaints("[[fact]]\nid = \"a\"\ntitle = \"t\"\nvalue = inf\nunit = \"A\"\nsource = { practice = true }\n") ==
        "t.toml:4:9: not a finite number; write a number without quotes\n");
    CHECK(complaints("rule = 3\n") == "t.toml:1:8: 'rule' is no list; write [[rule]]\n");
    CHECK(complaints("[rule]\nid = \"a\"\n") == "t.toml:1:1: 'rule' is no list; write [[rule]]\n");
    CHECK(complaints("rule = []\n") == "t.toml:1:8: 'rule' is no list; write [[rule]]\n");
}

TEST_CASE("columns of a place count code points") {
    CHECK(complaints("rule = [{ id = \"a\", source = { standard = \"Übungsnorm\", place = 3 } }]\n") ==
          "t.toml:1:65: 'place' is not a text; write it in quotes, not empty\n");
}

TEST_CASE("what local rules may do with a figure: which way is laxer, bounds, and what is fixed") {
    const RuleBook book = read_book("NEC-2023",
                                    "[[fact]]\nid = \"a\"\ntitle = \"t\"\nvalue = 3\nunit = \"A\"\n"
                                    "laxer = \"lower\"\nfixed = true\nleast = 1\nmost = 5\n"
                                    "source = { practice = true }\n")
                              .value();
    CHECK(book.fact("a").laxer == Laxer::lower);
    CHECK(book.fact("a").fixed);
    CHECK(book.fact("a").least == 1);
    CHECK(book.fact("a").most == 5);
    CHECK(complaints("[[fact]]\nid = \"a\"\ntitle = \"t\"\nvalue = 3\nunit = \"A\"\nlaxer = \"up\"\n"
                     "fixed = false\nleast = \"1\"\nsource = { practice = true }\n") ==
          "t.toml:6:9: 'laxer' is no way; \"higher\" or \"lower\"\n"
          "t.toml:7:9: 'fixed' is not true; true\n"
          "t.toml:8:9: not a finite number; write a number without quotes\n");
}

TEST_CASE("options have values, and one of them is the usual one") {
    const std::string option =
        "[[option]]\nid = \"ev\"\ntitle = \"t\"\nvalues = [\"in\", \"out\"]\n"
        "source = { standard = \"NEC\", place = \"220.82\" }\n";
    const RuleBook book = read_book("NEC-2020", option + "usual = \"out\"\n").value();
    CHECK(book.option("ev") == "out");
    CHECK(book.options().at("ev").source.text() == "NEC 2020 220.82");
    CHECK(complaints(option + "usual = \"none\"\n") ==
          "t.toml:1:1: 'usual' of ev is none of its values; take one of 'values'\n");
}

TEST_CASE("a text cites otherwise what the base has, and complains about what it has not") {
    const RuleBook base = read_book("NEC-2020", small_book).value();
    const auto cite = [](const std::string& id) {
        return "[[cite]]\nid = \"" + id + "\"\nsource = { standard = \"NEC\", place = \"9.9\" }\n";
    };
    const RuleBook book =
        read_book("NEC-2020", cite("some-table") + cite("some-fact") + cite("some-rule"), base).value();
    for (const char* id : {"some-table", "some-fact", "some-rule"}) CHECK(book.cite(id).text() == "NEC 2020 9.9");
    CHECK(book.figure("some-fact") == 0.5);
    CHECK(complaints(cite("some-table")) ==
          "t.toml:2:6: there is no 'some-table' to cite otherwise; name what is there\n");
}
