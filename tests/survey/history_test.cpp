// SPDX-License-Identifier: MIT
#include "survey/history.hpp"

#include <doctest/doctest.h>

using namespace doorcard;

namespace {

Survey titled(const std::string& title) {
    Survey survey;
    survey.heading.title = title;
    return survey;
}

Message name(const std::string& words) { return verbatim(words); }

}  // namespace

TEST_CASE("history: each step is undone by its name, and done again") {
    History history;
    CHECK_FALSE(history.undo_name());
    history.add(name("a to b"), titled("a"));
    history.add(name("b to c"), titled("b"));
    CHECK(history.undo_name() == name("b to c"));
    Survey now = history.undo(titled("c"));
    CHECK(now.heading.title == "b");
    CHECK(history.redo_name() == name("b to c"));
    now = history.undo(now);
    CHECK(now.heading.title == "a");
    CHECK_FALSE(history.undo_name());
    CHECK(history.undo(now).heading.title == "a");  // nothing left: as it is
    now = history.redo(now);
    CHECK(now.heading.title == "b");
    now = history.redo(now);
    CHECK(now.heading.title == "c");
    CHECK(history.redo(now).heading.title == "c");
}

TEST_CASE("history: after another edit what was undone is gone") {
    History history;
    history.add(name("a to b"), titled("a"));
    const Survey now = history.undo(titled("b"));
    history.add(name("a to x"), now);
    CHECK_FALSE(history.redo_name());
    CHECK(history.past().size() == 1);
    CHECK(history.undo(titled("x")).heading.title == "a");
}

TEST_CASE("history: ten thousand steps keep what they share") {
    History history;
    Survey survey = titled("0");
    survey.loads = Table<Load>(std::vector<Load>(1000));
    for (int i = 1; i <= 10'000; ++i) {
        history.add(name("step"), survey);
        survey.heading.title = std::to_string(i);
    }
    for (int i = 0; i < 10'000; ++i) survey = history.undo(std::move(survey));
    CHECK(survey.heading.title == "0");
    CHECK(survey.loads.is_same(history.future().front().survey.loads));
}
