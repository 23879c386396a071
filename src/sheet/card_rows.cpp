// SPDX-License-Identifier: MIT
#include <algorithm>

#include "sheet/card_parts.hpp"
#include "sheet/face_painting.hpp"

namespace doorcard {
namespace {

// The words of the card's rows, between number and handle.
class RowWords {
public:
    RowWords(Drawing& drawing, const CardContent& card, FacePainting& face)
        : drawing_(drawing), card_(card), plan_(card.plan), columns_(plan_.columns), face_(face) {}

    void paint_words(const FaceRun& run, const FacePlace& place) {
        const DirectoryRow& row = plan_.entry(run.entry);
        const double indent = place.sign_beside ? sign_width(row) : 0;
        Frame room{columns_.text_x(place.left), place.y, columns_.text_width() - indent, place.height};
        note_region(row, room);
        const TextBlock block = place.parted ? parted_block(plan_, run.entry, room.width, card_.words)
                                             : text_block(plan_, run.entry, room.width, place.free(), card_.words);
        if (place.sign_beside) {
            const double x = place.left ? room.x : room.x + columns_.text_width() - FacePainting::sign_box(row);
            face_.paint_sign(row, x, place.y + place.number_top + cap_height(12) / 2 - sign_height / 2, place.left);
            if (place.left) room.x += indent;
        }
        const double widest = paint_lines(row, block, room, first_baseline(block, place));
        if (row.kind == RowKind::not_traced || row.kind == RowKind::not_described)
            hatch(place.left ? columns_.handle_x(true) - 1.0 : room.right(), room.x + widest + 1.3, place.y,
                  place.height);
    }

    // Where a neutral's breakers are neighbours its words lie on the rule between them.
    void paint_neutrals() {
        for (std::size_t i = 0; i < plan_.neutrals.size(); ++i) {
            if (!plan_.neutral_words[i].neighbours) continue;
            const auto here = face_.members(plan_.neutrals[i].entries);
            if (!here.empty()) paint_rule_words(here.front().side == 0, here.front().bottom, plan_.neutral_words[i]);
        }
    }

private:
    // Who points at the words of a row means its circuit, or its breaker where none is known.
    void note_region(const DirectoryRow& row, const Frame& room) {
        if (!row.breaker) return;
        const Survey& survey = card_.network.survey();
        drawing_.page().regions.push_back({room, row.circuits.empty()
                                                     ? "breaker:" + survey.breakers[*row.breaker].id
                                                     : "circuit:" + survey.circuits[row.circuits.front()].id});
    }

    // The first line stands on the number's baseline where the words fit below it, else they stand in the middle.
    static double first_baseline(const TextBlock& block, const FacePlace& place) {
        if (block.lines.empty()) return place.y;
        constexpr double air = 0.45;
        const double cap = cap_height(block.lines.front().style.points);
        const double at_number = place.number_top + cap_height(12);
        if (at_number - cap + block.height <= place.height - place.pad_bottom - air) return place.y + at_number;
        const double free = place.free() - block.height;
        return place.y + place.pad_top + std::max(0.0, free / 2) + cap;
    }

    double paint_lines(const DirectoryRow& row, const TextBlock& block, const Frame& room, double baseline) {
        double widest = 0;
        for (std::size_t i = 0; i < block.lines.size(); ++i) {
            const TextLine& line = block.lines[i];
            if (i > 0) baseline += line_advance(line.style.points);
            drawing_.text(room, baseline, line.text, line.style, Align::left, FacePainting::ink_of(row));
            const double width = text_width(line.text, line.style);
            widest = std::max(widest, width);
            if (line.claimed) drawing_.dotted(room.x, baseline, width);
        }
        return widest;
    }

    void hatch(double to, double from, double y, double height) {
        if (to - from >= 2) drawing_.hatching({from, y + 1.1, to - from, height - 2.2});
    }

    void paint_rule_words(bool left, double y, const NeutralWords& neutral) {
        const double width = text_width(neutral.words, neutral.style);
        const double x = columns_.text_x(left);
        drawing_.fill({x - 0.8, y - 0.3, width + 1.6, 0.6}, inks::paper);
        drawing_.text({x, y - 1.7, columns_.text_width(), 3.5}, y + cap_height(neutral.style.points) / 2, neutral.words,
                      neutral.style);
        const double margin = left ? columns_.left - 2.4 : columns_.right + 2.4;
        drawing_.line(margin, y, left ? x - 0.8 : columns_.right - columns_.number + 1.2, y, lines::outline);
    }

    Drawing& drawing_;
    const CardContent& card_;
    const CardPlan& plan_;
    const FaceColumns& columns_;
    FacePainting& face_;
};

}  // namespace

void draw_rows(Drawing& drawing, const CardContent& card, double top, double bottom) {
    FacePainting face(drawing, card.network, card.words, card.plan, card.plan.pages[card.card]);
    RowWords words(drawing, card, face);
    face.paint(top, bottom, [&](const FaceRun& run, const FacePlace& place) { words.paint_words(run, place); });
    words.paint_neutrals();
}

}  // namespace doorcard
