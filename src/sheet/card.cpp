// SPDX-License-Identifier: MIT
#include "sheet/card.hpp"

#include <algorithm>

#include "assess/circuit_text.hpp"
#include "sheet/card_cut.hpp"
#include "sheet/card_parts.hpp"
#include "sheet/sheet_start.hpp"

namespace doorcard {
namespace {

constexpr double above_paper = 6;  // least room for cut marks

// Heights of the parts that every card of a panel has, found by drawing them aside.
struct Heights {
    double table_top = 0;
    double foot_part = 0;  // legend, cautions and foot, with the gaps between
};

double draw_upper(Drawing& drawing, const CardContent& card) {
    double y = draw_head(drawing, card, card.trim.y + head_drop);
    y = draw_feeds(drawing, card, y + 1.4) + 1.6;
    return draw_warnings(drawing, card, y) + 0.6;
}

double draw_lower(Drawing& drawing, const CardContent& card, double top) {
    double y = draw_legend(drawing, card, top + 1.6);
    y = draw_cautions(drawing, card, y + 1.6);
    return draw_foot(drawing, card, y + 0.8);
}

Heights heights_of(const CardContent& card) {
    Page aside;
    Drawing drawing(aside);
    const double top = draw_upper(drawing, card);
    return {top, draw_lower(drawing, card, 0)};
}

double lower_end(const Frame& trim) { return trim.bottom() - 5.2; }

class PanelCards {
public:
    PanelCards(const Network& network, const Assessment& assessment, const CardChoice& choice, const Words& words,
               std::size_t panel)
        : network_(network),
          assessment_(assessment),
          choice_(choice),
          words_(words),
          panel_(panel),
          trim_(trim_on(choice.paper, choice.cut.value_or(usual_cut))) {}

    void add_to(Sheet& sheet) {
        // The plan is made twice: notes and legend, which take height from the rows, follow from the directory alone.
        CardPlan plan = planned(1000);
        const Heights heights = heights_of(content(plan, 0));
        const double rows_height = lower_end(trim_) - heights.foot_part - heights.table_top;
        plan = planned(rows_height);
        for (std::size_t i = 0; i < plan.pages.size(); ++i) sheet.pages.push_back(page(plan, i, heights, rows_height));
        sheet.pages[sheet.pages.size() - plan.pages.size()].lines = card_lines(network_, panel_, words_);
    }

private:
    CardPlan planned(double rows_height) const {
        return card_plan(network_, panel_, trim_.x + card_margin, trim_.right() - card_margin, rows_height, words_);
    }

    CardContent content(CardPlan& plan, std::size_t card) const {
        return {network_, assessment_, choice_, words_, plan, trim_, card};
    }

    Page page(CardPlan& plan, std::size_t number, const Heights& heights, double rows_height) const {
        Page page;
        page.paper = choice_.paper;
        page.of = network_.survey().panels[panel_].id;
        page.title = page_title(page.of, number, plan.pages.size());
        page.table = table(plan, number);
        Drawing drawing(page);
        const CardContent card = content(plan, number);
        draw_cut_marks(drawing, trim_, choice_.cut.has_value(), words_);
        draw_upper(drawing, card);
        const double bottom = place_cells(plan, plan.pages[number], heights.table_top, rows_height);
        draw_rows(drawing, card, heights.table_top, bottom);
        const double lower = lower_end(trim_) - heights.foot_part;
        draw_hand_lines(drawing, {card.left(), bottom + 3, card.width(), lower - bottom - 4},
                        words_(tr("Changed by hand: space, what, date, by")));
        draw_lower(drawing, card, lower);
        draw_tag(drawing, card);
        return page;
    }

    std::vector<std::vector<std::string>> table(const CardPlan& plan, std::size_t number) const {
        std::vector<std::vector<std::string>> rows = {{words_(tr("space")), words_(tr("circuit")), words_(tr("A"))}};
        for (const DirectoryRow& row : plan.directory.rows) {
            if (!on_card(plan, number, row)) continue;
            std::string text = words_.say(row.text);
            if (!row.under.empty()) text += "; " + words_.say(row.under);
            if (row.claimed) text = words_.say({tr("{0} (only said, not traced)"), {text}});
            const std::string rating = row.breaker ? rating_text(network_.survey().breakers[*row.breaker]) : "";
            rows.push_back({name_of(row.positions), text, rating});
        }
        return rows;
    }

    static bool on_card(const CardPlan& plan, std::size_t number, const DirectoryRow& row) {
        for (const auto& cells : plan.cells)
            for (const FaceCell& cell : cells)
                if (cell.position == row.positions.front() && plan.pages[number].first <= cell.row &&
                    cell.row <= plan.pages[number].second)
                    return true;
        return false;
    }

    const Network& network_;
    const Assessment& assessment_;
    const CardChoice& choice_;
    const Words& words_;
    std::size_t panel_;
    Frame trim_;
};

}  // namespace

Paper paper_for_cut(const Paper& cut) {
    for (const Paper& paper : {half_letter_paper, letter_paper})
        if (cut.width + 2 * 3.8 <= paper.width && cut.height + 2 * 4.9 <= paper.height) return paper;
    return {cut.width + 2 * above_paper, cut.height + 2 * above_paper};
}

Sheet card_sheet(const Network& network, const Assessment& assessment, const CardChoice& choice, const Words& words) {
    const Survey& survey = network.survey();
    Sheet sheet = begun_sheet(tr("Panel directory, {0}"), survey, words);
    for (std::size_t panel = 0; panel < survey.panels.size(); ++panel)
        if (is_chosen(choice.panels, survey.panels[panel].id))
            PanelCards(network, assessment, choice, words, panel).add_to(sheet);
    return sheet;
}

}  // namespace doorcard
