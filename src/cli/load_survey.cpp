// SPDX-License-Identifier: MIT
#include "cli/load_survey.hpp"

#include <ostream>
#include <sstream>

#include "file/read_text.hpp"

namespace doorcard {
namespace {

std::string line_of(const std::string& text, std::uint32_t number) {
    std::istringstream lines(text);
    std::string line;
    for (std::uint32_t i = 0; i < number && std::getline(lines, line); ++i) continue;
    if (!line.empty() && line.back() == '\r') line.pop_back();
    return line;
}

/// Blanks up to a column, tabs where the line has tabs, so that what follows stands under it.
std::string blanks_before(const std::string& line, std::uint32_t column) {
    std::string blanks;
    for (const char c : line) {
        if ((static_cast<unsigned char>(c) & 0xC0U) == 0x80U) continue;  // inside a code point
        if (blanks.size() + 1 >= column) break;
        blanks += c == '\t' ? '\t' : ' ';
    }
    blanks.resize(column - 1, ' ');
    return blanks;
}

/// The line itself, with a caret under the column.
void point_at(std::ostream& err, const std::string& text, const Place& place) {
    constexpr std::size_t longest_shown = 200;
    const std::string line = line_of(text, place.line);
    if (line.empty() || line.size() > longest_shown) return;
    err << "    " << line << "\n    " << blanks_before(line, place.column) << "^\n";
}

void complain(std::ostream& err, const std::string& file, const std::string& text,
              const std::vector<Complaint>& complaints) {
    for (const Complaint& complaint : complaints) {
        err << complaint_line(file, complaint) << '\n';
        point_at(err, text, complaint.place);
    }
}

}  // namespace

std::optional<ReadSurvey> load_text(const std::string& file, std::ostream& err) {
    auto source = read_text(file);
    if (!source) {
        complain(err, file, "", source.error());
        return std::nullopt;
    }
    const std::string text = source->bytes;
    auto read = read_survey(std::move(*source));
    if (!read) {
        complain(err, file, text, read.error());
        return std::nullopt;
    }
    return std::move(*read);
}

std::optional<LoadedSurvey> load_survey(const std::string& file, std::ostream& err, const Words& words) {
    auto read = load_text(file, err);
    if (!read) return std::nullopt;
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
