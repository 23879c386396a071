// SPDX-License-Identifier: MIT
// Local rules: what they change, how it is cited from then on, and every complaint with its place.
#include "rules/amend.hpp"

#include <doctest/doctest.h>

#include <stdexcept>

#include "rules/lookups.hpp"

using namespace doorcard;

namespace {

const RuleBook& code() {
    static const RuleBook built_in = built_in_book("NEC-2023").value();
    return built_in;
}

const std::string head = "format = 1\nbase = \"NEC-2023\"\n";

std::string in_table(const std::string& table, const std::string& row, const std::string& value,
                     const std::string& more = "") {
    return "[[amend]]\ntable = \"" + table + "\"\nrow = { " + row + " }\nvalue = " + value +
           "\nsource = \"County ordinance 12-34\"\n" + more;
}
std::string in_fact(const std::string& fact, const std::string& value) {
    return "[[amend]]\nfact = \"" + fact + "\"\nvalue = " + value + "\nsource = \"County ordinance 12-34\"\n";
}

RuleBook amended(const std::string& text) { return amend(code(), head + text).value(); }

/// Every complaint, a line each; "" where the rules are right.
std::string complaints(const std::string& text) {
    const auto book = amend(code(), text);
    std::string lines;
    if (book) return lines;
    for (const Complaint& complaint : book.error()) lines += complaint_line("c.toml", complaint) + "\n";
    return lines;
}

const std::string twelve = in_table("nec-240-4-d", "size = \"12\", metal = \"cu\"", "15");

}  // namespace

TEST_CASE("an amended row: the lookup gives it, its neighbours stay") {
    const RuleBook book = amended(twelve);
    CHECK(small_conductor_device(book, "12", Metal::copper)->value == 15);
    CHECK(small_conductor_device(book, "10", Metal::copper)->value == 30);
    CHECK(small_conductor_device(code(), "12", Metal::copper)->value == 20);
    CHECK(book.edition() == "NEC-2023");
}

TEST_CASE("an amended figure is cited with the amendment's source, and what it amends") {
    const RuleBook facts = amended(in_fact("continuous-factor", "1.5"));
    CHECK(facts.figure("continuous-factor") == 1.5);
    CHECK(facts.cite("continuous-factor").text() == "County ordinance 12-34, amending NEC 2023 210.20(A)");
    CHECK(facts.cite("nec-210-20-a").text() == "County ordinance 12-34, amending NEC 2023 210.20(A)");
    CHECK(facts.cite("nec-210-19-a").text() == "NEC 2023 210.19(A)");
    CHECK(amended(twelve).cite("nec-240-4-d").text() ==
          "County ordinance 12-34, amending NEC 2023 240.4(D) for size 12, metal cu");
    CHECK(amended("[option]\nmeter-tolerance = 0.05\n").cite("meter-tolerance").text() ==
          "local rules, amending common practice");
}

TEST_CASE("the citation in Spanish") {
    const Citation source{"County ordinance 12-34", "", false, "common practice", ""};
    CHECK(source.message().parts.size() == 2);
    CHECK(std::get<Message>(source.message().parts[1]).pattern == "common practice");
    CHECK(Citation{"NEC 2023", "240.4(D)"}.message() == verbatim("NEC 2023 240.4(D)"));
}

TEST_CASE("two rows of one table: the citation names both") {
    const RuleBook book = amended(twelve + in_table("nec-240-4-d", "size = \"10\", metal = \"cu\"", "25"));
    CHECK(book.cite("nec-240-4-d").text() ==
          "County ordinance 12-34, amending NEC 2023 240.4(D) for size 12, metal cu; size 10, metal cu");
    CHECK(book.amendments().size() == 2);
}

TEST_CASE("a column is named where several are left, and the size of a conductor can be amended") {
    const RuleBook ampacity = amended(in_table("nec-310-16", "size = \"8\"", "38", "column = \"cu60\"\n"));
    CHECK(listed_ampacity(ampacity, "8", Metal::copper, 60)->value == 38);
    CHECK(listed_ampacity(ampacity, "8", Metal::copper, 75)->value == 50);
    CHECK(ampacity.amendments().front().part == "size 8, cu60");
    const RuleBook service = amended(in_table("nec-310-12", "rating = 100", "\"3\"", "column = \"cu\"\n"));
    CHECK(dwelling_service_size(service, Metal::copper, Amperes(100)) == "3");
    CHECK_FALSE(service.amendments().front().laxer);
}

TEST_CASE("what makes a rule laxer than the code is allowed, and marked") {
    CHECK(amended(in_table("nec-240-4-d", "size = \"12\", metal = \"cu\"", "25")).amendments().front().laxer);
    CHECK_FALSE(amended(twelve).amendments().front().laxer);
    CHECK(amended(in_fact("continuous-factor", "1.1")).amendments().front().laxer);
    CHECK_FALSE(amended(in_fact("continuous-factor", "1.3")).amendments().front().laxer);
    CHECK(amended(in_table("nec-310-12", "rating = 100", "\"6\"", "column = \"cu\"\n")).amendments().front().laxer);
    CHECK_FALSE(amended("[option]\nmeter-tolerance = 0.3\n").amendments().front().laxer);
}

TEST_CASE("options: each has its usual value until local rules choose another") {
    CHECK(code().option("ev_220_82") == "outside-100");
    CHECK(code().option("ev_220_83") == "outside-100");
    CHECK(code().option("existing_hvac_220_83") == "outside-100");
    CHECK(code().option("ev_feeder") == "100");
    CHECK(code().option("new_load_220_87") == "continuous-125");
    CHECK(code().option("pv_220_87") == "no");
    const RuleBook book =
        amended("source = \"City of Elsewhere\"\n[option]\nev_220_82 = \"pool-40\"\nev_feeder = 125\n");
    CHECK(book.option("ev_220_82") == "pool-40");
    CHECK(book.option("ev_feeder") == "125");
    CHECK(book.amendments().size() == 2);
    CHECK(book.amendments().front().source.text() == "City of Elsewhere, amending NEC 2023 220.82");
    CHECK(amended("[option]\nev_220_82 = \"outside-100\"\n").amendments().empty());
    CHECK_THROWS_AS(code().option("no_such"), std::out_of_range);
}

TEST_CASE("practice figures are options, with hyphens or underscores") {
    CHECK(amended("[option]\nlegs-imbalance-percent = 30\n").figure("legs-imbalance-percent") == 30);
    CHECK(amended("[option]\nlegs_imbalance_percent = 30\n").figure("legs-imbalance-percent") == 30);
    CHECK(amended(in_fact("legs-imbalance-percent", "30")).cite("legs-imbalance-percent").text() ==
          "County ordinance 12-34, amending common practice");
    CHECK(complaints(head + "[option]\ncontinuous_factor = 1.5\n") ==
          "c.toml:4:1: \"continuous-factor\" is a figure of NEC 2023 210.20(A); write [[amend]] with fact = "
          "\"continuous-factor\" and its source\n");
}

TEST_CASE("rules laid over rules: the later holds, the rest of the earlier stays") {
    RuleBook county = amended(twelve + in_fact("continuous-factor", "1.5"));
    const RuleBook city = amend(std::move(county), head +
                                                       "[[amend]]\nfact = \"continuous-factor\"\nvalue = 1.4\n"
                                                       "source = \"City code 7\"\n")
                              .value();
    CHECK(city.figure("continuous-factor") == 1.4);
    CHECK(city.cite("nec-210-20-a").text() == "City code 7, amending NEC 2023 210.20(A)");
    CHECK(small_conductor_device(city, "12", Metal::copper)->value == 15);
    REQUIRE(city.amendments().size() == 2);
    CHECK(std::get<double>(city.amendments().back().was) == 1.25);
}

TEST_CASE("complaints: form, base, and a syntax error that stands alone") {
    CHECK(complaints("") ==
          "c.toml:1:1: the file has no \"format\"; write format = 1 at its top\n"
          "c.toml:1:1: the file has no \"base\"; write base = \"NEC-2023\"\n");
    CHECK(complaints("format = 2\nbase = \"NEC-2020\"\n") ==
          "c.toml:1:10: \"format\" is not 1; write format = 1, the one that this doorcard reads\n"
          "c.toml:2:8: these rules amend NEC-2020, the survey is judged by NEC-2023; take rules with base = "
          "\"NEC-2023\", or let the survey say rules = \"NEC-2020\"\n");
    CHECK(complaints(head + "[amend").starts_with("c.toml:3:7: "));
    CHECK(complaints(head + "optoin = 1\n") ==
          "c.toml:3:1: unknown key \"optoin\" at the top; did you mean \"option\"?\n");
    CHECK(complaints(head + "amend = 1\noption = 2\n") ==
          "c.toml:3:1: \"amend\" is no list; write [[amend]]\nc.toml:4:1: \"option\" is no table; write [option]\n");
}

TEST_CASE("complaints: tables, figures and options that are not there name the nearest") {
    CHECK(complaints(head + in_table("nec-240-4d", "size = \"12\"", "15")) ==
          "c.toml:4:9: there is no table \"nec-240-4d\"; did you mean \"nec-240-4-d\"?\n");
    CHECK(complaints(head + in_fact("continous-factor", "1.5")) ==
          "c.toml:4:8: there is no figure \"continous-factor\"; did you mean \"continuous-factor\"?\n");
    CHECK(complaints(head + in_fact("nec-310-16", "1.5")) ==
          "c.toml:4:8: there is no figure \"nec-310-16\"; that is a table: table = \"nec-310-16\"\n");
    CHECK(complaints(head + in_table("meter-tolerance", "a = 1", "1")) ==
          "c.toml:4:9: there is no table \"meter-tolerance\"; that is a single figure: fact = \"meter-tolerance\"\n");
    CHECK(complaints(head + "[option]\nev_220_28 = \"pool-40\"\nev_220_82 = \"pool-4\"\n") ==
          "c.toml:4:1: there is no option \"ev_220_28\"; did you mean \"ev_220_82\"?\n"
          "c.toml:5:13: \"pool-4\" is no value of ev_220_82; did you mean \"pool-40\"?\n");
}

TEST_CASE("complaints: a row that none or several match") {
    CHECK(complaints(head + in_table("nec-240-4-d", "size = \"9\"", "15")) ==
          "c.toml:5:16: no row of nec-240-4-d has size 9; there is 18, 16, 14, 12, 10\n");
    CHECK(complaints(head + in_table("nec-240-4-d", "size = \"14\"", "15")) ==
          "c.toml:5:7: 2 rows of nec-240-4-d are so; say more of the one meant: size 14, metal cu, amps 15; size 14, "
          "metal cca, amps 10\n");
    CHECK(complaints(head + in_table("nec-240-4-d", "size = 14", "15")) ==
          "c.toml:5:16: \"size\" is no text; write it in quotes, as the table has it\n");
    CHECK(complaints(head + in_table("nec-240-4-d", "sise = \"14\"", "15")) ==
          "c.toml:5:9: nec-240-4-d has no column \"sise\"; did you mean \"size\"?\n");
    CHECK(complaints(head + in_table("nec-240-4-d", "", "15")) ==
          "c.toml:5:7: \"row\" says nothing; columns: size, metal, amps\n");
    CHECK(complaints(head + in_table("nec-310-16", "size = \"8\"", "15")) ==
          "c.toml:5:1: 6 columns are left to change; say more of the row, or write column = one of cu60, cu75, cu90, "
          "al60, al75, al90\n");
    CHECK(complaints(head + in_table("nec-310-16", "size = \"8\"", "15", "column = \"size\"\n")) ==
          "c.toml:8:10: \"size\" is no column to change; one of cu60, cu75, cu90, al60, al75, al90\n");
}

TEST_CASE("complaints: values that cannot be") {
    CHECK(complaints(head + in_fact("continuous-factor", "125")) ==
          "c.toml:5:9: 125 is out of bounds for continuous-factor; from 0.0625 to 25; the code has 1.25, in factor\n");
    for (const char* value : {"0", "-1.25", "nan", "inf", "1e300"})
        CHECK(complaints(head + in_fact("continuous-factor", value)).find("out of bounds") != std::string::npos);
    CHECK(complaints(head + in_fact("continuous-factor", "\"1.5\"")) ==
          "c.toml:5:9: \"value\" is of another kind than the figure that it amends; it is 1.25\n");
    CHECK(complaints(head + "[option]\nmismatch-lag-step = 0.001\n").find("from 5 to 45") != std::string::npos);
    CHECK(complaints(head + in_table("nec-310-12", "rating = 100", "\"5\"", "column = \"cu\"\n"))
              .find("no size of conductor") != std::string::npos);
    CHECK(complaints(head + in_table("nec-310-16", "size = \"14\"", "15", "column = \"al60\"\n")) ==
          "c.toml:6:9: nec-310-16 has no figure there; a dash of the code cannot be amended\n");
}

TEST_CASE("complaints: what cannot be amended, and one figure twice") {
    for (const char* fact : {"terminal-low-c", "base-ambient-c", "voltage-base"})
        CHECK(complaints(head + in_fact(fact, "75")).find("cannot be amended") != std::string::npos);
    CHECK(complaints(head + in_table("insulation-columns", "letters = \"TW\"", "75")).find("cannot be amended") !=
          std::string::npos);
    CHECK(complaints(head + in_table("nec-240-6-a", "amps = 10", "15")).find("is a list") != std::string::npos);
    CHECK(complaints(head + twelve + twelve) ==
          "c.toml:11:9: nec-240-4-d is amended a second time; the first is in line 6\n");
}

TEST_CASE("complaints: an amendment without source, value or target, and more than one can say") {
    CHECK(complaints(head + "[[amend]]\n") ==
          "c.toml:3:1: no \"value\"; write what holds here: value = 15\n"
          "c.toml:3:1: no \"source\"; write who says so: source = \"County ordinance 12-34\"\n"
          "c.toml:3:1: no \"table\" and no \"fact\"; name one: table = \"nec-240-4-d\" with its row, or fact = "
          "\"continuous-factor\"\n");
    CHECK(complaints(head + in_fact("continuous-factor", "1.5") + "row = { size = \"12\" }\n") ==
          "c.toml:7:1: a fact has no row; take it out, or name a table\n");
    CHECK(complaints(head + in_fact("continuous-factor", "1.5") + "sorce = \"x\"\n").find("did you mean \"source\"?") !=
          std::string::npos);
    std::string many = head;
    for (int i = 0; i < 80; ++i) many += "[[amend]]\n";
    CHECK(amend(code(), many).error().size() == 50);
}

TEST_CASE("local rules over the edition 2020") {
    const RuleBook older = built_in_book("NEC-2020").value();
    const auto book = amend(older, "format = 1\nbase = \"NEC-2020\"\n" + in_fact("cord-share", "0.7"));
    REQUIRE(book);
    CHECK(book->cite("nec-210-23-b-1").text() == "County ordinance 12-34, amending NEC 2020 210.23(A)(1)");
    CHECK_FALSE(amend(older, head));
}
