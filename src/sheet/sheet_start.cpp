// SPDX-License-Identifier: MIT
#include "sheet/sheet_start.hpp"

#include <fmt/format.h>

namespace doorcard {
namespace {

/// The date of a sheet's file, RFC 3339: the survey's, else a fixed one.
std::string created_on(const Survey& survey) {
    const auto& date = survey.heading.date;
    if (!date) return "2000-01-01T00:00:00Z";
    return fmt::format("{:04}-{:02}-{:02}T00:00:00Z", date->year, date->month, date->day);
}

}  // namespace

Sheet begun_sheet(const char* title, const Survey& survey, const Words& words) {
    Sheet sheet;
    sheet.title = words.say({title, {survey.heading.title.value_or(words(tr("untitled")))}});
    sheet.author = survey.heading.surveyor.value_or("");
    sheet.created = created_on(survey);
    sheet.language = words.language();
    return sheet;
}

std::string page_title(const std::string& of, std::size_t number, std::size_t count) {
    return count == 1 ? of : fmt::format("{} {}/{}", of, number + 1, count);
}

}  // namespace doorcard
