// SPDX-License-Identifier: MIT
#include "desk/pasted_list.hpp"

#include "desk/typing.hpp"

using namespace typing;

namespace {

std::string rows_of(const Survey& survey) {
    std::string rows;
    for (const Breaker& breaker : survey.breakers) {
        rows += (rows.empty() ? "" : "; ") + breaker.id;
        if (breaker.amps) rows += fmt::format(" {:g} A", breaker.amps->value);
        if (breaker.state == BreakerState::spare) rows += " spare";
        if (breaker.old_label) rows += " '" + *breaker.old_label + "'";
        for (const Circuit& circuit : survey.circuits)
            if (circuit.breakers == Ids{breaker.id})
                rows += " " + circuit.id + (circuit.purpose ? "=" + *circuit.purpose : "") + " " +
                        (circuit.traced ? circuit.traced->how.value_or("") : "");
    }
    return rows;
}

std::string pasted_on(const Written& panel, const std::string& text) {
    const auto pasted = pasted_list(panel.survey, "MAIN", text);
    if (!pasted) return "refused: " + refusal(pasted);
    std::string said_all =
        fmt::format("{} ({}): {}", said(pasted->edit.name), pasted->rows, rows_of(after(panel, pasted->edit)));
    for (const Complaint& one : pasted->refused) said_all += "\n" + one.wrong;
    return said_all;
}

const std::string some = R"(empty_spaces = [7]
[[breaker]]
panel = "MAIN"
spaces = [5]
[[breaker]]
panel = "MAIN"
spaces = [9]
half = "a"
[[circuit]]
id = "MAIN-1"
breaker = "MAIN:5"
)";

}  // namespace

TEST_CASE("a list pasted onto the face becomes rows of its panel: claims, all of them") {
    CHECK(pasted_on(panel_of(12), "1\tKitchen\t20\n2,4\tRange\t50\n3\tSpare\t15\n6\tSpace\t\n") ==
          "paste 4 rows (4): MAIN:1 20 A 'Kitchen' MAIN-1 old-directory; MAIN:2+4 50 A 'Range' MAIN-2+4 old-directory; "
          "MAIN:3 15 A spare");
    CHECK(pasted_on(panel_of(12), "12 Kitchen counter") ==
          "paste a row (1): MAIN:12 'Kitchen counter' MAIN-12 old-directory");
    CHECK(pasted_on(panel_of(12), "Ckt;Description;Amps\n1;Hall;15\n") ==
          "paste a row (1): MAIN:1 15 A 'Hall' MAIN-1 old-directory");
}

TEST_CASE("what the panel has is not written over: the rest of the list goes in") {
    CHECK(pasted_on(panel_of(12, some),
                    "1\tHall\t15\n5\tBath\t20\n7\tPorch\t20\n9\tAttic\t20\n11\tDen\t15\n99\tX\t20\n") ==
          "paste 2 rows (2): MAIN:5 MAIN-1 ; MAIN:9a; MAIN:1 15 A 'Hall' MAIN-1-2 old-directory; "
          "MAIN:11 15 A 'Den' MAIN-11 old-directory\n"
          "line 6: there is no space 99 in a panel of 12\n"
          "5: breaker MAIN:5 sits there already\n"
          "7: somebody looked, and noted it as empty\n"
          "9: breaker MAIN:9a sits there already");
    CHECK(pasted_on(panel_of(12, some), "5\tSpace\t\n7\tSpace\t\n11\tSpace\t\n") ==
          "paste a row (1): MAIN:5 MAIN-1 ; MAIN:9a\n5: the list has it empty, and breaker MAIN:5 sits there");
    CHECK(pasted_on(panel_of(12, "all_breakers_entered = true"), "1 Hall\n") ==
          "refused: 1: somebody looked, and noted it as empty; type it on its row, if one is there");
}

TEST_CASE("rows of another panel, and poles that do not lie below one another, are named") {
    CHECK(pasted_on(panel_of(12), "space,description,amps,panel\n1,Hall,15,SHOP\n3,Den,15,MAIN\n") ==
          "paste a row (1): MAIN:3 15 A 'Den' MAIN-3 old-directory\n1 is of panel SHOP, and MAIN is shown");
    CHECK(pasted_on(panel_of(12, "numbering = \"single-column\""), "1,3\tRange\t50\n2\tDen\t15\n") ==
          "paste a row (1): MAIN:2 15 A 'Den' MAIN-2 old-directory\n"
          "1+3: these spaces do not lie below one another here");
    CHECK(pasted_on(panel_of(12, "turned_over = true"), "1,3\tRange\t50\n") ==
          "paste a row (1): MAIN:1+3 50 A 'Range' MAIN-1+3 old-directory");
}

TEST_CASE("loads of a list come along under names of their own") {
    const Written panel = panel_of(12, "[[outlet]]\nid = \"MAIN-1\"\n");
    const auto pasted = pasted_list(panel.survey, "MAIN", "space,description,va\n1,Hall,1200\n3,Den,600\n");
    REQUIRE_MESSAGE(pasted, refusal(pasted));
    const Survey survey = after(panel, pasted->edit);
    REQUIRE(survey.loads.size() == 2);
    CHECK(survey.loads[0].id == "MAIN-1-2");
    CHECK(survey.loads[0].circuit == "MAIN-1");
    CHECK(survey.loads[1].va == VoltAmperes(600));
}

TEST_CASE("a paste that finds nothing to put in is refused, and does nothing when it no longer fits") {
    CHECK(pasted_on(panel_of(12), "") == "refused: no row of a panel is in it; paste lines such as 12 Kitchen counter");
    CHECK(refusal(pasted_list(panel_of(12).survey, "SHOP", "1 Hall")) ==
          "there is no such panel; choose one that is there");
    const Written panel = panel_of(12);
    const auto pasted = pasted_list(panel.survey, "MAIN", "1 Hall\n3 Den\n");
    REQUIRE(pasted);
    CHECK_FALSE(pasted->edit.apply(after(panel, pasted->edit)));
}

TEST_CASE("several lines, or tabs, are a list; one line is what is typed on a row") {
    CHECK(looks_like_list("1\tHall"));
    CHECK(looks_like_list("1 Hall\n3 Den"));
    CHECK_FALSE(looks_like_list("20 Kitchen?"));
    CHECK_FALSE(looks_like_list("20 Kitchen?\r\n"));
    CHECK_FALSE(looks_like_list(""));
}
