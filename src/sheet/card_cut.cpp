// SPDX-License-Identifier: MIT
#include <algorithm>

#include "sheet/card_cut.hpp"
#include "sheet/card_parts.hpp"

namespace doorcard {
namespace {

constexpr double mark_gap = 0.7;
constexpr double mark_length = 2.6;
constexpr double paper_edge = 6;  // that printers leave blank

void corner(Drawing& drawing, double x, double y, double outward_x, double outward_y) {
    drawing.line(x + outward_x * mark_gap, y, x + outward_x * (mark_gap + mark_length), y, lines::row);
    drawing.line(x, y + outward_y * mark_gap, x, y + outward_y * (mark_gap + mark_length), lines::row);
}

}  // namespace

Frame trim_on(const Paper& paper, const Paper& cut) {
    const double x = (paper.width - cut.width) / 2;
    const double middle = (paper.height - cut.height) / 2;
    return {x, middle > 15 ? 15 : middle, cut.width, cut.height};
}

void draw_cut_marks(Drawing& drawing, const Frame& trim, bool measured, const Words& words) {
    corner(drawing, trim.x, trim.y, -1, -1);
    corner(drawing, trim.right(), trim.y, 1, -1);
    corner(drawing, trim.x, trim.bottom(), -1, 1);
    corner(drawing, trim.right(), trim.bottom(), 1, 1);
    const Message cut{measured ? tr("cut to {0:.0f} × {1:.0f} mm, the door pocket as measured")
                               : tr("cut to {0:.0f} × {1:.0f} mm; measure the door pocket first"),
                      {trim.width, trim.height}};
    const std::string text = words.say(cut);
    const TypeStyle style{6.5};
    drawing.text({trim.x + 5, trim.bottom() + 1, trim.width - 10, 3}, trim.bottom() + 3.3,
                 cut_to(text, style, trim.width - 10), style, Align::middle, inks::caption);
}

void draw_hand_lines(Drawing& drawing, const Frame& room, const std::string& words) {
    constexpr double step = 7.5;
    if (room.height < 2.4 * step) return;
    const TypeStyle style{8};
    drawing.text({room.x, room.y, room.width, 4}, room.y + 3, cut_to(words, style, room.width), style, Align::left,
                 inks::caption);
    for (double y = room.y + 3.4 + step; y < room.bottom(); y += step)
        drawing.line(room.x, y, room.right(), y, lines::hair);
}

void draw_tag(Drawing& drawing, const CardContent& card) {
    const std::vector<std::string> asks = ask_before(card.network, card.plan.directory);
    if (asks.empty() || card.card > 0 || card.choice.back_follows) return;
    std::string list;
    for (const std::string& ask : asks) list += (list.empty() ? "" : ",  ") + ask;
    const double top = card.trim.bottom() + 8;
    const double width = card.width() - 6;
    const TypeStyle large = fitting(list, {16, true}, width, {16, 13, 11, 9.5});
    const std::string head = card.words(tr("ASK before switching off, except in an emergency"));
    const std::string when =
        card.words.say({tr("As of {0}. Tear off when it no longer holds."), {dated(card.survey(), card.words)}});
    const auto pieces = broken_lines(list, large, width);
    const double height = 3 + lines_height(1, 9) + 2 + lines_height(pieces.size(), large.points) + 2 +
                          lines_height(broken_lines(when, {8}, width).size(), 8) + 2.4;
    if (top + height > drawing.page().paper.height - paper_edge) return;  // the card's back takes it
    drawing.box({card.left(), top, card.width(), height}, lines::outline, std::nullopt, inks::text, {1.6, 1.1});
    const double x = card.left() + 3;
    double y = drawing.paragraph({x, top + 3, width, 15}, head, {9, true}) + 1.6;
    y = drawing.paragraph({x, y, width, height}, list, large) + 1.8;
    drawing.paragraph({x, y, width, 15}, when, {8}, inks::caption);
}

}  // namespace doorcard
