// SPDX-License-Identifier: MIT
#include "sheet/sheet_head.hpp"

#include <algorithm>

#include "sheet/face_signs.hpp"

namespace doorcard {
namespace {

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

}  // namespace

double draw_head(Drawing& drawing, const Frame& room, const HeadWords& words, double most_points) {
    const double top = room.y;
    const double baseline = top + 5.2;
    const double rule = top + 8.2;
    const double right_room = std::min(
        room.width * 0.46, std::max(text_width(words.owner, {10, true}), text_width(words.under_owner, {8.5})) + 0.5);
    const double right_x = room.right() - right_room;
    const TypeStyle owner = fitting(words.owner, {10, true}, right_room, {10, 9, 8});
    drawing.text({right_x, top - 3.4, right_room, 5.2}, top + 0.6, cut_to(words.owner, owner, right_room), owner,
                 Align::right);
    const TypeStyle volts = fitting(words.under_owner, {8.5}, right_room, {8.5, 8, 7.5, 7});
    drawing.text({right_x, baseline - 3.4, right_room, 4.6}, baseline, cut_to(words.under_owner, volts, right_room),
                 volts, Align::right);
    const double left_room = right_x - room.x - 3;
    const TypeStyle name_style =
        fitting(words.name, {most_points, true}, left_room * 0.7, {most_points, 20, 16, 13, 11, 9});
    const std::string name = cut_to(words.name, name_style, left_room * 0.7);
    const double stem = ink_extent(name, name_style).left;  // its first stem stands on the margin
    const double name_width = text_width(name, name_style) - stem;
    drawing.text({room.x - stem, top - 3.4, name_width + stem, 10.6}, baseline, name, name_style);
    const double title_x = room.x + name_width + 2.8;
    draw_title(drawing, words.title, {title_x, top - 2, right_x - title_x - 2.5, 8}, baseline);
    drawing.line(room.x, rule, room.right(), rule, lines::heavy);
    drawing.fill({room.x, rule + lines::heavy / 2, name_width, 1.1}, inks::accent);
    return rule + lines::heavy / 2 + 1.1;
}

double draw_feed_column(Drawing& drawing, const FeedColumn& column, double top) {
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

void draw_stroke_handle(Drawing& drawing, double x, double y, bool bus_right, bool fuse) {
    Handle handle;
    handle.on_left = bus_right;
    handle.fuse = fuse;
    drawing.fill({x, y - 2.1, 7, 4.2}, inks::paper);
    draw_handle(drawing, {x, y - 2.1, 7, 4.2}, handle);
}

}  // namespace doorcard
