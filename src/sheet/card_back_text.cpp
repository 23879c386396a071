// SPDX-License-Identifier: MIT
#include <algorithm>

#include "sheet/card_back.hpp"
#include "sheet/card_back_words.hpp"
#include "sheet/panel_facts.hpp"
#include "sheet/plain_lines.hpp"

namespace doorcard {
namespace {

class TextBack {
public:
    TextBack(const Network& network, std::size_t panel, const Words& words)
        : network_(network),
          words_(words),
          directory_(rooms_of(network, panel)),
          names_(network, directory_, words),
          said_(back_words(network, directory_, names_, words)) {}

    std::vector<std::string> lines() {
        head();
        for (const RoomPart& part : directory_.parts) rooms(part);
        if (!directory_.parts.empty()) lines_.emplace_back();
        safety();
        tag();
        lines_.emplace_back();
        return std::move(lines_);
    }

private:
    void add(const std::string& text, std::size_t indent = 0) {
        for (const std::string& line : wrapped(text, plain_columns - indent))
            lines_.push_back(std::string(indent, ' ') + line);
    }

    void head() {
        const Survey& survey = network_.survey();
        std::string title = words_(tr("By room")) + ": " + words_(tr("which handle to throw"));
        if (survey.heading.title) title += ", " + *survey.heading.title;
        add(title + ", " + dated(survey, words_));
        add(names_.key());
        if (!said_.off_title.empty()) add(words_(tr("WARNING")) + ": " + said_.off_title + ". " + said_.off_reasons);
        if (!said_.not_traced.empty()) add(said_.not_traced);
        if (!said_.claimed.empty()) add("[?] " + said_.claimed);
        lines_.emplace_back();
    }

    std::string answer(const RoomLine& line) const {
        const RoomAnswer answer = answer_of(line, names_, words_);
        if (answer.number) return words_.say({tr("throw {0}"), {answer.text}});
        return (answer.trust == HandleTrust::claimed ? "[?] " : "") + answer.text;
    }

    void rooms(const RoomPart& part) {
        add(heading_of(directory_, part, words_));
        for (const RoomLine& line : part.lines) {
            const std::string right = answer(line);
            const std::size_t room = plain_columns - 2 - std::min<std::size_t>(characters(right) + 4, 48);
            const std::vector<std::string> what = wrapped(what_of(part, line, words_), room);
            for (std::size_t i = 0; i + 1 < what.size(); ++i) lines_.push_back("  " + what[i]);
            std::string last = "  " + (what.empty() ? std::string() : what.back()) + " ";
            const std::size_t used = characters(last) + characters(right) + 1;
            if (used > plain_columns) {
                lines_.push_back(last);
                add(right, 4);
                continue;
            }
            last += std::string(plain_columns - used, '.') + " " + right;
            lines_.push_back(last);
        }
    }

    void steps(const std::string& heading, const std::vector<std::string>& steps, std::size_t first = 1) {
        if (!heading.empty()) add(heading);
        for (std::size_t i = 0; i < steps.size(); ++i) {
            const auto pieces = wrapped(steps[i], plain_columns - 5);
            for (std::size_t line = 0; line < pieces.size(); ++line)
                lines_.push_back((line == 0 ? "  " + std::to_string(first + i) + "  " : "     ") + pieces[line]);
        }
    }

    void safety() {
        add(words_(tr("WARNING")) + ": " + said_.danger_title + " " + said_.danger_text);
        steps(words_(tr("If it trips")), said_.trip_steps);
        if (!said_.reset_note.empty()) add(said_.reset_note, 5);
        steps("", said_.after_reset, said_.trip_steps.size() + 1);
        steps(words_(tr("Everything off")), said_.off_steps);
        add(said_.off_note, 2);
        if (!said_.receptacles.empty()) add(words_(tr("Dead receptacle?")) + " " + said_.receptacles);
        add(said_.off_is_not_dead);
    }

    void tag() {
        const std::vector<TagItem> items = tag_items(directory_, names_, words_);
        if (items.empty()) return;
        lines_.emplace_back(plain_columns, '-');
        add(words_(tr("Leave on")) + ", " + words_(tr("except in an emergency; ask first")) + ". " +
            words_.say({tr("As of {0}. Cut off when it changes."), {dated(network_.survey(), words_)}}));
        for (const TagItem& item : items) {
            const std::string handles = item.handles.empty() ? words_(tr("handle not traced")) : item.handles;
            add((item.claimed ? "[?] " : "") + handles + ": " + item.why, 2);
        }
    }

    const Network& network_;
    const Words& words_;
    const RoomDirectory directory_;
    const HandleNames names_;
    const BackWords said_;
    std::vector<std::string> lines_;
};

}  // namespace

std::vector<std::string> card_back_lines(const Network& network, std::size_t panel, const Words& words) {
    return TextBack(network, panel, words).lines();
}

}  // namespace doorcard
