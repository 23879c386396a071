// SPDX-License-Identifier: MIT
#pragma once
#include <functional>

#include "assess/directory.hpp"
#include "sheet/inks.hpp"

namespace doorcard {

/// Widths of a face's columns, mm: number, text, handle, mirrored about the legs.
struct FaceColumns {
    double left = 0, right = 0;  ///< edges of the content
    double number = 7.6, text = 36.6, handle = 12.6, legs = 6.4;
    bool single = false;  ///< one column of breakers

    double text_x(bool on_left) const { return on_left ? left + number : right - number - text + gap; }
    double text_width() const { return text - gap; }
    double handle_x(bool on_left) const { return on_left ? left + number + text : right - number - text - handle; }
    double legs_x() const { return left + number + text + handle; }
    static constexpr double gap = 1.6;
};

/// Sizes of what a face shows of itself, points; heights of its rows, mm.
struct FaceStyle {
    double number = 12, rating = 10, leg = 9;
    double least_row = 7.0, usual_row = 9.7, half_row = 4.85;
    Ink rule = inks::text;        ///< of the lines between rows
    bool is_space_dashed = true;  ///< an empty position; on a screen dashes say 'planned'
};

/// One position as it hangs: a space or a half of it.
struct FaceCell {
    Position position;
    std::size_t entry = 0;  ///< row of the directory
    int row = 0;            ///< physical, from the top, 1-based
    char leg = '?';
    double least = 7;                    ///< height it needs, mm
    double pad_top = 0, pad_bottom = 0;  ///< kept free for words on the rule
    double y = 0, height = 0;            ///< where it lies on its page
    double bottom() const { return y + height; }
};

/// Neighbouring cells of one breaker (or one empty position): one handle, one text.
struct FaceRun {
    std::size_t first = 0, last = 0;  ///< positions in the column
    std::size_t entry = 0;
    bool leads = true;  ///< carries the text; else further poles of a handle that is not in one piece
};

/// A neutral that breakers of the panel share.
struct FaceNeutral {
    std::string id;
    std::vector<std::size_t> breakers;  ///< of its circuits, in all panels
    std::vector<std::size_t> entries;   ///< rows of the directory, each once
    bool tied = false;                  ///< one handle, or handles that open together
    Ink ink = inks::text;               ///< of its bracket
};

/// A panel as it hangs: positions in their rows and sides, parted into pages. The door card and the panel schedule are
/// laid out on it.
struct PanelFace {
    PanelDirectory directory;
    FaceColumns columns;
    FaceStyle style;
    std::vector<FaceCell> cells[2];  ///< left, right, from the top
    std::vector<FaceRun> runs[2];
    std::vector<FaceNeutral> neutrals;
    std::vector<std::size_t> off;  ///< rows of the directory whose handle is off for now, beside those kept off
    int rows = 0;
    std::vector<double> least;               ///< height that each row needs
    std::vector<std::pair<int, int>> pages;  ///< first and last row of each
    const DirectoryRow& entry(std::size_t i) const { return directory.rows[i]; }
};

/// The face with its cells, runs and neutrals; columns between these edges, as wide as their words ask.
PanelFace hung_face(const Network&, std::size_t panel, double left, double right, const FaceColumns&, const FaceStyle&);

/// The heights that rows need: `needed` says what the words of a run ask, mm, without the pads of its cells.
void set_heights(PanelFace&, const std::function<double(const FaceRun&)>& needed);

/// As few pages of rows as can be, with about the same number of rows each; breakers are not parted where it can be
/// helped.
void part(PanelFace&, double height);

/// Gives the cells of one page their places, from `top` down; returns the bottom.
double place_cells(PanelFace&, std::pair<int, int> rows, double top, double height);

/// Breakers of a neutral's circuits, whether or not their legs are known.
std::vector<std::size_t> breakers_on(const Network&, const SharedNeutral&);
/// Rows of the directory on which these breakers are.
std::vector<std::size_t> entries_of(const PanelDirectory&, const std::vector<std::size_t>& breakers);
bool open_together(const Network&, const std::vector<std::size_t>& breakers);

/// Width that a row's sign takes beside its text in cells too low to carry it under the number; 0 without a sign.
double sign_width(const DirectoryRow&);
constexpr double tall_cell = 6.95;  // a sign fits under the number from here on, mm

}  // namespace doorcard
