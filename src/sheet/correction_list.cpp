// SPDX-License-Identifier: MIT
#include "sheet/correction_list.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <functional>

#include "sheet/correction_parts.hpp"
#include "sheet/panel_facts.hpp"
#include "sheet/sheet_foot.hpp"
#include "sheet/sheet_head.hpp"
#include "sheet/sheet_start.hpp"

namespace doorcard {
namespace {

constexpr double margin_top = 14;
constexpr double margin_bottom = 12;
constexpr double heading_points = 7.5;

std::vector<CorrectionPart> parts_of(const Network& network, const Assessment& assessment) {
    const std::size_t panels = network.survey().panels.size();
    std::map<std::size_t, CorrectionPart> parts;
    const auto part = [&](std::size_t panel) -> CorrectionPart& {
        const std::size_t key = std::min(panel, panels);
        parts[key].panel = key;
        return parts[key];
    };
    for (const Finding& finding : assessment.findings)
        if (finding.severity != Severity::notice) part(finding.standing.panel).items.push_back(&finding);
    for (NoticeGroup& group : notice_groups(assessment.findings)) part(group.panel).notices.push_back(std::move(group));
    for (const Finding& finding : assessment.accepted) ++part(finding.standing.panel).accepted;
    if (parts.empty()) part(0);
    std::vector<CorrectionPart> all;
    all.reserve(parts.size());
    for (auto& [panel, found] : parts) all.push_back(std::move(found));
    return all;
}

/// What is traced of the panel; of what hangs on none, of all panels together.
PanelDirectory traced_of(const CorrectionContent& content) {
    if (content.of_panel()) return directory_of(content.network, content.part.panel);
    PanelDirectory all;
    for (std::size_t panel = 0; panel < content.survey().panels.size(); ++panel) {
        const PanelDirectory one = directory_of(content.network, panel);
        all.traced += one.traced;
        all.claimed += one.claimed;
        all.not_traced += one.not_traced;
    }
    return all;
}

/// The pages of one panel's list.
class PartPages {
public:
    PartPages(const CorrectionContent& content) : content_(content), at_(correction_columns(content.choice.paper)) {}

    std::vector<Page> pages() {
        begin_page();
        draw_summary();
        add_items();
        add_notices();
        if (content_.part.items.empty() && content_.part.notices.empty()) draw_nothing();
        pages_.front().lines = correction_lines(content_);
        return std::move(pages_);
    }

    /// What stands at the foot of every page, once it is known how many there are.
    void draw_lower(Page& page, std::size_t number, std::size_t count) const {
        Drawing drawing(page);
        const double top = page.paper.height - margin_bottom - foot_height;
        draw_cautions(drawing, top - cautions_height());
        const PanelDirectory directory = traced_of(content_);
        const std::vector<FootCell> right = {
            {content_.words(tr("rules")), content_.choice.rules},
            {content_.words(tr("page")),
             content_.words.say(
                 {tr("{0:.0f} of {1:.0f}"), {static_cast<double>(number), static_cast<double>(count)}})}};
        draw_foot_strip(drawing, {at_.left, top, at_.width(), foot_height},
                        dated_cells(content_.survey(), content_.words), directory, right, content_.words);
    }

private:
    std::vector<std::string> caution_texts() const {
        return {content_.words(tr("Work inside is for qualified persons: lock out, tag, test dead.")) + " " +
                content_.words(tr("Not a permit. Local code and the authority having jurisdiction decide."))};
    }
    std::string first_caution() const {
        return content_.words(tr("Off here is not proof of dead. Test before you touch."));
    }

    double draw_cautions(Drawing& drawing, double top) const {
        const TypeStyle style = fitting(first_caution(), {10.5, true}, at_.width(), {10.5, 10, 9.5, 9});
        double y = drawing.paragraph({at_.left, top, at_.width(), 15}, first_caution(), style) + 0.9;
        for (const std::string& text : caution_texts())
            y = drawing.paragraph({at_.left, y, at_.width(), 15}, text, {8}) + 0.8;
        return y;
    }
    double cautions_height() const {
        Page aside;
        Drawing drawing(aside);
        return draw_cautions(drawing, 0) + 0.8;
    }
    double lowest() const {
        return content_.choice.paper.height - margin_bottom - foot_height - cautions_height() - 2.5;
    }

    void begin_page() {
        const bool again = !pages_.empty();
        Page& page = pages_.emplace_back();
        page.paper = content_.choice.paper;
        page.of = part_name(content_);
        page.table = {{"", content_.words(tr("signal")), content_.words(tr("what was found")),
                       content_.words(tr("what puts it right")), content_.words(tr("figure")),
                       content_.words(tr("source")), content_.words(tr("date, initials"))}};
        Drawing drawing(page);
        std::string title = part_title(content_);
        if (again) title = content_.words.say({tr("{0} (continued)"), {title}});
        const std::string system =
            content_.of_panel() ? system_text(content_.network, content_.part.panel, content_.words) : "";
        y_ = draw_head(drawing, {at_.left, margin_top, at_.width(), 0},
                       {part_name(content_), title, content_.survey().heading.title.value_or(""), system}, 24) +
             2.2;
        headed_ = false;
    }

    void draw_summary() {
        Drawing drawing(pages_.back());
        const std::string counts = counts_text(content_.part, content_.words);
        std::string text = counts;
        if (content_.of_panel())
            text += (text.empty() ? "" : "; ") + content_.words(tr("fed from")) + ": " +
                    fed_from_text(content_.network, content_.part.panel, content_.words);
        if (!content_.choice.left_out.empty()) text += (text.empty() ? "" : ". ") + content_.choice.left_out;
        y_ = drawing.paragraph({at_.left, y_, at_.width(), 12}, text, {9}) + 1.6;
    }

    /// Small words over the columns.
    void draw_headings(Drawing& drawing) {
        const auto heading = [&](double x, double right, const char* words) {
            drawing.text({x, y_ - 0.6, right - x, 4.2}, y_ + 2.2,
                         cut_to(content_.words(words), {heading_points}, right - x), {heading_points}, Align::left,
                         inks::caption);
        };
        heading(at_.left, at_.what - 1, tr("put right"));
        heading(at_.what, at_.figure - 1, tr("what was found, and what puts it right"));
        heading(at_.figure, at_.source - 1, tr("figure"));
        heading(at_.source, at_.date - 1, tr("source"));
        heading(at_.date, at_.initials - 1, tr("date"));
        heading(at_.initials, at_.right, tr("initials"));
        y_ += 3.6;
        drawing.line(at_.left, y_, at_.right, y_, lines::outline);
        headed_ = true;
    }

    using Draw = std::function<double(Drawing&, double)>;

    /// Draws where it fits, else on a page of its own; measured aside first.
    void place(const Draw& draw, double room_before, const std::function<void(Drawing&)>& before) {
        Page aside;
        Drawing measuring(aside);
        const double height = draw(measuring, 0);
        if (y_ + room_before + height > lowest()) begin_page();
        Drawing drawing(pages_.back());
        if (!headed_) before(drawing);
        y_ = draw(drawing, y_);
    }

    void add_items() {
        std::size_t number = 0;
        for (const Finding* finding : content_.part.items) {
            ++number;
            place(
                [&](Drawing& drawing, double top) { return draw_item(drawing, content_, at_, *finding, number, top); },
                headed_ ? 0 : 4, [&](Drawing& drawing) { draw_headings(drawing); });
            pages_.back().table.push_back(
                {fmt::format("\u2610 {}", number), signal_word(finding->severity, content_.words),
                 content_.words.say(finding->text), content_.words.say(finding->remedy),
                 figure_text(*finding, content_.words) + " " + limit_text(*finding, content_.words),
                 short_sources(finding->sources, content_.words) + "; " + basis_text(*finding, content_.words), ""});
        }
    }

    void draw_notices_heading(Drawing& drawing) {
        y_ += 3.2;
        const std::string words =
            content_.words(tr("Notices, and what nobody has looked at yet: tick what was seen to"));
        y_ = drawing.paragraph({at_.left, y_, at_.width(), 8}, words, {9, true}) + 1.0;
        drawing.line(at_.left, y_, at_.right, y_, lines::outline);
        headed_ = true;
    }

    void add_notices() {
        headed_ = false;
        for (const NoticeGroup& group : content_.part.notices) {
            place([&](Drawing& drawing, double top) { return draw_notice(drawing, content_, at_, group, top); },
                  headed_ ? 0 : 9, [&](Drawing& drawing) { draw_notices_heading(drawing); });
            for (const std::string& line : notice_lines(content_.network, group, 60, content_.words))
                pages_.back().table.push_back({"\u2610", signal_word(Severity::notice, content_.words), line, "", "",
                                               short_sources(group.findings.front()->sources, content_.words), ""});
        }
    }

    void draw_nothing() {
        Drawing drawing(pages_.back());
        y_ = drawing.paragraph({at_.left, y_ + 4, at_.width(), 20}, nothing_found(content_.words), {10.5, true}) + 2;
        pages_.back().table.push_back({"", "", nothing_found(content_.words), "", "", "", ""});
    }

    const CorrectionContent& content_;
    CorrectionColumns at_;
    std::vector<Page> pages_;
    double y_ = 0;
    bool headed_ = false;  ///< the words over the columns stand on this page
};

void name_pages(std::vector<Page>& pages) {
    for (std::size_t i = 0; i < pages.size(); ++i) pages[i].title = page_title(pages[i].of, i, pages.size());
}

}  // namespace

Sheet correction_list(const Network& network, const Assessment& assessment, const CorrectionChoice& choice,
                      const Words& words) {
    const Survey& survey = network.survey();
    Sheet sheet = begun_sheet(tr("Correction list, {0}"), survey, words);
    const std::vector<CorrectionPart> parts = parts_of(network, assessment);
    std::vector<CorrectionContent> contents;
    std::vector<std::pair<std::size_t, const CorrectionContent*>> owners;
    contents.reserve(parts.size());
    for (const CorrectionPart& part : parts) {
        contents.push_back({network, assessment, choice, words, part});
        std::vector<Page> pages = PartPages(contents.back()).pages();
        name_pages(pages);
        for (Page& page : pages) {
            owners.emplace_back(sheet.pages.size(), &contents.back());
            sheet.pages.push_back(std::move(page));
        }
    }
    for (const auto& [page, content] : owners)
        PartPages(*content).draw_lower(sheet.pages[page], page + 1, owners.size());
    return sheet;
}

}  // namespace doorcard
