// SPDX-License-Identifier: MIT
#include "cli/load_survey.hpp"

#include <fstream>
#include <iterator>
#include <ostream>
#include <sstream>

#include "file/read_survey.hpp"

namespace doorcard {
namespace {

std::string line_of(const std::string& text, std::uint32_t number) {
    std::istringstream lines(text);
    std::string line;
    for (std::uint32_t i = 0; i < number && std::getline(lines, line); ++i) continue;
    if (!line.empty() && line.back() == '\r') line.pop_back();
    return line;
}

/// The line itself, with a caret under the column.
void point_at(std::ostream& err, const std::string& text, const Place& place) {
    constexpr std::size_t longest_shown = 200;
    const std::string line = line_of(text, place.line);
    if (line.empty() || line.size() > longest_shown) return;
    err << "    " << line << "\n    " << std::string(place.column - 1, ' ') << "^\n";
}

void complain(std::ostream& err, const std::string& file, const std::string& text,
              const std::vector<Complaint>& complaints) {
    for (const Complaint& complaint : complaints) {
        err << complaint_line(file, complaint) << '\n';
        point_at(err, text, complaint.place);
    }
}

}  // namespace

std::optional<LoadedSurvey> load_survey(const std::string& file, std::ostream& err, const Words& words) {
    std::ifstream stream(file, std::ios::binary);
    if (!stream) {
        err << file << ": " << words(tr("cannot be read; give the path of a survey file")) << '\n';
        return std::nullopt;
    }
    std::string text{std::istreambuf_iterator<char>(stream), std::istreambuf_iterator<char>()};
    auto read = read_survey(SourceText{file, text});
    if (!read) {
        complain(err, file, text, read.error());
        return std::nullopt;
    }
    const std::string edition = read->survey.heading.rules.value_or("NEC-2023");
    auto book = built_in_book(edition);
    if (!book) {
        err << file << ": " << words(tr("there is no rule book of this edition yet")) << " (" << edition
            << "); NEC-2023\n";
        return std::nullopt;
    }
    return LoadedSurvey{std::move(read->survey), std::move(*book)};
}

}  // namespace doorcard
