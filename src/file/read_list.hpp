// SPDX-License-Identifier: MIT
#pragma once
#include <string>

#include "file/list_columns.hpp"
#include "survey/survey.hpp"

namespace doorcard {

/// What is known beside a list, or asked of its reader.
struct ListOptions {
    std::optional<std::string> panel;  ///< = MAIN, where no column names one
    std::optional<System> system;
    std::optional<int> spaces;
    std::optional<double> main_a;
    NamedColumns columns;
};

/// A list as a survey: everything in it is a claim. Texts are old labels, circuits are traced by the old directory,
/// loads say where they come from. `refused` are the rows that were not understood, by place.
struct ListRead {
    Survey survey;
    std::size_t read = 0;
    std::vector<Complaint> refused;
    std::vector<std::string> unknown_columns;  ///< named in the options, and not in the list
};

/// An old directory or a spreadsheet's list (contract 4, 'new --from'): CSV with comma, semicolon or tab, in UTF-8 or
/// Latin-1, or plain lines; one-sided or two-sided. A CSV of `schedule` comes back whole.
ListRead read_list(std::string_view bytes, const ListOptions&);

/// The text of a survey file for such a survey; `read_survey` gives the same survey again.
std::string listed_survey_text(const Survey&);

}  // namespace doorcard
