// SPDX-License-Identifier: MIT
#pragma once
#include <functional>

#include "sheet/sheet.hpp"
#include "ui/painted.hpp"

class wxTextCtrl;

namespace doorcard {

/// The printed sheet itself, at its size: pages below each other on a desk. What it says can be edited where it stands.
class CardView final : public Painted {
public:
    /// What a text of the sheet is as it is edited, and what becomes of it; both by the address of its thing.
    struct Editing {
        std::function<std::string(const std::string& of)> text_of;
        std::function<void(const std::string& of, const std::string& text)> change;
    };
    CardView(wxWindow* parent, const Looks&, Editing);
    void show(Sheet);
    void set_zoom(double);
    double zoom() const { return zoom_; }
    /// As wide as the view leaves room for.
    void fit_width();

private:
    void draw(cairo_t*) override;
    void measure();
    double scale() const { return zoom_ * pixels_per_mm(); }
    wxPoint corner_of(std::size_t page) const;
    void on_click(wxMouseEvent&);
    void on_key(wxKeyEvent&);
    void on_wheel(wxMouseEvent&);
    void edit(std::size_t page, const Region&);
    void finish(bool take);

    Editing editing_;
    Sheet sheet_;
    double zoom_ = 1;
    bool is_fitted_ = true;
    wxTextCtrl* editor_ = nullptr;
    std::string edited_;
};

}  // namespace doorcard
