// SPDX-License-Identifier: MIT
#include "desk/typed_outlets.hpp"

#include <fmt/format.h>

#include "desk/typed_answers.hpp"
#include "desk/typed_room.hpp"
#include "desk/typed_words.hpp"

namespace doorcard {
namespace {

Outcome<LineDone> with_plain_line(Survey survey, std::string_view panel, std::string_view line) {
    if (is_round_line(line)) return with_round_line(std::move(survey), panel, line);
    if (is_answers_line(survey, line)) return with_answers_line(std::move(survey), line);
    if (is_outlet_line(survey, line)) return with_outlet_line(std::move(survey), panel, line);
    return with_room_line(std::move(survey), panel, line);
}

struct TypedLine {
    std::size_t number = 0;  ///< among those that were typed
    std::string text;
};

/// The lines that say something; `complaints` gets those that are no text.
std::vector<TypedLine> lines_typed(std::string_view typed, std::vector<Complaint>& complaints) {
    std::vector<TypedLine> lines;
    std::size_t number = 0;
    for (const std::string_view typed_line : lines_of(typed)) {
        ++number;
        auto line = plain_line(typed_line);
        if (!line)
            complaints.push_back(line.error().front());
        else if (!line->empty())
            lines.push_back({number, *std::move(line)});
    }
    return lines;
}

struct LinesDone {
    Survey survey;
    std::vector<Message> names;
    std::vector<Complaint> complaints;
};

/// Line after line, each on what those before it made; one that is refused is left out, with its number.
LinesDone with_lines(Survey survey, const std::string& panel, const std::vector<TypedLine>& lines) {
    LinesDone all{std::move(survey), {}, {}};
    for (const TypedLine& line : lines) {
        auto done = with_plain_line(all.survey, panel, line.text);
        if (done) {
            all.survey = std::move(done->survey);
            all.names.push_back(std::move(done->name));
            continue;
        }
        for (Complaint& complaint : done.error()) {
            if (lines.size() > 1) complaint.wrong = fmt::format("line {}: {}", line.number, complaint.wrong);
            complaint.place.line = static_cast<std::uint32_t>(line.number);
            all.complaints.push_back(std::move(complaint));
        }
    }
    return all;
}

Message name_of_lines(const std::vector<Message>& names) {
    if (names.size() == 1) return names.front();
    return {tr("enter {0:.0f} lines"), {static_cast<double>(names.size())}};
}

}  // namespace

Outcome<Edit> typed_outlets(const Survey& survey, std::string_view panel, std::string_view typed) {
    std::vector<Complaint> complaints;
    const auto lines = lines_typed(typed, complaints);
    if (!complaints.empty()) return tl::unexpected(std::move(complaints));
    if (lines.empty()) return refused("nothing was typed", "type a room and what is in it: Kitchen r6 l2 range");
    LinesDone done = with_lines(survey, std::string(panel), lines);
    if (!done.complaints.empty()) return tl::unexpected(std::move(done.complaints));
    return Edit{name_of_lines(done.names), [lines, panel = std::string(panel)](const Survey& now) -> Outcome<Survey> {
                    LinesDone again = with_lines(now, panel, lines);
                    if (!again.complaints.empty()) return tl::unexpected(std::move(again.complaints));
                    return kept_laws(now, std::move(again.survey));
                }};
}

}  // namespace doorcard
