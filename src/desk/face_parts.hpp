// SPDX-License-Identifier: MIT
#pragma once
#include "desk/face_picture.hpp"
#include "sheet/face_painting.hpp"

// The parts that the picture of a face is drawn of.
namespace doorcard {

/// What every part is drawn from, and on.
struct FaceCanvas {
    const FaceFacts& facts;
    const FaceLook& look;
    const Words& words;
    PanelFace& face;
    Drawing& drawing;
    TypeStyle figures{};       ///< of loads
    double figures_width = 0;  ///< of the widest, so that all scales are as long

    const FaceColumns& columns() const { return face.columns; }
    /// All of a run's row, from the outer edge to the legs.
    Frame row_of(int side, const FaceRun&) const;
    /// The run that has one of these positions, and its side; null where none has.
    std::pair<int, const FaceRun*> run_of(Position) const;
    std::optional<Frame> row_of(Position) const;
};

/// Sizes that follow from how wide a face is.
struct FaceSizes {
    FaceColumns columns;
    FaceStyle style;
};
FaceSizes face_sizes(const FaceLook&);

/// A shared neutral on one side of the face: teeth at its rows, a back that hops past the rows between, words on a
/// rule.
struct FaceBracket {
    int side = 0;
    std::vector<std::size_t> runs;  ///< that belong to it, from the top
    std::size_t lane = 0;           ///< 0: next to the numbers
    std::string words, short_words;
    std::size_t below = 0;  ///< the run on whose lower edge the words stand
    bool is_danger = false;
    std::size_t first() const { return runs.front(); }
    std::size_t last() const { return runs.back(); }
};
/// Plans the brackets and keeps room for their words in the cells.
std::vector<FaceBracket> face_brackets(FaceCanvas&);
/// Width of the margin that the brackets of a side need, mm.
double bracket_margin(const std::vector<FaceBracket>&, int side);
void draw_brackets(FaceCanvas&, const FacePainting&, const std::vector<FaceBracket>&);

/// Draws from `top` and returns its bottom.
double draw_face_head(FaceCanvas&, double top);
/// The main where the bus is fed, and what feeds it.
bool is_fed_from_below(const Panel&);
double main_height(const FaceFacts&);
void draw_main(FaceCanvas&, double top);

/// Sets the type of the figures and their column.
void set_figures(FaceCanvas&);
/// Height that the words of a run cannot do without, mm.
double needed_height(const FaceCanvas&, const FaceRun&);
/// The words, the load on its scale and the signs of a row; returns where they lie.
FaceRowPlace draw_face_row(FaceCanvas&, FacePainting&, const FaceRun&, const FacePlace&);
void draw_finding_sign(Drawing&, Severity, double x, double y);
constexpr double finding_sign = 3.2;  // mm, square

constexpr double throw_mark = 2.9;  // the words give way for it, mm
/// What is chosen, dragged, planned and to be thrown: drawn over the rows, hiding nothing of them.
void draw_face_marks(FaceCanvas&, FacePainting&);

}  // namespace doorcard
