// SPDX-License-Identifier: MIT
#include "desk/load_scale.hpp"

#include <algorithm>

namespace doorcard {
namespace {

constexpr double pointer_height = 1.9, pointer_half = 1.05, past_end = 1.7;

using Points = std::vector<std::pair<double, double>>;

/// A scale on its line.
class LoadScale {
public:
    LoadScale(Drawing& drawing, const RowLoad& load, const Frame& at)
        : drawing_(drawing),
          load_(load),
          x_(at.x + pointer_half),
          width_(at.width - pointer_half - past_end),
          size_(std::min(1.0, at.height / (has_both() ? 3.9 : 3.2))),
          y_(at.bottom() - (has_both() ? pointer_height * size_ + 0.1 : 0.7 * size_)) {}

    void draw() {
        draw_ticks();
        if (!load_.rating) return;
        if (load_.calculated && !(load_.is_at_least && load_.calculated->value == 0))
            draw_pointer(*load_.calculated / *load_.rating, true, true);
        if (load_.measured) draw_pointer(*load_.measured / *load_.rating, false, !has_both());
    }

private:
    bool has_both() const { return load_.calculated && load_.measured; }
    double at(double share) const { return x_ + share * width_; }

    void draw_ticks() {
        const Ink ink = load_.most() ? inks::caption : inks::faint;
        drawing_.line(at(0), y_, at(1), y_, lines::row, ink);
        for (const double tick : {0.0, 0.2, 0.4, 0.6, 1.0})
            drawing_.line(at(tick), y_ - 0.7, at(tick), y_, lines::row, ink);
        drawing_.line(at(0.8), y_ - 1.5 * size_, at(0.8), y_ + 0.5, lines::heavy, ink);
    }

    // Its tip is on the line; past the end it lies on its side.
    void draw_pointer(double share, bool is_filled, bool is_above) {
        const bool is_past = share > 1;
        const Ink ink = is_past ? inks::danger : inks::text;
        const double up = is_above ? -1 : 1, high = pointer_height * size_ * up, half = pointer_half * size_;
        const double x = at(std::clamp(share, 0.0, 1.0)), tip = y_ + 0.1 * up;
        const Points points = is_past ? Points{{x + 0.3, tip + high}, {x + past_end, tip + high / 2}, {x + 0.3, tip}}
                                      : Points{{x - half, tip + high}, {x + half, tip + high}, {x, tip}};
        is_filled ? drawing_.shape(points, ink) : drawing_.outline(points, 0.28, ink);
    }

    Drawing& drawing_;
    const RowLoad& load_;
    double x_, width_, size_, y_;
};

}  // namespace

void draw_load_scale(Drawing& drawing, const RowLoad& load, const Frame& at) {
    if (at.width >= 9) LoadScale(drawing, load, at).draw();
}

}  // namespace doorcard
