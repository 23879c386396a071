// SPDX-License-Identifier: MIT
#include "desk/feed_line.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "assess/circuit_text.hpp"
#include "assess/directory.hpp"
#include "desk/feed_way.hpp"
#include "sheet/drawing.hpp"
#include "sheet/face_signs.hpp"
#include "sheet/panel_facts.hpp"

namespace doorcard {
namespace {

constexpr double edge = 3, stroke = 0.4;
constexpr double upper = 8.4, lane_step = 9.4;         // the strokes of the two lanes
constexpr double box_height = 7.2, box_pad = 2.4;      // a panel
constexpr double mark_width = 9.6, mark_height = 5.4;  // a breaker
constexpr double lead = 3.2, between = 5;              // of stroke before and after a mark; between children
constexpr double name_points = 9.5, caption_points = 7.5, widest_name = 42, above = 0.4, target = 11.7;  // 44 px

/// Draws from left to right, `x_` being where it is.
class Line {
public:
    Line(const Survey& survey, const Panel& shown, double width, const Words& words)
        : survey_(survey), shown_(shown), width_(width), words_(words), drawing_(line_.page) {}

    FeedLine line() {
        const std::vector<FeedStep> way = feed_way(survey_, shown_);
        draw_way(way);
        draw_children(fed_by(survey_, shown_));
        line_.page.paper = {width_, lowest_};
        return std::move(line_);
    }

private:
    // --- the way down
    void draw_way(const std::vector<FeedStep>& way) {
        std::size_t first = way.size() - 1;
        double needed = step_width(way[first]) + edge + 14;
        while (first > 0 && needed + step_width(way[first - 1]) < width_ * 0.75) needed += step_width(way[--first]);
        first == 0 ? draw_origin(way.front()) : draw_text("…", {name_points}, inks::caption);
        for (; first < way.size(); ++first) draw_step(way[first]);
    }

    double widest() const { return std::min(widest_name, width_ * 0.22); }
    double step_width(const FeedStep& step) const {
        const double name = text_width(name_of_panel(step), {name_points, true});
        return std::min(name, widest()) + 2 * box_pad + mark_width + 2 * lead;
    }

    void draw_origin(const FeedStep& step) {
        if (!step.source) return draw_text(words_(tr("feed not known")), {name_points}, inks::caption);
        const std::string name = words_.say(source_name(*step.source));
        const double from = x_;
        draw_text(name, {name_points}, inks::text);
        arrow_head(drawing_, x_ + 4.6, upper, true, 3);
        drawing_.line(x_ + 0.8, upper, x_ + 2.4, upper, stroke);
        x_ += 4.6;
        note({from, upper - box_height / 2, x_ - from, box_height}, step.source->id, false, {tr("source {0}"), {name}});
    }

    void draw_text(const std::string& text, const TypeStyle& style, Ink ink) {
        const std::string shown = cut_to(text, style, widest());
        const double width = text_width(shown, style) + 0.1;
        drawing_.text({x_, upper - 4, width, 8}, upper + cap_height(style.points) / 2, shown, style, Align::left, ink);
        x_ += width;
    }

    void draw_step(const FeedStep& step) {
        draw_feed(step, upper);
        const double from = x_;
        draw_panel(step, upper);
        draw_beside(step, from);
    }

    // The stroke through the breaker that feeds a panel, or through its own main.
    void draw_feed(const FeedStep& step, double y) {
        const Panel& panel = *step.panel;
        const bool has_main = panel.main == MainKind::breaker || panel.main == MainKind::fuses;
        if (!step.breaker && !has_main) return go(lead * 2, y);
        go(lead, y);
        Handle handle;
        handle.fuse = !step.breaker && panel.main == MainKind::fuses;
        handle.rating = step.breaker   ? rating_text(*step.breaker)
                        : panel.main_a ? fmt::format("{:g}", panel.main_a->value)
                                       : "–";
        if (step.breaker && step.breaker->state == BreakerState::off) handle.state = HandleState::off;
        draw_mark(handle, step.breaker ? name_of(positions_of(*step.breaker)) : words_(tr("main")), y);
        go(lead, y);
    }

    void draw_mark(const Handle& handle, const std::string& caption, double y) {
        draw_handle(drawing_, {x_, y - mark_height / 2, mark_width, mark_height}, handle, 8.5, words_(tr("OFF")));
        const double top = y - mark_height / 2 - 0.7 - cap_height(caption_points);
        drawing_.text({x_ - lead, top - 0.8, mark_width + 2 * lead, cap_height(caption_points) + 1.6},
                      top + cap_height(caption_points), caption, {caption_points}, Align::middle, inks::caption);
        x_ += mark_width;
    }

    void go(double width, double y) {
        drawing_.line(x_, y, x_ + width, y, stroke);
        x_ += width;
    }

    // A panel is a box with its name; the one shown has a frame and the accent under its name.
    void draw_panel(const FeedStep& step, double y) {
        const bool is_shown = step.panel == &shown_;
        const TypeStyle style{name_points, is_shown};
        const std::string name = cut_to(name_of_panel(step), style, widest());
        const Frame box{x_, y - box_height / 2, text_width(name, style) + 2 * box_pad, box_height};
        drawing_.box(box, is_shown ? 0.55 : lines::outline);
        drawing_.text(box, y + cap_height(name_points) / 2, name, style, Align::middle);
        if (is_shown) drawing_.fill({box.x, box.bottom() - 1.1, box.width, 1.1}, inks::accent);
        note(box, step.panel->id, true, words_of(step));
        x_ = box.right();
    }

    Message words_of(const FeedStep& step) const {
        const Message name = verbatim(name_of_panel(step));
        if (step.panel == &shown_) return {tr("panel {0}, shown"), {name}};
        if (!step.breaker) return {tr("panel {0}"), {name}};
        const std::string handle = step.breaker->panel + " " + name_of(positions_of(*step.breaker));
        return {tr("panel {0}, fed from {1}, {2} A"), {name, handle, rating_text(*step.breaker)}};
    }

    static std::string name_of_panel(const FeedStep& step) { return step.panel->title.value_or(step.panel->id); }

    // Targets of 44 px, one above the other on the two lanes.
    void note(const Frame& frame, const std::string& id, bool is_panel, const Message& words) {
        const double top = frame.y < upper ? above : above + target;
        line_.places.push_back({{frame.x, top, frame.width, target}, id, is_panel, words_.say(words)});
        lowest_ = std::max(lowest_, top + target);
    }

    // --- what else comes in, on the lower lane with an arrow up into its panel
    void draw_beside(const FeedStep& step, double box_x) {
        double x = std::max(box_x + 3, beside_to_);
        for (const FeedBeside& one : step.beside) x = draw_source_beside(one, x) + between;
        if (!step.beside.empty()) beside_to_ = x;
    }

    double draw_source_beside(const FeedBeside& one, double x) {
        const double y = upper + lane_step, tip = upper + box_height / 2 + 0.2;
        drawing_.line(x, y, x, tip + 1.6, stroke);
        drawing_.shape({{x, tip}, {x - 1, tip + 2.2}, {x + 1, tip + 2.2}});
        const double back = std::exchange(x_, x);
        go(lead, y);
        if (one.through) {
            Handle handle;
            handle.on_left = false;
            handle.rating = rating_text(*one.through);
            if (one.through->state == BreakerState::off) handle.state = HandleState::off;
            draw_mark(handle, name_of(positions_of(*one.through)), y);
            go(lead, y);
        }
        const std::string name = one.source ? words_.say(source_name(*one.source)) : one.through->panel;
        const TypeStyle style{name_points - 0.5};
        const double width = text_width(name, style) + 0.1;
        drawing_.text({x_ + 0.9, y - 4, width, 8}, y + cap_height(style.points) / 2, name, style);
        const Frame frame{x, y - box_height / 2, x_ + 0.9 + width - x, box_height};
        if (one.source)
            note(frame, one.source->id, false, {tr("source {0}, comes in too"), {name}});
        else
            note(frame, one.through->panel, true, {tr("panel {0}, may feed it in place of the first"), {name}});
        x_ = back;
        return frame.right();
    }

    // --- what it feeds: one in line, several side by side on the lower lane, each with its drop
    void draw_children(const std::vector<FeedStep>& children) {
        if (children.size() == 1 && x_ + step_width(children.front()) < width_ - edge) {
            draw_feed(children.front(), upper);
            return draw_panel(children.front(), upper);
        }
        const double from = x_;
        double trunk = x_;
        x_ = std::max(x_ + between, beside_to_);
        for (std::size_t i = 0; i < children.size(); ++i) {
            const double rest = i + 1 < children.size() ? 22 : 0;
            if (x_ + step_width(children[i]) + rest > width_ - edge) {
                trunk = x_;
                draw_more(children, i);
                break;
            }
            trunk = x_;
            drawing_.line(x_, upper, x_, upper + lane_step, stroke);
            draw_feed(children[i], upper + lane_step);
            draw_panel(children[i], upper + lane_step);
            x_ += between;
        }
        if (trunk > from) drawing_.line(from, upper, trunk + stroke / 2, upper, stroke);
    }

    void draw_more(const std::vector<FeedStep>& children, std::size_t first) {
        const std::string text =
            words_.count(trn("and {0} more", "and {0} more"), static_cast<long>(children.size() - first));
        const double width = text_width(text, {9}) + 0.2, y = upper;
        const double x = std::min(x_ + 1, width_ - width - 0.5);
        drawing_.text({x, y - 4, width, 8}, y + cap_height(9) / 2, text, {9});
        note({x, y - box_height / 2, width, box_height}, children[first].panel->id, true, verbatim(text));
        x_ = x - 1;
    }

    const Survey& survey_;
    const Panel& shown_;
    double width_;
    const Words& words_;
    FeedLine line_;
    Drawing drawing_;
    double x_ = edge, beside_to_ = 0, lowest_ = above + target;
};

}  // namespace

FeedLine feed_line(const Survey& survey, std::size_t shown_panel, double width, const Words& words) {
    if (shown_panel >= survey.panels.size()) return {};
    return Line(survey, survey.panels[shown_panel], width, words).line();
}

}  // namespace doorcard
