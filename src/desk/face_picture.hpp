// SPDX-License-Identifier: MIT
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "base/words.hpp"
#include "desk/face_facts.hpp"
#include "sheet/sheet.hpp"

namespace doorcard {

/// A change that is planned, as the face shows it: dashed, at its target; the old place keeps its solid drawing.
struct PlannedMark {
    std::vector<Position> from, to;
    std::optional<double> amps;  ///< the rating that the handle gets
    std::string words;
};

/// How a face is to be drawn. Lengths in mm of a screen at 96 dots to the inch.
struct FaceLook {
    double width = 160;
    double height = 200;      ///< that is seen: rows grow to fill it, up to `usual_row`
    double least_row = 7.41;  ///< 28 px: below it the face scrolls
    double usual_row = 14.3;  ///< 54 px
    std::string state;        ///< a few words at the head's right end: 'as found, locked'
    std::optional<Position> selected;
    bool selected_has_focus = false;
    std::vector<Position> dragged;
    std::optional<Position> drop_target;
    std::vector<PlannedMark> planned;
    std::vector<Position> off_now;   ///< handles that a round has off: drawn off
    std::vector<Position> to_throw;  ///< of those and the others, what is to be thrown for it
};

/// Where a row lies, mm: all of it (what a finger may hit), its words, its handle, and its figures.
struct FaceRowPlace {
    Position position;  ///< its first
    std::vector<Position> positions;
    Frame row, text, handle, figures;
};

/// The panel as it hangs, as marks on a page as long as the panel is.
struct FacePicture {
    Page page;
    std::vector<FaceRowPlace> places;  ///< down the left, then down the right

    /// The row at a place, by its first position.
    std::optional<Position> at(double x, double y) const;
    const FaceRowPlace* place_of(Position) const;  ///< of any of its positions; null where there is none
};

FacePicture face_picture(const FaceFacts&, const FaceLook&, const Words&);

/// One row of the same panel in words alone.
struct FaceListRow {
    Position position;
    std::string space, device, what, load, neutral, finding;
};
/// The same panel as a plain list: every fact of the picture in words.
std::vector<FaceListRow> face_list(const FaceFacts&, const Words&, const FaceLook& = {});
/// The row of a position as one sentence for a screen reader.
std::string face_row_words(const FaceFacts&, Position, const Words&, const FaceLook& = {});
/// What stands above the rows as one sentence: panel, system, main, what feeds it, how much is traced.
std::string face_head_words(const FaceFacts&, const Words&);

}  // namespace doorcard
