// SPDX-License-Identifier: MIT
#include <algorithm>

#include "sheet/card_back_parts.hpp"
#include "sheet/face_signs.hpp"
#include "sheet/panel_facts.hpp"
#include "sheet/sheet_head.hpp"
#include "sheet/signal.hpp"

namespace doorcard {
namespace {

constexpr double between_columns = 5;
constexpr TypeStyle heading{11, true};
constexpr TypeStyle step_number{10, true};
constexpr TypeStyle step_text{9};
constexpr TypeStyle note_text{8.5};
constexpr double side_label = 10;  // beside the pictures of a reset, mm
constexpr double arrow = 3.8;

// A column that is written downward.
class Column {
public:
    Column(Drawing& drawing, double x, double width, double top) : drawing_(drawing), x_(x), width_(width), y_(top) {}

    double y() const { return y_; }
    double x() const { return x_; }
    double width() const { return width_; }
    void skip(double height) { y_ += height; }

    void head(const std::string& words) {
        const TypeStyle style = fitting(words, heading, width_, {11, 10, 9});
        drawing_.text({x_, y_ - 0.9, width_, 5.4}, y_ + 3, words, style);
        drawing_.line(x_, y_ + 4.6, x_ + width_, y_ + 4.6, lines::row);
        y_ += 6;
    }

    void step(const std::string& words) {
        constexpr double indent = 5;
        ++steps_;
        drawing_.text({x_, y_ - 0.9, indent - 0.5, 4.5}, y_ + cap_height(step_number.points), std::to_string(steps_),
                      step_number);
        y_ = drawing_.paragraph({x_ + indent, y_, width_ - indent, 60}, words, step_text) + 0.9;
    }

    void note(const std::string& words, const TypeStyle& style) {
        y_ = drawing_.paragraph({x_, y_, width_, 90}, words, style) + 0.9;
    }

private:
    Drawing& drawing_;
    double x_, width_, y_;
    int steps_ = 0;
};

void draw_tripped(Drawing& drawing, const Frame& box) {
    constexpr double inset = 0.75;
    drawing.box(box, lines::outline);
    const double lever = std::min(lever_width, box.width * 0.3);
    drawing.fill({box.x + (box.width - lever) / 2, box.y + inset, lever, box.height - 2 * inset});
}

void draw_arrow_between(Drawing& drawing, double x, double y) {
    drawing.line(x + 0.5, y, x + arrow - 1.6, y, 0.45);
    arrow_head(drawing, x + arrow - 0.5, y, true);
}

// Tripped, off, on, of handles at one side of the panel.
void draw_reset(Drawing& drawing, const Frame& first, bool on_left, const Words& words) {
    Frame box = first;
    const double middle = box.y + box.height / 2;
    draw_tripped(drawing, box);
    Handle handle;
    handle.on_left = on_left;
    for (const HandleState state : {HandleState::off, HandleState::on}) {
        draw_arrow_between(drawing, box.right(), middle);
        box.x = box.right() + arrow;
        handle.state = state;
        draw_handle(drawing, box, handle, 8, words(tr("OFF")));
    }
}

void draw_resets(Drawing& drawing, const BackContent& back, Column& column) {
    const bool both = back.said.two_sided;
    const double label = both ? side_label : 0;
    const double width = std::min(13.0, (column.width() - label - 2 * arrow) / 3);
    constexpr double height = 5, step = 6;
    const double x = column.x() + label;
    for (const bool on_left : {true, false}) {
        if (!both && !on_left) break;
        if (both) {
            const std::string side = back.words(on_left ? tr("left") : tr("right"));
            const TypeStyle style = fitting(side, {8}, label - 0.6, {8, 7, 6});
            drawing.text({column.x(), column.y(), label - 0.4, height}, column.y() + height / 2 + cap_height(8) / 2,
                         side, style);
        }
        draw_reset(drawing, {x, column.y(), width, height}, on_left, back.words);
        column.skip(step);
    }
    const char* captions[] = {tr("tripped"), tr("off"), tr("on")};
    for (int i = 0; i < 3; ++i) {
        const std::string words = back.words(captions[i]);
        const double room = width + arrow - 1;
        const TypeStyle style = fitting(words, {8}, room, {8, 7, 6});
        const double left = x + i * (width + arrow) - (arrow - 1) / 2;
        drawing.text({left, column.y() - 0.6, room, 3.6}, column.y() + 1.8, words, style, Align::middle, inks::caption);
    }
    column.skip(3.8);
}

double draw_trips(Drawing& drawing, const BackContent& back, Column column) {
    column.head(back.words(tr("If it trips")));
    for (const std::string& step : back.said.trip_steps) column.step(step);
    if (back.said.resets) {
        draw_resets(drawing, back, column);
        column.note(back.said.reset_note, note_text);
        column.skip(0.4);
    }
    for (const std::string& step : back.said.after_reset) column.step(step);
    return column.y();
}

double draw_all_off(const BackContent& back, Column& column) {
    column.head(back.words(tr("Everything off")));
    for (const std::string& step : back.said.off_steps) column.step(step);
    column.skip(0.4);
    column.note(back.said.off_note, {9, true});
    return column.y();
}

double draw_proof(Drawing& drawing, const BackContent& back, double top) {
    const std::string& words = back.said.off_is_not_dead;
    const TypeStyle style = fitting(words, {10.5, true}, back.width(), {10.5, 10, 9.5, 9, 8});
    return drawing.paragraph({back.left(), top, back.width(), 10}, words, style) + 0.6;
}

double draw_not_traced(Drawing& drawing, const BackContent& back, double top) {
    constexpr double hatching = 8, indent = 10;
    drawing.hatching({back.left(), top - 0.4, hatching, 3.2});
    return drawing.paragraph({back.left() + indent, top, back.width() - indent, 20}, back.said.not_traced,
                             {8.5, true}) +
           1.1;
}

}  // namespace

double draw_back_head(Drawing& drawing, const BackContent& back, std::size_t card, std::size_t cards, bool notes) {
    std::string date = dated(back.network.survey(), back.words);
    if (cards > 1)
        date += "   " + back.words.say({tr("card {0:.0f} of {1:.0f}"),
                                        {static_cast<double>(card + 1), static_cast<double>(cards)}});
    constexpr double least_for_title = 120;  // of a narrower card the table's head says it
    const HeadWords head{back.words(tr("By room")),
                         back.trim.width < least_for_title ? "" : back.words(tr("which handle to throw")),
                         back.network.survey().heading.title.value_or(""), date};
    const Frame room{back.left(), back.trim.y + 6, back.width(), 0};
    double y = draw_head(drawing, room, head, 24) + 1.2;
    y = drawing.paragraph({back.left(), y, back.width(), 20}, back.names.key(), {9}) + 1.2;
    if (!back.said.off_title.empty())
        y = draw_signal(drawing, {back.left(), y, back.width(), 0}, back.words(tr("WARNING")), inks::warning,
                        back.said.off_title, back.said.off_reasons) +
            1.4;
    if (!notes) return y + 0.4;
    if (!back.said.not_traced.empty()) y = draw_not_traced(drawing, back, y);
    if (back.said.claimed.empty()) return y + 0.4;
    draw_claimed(drawing, back.left(), y - 0.3);
    return drawing.paragraph({back.left() + 4, y, back.width() - 4, 8}, back.said.claimed, {8.5}) + 1.3;
}

double draw_safety(Drawing& drawing, const BackContent& back, double top) {
    const double y = draw_signal(drawing, {back.left(), top, back.width(), 0}, back.words(tr("WARNING")), inks::warning,
                                 back.said.danger_title, back.said.danger_text) +
                     2.6;
    const double width = (back.width() - between_columns) / 2;
    const double trips = draw_trips(drawing, back, {drawing, back.left(), width, y});
    Column right(drawing, back.left() + width + between_columns, width, y);
    draw_all_off(back, right);
    constexpr std::size_t most_lines = 5;
    const bool known = !back.said.receptacles.empty();
    const bool beside = broken_lines(back.said.receptacles, step_text, width).size() <= most_lines;
    const std::string dead = back.words(tr("Dead receptacle?"));
    if (known && beside) {
        right.skip(1.2);
        right.head(dead);
        right.note(back.said.receptacles, step_text);
    }
    double bottom = std::max(trips, right.y()) + 0.6;
    if (known && !beside) {
        Column below(drawing, back.left(), back.width(), bottom + 0.6);
        below.head(dead);
        below.note(back.said.receptacles, step_text);
        bottom = below.y() + 0.6;
    }
    return draw_proof(drawing, back, bottom + 0.8);
}

double draw_see_first_card(Drawing& drawing, const BackContent& back, std::optional<std::size_t> tag_card, double top) {
    std::string words = back.words(tr("If it trips, and everything off: card 1."));
    if (tag_card)
        words += " " + back.words.say({tr("What must stay on: card {0:.0f}."), {static_cast<double>(*tag_card + 1)}});
    words += " " + back.words(tr("On any heat, smell, smoke, buzz, flicker, shock or water: do not reset."));
    const double y = drawing.paragraph({back.left(), top, back.width(), 20}, words, {9}) + 1.2;
    return draw_proof(drawing, back, y);
}

}  // namespace doorcard
