// SPDX-License-Identifier: MIT
#pragma once
#include "base/words.hpp"
#include "sheet/panel_face.hpp"
#include "sheet/type_case.hpp"

namespace doorcard {

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

/// How the card says that a neutral is shared.
struct NeutralWords {
    bool neighbours = false;  ///< one below the other on one side: the words lie on the rules between them
    std::string words;        ///< empty where one handle holds all
    TypeStyle style{8, true};
};

/// A panel's face as the card shows it.
struct CardPlan : PanelFace {
    std::vector<NeutralWords> neutral_words;  ///< as `neutrals`
    std::vector<std::string> notes;           ///< by directory row: bold words within the cell
};

/// Rows between 7 and 9.7 mm unless their words need more; breakers are not parted where it can be helped.
CardPlan card_plan(const Network&, std::size_t panel, double content_left, double content_right, double rows_height,
                   const Words&);

/// Sets the words of a directory row into a width: 9 pt, or 8 where the height asks for it.
TextBlock text_block(const CardPlan&, std::size_t entry, double width, double height, const Words&);

/// The same for a handle that two cards share: its text, and that it is one handle.
TextBlock parted_block(const CardPlan&, std::size_t entry, double width, const Words&);

}  // namespace doorcard
