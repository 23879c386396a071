// SPDX-License-Identifier: MIT
#include "ui/pages/card_view.hpp"

#include <cairo.h>
#include <wx/textctrl.h>

#include <algorithm>
#include <cmath>

#include "sheet/paint.hpp"
#include "ui/text.hpp"

namespace doorcard {
namespace {

constexpr double points_per_mm = 72 / 25.4;
constexpr int gap = 16;  // between pages and around them, pixels
constexpr double least_zoom = 0.2, most_zoom = 5;

// The paper keeps its own white in every theme: the inks of the marks are meant for it.
void paint_paper(cairo_t* cairo, double width, double height) {
    cairo_rectangle(cairo, 0, 0, width, height);
    cairo_set_source_rgb(cairo, 1, 1, 1);
    cairo_fill_preserve(cairo);
    cairo_set_source_rgb(cairo, 0.45, 0.45, 0.45);
    cairo_set_line_width(cairo, 1);
    cairo_stroke(cairo);
}

}  // namespace

CardView::CardView(wxWindow* parent, const Looks& looks, Editing editing)
    : Painted(parent, looks), editing_(std::move(editing)) {
    editor_ = new wxTextCtrl(this, wxID_ANY, "", wxDefaultPosition, wxDefaultSize, wxTE_PROCESS_ENTER);
    editor_->Hide();
    editor_->Bind(wxEVT_TEXT_ENTER, [this](wxCommandEvent&) { finish(true); });
    editor_->Bind(wxEVT_KEY_DOWN, [this](wxKeyEvent& event) {
        if (event.GetKeyCode() != WXK_ESCAPE) return event.Skip();
        finish(false);
    });
    editor_->Bind(wxEVT_KILL_FOCUS, [this](wxFocusEvent& event) {
        event.Skip();
        CallAfter([this] { finish(true); });
    });
    Bind(wxEVT_LEFT_DOWN, &CardView::on_click, this);
    Bind(wxEVT_KEY_DOWN, &CardView::on_key, this);
    Bind(wxEVT_MOUSEWHEEL, &CardView::on_wheel, this);
    Bind(wxEVT_SIZE, [this](wxSizeEvent& event) {
        event.Skip();
        if (is_fitted_) fit_width();
    });
}

void CardView::show(Sheet sheet) {
    sheet_ = std::move(sheet);
    if (is_fitted_) return fit_width();
    measure();
    Refresh();
}

void CardView::fit_width() {
    is_fitted_ = true;
    double width = 0;
    for (const Page& page : sheet_.pages) width = std::max(width, page.paper.width);
    if (width > 0) zoom_ = std::clamp((GetClientSize().x - 2 * gap) / (width * pixels_per_mm()), least_zoom, most_zoom);
    measure();
    Refresh();
}

void CardView::set_zoom(double zoom) {
    is_fitted_ = false;
    zoom_ = std::clamp(zoom, least_zoom, most_zoom);
    measure();
    Refresh();
}

void CardView::measure() {
    double width = 0, height = gap;
    for (const Page& page : sheet_.pages) {
        width = std::max(width, page.paper.width * scale());
        height += page.paper.height * scale() + gap;
    }
    SetScrollRate(1, 1);
    SetVirtualSize(static_cast<int>(width) + 2 * gap, static_cast<int>(height));
}

wxPoint CardView::corner_of(std::size_t page) const {
    double top = gap;
    for (std::size_t i = 0; i < page; ++i) top += sheet_.pages[i].paper.height * scale() + gap;
    const double width = sheet_.pages[page].paper.width * scale();
    return {std::max(gap, static_cast<int>((GetClientSize().x - width) / 2)), static_cast<int>(top)};
}

void CardView::draw(cairo_t* cairo) {
    const wxColour& desk = looks().colours().rule;
    cairo_set_source_rgb(cairo, desk.Red() / 255.0, desk.Green() / 255.0, desk.Blue() / 255.0);
    cairo_paint(cairo);
    for (std::size_t i = 0; i < sheet_.pages.size(); ++i) {
        const Page& page = sheet_.pages[i];
        const wxPoint corner = corner_of(i);
        cairo_save(cairo);
        cairo_translate(cairo, corner.x, corner.y);
        paint_paper(cairo, page.paper.width * scale(), page.paper.height * scale());
        cairo_scale(cairo, scale() / points_per_mm, scale() / points_per_mm);
        paint_page(cairo, page);
        cairo_restore(cairo);
    }
}

void CardView::on_click(wxMouseEvent& event) {
    finish(true);
    SetFocus();
    const wxPoint at = scrolled(event.GetPosition());
    for (std::size_t i = 0; i < sheet_.pages.size(); ++i) {
        const wxPoint corner = corner_of(i);
        const double x = (at.x - corner.x) / scale(), y = (at.y - corner.y) / scale();
        for (const Region& area : sheet_.pages[i].regions)
            if (x >= area.frame.x && x <= area.frame.right() && y >= area.frame.y && y <= area.frame.bottom())
                return edit(i, area);
    }
}

void CardView::edit(std::size_t page, const Region& area) {
    edited_ = area.of;
    const wxPoint corner = CalcScrolledPosition(corner_of(page));
    editor_->ChangeValue(wide(editing_.text_of(area.of)));
    editor_->SetSize(corner.x + static_cast<int>(area.frame.x * scale()),
                     corner.y + static_cast<int>(area.frame.y * scale()),
                     std::max(looks().pixels(220), static_cast<int>(area.frame.width * scale())), looks().target());
    editor_->Show();
    editor_->SetFocus();
    editor_->SelectAll();
}

void CardView::finish(bool take) {
    if (edited_.empty()) return;
    const std::string of = std::move(edited_);
    edited_.clear();
    editor_->Hide();
    SetFocus();
    const std::string text = utf8(editor_->GetValue());
    if (take && text != editing_.text_of(of)) editing_.change(of, text);
}

void CardView::on_key(wxKeyEvent& event) {
    const int line = looks().pixels(48), screen = std::max(line, GetClientSize().y - line);
    const auto by = [this](int y) { Scroll(-1, std::max(0, GetViewStart().y + y)); };
    switch (event.GetKeyCode()) {
        case WXK_UP:
            return by(-line);
        case WXK_DOWN:
            return by(line);
        case WXK_PAGEUP:
            return by(-screen);
        case WXK_PAGEDOWN:
            return by(screen);
        case WXK_HOME:
            return Scroll(-1, 0);
        case WXK_END:
            return Scroll(-1, GetVirtualSize().y);
        default:
            event.Skip();
    }
}

void CardView::on_wheel(wxMouseEvent& event) {
    if (!event.ControlDown() || event.GetWheelRotation() == 0) return event.Skip();
    set_zoom(zoom_ * (event.GetWheelRotation() > 0 ? 1.1 : 1 / 1.1));
}

}  // namespace doorcard
