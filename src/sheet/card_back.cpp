// SPDX-License-Identifier: MIT
#include "sheet/card_back.hpp"

#include <algorithm>

#include "sheet/card_back_parts.hpp"
#include "sheet/card_cut.hpp"
#include "sheet/panel_facts.hpp"
#include "sheet/sheet_start.hpp"

namespace doorcard {

double BackContent::left() const { return trim.x + card_margin; }
double BackContent::right() const { return trim.right() - card_margin; }
double BackContent::bottom() const { return trim.bottom() - 4.6; }

namespace {

constexpr double least_table = 26;  // less of it beside the safety words is no table, mm

// What stands on one card.
struct BackCard {
    std::pair<std::size_t, std::size_t> rows;
    bool safety = false;
    bool tag = false;
};

// Heights of what stands above and below the table, found by drawing it aside.
struct BackHeights {
    double top = 0, top_alone = 0;  // where the table begins; without the notes on it
    double safety = 0, see_first = 0, tag = 0;
};

class PanelBacks {
public:
    PanelBacks(const Network& network, const CardChoice& choice, const Words& words, std::size_t panel)
        : network_(network),
          words_(words),
          directory_(rooms_of(network, panel)),
          names_(network, directory_, words),
          said_(back_words(network, directory_, names_, words)),
          back_{
              network, choice, words, directory_, names_, said_, trim_on(choice.paper, choice.cut.value_or(usual_cut))},
          rows_(back_rows(back_)),
          heights_(heights()) {
        fit_safety();
    }

    void add_to(Sheet& sheet) {
        const std::vector<BackCard> cards = planned();
        for (std::size_t i = 0; i < cards.size(); ++i) sheet.pages.push_back(page(cards, i));
        sheet.pages[sheet.pages.size() - cards.size()].lines = card_back_lines(network_, directory_.panel, words_);
    }

private:
    BackHeights heights() const {
        Page aside;
        Drawing drawing(aside);
        BackHeights found;
        found.top = draw_back_head(drawing, back_, 0, 2, true);
        found.top_alone = rows_.empty() ? found.top : draw_back_head(drawing, back_, 0, 2, false);
        found.safety = draw_safety(drawing, back_, 0);
        found.see_first = draw_see_first_card(drawing, back_, 1, 0);
        found.tag = draw_back_tag(drawing, back_, 0);
        return found;
    }

    // On a small card the places of the RESET buttons may leave no room for the rest.
    void fit_safety() {
        if (heights_.top_alone + heights_.safety <= back_.bottom()) return;
        said_.receptacles = said_.receptacles_shortly;
        heights_ = heights();
    }

    // The table takes what the safety words and the tag leave on the first card, and further cards whole. Where they
    // leave too little it begins on the second; where the tag has no room it goes to the last, or a card of its own.
    std::vector<BackCard> planned() const {
        constexpr double gap = 2.4;
        const double all = back_.bottom() - heights_.top;
        const double beside = all - heights_.safety - heights_.tag - gap;
        const double whole = back_rows_height(rows_, {0, rows_.size()});
        const bool table = !rows_.empty() && beside >= std::min(whole, least_table);
        std::vector<BackCard> cards = {{{0, table ? rows_up_to(0, beside) : 0}, true, false}};
        cards[0].tag =
            heights_.tag > 0 && (table || back_.bottom() - heights_.top_alone >= heights_.safety + heights_.tag);
        const double further = all - heights_.see_first - gap;
        for (std::size_t at = cards[0].rows.second; at < rows_.size();) {
            const std::size_t end = std::max(at + 1, rows_up_to(at, further));
            cards.push_back({{at, end}, false, false});
            at = end;
        }
        if (cards[0].tag || heights_.tag == 0) return cards;
        const bool fits = cards.size() > 1 && back_rows_height(rows_, cards.back().rows) + heights_.tag <= further;
        if (!fits) cards.push_back({{rows_.size(), rows_.size()}, false, false});
        cards.back().tag = true;
        return cards;
    }

    // Rooms are parted only where they are longer than half of what there is.
    std::size_t rows_up_to(std::size_t first, double height) const {
        std::size_t last = first;
        while (last < rows_.size() && back_rows_height(rows_, {first, last + 1}) <= height) ++last;
        if (last == rows_.size() || last == first || rows_[last].part != rows_[last - 1].part) return last;
        std::size_t begin = last;
        while (begin > first && rows_[begin - 1].part == rows_[last].part) --begin;
        if (begin == first || back_rows_height(rows_, {first, begin}) < height / 2) return last;
        return begin;
    }

    Page page(const std::vector<BackCard>& cards, std::size_t number) const {
        const BackCard& card = cards[number];
        Page page;
        page.paper = back_.choice.paper;
        page.of = network_.survey().panels[directory_.panel].id;
        page.title = words_.say({tr("{0}, by room"), {page_title(page.of, number, cards.size())}});
        page.table = table(card);
        Drawing drawing(page);
        draw_cut_marks(drawing, back_.trim, back_.choice.cut.has_value(), words_);
        const bool has_rows = card.rows.first < card.rows.second;
        const double top = draw_back_head(drawing, back_, number, cards.size(), has_rows || rows_.empty());
        double bottom = top;
        if (has_rows) bottom = draw_back_rows(drawing, back_, rows_, card.rows, top);
        const double tag = back_.bottom() - (card.tag ? heights_.tag : 0);
        const double lower = tag - (card.safety ? heights_.safety : heights_.see_first);
        if (card.safety && !has_rows && !rows_.empty()) bottom = draw_rooms_follow(drawing, top, lower);
        draw_hand_lines(drawing, {back_.left(), bottom + 3, back_.width(), lower - bottom - 4},
                        words_(tr("Changed by hand: room, what, handle, date, by")));
        if (card.safety)
            draw_safety(drawing, back_, lower);
        else
            draw_see_first_card(drawing, back_, tag_card(cards), lower);
        if (card.tag) draw_back_tag(drawing, back_, tag);
        return page;
    }

    // Where there is room for it.
    double draw_rooms_follow(Drawing& drawing, double top, double lower) const {
        if (lower - top < 7) return top;
        const Frame room{back_.left(), top + 1, back_.width(), 10};
        return drawing.paragraph(room, words_(tr("The rooms begin on card 2.")), {10.5, true});
    }

    static std::optional<std::size_t> tag_card(const std::vector<BackCard>& cards) {
        for (std::size_t i = 0; i < cards.size(); ++i)
            if (cards[i].tag) return i;
        return std::nullopt;
    }

    std::vector<std::vector<std::string>> table(const BackCard& card) const {
        std::vector<std::vector<std::string>> rows = {
            {words_(tr("room")), words_(tr("what")), words_(tr("to switch off, throw"))}};
        std::size_t at = 0;
        for (const RoomPart& part : directory_.parts)
            for (const RoomLine& line : part.lines) {
                if (card.rows.first <= at && at < card.rows.second)
                    rows.push_back({heading_of(directory_, part, words_), what_of(part, line, words_),
                                    answer_of(line, names_, words_).text});
                ++at;
            }
        return rows;
    }

    const Network& network_;
    const Words& words_;
    const RoomDirectory directory_;
    const HandleNames names_;
    BackWords said_;
    const BackContent back_;
    const std::vector<BackRow> rows_;
    BackHeights heights_;
};

}  // namespace

Sheet card_back_sheet(const Network& network, const Assessment&, const CardChoice& choice, const Words& words) {
    const Survey& survey = network.survey();
    Sheet sheet = begun_sheet(tr("Panel directory by room, {0}"), survey, words);
    for (std::size_t panel = 0; panel < survey.panels.size(); ++panel)
        if (is_chosen(choice.panels, survey.panels[panel].id)) PanelBacks(network, choice, words, panel).add_to(sheet);
    return sheet;
}

}  // namespace doorcard
