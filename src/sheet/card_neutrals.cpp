// SPDX-License-Identifier: MIT
#include "sheet/card_neutrals.hpp"

#include <algorithm>

#include "sheet/drawing.hpp"

namespace doorcard {
namespace {

using Parts = std::vector<Message::Part>;

constexpr double rule_pad = 1.7;  // kept free on either side of a rule that carries words, mm

// Of its circuits, whether or not their legs are known.
// "5 and 7 off together"; handles of other panels are named with their panel.
std::string said_of(const Network& network, std::size_t panel, const std::vector<std::size_t>& breakers,
                    const Words& words) {
    Parts handles;
    for (const std::size_t breaker : breakers) {
        const std::string handle = name_of(positions_of(network.survey().breakers[breaker]));
        handles.emplace_back(
            network.panel_of(breaker) == panel ? handle : network.survey().breakers[breaker].panel + " " + handle);
    }
    return words.say({open_together(network, breakers) ? tr("{0} off together") : tr("{0} NOT TIED"),
                      {and_list(std::move(handles))}});
}

class NeutralMarks {
public:
    NeutralMarks(CardPlan& plan, const Network& network, const Words& words)
        : plan_(plan), network_(network), words_(words) {}

    void mark() {
        for (const FaceNeutral& neutral : plan_.neutrals) plan_.neutral_words.push_back(described(neutral));
    }

private:
    NeutralWords described(const FaceNeutral& neutral) {
        NeutralWords found;
        if (neutral.breakers.size() < 2) return found;
        const std::string plain = said_of(network_, plan_.directory.panel, neutral.breakers, words_);
        const std::string named = neutral.id + ": " + plain;
        const double room = plan_.columns.text_width();
        found.words = text_width(named, found.style) <= room ? named : plain;
        found.style = fitting(found.words, found.style, room, {8, 7.5, 7});
        const bool fits = text_width(found.words, found.style) <= room;
        found.neighbours = fits && neutral.entries.size() == neutral.breakers.size() && keep_rules_free(neutral);
        if (found.neighbours) return found;
        for (const std::size_t entry : neutral.entries) {
            std::string& note = plan_.notes[entry];
            note += (note.empty() ? "" : "; ") + found.words;
        }
        return found;
    }

    // Where the breakers are neighbours on one side, their cells leave room on the rules between them.
    bool keep_rules_free(const FaceNeutral& found) {
        for (const int side : {0, 1}) {
            std::vector<std::size_t> runs;
            for (std::size_t i = 0; i < plan_.runs[side].size(); ++i)
                if (std::find(found.entries.begin(), found.entries.end(), plan_.runs[side][i].entry) !=
                    found.entries.end())
                    runs.push_back(i);
            if (runs.size() != found.entries.size() || runs.back() - runs.front() + 1 != runs.size()) continue;
            auto& cells = plan_.cells[side];
            for (std::size_t i = runs.front(); i < runs.back(); ++i)
                if (cells[plan_.runs[side][i].last].row + 1 != cells[plan_.runs[side][i + 1].first].row) return false;
            cells[plan_.runs[side][runs.front()].last].pad_bottom = rule_pad;
            cells[plan_.runs[side][runs.front() + 1].first].pad_top = rule_pad;
            return true;
        }
        return false;
    }

    CardPlan& plan_;
    const Network& network_;
    const Words& words_;
};

}  // namespace

void mark_neutrals(CardPlan& plan, const Network& network, const Words& words) {
    NeutralMarks(plan, network, words).mark();
}

std::vector<std::string> neutral_lines(const Network& network, const PanelDirectory& directory, const Words& words) {
    std::vector<std::string> lines;
    for (const SharedNeutral& neutral : network.neutrals()) {
        const std::vector<std::size_t> breakers = breakers_on(network, neutral);
        if (breakers.size() > 1 && !entries_of(directory, breakers).empty())
            lines.push_back(neutral.id + ": " + said_of(network, directory.panel, breakers, words));
    }
    return lines;
}

std::vector<std::string> untied_notes(const CardPlan& plan, const Words& words) {
    const bool untied =
        std::any_of(plan.neutrals.begin(), plan.neutrals.end(), [](const FaceNeutral& n) { return !n.tied; });
    if (!untied) return {};
    return {words(tr("NOT TIED: they share a neutral, and each handle leaves the other on. Switch off all of them."))};
}

}  // namespace doorcard
