// SPDX-License-Identifier: MIT
// Whatever is typed or pasted gives a survey that can be saved and read again, or a refusal; nothing is thrown.
#include <doctest/doctest.h>
#include <fmt/format.h>

#include "desk/face_gestures.hpp"
#include "desk/pasted_list.hpp"
#include "desk/typed_breaker.hpp"
#include "desk/typed_outlets.hpp"
#include "file/read_survey.hpp"
#include "file/rewrite_survey.hpp"
#include "property/draw.hpp"

using namespace doorcard;

namespace {

const std::vector<std::string> scraps = {"20",
                                         "15t",
                                         "30/2",
                                         "/3",
                                         "gf",
                                         "arc",
                                         "dual",
                                         "s",
                                         "-",
                                         "?",
                                         "Kitchen",
                                         "Hall|Bath",
                                         "Bath?",
                                         "r6",
                                         "l2",
                                         "b",
                                         "range",
                                         "on",
                                         "@",
                                         "@5",
                                         "5",
                                         "7a",
                                         "K:",
                                         "K1",
                                         "K1-3",
                                         "off",
                                         "o",
                                         ".",
                                         "d",
                                         ":",
                                         ",",
                                         "\"",
                                         "\t",
                                         "\n",
                                         "\r\n",
                                         "\xff",
                                         "é",
                                         "台所",
                                         "\x01",
                                         "\u00a0",
                                         "\u200b",
                                         "9999",
                                         "0.5",
                                         "1e308",
                                         "MAIN:5",
                                         "2+4",
                                         "x",
                                         "|",
                                         "'",
                                         "\\",
                                         "#",
                                         "]",
                                         "\x7f",
                                         "12",
                                         "Space",
                                         "Spare",
                                         "Feb-04",
                                         "#N/A",
                                         "=1+1",
                                         "K",
                                         "o o s . d",
                                         "Kitchen r6 l2",
                                         "20 Kitchen?",
                                         "5\tKitchen\t20\n",
                                         "\u2028",
                                         "e\u0301",
                                         "\xf0\x9f\x94\x8c",
                                         "--"};

std::string scribble(Draw& draw) {
    std::string text;
    for (int n = draw.number(0, 6); n >= 0; --n) {
        text += draw.of(scraps);
        if (!draw.one_in(3)) text += ' ';
    }
    return text;
}

const std::string house = R"(format = 1
[[panel]]
id = "MAIN"
spaces = 12
empty_spaces = [12]
[[panel]]
id = "SHOP"
fed_by = "MAIN:2+4"
[[breaker]]
panel = "MAIN"
spaces = [2, 4]
[[breaker]]
panel = "MAIN"
spaces = [5]
amps = 20
[[breaker]]
panel = "MAIN"
spaces = [7]
half = "a"
[[circuit]]
id = "k"
breaker = "MAIN:5"
traced = { how = "switching" }
[[outlet]]
id = "K1"
room = "Kitchen"
circuit = "k"
[[outlet]]
id = "K2"
room = "Kitchen"
[[round]]
off = ["MAIN:5"]
went_out = ["K1"]
)";

/// A survey on which one types on and on, saved and read again after each step.
struct Typed {
    Survey survey;
    std::string text;

    void take(const Outcome<Edit>& edit) {
        if (!edit) return refused_well(edit.error());
        const auto changed = edit->apply(survey);
        if (!changed) return refused_well(changed.error());
        text = rewrite(text, survey, *changed);  // throws where it does not read as what was meant
        survey = *changed;
    }
    static void refused_well(const std::vector<Complaint>& complaints) {
        REQUIRE_FALSE(complaints.empty());
        for (const Complaint& one : complaints) {
            CHECK_FALSE(one.wrong.empty());
            CHECK_FALSE(one.right.empty());
        }
    }
};

Outcome<Edit> one_of_all(const Survey& survey, const std::string& panel, Position at, const std::string& text,
                         Draw& draw) {
    using Gesture = Outcome<Edit> (*)(const Survey&, const std::string&, Position);
    const std::vector<Gesture> gestures = {&two_pole_here,   &one_pole_here,  &tied_with_below, &untied,
                                           &spare_or_in_use, &kept_off_or_on, &taken_out};
    switch (draw.number(0, 6)) {
        case 0:
            return typed_outlets(survey, panel, text);
        case 1: {
            auto pasted = pasted_list(survey, panel, text);
            if (!pasted) return tl::unexpected(std::move(pasted.error()));
            return std::move(pasted->edit);
        }
        case 2:
            return move_to(survey, panel, at, {draw.number(0, 14), draw.of(std::vector{' ', ' ', 'a', 'b'})});
        case 3:
            return draw.of(gestures)(survey, panel, at);
        default: {
            auto typed = typed_breaker(survey, panel, at, text);
            if (!typed) return tl::unexpected(std::move(typed.error()));
            return std::move(typed->edit);
        }
    }
}

}  // namespace

TEST_CASE("typing: any text gives a survey that reads again, or a refusal") {
    Draw draw(20260514);
    const std::vector<std::string> panels = {"MAIN", "MAIN", "MAIN", "SHOP", "nowhere", ""};
    for (int visit = 0; visit < 40; ++visit) {
        Typed typed{read_survey({"s", house})->survey, house};
        for (int step = 0; step < 25; ++step) {
            const std::string text = scribble(draw);
            CAPTURE(text);
            const Position at{draw.number(0, 14), draw.of(std::vector{' ', ' ', ' ', 'a', 'b'})};
            CAPTURE(at.space);
            const Survey before = typed.survey;
            const auto edit = one_of_all(before, draw.of(panels), at, text, draw);
            typed.take(edit);
            if (edit) CHECK(edit->apply(before).has_value());
        }
    }
}

TEST_CASE("typing: what one would type to get what is there changes nothing") {
    Draw draw(515);
    for (int i = 0; i < 60; ++i) {
        const Survey survey = random_survey(draw);
        for (const Breaker& breaker : survey.breakers) {
            const Position at = positions_of(breaker).front();
            if (breaker_at(survey, breaker.panel, at) != &breaker) continue;  // two in one space
            const std::string text = typed_text_of(survey, breaker.panel, at);
            CAPTURE(text);
            if (text.empty()) continue;
            const auto typed = typed_breaker(survey, breaker.panel, at, text);
            REQUIRE_MESSAGE(typed, (typed ? "" : typed.error().front().wrong));
            CHECK(*typed->edit.apply(survey) == survey);
        }
    }
}
