// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <functional>
#include <numeric>

#include "sheet/card_parts.hpp"
#include "sheet/face_signs.hpp"
#include "sheet/sheet_foot.hpp"

namespace doorcard {
namespace {

constexpr double legend_step = 5.3;
constexpr double legend_text = 8;

// One entry of the legend: a picture of some width, drawn at (x, middle), and its words.
struct Sign {
    double width = 0;
    std::function<void(Drawing&, double, double)> draw;
    std::string words;
};

constexpr double small_handle = 8.2;

Frame small_frame(double x, double middle, double width = small_handle) { return {x, middle - 2.2, width, 4.4}; }

Sign both_handles(const CardContent& card, const Handle& handle, const std::string& words) {
    const bool single = card.plan.columns.single;
    const double width = handle.state == HandleState::off ? 10.6 : small_handle;  // the word in it must be read
    const std::string off = card.words(tr("OFF"));
    const auto draw = [handle, single, off, width](Drawing& drawing, double x, double middle) {
        Handle shown = handle;
        shown.on_left = true;
        draw_handle(drawing, small_frame(x, middle, width), shown, 7, off);
        if (single) return;
        shown.on_left = false;
        draw_handle(drawing, small_frame(x + width + 1, middle, width), shown, 7, off);
    };
    return {single ? width : 2 * width + 1, draw, words};
}

class Legend {
public:
    explicit Legend(const CardContent& card) : card_(card), rows_(card.plan.directory.rows) {}

    std::vector<Sign> signs() {
        add_handles();
        add_neutrals();
        add_trust();
        add_arrows();
        return std::move(signs_);
    }

private:
    const Breaker* breaker(const DirectoryRow& row) const {
        return row.breaker ? &card_.survey().breakers[*row.breaker] : nullptr;
    }

    bool any(const std::function<bool(const DirectoryRow&)>& is) const {
        return std::any_of(rows_.begin(), rows_.end(), is);
    }
    bool any(RowKind kind) const {
        return any([kind](const DirectoryRow& row) { return row.kind == kind; });
    }

    void add_handles() {
        Handle handle;
        handle.rating = "20";
        signs_.push_back(both_handles(card_, handle, card_.words(tr("on; amperes"))));
        handle.state = HandleState::off;
        signs_.push_back(both_handles(card_, handle, card_.words(tr("kept off"))));
        handle.state = HandleState::on;
        handle.test_button = true;
        const bool guarded = any([&](const DirectoryRow& row) {
            return breaker(row) && breaker(row)->guards && !breaker(row)->guards->empty();
        });
        if (guarded) add_handle(handle, tr("has a TEST button"));
        handle.test_button = false;
        handle.fuse = true;
        if (any([&](const DirectoryRow& row) {
                return breaker(row) && breaker(row)->device && *breaker(row)->device != "breaker";
            }))
            add_handle(handle, tr("fuse"));
    }

    void add_handle(const Handle& handle, const char* words) {
        signs_.push_back({8.2,
                          [handle](Drawing& drawing, double x, double middle) {
                              draw_handle(drawing, small_frame(x, middle), handle, 7);
                          },
                          card_.words(words)});
    }

    void add_neutrals() {
        if (card_.plan.neutrals.empty()) return;
        signs_.push_back({3,
                          [](Drawing& drawing, double x, double middle) {
                              draw_bracket(drawing, x + 2.4, middle - 1.9, middle + 1.9, true, 2, false);
                          },
                          card_.words(tr("shared neutral"))});
    }

    void add_trust() {
        const auto& directory = card_.plan.directory;
        if (directory.claimed > 0)
            signs_.push_back(
                {3,
                 [](Drawing& drawing, double x, double middle) { draw_claimed(drawing, x, middle - sign_height / 2); },
                 card_.words(tr("only said"))});
        if (directory.not_traced > 0)
            signs_.push_back({8.2,
                              [](Drawing& drawing, double x, double middle) {
                                  drawing.hatching({x, middle - 1.9, 8.2, 3.8});
                              },
                              card_.words(tr("not traced"))});
    }

    void add_arrows() {
        if (any(RowKind::source)) add_arrow(true, tr("a source feeds in"));
        if (any(RowKind::feeder)) add_arrow(false, tr("feeds a panel"));
    }

    void add_arrow(bool into, const char* words) {
        signs_.push_back({5,
                          [into](Drawing& drawing, double x, double middle) {
                              draw_arrow(drawing, x, middle - sign_height / 2, into, true);
                          },
                          card_.words(words)});
    }

    const CardContent& card_;
    const std::vector<DirectoryRow>& rows_;
    std::vector<Sign> signs_;
};

double sign_room(const Sign& sign) { return sign.width + 1.6 + text_width(sign.words, {legend_text}); }

// Columns as wide as their widest sign, filled one after the other; as many as fit.
struct LegendColumns {
    std::size_t lines = 1;
    std::vector<double> widths;
    double sum() const { return std::accumulate(widths.begin(), widths.end(), 0.0); }
};

LegendColumns columns_of(const std::vector<Sign>& signs, std::size_t columns) {
    LegendColumns found;
    found.lines = (signs.size() + columns - 1) / columns;
    for (std::size_t i = 0; i < signs.size(); ++i) {
        if (i % found.lines == 0) found.widths.push_back(0);
        found.widths.back() = std::max(found.widths.back(), sign_room(signs[i]));
    }
    return found;
}

LegendColumns legend_columns(const std::vector<Sign>& signs, double width) {
    constexpr double least_gap = 3;
    for (std::size_t columns = std::min<std::size_t>(signs.size(), 5); columns > 1; --columns) {
        LegendColumns tried = columns_of(signs, columns);
        if (tried.sum() + least_gap * static_cast<double>(tried.widths.size() - 1) <= width) return tried;
    }
    return columns_of(signs, 1);
}

// A default of the panel's own that the card shows, in words; empty for one that it does not show.
Message assumed_message(const Assumption& assumed) {
    if (assumed.key == "legs_down" && assumed.value.size() > 1)
        return {tr("legs {0} down the rows from space 1"), {assumed.value}};
    if (assumed.key == "numbering") return {tr("odd numbers on the left"), {}};
    if (assumed.key == "spaces") return {tr("{0} spaces"), {assumed.value}};
    if (assumed.key == "system") return {tr("the system of what feeds it"), {}};
    if (assumed.key == "high_leg") return {tr("high leg {0}"), {assumed.value}};
    return {};
}

std::string assumed_text(const CardContent& card) {
    const std::string of = Address{ThingKind::panel, card.panel().id, ""}.text();
    std::string text;
    for (const Assumption& assumed : card.assessment.assumed) {
        const Message message = assumed.of == of ? assumed_message(assumed) : Message{};
        if (!message.empty()) text += (text.empty() ? "" : "; ") + card.words.say(message);
    }
    return text.empty() ? text : card.words.say({tr("Assumed: {0}."), {text}});
}

std::string legs_text(const CardContent& card) {
    std::string letters;
    for (const char leg : card.network.supply(card.plan.directory.panel).legs)
        letters += (letters.empty() ? "" : ", ") + std::string(1, leg);
    if (letters.empty()) return card.words(tr("Legs not known."));
    return card.words.say({tr("{0}: legs of the supply."), {letters}});
}

bool source_label_due(const CardContent& card) {
    const auto& feeds = card.panel().fed_by;
    const bool by_feeder = std::any_of(feeds.begin(), feeds.end(),
                                       [&](const std::string& id) { return card.survey().breakers.contains(id); });
    if (!by_feeder) return false;
    int units = 0;
    for (const Dwelling& dwelling : card.survey().dwellings) units += dwelling.units.value_or(1);
    return units > 2 || card.network.in_occupancy(card.plan.directory.panel);
}

std::string labels_text(const CardContent& card) {
    if (!source_label_due(card)) return card.words(tr("This card replaces no required label."));
    if (card.choice.source_label.empty())
        return card.words(
            tr("This card replaces no required label, nor the marking of where this panel is fed from, which is due "
               "here."));
    return card.words.say(
        {tr("This card replaces no required label, nor the marking of where this panel is fed from, due here ({0})."),
         {card.choice.source_label}});
}

std::vector<FootCell> foot_cells(const CardContent& card) {
    const auto count = static_cast<double>(card.plan.pages.size());
    std::vector<FootCell> cells = dated_cells(card.survey(), card.words);
    cells.push_back({card.words(tr("card")),
                     card.words.say({tr("{0:.0f} of {1:.0f}"), {static_cast<double>(card.card + 1), count}})});
    return cells;
}

}  // namespace

double draw_legend(Drawing& drawing, const CardContent& card, double top) {
    const std::vector<Sign> signs = Legend(card).signs();
    const LegendColumns columns = legend_columns(signs, card.width());
    const double count = static_cast<double>(columns.widths.size());
    const double gap = count > 1 ? std::min(12.0, (card.width() - columns.sum()) / (count - 1)) : 0;
    double x = card.left();
    for (std::size_t i = 0; i < signs.size(); ++i) {
        if (i > 0 && i % columns.lines == 0) x += columns.widths[i / columns.lines - 1] + gap;
        const Sign& sign = signs[i];
        const double middle = top + 2.4 + legend_step * static_cast<double>(i % columns.lines);
        sign.draw(drawing, x, middle);
        const double text_x = x + sign.width + 1.6;
        const double room = std::min(text_width(sign.words, {legend_text}) + 0.3, card.right() - text_x);
        drawing.text({text_x, middle - 1.9, room, 3.8}, middle + cap_height(legend_text) / 2,
                     cut_to(sign.words, {legend_text}, room), {legend_text});
    }
    return top + legend_step * static_cast<double>(columns.lines) - 0.5;
}

double draw_cautions(Drawing& drawing, const CardContent& card, double top) {
    const std::string first = card.words(tr("Off here is not proof of dead. Test before you touch."));
    const TypeStyle style = fitting(first, {10.5, true}, card.width(), {10.5, 10, 9.5, 9});
    double y = drawing.paragraph({card.left(), top, card.width(), 15}, first, style) + 0.9;
    std::string second = card.words(tr("Work inside is for qualified persons: lock out, tag, test dead.")) + " " +
                         labels_text(card) + " " + legs_text(card);
    const std::string abbreviations = abbreviations_text(card.network, card.plan.directory, card.words);
    if (!abbreviations.empty()) second += " " + abbreviations;
    y = drawing.paragraph({card.left(), y, card.width(), 30}, second, {8}) + 0.8;
    const std::string assumed = assumed_text(card);
    if (!assumed.empty()) y = drawing.paragraph({card.left(), y, card.width(), 10}, assumed, {7}, inks::caption) + 0.6;
    return y;
}

double draw_foot(Drawing& drawing, const CardContent& card, double top) {
    return draw_foot_strip(drawing, {card.left(), top, card.width(), foot_height}, {}, card.plan.directory,
                           foot_cells(card), card.words);
}

}  // namespace doorcard
