// SPDX-License-Identifier: MIT
#include "sheet/signal.hpp"

#include <algorithm>

namespace doorcard {
namespace {

constexpr TypeStyle signal_word{10.5, true};
constexpr TypeStyle title_style{9, true};
constexpr TypeStyle text_style{8.5};
constexpr double least_height = 6.4;

void draw_signal_box(Drawing& drawing, const Frame& box, double panel, const std::string& signal, Ink colour) {
    drawing.box({box.x, box.y, panel, box.height}, lines::outline, colour);
    drawing.box(box, lines::outline);
    drawing.text({box.x, box.y, panel, box.height}, box.y + box.height / 2 + cap_height(signal_word.points) / 2, signal,
                 signal_word, Align::middle, inks::black);
}

}  // namespace

double draw_signal(Drawing& drawing, const Frame& at, const std::string& signal, Ink colour, const std::string& title,
                   const std::string& text) {
    const double panel = std::max(26.0, text_width(signal, signal_word) + 5);
    const double x = at.x + panel + 2;
    const double room = at.right() - x - 1.2;
    const auto titles = broken_lines(title, title_style, room);
    const auto pieces = broken_lines(text, text_style, room);
    const double beside = text_width(title, title_style) + 2.5;  // a short text stands on the title's line
    if (pieces.size() == 1 && beside + text_width(text, text_style) <= room) {
        const double middle = at.y + least_height / 2 + cap_height(title_style.points) / 2;
        draw_signal_box(drawing, {at.x, at.y, at.width, least_height}, panel, signal, colour);
        drawing.text({x, at.y, beside - 0.5, least_height}, middle, title, title_style);
        drawing.text({x + beside, at.y, room - beside, least_height}, middle, text, text_style);
        return at.y + least_height;
    }
    const double words = pieces.empty() ? 0 : 0.9 + lines_height(pieces.size(), text_style.points);
    const double titles_height = lines_height(titles.size(), title_style.points);
    const double height = std::max(1.5 + titles_height + words + 0.6, least_height);
    draw_signal_box(drawing, {at.x, at.y, at.width, height}, panel, signal, colour);
    const double drop = pieces.empty() ? (height - titles_height) / 2 : 1.5;
    const double below = drawing.paragraph({x, at.y + drop, room, height - 1.5}, title, title_style);
    if (!pieces.empty()) drawing.paragraph({x, below + 0.7, room, height}, text, text_style);
    return at.y + height;
}

}  // namespace doorcard
