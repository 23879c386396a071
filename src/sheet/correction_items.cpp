// SPDX-License-Identifier: MIT
#include <algorithm>

#include "sheet/correction_parts.hpp"

namespace doorcard {
namespace {

constexpr double pad = 1.9;  // above and below the words of an item
constexpr double tick = 4.6;
constexpr double signal_width = 22;
constexpr double gap = 2.2;  // between columns
constexpr TypeStyle what_style{9, true}, remedy_style{9}, small{8}, signal_style{8.5, true};

Ink signal_ink(Severity severity) {
    switch (severity) {
        case Severity::danger:
            return inks::danger;
        case Severity::warning:
            return inks::warning;
        default:
            return inks::caution;
    }
}

void draw_tick(Drawing& drawing, double x, double y, double size) { drawing.box({x, y, size, size}, lines::outline); }

/// The word in its ANSI colours, framed; a notice has none of its own and stands plain.
void draw_signal(Drawing& drawing, const Frame& room, Severity severity, const Words& words) {
    const std::string word = signal_word(severity, words);
    const TypeStyle style = fitting(word, signal_style, room.width - 1.2, {8.5, 8, 7.5, 7, 6.5, 6});
    drawing.box(room, lines::outline, signal_ink(severity));
    drawing.text(room, room.y + room.height / 2 + cap_height(style.points) / 2, word, style, Align::middle,
                 severity == Severity::danger ? inks::paper : inks::black);
}

/// Where and by whom it was put right: lines to write on.
void draw_signature(Drawing& drawing, const CorrectionColumns& at, double top) {
    const double y = top + pad + 5.2;
    drawing.line(at.date, y, at.initials - gap, y, lines::row);
    drawing.line(at.initials, y, at.right, y, lines::row);
}

double draw_figures(Drawing& drawing, const CorrectionContent& content, const CorrectionColumns& at,
                    const Finding& finding, double top) {
    const double width = at.source - at.figure - gap;
    double y = drawing.paragraph({at.figure, top, width, 40}, figure_text(finding, content.words), what_style);
    return drawing.paragraph({at.figure, y + 0.7, width, 40}, limit_text(finding, content.words), small);
}

}  // namespace

CorrectionColumns correction_columns(const Paper& paper) {
    constexpr double margin = 14;
    CorrectionColumns at;
    at.left = margin;
    at.right = paper.width - margin;
    at.signal = at.left + tick + 2.2;
    at.what = at.signal + signal_width + gap;
    at.initials = at.right - 12;
    at.date = at.initials - 18;
    at.source = at.date - 36;
    at.figure = at.source - 18;
    return at;
}

double draw_item(Drawing& drawing, const CorrectionContent& content, const CorrectionColumns& at,
                 const Finding& finding, std::size_t number, double top) {
    const double y = top + pad;
    draw_tick(drawing, at.left, y, tick);
    drawing.text({at.left, y + tick, at.signal - at.left, 5}, y + tick + 3.6, std::to_string(number), small,
                 Align::left, inks::caption);
    draw_signal(drawing, {at.signal, y, signal_width, 5.2}, finding.severity, content.words);
    const double first = y + 0.9;  // the first line stands level with the signal word
    double left = drawing.paragraph({at.what, first, at.figure - at.what - gap, 200},
                                    with_units_kept(content.words.say(finding.text)), what_style);
    left = drawing.paragraph({at.what, left + 1.3, at.figure - at.what - gap, 200},
                             with_units_kept(content.words.say(finding.remedy)), remedy_style);
    const double figures = draw_figures(drawing, content, at, finding, first);
    const double width = at.date - at.source - gap;
    double right =
        drawing.paragraph({at.source, first, width, 200}, short_sources(finding.sources, content.words), small);
    right = drawing.paragraph({at.source, right + 0.9, width, 200}, basis_text(finding, content.words), small,
                              inks::caption);
    draw_signature(drawing, at, top);
    const double bottom = std::max({left, figures, right, y + 5.6}) + pad;
    drawing.line(at.left, bottom, at.right, bottom, lines::hair);
    return bottom;
}

double draw_notice(Drawing& drawing, const CorrectionContent& content, const CorrectionColumns& at,
                   const NoticeGroup& group, double top) {
    constexpr double small_tick = 3.0;
    constexpr std::size_t most_named = 60;
    draw_tick(drawing, at.left + (tick - small_tick) / 2, top + 1.0, small_tick);
    double left = top + 0.9;
    const double first = top + 1.3;
    for (const std::string& line : notice_lines(content.network, group, most_named, content.words))
        left = drawing.paragraph({at.signal, left + 0.4, at.source - at.signal - gap, 200}, line, small) + 0.4;
    const Finding& finding = *group.findings.front();
    const double right = drawing.paragraph({at.source, first, at.right - at.source, 200},
                                           short_sources(finding.sources, content.words), small, inks::caption);
    const double bottom = std::max({left, right, top + small_tick + 1.0}) + 0.9;
    drawing.line(at.left, bottom, at.right, bottom, lines::hair);
    return bottom;
}

}  // namespace doorcard
