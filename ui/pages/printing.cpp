// SPDX-License-Identifier: MIT
#include "ui/pages/printing.hpp"

#include <cairo.h>
#include <wx/dc.h>
#include <wx/print.h>

#include "sheet/paint.hpp"
#include "ui/text.hpp"

namespace doorcard {
namespace {

class SheetPrintout final : public wxPrintout {
public:
    explicit SheetPrintout(const Sheet& sheet) : wxPrintout(wide(sheet.title)), sheet_(sheet) {}
    bool HasPage(int page) override { return page >= 1 && static_cast<std::size_t>(page) <= sheet_.pages.size(); }
    void GetPageInfo(int* least, int* most, int* from, int* to) override {
        *least = *from = 1;
        *most = *to = static_cast<int>(sheet_.pages.size());
    }

    // The printer's units are scaled by the size of the page, never by dots to the inch: a preview lies about those.
    bool OnPrintPage(int number) override {
        const Page& page = sheet_.pages[static_cast<std::size_t>(number) - 1];
        auto* cairo = static_cast<cairo_t*>(GetDC()->GetHandle());
        if (!cairo) return false;
        int width = 0, height = 0, width_mm = 0, height_mm = 0;
        GetDC()->GetSize(&width, &height);
        GetPageSizeMM(&width_mm, &height_mm);
        cairo_save(cairo);
        const double scale = width_mm > 0 ? width / (width_mm / 25.4 * 72) : 1;
        cairo_scale(cairo, scale, scale);
        paint_page(cairo, page);
        cairo_restore(cairo);
        return true;
    }

private:
    Sheet sheet_;
};

}  // namespace

void print_sheet(wxWindow* parent, const Sheet& sheet) {
    if (sheet.pages.empty()) return;
    const Paper& paper = sheet.pages.front().paper;
    wxPrintDialogData data;
    data.GetPrintData().SetOrientation(paper.width > paper.height ? wxLANDSCAPE : wxPORTRAIT);
    data.GetPrintData().SetPaperId(paper.width > 210 && paper.height > 290 ? wxPAPER_A4 : wxPAPER_LETTER);
    wxPrinter printer(&data);
    SheetPrintout printout(sheet);
    printer.Print(parent, &printout, true);
}

}  // namespace doorcard
