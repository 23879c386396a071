// SPDX-License-Identifier: MIT
#include "ui/shown.hpp"

#include <filesystem>
#include <fstream>
#include <iterator>

#include "assess/assessment.hpp"
#include "file/read_text.hpp"
#include "rules/amend.hpp"
#include "sheet/card.hpp"

namespace doorcard {
namespace {

std::string name_of_file(const std::string& path) { return std::filesystem::path(path).filename().string(); }

Shown refused(const std::string& path, std::vector<std::string> complaints) {
    return {name_of_file(path), {}, {}, std::move(complaints)};
}

std::vector<std::string> lines_of(const std::string& path, const std::vector<Complaint>& complaints) {
    std::vector<std::string> lines;
    for (const Complaint& complaint : complaints) lines.push_back(complaint_line(name_of_file(path), complaint));
    return lines;
}

std::string in_words(const Network& network, const Words& words) {
    std::string text;
    for (std::size_t panel = 0; panel < network.survey().panels.size(); ++panel) {
        for (const std::string& line : card_lines(network, panel, words)) text += line + "\n";
        text += "\n";
    }
    return text;
}

Shown laid_out(const std::string& path, const Survey& survey, const RuleBook& book, const Words& words) {
    const Network network = network_of(survey);
    const Assessment assessment = assess(network, book);
    return {survey.heading.title.value_or(name_of_file(path)),
            card_sheet(network, assessment, {}, words),
            in_words(network, words),
            {}};
}

}  // namespace

Shown shown_from(const std::string& path, const Words& words) {
    std::ifstream in(path, std::ios::binary);
    if (!in) return refused(path, {words(tr("cannot be read; give the path of a survey file"))});
    const auto read = read_survey({path, {std::istreambuf_iterator<char>(in), {}}});
    if (!read) return refused(path, lines_of(path, read.error()));
    RuleBook book = *built_in_book(read->survey.heading.rules.value_or("NEC-2023"));  // the reader knows no other
    if (const auto& local_rules = read->survey.heading.local_rules) {
        const std::string beside = (std::filesystem::path(path).parent_path() / *local_rules).string();
        const auto text = read_text(beside);
        if (!text) return refused(path, lines_of(beside, text.error()));
        auto amended = amend(std::move(book), text->bytes);
        if (!amended) return refused(path, lines_of(beside, amended.error()));
        book = *std::move(amended);
    }
    return laid_out(path, read->survey, book, words);
}

}  // namespace doorcard
