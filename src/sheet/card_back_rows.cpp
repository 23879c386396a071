// SPDX-License-Identifier: MIT
#include <algorithm>

#include "sheet/card_back_parts.hpp"
#include "sheet/face_signs.hpp"

namespace doorcard {
namespace {

constexpr double row_height = 5.3;
constexpr double first_baseline = 3.85;
constexpr double hatch_width = 8;
constexpr double gap = 1.8;  // between a text and its leader

double room_column(const BackContent& back) { return back.width() * 31 / 120; }
double what_left(const BackContent& back) { return back.left() + room_column(back); }
double most_answer(const BackContent& back) { return (back.right() - what_left(back)) * 0.64; }

double sign_room(HandleTrust trust) {
    if (trust == HandleTrust::claimed) return sign_height + 1.2;
    return trust == HandleTrust::not_traced ? hatch_width + 1.6 : 0;
}

TypeStyle answer_style(const RoomAnswer& answer) {
    if (answer.number) return {12, true};
    if (answer.trust == HandleTrust::claimed) return {9.5, false, true};
    return {9, true};
}

double widest(const std::vector<std::string>& lines, const TypeStyle& style) {
    double width = 0;
    for (const std::string& line : lines) width = std::max(width, text_width(line, style));
    return width;
}

double height_of(std::size_t lines, double points) {
    return row_height + (lines > 1 ? static_cast<double>(lines - 1) * line_advance(points) : 0);
}

BackRow row_of(const BackContent& back, std::size_t part, const RoomLine& line) {
    const RoomPart& room = back.directory.parts[part];
    const RoomAnswer answer = answer_of(line, back.names, back.words);
    BackRow row;
    row.part = part;
    row.trust = line.trust;
    row.answer_style = answer_style(answer);
    row.answer = broken_lines(answer.text, row.answer_style, most_answer(back) - sign_room(line.trust));
    const double taken = widest(row.answer, row.answer_style) + sign_room(line.trust);
    row.what_style.italic = line.trust == HandleTrust::claimed;
    const double room_for_what = back.right() - what_left(back) - taken - 2 * gap - 3;
    row.what = even_lines(what_of(room, line, back.words), row.what_style, room_for_what);
    const double room_width = room_column(back) - 1.5;
    const std::string name = heading_of(back.directory, room, back.words);
    row.room_style = fitting(name, {10, true}, room_width, {10, 9});
    row.room = even_lines(name, row.room_style, room_width);
    row.height = std::max(height_of(row.what.size(), row.what_style.points),
                          height_of(row.answer.size(), row.answer_style.points));
    row.least = std::max(row.height, height_of(row.room.size(), row.room_style.points));
    return row;
}

// Rows of one room below each other take at least what its name needs.
double run_height(const std::vector<BackRow>& rows, std::size_t first, std::size_t last) {
    double height = 0;
    for (std::size_t i = first; i < last; ++i) height += rows[i].height;
    return std::max(height, rows[first].least);
}

std::size_t run_end(const std::vector<BackRow>& rows, std::size_t first, std::size_t last) {
    std::size_t end = first;
    while (end < last && rows[end].part == rows[first].part) ++end;
    return end;
}

class BackTable {
public:
    BackTable(Drawing& drawing, const BackContent& back, const std::vector<BackRow>& rows)
        : drawing_(drawing), back_(back), rows_(rows) {}

    double paint(std::size_t first, std::size_t last, double top) {
        double y = paint_captions(top);
        for (std::size_t at = first; at < last;) {
            const std::size_t end = run_end(rows_, at, last);
            paint_room(rows_[at], y);
            double row_top = y;
            for (std::size_t i = at; i < end; ++i) {
                paint_row(rows_[i], row_top);
                row_top += rows_[i].height;
            }
            y += run_height(rows_, at, end);
            drawing_.line(back_.left(), y, back_.right(), y, end == last ? lines::heavy : lines::row);
            at = end;
        }
        return y;
    }

private:
    double paint_captions(double top) {
        drawing_.line(back_.left(), top, back_.right(), top, lines::heavy);
        const double baseline = top + 3.5;
        const double x = what_left(back_);
        drawing_.text({back_.left(), top, x - back_.left() - 1, 5}, baseline, back_.words(tr("room")), {8}, Align::left,
                      inks::caption);
        drawing_.text({x, top, 30, 5}, baseline, back_.words(tr("what")), {8}, Align::left, inks::caption);
        drawing_.text({x + 31, top, back_.right() - x - 31, 5}, baseline, back_.words(tr("to switch off, throw")), {8},
                      Align::right, inks::caption);
        drawing_.line(back_.left(), top + back_caption_height, back_.right(), top + back_caption_height, lines::row);
        return top + back_caption_height;
    }

    void paint_room(const BackRow& row, double top) {
        double baseline = top + first_baseline;
        for (const std::string& line : row.room) {
            drawing_.text({back_.left(), baseline - 3.6, room_column(back_) - 1.2, 4.9}, baseline, line,
                          row.room_style);
            baseline += line_advance(row.room_style.points);
        }
    }

    void paint_row(const BackRow& row, double top) {
        const double x = what_left(back_);
        const double taken = widest(row.answer, row.answer_style) + sign_room(row.trust);
        double baseline = top + first_baseline;
        for (const std::string& line : row.what) {
            drawing_.text({x, baseline - 3.5, back_.right() - x - taken - gap, 4.7}, baseline, line, row.what_style);
            baseline += line_advance(row.what_style.points);
        }
        paint_leader(row, top + first_baseline, back_.right() - taken - gap);
        paint_answer(row, top, taken);
    }

    // From the end of the last line to the answer, which stands on the first.
    void paint_leader(const BackRow& row, double baseline, double end) {
        const double start =
            what_left(back_) + text_width(row.what.empty() ? "" : row.what.front(), row.what_style) + gap;
        constexpr double step = 1.9;
        for (double x = end - 0.3; x > start; x -= step) drawing_.dot(x, baseline - 0.25, 0.17, inks::text);
    }

    void paint_answer(const BackRow& row, double top, double taken) {
        const Ink ink = row.trust == HandleTrust::fire_alarm ? inks::fire : inks::text;
        double baseline = top + first_baseline;
        const double middle = baseline - cap_height(row.answer_style.points) / 2;
        const double x = back_.right() - taken;
        if (row.trust == HandleTrust::claimed) draw_claimed(drawing_, x, middle - sign_height / 2);
        if (row.trust == HandleTrust::not_traced) drawing_.hatching({x, middle - 1.7, hatch_width, 3.4});
        for (const std::string& line : row.answer) {
            const double left = x + sign_room(row.trust);
            drawing_.text({left - 0.2, baseline - 4, back_.right() - left + 0.2, 5.4}, baseline, line, row.answer_style,
                          Align::right, ink);
            baseline += line_advance(row.answer_style.points);
        }
    }

    Drawing& drawing_;
    const BackContent& back_;
    const std::vector<BackRow>& rows_;
};

}  // namespace

std::vector<BackRow> back_rows(const BackContent& back) {
    std::vector<BackRow> rows;
    for (std::size_t part = 0; part < back.directory.parts.size(); ++part)
        for (const RoomLine& line : back.directory.parts[part].lines) rows.push_back(row_of(back, part, line));
    return rows;
}

double back_rows_height(const std::vector<BackRow>& rows, std::pair<std::size_t, std::size_t> range) {
    double height = back_caption_height;
    for (std::size_t at = range.first; at < range.second;) {
        const std::size_t end = run_end(rows, at, range.second);
        height += run_height(rows, at, end);
        at = end;
    }
    return height;
}

double draw_back_rows(Drawing& drawing, const BackContent& back, const std::vector<BackRow>& rows,
                      std::pair<std::size_t, std::size_t> range, double top) {
    return BackTable(drawing, back, rows).paint(range.first, range.second, top);
}

}  // namespace doorcard
