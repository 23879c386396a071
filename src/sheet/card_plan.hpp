// SPDX-License-Identifier: MIT
#pragma once
#include "assess/directory.hpp"
#include "base/words.hpp"
#include "sheet/type_case.hpp"

namespace doorcard {

/// Widths of the card's columns, mm: number, text, handle, mirrored about the legs.
struct CardColumns {
    double left = 0, right = 0;  ///< edges of the content
    double number = 7.6, text = 36.6, handle = 12.6, legs = 6.4;
    bool single = false;  ///< one column of breakers

    double text_x(bool on_left) const { return on_left ? left + number : right - number - text + gap; }
    double text_width() const { return text - gap; }
    double handle_x(bool on_left) const { return on_left ? left + number + text : right - number - text - handle; }
    double legs_x() const { return left + number + text + handle; }
    static constexpr double gap = 1.6;
};

/// One line of a row's text.
struct TextLine {
    std::string text;
    TypeStyle style;
    bool claimed = false;
};

/// A row's words as they are set: lines with their sizes.
struct TextBlock {
    std::vector<TextLine> lines;
    double height = 0;  ///< first capital's top to last descender, mm
};

/// One position as it hangs: a space or a half of it.
struct CardCell {
    Position position;
    std::size_t entry = 0;  ///< row of the directory
    int row = 0;            ///< physical, from the top, 1-based
    char leg = '?';
    double least = 7;                    ///< height it needs, mm
    double pad_top = 0, pad_bottom = 0;  ///< kept free for words on the rule
    double y = 0, height = 0;            ///< where it lies on its card
    double bottom() const { return y + height; }
};

/// Neighbouring cells of one breaker (or one empty position): one handle, one text.
struct CardRun {
    std::size_t first = 0, last = 0;  ///< positions in the column
    std::size_t entry = 0;
    bool leads = true;  ///< carries the text; else further poles of a handle that is not in one piece
};

/// A neutral that breakers of the panel share, and how the card says it.
struct CardNeutral {
    std::vector<std::size_t> entries;  ///< rows of the directory, each once
    bool tied = false;                 ///< one handle, or handles that open together
    bool neighbours = false;           ///< one below the other on one side: the words lie on the rules between them
    std::string words;                 ///< empty where one handle holds all
    TypeStyle style{8, true};
};

/// A panel's directory as it hangs, parted into cards.
struct CardPlan {
    PanelDirectory directory;
    CardColumns columns;
    std::vector<CardCell> cells[2];  ///< left, right, from the top
    std::vector<CardRun> runs[2];
    std::vector<CardNeutral> neutrals;
    std::vector<std::string> notes;  ///< by directory row: bold words within the cell
    int rows = 0;
    std::vector<double> least;               ///< height that each row needs
    std::vector<std::pair<int, int>> cards;  ///< first and last row of each
    const DirectoryRow& entry(std::size_t i) const { return directory.rows[i]; }
};

/// Rows between 7 and 9.7 mm unless their words need more; breakers are not parted where it can be helped.
CardPlan card_plan(const Network&, std::size_t panel, double content_left, double content_right, double rows_height,
                   const Words&);

/// Sets the words of a directory row into a width: 9 pt, or 8 where the height asks for it.
TextBlock text_block(const CardPlan&, std::size_t entry, double width, double height, const Words&);

/// The same for a handle that two cards share: its text, and that it is one handle.
TextBlock parted_block(const CardPlan&, std::size_t entry, double width, const Words&);

/// Gives the cells of one card their places, from `top` down; returns the bottom.
double place_cells(CardPlan&, std::pair<int, int> rows, double top, double height);

/// Width that a row's sign takes beside its text in cells too low to carry it under the number; 0 without a sign.
double sign_width(const DirectoryRow&);
constexpr double tall_cell = 6.95;  // a sign fits under the number from here on, mm

}  // namespace doorcard
