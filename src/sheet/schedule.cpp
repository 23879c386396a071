// SPDX-License-Identifier: MIT
#include "sheet/schedule.hpp"

#include <algorithm>
#include <numeric>

#include "sheet/panel_facts.hpp"
#include "sheet/schedule_parts.hpp"
#include "sheet/schedule_words.hpp"
#include "sheet/sheet_foot.hpp"
#include "sheet/sheet_start.hpp"

namespace doorcard {
namespace {

constexpr double margin = 12, least_bottom = 9;
constexpr double foot_part = 4.4 + foot_height;
constexpr double least_blocks = 17;  // of a page that carries rows too

FaceStyle schedule_style() {
    FaceStyle style;
    style.number = 10.5;
    style.rating = 8.5;
    style.least_row = 5.1;
    style.half_row = 5.4;
    style.usual_row = 8.4;
    return style;
}

FaceColumns schedule_widths() {
    FaceColumns columns;
    columns.handle = 11.4;
    return columns;
}

class PanelSheets {
public:
    PanelSheets(const Network& network, const PanelSchedule& schedule, const ScheduleChoice& choice, const Words& words)
        : network_(network), schedule_(schedule), choice_(choice), words_(words) {}

    void add_to(Sheet& sheet) {
        face_ = hung_face(network_, schedule_.panel, margin, choice_.paper.width - margin, schedule_widths(),
                          schedule_style());
        // a single column leaves the other half of the sheet to its words
        if (face_.columns.single) face_.columns.text = std::min(face_.columns.text, 190.0);
        ScheduleContent content = content_of(0, 1);
        FootBlocks blocks = foot_blocks(content);
        const double table_top = upper(content, nullptr);
        set_heights(face_, [&](const FaceRun& run) { return words_height(content, run); });
        const double whole = lower_end() - foot_part - table_top;
        const double kept = kept_for(blocks, whole) + 3;
        part(face_, whole - kept);
        const std::size_t first = sheet.pages.size();
        for (std::size_t i = 0; i < face_.pages.size(); ++i)
            sheet.pages.push_back(page(i, blocks, table_top, whole - (i + 1 == face_.pages.size() ? kept : 0)));
        while (left_over(blocks)) sheet.pages.push_back(notes_page(sheet.pages.size() - first, blocks));
        number(sheet, first);
        sheet.pages[first].lines = schedule_lines(network_, schedule_, words_);
        sheet.pages[first].table = table();
    }

private:
    ScheduleContent content_of(std::size_t page, std::size_t pages) {
        return {network_, schedule_, words_, face_, page, pages};
    }
    double lower_end() const { return choice_.paper.height - least_bottom; }

    // All of the blocks where the rows leave them room, else so much that 42 spaces go on one page.
    double kept_for(const FootBlocks& blocks, double whole) const {
        const double rows = std::accumulate(face_.least.begin(), face_.least.end(), 0.0);
        return std::min(blocks_height(blocks), std::max(least_blocks, whole - rows - 3.5));
    }

    double upper(const ScheduleContent& content, Page* page) {
        Page aside;
        Drawing drawing(page ? *page : aside);
        double y = draw_schedule_head(drawing, content, margin);
        y = draw_schedule_feeds(drawing, content, y + 1.0) + 1.4;
        return draw_schedule_captions(drawing, content, y);
    }

    Page blank() const {
        Page page;
        page.paper = choice_.paper;
        page.of = network_.survey().panels[schedule_.panel].id;
        return page;
    }

    Page page(std::size_t number, FootBlocks& blocks, double table_top, double rows_height) {
        Page made = blank();
        const ScheduleContent content = content_of(number, 1);
        upper(content, &made);
        Drawing drawing(made);
        const double bottom = place_cells(face_, face_.pages[number], table_top, rows_height);
        draw_schedule_rows(drawing, content, face_.pages[number], table_top, bottom);
        if (number + 1 == face_.pages.size())
            draw_blocks(drawing, content, blocks, bottom + 1.4, lower_end() - foot_part - bottom - 1.8);
        return made;
    }

    Page notes_page(std::size_t number, FootBlocks& blocks) {
        Page made = blank();
        Drawing drawing(made);
        const ScheduleContent content = content_of(number, 1);
        const double y = draw_schedule_head(drawing, content, margin) + 3;
        draw_blocks(drawing, content, blocks, y, lower_end() - foot_part - y - 2);
        return made;
    }

    static bool left_over(const FootBlocks& blocks) {
        return std::any_of(blocks.blocks.begin(), blocks.blocks.end(),
                           [](const FootBlock& block) { return !block.lines.empty(); });
    }

    // The foot comes last: it says of how many pages.
    void number(Sheet& sheet, std::size_t first) {
        const std::size_t pages = sheet.pages.size() - first;
        for (std::size_t i = 0; i < pages; ++i) {
            Page& made = sheet.pages[first + i];
            Drawing drawing(made);
            draw_schedule_foot(drawing, content_of(i, pages), lower_end() - foot_part);
            made.title = page_title(made.of, i, pages);
        }
    }

    std::vector<std::vector<std::string>> table() const {
        std::vector<std::vector<std::string>> rows = {
            {words_(tr("space")), words_(tr("leg")), words_(tr("description")), words_(tr("class, how traced")),
             words_(tr("amperes")), words_(tr("poles, guard")), words_(tr("wire")), words_(tr("VA")),
             words_(tr("measured, A")), words_(tr("% of rating"))}};
        for (const ScheduleRow& row : schedule_.rows)
            for (std::size_t pole = 0; pole < row.poles.size(); ++pole) rows.push_back(table_row(row, pole));
        return rows;
    }

    std::vector<std::string> table_row(const ScheduleRow& row, std::size_t pole) const {
        const SchedulePole& at = row.poles[pole];
        const bool device = row.entry.breaker.has_value(), first = pole == 0;
        std::string text = words_.say(row.entry.text);
        if (!row.entry.under.empty()) text += "; " + words_.say(row.entry.under);
        if (row.entry.claimed) text = words_.say({tr("{0} (only said, not traced)"), {text}});
        if (!first) text = words_.say({tr("pole of {0}"), {name_of(row.positions())}});
        const bool highest = first && row.poles.size() > 1 && only_highest_known(row);
        std::string measured = device ? amps_text(highest ? row.measured_highest_a : at.measured_a) : "";
        if (highest) measured += ", " + words_(tr("highest leg"));
        return {name_of(at.position),
                at.leg == '?' ? "–" : std::string(1, at.leg),
                text,
                first ? class_text(row, words_) : "",
                device && first ? rating_text(network_.survey().breakers[*row.entry.breaker]) : "",
                device && first ? poles_text(row, words_) + ", " + guards_text(network_, row, words_) : "",
                first ? wire_text(row) : "",
                device ? va_text(at.va, row.va_complete) : "",
                measured,
                device && first ? percent_text(row.percent_of_rating, row.va_complete) : ""};
    }

    const Network& network_;
    const PanelSchedule& schedule_;
    const ScheduleChoice& choice_;
    const Words& words_;
    PanelFace face_;
};

}  // namespace

Sheet schedule_sheet(const Network& network, const std::vector<PanelSchedule>& schedules, const ScheduleChoice& choice,
                     const Words& words) {
    const Survey& survey = network.survey();
    Sheet sheet = begun_sheet(tr("Panel schedule, {0}"), survey, words);
    for (const PanelSchedule& schedule : schedules)
        if (is_chosen(choice.panels, survey.panels[schedule.panel].id))
            PanelSheets(network, schedule, choice, words).add_to(sheet);
    return sheet;
}

}  // namespace doorcard
