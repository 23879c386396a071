// SPDX-License-Identifier: MIT
#pragma once
#include <doctest/doctest.h>

#include <string>

#include "base/words.hpp"
#include "file/read_survey.hpp"
#include "survey/edits/edit.hpp"

// A small house of our own invention, and what its edits make of it.
namespace house {

constexpr const char* text = R"(format = 1

[survey]
title = "Alder Row 9"

[[source]]
id = "utility"
kind = "utility"
title = "Street"

[[panel]]
id = "MAIN"
title = "Main panel"
fed_by = "utility"
spaces = 12
system = "120/240 1ph 3w"
condition = ["rust, at the sill", "water"]

[[breaker]]
panel = "MAIN"
spaces = [5]
amps = 20

[[breaker]]
panel = "MAIN"
spaces = [7]
amps = 15
keep_on = "sump pump"

[[breaker]]
panel = "MAIN"
spaces = [2, 4]
amps = 30

[[circuit]]
id = "kitchen-east"
breaker = "MAIN:5"
purpose = "Kitchen counter"
wire = { size = "12", length_m = 19.0 }

[[circuit]]
id = "pump"
breaker = "MAIN:7"
purpose = "Sump"

[[room]]
id = "kitchen"
title = "Kitchen"

[[outlet]]
id = "K1"
circuit = "kitchen-east"
room = "kitchen"

[[outlet]]
id = "K2"
upstream = "K1"

[[load]]
id = "toaster"
outlet = "K1"
title = "Toaster"
watts = 1100

[[reading]]
of = "breaker:MAIN:5"
amps = 11.2
)";

inline doorcard::Survey survey() {
    const auto read = doorcard::read_survey({"house.survey.toml", text});
    REQUIRE(read.has_value());
    return read->survey;
}

inline std::string why(const std::vector<doorcard::Complaint>& complaints) {
    std::string all;
    for (const doorcard::Complaint& one : complaints) all += (all.empty() ? "" : "\n") + one.wrong + "; " + one.right;
    return all;
}

inline std::string why(const doorcard::Outcome<doorcard::Edit>& edit, const doorcard::Survey& survey) {
    if (!edit) return why(edit.error());
    const auto after = edit->apply(survey);
    return after ? "done: " + doorcard::Words::in("en").say(edit->name) : why(after.error());
}

inline doorcard::Survey done(const doorcard::Outcome<doorcard::Edit>& edit, const doorcard::Survey& survey) {
    REQUIRE_MESSAGE(edit.has_value(), (edit ? "" : why(edit.error())));
    auto after = edit->apply(survey);
    REQUIRE_MESSAGE(after.has_value(), (after ? "" : why(after.error())));
    return *std::move(after);
}

}  // namespace house
