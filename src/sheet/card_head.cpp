// SPDX-License-Identifier: MIT
#include <algorithm>

#include "assess/circuit_text.hpp"
#include "sheet/card_neutrals.hpp"
#include "sheet/card_parts.hpp"
#include "sheet/face_signs.hpp"
#include "sheet/sheet_head.hpp"
#include "sheet/signal.hpp"

namespace doorcard {
namespace {

void draw_stroke(Drawing& drawing, const CardContent& card, double y, const FeedColumn& second, const FeedColumn& third,
                 int sources, bool feeds) {
    const double left = card.left();
    const bool known = !card.panel().fed_by.empty();
    drawing.line(left, y, second.x + 8.5, y, 0.45, inks::text,
                 known ? std::vector<double>{} : std::vector<double>{1.2, 0.9});
    const bool own_main = card.panel().main == MainKind::breaker || card.panel().main == MainKind::fuses ||
                          card.panel().main == MainKind::split_bus;
    arrow_head(drawing, own_main ? second.x - 0.7 : second.x + 8.0, y, true, 2.4);
    if (own_main) draw_stroke_handle(drawing, second.x, y, true, card.panel().main == MainKind::fuses);
    const double bus_end = sources > 0 || feeds ? third.x - 4.5 : card.right();
    drawing.fill({second.x + 8.5, y - 0.7, bus_end - second.x - 8.5, 1.4});
    if (sources == 0 && !feeds) return;
    drawing.line(bus_end, y, card.right(), y, 0.45);
    draw_stroke_handle(drawing, third.x, y, false, false);
    if (sources > 0)
        arrow_head(drawing, third.x + 7.7, y, false, 2.4);
    else
        arrow_head(drawing, card.right(), y, true, 2.4);
}

std::string off_reasons(const Network& network, const PanelDirectory& directory) {
    std::string text;
    for (const DirectoryRow& row : directory.rows) {
        if (row.kind != RowKind::off || !network.survey().breakers[*row.breaker].off_why) continue;
        text += (text.empty() ? "" : "; ") + name_of(row.positions) + ": " +
                *network.survey().breakers[*row.breaker].off_why;
    }
    return text.empty() ? text : text + ".";
}

}  // namespace

double draw_head(Drawing& drawing, const CardContent& card, double top) {
    const HeadWords words{card.panel().id, title_and_place(card.panel(), card.words),
                          card.survey().heading.title.value_or(""),
                          system_text(card.network, card.plan.directory.panel, card.words)};
    return draw_head(drawing, {card.left(), top, card.width(), 0}, words, 24);
}

double draw_feeds(Drawing& drawing, const CardContent& card, double top) {
    const std::size_t panel = card.plan.directory.panel;
    const std::vector<PanelSource> sources = further_sources(card.network, card.plan.directory.panel);
    const std::string fed = fed_text(card.network, card.plan.directory, card.words);
    const bool third_used = !sources.empty() || !fed.empty();
    const double step = third_used ? card.width() * 0.342 : card.width() * 0.46;
    FeedColumn first{card.left(), step - 3, card.words(tr("fed from")), fed_from_text(card.network, panel, card.words)};
    FeedColumn second{card.left() + step, third_used ? step - 3 : card.width() - step,
                      main_caption(card.panel(), card.words), main_text(card.network, panel, card.words)};
    FeedColumn third{card.left() + 2 * step, card.width() - 2 * step,
                     card.words(sources.empty()       ? tr("feeds")
                                : sources.size() == 1 ? tr("second source")
                                                      : tr("further sources")),
                     sources.empty() ? fed : further_text(card.network, panel, sources, card.words)};
    draw_stroke(drawing, card, top + 3.8, second, third, static_cast<int>(sources.size()), !fed.empty());
    double bottom = std::max(draw_feed_column(drawing, first, top + 6.8), draw_feed_column(drawing, second, top + 6.8));
    if (third_used) bottom = std::max(bottom, draw_feed_column(drawing, third, top + 6.8));
    return bottom;
}

double draw_warnings(Drawing& drawing, const CardContent& card, double top) {
    double y = top;
    const std::string sources = sources_text(card.network, card.plan.directory.panel, card.words);
    if (!sources.empty())
        y = draw_signal(drawing, {card.left(), y, card.width(), 0}, card.words(tr("CAUTION")), inks::caution,
                        card.words(tr("MULTIPLE SOURCES OF POWER")), sources) +
            1.4;
    const std::string off = kept_off_text(card.network, card.plan.directory, card.words);
    if (!off.empty())
        y = draw_signal(drawing, {card.left(), y, card.width(), 0}, card.words(tr("WARNING")), inks::warning,
                        card.words.say({tr("Do not switch on {0}"), {off}}),
                        off_reasons(card.network, card.plan.directory)) +
            1.2;
    for (const std::string& note : untied_notes(card.plan, card.words))
        y = drawing.paragraph({card.left(), y + 0.3, card.width(), 12}, note, {8, true}) + 0.6;
    const std::string left = card.words.say({tr("Handles as left, {0}."), {dated(card.survey(), card.words)}});
    if (card.plan.directory.claimed == 0)
        return drawing.paragraph({card.left(), y + 0.2, card.width(), 8}, left, {8}, inks::caption) + 1.0;
    draw_claimed(drawing, card.left(), y);
    const std::string note = card.words(tr("only said, not traced: treat as live."));
    return drawing.paragraph({card.left() + 4, y + 0.4, card.width() - 4, 8}, note + "  " + left, {8}, inks::caption) +
           1.0;
}

}  // namespace doorcard
