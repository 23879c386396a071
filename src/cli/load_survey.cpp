// SPDX-License-Identifier: MIT
#include "cli/load_survey.hpp"

#include <algorithm>
#include <filesystem>
#include <ostream>
#include <sstream>

#include "file/read_text.hpp"
#include "file/toml_text.hpp"
#include "rules/amend.hpp"

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

/// The place of a key of [survey], for complaints that come after reading.
Place place_in_heading(const std::string& text, std::string_view key) {
    const auto parsed = TomlText::parse(text);
    if (!parsed) return {};
    std::vector<TomlMember> members;
    parsed->root().members_into(members);
    const auto heading = std::ranges::find(members, "survey", &TomlMember::key);
    if (heading == members.end()) return {};
    TomlNode(heading->node).members_into(members);
    const auto found = std::ranges::find(members, key, &TomlMember::key);
    return found == members.end() ? Place{} : found->place;
}

/// Lays a file of local rules over the book; false, with its complaints, where it cannot be read or is wrong.
bool lay_over(RuleBook& book, const std::string& path, std::ostream& err) {
    const auto source = read_text(path);
    if (!source) {
        for (const Complaint& complaint : source.error())
            complain(err, path, "", {{complaint.place, complaint.wrong, "give the path of a file of local rules"}});
        return false;
    }
    auto amended = amend(std::move(book), source->bytes);
    if (!amended) {
        complain(err, path, source->bytes, amended.error());
        return false;
    }
    book = *std::move(amended);
    return true;
}

/// The survey's own local rules: a file beside it. Where it cannot be opened the fault is the survey's.
bool lay_over_local_rules(RuleBook& book, const ReadSurvey& read, const std::string& file, std::ostream& err) {
    if (!read.survey.heading.local_rules) return true;
    const std::string& given = *read.survey.heading.local_rules;
    const auto path = std::filesystem::path(file).parent_path() / given;
    if (read_text(path.string())) return lay_over(book, path.string(), err);
    const Place place = place_in_heading(read.text, "local_rules");
    complain(err, file, read.text,
             {{place, "the local rules \"" + given + "\" cannot be read",
               "give the path of the file, relative to this one"}});
    return false;
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

bool rules_hold(const std::vector<std::string>& rules, const std::string& edition, std::ostream& err) {
    if (rules.empty()) return true;
    RuleBook book = *built_in_book(edition);
    return std::ranges::all_of(rules, [&](const std::string& path) { return lay_over(book, path, err); });
}

std::optional<LoadedSurvey> load_survey(const std::string& file, std::ostream& err, const Words&,
                                        const std::vector<std::string>& rules) {
    auto read = load_text(file, err);
    if (!read) return std::nullopt;
    RuleBook book = *built_in_book(read->survey.heading.rules.value_or(usual_edition));  // the reader knows no other
    bool right = lay_over_local_rules(book, *read, file, err);
    for (const std::string& path : rules) right = right && lay_over(book, path, err);
    if (!right) return std::nullopt;
    return LoadedSurvey{std::move(read->survey), std::move(book)};
}

}  // namespace doorcard
