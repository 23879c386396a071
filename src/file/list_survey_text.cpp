// SPDX-License-Identifier: MIT
#include "file/read_list.hpp"
#include "file/rewrite_survey.hpp"

namespace doorcard {
namespace {

constexpr std::string_view heading =
    R"(# A survey for doorcard, begun from an old list. All in it is a claim: amperes, poles and guards as the list says
# them, its texts as old labels, its circuits as the old directory names them. Look, trace, and write what you find.
# What is left out is not seen or not known, never a fact. All keys: docs/survey-file.md
format = 1
)";

}  // namespace

std::string listed_survey_text(const Survey& survey) { return rewrite(heading, Survey{}, survey); }

}  // namespace doorcard
