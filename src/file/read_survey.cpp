// SPDX-License-Identifier: MIT
#include "file/read_survey.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "file/checks.hpp"
#include "file/read_entries.hpp"
#include "file/toml_text.hpp"

namespace doorcard {
namespace {

constexpr std::int64_t known_format = 1;

std::optional<Complaint> wrong_format(TomlNode root) {
    std::vector<TomlMember> members;
    root.members_into(members);
    const auto format = std::ranges::find(members, "format", &TomlMember::key);
    if (format == members.end()) return Complaint{{}, "the file has no \"format\"", "write format = 1 at its top"};
    const TomlNode node = format->node;
    if (!node.is(TomlNode::Kind::whole))
        return Complaint{node.place(), fmt::format("\"format\" is {}", name_of(node.kind())), "write format = 1"};
    if (node.whole() > known_format)
        return Complaint{
            node.place(), fmt::format("format {} is newer than this doorcard reads", node.whole()),
            fmt::format("open it with a doorcard that reads format {}; this one reads format 1", node.whole())};
    if (node.whole() < known_format)
        return Complaint{node.place(), fmt::format("there is no format {}", node.whole()), "write format = 1"};
    return std::nullopt;
}

template <class T>
Table<T> table_of(std::vector<T>& rows) {
    return Table<T>(std::move(rows));
}

Survey survey_of(Draft&& draft) {
    return {
        std::move(draft.heading), table_of(draft.dwellings),  table_of(draft.occupancies), std::move(draft.grounding),
        table_of(draft.sources),  table_of(draft.panels),     table_of(draft.breakers),    table_of(draft.circuits),
        table_of(draft.rooms),    table_of(draft.outlets),    table_of(draft.loads),       table_of(draft.managed),
        table_of(draft.readings), table_of(draft.recordings), table_of(draft.waveforms),   table_of(draft.demands),
        table_of(draft.limits),   table_of(draft.rounds),     std::move(draft.mapping),    table_of(draft.trips),
        table_of(draft.hunts),    table_of(draft.trials),     table_of(draft.accepted),    table_of(draft.photos)};
}

Survey checked_survey(Entries& entries) {
    settle_breakers(entries.draft, entries.marks, entries.complaints);
    Survey survey = survey_of(std::move(entries.draft));
    const Checked checked{survey, entries.marks, entries.complaints};
    check_ids(checked);
    check_references(checked);
    check_spaces(checked);
    check_cycles(checked);
    check_order(checked);
    check_values(checked);
    return survey;
}

}  // namespace

Outcome<ReadSurvey> read_survey(SourceText source) {
    const auto parsed = TomlText::parse(source.bytes);
    if (!parsed) return tl::unexpected(parsed.error());
    if (auto wrong = wrong_format(parsed->root())) return tl::unexpected(std::vector{std::move(*wrong)});
    Entries entries;
    read_entries(parsed->root(), entries);
    Survey survey = checked_survey(entries);
    if (!entries.complaints.empty()) return tl::unexpected(entries.complaints.sorted());
    return ReadSurvey{std::move(survey), std::move(source.bytes)};
}

}  // namespace doorcard
