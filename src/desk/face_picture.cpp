// SPDX-License-Identifier: MIT
#include "desk/face_picture.hpp"

#include <algorithm>

#include "desk/face_parts.hpp"

namespace doorcard {
namespace {

constexpr double edge = 1.2;  // between the picture's edge and what is outermost
constexpr double below_head = 1.4;

/// Puts the parts of a face together.
class Picture {
public:
    Picture(const FaceFacts& facts, const FaceLook& look, const Words& words)
        : look_(look),
          sizes_(face_sizes(look)),
          face_(hung_face(facts.network, facts.panel, edge, look.width - edge, sizes_.columns, sizes_.style)),
          drawing_(picture_.page),
          canvas_{facts, look, words, face_, drawing_} {}

    FacePicture picture() {
        const std::vector<FaceBracket> brackets = face_brackets(canvas_);
        set_margins(bracket_margin(brackets, 0), bracket_margin(brackets, 1));
        set_off();
        set_figures(canvas_);
        face_.neutrals.clear();  // the brackets are drawn here, not by the sheets' hand
        set_heights(face_, [this](const FaceRun& run) { return needed_height(canvas_, run); });
        const bool is_below = is_fed_from_below(canvas_.facts.panel_of());
        const double main = main_height(canvas_.facts);
        double top = draw_face_head(canvas_, 0) + below_head;
        if (!is_below) top = main_from(top, main);
        const double bottom =
            place_cells(face_, {1, face_.rows}, top, look_.height - top - (is_below ? main : 0) - edge);
        draw_rows(top, bottom, brackets);
        const double end = is_below ? main_from(bottom, main) : bottom;
        picture_.page.paper = {look_.width, end + edge};
        picture_.page.of = canvas_.facts.panel_of().id;
        return std::move(picture_);
    }

private:
    double main_from(double top, double height) {
        draw_main(canvas_, top);
        return top + height;
    }

    void draw_rows(double top, double bottom, const std::vector<FaceBracket>& brackets) {
        FacePainting painting(drawing_, canvas_.facts.network, canvas_.words, face_, {1, face_.rows});
        painting.paint(top, bottom, [&](const FaceRun& run, const FacePlace& place) {
            picture_.places.push_back(draw_face_row(canvas_, painting, run, place));
        });
        draw_face_marks(canvas_, painting);
        draw_brackets(canvas_, painting, brackets);  // last: no frame runs through their words
    }

    // Brackets hang outside the numbers: the words give way.
    void set_margins(double left, double right) {
        FaceColumns& columns = face_.columns;
        columns.left = std::max(edge, left);
        columns.right = look_.width - std::max(edge, right);
        const double sides = columns.single ? 1 : 2;
        columns.text = (columns.right - columns.left - columns.legs) / sides - columns.number - columns.handle;
    }

    void set_off() {
        for (std::size_t i = 0; i < face_.directory.rows.size(); ++i)
            if (std::ranges::find_first_of(face_.entry(i).positions, look_.off_now) != face_.entry(i).positions.end())
                face_.off.push_back(i);
    }

    const FaceLook& look_;
    FaceSizes sizes_;
    PanelFace face_;
    FacePicture picture_;
    Drawing drawing_;
    FaceCanvas canvas_;
};

}  // namespace

FaceSizes face_sizes(const FaceLook& look) {
    FaceSizes sizes;
    const bool is_narrow = look.width < 135;
    sizes.columns.number = is_narrow ? 7.2 : 9.2;
    sizes.columns.handle = is_narrow ? 11.4 : 14.2;
    sizes.columns.legs = is_narrow ? 5.6 : 7.4;
    sizes.style.number = is_narrow ? 10.5 : 11.5;
    sizes.style.rating = is_narrow ? 10 : 11;
    sizes.style.leg = is_narrow ? 9 : 10;
    sizes.style.least_row = look.least_row;
    sizes.style.usual_row = look.usual_row;
    sizes.style.half_row = look.least_row * 0.88;
    sizes.style.rule = inks::faint;
    sizes.style.is_space_dashed = false;
    return sizes;
}

Frame FaceCanvas::row_of(int side, const FaceRun& run) const {
    const auto& cells = face.cells[side];
    const double x = side == 0 ? columns().left : columns().legs_x() + columns().legs;
    const double right = side == 0 ? columns().legs_x() : columns().right;
    return {x, cells[run.first].y, right - x, cells[run.last].bottom() - cells[run.first].y};
}

std::pair<int, const FaceRun*> FaceCanvas::run_of(Position position) const {
    for (const int side : {0, 1})
        for (const FaceRun& run : face.runs[side])
            for (std::size_t i = run.first; i <= run.last; ++i)
                if (face.cells[side][i].position == position) return {side, &run};
    return {0, nullptr};
}

std::optional<Frame> FaceCanvas::row_of(Position position) const {
    const auto [side, run] = run_of(position);
    return run ? std::optional(row_of(side, *run)) : std::nullopt;
}

std::optional<Position> FacePicture::at(double x, double y) const {
    for (const FaceRowPlace& place : places)
        if (x >= place.row.x && x <= place.row.right() && y >= place.row.y && y < place.row.bottom())
            return place.position;
    return std::nullopt;
}

const FaceRowPlace* FacePicture::place_of(Position position) const {
    const auto found = std::ranges::find_if(places, [&](const FaceRowPlace& place) {
        return std::ranges::find(place.positions, position) != place.positions.end();
    });
    return found == places.end() ? nullptr : &*found;
}

FacePicture face_picture(const FaceFacts& facts, const FaceLook& look, const Words& words) {
    return Picture(facts, look, words).picture();
}

}  // namespace doorcard
