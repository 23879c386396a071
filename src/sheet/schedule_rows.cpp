// SPDX-License-Identifier: MIT
#include <algorithm>

#include "sheet/panel_facts.hpp"
#include "sheet/schedule_parts.hpp"
#include "sheet/schedule_words.hpp"

namespace doorcard {
namespace {

constexpr double gap = 1.2;

struct RowType {
    double text = 8.5, small = 7;
};
constexpr RowType row_types[] = {{8.5, 7}, {8, 6.5}, {7.5, 6.5}, {7, 6}};
constexpr RowType least_type = row_types[3];
constexpr std::size_t most_text_lines = 4;
constexpr double air = 0.35;
constexpr double beside_gap = 1.2;

struct RowBlock {
    std::vector<std::string> text, small;
    RowType type;
    bool small_beside = false;  // the class on the line of the last words
    double height() const {
        double sum = cap_height(type.text) + static_cast<double>(text.size() - 1) * line_advance(type.text);
        if (!small_beside) sum += static_cast<double>(small.size()) * line_advance(type.small);
        return sum + descent(small.empty() || small_beside ? type.text : type.small);
    }
};

bool warns(const DirectoryRow& row) {
    return row.kind == RowKind::not_traced || row.kind == RowKind::off || row.fire_alarm ||
           row.kind == RowKind::not_described;
}

class RowWords {
public:
    RowWords(Drawing& drawing, const ScheduleContent& content, FacePainting& face)
        : drawing_(drawing),
          content_(content),
          face_(face),
          columns_(schedule_columns(content.face.columns, content.network.supply(content.schedule.panel).legs)) {}

    void paint(const FaceRun& run, const FacePlace& place) {
        const ScheduleRow& row = content_.schedule.rows[run.entry];
        const double indent = place.sign_beside ? sign_width(row.entry) : 0;
        const RowBlock block = block_for(content_, row, columns_.description - gap - indent, place.height);
        const double first = first_baseline(block, place) - place.y;
        paint_description(row, block, place, indent, first);
        const FaceCell& lead = content_.face.cells[place.left ? 0 : 1][run.first];
        paint_figures(run, row, place,
                      std::max(cap_height(8) + 0.4, std::min(first, lead.least / 2 + cap_height(8) / 2)));
        paint_device(row, place, first);
    }

    static RowBlock block_for(const ScheduleContent& content, const ScheduleRow& row, double width, double height) {
        for (const RowType& type : row_types) {
            RowBlock block = block_at(content, row, width, type);
            if (block.height() + air <= height) return block;
        }
        return block_at(content, row, width, least_type);
    }

    static TypeStyle text_style(const ScheduleRow& row, double points) {
        return {points, warns(row.entry), row.entry.claimed, true};
    }

    static RowBlock block_at(const ScheduleContent& content, const ScheduleRow& row, double width,
                             const RowType& type) {
        RowBlock block;
        block.type = type;
        block.text =
            broken_lines(content.words.say(row.entry.text), text_style(row, type.text), width, most_text_lines);
        if (block.text.empty()) block.text.emplace_back();
        std::string under = row.entry.kind == RowKind::off || row.entry.fire_alarm || row.entry.kind == RowKind::source
                                ? content.words.say(row.entry.under)
                                : "";
        if (row.entry.under.pattern.find("fed by") != std::string::npos) under = content.words.say(row.entry.under);
        const std::string classes = class_text(row, content.words);
        if (!under.empty() && !classes.empty()) under += " · ";
        if (!(under + classes).empty())
            block.small = broken_lines(under + classes, {type.small, false, false, true}, width, 2);
        // where the words take several lines already, the class stands beside the last of them if it can
        if (block.text.size() > 1 && block.small.size() == 1)
            block.small_beside = text_width(block.text.back(), text_style(row, type.text)) + beside_gap +
                                     text_width(block.small.front(), {type.small, false, false, true}) <=
                                 width;
        return block;
    }

private:
    double x_of(bool left) const {
        const FaceColumns& face = content_.face.columns;
        return left ? face.left + face.number + 0.6 : face.right - face.number - face.text + columns_.device + 0.6;
    }

    double first_baseline(const RowBlock& block, const FacePlace& place) const {
        const double cap = cap_height(block.type.text);
        const double at_number = place.number_top + cap_height(content_.face.style.number);
        if (at_number - cap + block.height() + air <= place.height) return place.y + at_number;
        return place.y + std::max(0.15, (place.height - block.height()) / 2) + cap;
    }

    Ink ink(const ScheduleRow& row) const { return FacePainting::ink_of(row.entry); }

    void paint_description(const ScheduleRow& row, const RowBlock& block, const FacePlace& place, double indent,
                           double first) {
        double x = x_of(place.left);
        if (indent > 0) {
            face_.paint_sign(row.entry, x, place.y + first - sign_height + 0.3, place.left);
            x += indent;
        }
        const Frame room{x, place.y, columns_.description - gap - indent, place.height};
        double baseline = place.y + first;
        const TypeStyle style = text_style(row, block.type.text);
        for (const std::string& line : block.text) {
            drawing_.text(room, baseline, line, style, Align::left, ink(row));
            const double width = text_width(line, style);
            if (row.entry.claimed)
                drawing_.line(x, baseline + 0.62, x + width, baseline + 0.62, 0.18, ink(row), {0.2, 0.7});
            baseline += line_advance(block.type.text);
        }
        baseline -= line_advance(block.type.text);
        const double beside = block.small_beside ? text_width(block.text.back(), style) + beside_gap : 0;
        for (const std::string& line : block.small) {
            if (!block.small_beside) baseline += line_advance(block.type.small);
            drawing_.text({room.x + beside, room.y, room.width - beside, room.height}, baseline, line,
                          {block.type.small, false, false, true}, Align::left, inks::caption);
        }
    }

    Frame cell(double x, double width, const FacePlace& place, double at, double height) const {
        return {x, place.y + at, width, height};
    }

    // Hatched where nobody knows what is here.
    void paint_wire(const ScheduleRow& row, const FacePlace& place, double baseline) {
        const double x = x_of(place.left) + columns_.description, width = columns_.wire - gap;
        if (row.entry.kind == RowKind::not_traced)
            return drawing_.hatching({x, place.y + 0.9, width, place.height - 1.8});
        const TypeStyle style = fitting(wire_text(row), {8, false, false, true}, width, {8, 7, 6});
        drawing_.text({x, place.y, width, place.height}, baseline, cut_to(wire_text(row), style, width), style);
    }

    // A figure at the right of its column, smaller where it is wide.
    void figure(const Frame& frame, double baseline, const std::string& text, bool bold = false) {
        const TypeStyle style = fitting(text, {8, bold}, frame.width - 0.2, {8, 7.5, 7, 6.5, 6});
        drawing_.text({frame.x, frame.y, frame.width, frame.height}, baseline, cut_to(text, style, frame.width), style,
                      Align::right);
    }

    double va_x(bool left) const { return x_of(left) + columns_.description + columns_.wire; }
    double measured_x(bool left) const { return va_x(left) + columns_.va * static_cast<double>(columns_.legs); }

    void paint_figures(const FaceRun& run, const ScheduleRow& row, const FacePlace& place, double first) {
        if (!row.entry.breaker) return;
        first = std::max(first, cap_height(8) + 0.45);  // off the rule above
        const bool left = place.left;
        const auto& cells = content_.face.cells[left ? 0 : 1];
        const double y = place.y + first;
        paint_wire(row, place, y);
        if (row.entry.kind == RowKind::spare || row.entry.kind == RowKind::main) return;
        for (std::size_t i = run.first; i <= run.last; ++i) paint_pole(row, cells[i], place, first);
        const bool hollow = row.percent_measured;
        if (row.entry.kind == RowKind::source) return;
        const bool over = row.percent_of_rating.value_or(0) > 80;
        figure(cell(measured_x(left) + columns_.measured, columns_.percent, place, 0, place.height), y,
               percent_text(row.percent_of_rating, row.va_complete), over);
        paint_scale(row, measured_x(left) + 1.2, measured_x(left) + columns_.measured + columns_.percent,
                    y + std::min(2.55, place.height - first - 0.75), hollow);
    }

    // The pole's VA and measured current on its own line.
    void paint_pole(const ScheduleRow& row, const FaceCell& at, const FacePlace& place, double first) {
        const bool shown = at.y >= place.y - 0.01 && at.bottom() <= place.y + place.height + 0.01;
        if (!shown) return;
        const auto pole = std::find_if(row.poles.begin(), row.poles.end(),
                                       [&](const SchedulePole& p) { return p.position == at.position; });
        const double y = at.y + std::min(first, (at.height + cap_height(8)) / 2);
        const std::string& legs = content_.network.supply(content_.schedule.panel).legs;
        const auto leg = legs.find(pole->leg);
        if (row.entry.kind != RowKind::source && leg != std::string::npos)
            figure(
                {va_x(place.left) + columns_.va * static_cast<double>(leg) + 0.6, at.y, columns_.va - 0.6, at.height},
                y, va_text(pole->va, row.va_complete));
        const bool lead = pole == row.poles.begin();
        const bool highest = row.poles.size() > 1 && only_highest_known(row);
        const Frame room{measured_x(place.left) + 0.8, at.y, columns_.measured - 0.8, at.height};
        if (highest && lead) figure(room, y, amps_text(row.measured_highest_a));
        if (highest && !lead && pole == row.poles.begin() + 1) paint_highest(place.left, at, y);
        if (!highest) figure(room, y, amps_text(pole->measured_a));
    }

    void paint_highest(bool left, const FaceCell& at, double baseline) {
        const std::string text = content_.words(tr("highest leg"));
        const double width = columns_.measured + columns_.percent;
        const TypeStyle style = fitting(text, {6.5, false, false, true}, width - 1, {6.5, 6, 5.5});
        drawing_.text({measured_x(left) + 0.8, at.y, width - 0.8, at.height}, baseline,
                      cut_to(text, style, width - 0.8), style, Align::left, inks::caption);
    }

    // 0 to 100 % of the rating, heavy tick at 80; filled pointer calculated, hollow measured.
    void paint_scale(const ScheduleRow& row, double x1, double x2, double y, bool hollow) {
        if (!row.percent_of_rating) return;
        constexpr double past = 1.6;  // room past 100 for what is over
        const double whole = x2 - x1 - past;
        drawing_.line(x1, y, x1 + whole, y, lines::hair);
        for (int tick = 0; tick <= 5; ++tick) {
            const double x = x1 + whole * tick / 5;
            drawing_.line(x, y - (tick == 4 ? 0.9 : 0.45), x, y + (tick == 4 ? 0.5 : 0),
                          tick == 4 ? 0.35 : lines::hair);
        }
        const double at = x1 + whole * std::min(*row.percent_of_rating, 107.0) / 100;
        const std::vector<std::pair<double, double>> points = {{at, y}, {at - 0.8, y - 1.35}, {at + 0.8, y - 1.35}};
        if (hollow)
            drawing_.outline(points, 0.18);
        else
            drawing_.shape(points);
    }

    // Poles and guards, beside the handle.
    void paint_device(const ScheduleRow& row, const FacePlace& place, double first) {
        if (!row.entry.breaker) return;
        const FaceColumns& face = content_.face.columns;
        const double x =
            place.left ? face.handle_x(true) - columns_.device : face.right - face.number - face.text + 0.8;
        const double width = columns_.device - 1.2;
        double baseline =
            place.y + std::max(cap_height(6.5) + 0.3, std::min(first, place.height - line_advance(6.5) - 0.8));
        for (const std::string& text :
             {poles_text(row, content_.words), guards_text(content_.network, row, content_.words)}) {
            const TypeStyle style = fitting(text, {6.5, false, false, true}, width, {6.5, 6, 5.5, 5, 4.8});
            drawing_.text({x, place.y, width, place.height}, baseline, cut_to(text, style, width), style);
            baseline += line_advance(6.5);
        }
    }

    Drawing& drawing_;
    const ScheduleContent& content_;
    FacePainting& face_;
    const ScheduleColumns columns_;
};

}  // namespace

ScheduleColumns schedule_columns(const FaceColumns& face, const std::string& legs) {
    ScheduleColumns columns;
    columns.legs = std::max<std::size_t>(1, legs.size());
    columns.device = 10.6;
    columns.wire = 9.2;
    columns.va = columns.legs == 3 ? 10.5 : 11.5;
    columns.measured = 10.2;
    columns.percent = 8.6;
    columns.description = face.text - columns.device - columns.wire - columns.va * static_cast<double>(columns.legs) -
                          columns.measured - columns.percent - 2.4;
    return columns;
}

double words_height(const ScheduleContent& content, const FaceRun& run) {
    const ScheduleRow& row = content.schedule.rows[run.entry];
    const ScheduleColumns columns =
        schedule_columns(content.face.columns, content.network.supply(content.schedule.panel).legs);
    const double width = columns.description - gap - sign_width(row.entry);
    return RowWords::block_at(content, row, width, least_type).height() + air;
}

void draw_schedule_rows(Drawing& drawing, const ScheduleContent& content, std::pair<int, int> rows, double top,
                        double bottom) {
    FacePainting face(drawing, content.network, content.words, content.face, rows);
    RowWords words(drawing, content, face);
    face.paint(top, bottom, [&](const FaceRun& run, const FacePlace& place) { words.paint(run, place); });
}

namespace {

struct Caption {
    double x = 0, width = 0;
    std::string text;
    Align align = Align::left;
};

std::string longest_word(const std::string& text) {
    std::string longest;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t space = std::min(text.find(' ', at), text.size());
        if (space - at > longest.size()) longest = text.substr(at, space - at);
        at = space + 1;
    }
    return longest;
}

std::vector<Caption> captions_of(const ScheduleContent& content, bool left) {
    const FaceColumns& face = content.face.columns;
    const std::string& legs = content.network.supply(content.schedule.panel).legs;
    const ScheduleColumns columns = schedule_columns(face, legs);
    const Words& words = content.words;
    std::vector<Caption> found;
    double x = left ? face.left + face.number + 0.6 : face.right - face.number - face.text + columns.device + 0.6;
    const double device_x = left ? face.handle_x(true) - columns.device : face.right - face.number - face.text + 0.8;
    found.push_back({left ? face.left : face.right - face.number, face.number, words(tr("no.")),
                     left ? Align::left : Align::right});
    found.push_back({x, columns.description - 1, words(tr("description; class, how traced"))});
    x += columns.description;
    found.push_back({x, columns.wire - 1, words(tr("wire"))});
    x += columns.wire;
    for (const char leg : legs) {
        found.push_back({x + 1, columns.va - 1, words.say({tr("leg {0}, VA"), {std::string(1, leg)}}), Align::right});
        x += columns.va;
    }
    if (legs.empty()) x += columns.va;
    found.push_back({x + 0.6, columns.measured - 0.6, words(tr("measured, A")), Align::right});
    found.push_back({x + columns.measured + 0.4, columns.percent - 0.4, words(tr("% of rating")), Align::right});
    found.push_back({device_x, columns.device - 1.2, words(tr("poles, guard"))});
    found.push_back({face.handle_x(left), face.handle, words(tr("amperes")), Align::middle});
    return found;
}

}  // namespace

double draw_schedule_captions(Drawing& drawing, const ScheduleContent& content, double top) {
    const FaceColumns& face = content.face.columns;
    std::vector<Caption> captions = captions_of(content, true);
    if (!face.single)
        for (Caption& caption : captions_of(content, false)) captions.push_back(std::move(caption));
    captions.push_back({face.legs_x() - 0.4, face.legs + 0.8, content.words(tr("leg")), Align::middle});
    for (const Caption& caption : captions) {
        TypeStyle style{6.5, false, false, true};
        auto pieces = broken_lines(caption.text, style, caption.width);
        const auto whole = [&] {
            return pieces.size() <= 2 && text_width(longest_word(caption.text), style) <= caption.width;
        };
        while (!whole() && style.points > 5) {
            style.points -= 0.5;
            pieces = broken_lines(caption.text, style, caption.width);
        }
        if (pieces.size() > 2) pieces = broken_lines(caption.text, style, caption.width, 2);
        double baseline = top + 2.2;
        for (const std::string& piece : pieces) {
            drawing.text({caption.x, baseline - 2.2, caption.width, 3.2}, baseline, piece, style, caption.align,
                         inks::caption);
            baseline += line_advance(6.5);
        }
    }
    return top + 2.2 + line_advance(6.5) + 1.0;
}

}  // namespace doorcard
