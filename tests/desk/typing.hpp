// SPDX-License-Identifier: MIT
#pragma once
#include <doctest/doctest.h>
#include <fmt/format.h>

#include "base/words.hpp"
#include "file/read_survey.hpp"
#include "file/rewrite_survey.hpp"
#include "survey/edits/edit.hpp"

// Surveys to type into, and what came of it as text.
namespace typing {

using namespace doorcard;

/// A survey and its text.
struct Written {
    Survey survey;
    std::string text;
};

inline Written written(const std::string& text) {
    auto read = read_survey({"s", text});
    REQUIRE_MESSAGE(read, (read ? "" : complaint_line("s", read.error().front())));
    return {read->survey, text};
}

/// MAIN of so many spaces, and what else is written.
inline Written panel_of(int spaces, const std::string& more = "") {
    return written(fmt::format("format = 1\n[[panel]]\nid = \"MAIN\"\nspaces = {}\n{}", spaces, more));
}

/// What was said in refusal, all of it; empty where nothing was refused.
template <class T>
std::string refusal(const Outcome<T>& outcome) {
    std::string all;
    if (!outcome)
        for (const Complaint& one : outcome.error()) all += (all.empty() ? "" : "\n") + one.wrong + "; " + one.right;
    return all;
}

/// The survey after an edit, which must be one that can be saved and read again.
inline Survey after(const Written& before, const Edit& edit) {
    const auto changed = edit.apply(before.survey);
    REQUIRE_MESSAGE(changed, refusal(changed));
    const auto read = read_survey({"s", rewrite(before.text, before.survey, *changed)});
    REQUIRE_MESSAGE(read, refusal(read));
    CHECK(read->survey == *changed);
    return *changed;
}

inline std::string said(const Message& message) { return Words::in("en").say(message); }

}  // namespace typing
