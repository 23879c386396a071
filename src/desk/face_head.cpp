// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "desk/face_parts.hpp"
#include "desk/face_words.hpp"
#include "sheet/panel_facts.hpp"

namespace doorcard {
namespace {

constexpr double bar_width = 16, bar_height = 1.1;  // under the name, as on every sheet
constexpr double main_box_width = 17, main_box_height = 10.4, feed_stroke = 0.7;

bool has_device(const Panel& panel) { return panel.main == MainKind::breaker || panel.main == MainKind::fuses; }

/// The main as it sits across the end of the bus. The bus is below it, or above it where it is fed from below.
class MainPicture {
public:
    MainPicture(FaceCanvas& canvas, double top)
        : canvas_(canvas),
          drawing_(canvas.drawing),
          panel_(canvas.facts.panel_of()),
          is_below_(is_fed_from_below(panel_)),
          top_(top),
          bottom_(top + main_height(canvas.facts)),
          middle_(canvas.columns().legs_x() + canvas.columns().legs / 2),
          box_middle_(std::min(middle_, canvas.columns().right - main_box_width / 2)) {}

    void draw() {
        const double bus = is_below_ ? top_ : bottom_;
        const double y = has_device(panel_) ? draw_device() : is_below_ ? bottom_ - 2.6 : top_ + 2.6;
        draw_stroke(middle_, y, middle_, bus);
        draw_head_of_arrow(bus);
        draw_words();
    }

private:
    // The lever lies toward the bus: on.
    double draw_device() {
        const Frame box{box_middle_ - main_box_width / 2, is_below_ ? bottom_ - main_box_height - 0.4 : top_ + 0.4,
                        main_box_width, main_box_height};
        drawing_.box(box, lines::outline);
        constexpr double inset = 0.9, lever = 3.4;
        const Frame at{box.x + inset, is_below_ ? box.y + inset : box.bottom() - inset - lever, box.width - 2 * inset,
                       lever};
        panel_.main == MainKind::fuses ? draw_fuses(at) : drawing_.fill(at);
        const double free_top = is_below_ ? at.bottom() : box.y, free = box.height - lever - inset;
        drawing_.text({box.x, free_top, box.width, free}, free_top + free / 2 + cap_height(12) / 2,
                      panel_.main_a ? fmt::format("{:g}", panel_.main_a->value) : "–", {12, true}, Align::middle);
        return is_below_ ? box.y : box.bottom();
    }

    void draw_fuses(const Frame& at) {
        const double y = at.y + at.height / 2;
        drawing_.line(at.x, y, at.right(), y, lines::outline);
        drawing_.box({at.x + at.width * 0.2, at.y + 0.6, at.width * 0.6, at.height - 1.2}, lines::outline);
    }

    void draw_stroke(double x1, double y1, double x2, double y2) { drawing_.line(x1, y1, x2, y2, feed_stroke); }

    void draw_head_of_arrow(double bus) {
        const double back = is_below_ ? bus + 2 : bus - 2;
        drawing_.shape({{middle_, bus}, {middle_ - 1.1, back}, {middle_ + 1.1, back}});
    }

    // What it is at the left; what feeds it at the right with the arrow that comes in, or below where there is no room.
    void draw_words() {
        const double half = has_device(panel_) ? main_box_width / 2 : 2.4;
        const double baseline = (top_ + bottom_) / 2 + (is_below_ ? 0.6 : -0.2);
        const double left = canvas_.columns().left, right = canvas_.columns().right;
        const bool has_right = right - box_middle_ - half > 24;
        const Frame at_left{left, top_, box_middle_ - half - 2 - left, bottom_ - top_};
        const double up = has_right ? 0 : 2.2;
        put(at_left, baseline - up, main_words(panel_, canvas_.words), {10, true}, Align::right, inks::text);
        const std::string feed = canvas_.words.say(
            {tr("fed from {0}"), {fed_from_text(canvas_.facts.network, canvas_.facts.panel, canvas_.words)}});
        if (!has_right) {
            const TypeStyle style{9};
            drawing_.text(at_left, baseline + up, cut_to(feed, style, at_left.width), style, Align::right,
                          inks::caption);
            return;
        }
        const double arrow = has_device(panel_) ? 6 : 0, x = box_middle_ + half + arrow;
        if (arrow > 0) draw_feed_arrow(box_middle_ + half + 0.2, x - 0.6, baseline - cap_height(9) / 2);
        put({x + 0.6, top_, right - x - 0.6, bottom_ - top_}, baseline, feed, {9}, Align::left, inks::caption);
    }

    void draw_feed_arrow(double tip, double from, double y) {
        draw_stroke(from, y, tip + 1.2, y);
        arrow_head(drawing_, tip, y, false, 2.2);
    }

    void put(const Frame& room, double baseline, const std::string& text, TypeStyle style, Align align, Ink ink) {
        std::vector<std::string> pieces = even_lines(text, style, room.width, 2);
        double y = baseline - (pieces.size() > 1 ? line_advance(style.points) / 2 : 0);
        for (const std::string& piece : pieces) {
            drawing_.text(room, y, piece, style, align, ink);
            y += line_advance(style.points);
        }
    }

    FaceCanvas& canvas_;
    Drawing& drawing_;
    const Panel& panel_;
    bool is_below_;
    double top_, bottom_, middle_, box_middle_;
};

}  // namespace

bool is_fed_from_below(const Panel& panel) { return panel.main_at == "bottom"; }

double main_height(const FaceFacts& facts) { return has_device(facts.panel_of()) ? 13.4 : 9; }

void draw_main(FaceCanvas& canvas, double top) { MainPicture(canvas, top).draw(); }

double draw_face_head(FaceCanvas& canvas, double top) {
    const Panel& panel = canvas.facts.panel_of();
    Drawing& drawing = canvas.drawing;
    double left = canvas.columns().left;
    const double right = canvas.columns().right;
    const double baseline = top + 6.4, second = top + 11.3;
    if (const auto& found = canvas.facts.panel_finding; found && found->severity != Severity::notice) {
        draw_finding_sign(drawing, found->severity, left, baseline - finding_sign);
        left += finding_sign + 1.6;
    }
    const double for_state = canvas.look.state.empty() ? 0 : text_width(canvas.look.state, {9}) + 3;
    const TypeStyle bold{15, true};
    drawing.text({left, top, right - left - for_state, 9}, baseline,
                 cut_to(panel.title.value_or(panel.id), bold, right - left - for_state), bold);
    drawing.text({right - for_state, top, for_state, 9}, baseline, canvas.look.state, {9}, Align::right, inks::caption);
    left = canvas.columns().left;
    const std::string traced = traced_words(canvas.facts, canvas.words);
    const double for_traced = text_width(traced, {9, true});
    drawing.text({right - for_traced - 0.2, top + 7, for_traced + 0.2, 6}, second, traced, {9, true}, Align::right);
    const double room = right - left - for_traced - 4;
    const std::string about = panel_words(canvas.facts, canvas.words);
    const TypeStyle style{9, false, false, text_width(about, {9}) > room};
    drawing.text({left, top + 7, room, 6}, second, cut_to(about, style, room), style, Align::left, inks::caption);
    const double rule = top + 13.2;
    drawing.line(left, rule, right, rule, lines::row);
    drawing.fill({left, rule, bar_width, bar_height}, inks::accent);
    return rule + bar_height;
}

}  // namespace doorcard
