// SPDX-License-Identifier: MIT
#include "ui/opening.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <filesystem>

#include "file/read_text.hpp"
#include "rules/amend.hpp"

namespace doorcard {
namespace {

namespace fs = std::filesystem;

/// The complaints with the file they are about before them.
std::vector<Complaint> in_file(const std::string& path, std::vector<Complaint> complaints) {
    for (Complaint& one : complaints)
        one.wrong = fmt::format("{}:{}:{}: {}", fs::path(path).filename().string(), one.place.line, one.place.column,
                                one.wrong);
    return complaints;
}

bool is_running(const std::string& process) { return fs::exists("/proc/" + process); }

/// "unnamed-1234.survey.toml" -> "1234"; empty where it is none of ours.
std::string process_of(const std::string& name) {
    constexpr std::string_view before = ".unnamed-", after = ".survey.toml.journal";
    if (!name.starts_with(before) || !name.ends_with(after)) return {};
    return name.substr(before.size(), name.size() - before.size() - after.size());
}

}  // namespace

Outcome<std::shared_ptr<const RuleBook>> rules_of(const std::string& survey_path, const std::string& edition,
                                                  const std::string& local_rules) {
    auto built_in = built_in_book(edition);
    if (!built_in)
        return tl::unexpected(
            std::vector{Complaint{{}, fmt::format("there are no rules \"{}\"", edition), "NEC-2023 or NEC-2020"}});
    if (local_rules.empty()) return std::make_shared<const RuleBook>(*std::move(built_in));
    const std::string beside = (fs::path(survey_path).parent_path() / local_rules).string();
    const auto text = read_text(beside);
    if (!text) return tl::unexpected(in_file(beside, text.error()));
    auto amended = amend(*std::move(built_in), text->bytes);
    if (!amended) return tl::unexpected(in_file(beside, amended.error()));
    return std::make_shared<const RuleBook>(*std::move(amended));
}

Action opened_from(const std::string& path) {
    auto source = read_text(path);
    if (!source) return NotOpened{path, in_file(path, source.error())};
    const std::string bytes = source->bytes;
    auto read = read_survey(*std::move(source));
    if (!read) return NotOpened{path, in_file(path, read.error())};
    const Heading& heading = read->survey.heading;
    auto book = rules_of(path, heading.rules.value_or("NEC-2023"), heading.local_rules.value_or(""));
    if (!book) return NotOpened{path, std::move(book.error())};
    auto notes = kept_side_notes(path);  // a broken one is set aside when the next is written
    return Opened{path,
                  bytes,
                  std::move(read->survey),
                  *std::move(book),
                  left_journal(path, bytes),
                  notes ? *std::move(notes) : SideNotes{}};
}

std::string unnamed_path(const std::string& state_folder, long process) {
    return fmt::format("{}/unnamed-{}.survey.toml", state_folder, process);
}

std::vector<std::string> left_unnamed(const std::string& state_folder) {
    std::vector<std::string> left;
    std::error_code none;
    for (const auto& entry : fs::directory_iterator(state_folder, none)) {
        const std::string process = process_of(entry.path().filename().string());
        if (!process.empty() && !is_running(process))
            left.push_back(fmt::format("{}/unnamed-{}.survey.toml", state_folder, process));
    }
    std::ranges::sort(left);
    return left;
}

}  // namespace doorcard
