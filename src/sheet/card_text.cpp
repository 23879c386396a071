// SPDX-License-Identifier: MIT
#include <fmt/format.h>
#include <algorithm>

#include "assess/directory.hpp"
#include "sheet/card_neutrals.hpp"
#include "sheet/card_parts.hpp"
#include "sheet/plain_lines.hpp"

namespace doorcard {
namespace {

class TextCard {
public:
    TextCard(const Network& network, std::size_t panel, const Words& words)
        : network_(network),
          survey_(network.survey()),
          panel_(panel),
          words_(words),
          directory_(directory_of(network, panel)) {}

    std::vector<std::string> lines() {
        head();
        rows();
        foot();
        return std::move(lines_);
    }

private:
    const Panel& panel() const { return survey_.panels[panel_]; }

    void add(const std::string& text, std::size_t indent = 0) {
        for (const std::string& line : wrapped(text, plain_columns - indent))
            lines_.push_back(std::string(indent, ' ') + line);
    }

    void head() {
        std::string name = panel().id;
        if (panel().title && panel().title != panel().id) name += "  " + *panel().title;
        if (panel().location) name += ", " + *panel().location;
        add(name + "   " + system_text(network_, panel_, words_));
        if (survey_.heading.title) add(*survey_.heading.title);
        add(words_(tr("fed from")) + ": " + fed_from_text(network_, panel_, words_));
        add(main_caption(panel(), words_) + ": " + main_text(network_, panel_, words_));
        const std::string sources = sources_text(network_, panel_, words_);
        if (!sources.empty())
            add(words_(tr("CAUTION")) + ": " + words_(tr("MULTIPLE SOURCES OF POWER")) + ". " + sources);
        const std::string off = kept_off_text(network_, directory_, words_);
        if (!off.empty()) add(words_(tr("WARNING")) + ": " + words_.say({tr("Do not switch on {0}"), {off}}) + ".");
        if (directory_.claimed > 0) add("[?] " + words_(tr("only said, not traced: treat as live.")));
        lines_.emplace_back();
    }

    std::string legs_of(const DirectoryRow& row) const {
        return row.breaker ? network_.breaker_legs(*row.breaker) : "";
    }

    void rows() {
        std::size_t number = 4;
        for (const DirectoryRow& row : directory_.rows) number = std::max(number, characters(name_of(row.positions)));
        for (const DirectoryRow& row : directory_.rows) {
            const std::string rating = row.breaker ? rating_text(survey_.breakers[*row.breaker]) + " A" : "";
            const std::string start =
                padded(name_of(row.positions), number) + "  " + padded(legs_of(row), 3) + "  " + padded(rating, 7);
            std::string text = (row.claimed ? "[?] " : "") + words_.say(row.text);
            if (!row.under.empty()) text += "; " + words_.say(row.under);
            const auto pieces = wrapped(text, plain_columns - characters(start));
            for (std::size_t i = 0; i < pieces.size(); ++i)
                lines_.push_back((i == 0 ? start : std::string(characters(start), ' ')) + pieces[i]);
        }
        lines_.emplace_back();
    }

    void foot() {
        for (const std::string& line : neutral_lines(network_, directory_, words_)) add(line);
        for (const std::string& ask : ask_before(network_, directory_))
            add(words_.say({tr("ASK before switching off {0}"), {ask}}));
        add(words_(tr("Off here is not proof of dead. Test before you touch.")));
        const std::string abbreviations = abbreviations_text(network_, directory_, words_);
        if (!abbreviations.empty()) add(abbreviations);
        add(traced_line(survey_, directory_, words_));
        lines_.emplace_back();
    }

    const Network& network_;
    const Survey& survey_;
    std::size_t panel_;
    const Words& words_;
    const PanelDirectory directory_;
    std::vector<std::string> lines_;
};

}  // namespace

std::vector<std::string> card_lines(const Network& network, std::size_t panel, const Words& words) {
    return TextCard(network, panel, words).lines();
}

}  // namespace doorcard
