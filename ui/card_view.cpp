// SPDX-License-Identifier: MIT
#include "ui/card_view.hpp"

#include <cairo.h>
#include <wx/dcclient.h>
#include <wx/scrolwin.h>
#include <wx/settings.h>

#include <algorithm>
#include <cmath>

#include "sheet/paint.hpp"

namespace doorcard {
namespace {

constexpr double pixels_per_mm = 96 / 25.4;
constexpr double pixels_per_point = 96.0 / 72;  // paint_page draws in points
constexpr int gap = 24;                         // between pages and around them, pixels
constexpr double least_zoom = 0.1, most_zoom = 8;

// The paper keeps its own white in every theme: the inks of the marks are meant for it.
void paint_paper(cairo_t* cairo, double width, double height) {
    cairo_rectangle(cairo, 0, 0, width, height);
    cairo_set_source_rgb(cairo, 1, 1, 1);
    cairo_fill_preserve(cairo);
    cairo_set_source_rgb(cairo, 0.45, 0.45, 0.45);
    cairo_set_line_width(cairo, 1);
    cairo_stroke(cairo);
}

// What the paper lies on: warm grey by day, ink-blue in a dark theme.
void fill_desk(cairo_t* cairo) {
    if (wxSystemSettings::GetAppearance().IsDark())
        cairo_set_source_rgb(cairo, 0.10, 0.13, 0.18);
    else
        cairo_set_source_rgb(cairo, 0.82, 0.80, 0.76);
    cairo_paint(cairo);
}

class View final : public wxScrolledCanvas, public CardView {
public:
    View(wxWindow* parent, std::function<void()> zoomed)
        : wxScrolledCanvas(parent, wxID_ANY, wxDefaultPosition, wxDefaultSize,
                           wxHSCROLL | wxVSCROLL | wxWANTS_CHARS | wxFULL_REPAINT_ON_RESIZE),
          zoomed_(std::move(zoomed)) {
        SetBackgroundStyle(wxBG_STYLE_PAINT);
        DisableKeyboardScrolling();
        Bind(wxEVT_PAINT, [this](wxPaintEvent&) { paint(); });
        Bind(wxEVT_CHAR, &View::on_key, this);
        Bind(wxEVT_MOUSEWHEEL, &View::on_wheel, this);
    }

    wxWindow* window() override { return this; }
    double zoom() const override { return zoom_; }

    void show(Sheet sheet) override {
        sheet_ = std::move(sheet);
        measure();
        Scroll(0, 0);
        Refresh();
    }

    void set_zoom(double zoom) override {
        const wxSize seen = GetClientSize();
        const wxPoint corner = GetViewStart();
        const double before = zoom_;
        zoom_ = std::clamp(zoom, least_zoom, most_zoom);
        measure();
        const auto kept = [&](int start, int size) {
            return std::max(0, static_cast<int>(std::lround((start + size / 2.0) * zoom_ / before - size / 2.0)));
        };
        Scroll(kept(corner.x, seen.x), kept(corner.y, seen.y));
        Refresh();
        zoomed_();
    }

private:
    int width_of(const Page& page) const {
        return static_cast<int>(std::ceil(page.paper.width * pixels_per_mm * zoom_));
    }
    int height_of(const Page& page) const {
        return static_cast<int>(std::ceil(page.paper.height * pixels_per_mm * zoom_));
    }

    void measure() {
        int width = 0, height = gap;
        for (const Page& page : sheet_.pages) {
            width = std::max(width, width_of(page));
            height += height_of(page) + gap;
        }
        SetScrollRate(1, 1);
        SetVirtualSize(width + 2 * gap, height);
    }

    void paint() {
        wxPaintDC dc(this);
        auto* cairo = static_cast<cairo_t*>(dc.GetHandle());
        const wxRect dirty = GetUpdateRegion().GetBox();
        cairo_save(cairo);
        fill_desk(cairo);
        int top = gap - GetViewStart().y;
        for (const Page& page : sheet_.pages) {
            const int left = std::max(gap, (GetClientSize().x - width_of(page)) / 2) - GetViewStart().x;
            if (dirty.Intersects({left, top, width_of(page), height_of(page)})) paint_at(cairo, page, left, top);
            top += height_of(page) + gap;
        }
        cairo_restore(cairo);
    }

    void paint_at(cairo_t* cairo, const Page& page, int left, int top) const {
        cairo_save(cairo);
        cairo_translate(cairo, left, top);
        paint_paper(cairo, width_of(page), height_of(page));
        cairo_scale(cairo, pixels_per_point * zoom_, pixels_per_point * zoom_);
        paint_page(cairo, page);
        cairo_restore(cairo);
    }

    void scroll_by(int x, int y) {
        const wxPoint at = GetViewStart();
        Scroll(std::max(0, at.x + x), std::max(0, at.y + y));
    }

    void on_key(wxKeyEvent& event) {
        constexpr int line = 48;
        const int screen = std::max(line, GetClientSize().y - line);
        switch (event.GetKeyCode()) {
            case WXK_UP:
                return scroll_by(0, -line);
            case WXK_DOWN:
                return scroll_by(0, line);
            case WXK_LEFT:
                return scroll_by(-line, 0);
            case WXK_RIGHT:
                return scroll_by(line, 0);
            case WXK_PAGEUP:
                return scroll_by(0, -screen);
            case WXK_SPACE:
            case WXK_PAGEDOWN:
                return scroll_by(0, screen);
            case WXK_HOME:
                return Scroll(0, 0);
            case WXK_END:
                return Scroll(0, GetVirtualSize().y);
            default:
                event.Skip();
        }
    }

    void on_wheel(wxMouseEvent& event) {
        if (!event.ControlDown() || event.GetWheelRotation() == 0) return event.Skip();
        set_zoom(zoom_ * (event.GetWheelRotation() > 0 ? 1.1 : 1 / 1.1));
    }

    Sheet sheet_;
    double zoom_ = 1;
    std::function<void()> zoomed_;
};

}  // namespace

CardView* new_card_view(wxWindow* parent, std::function<void()> zoomed) { return new View(parent, std::move(zoomed)); }

}  // namespace doorcard
