// SPDX-License-Identifier: MIT
// A second way of counting legs: the dead front is drawn as it hangs, letters are laid down its rows, and each space is
// looked up where it stands. Nothing of it is shared with src/network.
#include <doctest/doctest.h>

#include <algorithm>
#include <map>

#include "network/network.hpp"
#include "property/draw.hpp"

using namespace doorcard;

namespace {

/// How a panel is numbered and hung, as a person reads it off the wall.
struct Hung {
    int spaces = 0;
    Numbering numbering = Numbering::odd_left;
    bool turned_over = false;
    std::string letters;  ///< down the rows, repeating
    bool given = true;    ///< from the physical top; else from the row of space 1
};

/// Numbers as they stand in each row, row by row in the order in which space 1 comes first.
std::vector<std::vector<int>> rows_of_numbers(const Hung& hung) {
    std::vector<std::vector<int>> rows;
    const bool single = hung.numbering == Numbering::single_column;
    const int height = single ? hung.spaces : hung.spaces / 2 + hung.spaces % 2;
    rows.resize(static_cast<std::size_t>(height));
    if (single || hung.numbering == Numbering::down_left) {
        int next = 1;
        for (int side = 0; side < 2; ++side)
            for (auto row = rows.begin(); row != rows.end() && next <= hung.spaces; ++row) row->push_back(next++);
        return rows;
    }
    int next = 1;
    for (std::vector<int>& row : rows)
        for (int side = 0; side < 2 && next <= hung.spaces; ++side) row.push_back(next++);
    return rows;
}

/// The letter beside each space.
std::map<int, char> letters_by_space(const Hung& hung) {
    std::vector<std::vector<int>> wall = rows_of_numbers(hung);
    const bool from_top = hung.given;
    if (hung.turned_over && from_top) std::reverse(wall.begin(), wall.end());
    std::map<int, char> letters;
    std::string tape;
    while (tape.size() < wall.size()) tape += hung.letters;
    for (std::size_t row = 0; row < wall.size(); ++row)
        for (const int space : wall[row]) letters[space] = tape[row];
    return letters;
}

Panel panel_of(const Hung& hung, System system) {
    Panel panel;
    panel.id = "P";
    panel.system = system;
    panel.spaces = hung.spaces;
    panel.numbering = hung.numbering;
    panel.turned_over = hung.turned_over;
    if (hung.given) panel.legs_down = hung.letters;
    return panel;
}

std::vector<Breaker> breakers_of(const std::vector<std::vector<int>>& spaces) {
    std::vector<Breaker> breakers;
    for (const std::vector<int>& poles : spaces) {
        Breaker& breaker = breakers.emplace_back();
        breaker.id = "b" + std::to_string(breakers.size());
        breaker.panel = "P";
        breaker.spaces = poles;
    }
    return breakers;
}

Network network_of_panel(const Panel& panel, const std::vector<Breaker>& breakers) {
    Survey survey;
    survey.panels = Table<Panel>({panel});
    survey.breakers = Table<Breaker>(breakers);
    return network_of(survey);
}

/// Breakers of one, two and three poles at every space that has room below it on its side.
std::vector<std::vector<int>> all_breakers(const Hung& hung) {
    const int step = hung.numbering == Numbering::single_column || hung.numbering == Numbering::down_left ? 1 : 2;
    std::vector<std::vector<int>> found;
    for (int poles = 1; poles <= 3; ++poles)
        for (int space = 1; space + step * (poles - 1) <= hung.spaces; ++space) {
            std::vector<int>& made = found.emplace_back();
            for (int pole = 0; pole < poles; ++pole) made.push_back(space + step * pole);
        }
    return found;
}

/// Breakers that the two ways count apart.
int disagreements(const Hung& hung, System system) {
    const auto spaces = all_breakers(hung);
    const Network network = network_of_panel(panel_of(hung, system), breakers_of(spaces));
    const auto letters = letters_by_space(hung);
    int wrong = 0;
    for (std::size_t b = 0; b < spaces.size(); ++b) {
        std::string expected;
        for (const int space : spaces[b]) expected += letters.at(space);
        wrong += network.breaker_legs(b) != expected;
    }
    return wrong;
}

struct Lettering {
    System system;
    std::vector<std::string> down;
};
const std::vector<Lettering> letterings = {
    {System::two_wire_120, {"A"}},
    {System::split_120_240, {"AB", "BA"}},
    {System::wye_208, {"ABC", "BCA", "CAB", "CBA"}},
};

const std::vector<Numbering> numberings = {Numbering::odd_left, Numbering::odd_right, Numbering::down_left,
                                           Numbering::single_column};

/// Every panel there is: sizes 2 to 84, numberings, hung either way, letters from either leg.
template <class Visit>
void every_panel(Visit visit) {
    for (const Lettering& lettering : letterings)
        for (const std::string& down : lettering.down)
            for (const Numbering numbering : numberings)
                for (const bool turned : {false, true})
                    for (int spaces = 2; spaces <= 84; ++spaces)
                        visit(Hung{spaces, numbering, turned, down, true}, lettering.system);
}

}  // namespace

TEST_CASE("legs by hand: every size, numbering, top leg, turned over or not; one, two and three poles") {
    int panels = 0, wrong = 0;
    every_panel([&](const Hung& hung, System system) {
        ++panels;
        wrong += disagreements(hung, system);
    });
    CHECK(panels == 7 * 4 * 2 * 83);
    CHECK(wrong == 0);
}

TEST_CASE("legs by hand: letters that are not given begin at the row of space 1") {
    int wrong = 0;
    for (const Lettering& lettering : letterings)
        for (const Numbering numbering : numberings)
            for (const bool turned : {false, true})
                for (int spaces = 2; spaces <= 84; ++spaces)
                    wrong +=
                        disagreements({spaces, numbering, turned, lettering.down.front(), false}, lettering.system);
    CHECK(wrong == 0);
}

TEST_CASE("legs by hand: halves on one leg, or half b on the leg of the next row by number") {
    int wrong = 0, halves = 0;
    every_panel([&](const Hung& hung, System system) {
        if (hung.spaces % 12 != 0) return;  // so that the letters go on evenly past the last row
        for (const bool alternate : {false, true}) {
            Panel panel = panel_of(hung, system);
            panel.half_legs = alternate ? "alternate" : "same";
            std::vector<std::vector<int>> spaces;
            for (int space = 1; space <= hung.spaces; ++space) spaces.push_back({space});
            std::vector<Breaker> breakers = breakers_of(spaces);
            for (Breaker& breaker : breakers) breaker.halves = {'b'};
            const Network network = network_of_panel(panel, breakers);
            const auto rows = rows_of_numbers(hung);
            const auto letters = letters_by_space(hung);
            for (std::size_t row = 0; row < rows.size(); ++row) {
                const auto& other = alternate ? rows[(row + 1) % rows.size()] : rows[row];
                for (const int space : rows[row]) {
                    ++halves;
                    wrong += network.breaker_legs(static_cast<std::size_t>(space - 1)) !=
                             std::string(1, letters.at(other.front()));
                }
            }
        }
    });
    CHECK(halves > 10000);
    CHECK(wrong == 0);
}

TEST_CASE("legs by hand: the second way is not the first one: another top leg is told apart") {
    const Hung hung{12, Numbering::odd_left, false, "AB", true};
    Hung other = hung;
    other.letters = "BA";
    const Network network = network_of_panel(panel_of(hung, System::split_120_240), breakers_of({{1}}));
    CHECK(network.breaker_legs(0) != std::string(1, letters_by_space(other).at(1)));
}
