// SPDX-License-Identifier: MIT
#include "ui/grid_view.hpp"

#include <wx/textctrl.h>

#include <algorithm>
#include <set>

#include "ui/accessible.hpp"
#include "ui/clipboard.hpp"
#include "ui/text.hpp"

namespace doorcard {
namespace {

/// A text cell that offers what its text may become.
class OfferingEditor final : public wxGridCellTextEditor {
public:
    explicit OfferingEditor(std::function<std::vector<std::string>(const std::string&)> offers)
        : offers_(std::move(offers)) {}
    void BeginEdit(int row, int column, wxGrid* grid) override {
        wxGridCellTextEditor::BeginEdit(row, column, grid);
        wxArrayString words;
        for (const std::string& one : offers_("")) words.Add(wide(one));
        Text()->AutoComplete(words);
    }
    wxGridCellEditor* Clone() const override { return new OfferingEditor(offers_); }

private:
    std::function<std::vector<std::string>(const std::string&)> offers_;
};

std::vector<std::size_t> chosen_rows(const wxGrid& grid) {
    std::set<std::size_t> rows;
    for (const int row : grid.GetSelectedRows()) rows.insert(static_cast<std::size_t>(row));
    if (rows.empty() && grid.GetGridCursorRow() >= 0) rows.insert(static_cast<std::size_t>(grid.GetGridCursorRow()));
    return {rows.begin(), rows.end()};
}

}  // namespace

GridView::GridView(wxWindow* parent, Seat& seat, const std::string& name, Look look)
    : wxGrid(parent, wxID_ANY), seat_(seat), name_(name), look_(std::move(look)) {
    CreateGrid(0, 0);
    HideRowLabels();
    SetTabBehaviour(Tab_Leave);
    DisableDragRowSize();
    SetCellHighlightPenWidth(2);
    Bind(wxEVT_GRID_CELL_CHANGED, &GridView::on_typed, this);
    Bind(wxEVT_KEY_DOWN, &GridView::on_key, this);
    Bind(wxEVT_GRID_SELECT_CELL, [this](wxGridEvent& event) {
        event.Skip();
        CallAfter([this] { say_cell(); });
    });
    name_for_readers(GetGridWindow(), name_);
}

void GridView::set_offers(std::function<std::vector<std::string>(const std::string&, const std::string&)> offers) {
    offers_ = std::move(offers);
}

void GridView::make_columns() {
    const int more = static_cast<int>(grid_.columns.size()) - GetNumberCols();
    if (more > 0) AppendCols(more);
    if (more < 0) DeleteCols(0, -more);
    for (int c = 0; c < GetNumberCols(); ++c) {
        const GridColumn& column = grid_.columns[static_cast<std::size_t>(c)];
        std::string label = seat_.words().say(column.label);
        if (!column.unit.empty()) label += ", " + seat_.words()(column.unit);
        SetColLabelValue(c, wide(label));
        auto* kind = new wxGridCellAttr;
        if (column.entry == Entry::choice || column.entry == Entry::yes_no) {
            wxArrayString words;
            for (const FieldChoice& one : column.choices) words.Add(wide(seat_.words().say(one.label)));
            kind->SetEditor(new wxGridCellChoiceEditor(words, true));
        } else if (offers_ && !offers_(column.key, "").empty()) {
            kind->SetEditor(
                new OfferingEditor([this, key = column.key](const std::string& typed) { return offers_(key, typed); }));
        }
        if (column.entry == Entry::number || column.entry == Entry::whole)
            kind->SetAlignment(wxALIGN_RIGHT, wxALIGN_CENTRE);
        else
            kind->SetAlignment(wxALIGN_LEFT, wxALIGN_CENTRE);
        SetColAttr(c, kind);
    }
}

void GridView::fit_rows(int wanted) {
    const int more = wanted - GetNumberRows();
    if (more > 0) AppendRows(more);
    if (more < 0) DeleteRows(0, -more);
}

// What the words over a column take.
int GridView::head_width(int column) {
    int width = 0, height = 0;
    GetTextExtent(GetColLabelValue(column), &width, &height, nullptr, nullptr,
                  std::make_unique<wxFont>(GetLabelFont()).get());
    return width + seat_.looks().pixels(16);
}

void GridView::look() {
    const wxGridUpdateLocker still(this);
    const Colours& colours = seat_.looks().colours();
    Grid now = look_(seat_.desk());
    const bool other_columns = now.columns.size() != grid_.columns.size();
    grid_ = std::move(now);
    if (other_columns) make_columns();
    fit_rows(static_cast<int>(grid_.rows.size()));
    wxFont font(wxFontInfo(wxSize(0, seat_.looks().pixels(15))).Family(wxFONTFAMILY_SWISS).FaceName("DejaVu Sans"));
    SetDefaultCellFont(font);
    SetLabelFont(font.Scaled(0.9F));
    SetDefaultRowSize(seat_.looks().pixels(36), true);
    SetColLabelSize(seat_.looks().pixels(30));
    SetColLabelAlignment(wxALIGN_LEFT, wxALIGN_CENTRE);
    for (int c = 0; c < GetNumberCols(); ++c)
        SetColSize(c, std::max(seat_.looks().pixels(9.0 * grid_.columns[static_cast<std::size_t>(c)].width + 14),
                               head_width(c)));
    SetDefaultCellBackgroundColour(colours.field);
    SetDefaultCellTextColour(colours.ink);
    SetBackgroundColour(colours.ground);
    SetLabelBackgroundColour(colours.ground);
    SetLabelTextColour(colours.caption);
    SetGridLineColour(colours.rule);
    SetCellHighlightColour(colours.accent);
    for (std::size_t r = 0; r < grid_.rows.size(); ++r)
        for (std::size_t c = 0; c < grid_.rows[r].cells.size(); ++c) {
            const wxString text = wide(grid_.rows[r].cells[c]);
            if (GetCellValue(static_cast<int>(r), static_cast<int>(c)) != text)
                SetCellValue(static_cast<int>(r), static_cast<int>(c), text);
        }
}

void GridView::on_typed(wxGridEvent& event) {
    const auto row = static_cast<std::size_t>(event.GetRow()), column = static_cast<std::size_t>(event.GetCol());
    std::string typed = utf8(GetCellValue(event.GetRow(), event.GetCol()));
    for (const FieldChoice& one : grid_.columns[column].choices)
        if (seat_.words().say(one.label) == typed) typed = one.value;
    // The grid is still busy with its cell: the desk is told once it is done.
    CallAfter([this, row, column, typed] {
        auto taken = taken_ ? taken_(grid_, row, grid_.columns[column].key, typed) : std::nullopt;
        seat_.act(taken ? *std::move(taken)
                        : cell_typed(seat_.desk().survey, grid_, row, column, typed, seat_.words()));
        look();
    });
}

void GridView::on_key(wxKeyEvent& event) {
    const int key = event.GetKeyCode();
    if (event.ControlDown() && key == 'V') return paste();
    if (event.ControlDown() && key == 'C') return copy();
    if (event.ControlDown() && (key == WXK_DELETE || key == WXK_BACK)) return remove_rows();
    if (key == WXK_RETURN && !IsCellEditControlShown()) {  // as in writing a line: the next cell, then the next line
        const int column = GetGridCursorCol() + 1;
        if (column < GetNumberCols()) return void(MoveCursorRight(false));
        if (GetGridCursorRow() + 1 < GetNumberRows()) return GoToCell(GetGridCursorRow() + 1, 0);
    }
    event.Skip();
}

void GridView::copy() const { put_on_clipboard(utf8(GetCellValue(GetGridCursorRow(), GetGridCursorCol()))); }

void GridView::paste() {
    const std::string text = clipboard_text();
    if (text.empty() || GetGridCursorRow() < 0) return;
    seat_.act(block_pasted(seat_.desk().survey, grid_, static_cast<std::size_t>(GetGridCursorRow()),
                           static_cast<std::size_t>(GetGridCursorCol()), text, seat_.words()));
    look();
}

void GridView::remove_rows() {
    seat_.act(rows_removed(seat_.desk().survey, grid_, chosen_rows(*this)));
    look();
}

void GridView::focus_new_row() {
    if (GetNumberRows() == 0 || GetNumberCols() == 0) return;
    GoToCell(GetNumberRows() - 1, 0);
    SetFocus();
}

// The cells are drawn, not the toolkit's own: what the cursor is on is told as the name of the grid.
void GridView::say_cell() {
    const int row = GetGridCursorRow(), column = GetGridCursorCol();
    if (row < 0 || column < 0 || column >= GetNumberCols()) return;
    name_for_readers(GetGridWindow(),
                     name_ + ", " + utf8(GetColLabelValue(column)) + ": " + utf8(GetCellValue(row, column)));
}

}  // namespace doorcard
