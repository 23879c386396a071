// SPDX-License-Identifier: MIT
#include "desk/face_places.hpp"

#include "desk/typing.hpp"

using namespace typing;

namespace {

std::string named(const std::optional<Position>& at) { return at ? name_of(*at) : "-"; }

std::string side_of(const Survey& survey, bool left) {
    std::string side;
    for (const FacePlaceRun& run : face_side(survey, "MAIN", left)) side += (side.empty() ? "" : " ") + name_of(run);
    return side;
}

const std::string some = R"(
[[breaker]]
panel = "MAIN"
spaces = [2, 4]
[[breaker]]
panel = "MAIN"
spaces = [3]
half = "b"
)";

}  // namespace

TEST_CASE("the face from the top: handles as they hang, halves one over the other") {
    struct Row {
        const char *panel, *left, *right;
    };
    const Row rows[] = {{"", "1 3a 3b 5", "2+4 6"},
                        {"numbering = \"odd-right\"", "2+4 6", "1 3a 3b 5"},
                        {"turned_over = true", "5 3b 3a 1", "6 4+2"}};
    for (const Row& row : rows) {
        CAPTURE(row.panel);
        const Survey survey = panel_of(6, row.panel + some).survey;
        CHECK(side_of(survey, true) == row.left);
        CHECK(side_of(survey, false) == row.right);
    }
    const std::string half = "\n[[breaker]]\npanel = \"MAIN\"\nspaces = [3]\nhalf = \"b\"\n";
    CHECK(side_of(panel_of(6, "numbering = \"single-column\"" + half).survey, true) == "1 2 3a 3b 4 5 6");
    CHECK(side_of(panel_of(6, "numbering = \"down-left\"" + half).survey, true) == "1 2 3a 3b");
    CHECK(side_of(panel_of(6, "numbering = \"down-left\"" + half).survey, false) == "4 5 6");
    CHECK(face_side(panel_of(6).survey, "SHOP", true).empty());
}

TEST_CASE("arrow keys walk the face: down the left, then down the right, and across") {
    const Survey survey = panel_of(6, some).survey;
    const char* down[] = {"1", "3a", "3b", "5", "2", "6", "-"};
    std::optional<Position> at = Position{1};
    for (const char* name : down) {
        CHECK(named(at) == name);
        if (at) at = below(survey, "MAIN", *at);
    }
    CHECK(named(below(survey, "MAIN", {4})) == "6");
    CHECK(named(above(survey, "MAIN", {6})) == "2");
    CHECK(named(above(survey, "MAIN", {2})) == "5");
    CHECK(named(above(survey, "MAIN", {1})) == "-");
    CHECK(named(across(survey, "MAIN", {1})) == "2");
    CHECK(named(across(survey, "MAIN", {3, 'b'})) == "2");
    CHECK(named(across(survey, "MAIN", {6})) == "5");
    CHECK(named(below(survey, "MAIN", {99})) == "-");
    CHECK(named(above(survey, "SHOP", {1})) == "-");
}

TEST_CASE("which spaces a handle takes from one down") {
    const Survey survey = panel_of(6, some).survey;
    CHECK(spaces_down(survey, "MAIN", 1, 2) == std::vector{1, 3});
    CHECK(spaces_down(survey, "MAIN", 1, 3) == std::vector{1, 3, 5});
    CHECK_FALSE(spaces_down(survey, "MAIN", 5, 2));
    CHECK_FALSE(spaces_down(survey, "SHOP", 1, 1));
    CHECK(spaces_down(panel_of(6, "turned_over = true").survey, "MAIN", 5, 2) == std::vector{3, 5});
    CHECK_FALSE(breaker_at(survey, "MAIN", {3}));
    CHECK(breaker_at(survey, "MAIN", {3, 'b'})->id == "MAIN:3b");
}
