// SPDX-License-Identifier: MIT
#include <algorithm>

#include "assess/circuit_text.hpp"
#include "sheet/card_neutrals.hpp"
#include "sheet/card_parts.hpp"
#include "sheet/card_signs.hpp"

namespace doorcard {
namespace {

std::string title_and_place(const Panel& panel, const Words& words) {
    const std::string title = panel.title && panel.title != panel.id ? *panel.title : "";
    if (title.empty()) return panel.location.value_or("");
    return panel.location ? words.say({tr("{0}, {1}"), {title, *panel.location}}) : title;
}

// One line beside the name where it fits, else two smaller ones.
void draw_title(Drawing& drawing, const std::string& title, const Frame& room, double baseline) {
    const TypeStyle style = fitting(title, {10.5}, room.width, {10.5, 9.5, 8.5});
    if (text_width(title, style) <= room.width)
        return drawing.text({room.x, baseline - 4, room.width, 5.2}, baseline, title, style);
    const TypeStyle small{8.5};
    const auto pieces = even_lines(title, small, room.width, 2);
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const double at = baseline - static_cast<double>(pieces.size() - 1 - i) * line_advance(small.points);
        drawing.text({room.x, at - 2.7, room.width, 3.5}, at, pieces[i], small);
    }
}

struct FeedColumn {
    double x = 0, width = 0;
    std::string caption, text;
};

double draw_column(Drawing& drawing, const FeedColumn& column, double top) {
    const TypeStyle caption = fitting(column.caption, {8}, column.width, {8, 7.5, 7, 6.5});
    drawing.text({column.x, top, column.width, 3.2}, top + 2.3, cut_to(column.caption, caption, column.width), caption,
                 Align::left, inks::caption);
    double baseline = top + 6.0;
    const auto nine = broken_lines(column.text, {9}, column.width);
    const TypeStyle style = nine.size() <= 2 ? TypeStyle{9} : TypeStyle{8};
    for (const std::string& piece : even_lines(column.text, style, column.width, 4)) {
        drawing.text({column.x, baseline - 2.9, column.width, 3.7}, baseline, piece, style);
        baseline += line_advance(style.points) - 0.1;
    }
    return baseline - line_advance(style.points) + descent(style.points);
}

// A breaker on the stroke is our own handle, its lever toward the bus.
void draw_stroke_handle(Drawing& drawing, double x, double y, bool bus_right, bool fuse) {
    Handle handle;
    handle.on_left = bus_right;
    handle.fuse = fuse;
    drawing.fill({x, y - 2.1, 7, 4.2}, inks::paper);
    draw_handle(drawing, {x, y - 2.1, 7, 4.2}, handle);
}

std::vector<PanelSource> further_sources(const CardContent& card) {
    std::vector<PanelSource> sources = sources_at(card.network, card.plan.directory.panel);
    std::erase_if(sources, [](const PanelSource& source) { return !source.through; });
    return sources;
}

std::string further_text(const CardContent& card, const std::vector<PanelSource>& sources) {
    std::string text;
    for (const PanelSource& source : sources) {
        const Source& thing = card.survey().sources[source.source];
        const Breaker& breaker = card.survey().breakers[*source.through];
        const std::string spaces =
            (breaker.panel == card.panel().id ? "" : breaker.panel + " ") + name_of(positions_of(breaker));
        const Message at{tr("{0} at {1}"), {source_name(thing), spaces}};
        const Message whole = thing.disconnect ? Message{tr("{0}; off: {1}"), {at, *thing.disconnect}} : at;
        text += (text.empty() ? "" : "; ") + card.words.say(whole);
    }
    return text;
}

std::string fed_text(const CardContent& card) {
    std::vector<Message::Part> parts;
    for (const DirectoryRow& row : card.plan.directory.rows)
        if (row.kind == RowKind::feeder)
            for (const std::size_t panel : card.network.panels_fed_by(*row.breaker))
                parts.emplace_back(Message{tr("{0} at {1}"), {card.survey().panels[panel].id, name_of(row.positions)}});
    return card.words.say(and_list(std::move(parts)));
}

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

constexpr TypeStyle signal_word{10.5, true};

void draw_signal_box(Drawing& drawing, const CardContent& card, double top, double height, double panel,
                     const std::string& signal, Ink colour) {
    drawing.box({card.left(), top, panel, height}, lines::outline, colour);
    drawing.box({card.left(), top, card.width(), height}, lines::outline);
    drawing.text({card.left(), top, panel, height}, top + height / 2 + cap_height(signal_word.points) / 2, signal,
                 signal_word, Align::middle, inks::black);
}

double draw_signal(Drawing& drawing, const CardContent& card, double top, const std::string& signal, Ink colour,
                   const std::string& title, const std::string& text) {
    const double panel = std::max(26.0, text_width(signal, signal_word) + 5);
    const double x = card.left() + panel + 2;
    const double room = card.right() - x - 1.2;
    const auto titles = broken_lines(title, {9, true}, room);
    const auto pieces = broken_lines(text, {8.5}, room);
    const double beside = text_width(title, {9, true}) + 2.5;  // a short text stands on the title's line
    if (pieces.size() == 1 && beside + text_width(text, {8.5}) <= room) {
        const double middle = top + 3.2 + cap_height(9) / 2;
        draw_signal_box(drawing, card, top, 6.4, panel, signal, colour);
        drawing.text({x, top, beside - 0.5, 6.4}, middle, title, {9, true});
        drawing.text({x + beside, top, room - beside, 6.4}, middle, text, {8.5});
        return top + 6.4;
    }
    double height =
        1.5 + lines_height(titles.size(), 9) + (pieces.empty() ? 0 : 0.9 + lines_height(pieces.size(), 8.5)) + 0.6;
    height = std::max(height, 6.4);
    draw_signal_box(drawing, card, top, height, panel, signal, colour);
    const double middle = pieces.empty() ? (height - lines_height(titles.size(), 9)) / 2 : 1.5;
    const double below = drawing.paragraph({x, top + middle, room, height - 1.5}, title, {9, true});
    if (!pieces.empty()) drawing.paragraph({x, below + 0.7, room, height}, text, {8.5});
    return top + height;
}

std::string off_reasons(const CardContent& card) {
    std::string text;
    for (const DirectoryRow& row : card.plan.directory.rows)
        if (row.kind == RowKind::off && card.survey().breakers[*row.breaker].off_why)
            text += (text.empty() ? "" : "; ") + name_of(row.positions) + ": " +
                    *card.survey().breakers[*row.breaker].off_why;
    return text.empty() ? text : text + ".";
}

}  // namespace

double draw_head(Drawing& drawing, const CardContent& card, double top) {
    const double baseline = top + 5.2;
    const double rule = top + 8.2;
    const std::string survey_title = card.survey().heading.title.value_or("");
    const std::string system = system_text(card.network, card.plan.directory.panel, card.words);
    const double right_room =
        std::min(card.width() * 0.46, std::max(text_width(survey_title, {10, true}), text_width(system, {8.5})) + 0.5);
    const double right_x = card.right() - right_room;
    const TypeStyle owner = fitting(survey_title, {10, true}, right_room, {10, 9, 8});
    drawing.text({right_x, top - 3.4, right_room, 4.6}, top + 0.6, cut_to(survey_title, owner, right_room), owner,
                 Align::right);
    const TypeStyle volts = fitting(system, {8.5}, right_room, {8.5, 8, 7.5, 7});
    drawing.text({right_x, baseline - 3.4, right_room, 4.6}, baseline, cut_to(system, volts, right_room), volts,
                 Align::right);
    const double left_room = right_x - card.left() - 3;
    const TypeStyle name_style = fitting(card.panel().id, {24, true}, left_room * 0.7, {24, 20, 16, 13, 11, 9});
    const std::string name = cut_to(card.panel().id, name_style, left_room * 0.7);
    const double stem = ink_extent(name, name_style).left;  // its first stem stands on the margin
    const double name_width = text_width(name, name_style) - stem;
    drawing.text({card.left() - stem, top - 3.4, name_width + stem, 10.6}, baseline, name, name_style);
    const double title_x = card.left() + name_width + 2.8;
    draw_title(drawing, title_and_place(card.panel(), card.words), {title_x, top - 2, right_x - title_x - 2.5, 8},
               baseline);
    drawing.line(card.left(), rule, card.right(), rule, lines::heavy);
    drawing.fill({card.left(), rule + lines::heavy / 2, name_width, 1.1}, inks::accent);
    return rule + lines::heavy / 2 + 1.1;
}

double draw_feeds(Drawing& drawing, const CardContent& card, double top) {
    const std::size_t panel = card.plan.directory.panel;
    const std::vector<PanelSource> sources = further_sources(card);
    const std::string fed = fed_text(card);
    const bool third_used = !sources.empty() || !fed.empty();
    const double step = third_used ? card.width() * 0.342 : card.width() * 0.46;
    FeedColumn first{card.left(), step - 3, card.words(tr("fed from")), fed_from_text(card.network, panel, card.words)};
    FeedColumn second{card.left() + step, third_used ? step - 3 : card.width() - step,
                      main_caption(card.panel(), card.words), main_text(card.network, panel, card.words)};
    FeedColumn third{card.left() + 2 * step, card.width() - 2 * step,
                     card.words(sources.empty()       ? tr("feeds")
                                : sources.size() == 1 ? tr("second source")
                                                      : tr("further sources")),
                     sources.empty() ? fed : further_text(card, sources)};
    draw_stroke(drawing, card, top + 3.8, second, third, static_cast<int>(sources.size()), !fed.empty());
    double bottom = std::max(draw_column(drawing, first, top + 6.8), draw_column(drawing, second, top + 6.8));
    if (third_used) bottom = std::max(bottom, draw_column(drawing, third, top + 6.8));
    return bottom;
}

double draw_warnings(Drawing& drawing, const CardContent& card, double top) {
    double y = top;
    const std::string sources = sources_text(card.network, card.plan.directory.panel, card.words);
    if (!sources.empty())
        y = draw_signal(drawing, card, y, card.words(tr("CAUTION")), inks::caution,
                        card.words(tr("MULTIPLE SOURCES OF POWER")), sources) +
            1.4;
    const std::string off = kept_off_text(card.network, card.plan.directory, card.words);
    if (!off.empty())
        y = draw_signal(drawing, card, y, card.words(tr("WARNING")), inks::warning,
                        card.words.say({tr("Do not switch on {0}"), {off}}), off_reasons(card)) +
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
