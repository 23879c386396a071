// SPDX-License-Identifier: MIT
#include "desk/feed_line.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "assess/directory.hpp"
#include "sheet/drawing.hpp"
#include "sheet/face_signs.hpp"
#include "sheet/panel_facts.hpp"

namespace doorcard {
namespace {

constexpr double stroke_y = 8.6, name_y = 5.2, rating_y = 13.6, bar = 1.2;

class Line {
public:
    Line(const Survey& survey, std::size_t shown, double width, const Words& words)
        : survey_(survey), shown_(survey.panels[shown]), width_(width), words_(words), drawing_(line_.page) {}

    FeedLine line() {
        const std::vector<const Panel*> way = way_to(shown_);
        if (const Source* source = source_of(*way.front())) draw_source(*source);
        for (const Panel* panel : way) {
            draw_feed(*panel);
            draw_panel(*panel);
        }
        draw_children();
        line_.page.paper = {width_, 15.2};
        return std::move(line_);
    }

private:
    /// From the first panel down; a circle of feeds cannot be in a survey.
    std::vector<const Panel*> way_to(const Panel& last) const {
        std::vector<const Panel*> way{&last};
        while (const Panel* above = panel_above(*way.front())) way.insert(way.begin(), above);
        return way;
    }
    const Panel* panel_above(const Panel& panel) const {
        const Breaker* breaker = panel.fed_by.empty() ? nullptr : survey_.breakers.find(panel.fed_by.front());
        return breaker ? survey_.panels.find(breaker->panel) : nullptr;
    }
    const Source* source_of(const Panel& panel) const {
        return panel.fed_by.empty() ? nullptr : survey_.sources.find(panel.fed_by.front());
    }

    void draw_source(const Source& source) {
        const std::string name = source.title.value_or(words_(source.kind.value_or("source")));
        arrow_head(drawing_, x_ + 3.4, stroke_y, true, 3.2);
        const double width = text_width(name, {9});
        drawing_.text({x_, 0, width, 7}, name_y, name, {9}, Align::left);
        line_.places.push_back({{x_, 0, std::max(width, 12.0), 15}, source.id, false});
        x_ += 3.4;
    }

    /// The stroke to a panel through the breaker that feeds it, or its own main.
    void draw_feed(const Panel& panel) {
        const Breaker* breaker = panel.fed_by.empty() ? nullptr : survey_.breakers.find(panel.fed_by.front());
        const std::string rating = breaker ? name_of(positions_of(*breaker)) + "  " + rating_text(*breaker) + " A"
                                   : panel.main_a ? fmt::format("{:g} A", panel.main_a->value)
                                                  : std::string();
        const double from = x_,
                     to = std::max(x_ + 20, line_.places.empty() ? 0 : line_.places.back().frame.right() + 6);
        drawing_.line(from, stroke_y, to, stroke_y, 0.35);
        if (breaker || panel.main == MainKind::breaker || panel.main == MainKind::fuses) {
            const double middle = (from + to) / 2;
            Handle handle;
            handle.fuse = panel.main == MainKind::fuses && !breaker;
            drawing_.fill({middle - 3, stroke_y - 1.9, 6, 3.8}, inks::paper);
            draw_handle(drawing_, {middle - 3, stroke_y - 1.9, 6, 3.8}, handle, 6);
            drawing_.text({middle - 15, 11, 30, 4}, rating_y, rating, {7.5}, Align::middle, inks::caption);
        }
        x_ = to;
    }

    void draw_panel(const Panel& panel) {
        const bool is_shown = &panel == &shown_;
        const TypeStyle style{9, is_shown};
        const double width = std::max(14.0, text_width(panel.id, style) + 1);
        drawing_.fill({x_, stroke_y - bar / 2, width, bar});
        drawing_.text({x_, 0, width, 7}, name_y, panel.id, style);
        if (is_shown) drawing_.fill({x_, name_y + 0.9, width, 0.7}, inks::accent);
        line_.places.push_back({{x_, 0, width, 15}, panel.id, true});
        x_ += width;
    }

    void draw_children() {
        std::vector<const Panel*> children;
        for (const Panel& panel : survey_.panels)
            if (panel_above(panel) == &shown_) children.push_back(&panel);
        const double begin = x_;
        for (std::size_t i = 0; i < children.size(); ++i) {
            const double needs = 22 + text_width(children[i]->id, {9}) + 18;
            if (x_ + needs > width_) return draw_more(children.size() - i);
            if (i > 0) drawing_.line(begin, stroke_y, x_, stroke_y, 0.35);
            draw_feed(*children[i]);
            draw_panel(*children[i]);
        }
    }

    void draw_more(std::size_t count) {
        const std::string text = words_.count(trn("and {0} more", "and {0} more"), static_cast<long>(count));
        drawing_.text({x_ + 2, 0, 30, 15}, stroke_y + 1.1, text, {8.5}, Align::left, inks::caption);
    }

    const Survey& survey_;
    const Panel& shown_;
    double width_;
    const Words& words_;
    FeedLine line_;
    Drawing drawing_;
    double x_ = 3;
};

}  // namespace

FeedLine feed_line(const Survey& survey, std::size_t shown_panel, double width, const Words& words) {
    return Line(survey, shown_panel, width, words).line();
}

}  // namespace doorcard
