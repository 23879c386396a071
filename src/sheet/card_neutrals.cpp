// SPDX-License-Identifier: MIT
#include "sheet/card_neutrals.hpp"

#include <algorithm>

#include "sheet/drawing.hpp"

namespace doorcard {
namespace {

using Parts = std::vector<Message::Part>;

constexpr double rule_pad = 1.7;  // kept free on either side of a rule that carries words, mm

// Of its circuits, whether or not their legs are known.
std::vector<std::size_t> breakers_of(const Network& network, const SharedNeutral& neutral) {
    std::vector<std::size_t> breakers;
    for (const std::size_t circuit : neutral.circuits)
        for (const std::size_t breaker : network.breakers_of(circuit))
            if (std::find(breakers.begin(), breakers.end(), breaker) == breakers.end()) breakers.push_back(breaker);
    return breakers;
}

bool open_together(const Network& network, const std::vector<std::size_t>& breakers) {
    const std::vector<std::size_t>& together = network.opened_with(breakers.front());
    return std::all_of(breakers.begin(), breakers.end(), [&](std::size_t breaker) {
        return std::find(together.begin(), together.end(), breaker) != together.end();
    });
}

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

std::vector<std::size_t> entries_of(const PanelDirectory& directory, const std::vector<std::size_t>& breakers) {
    std::vector<std::size_t> entries;
    for (std::size_t entry = 0; entry < directory.rows.size(); ++entry) {
        const auto& breaker = directory.rows[entry].breaker;
        if (breaker && std::find(breakers.begin(), breakers.end(), *breaker) != breakers.end())
            entries.push_back(entry);
    }
    return entries;
}

class NeutralMarks {
public:
    NeutralMarks(CardPlan& plan, const Network& network, const Words& words)
        : plan_(plan), network_(network), words_(words) {}

    void mark() {
        for (const SharedNeutral& neutral : network_.neutrals()) {
            const std::vector<std::size_t> breakers = breakers_of(network_, neutral);
            CardNeutral found;
            found.entries = entries_of(plan_.directory, breakers);
            if (found.entries.empty() || (breakers.size() < 2 && neutral.hots.size() < 2)) continue;
            describe(found, neutral, breakers);
            plan_.neutrals.push_back(std::move(found));
        }
    }

private:
    void describe(CardNeutral& found, const SharedNeutral& neutral, const std::vector<std::size_t>& breakers) {
        found.tied = open_together(network_, breakers);
        if (breakers.size() < 2) return;
        const std::string plain = said_of(network_, plan_.directory.panel, breakers, words_);
        const std::string named = neutral.id + ": " + plain;
        const double room = plan_.columns.text_width();
        found.words = text_width(named, found.style) <= room ? named : plain;
        found.style = fitting(found.words, found.style, room, {8, 7.5, 7});
        const bool fits = text_width(found.words, found.style) <= room;
        found.neighbours = fits && found.entries.size() == breakers.size() && keep_rules_free(found);
        if (found.neighbours) return;
        for (const std::size_t entry : found.entries) {
            std::string& note = plan_.notes[entry];
            note += (note.empty() ? "" : "; ") + found.words;
        }
    }

    // Where the breakers are neighbours on one side, their cells leave room on the rules between them.
    bool keep_rules_free(const CardNeutral& found) {
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
        const std::vector<std::size_t> breakers = breakers_of(network, neutral);
        if (breakers.size() > 1 && !entries_of(directory, breakers).empty())
            lines.push_back(neutral.id + ": " + said_of(network, directory.panel, breakers, words));
    }
    return lines;
}

std::vector<std::string> untied_notes(const CardPlan& plan, const Words& words) {
    const bool untied =
        std::any_of(plan.neutrals.begin(), plan.neutrals.end(), [](const CardNeutral& n) { return !n.tied; });
    if (!untied) return {};
    return {words(tr("NOT TIED: they share a neutral, and each handle leaves the other on. Switch off all of them."))};
}

}  // namespace doorcard
