// SPDX-License-Identifier: MIT
#include "sheet/panel_face.hpp"

#include <algorithm>
#include <map>
#include <set>

#include "sheet/type_case.hpp"

namespace doorcard {
namespace {

class Hanging {
public:
    Hanging(const Network& network, std::size_t panel)
        : network_(network), panel_(panel), geometry_(network.geometry(panel)) {}

    PanelFace face(double left, double right, const FaceColumns& widths, const FaceStyle& style) {
        face_.directory = directory_of(network_, panel_);
        face_.style = style;
        face_.rows = geometry_.rows();
        set_columns(left, right, widths);
        set_cells();
        for (const int side : {0, 1}) set_runs(side);
        set_neutrals();
        return std::move(face_);
    }

private:
    // Numbers of three figures and halves, and ratings of four, take their column wider.
    void set_columns(double left, double right, const FaceColumns& widths) {
        FaceColumns& columns = face_.columns;
        columns = widths;
        columns.left = left;
        columns.right = right;
        columns.single = geometry_.single_column();
        for (const DirectoryRow& row : face_.directory.rows) {
            for (const Position position : row.positions)
                columns.number =
                    std::max(columns.number, text_width(name_of(position), {face_.style.number, true}) + 1.3);
            if (row.breaker && network_.survey().breakers[*row.breaker].amps.value_or(Amperes(0)).value >= 1000)
                columns.handle = 15;
        }
        const double sides = columns.single ? 1 : 2;
        columns.text = (right - left - columns.legs) / sides - columns.number - columns.handle;
    }

    bool turned_over() const { return network_.survey().panels[panel_].turned_over.value_or(false); }
    bool alternate() const { return network_.survey().panels[panel_].half_legs == "alternate"; }

    void set_cells() {
        for (std::size_t entry = 0; entry < face_.directory.rows.size(); ++entry)
            for (const Position position : face_.entry(entry).positions) add_cell(entry, position);
        for (auto& cells : face_.cells)
            std::stable_sort(cells.begin(), cells.end(), [this](const FaceCell& a, const FaceCell& b) {
                if (a.row != b.row) return a.row < b.row;
                return turned_over() ? a.position.half > b.position.half : a.position.half < b.position.half;
            });
    }

    void add_cell(std::size_t entry, Position position) {
        if (position.space > geometry_.spaces()) return;
        FaceCell cell;
        cell.position = position;
        cell.entry = entry;
        cell.row = geometry_.row(position.space);
        cell.leg = leg_of(face_.entry(entry), position);
        face_.cells[geometry_.on_left(position.space) ? 0 : 1].push_back(cell);
    }

    char leg_of(const DirectoryRow& row, Position position) const {
        if (!row.breaker) return geometry_.leg(network_.supply(panel_), position.space, position.half, alternate());
        const std::string& legs = network_.breaker_legs(*row.breaker);
        const auto pole = static_cast<std::size_t>(std::find(row.positions.begin(), row.positions.end(), position) -
                                                   row.positions.begin());
        return pole < legs.size() ? legs[pole] : '?';
    }

    void set_runs(int side) {
        const auto& cells = face_.cells[side];
        std::set<std::size_t> led;
        for (std::size_t i = 0; i < cells.size();) {
            std::size_t last = i;
            while (last + 1 < cells.size() && cells[last + 1].entry == cells[i].entry &&
                   neighbours(cells[last], cells[last + 1]))
                ++last;
            face_.runs[side].push_back({i, last, cells[i].entry, led.insert(cells[i].entry).second});
            i = last + 1;
        }
    }

    static bool neighbours(const FaceCell& upper, const FaceCell& lower) { return lower.row - upper.row <= 1; }

    void set_neutrals() {
        for (const SharedNeutral& neutral : network_.neutrals()) {
            FaceNeutral found{neutral.id, breakers_on(network_, neutral), {}, false, inks::text};
            found.entries = entries_of(face_.directory, found.breakers);
            if (found.entries.empty() || (found.breakers.size() < 2 && neutral.hots.size() < 2)) continue;
            found.tied = open_together(network_, found.breakers);
            face_.neutrals.push_back(std::move(found));
        }
    }

    const Network& network_;
    std::size_t panel_;
    const SpaceGeometry& geometry_;
    PanelFace face_;
};

class Heights {
public:
    Heights(PanelFace& face, const std::function<double(const FaceRun&)>& needed) : face_(face), needed_(needed) {}

    void set() {
        face_.least.assign(static_cast<std::size_t>(face_.rows) + 1, 0);
        for (const int side : {0, 1}) {
            for (FaceCell& cell : face_.cells[side])
                cell.least = (shares_row(side, cell) ? face_.style.half_row : face_.style.least_row) + cell.pad_top +
                             cell.pad_bottom;
            for (const FaceRun& run : face_.runs[side]) raise(side, run);
            std::map<int, double> sums;
            for (const FaceCell& cell : face_.cells[side]) sums[cell.row] += cell.least;
            for (const auto& [row, sum] : sums)
                face_.least[static_cast<std::size_t>(row)] = std::max(face_.least[static_cast<std::size_t>(row)], sum);
        }
        for (std::size_t row = 1; row < face_.least.size(); ++row)
            face_.least[row] = std::max(face_.least[row], face_.style.least_row);
    }

private:
    bool shares_row(int side, const FaceCell& cell) const {
        const auto& cells = face_.cells[side];
        return std::count_if(cells.begin(), cells.end(), [&](const FaceCell& other) { return other.row == cell.row; }) >
               1;
    }

    // A run that needs more than its cells have raises each of them alike.
    void raise(int side, const FaceRun& run) {
        auto& cells = face_.cells[side];
        double has = 0, pads = 0;
        for (std::size_t i = run.first; i <= run.last; ++i) {
            has += cells[i].least;
            pads += cells[i].pad_top + cells[i].pad_bottom;
        }
        const double count = static_cast<double>(run.last - run.first + 1);
        const double needs = run.leads ? needed_(run) + pads : 0;
        for (std::size_t i = run.first; i <= run.last; ++i) cells[i].least += std::max(0.0, needs - has) / count;
    }

    PanelFace& face_;
    const std::function<double(const FaceRun&)>& needed_;
};

class Parting {
public:
    explicit Parting(PanelFace& face) : face_(face) {}

    // As few pages as can be, with about the same number of rows each.
    void part(double height) {
        int left = least_pages(height);
        for (int first = 1; first <= face_.rows; --left) {
            const int fits = rows_that_fit(first, height);
            const int share = left > 1 ? (face_.rows - first + left) / left : face_.rows;
            int end = std::min(fits, first + share - 1);
            int clean = end;
            while (clean < fits && !clean_below(clean)) ++clean;
            end = clean_end(first, clean_below(clean) ? clean : end);
            face_.pages.emplace_back(first, end);
            first = end + 1;
        }
    }

private:
    // True where a page may end below this row: no handle and no shared neutral of neighbours is parted.
    bool clean_below(int row) const {
        for (const int side : {0, 1}) {
            const auto& cells = face_.cells[side];
            for (const FaceRun& run : face_.runs[side])
                if (cells[run.first].row <= row && cells[run.last].row > row) return false;
            for (std::size_t i = 0; i + 1 < cells.size(); ++i)
                if (cells[i].row == row && cells[i + 1].row == row + 1 && cells[i].pad_bottom > 0) return false;
        }
        return true;
    }

    int rows_that_fit(int first, double height) const {
        int last = first;
        double sum = face_.least[static_cast<std::size_t>(first)];
        while (last < face_.rows && sum + face_.least[static_cast<std::size_t>(last) + 1] <= height) {
            ++last;
            sum += face_.least[static_cast<std::size_t>(last)];
        }
        return last;
    }

    int least_pages(double height) const {
        int count = 0;
        for (int first = 1; first <= face_.rows; ++count) first = clean_end(first, rows_that_fit(first, height)) + 1;
        return count;
    }

    // The nearest clean end at or above `wanted`; `wanted` itself where there is none.
    int clean_end(int first, int wanted) const {
        if (wanted >= face_.rows) return face_.rows;
        for (int row = wanted; row > first; --row)
            if (clean_below(row)) return row;
        return wanted;
    }

    PanelFace& face_;
};

}  // namespace

std::vector<std::size_t> breakers_on(const Network& network, const SharedNeutral& neutral) {
    std::vector<std::size_t> breakers;
    for (const std::size_t circuit : neutral.circuits)
        for (const std::size_t breaker : network.breakers_of(circuit))
            if (std::find(breakers.begin(), breakers.end(), breaker) == breakers.end()) breakers.push_back(breaker);
    return breakers;
}

bool open_together(const Network& network, const std::vector<std::size_t>& breakers) {
    const std::vector<std::size_t>& together = network.opened_with(breakers.front());
    return std::all_of(breakers.begin(), breakers.end(), [&](std::size_t breaker) {
        return std::find(together.begin(), together.end(), breaker) != together.end();
    });
}

std::vector<std::size_t> entries_of(const PanelDirectory& directory, const std::vector<std::size_t>& breakers) {
    std::vector<std::size_t> entries;
    for (std::size_t entry = 0; entry < directory.rows.size(); ++entry) {
        const auto& breaker = directory.rows[entry].breaker;
        if (breaker && std::find(breakers.begin(), breakers.end(), *breaker) != breakers.end())
            entries.push_back(entry);
    }
    return entries;
}

double sign_width(const DirectoryRow& row) {
    if (row.claimed) return 3.9;
    if (row.kind == RowKind::source || row.kind == RowKind::feeder) return 6.2;
    return 0;
}

PanelFace hung_face(const Network& network, std::size_t panel, double left, double right, const FaceColumns& widths,
                    const FaceStyle& style) {
    return Hanging(network, panel).face(left, right, widths, style);
}

void set_heights(PanelFace& face, const std::function<double(const FaceRun&)>& needed) { Heights(face, needed).set(); }

void part(PanelFace& face, double height) { Parting(face).part(height); }

double place_cells(PanelFace& face, std::pair<int, int> rows, double top, double height) {
    const auto total = [&](double pitch) {
        double sum = 0;
        for (int row = rows.first; row <= rows.second; ++row)
            sum += std::max(face.least[static_cast<std::size_t>(row)], pitch);
        return sum;
    };
    double low = 0, high = face.style.usual_row;
    for (int step = 0; step < 40; ++step) (total((low + high) / 2) <= height ? low : high) = (low + high) / 2;
    const double pitch = total(face.style.usual_row) <= height ? face.style.usual_row : low;
    double y = top;
    for (int row = rows.first; row <= rows.second; ++row) {
        const double whole = std::max(face.least[static_cast<std::size_t>(row)], pitch);
        for (auto& cells : face.cells) {
            double needs = 0, at = y;
            for (const FaceCell& cell : cells)
                if (cell.row == row) needs += cell.least;
            for (FaceCell& cell : cells) {
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
