// SPDX-License-Identifier: MIT
#pragma once
#include <functional>
#include <tuple>

#include "base/words.hpp"
#include "sheet/drawing.hpp"
#include "sheet/face_signs.hpp"
#include "sheet/panel_face.hpp"

namespace doorcard {

/// Where the words of a run may stand.
struct FacePlace {
    bool left = true;
    double y = 0, height = 0;
    double pad_top = 0, pad_bottom = 0;
    double number_top = 0;     ///< of the first number, from y
    bool parted = false;       ///< the rest of the handle is on another page
    bool sign_beside = false;  ///< the row's sign has no room below the number: it stands beside the words

    double free() const { return height - pad_top - pad_bottom; }
};

/// A run of a neutral's breakers on a page.
struct FaceMember {
    int side = 0;
    const FaceRun* run = nullptr;
    double top = 0, bottom = 0;
};

/// Paints the rows of one page as they hang: numbers, signs, handles with their ties, legs, rules, and the brackets of
/// shared neutrals. The words between number and handle are the sheet's own.
class FacePainting {
public:
    using PaintWords = std::function<void(const FaceRun&, const FacePlace&)>;

    FacePainting(Drawing&, const Network&, const Words&, const PanelFace&, std::pair<int, int> rows);

    /// `top` and `bottom` are the ends of the table.
    void paint(double top, double bottom, const PaintWords&);

    /// From a cell's top to its number's.
    double number_top(int side, const FaceCell&) const;
    /// The room of a device of this height in its column.
    Frame device_frame(bool left, double y, double height) const;
    std::vector<FaceMember> members(const std::vector<std::size_t>& entries) const;
    /// The row's sign at (x, y), toward the legs.
    void paint_sign(const DirectoryRow&, double x, double y, bool left);
    static double sign_box(const DirectoryRow& row) { return row.claimed ? sign_height : 5; }
    static Ink ink_of(const DirectoryRow& row) { return row.fire_alarm ? inks::fire : inks::text; }

private:
    void paint_part(int side, const FaceRun&, const PaintWords&);
    void paint_number(int side, const FaceCell&);
    bool sign_below(int side, const FaceCell&) const;
    bool leads_here(int side, const FaceCell&) const;
    void paint_further_pole(const FaceRun&, bool left, double y, double height);
    Handle handle_of(const DirectoryRow&, bool left) const;
    void paint_device(const FaceRun&, bool left, double y, double height);
    void paint_space(const Frame&);
    bool is_off(const DirectoryRow&) const;
    void paint_rule(int side, std::size_t first, std::size_t last);
    void rule_at(bool left, double y, bool number_only, bool halves);
    void paint_legs();
    void paint_row_legs(const std::vector<const FaceCell*>& left, const std::vector<const FaceCell*>& right);
    void paint_leg(char leg, const Frame&, double points);
    bool parted_below(int side, int row) const;
    void paint_leg_rule(int row);
    void paint_neutral(const FaceNeutral&);
    std::vector<std::pair<double, double>> teeth_of(int side, const std::vector<FaceMember>&) const;
    void bracket(bool left, const std::vector<std::pair<double, double>>& teeth, bool tied, Ink);
    int free_lane(bool left, double top, double bottom);
    void paint_ties();
    bool tied(const FaceRun&, const FaceRun&) const;
    bool on_page(int side, const FaceRun&, const FaceRun&) const;
    Frame frame_of(int side, const FaceRun&) const;
    void join_levers(int side, const FaceRun&, const FaceRun&, bool left);
    void join_pieces(int side, const FaceRun&, const FaceRun&, bool left);

    Drawing& drawing_;
    const Network& network_;
    const Words& words_;
    const PanelFace& face_;
    const FaceColumns& columns_;
    std::pair<int, int> rows_;
    std::vector<std::tuple<bool, double, double, int>> brackets_;
};

}  // namespace doorcard
