// SPDX-License-Identifier: MIT
#include <algorithm>

#include "sheet/card_back_parts.hpp"
#include "sheet/face_signs.hpp"
#include "sheet/panel_facts.hpp"

namespace doorcard {
namespace {

constexpr double hatch_width = 8;
constexpr std::size_t large_up_to = 6;  // so many things are named in the large type

struct SetItem {
    std::string handles;
    TypeStyle handles_style;
    std::vector<std::string> why;
    TypeStyle why_style{10};
    double sign = 0;  // room for the box or the hatching
    double width = 0, height = 0;
};

class Tag {
public:
    Tag(Drawing& drawing, const BackContent& back, std::vector<TagItem> items)
        : drawing_(drawing), back_(back), items_(std::move(items)) {}

    double paint(double top) {
        drawing_.line(back_.trim.x, top, back_.trim.right(), top, lines::row, inks::text, {1.6, 1.1});
        const double left = paint_head(top + 3.2);
        const double right = paint_items(top + 3.4);
        return std::max(left, right);
    }

private:
    double head_width() const { return back_.width() * 0.34; }

    double paint_head(double top) {
        const double width = head_width() - 3;
        double y = drawing_.paragraph({back_.left(), top, width, 20}, back_.words(tr("Leave on")), {13, true}) + 1;
        y = drawing_.paragraph({back_.left(), y, width, 20}, back_.words(tr("except in an emergency; ask first")),
                               {9, true}) +
            1;
        const std::string date =
            back_.words.say({tr("As of {0}. Cut off when it changes."), {dated(back_.network.survey(), back_.words)}});
        return drawing_.paragraph({back_.left(), y, width, 20}, date, {8}, inks::caption);
    }

    SetItem set(const TagItem& item, double room) const {
        SetItem set;
        const double points = items_.size() > large_up_to ? 14 : 20;
        set.handles = item.handles.empty() ? back_.words(tr("handle not traced")) : item.handles;
        set.handles_style = item.handles.empty() ? TypeStyle{10, true} : TypeStyle{points, true};
        if (item.claimed) set.handles_style = {11, false, true};
        set.sign = item.claimed ? sign_height + 1 : item.handles.empty() ? hatch_width + 1.2 : 0;
        set.handles_style =
            fitting(set.handles, set.handles_style, room * 0.6, {set.handles_style.points, 16, 13, 11, 9});
        const double number = set.sign + text_width(set.handles, set.handles_style);
        set.why = broken_lines(item.why, set.why_style, std::max(room - number - 2, room * 0.3));
        double why = 0;
        for (const std::string& line : set.why) why = std::max(why, text_width(line, set.why_style));
        set.width = number + 2 + why;
        set.height = std::max(cap_height(set.handles_style.points),
                              cap_height(points) + static_cast<double>(set.why.size() - 1) * line_advance(10)) +
                     2.6;
        return set;
    }

    // As many beside each other as fit.
    double paint_items(double top) {
        const double left = back_.left() + head_width();
        const double room = back_.right() - left;
        double x = left, y = top, height = 0;
        for (const TagItem& item : items_) {
            const SetItem next = set(item, room);
            if (x > left && x + next.width > back_.right()) {
                x = left;
                y += height + 0.6;
                height = 0;
            }
            paint_item(next, item.claimed, x, y);
            x += next.width + 6;
            height = std::max(height, next.height);
        }
        return y + height;
    }

    void paint_item(const SetItem& item, bool claimed, double x, double y) {
        const double points = items_.size() > large_up_to ? 14 : 20;
        const double baseline = y + cap_height(points);
        const double middle = baseline - cap_height(item.handles_style.points) / 2;
        if (claimed)
            draw_claimed(drawing_, x, middle - sign_height / 2);
        else if (item.sign > 0)
            drawing_.hatching({x, middle - 1.7, hatch_width, 3.4});
        const double number = text_width(item.handles, item.handles_style) + 0.4;
        drawing_.text({x + item.sign - 0.2, y - 1.2, number, cap_height(points) + 3.4}, baseline, item.handles,
                      item.handles_style);
        double line = baseline;
        const double why_x = x + item.sign + number + 1.6;
        for (const std::string& why : item.why) {
            drawing_.text({why_x, line - 3.6, back_.right() - why_x + 0.5, 4.9}, line, why, item.why_style);
            line += line_advance(item.why_style.points);
        }
    }

    Drawing& drawing_;
    const BackContent& back_;
    std::vector<TagItem> items_;
};

}  // namespace

double draw_back_tag(Drawing& drawing, const BackContent& back, double top) {
    std::vector<TagItem> items = tag_items(back.directory, back.names, back.words);
    return items.empty() ? top : Tag(drawing, back, std::move(items)).paint(top);
}

}  // namespace doorcard
