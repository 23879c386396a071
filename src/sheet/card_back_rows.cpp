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

double widest_word(const std::string& text, const TypeStyle& style) {
    double width = 0;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find(' ', at), text.size());
        width = std::max(width, text_width(text.substr(at, end - at), style));
        at = end + 1;
    }
    return width;
}

// Beside the answer where its words stay whole and it takes no more than two lines, else above it.
void set_what(BackRow& row, const std::string& what, double room, double answer) {
    constexpr std::size_t most_lines = 2;
    const double beside = room - answer - 2 * gap - 3;
    row.answer_below =
        widest_word(what, row.what_style) > beside || broken_lines(what, row.what_style, beside).size() > most_lines;
    row.what = even_lines(what, row.what_style, row.answer_below ? room : beside);
}

void set_room(BackRow& row, const std::string& name, double width) {
    row.room_style = fitting(name, {10, true}, width, {10, 9});
    row.room = even_lines(name, row.room_style, width);
}

BackRow row_of(const BackContent& back, std::size_t part, const RoomLine& line) {
    const RoomPart& room = back.directory.parts[part];
    const RoomAnswer answer = answer_of(line, back.names, back.words);
    BackRow row;
    row.part = part;
    row.trust = line.trust;
    row.answer_style = answer_style(answer);
    row.answer = broken_lines(answer.text, row.answer_style, most_answer(back) - sign_room(line.trust));
    row.what_style.italic = line.trust == HandleTrust::claimed;
    set_what(row, what_of(room, line, back.words), back.right() - what_left(back),
             widest(row.answer, row.answer_style) + sign_room(line.trust));
    set_room(row, heading_of(back.directory, room, back.words), room_column(back) - 1.5);
    const double what = height_of(row.what.size(), row.what_style.points);
    const double number = height_of(row.answer.size(), row.answer_style.points);
    row.height = row.answer_below ? what + number - 0.6 : std::max(what, number);
    return row;
}

constexpr double part_note = 3.6;  // below the name of a room that two cards share, mm

std::size_t run_end(const std::vector<BackRow>& rows, std::size_t first, std::size_t last) {
    std::size_t end = first;
    while (end < last && rows[end].part == rows[first].part) ++end;
    return end;
}

bool goes_on(const std::vector<BackRow>& rows, std::size_t end) {
    return end < rows.size() && rows[end].part == rows[end - 1].part;
}

bool continues(const std::vector<BackRow>& rows, std::size_t first) {
    return first > 0 && rows[first].part == rows[first - 1].part;
}

// Rows of one room below each other take at least what its name needs.
double run_height(const std::vector<BackRow>& rows, std::size_t first, std::size_t end) {
    double height = 0;
    for (std::size_t i = first; i < end; ++i) height += rows[i].height;
    const double notes = (continues(rows, first) ? part_note : 0) + (goes_on(rows, end) ? part_note : 0);
    return std::max(height, height_of(rows[first].room.size(), rows[first].room_style.points) + notes);
}

class BackTable {
public:
    BackTable(Drawing& drawing, const BackContent& back, const std::vector<BackRow>& rows)
        : drawing_(drawing), back_(back), rows_(rows) {}

    double paint(std::size_t first, std::size_t last, double top) {
        double y = paint_captions(top);
        for (std::size_t at = first; at < last;) {
            const std::size_t end = run_end(rows_, at, last);
            paint_room(at, end, y);
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

    void paint_room(std::size_t first, std::size_t end, double top) {
        const BackRow& row = rows_[first];
        double baseline = top + first_baseline;
        const double width = room_column(back_) - 1.2;
        for (const std::string& line : row.room) {
            drawing_.text({back_.left(), baseline - 3.6, width, 4.9}, baseline, line, row.room_style);
            baseline += line_advance(row.room_style.points);
        }
        if (continues(rows_, first)) baseline = paint_part_note(tr("continued"), baseline);
        if (goes_on(rows_, end)) paint_part_note(tr("more: next card"), baseline);
    }

    double paint_part_note(const char* text, double baseline) {
        const double width = room_column(back_) - 1.2;
        const std::string words = back_.words(text);
        const TypeStyle style = fitting(words, {8}, width, {8, 7, 6});
        drawing_.text({back_.left(), baseline - 2.8, width, 3.6}, baseline - 0.2, words, style, Align::left,
                      inks::caption);
        return baseline + part_note;
    }

    void paint_row(const BackRow& row, double top) {
        const double x = what_left(back_);
        const double taken = widest(row.answer, row.answer_style) + sign_room(row.trust);
        const double beside = row.answer_below ? 0 : taken + gap;
        double baseline = top + first_baseline;
        for (const std::string& line : row.what) {
            drawing_.text({x, baseline - 3.5, back_.right() - x - beside, 4.7}, baseline, line, row.what_style);
            baseline += line_advance(row.what_style.points);
        }
        const double answer = row.answer_below ? baseline + 0.8 : top + first_baseline;
        paint_leader(row, answer, back_.right() - taken - gap);
        paint_answer(row, answer, taken);
    }

    // From what it is to the answer.
    void paint_leader(const BackRow& row, double baseline, double end) {
        double start = what_left(back_);
        if (!row.answer_below && !row.what.empty()) start += text_width(row.what.front(), row.what_style) + gap;
        constexpr double step = 1.9;
        for (double x = end - 0.3; x > start; x -= step) drawing_.dot(x, baseline - 0.25, 0.17, inks::text);
    }

    void paint_answer(const BackRow& row, double first, double taken) {
        const Ink ink = row.trust == HandleTrust::fire_alarm ? inks::fire : inks::text;
        double baseline = first;
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
