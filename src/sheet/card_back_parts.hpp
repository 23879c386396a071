// SPDX-License-Identifier: MIT
#pragma once
#include "sheet/card.hpp"
#include "sheet/card_back_words.hpp"
#include "sheet/drawing.hpp"

namespace doorcard {

/// What every part of a back is drawn from.
struct BackContent {
    const Network& network;
    const CardChoice& choice;
    const Words& words;
    const RoomDirectory& directory;
    const HandleNames& names;
    const BackWords& said;
    Frame trim;  ///< the card as it is cut

    double left() const;
    double right() const;
    double width() const { return right() - left(); }
    double bottom() const;  ///< of what is printed
};

/// A line of the table as it is set, its room named where that begins or a card does.
struct BackRow {
    std::size_t part = 0;  ///< of the directory's parts
    std::vector<std::string> room, what, answer;
    TypeStyle room_style{10, true}, what_style{9.5}, answer_style{12, true};
    HandleTrust trust = HandleTrust::traced;
    bool answer_below = false;  ///< beside it, what it is would be broken inside a word
    double height = 0;
};

std::vector<BackRow> back_rows(const BackContent&);
/// Rows from `first` up to `last`; returns the bottom.
double draw_back_rows(Drawing&, const BackContent&, const std::vector<BackRow>&, std::pair<std::size_t, std::size_t>,
                      double top);
constexpr double back_caption_height = 5.0;  // of the table's head, mm
/// Height of the first row on a card, and of others.
double back_rows_height(const std::vector<BackRow>&, std::pair<std::size_t, std::size_t>);

/// Name, key of the handles, what stays off; `notes` on the table: what is not traced or only said. Returns the bottom.
double draw_back_head(Drawing&, const BackContent&, std::size_t card, std::size_t cards, bool notes);
/// The warning, then the reset, everything off, and the receptacles; returns the bottom.
double draw_safety(Drawing&, const BackContent&, double top);
/// On further cards: where that stands, and on which card the tag is; no tag: nothing of it.
double draw_see_first_card(Drawing&, const BackContent&, std::optional<std::size_t> tag_card, double top);
/// Below the cut line: what must stay on. Nothing where nothing must.
double draw_back_tag(Drawing&, const BackContent&, double top);

}  // namespace doorcard
