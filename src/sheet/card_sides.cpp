// SPDX-License-Identifier: MIT
#include <algorithm>

#include "sheet/card_back.hpp"
#include "sheet/card_cut.hpp"

namespace doorcard {
namespace {

std::vector<Page> pages_of(const Sheet& sheet, const std::string& panel) {
    std::vector<Page> found;
    std::ranges::copy_if(sheet.pages, std::back_inserter(found), [&](const Page& page) { return page.of == panel; });
    return found;
}

// A side that nothing is printed on says so: nobody looks for what is missing.
Page empty_side(const Page& other, const CardChoice& choice, const Words& words) {
    Page page;
    page.paper = other.paper;
    page.of = other.of;
    page.title = words.say({tr("{0}, empty side"), {other.title}});
    Drawing drawing(page);
    const Frame trim = trim_on(choice.paper, choice.cut.value_or(usual_cut));
    draw_cut_marks(drawing, trim, choice.cut.has_value(), words);
    const std::string text = words(tr("This side is empty."));
    drawing.text({trim.x, trim.y + trim.height / 2 - 3, trim.width, 6}, trim.y + trim.height / 2 + 1, text, {9},
                 Align::middle, inks::caption);
    return page;
}

}  // namespace

Sheet both_sides(const Sheet& fronts, const Sheet& backs, const CardChoice& choice, const Words& words) {
    Sheet sheet = fronts;
    sheet.pages.clear();
    std::vector<std::string> panels;
    for (const Page& page : fronts.pages)
        if (std::ranges::find(panels, page.of) == panels.end()) panels.push_back(page.of);
    for (const std::string& panel : panels) {
        const std::vector<Page> front = pages_of(fronts, panel), back = pages_of(backs, panel);
        for (std::size_t i = 0; i < std::max(front.size(), back.size()); ++i) {
            sheet.pages.push_back(i < front.size() ? front[i] : empty_side(back[i], choice, words));
            sheet.pages.push_back(i < back.size() ? back[i] : empty_side(front[i], choice, words));
        }
    }
    return sheet;
}

}  // namespace doorcard
