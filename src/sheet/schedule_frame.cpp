// SPDX-License-Identifier: MIT
#include <algorithm>

#include "assess/circuit_text.hpp"
#include "sheet/face_signs.hpp"
#include "sheet/panel_facts.hpp"
#include "sheet/schedule_parts.hpp"
#include "sheet/schedule_words.hpp"
#include "sheet/sheet_foot.hpp"
#include "sheet/sheet_head.hpp"

namespace doorcard {
namespace {

constexpr TypeStyle block_type{7, false, false, true};
constexpr double block_step = 3.15;
constexpr double block_title = 5.2;

std::string bus_text(const ScheduleContent& content) {
    const auto& bus = content.panel().bus_a;
    const Message said = bus ? Message{tr("bus {0:g} A"), {bus->value}} : Message{tr("bus rating not seen"), {}};
    return content.words.say(said) + "; " + fault_text(content.schedule, content.words) + "; " +
           interrupting_text(content.schedule, content.words);
}

std::string main_words(const ScheduleContent& content) {
    std::string text = main_text(content.network, content.schedule.panel, content.words);
    if (content.panel().service.value_or(false)) text += "; " + content.words(tr("service equipment"));
    return text;
}

std::vector<FeedColumn> feed_columns(const ScheduleContent& content) {
    const Words& words = content.words;
    const auto sources = further_sources(content.network, content.schedule.panel);
    const std::string fed = fed_text(content.network, content.schedule.directory, words);
    std::vector<FeedColumn> columns = {{0, 0, words(tr("fed from")),
                                        fed_from_text(content.network, content.schedule.panel, words) + "; " +
                                            conductors_text(content.panel().feeder, words)},
                                       {0, 0, main_caption(content.panel(), words), main_words(content)},
                                       {0, 0, words(tr("panel")), bus_text(content)}};
    if (!sources.empty())
        columns.push_back({0, 0, words(sources.size() == 1 ? tr("second source") : tr("further sources")),
                           further_text(content.network, content.schedule.panel, sources, words)});
    if (!fed.empty()) columns.push_back({0, 0, words(tr("feeds")), fed});
    const double step = content.width() / static_cast<double>(columns.size());
    for (std::size_t i = 0; i < columns.size(); ++i) {
        columns[i].x = content.left() + step * static_cast<double>(i);
        columns[i].width = step - 3;
    }
    return columns;
}

void draw_stroke(Drawing& drawing, const ScheduleContent& content, const std::vector<FeedColumn>& columns, double y) {
    const double bus = columns[2].x, main = columns[1].x;
    const auto kind = content.panel().main;
    const bool own_main = kind == MainKind::breaker || kind == MainKind::fuses || kind == MainKind::split_bus;
    const std::vector<double> dashes =
        content.panel().fed_by.empty() ? std::vector<double>{1.2, 0.9} : std::vector<double>{};
    drawing.line(content.left(), y, bus, y, 0.45, inks::text, dashes);
    arrow_head(drawing, own_main ? main - 0.7 : bus - 0.3, y, true, 2.4);
    if (own_main) draw_stroke_handle(drawing, main, y, true, kind == MainKind::fuses);
    const bool beyond = columns.size() > 3;
    const double bus_end = beyond ? columns[3].x - 5 : content.right();
    drawing.fill({bus, y - 0.7, bus_end - bus, 1.4});
    if (!beyond) return;
    const bool sources = !further_sources(content.network, content.schedule.panel).empty();
    drawing.line(bus_end, y, content.right(), y, 0.45);
    for (std::size_t i = 3; i < columns.size(); ++i) draw_stroke_handle(drawing, columns[i].x, y, false, false);
    if (sources) arrow_head(drawing, columns[3].x + 7.7, y, false, 2.4);
    if (columns.size() > 4 || !sources) arrow_head(drawing, content.right(), y, true, 2.4);
}

}  // namespace

double draw_schedule_head(Drawing& drawing, const ScheduleContent& content, double top) {
    const std::string title = title_and_place(content.panel(), content.words);
    std::string what = content.words(tr("Panel schedule"));
    if (!title.empty()) what += " · " + title;
    const HeadWords words{content.panel().id, what, content.survey().heading.title.value_or(""),
                          system_text(content.network, content.schedule.panel, content.words)};
    return draw_head(drawing, {content.left(), top, content.width(), 0}, words, 22);
}

double draw_schedule_feeds(Drawing& drawing, const ScheduleContent& content, double top) {
    const std::vector<FeedColumn> columns = feed_columns(content);
    draw_stroke(drawing, content, columns, top + 2.6);
    double bottom = top;
    for (const FeedColumn& column : columns) bottom = std::max(bottom, draw_feed_column(drawing, column, top + 5.2));
    return bottom;
}

double draw_schedule_foot(Drawing& drawing, const ScheduleContent& content, double top) {
    const Words& words = content.words;
    const std::string caution = words(tr("Not a permit. Local code and the authority having jurisdiction decide.")) +
                                "  " + words(tr("Off here is not proof of dead. Test before you touch."));
    const TypeStyle style = fitting(caution, {8, true}, content.width(), {8, 7.5, 7, 6.5});
    drawing.text({content.left(), top, content.width(), 4}, top + 2.9, cut_to(caution, style, content.width()), style,
                 Align::left);
    std::vector<FootCell> cells = dated_cells(content.survey(), words);
    cells.push_back(
        {words(tr("page")), words.say({tr("{0:.0f} of {1:.0f}"),
                                       {static_cast<double>(content.page + 1), static_cast<double>(content.pages)}})});
    const std::vector<FootCell> left = {{words(tr("paper")), words(tr("panel schedule"))},
                                        {words(tr("panel")), content.panel().id}};
    return draw_foot_strip(drawing, {content.left(), top + 4.4, content.width(), foot_height}, left,
                           content.schedule.directory, cells, words);
}

FootBlocks foot_blocks(const ScheduleContent& content) {
    const Words& words = content.words;
    const PanelSchedule& schedule = content.schedule;
    std::vector<std::pair<std::string, std::vector<std::string>>> all = {
        {words(tr("Legs")), leg_lines(schedule, words)},
        {words(tr("Panel demand")), demand_lines(schedule, words)},
        {words(tr("Neutrals and spaces")), space_lines(content.network, schedule, words)},
        {words(tr("Not known, assumed")), open_lines(content.network, schedule, words)}};
    all[1].second.push_back(words(tr("≥ at least · – not known · heavy tick 80 % of rating")));
    all[1].second.push_back(words(tr("▼ calculated · ▽ measured, whichever is larger")));
    constexpr double parts[] = {0.235, 0.2, 0.265, 0.3};
    FootBlocks found;
    for (std::size_t i = 0; i < all.size(); ++i) {
        found.widths.push_back(content.width() * parts[i]);
        FootBlock block{all[i].first, {}};
        for (const std::string& text : all[i].second)
            for (const std::string& line : broken_lines(text, block_type, found.widths[i] - 5))
                block.lines.push_back(line);
        found.blocks.push_back(std::move(block));
    }
    return found;
}

double blocks_height(const FootBlocks& blocks) {
    std::size_t most = 0;
    for (const FootBlock& block : blocks.blocks) most = std::max(most, block.lines.size());
    return block_title + 1.4 + block_step * static_cast<double>(most);
}

double draw_blocks(Drawing& drawing, const ScheduleContent& content, FootBlocks& blocks, double top, double height) {
    const auto fit = static_cast<std::size_t>(std::max(1.0, (height - block_title - 1.4) / block_step));
    double x = content.left(), bottom = top;
    for (std::size_t i = 0; i < blocks.blocks.size(); ++i) {
        FootBlock& block = blocks.blocks[i];
        const double width = blocks.widths[i] - (i + 1 < blocks.blocks.size() ? 4 : 0);
        if (block.lines.empty()) {  // all of it stands on the page before
            x += blocks.widths[i];
            continue;
        }
        drawing.text({x, top, width, 5}, top + 3.4, cut_to(block.title, {9, true}, width), {9, true});
        drawing.line(x, top + block_title - 0.4, x + width, top + block_title - 0.4, lines::hair);
        const bool over = block.lines.size() > fit;
        const std::size_t shown = over ? fit - 1 : block.lines.size();
        double baseline = top + block_title + 2.6;
        for (std::size_t n = 0; n < shown; ++n, baseline += block_step)
            drawing.text({x, baseline - 2.6, width, 3.5}, baseline, block.lines[n], block_type);
        if (over) {
            const std::string more = content.words(tr("continued on the next page"));
            drawing.text({x, baseline - 2.6, width, 3.5}, baseline, cut_to(more, {7, true, false, true}, width),
                         {7, true, false, true});
        }
        block.lines.erase(block.lines.begin(), block.lines.begin() + static_cast<std::ptrdiff_t>(shown));
        bottom = std::max(bottom, baseline);
        x += blocks.widths[i];
    }
    return bottom;
}

}  // namespace doorcard
