// SPDX-License-Identifier: MIT
#include <algorithm>
#include <map>

#include "sheet/card_parts.hpp"
#include "sheet/card_signs.hpp"

namespace doorcard {
namespace {

using Rows = std::pair<int, int>;

class RowPainting {
public:
    RowPainting(Drawing& drawing, const CardContent& card)
        : drawing_(drawing), card_(card), plan_(card.plan), columns_(plan_.columns) {}

    void paint(double top, double bottom) {
        const Rows rows = plan_.cards[card_.card];
        drawing_.line(card_.left(), top, card_.right(), top, lines::heavy);
        drawing_.line(card_.left(), bottom, card_.right(), bottom, lines::heavy);
        for (const int side : {0, 1})
            for (const CardRun& run : plan_.runs[side]) paint_part(side, run, rows);
        paint_legs(rows);
        for (const CardNeutral& neutral : plan_.neutrals) paint_neutral(neutral, rows);
        paint_ties(rows);
    }

private:
    // The part of a run that lies on this card; a handle that had to be parted says so on the second card.
    void paint_part(int side, const CardRun& run, Rows rows) {
        const auto& cells = plan_.cells[side];
        std::size_t first = run.first, last = run.last;
        while (first <= last && cells[first].row < rows.first) ++first;
        while (last > first && cells[last].row > rows.second) --last;
        if (first > last || cells[first].row > rows.second) return;
        const bool left = side == 0;
        const double y = cells[first].y;
        const double height = cells[last].bottom() - y;
        for (std::size_t i = first; i <= last; ++i) paint_number(side, cells[i]);
        paint_device(run, left, y, height);
        const CardCell& upper = cells[first];
        const bool parted = first > run.first || last < run.last;
        const Place place{left, y, height, upper.pad_top, cells[last].pad_bottom, number_top(side, upper), parted};
        if (run.leads)
            paint_words(run, place, sign_width(plan_.entry(run.entry)) > 0 && !sign_below(side, upper));
        else
            paint_further_pole(run, left, y, height);
        paint_rule(side, first, last, rows);
    }

    Ink ink_of(const DirectoryRow& row) const { return row.fire_alarm ? inks::fire : inks::text; }

    void paint_number(int side, const CardCell& cell) {
        const bool left = side == 0;
        const Frame room{left ? columns_.left : columns_.right - columns_.number, cell.y, columns_.number, cell.height};
        const double cap = cap_height(12);
        const double baseline = cell.y + number_top(side, cell) + cap;
        drawing_.text(room, baseline, name_of(cell.position), {12, true}, left ? Align::left : Align::right,
                      ink_of(plan_.entry(cell.entry)));
        if (!sign_below(side, cell)) return;
        const double x = left ? columns_.left : columns_.right;
        paint_sign(plan_.entry(cell.entry), left ? x : x - sign_box(plan_.entry(cell.entry)), baseline + 0.5, left);
    }

    bool sign_below(int side, const CardCell& cell) const {
        return cell.height - cell.pad_top - cell.pad_bottom >= tall_cell && sign_width(plan_.entry(cell.entry)) > 0 &&
               leads_here(side, cell);
    }

    // Numbers stand as high in all rows; higher where a sign goes below.
    double number_top(int side, const CardCell& cell) const {
        const double with_sign = sign_below(side, cell) ? 0.5 + sign_height : 0;
        const double free = cell.height - cap_height(12) - with_sign - cell.pad_top - cell.pad_bottom;
        return cell.pad_top + std::clamp(free / 2, 0.35, 1.45);
    }

    bool leads_here(int side, const CardCell& cell) const {
        const auto& cells = plan_.cells[side];
        return std::any_of(plan_.runs[side].begin(), plan_.runs[side].end(),
                           [&](const CardRun& run) { return run.leads && &cells[run.first] == &cell; });
    }

    static double sign_box(const DirectoryRow& row) { return row.claimed ? sign_height : 5; }

    void paint_sign(const DirectoryRow& row, double x, double y, bool left) {
        if (row.claimed) return draw_claimed(drawing_, x, y);
        if (row.kind == RowKind::source) draw_arrow(drawing_, x, y, true, left);
        if (row.kind == RowKind::feeder) draw_arrow(drawing_, x, y, false, left);
    }

    struct Place {
        bool left;
        double y, height;
        double pad_top, pad_bottom;
        double number_top;  ///< of the first number, from y
        bool parted;        ///< the rest of the handle is on another card
    };

    void paint_words(const CardRun& run, const Place& place, bool inline_sign) {
        const DirectoryRow& row = plan_.entry(run.entry);
        const double indent = inline_sign ? sign_width(row) : 0;
        Frame room{columns_.text_x(place.left), place.y, columns_.text_width() - indent, place.height};
        const double free = place.height - place.pad_top - place.pad_bottom;
        const TextBlock block = place.parted ? parted_block(plan_, run.entry, room.width, card_.words)
                                             : text_block(plan_, run.entry, room.width, free, card_.words);
        if (inline_sign) {
            const double x = place.left ? room.x : room.x + columns_.text_width() - sign_box(row);
            paint_sign(row, x, place.y + place.number_top + cap_height(12) / 2 - sign_height / 2, place.left);
            if (place.left) room.x += indent;
        }
        const double widest = paint_lines(row, block, room, first_baseline(block, place));
        if (row.kind == RowKind::not_traced || row.kind == RowKind::not_described)
            hatch(place.left ? columns_.handle_x(true) - 1.0 : room.right(), room.x + widest + 1.3, place.y,
                  place.height);
    }

    // The first line stands on the number's baseline where the words fit below it, else they stand in the middle.
    static double first_baseline(const TextBlock& block, const Place& place) {
        if (block.lines.empty()) return place.y;
        constexpr double air = 0.45;
        const double cap = cap_height(block.lines.front().style.points);
        const double at_number = place.number_top + cap_height(12);
        if (at_number - cap + block.height <= place.height - place.pad_bottom - air) return place.y + at_number;
        const double free = place.height - place.pad_top - place.pad_bottom - block.height;
        return place.y + place.pad_top + std::max(0.0, free / 2) + cap;
    }

    double paint_lines(const DirectoryRow& row, const TextBlock& block, const Frame& room, double baseline) {
        double widest = 0;
        for (std::size_t i = 0; i < block.lines.size(); ++i) {
            const TextLine& line = block.lines[i];
            if (i > 0) baseline += line_advance(line.style.points);
            drawing_.text(room, baseline, line.text, line.style, Align::left, ink_of(row));
            const double width = text_width(line.text, line.style);
            widest = std::max(widest, width);
            if (line.claimed) drawing_.dotted(room.x, baseline, width);
        }
        return widest;
    }

    void hatch(double to, double from, double y, double height) {
        if (to - from >= 2) drawing_.hatching({from, y + 1.1, to - from, height - 2.2});
    }

    void paint_further_pole(const CardRun& run, bool left, double y, double height) {
        const DirectoryRow& row = plan_.entry(run.entry);
        const std::string text = card_.words.say({tr("pole of {0}"), {name_of(row.positions)}});
        const Frame room{columns_.text_x(left), y, columns_.text_width(), height};
        const TypeStyle style = fitting(text, {8}, room.width, {8, 7.5, 7});
        drawing_.text(room, y + height / 2 + cap_height(8) / 2, cut_to(text, style, room.width), style);
    }

    Frame device_frame(bool left, double y, double height) const {
        const double gap = height > 6.5 ? 1.15 : 0.5;
        return {columns_.handle_x(left), y + gap, columns_.handle, height - 2 * gap};
    }

    Handle handle_of(const DirectoryRow& row, bool left) const {
        const Breaker& breaker = card_.survey().breakers[*row.breaker];
        Handle handle;
        handle.on_left = left;
        handle.rating = rating_text(breaker);
        handle.fuse = breaker.device && *breaker.device != "breaker";
        handle.test_button =
            breaker.guards && std::any_of(breaker.guards->begin(), breaker.guards->end(),
                                          [](Guard guard) { return guard != Guard::equipment_ground; });
        if (breaker.state == BreakerState::off) handle.state = HandleState::off;
        if (breaker.state == BreakerState::spare && row.kind == RowKind::spare) handle.state = HandleState::spare;
        handle.ink = ink_of(row);
        return handle;
    }

    void paint_device(const CardRun& run, bool left, double y, double height) {
        const DirectoryRow& row = plan_.entry(run.entry);
        const Frame frame = device_frame(left, y, height);
        if (row.breaker) return draw_handle(drawing_, frame, handle_of(row, left), 10, card_.words(tr("OFF")));
        if (row.kind == RowKind::space) return draw_space(drawing_, frame);
        drawing_.text(frame, y + height / 2 + cap_height(10) / 2, "–", {10, true}, Align::middle);
    }

    // Rules stop at the number within one handle; between halves of a space they are hairlines.
    void paint_rule(int side, std::size_t first, std::size_t last, Rows rows) {
        const auto& cells = plan_.cells[side];
        const bool left = side == 0;
        for (std::size_t i = first; i < last; ++i)
            rule_at(left, cells[i].bottom(), true, cells[i].row == cells[i + 1].row);
        if (last + 1 >= cells.size() || cells[last + 1].row > rows.second) return;
        rule_at(left, cells[last].bottom(), false, cells[last].row == cells[last + 1].row);
    }

    void rule_at(bool left, double y, bool number_only, bool halves) {
        const double width = halves ? lines::hair : lines::row;
        const double outer = left ? columns_.left : columns_.right;
        const double to_number = left ? columns_.left + columns_.number - 1.2 : columns_.right - columns_.number + 1.2;
        const double to_legs = left ? columns_.legs_x() : columns_.legs_x() + columns_.legs;
        drawing_.line(outer, y, number_only ? to_number : to_legs, y, width);
    }

    void paint_legs(Rows rows) {
        for (int row = rows.first; row <= rows.second; ++row) {
            std::vector<const CardCell*> here[2];
            for (const int side : {0, 1})
                for (const CardCell& cell : plan_.cells[side])
                    if (cell.row == row) here[side].push_back(&cell);
            paint_row_legs(here[0], here[1]);
            paint_leg_rule(row, rows);
        }
    }

    void paint_row_legs(const std::vector<const CardCell*>& left, const std::vector<const CardCell*>& right) {
        std::vector<const CardCell*> all = left;
        all.insert(all.end(), right.begin(), right.end());
        if (all.empty()) return;
        const bool one =
            std::all_of(all.begin(), all.end(), [&](const CardCell* cell) { return cell->leg == all.front()->leg; });
        const double top = all.front()->y, bottom = all.back()->bottom();
        if (one) return paint_leg(all.front()->leg, {columns_.legs_x(), top, columns_.legs, bottom - top}, 9);
        const double half = columns_.legs / 2;
        for (const CardCell* cell : left) paint_leg(cell->leg, {columns_.legs_x(), cell->y, half, cell->height}, 8);
        for (const CardCell* cell : right)
            paint_leg(cell->leg, {columns_.legs_x() + half, cell->y, half, cell->height}, 8);
    }

    void paint_leg(char leg, const Frame& room, double points) {
        const std::string letter = leg == '?' ? "–" : std::string(1, leg);
        drawing_.text(room, room.y + room.height / 2 + cap_height(points) / 2, letter, {points, true}, Align::middle);
    }

    bool parted_below(int side, int row) const {
        const auto& cells = plan_.cells[side];
        for (const CardRun& run : plan_.runs[side])
            if (cells[run.first].row <= row && cells[run.last].row > row) return false;
        return true;
    }

    void paint_leg_rule(int row, Rows rows) {
        if (row == rows.second || !parted_below(0, row) || (!columns_.single && !parted_below(1, row))) return;
        double y = 0;
        for (const auto& cells : plan_.cells)
            for (const CardCell& cell : cells)
                if (cell.row == row) y = std::max(y, cell.bottom());
        drawing_.line(columns_.legs_x(), y, columns_.legs_x() + columns_.legs, y, lines::row);
    }

    struct Member {
        int side;
        const CardRun* run;
        double top, bottom;
    };

    std::vector<Member> members(const std::vector<std::size_t>& entries, Rows rows) const {
        std::vector<Member> found;
        for (const int side : {0, 1})
            for (const CardRun& run : plan_.runs[side]) {
                if (std::find(entries.begin(), entries.end(), run.entry) == entries.end()) continue;
                const CardCell& first = plan_.cells[side][run.first];
                const CardCell& last = plan_.cells[side][run.last];
                if (first.row >= rows.first && last.row <= rows.second)
                    found.push_back({side, &run, first.y, last.bottom()});
            }
        return found;
    }

    // The bracket hangs in the margin beside its members; words between neighbours lie on the rule.
    void paint_neutral(const CardNeutral& neutral, Rows rows) {
        for (const int side : {0, 1}) {
            std::vector<Member> here = members(neutral.entries, rows);
            std::erase_if(here, [&](const Member& member) { return member.side != side; });
            if (here.empty()) continue;
            const bool left = side == 0;
            const std::vector<std::pair<double, double>> teeth = teeth_of(side, here);
            if (teeth.size() > 1) bracket(left, teeth, neutral.tied);
            if (neutral.neighbours) paint_rule_words(left, here.front().bottom, neutral);
        }
    }

    // The middle of each space that belongs to the neutral.
    std::vector<std::pair<double, double>> teeth_of(int side, const std::vector<Member>& here) const {
        std::vector<std::pair<double, double>> teeth;
        for (const Member& member : here)
            for (std::size_t i = member.run->first; i <= member.run->last; ++i) {
                const CardCell& cell = plan_.cells[side][i];
                const double top = cell.y + number_top(side, cell);
                teeth.emplace_back(top + cap_height(12) / 2, 0);
            }
        return teeth;
    }

    void bracket(bool left, const std::vector<std::pair<double, double>>& teeth, bool tied) {
        const double x = left ? columns_.left - 0.8 : columns_.right + 0.8;
        const int lane = free_lane(left, teeth.front().first, teeth.back().first);
        const double depth = 1.7 + 1.5 * lane;
        if (lane > 1) return;  // no room left in the margin: the words in the cells say it
        draw_bracket(drawing_, x, teeth.front().first, teeth.back().first, left, depth, !tied);
        for (std::size_t i = 1; i + 1 < teeth.size(); ++i)
            drawing_.line(x, teeth[i].first, left ? x - depth : x + depth, teeth[i].first, lines::heavy);
    }

    int free_lane(bool left, double top, double bottom) {
        int lane = 0;
        for (const auto& [side, from, to, taken] : brackets_)
            if (side == left && from < bottom && to > top) lane = std::max(lane, taken + 1);
        brackets_.emplace_back(left, top, bottom, lane);
        return lane;
    }

    void paint_rule_words(bool left, double y, const CardNeutral& neutral) {
        const double width = text_width(neutral.words, neutral.style);
        const double x = columns_.text_x(left);
        drawing_.fill({x - 0.8, y - 0.3, width + 1.6, 0.6}, inks::paper);
        drawing_.text({x, y - 1.7, columns_.text_width(), 3.5}, y + cap_height(neutral.style.points) / 2, neutral.words,
                      neutral.style);
        const double margin = left ? columns_.left - 2.4 : columns_.right + 2.4;
        drawing_.line(margin, y, left ? x - 0.8 : columns_.right - columns_.number + 1.2, y, lines::outline);
    }

    // A tie between the levers of neighbours; a handle in several pieces has its pieces joined beside the words.
    void paint_ties(Rows rows) {
        for (const int side : {0, 1}) {
            const bool left = side == 0;
            const auto& runs = plan_.runs[side];
            for (std::size_t i = 0; i + 1 < runs.size(); ++i)
                if (tied(runs[i], runs[i + 1])) join_levers(side, runs[i], runs[i + 1], rows, left);
            std::map<std::size_t, std::vector<const CardRun*>> pieces;
            for (const CardRun& run : runs) pieces[run.entry].push_back(&run);
            for (const auto& [entry, parts] : pieces)
                if (parts.size() > 1) join_pieces(side, *parts.front(), *parts.back(), rows, left);
        }
    }

    bool tied(const CardRun& a, const CardRun& b) const {
        const auto& first = plan_.entry(a.entry).breaker;
        const auto& second = plan_.entry(b.entry).breaker;
        if (!first || !second || a.entry == b.entry) return false;
        const auto& together = card_.network.opened_with(*first);
        return std::find(together.begin(), together.end(), *second) != together.end();
    }

    bool on_card(int side, const CardRun& a, const CardRun& b, Rows rows) const {
        return plan_.cells[side][a.first].row >= rows.first && plan_.cells[side][b.last].row <= rows.second;
    }

    Frame frame_of(int side, const CardRun& run) const {
        const double y = plan_.cells[side][run.first].y;
        return device_frame(side == 0, y, plan_.cells[side][run.last].bottom() - y);
    }

    void join_levers(int side, const CardRun& a, const CardRun& b, Rows rows, bool left) {
        if (!on_card(side, a, b, rows)) return;
        const Frame upper = frame_of(side, a), lower = frame_of(side, b);
        const double x = lever_x(upper, handle_of(plan_.entry(a.entry), left));
        drawing_.fill({x - 0.85, upper.bottom() - 1.0, 1.7, lower.y - upper.bottom() + 2.0});
    }

    void join_pieces(int side, const CardRun& a, const CardRun& b, Rows rows, bool left) {
        if (!on_card(side, a, b, rows)) return;
        const Frame upper = frame_of(side, a), lower = frame_of(side, b);
        const double edge = left ? upper.x : upper.right();
        const double x = left ? edge - 0.9 : edge + 0.9;
        const double y1 = upper.y + upper.height / 2, y2 = lower.y + lower.height / 2;
        drawing_.line(edge, y1, x, y1, lines::heavy);
        drawing_.line(edge, y2, x, y2, lines::heavy);
        drawing_.line(x, y1 - lines::heavy / 2, x, y2 + lines::heavy / 2, lines::heavy);
    }

    Drawing& drawing_;
    const CardContent& card_;
    CardPlan& plan_;
    const CardColumns& columns_;
    std::vector<std::tuple<bool, double, double, int>> brackets_;
};

}  // namespace

void draw_rows(Drawing& drawing, const CardContent& card, double top, double bottom) {
    RowPainting(drawing, card).paint(top, bottom);
}

}  // namespace doorcard
