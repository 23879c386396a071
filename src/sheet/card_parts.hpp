// SPDX-License-Identifier: MIT
#pragma once
#include "assess/assessment.hpp"
#include "sheet/card.hpp"
#include "sheet/card_plan.hpp"
#include "sheet/drawing.hpp"
#include "sheet/panel_facts.hpp"

namespace doorcard {

/// What every part of a card is drawn from.
struct CardContent {
    const Network& network;
    const Assessment& assessment;
    const CardChoice& choice;
    const Words& words;
    CardPlan& plan;
    Frame trim;            ///< the card as it is cut
    std::size_t card = 0;  ///< position among the panel's cards

    const Survey& survey() const { return network.survey(); }
    const Panel& panel() const { return survey().panels[plan.directory.panel]; }
    double left() const { return plan.columns.left; }
    double right() const { return plan.columns.right; }
    double width() const { return right() - left(); }
};

/// Each part draws from `top` and returns its bottom.
double draw_head(Drawing&, const CardContent&, double top);      ///< name, title, rule
double draw_feeds(Drawing&, const CardContent&, double top);     ///< the stroke: fed from, main, second source
double draw_warnings(Drawing&, const CardContent&, double top);  ///< signal boxes and notes above the table
void draw_rows(Drawing&, const CardContent&, double top, double bottom);
double draw_legend(Drawing&, const CardContent&, double top);
double draw_cautions(Drawing&, const CardContent&, double top);
double draw_foot(Drawing&, const CardContent&, double top);

/// A dated strip outside the card: what to ask before switching off; only where it fits on the paper below the card.
void draw_tag(Drawing&, const CardContent&);

}  // namespace doorcard
