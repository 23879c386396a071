// SPDX-License-Identifier: MIT
#include "desk/typed_answers.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "base/folded.hpp"
#include "desk/outlet_dots.hpp"
#include "desk/typed_words.hpp"
#include "survey/edits/edit.hpp"

namespace doorcard {
namespace {

constexpr std::string_view separators = " ,;";
constexpr std::string_view answers_known = "osd.";

std::vector<std::string_view> words_in(std::string_view text) {
    std::vector<std::string_view> words;
    while (true) {
        const auto first = text.find_first_not_of(separators);
        if (first == std::string_view::npos) return words;
        text.remove_prefix(first);
        words.push_back(text.substr(0, text.find_first_of(separators)));
        text.remove_prefix(words.back().size());
    }
}

/// The answers one by one, in small letters; nullopt where a word is none.
std::optional<std::string> answers_in(std::string_view text) {
    std::string answers;
    for (const std::string_view word : words_in(text)) answers += folded(word);
    if (answers.empty() || answers.find_first_not_of(answers_known) != std::string::npos) return std::nullopt;
    return answers;
}

/// Whose answers they are: `K`, `K3`, or a room's name.
struct AnswersHead {
    std::string letters;
    int from = 1;
};
std::optional<AnswersHead> head_of(const Survey& survey, std::string_view head) {
    if (const auto dot = dot_of(head)) return AnswersHead{dot->letters, dot->number};
    if (!outlets_with_dots(survey, head).empty()) return AnswersHead{std::string(head), 1};
    const auto room = room_named(survey, head);
    const auto letters = room ? letters_of_room(survey, *room) : std::nullopt;
    if (!letters || outlets_with_dots(survey, *letters).empty()) return std::nullopt;
    return AnswersHead{*letters, 1};
}

struct AnswersLine {
    std::string head;
    std::string answers;
};
std::optional<AnswersLine> taken_apart(std::string_view line) {
    const std::size_t colon = line.find(':');
    if (colon == std::string_view::npos) return std::nullopt;
    auto answers = answers_in(line.substr(colon + 1));
    if (!answers) return std::nullopt;
    return AnswersLine{std::string(trimmed(line.substr(0, colon))), *std::move(answers)};
}

void leave_out(std::optional<Ids>& list, const std::string& id) {
    if (list && std::erase(*list, id) > 0 && list->empty()) list.reset();
}

void put_in(std::optional<Ids>& list, const std::string& id) {
    if (!list) list.emplace();
    list->push_back(id);
}

void answer(Round& round, const std::string& id, char said) {
    for (auto* list : {&round.went_out, &round.stayed_on, &round.odd}) leave_out(*list, id);
    if (said == 'o') put_in(round.went_out, id);
    if (said == 's') put_in(round.stayed_on, id);
    if (said == 'd') put_in(round.odd, id);
}

std::string spaces_of(const Breaker& breaker) { return name_of(positions_of(breaker)); }

}  // namespace

bool is_round_line(std::string_view line) {
    const std::string word = folded(first_word(line));
    return word == "off" || word == "apagado" || word == "apagados";
}

Outcome<LineDone> with_round_line(Survey survey, std::string_view panel, std::string_view line) {
    Round round;
    std::vector<Message::Part> handles;
    for (const std::string_view word : words_in(line.substr(first_word(line).size()))) {
        const auto breaker = typed_breaker_place(survey, panel, word);
        if (!breaker) return tl::unexpected(breaker.error());
        const Breaker& there = **breaker;
        if (std::ranges::find(round.off, there.id) != round.off.end()) continue;
        round.off.push_back(there.id);
        handles.emplace_back(there.panel == panel ? spaces_of(there) : there.id);
    }
    if (round.off.empty()) return refused("no handle is named", "write all that are off now: off 5 7");
    auto rows = survey.rounds.rows();
    rows.push_back(std::move(round));
    survey.rounds = Table<Round>(std::move(rows));
    return LineDone{std::move(survey), {tr("begin a round: {0} off"), {and_list(std::move(handles))}}};
}

bool is_answers_line(const Survey& survey, std::string_view line) {
    const auto parts = taken_apart(line);
    return parts && head_of(survey, parts->head);
}

Outcome<LineDone> with_answers_line(Survey survey, std::string_view line) {
    const auto parts = taken_apart(line);
    const auto head = head_of(survey, parts->head);
    if (survey.rounds.empty()) return refused("no round was begun", "write first which handles are off: off 5 7");
    auto outlets = outlets_with_dots(survey, head->letters);
    std::erase_if(outlets, [&](std::size_t at) { return dot_of(survey.outlets[at].id)->number < head->from; });
    if (parts->answers.size() > outlets.size())
        return refused(fmt::format("{} answers for {} outlets from {}{} on", parts->answers.size(), outlets.size(),
                                   head->letters, head->from),
                       "write one for each outlet that is there, a period where it was not seen");
    auto rounds = survey.rounds.rows();
    for (std::size_t i = 0; i < parts->answers.size(); ++i)
        answer(rounds.back(), survey.outlets[outlets[i]].id, parts->answers[i]);
    survey.rounds = Table<Round>(std::move(rounds));
    return LineDone{std::move(survey), {tr("answers of {0}"), {parts->head}}};
}

}  // namespace doorcard
