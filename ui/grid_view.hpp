// SPDX-License-Identifier: MIT
#pragma once
#include <wx/grid.h>

#include <functional>

#include "desk/grid.hpp"
#include "ui/seat.hpp"

namespace doorcard {

/// A grid that takes typing as fast as it comes, and whole blocks from a spreadsheet. The row at the end adds.
class GridView final : public wxGrid {
public:
    using Look = std::function<Grid(const Desk&)>;

    /// `name` is what a screen reader calls it.
    GridView(wxWindow* parent, Seat&, const std::string& name, Look);
    void look();  ///< at the desk as it is now
    /// To the first cell of the row at the end.
    void focus_new_row();
    /// The offers of a cell's text, if it has some (typical appliances by their name): shown as it is typed.
    void set_offers(std::function<std::vector<std::string>(const std::string& column, const std::string& typed)>);

    /// What a text means that is one of the offers; nullopt: it is typed like any other.
    using Taken = std::function<std::optional<Outcome<Edit>>(const Grid&, std::size_t row, const std::string& column,
                                                             const std::string& typed)>;
    void set_taken(Taken taken) { taken_ = std::move(taken); }

private:
    void fit_rows(int wanted);
    void make_columns();
    int head_width(int column);
    void on_typed(wxGridEvent&);
    void on_key(wxKeyEvent&);
    void copy() const;
    void paste();
    void remove_rows();
    void say_cell();

    Seat& seat_;
    std::string name_;
    Look look_;
    Grid grid_;
    std::function<std::vector<std::string>(const std::string&, const std::string&)> offers_;
    Taken taken_;
};

}  // namespace doorcard
