// SPDX-License-Identifier: MIT
#include "sheet/sheet_foot.hpp"

#include <algorithm>

#include "sheet/panel_facts.hpp"

namespace doorcard {
namespace {

void draw_squares(Drawing& drawing, const PanelDirectory& directory, double x, double right, double baseline) {
    const double size = std::min(1.75, (right - x) / std::max(1, directory.in_use()) - 0.28);
    if (size < 0.75) return;
    const double y = baseline - cap_height(9) + (cap_height(9) - size) / 2;
    for (int i = 0; i < directory.in_use(); ++i) {
        const Frame square{x + i * (size + 0.28), y, size, size};
        if (i < directory.traced) {
            drawing.fill(square);
        } else {
            drawing.box({square.x + 0.06, square.y + 0.06, size - 0.12, size - 0.12}, 0.13);
            if (i < directory.traced + directory.claimed) continue;
            for (const double part : {0.45, 1.0, 1.55})
                drawing.line(square.x + size * std::max(0.0, part - 1), square.y + size * std::min(1.0, part),
                             square.x + size * std::min(1.0, part), square.y + size * std::max(0.0, part - 1), 0.13);
        }
    }
}

void draw_foot_text(Drawing& drawing, const FootCell& cell, double x, double top, double width) {
    const double room = width - 3.4;
    drawing.text({x, top + 0.6, room, 3.2}, top + 3.0, cut_to(cell.caption, {7}, room), {7}, Align::left,
                 inks::caption);
    const TypeStyle style = fitting(cell.value, {9, true}, room, {9, 8});
    drawing.text({x, top + 4.0, room, 4.2}, top + 7.1, cut_to(cell.value, style, room), style);
}

double width_of(const FootCell& cell, double most) {
    return std::min(most, std::max(text_width(cell.caption, {7}), text_width(cell.value, {9, true})) + 4.2);
}

}  // namespace

std::vector<FootCell> dated_cells(const Survey& survey, const Words& words) {
    const Heading& heading = survey.heading;
    return {{words(tr("date")), dated(survey, words)},
            {words(tr("revision")), heading.revision.value_or("–")},
            {words(tr("by")), heading.surveyor.value_or("–")}};
}

double draw_foot_strip(Drawing& drawing, const Frame& frame, const std::vector<FootCell>& left,
                       const PanelDirectory& directory, const std::vector<FootCell>& right, const Words& words) {
    const double top = frame.y;
    const double most = frame.width * 0.24;
    drawing.line(frame.x, top, frame.right(), top, lines::outline);
    drawing.line(frame.x, top + foot_height, frame.right(), top + foot_height, lines::outline);
    const auto divide = [&](double x) { drawing.line(x, top + 1.2, x, top + foot_height - 1.2, lines::row); };
    double end = frame.right();
    for (auto cell = right.rbegin(); cell != right.rend(); ++cell) {
        const double width = width_of(*cell, most);
        end -= width;
        divide(end);
        draw_foot_text(drawing, *cell, end + 1.8, top, width);
    }
    double x = frame.x;
    for (const FootCell& cell : left) {
        const double width = width_of(cell, most);
        draw_foot_text(drawing, cell, x, top, width);
        x += width;
        divide(x - 1.8);
    }
    const FootCell traced{
        words(tr("traced")),
        words.say({tr("{0:.0f} of {1:.0f}"),
                   {static_cast<double>(directory.traced), static_cast<double>(directory.in_use())}})};
    const double width = std::max(text_width(traced.value, {9, true}), text_width(traced.caption, {7})) + 3.6;
    draw_foot_text(drawing, traced, x, top, width);
    draw_squares(drawing, directory, x + width - 1.2, end - 1.5, top + 7.1);
    return top + foot_height;
}

}  // namespace doorcard
