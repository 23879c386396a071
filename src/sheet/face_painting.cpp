// SPDX-License-Identifier: MIT
#include "sheet/face_painting.hpp"

#include <algorithm>
#include <map>

#include "sheet/panel_facts.hpp"

namespace doorcard {

FacePainting::FacePainting(Drawing& drawing, const Network& network, const Words& words, const PanelFace& face,
                           std::pair<int, int> rows)
    : drawing_(drawing), network_(network), words_(words), face_(face), columns_(face.columns), rows_(rows) {}

void FacePainting::paint(double top, double bottom, const PaintWords& paint_words) {
    drawing_.line(columns_.left, top, columns_.right, top, lines::heavy);
    drawing_.line(columns_.left, bottom, columns_.right, bottom, lines::heavy);
    for (const int side : {0, 1})
        for (const FaceRun& run : face_.runs[side]) paint_part(side, run, paint_words);
    paint_legs();
    for (const FaceNeutral& neutral : face_.neutrals) paint_neutral(neutral);
    paint_ties();
}

// The part of a run that lies on this page; a handle that had to be parted says so on the second page.
void FacePainting::paint_part(int side, const FaceRun& run, const PaintWords& paint_words) {
    const auto& cells = face_.cells[side];
    std::size_t first = run.first, last = run.last;
    while (first <= last && cells[first].row < rows_.first) ++first;
    while (last > first && cells[last].row > rows_.second) --last;
    if (first > last || cells[first].row > rows_.second) return;
    const bool left = side == 0;
    const double y = cells[first].y;
    const double height = cells[last].bottom() - y;
    for (std::size_t i = first; i <= last; ++i) paint_number(side, cells[i]);
    paint_device(run, left, y, height);
    const FaceCell& upper = cells[first];
    const bool parted = first > run.first || last < run.last;
    const bool beside = sign_width(face_.entry(run.entry)) > 0 && !sign_below(side, upper);
    if (run.leads)
        paint_words(run,
                    {left, y, height, upper.pad_top, cells[last].pad_bottom, number_top(side, upper), parted, beside});
    else
        paint_further_pole(run, left, y, height);
    paint_rule(side, first, last);
}

void FacePainting::paint_number(int side, const FaceCell& cell) {
    const bool left = side == 0;
    const Frame room{left ? columns_.left : columns_.right - columns_.number, cell.y, columns_.number, cell.height};
    const double cap = cap_height(face_.style.number);
    const double baseline = cell.y + number_top(side, cell) + cap;
    drawing_.text(room, baseline, name_of(cell.position), {face_.style.number, true}, left ? Align::left : Align::right,
                  ink_of(face_.entry(cell.entry)));
    if (!sign_below(side, cell)) return;
    const double x = left ? columns_.left : columns_.right;
    paint_sign(face_.entry(cell.entry), left ? x : x - sign_box(face_.entry(cell.entry)),
               baseline + (cell.height > 10.5 ? 0.9 : 0.5), left);
}

bool FacePainting::sign_below(int side, const FaceCell& cell) const {
    return cell.height - cell.pad_top - cell.pad_bottom >= tall_cell && sign_width(face_.entry(cell.entry)) > 0 &&
           leads_here(side, cell);
}

// Numbers stand as high in all rows; higher where a sign goes below.
double FacePainting::number_top(int side, const FaceCell& cell) const {
    const double with_sign = sign_below(side, cell) ? 0.5 + sign_height : 0;
    const double free = cell.height - cap_height(face_.style.number) - with_sign - cell.pad_top - cell.pad_bottom;
    return cell.pad_top + std::clamp(free / 2, 0.35, 1.45);
}

bool FacePainting::leads_here(int side, const FaceCell& cell) const {
    const auto& cells = face_.cells[side];
    return std::any_of(face_.runs[side].begin(), face_.runs[side].end(),
                       [&](const FaceRun& run) { return run.leads && &cells[run.first] == &cell; });
}

void FacePainting::paint_sign(const DirectoryRow& row, double x, double y, bool left) {
    if (row.claimed) return draw_claimed(drawing_, x, y);
    if (row.kind == RowKind::source) draw_arrow(drawing_, x, y, true, left);
    if (row.kind == RowKind::feeder) draw_arrow(drawing_, x, y, false, left);
}

void FacePainting::paint_further_pole(const FaceRun& run, bool left, double y, double height) {
    const DirectoryRow& row = face_.entry(run.entry);
    const std::string text = words_.say({tr("pole of {0}"), {name_of(row.positions)}});
    const Frame room{columns_.text_x(left), y, columns_.text_width(), height};
    const TypeStyle style = fitting(text, {8}, room.width, {8, 7.5, 7});
    drawing_.text(room, y + height / 2 + cap_height(8) / 2, cut_to(text, style, room.width), style);
}

Frame FacePainting::device_frame(bool left, double y, double height) const {
    const double gap = height > 6.5 ? 1.15 : 0.5;
    return {columns_.handle_x(left), y + gap, columns_.handle, height - 2 * gap};
}

Handle FacePainting::handle_of(const DirectoryRow& row, bool left) const {
    const Breaker& breaker = network_.survey().breakers[*row.breaker];
    Handle handle;
    handle.on_left = left;
    handle.rating = rating_text(breaker);
    handle.fuse = breaker.device && *breaker.device != "breaker";
    handle.test_button = breaker.guards && std::any_of(breaker.guards->begin(), breaker.guards->end(),
                                                       [](Guard guard) { return guard != Guard::equipment_ground; });
    if (breaker.state == BreakerState::off || is_off(row)) handle.state = HandleState::off;
    if (breaker.state == BreakerState::spare && row.kind == RowKind::spare) handle.state = HandleState::spare;
    handle.ink = ink_of(row);
    return handle;
}

void FacePainting::paint_device(const FaceRun& run, bool left, double y, double height) {
    const DirectoryRow& row = face_.entry(run.entry);
    const Frame frame = device_frame(left, y, height);
    if (row.breaker) return draw_handle(drawing_, frame, handle_of(row, left), face_.style.rating, words_(tr("OFF")));
    if (row.kind == RowKind::space) return paint_space(frame);
    drawing_.text(frame, y + height / 2 + cap_height(face_.style.rating) / 2, "–", {face_.style.rating, true},
                  Align::middle);
}

void FacePainting::paint_space(const Frame& frame) {
    face_.style.is_space_dashed ? draw_space(drawing_, frame)
                                : drawing_.box(frame, lines::row, std::nullopt, inks::caption);
}

bool FacePainting::is_off(const DirectoryRow& row) const {
    return std::any_of(face_.off.begin(), face_.off.end(), [&](std::size_t i) { return &face_.entry(i) == &row; });
}

// Rules stop at the number within one handle; between halves of a space they are hairlines.
void FacePainting::paint_rule(int side, std::size_t first, std::size_t last) {
    const auto& cells = face_.cells[side];
    const bool left = side == 0;
    for (std::size_t i = first; i < last; ++i) rule_at(left, cells[i].bottom(), true, cells[i].row == cells[i + 1].row);
    if (last + 1 >= cells.size() || cells[last + 1].row > rows_.second) return;
    rule_at(left, cells[last].bottom(), false, cells[last].row == cells[last + 1].row);
}

void FacePainting::rule_at(bool left, double y, bool number_only, bool halves) {
    const double width = halves ? lines::hair : lines::row;
    const double outer = left ? columns_.left : columns_.right;
    const double to_number = left ? columns_.left + columns_.number - 1.2 : columns_.right - columns_.number + 1.2;
    const double to_legs = left ? columns_.legs_x() : columns_.legs_x() + columns_.legs;
    drawing_.line(outer, y, number_only ? to_number : to_legs, y, width, face_.style.rule);
}

void FacePainting::paint_legs() {
    for (int row = rows_.first; row <= rows_.second; ++row) {
        std::vector<const FaceCell*> here[2];
        for (const int side : {0, 1})
            for (const FaceCell& cell : face_.cells[side])
                if (cell.row == row) here[side].push_back(&cell);
        paint_row_legs(here[0], here[1]);
        paint_leg_rule(row);
    }
}

void FacePainting::paint_row_legs(const std::vector<const FaceCell*>& left, const std::vector<const FaceCell*>& right) {
    std::vector<const FaceCell*> all = left;
    all.insert(all.end(), right.begin(), right.end());
    if (all.empty()) return;
    const bool one =
        std::all_of(all.begin(), all.end(), [&](const FaceCell* cell) { return cell->leg == all.front()->leg; });
    const double top = all.front()->y, bottom = all.back()->bottom();
    if (one) return paint_leg(all.front()->leg, {columns_.legs_x(), top, columns_.legs, bottom - top}, face_.style.leg);
    const double half = columns_.legs / 2;
    for (const FaceCell* cell : left)
        paint_leg(cell->leg, {columns_.legs_x(), cell->y, half, cell->height}, face_.style.leg - 1);
    for (const FaceCell* cell : right)
        paint_leg(cell->leg, {columns_.legs_x() + half, cell->y, half, cell->height}, face_.style.leg - 1);
}

void FacePainting::paint_leg(char leg, const Frame& room, double points) {
    const std::string letter = leg == '?' ? "–" : std::string(1, leg);
    drawing_.text(room, room.y + room.height / 2 + cap_height(points) / 2, letter, {points, true}, Align::middle);
}

bool FacePainting::parted_below(int side, int row) const {
    const auto& cells = face_.cells[side];
    for (const FaceRun& run : face_.runs[side])
        if (cells[run.first].row <= row && cells[run.last].row > row) return false;
    return true;
}

void FacePainting::paint_leg_rule(int row) {
    if (row == rows_.second || !parted_below(0, row) || (!columns_.single && !parted_below(1, row))) return;
    double y = 0;
    for (const auto& cells : face_.cells)
        for (const FaceCell& cell : cells)
            if (cell.row == row) y = std::max(y, cell.bottom());
    drawing_.line(columns_.legs_x(), y, columns_.legs_x() + columns_.legs, y, lines::row, face_.style.rule);
}

std::vector<FaceMember> FacePainting::members(const std::vector<std::size_t>& entries) const {
    std::vector<FaceMember> found;
    for (const int side : {0, 1})
        for (const FaceRun& run : face_.runs[side]) {
            if (std::find(entries.begin(), entries.end(), run.entry) == entries.end()) continue;
            const FaceCell& first = face_.cells[side][run.first];
            const FaceCell& last = face_.cells[side][run.last];
            if (first.row >= rows_.first && last.row <= rows_.second)
                found.push_back({side, &run, first.y, last.bottom()});
        }
    return found;
}

// The bracket hangs in the margin beside its members.
void FacePainting::paint_neutral(const FaceNeutral& neutral) {
    for (const int side : {0, 1}) {
        std::vector<FaceMember> here = members(neutral.entries);
        std::erase_if(here, [&](const FaceMember& member) { return member.side != side; });
        if (here.empty()) continue;
        const bool left = side == 0;
        const std::vector<std::pair<double, double>> teeth = teeth_of(side, here);
        if (teeth.size() > 1) bracket(left, teeth, neutral.tied, neutral.ink);
    }
}

// The middle of each space that belongs to the neutral.
std::vector<std::pair<double, double>> FacePainting::teeth_of(int side, const std::vector<FaceMember>& here) const {
    std::vector<std::pair<double, double>> teeth;
    for (const FaceMember& member : here)
        for (std::size_t i = member.run->first; i <= member.run->last; ++i) {
            const FaceCell& cell = face_.cells[side][i];
            const double top = cell.y + number_top(side, cell);
            teeth.emplace_back(top + cap_height(face_.style.number) / 2, 0);
        }
    return teeth;
}

void FacePainting::bracket(bool left, const std::vector<std::pair<double, double>>& teeth, bool tied, Ink ink) {
    const double x = left ? columns_.left - 0.8 : columns_.right + 0.8;
    const int lane = free_lane(left, teeth.front().first, teeth.back().first);
    const double depth = 1.7 + 1.5 * lane;
    if (lane > 1) return;  // no room left in the margin: the words in the cells say it
    draw_bracket(drawing_, x, teeth.front().first, teeth.back().first, left, depth, !tied, ink);
    for (std::size_t i = 1; i + 1 < teeth.size(); ++i)
        drawing_.line(x, teeth[i].first, left ? x - depth : x + depth, teeth[i].first, lines::heavy, ink);
}

int FacePainting::free_lane(bool left, double top, double bottom) {
    int lane = 0;
    for (const auto& [side, from, to, taken] : brackets_)
        if (side == left && from < bottom && to > top) lane = std::max(lane, taken + 1);
    brackets_.emplace_back(left, top, bottom, lane);
    return lane;
}

// A tie between the levers of neighbours; a handle in several pieces has its pieces joined beside the words.
void FacePainting::paint_ties() {
    for (const int side : {0, 1}) {
        const bool left = side == 0;
        const auto& runs = face_.runs[side];
        for (std::size_t i = 0; i + 1 < runs.size(); ++i)
            if (tied(runs[i], runs[i + 1])) join_levers(side, runs[i], runs[i + 1], left);
        std::map<std::size_t, std::vector<const FaceRun*>> pieces;
        for (const FaceRun& run : runs) pieces[run.entry].push_back(&run);
        for (const auto& [entry, parts] : pieces)
            if (parts.size() > 1) join_pieces(side, *parts.front(), *parts.back(), left);
    }
}

bool FacePainting::tied(const FaceRun& a, const FaceRun& b) const {
    const auto& first = face_.entry(a.entry).breaker;
    const auto& second = face_.entry(b.entry).breaker;
    if (!first || !second || a.entry == b.entry) return false;
    const auto& together = network_.opened_with(*first);
    return std::find(together.begin(), together.end(), *second) != together.end();
}

bool FacePainting::on_page(int side, const FaceRun& a, const FaceRun& b) const {
    return face_.cells[side][a.first].row >= rows_.first && face_.cells[side][b.last].row <= rows_.second;
}

Frame FacePainting::frame_of(int side, const FaceRun& run) const {
    const double y = face_.cells[side][run.first].y;
    return device_frame(side == 0, y, face_.cells[side][run.last].bottom() - y);
}

void FacePainting::join_levers(int side, const FaceRun& a, const FaceRun& b, bool left) {
    if (!on_page(side, a, b)) return;
    const Frame upper = frame_of(side, a), lower = frame_of(side, b);
    const double x = lever_x(upper, handle_of(face_.entry(a.entry), left));
    drawing_.fill({x - 0.85, upper.bottom() - 1.0, 1.7, lower.y - upper.bottom() + 2.0});
}

void FacePainting::join_pieces(int side, const FaceRun& a, const FaceRun& b, bool left) {
    if (!on_page(side, a, b)) return;
    const Frame upper = frame_of(side, a), lower = frame_of(side, b);
    const double edge = left ? upper.x : upper.right();
    const double x = left ? edge - 0.9 : edge + 0.9;
    const double y1 = upper.y + upper.height / 2, y2 = lower.y + lower.height / 2;
    drawing_.line(edge, y1, x, y1, lines::heavy);
    drawing_.line(edge, y2, x, y2, lines::heavy);
    drawing_.line(x, y1 - lines::heavy / 2, x, y2 + lines::heavy / 2, lines::heavy);
}

}  // namespace doorcard
