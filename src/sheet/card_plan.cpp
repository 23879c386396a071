// SPDX-License-Identifier: MIT
#include "sheet/card_plan.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "sheet/card_neutrals.hpp"
#include "sheet/drawing.hpp"

namespace doorcard {
namespace {

constexpr double least_row = 7.0;
constexpr double usual_row = 9.7;
constexpr double half_row = 4.85;
// Above and below the words of a cell, together: two lines of 8 pt fit into the least row.
constexpr double air_of(const TextBlock& block) { return block.height < 6.2 ? 0.96 : 1.6; }
constexpr std::size_t most_lines = 6;

class Planning {
public:
    Planning(const Network& network, std::size_t panel, const Words& words)
        : network_(network), panel_(panel), words_(words), geometry_(network.geometry(panel)) {}

    CardPlan plan(double left, double right, double rows_height) {
        plan_.directory = directory_of(network_, panel_);
        plan_.rows = geometry_.rows();
        plan_.notes.resize(plan_.directory.rows.size());
        set_columns(left, right);
        set_cells();
        for (const int side : {0, 1}) set_runs(side);
        mark_neutrals(plan_, network_, words_);
        set_heights();
        part(rows_height);
        return std::move(plan_);
    }

private:
    // Numbers of three figures and halves, and ratings of four, take their column wider.
    void set_columns(double left, double right) {
        CardColumns& columns = plan_.columns;
        columns.left = left;
        columns.right = right;
        columns.single = geometry_.single_column();
        for (const DirectoryRow& row : plan_.directory.rows) {
            for (const Position position : row.positions)
                columns.number = std::max(columns.number, text_width(name_of(position), {12, true}) + 1.3);
            if (row.breaker && network_.survey().breakers[*row.breaker].amps.value_or(Amperes(0)).value >= 1000)
                columns.handle = 15;
        }
        const double sides = columns.single ? 1 : 2;
        columns.text = (right - left - columns.legs) / sides - columns.number - columns.handle;
    }

    bool turned_over() const { return network_.survey().panels[panel_].turned_over.value_or(false); }
    bool alternate() const { return network_.survey().panels[panel_].half_legs == "alternate"; }

    void set_cells() {
        for (std::size_t entry = 0; entry < plan_.directory.rows.size(); ++entry)
            for (const Position position : plan_.entry(entry).positions) add_cell(entry, position);
        for (auto& cells : plan_.cells)
            std::stable_sort(cells.begin(), cells.end(), [this](const CardCell& a, const CardCell& b) {
                if (a.row != b.row) return a.row < b.row;
                return turned_over() ? a.position.half > b.position.half : a.position.half < b.position.half;
            });
    }

    void add_cell(std::size_t entry, Position position) {
        if (position.space > geometry_.spaces()) return;
        CardCell cell;
        cell.position = position;
        cell.entry = entry;
        cell.row = geometry_.row(position.space);
        cell.leg = leg_of(plan_.entry(entry), position);
        plan_.cells[geometry_.on_left(position.space) ? 0 : 1].push_back(cell);
    }

    char leg_of(const DirectoryRow& row, Position position) const {
        if (!row.breaker) return geometry_.leg(network_.supply(panel_), position.space, position.half, alternate());
        const std::string& legs = network_.breaker_legs(*row.breaker);
        const auto pole = static_cast<std::size_t>(std::find(row.positions.begin(), row.positions.end(), position) -
                                                   row.positions.begin());
        return pole < legs.size() ? legs[pole] : '?';
    }

    void set_runs(int side) {
        const auto& cells = plan_.cells[side];
        std::set<std::size_t> led;
        for (std::size_t i = 0; i < cells.size();) {
            std::size_t last = i;
            while (last + 1 < cells.size() && cells[last + 1].entry == cells[i].entry &&
                   neighbours(cells[last], cells[last + 1]))
                ++last;
            plan_.runs[side].push_back({i, last, cells[i].entry, led.insert(cells[i].entry).second});
            i = last + 1;
        }
    }

    static bool neighbours(const CardCell& upper, const CardCell& lower) { return lower.row - upper.row <= 1; }

    void set_heights() {
        plan_.least.assign(static_cast<std::size_t>(plan_.rows) + 1, 0);
        for (const int side : {0, 1}) {
            for (CardCell& cell : plan_.cells[side])
                cell.least = (shares_row(side, cell) ? half_row : least_row) + cell.pad_top + cell.pad_bottom;
            for (const CardRun& run : plan_.runs[side]) raise(side, run);
            std::map<int, double> sums;
            for (const CardCell& cell : plan_.cells[side]) sums[cell.row] += cell.least;
            for (const auto& [row, sum] : sums)
                plan_.least[static_cast<std::size_t>(row)] = std::max(plan_.least[static_cast<std::size_t>(row)], sum);
        }
        for (std::size_t row = 1; row < plan_.least.size(); ++row)
            plan_.least[row] = std::max(plan_.least[row], least_row);
    }

    bool shares_row(int side, const CardCell& cell) const {
        const auto& cells = plan_.cells[side];
        return std::count_if(cells.begin(), cells.end(), [&](const CardCell& other) { return other.row == cell.row; }) >
               1;
    }

    // A run that needs more than its cells have raises each of them alike.
    void raise(int side, const CardRun& run) {
        auto& cells = plan_.cells[side];
        double has = 0, pads = 0;
        for (std::size_t i = run.first; i <= run.last; ++i) {
            has += cells[i].least;
            pads += cells[i].pad_top + cells[i].pad_bottom;
        }
        const double count = static_cast<double>(run.last - run.first + 1);
        const double needs = run.leads ? needed(run.entry) + pads : 0;
        for (std::size_t i = run.first; i <= run.last; ++i) cells[i].least += std::max(0.0, needs - has) / count;
    }

    double needed(std::size_t entry) const {
        const double width = plan_.columns.text_width() - sign_width(plan_.entry(entry));
        const TextBlock block = text_block(plan_, entry, width, 0, words_);
        return block.height + air_of(block);
    }

    // True where a card may end below this row: no handle and no shared neutral of neighbours is parted.
    bool clean_below(int row) const {
        for (const int side : {0, 1}) {
            const auto& cells = plan_.cells[side];
            for (const CardRun& run : plan_.runs[side])
                if (cells[run.first].row <= row && cells[run.last].row > row) return false;
            for (std::size_t i = 0; i + 1 < cells.size(); ++i)
                if (cells[i].row == row && cells[i + 1].row == row + 1 && cells[i].pad_bottom > 0) return false;
        }
        return true;
    }

    int rows_that_fit(int first, double height) const {
        int last = first;
        double sum = plan_.least[static_cast<std::size_t>(first)];
        while (last < plan_.rows && sum + plan_.least[static_cast<std::size_t>(last) + 1] <= height) {
            ++last;
            sum += plan_.least[static_cast<std::size_t>(last)];
        }
        return last;
    }

    int least_cards(double height) const {
        int count = 0;
        for (int first = 1; first <= plan_.rows; ++count) first = clean_end(first, rows_that_fit(first, height)) + 1;
        return count;
    }

    // The nearest clean end at or above `wanted`; `wanted` itself where there is none.
    int clean_end(int first, int wanted) const {
        if (wanted >= plan_.rows) return plan_.rows;
        for (int row = wanted; row > first; --row)
            if (clean_below(row)) return row;
        return wanted;
    }

    // As few cards as can be, with about the same number of rows each.
    void part(double height) {
        int left = least_cards(height);
        for (int first = 1; first <= plan_.rows; --left) {
            const int fits = rows_that_fit(first, height);
            const int share = left > 1 ? (plan_.rows - first + left) / left : plan_.rows;
            int end = std::min(fits, first + share - 1);
            int clean = end;
            while (clean < fits && !clean_below(clean)) ++clean;
            end = clean_end(first, clean_below(clean) ? clean : end);
            plan_.cards.emplace_back(first, end);
            first = end + 1;
        }
    }

    const Network& network_;
    std::size_t panel_;
    const Words& words_;
    const SpaceGeometry& geometry_;
    CardPlan plan_;
};

void add_lines(TextBlock& block, const std::string& text, const TypeStyle& style, double width, std::size_t most,
               bool claimed) {
    for (const std::string& line : even_lines(text, style, width, most)) {
        block.height += block.lines.empty() ? cap_height(style.points) : line_advance(style.points);
        block.lines.push_back({line, style, claimed});
    }
}

TextBlock block_at(double points, const DirectoryRow& row, const std::string& note, double width, const Words& words) {
    const bool warns = row.kind == RowKind::not_traced || row.kind == RowKind::off || row.fire_alarm ||
                       (row.kind == RowKind::not_described);
    TextBlock block;
    add_lines(block, words.say(row.text), {points, warns, row.claimed, false}, width, most_lines, row.claimed);
    add_lines(block, words.say(row.under), {8, row.kind == RowKind::off && row.circuits.empty(), false, false}, width,
              3, false);
    if (!note.empty()) add_lines(block, note, {8, true}, width, 2, false);
    if (!block.lines.empty()) block.height += descent(block.lines.back().style.points);
    return block;
}

}  // namespace

double sign_width(const DirectoryRow& row) {
    if (row.claimed) return 3.9;
    if (row.kind == RowKind::source || row.kind == RowKind::feeder) return 6.2;
    return 0;
}

TextBlock parted_block(const CardPlan& plan, std::size_t entry, double width, const Words& words) {
    const DirectoryRow& row = plan.entry(entry);
    const std::string handle = words.say({tr("{0} is one handle"), {name_of(row.positions)}});
    TextBlock block;
    add_lines(block, words.say(row.text), {8, false, row.claimed}, width, 1, row.claimed);
    add_lines(block, handle, {8, true}, width, 1, false);
    block.height += descent(8);
    return block;
}

TextBlock text_block(const CardPlan& plan, std::size_t entry, double width, double height, const Words& words) {
    const DirectoryRow& row = plan.entry(entry);
    const std::string& note = plan.notes[entry];
    if (height > 0) {
        TextBlock large = block_at(9, row, note, width, words);
        if (large.height + 0.9 <= height) return large;
    }
    return block_at(8, row, note, width, words);
}

CardPlan card_plan(const Network& network, std::size_t panel, double content_left, double content_right,
                   double rows_height, const Words& words) {
    return Planning(network, panel, words).plan(content_left, content_right, rows_height);
}

double place_cells(CardPlan& plan, std::pair<int, int> rows, double top, double height) {
    const auto total = [&](double pitch) {
        double sum = 0;
        for (int row = rows.first; row <= rows.second; ++row)
            sum += std::max(plan.least[static_cast<std::size_t>(row)], pitch);
        return sum;
    };
    double low = 0, high = usual_row;
    for (int step = 0; step < 40; ++step) (total((low + high) / 2) <= height ? low : high) = (low + high) / 2;
    const double pitch = total(usual_row) <= height ? usual_row : low;
    double y = top;
    for (int row = rows.first; row <= rows.second; ++row) {
        const double whole = std::max(plan.least[static_cast<std::size_t>(row)], pitch);
        for (auto& cells : plan.cells) {
            double needs = 0, at = y;
            for (const CardCell& cell : cells)
                if (cell.row == row) needs += cell.least;
            for (CardCell& cell : cells) {
                if (cell.row != row) continue;
                cell.y = at;
                cell.height = cell.least * whole / needs;
                at += cell.height;
            }
        }
        y += whole;
    }
    return y;
}

}  // namespace doorcard
