// SPDX-License-Identifier: MIT
#include "sheet/card_plan.hpp"

#include "sheet/card_neutrals.hpp"
#include "sheet/drawing.hpp"

namespace doorcard {
namespace {

// Above and below the words of a cell, together: two lines of 8 pt fit into the least row.
constexpr double air_of(const TextBlock& block) { return block.height < 6.2 ? 0.96 : 1.6; }
constexpr std::size_t most_lines = 6;

void add_lines(TextBlock& block, const std::string& text, const TypeStyle& style, double width, std::size_t most,
               bool claimed) {
    for (const std::string& line : even_lines(text, style, width, most)) {
        block.height += block.lines.empty() ? cap_height(style.points) : line_advance(style.points);
        block.lines.push_back({line, style, claimed});
    }
}

TextBlock block_at(double points, const DirectoryRow& row, const std::string& note, double width, const Words& words) {
    const bool warns = row.kind == RowKind::not_traced || row.kind == RowKind::off || row.fire_alarm ||
                       (row.kind == RowKind::not_described);
    TextBlock block;
    add_lines(block, words.say(row.text), {points, warns, row.claimed, false}, width, most_lines, row.claimed);
    add_lines(block, words.say(row.under), {8, row.kind == RowKind::off && row.circuits.empty(), false, false}, width,
              3, false);
    if (!note.empty()) add_lines(block, note, {8, true}, width, 2, false);
    if (!block.lines.empty()) block.height += descent(block.lines.back().style.points);
    return block;
}

}  // namespace

TextBlock parted_block(const CardPlan& plan, std::size_t entry, double width, const Words& words) {
    const DirectoryRow& row = plan.entry(entry);
    const std::string handle = words.say({tr("{0} is one handle"), {name_of(row.positions)}});
    TextBlock block;
    add_lines(block, words.say(row.text), {8, false, row.claimed}, width, 1, row.claimed);
    add_lines(block, handle, {8, true}, width, 1, false);
    block.height += descent(8);
    return block;
}

TextBlock text_block(const CardPlan& plan, std::size_t entry, double width, double height, const Words& words) {
    const DirectoryRow& row = plan.entry(entry);
    const std::string& note = plan.notes[entry];
    if (height > 0) {
        TextBlock large = block_at(9, row, note, width, words);
        if (large.height + 0.9 <= height) return large;
    }
    return block_at(8, row, note, width, words);
}

CardPlan card_plan(const Network& network, std::size_t panel, double content_left, double content_right,
                   double rows_height, const Words& words) {
    CardPlan plan{hung_face(network, panel, content_left, content_right, {}, {}), {}, {}};
    plan.notes.resize(plan.directory.rows.size());
    mark_neutrals(plan, network, words);
    set_heights(plan, [&](const FaceRun& run) {
        const double width = plan.columns.text_width() - sign_width(plan.entry(run.entry));
        const TextBlock block = text_block(plan, run.entry, width, 0, words);
        return block.height + air_of(block);
    });
    part(plan, rows_height);
    return plan;
}

}  // namespace doorcard
