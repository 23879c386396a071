// SPDX-License-Identifier: MIT
#include <algorithm>

#include "desk/face_picture.hpp"
#include "desk/face_words.hpp"
#include "sheet/finding_words.hpp"
#include "sheet/panel_facts.hpp"

namespace doorcard {
namespace {

/// The rows of a face in words.
class FaceList {
public:
    FaceList(const FaceFacts& facts, const Words& words, const FaceLook& look)
        : facts_(facts), words_(words), look_(look) {}

    FaceListRow row(const DirectoryRow& row) const {
        FaceListRow line;
        line.position = row.positions.front();
        line.space = name_of(row.positions);
        line.what = what(row);
        if (const Breaker* breaker = facts_.breaker_of(row)) {
            line.device = device(*breaker, row);
            if (const RowLoad* load = facts_.load_of(row)) line.load = load_words(*load, words_);
            line.neutral = neutral(*row.breaker);
            if (const RowFinding* found = facts_.finding_of(row)) line.finding = finding(*found);
        }
        return line;
    }

    std::string finding(const RowFinding& found) const {
        const std::string worst = signal_word(found.severity, words_) + ": " + words_.say(found.text);
        if (found.count < 2) return worst;
        return worst + " " + words_.count(trn("(and {0} more)", "(and {0} more)"), static_cast<long>(found.count - 1));
    }

private:
    static void add(std::string& text, const std::string& more) {
        if (!more.empty()) text += (text.empty() ? "" : ", ") + more;
    }
    static bool is_among(const std::vector<Position>& these, const DirectoryRow& row) {
        return std::ranges::find_first_of(these, row.positions) != these.end();
    }

    std::string what(const DirectoryRow& row) const {
        std::string text = words_.say(row.text);
        add(text, words_.say(row.under));
        if (row.claimed && row.kind != RowKind::not_described) add(text, words_(tr("only claimed, not proved")));
        for (const PlannedMark& mark : look_.planned) {
            if (is_among(mark.to, row)) add(text, words_.say({tr("planned: {0}"), {mark.words}}));
            if (is_among(mark.from, row) && !is_among(mark.to, row))
                add(text, words_.say({tr("planned to change: {0}"), {mark.words}}));
        }
        return text;
    }

    std::string device(const Breaker& breaker, const DirectoryRow& row) const {
        std::string text = breaker.amps ? rating_text(breaker) + " A" : words_(tr("rating not seen"));
        if (breaker.device && *breaker.device != "breaker") add(text, words_(tr("fuse")));
        if (breaker.poles() > 1)
            add(text, words_.count(trn("{0} pole", "{0} poles"), static_cast<long>(breaker.poles())));
        if (row.positions.front().half != ' ') add(text, words_(tr("half of a space")));
        if (const std::string& legs = facts_.network.breaker_legs(*row.breaker); !legs.empty())
            add(text, legs.find('?') == std::string::npos ? words_.say({tr("leg {0}"), {legs}})
                                                          : words_(tr("leg not known")));
        add_guards(breaker, text);
        if (breaker.tied_with && !breaker.tied_with->empty()) add(text, tied(*row.breaker));
        add(text, state(row));
        return text;
    }

    void add_guards(const Breaker& breaker, std::string& text) const {
        const auto has = [&](Guard guard) {
            return breaker.guards && std::ranges::find(*breaker.guards, guard) != breaker.guards->end();
        };
        if (has(Guard::ground)) add(text, words_(tr("ground guard with TEST")));
        if (has(Guard::arc)) add(text, words_(tr("arc guard with TEST")));
        if (has(Guard::equipment_ground)) add(text, words_(tr("equipment ground guard")));
    }

    std::string tied(std::size_t breaker) const {
        std::vector<std::size_t> others = facts_.network.opened_with(breaker);
        std::erase(others, breaker);
        return words_.say({tr("tied with {0}"), {handles_message(facts_, others)}});
    }

    std::string state(const DirectoryRow& row) const {
        const BreakerState state = facts_.breaker_of(row)->state.value_or(BreakerState::in_use);
        const bool is_off = state == BreakerState::off || is_among(look_.off_now, row);
        std::string text = is_off ? words_(tr("off")) : "";
        if (is_among(look_.to_throw, row))
            add(text, is_off ? words_(tr("to be switched off now")) : words_(tr("to be switched on now")));
        return text;
    }

    std::string neutral(std::size_t breaker) const {
        std::string text;
        for (const SharedNeutral& neutral : facts_.network.neutrals()) {
            const auto breakers = breakers_on(facts_.network, neutral);
            const bool is_on_it = std::ranges::find(breakers, breaker) != breakers.end();
            if (!is_on_it || (breakers.size() < 2 && neutral.hots.size() < 2)) continue;
            text += text.empty() ? "" : "; ";
            text += neutral_words(facts_.neutrals.at(neutral.id), handles_message(facts_, breakers), words_);
        }
        return text;
    }

    const FaceFacts& facts_;
    const Words& words_;
    const FaceLook& look_;
};

}  // namespace

std::vector<FaceListRow> face_list(const FaceFacts& facts, const Words& words, const FaceLook& look) {
    const FaceList list(facts, words, look);
    std::vector<FaceListRow> rows;
    for (const DirectoryRow& row : facts.directory.rows) rows.push_back(list.row(row));
    return rows;
}

std::string face_row_words(const FaceFacts& facts, Position position, const Words& words, const FaceLook& look) {
    const auto row = std::ranges::find_if(facts.directory.rows, [&](const DirectoryRow& one) {
        return std::ranges::find(one.positions, position) != one.positions.end();
    });
    if (row == facts.directory.rows.end()) return name_of(position);
    const FaceListRow line = FaceList(facts, words, look).row(*row);
    std::string text = line.space;
    for (const std::string* part : {&line.what, &line.device, &line.load, &line.neutral, &line.finding})
        if (!part->empty()) text += ", " + *part;
    return text;
}

std::string face_head_words(const FaceFacts& facts, const Words& words) {
    const Panel& panel = facts.panel_of();
    std::string text = panel.title.value_or(panel.id) + ", " + panel_words(facts, words) + ", " +
                       main_words(panel, words) + ", " + main_text(facts.network, facts.panel, words) + ", " +
                       words.say({tr("fed from {0}"), {fed_from_text(facts.network, facts.panel, words)}}) + ", " +
                       traced_words(facts, words);
    if (facts.panel_finding) text += ", " + FaceList(facts, words, {}).finding(*facts.panel_finding);
    return text;
}

}  // namespace doorcard
