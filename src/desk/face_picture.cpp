// SPDX-License-Identifier: MIT
#include "desk/face_picture.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "desk/face_words.hpp"
#include "sheet/face_painting.hpp"
#include "sheet/panel_facts.hpp"

namespace doorcard {
namespace {

constexpr double margin = 5.2;      // for brackets
constexpr double head_height = 13;  // title and facts
constexpr double main_height = 10.5;
constexpr double figures_width = 19;

/// Draws one face.
class Picture {
public:
    Picture(const FaceFacts& facts, const FaceLook& look, const Words& words)
        : facts_(facts), look_(look), words_(words), drawing_(picture_.page) {}

    FacePicture picture() {
        face_ = hung_face(facts_.network, facts_.panel, margin, look_.width - margin, columns(), style());
        color_neutrals();
        set_heights(face_, [](const FaceRun&) { return 0.0; });
        const bool main_below = facts_.panel_of().main_at == "bottom";
        draw_head();
        double top = head_height + 1.5;
        if (has_main() && !main_below) top = draw_main(top);
        const double rest = (has_main() && main_below ? main_height : 0) + 2;
        const double bottom = place_cells(face_, {1, face_.rows}, top, look_.height - top - rest);
        draw_selection();
        FacePainting painting(drawing_, facts_.network, words_, face_, {1, face_.rows});
        painting.paint(top, bottom,
                       [&](const FaceRun& run, const FacePlace& place) { draw_row(painting, run, place); });
        draw_neutral_words();
        draw_drop_target();
        draw_planned();
        double end = bottom + 2;
        if (has_main() && main_below) end = draw_main(bottom + 2);
        picture_.page.paper = {look_.width, end};
        return std::move(picture_);
    }

private:
    static FaceColumns columns() {
        FaceColumns widths;
        widths.number = 8.4;
        widths.handle = 14.2;
        widths.legs = 7;
        return widths;
    }
    FaceStyle style() const {
        FaceStyle style;
        style.number = 11.5;
        style.rating = 11;
        style.leg = 10;
        style.least_row = look_.least_row;
        style.usual_row = look_.usual_row;
        style.half_row = look_.least_row * 0.8;
        return style;
    }

    void color_neutrals() {
        for (FaceNeutral& neutral : face_.neutrals)
            if (const auto found = facts_.neutrals.find(neutral.id);
                found != facts_.neutrals.end() && found->second.is_on_one_leg)
                neutral.ink = inks::danger;
    }

    // --- head and main
    void draw_head() {
        const Panel& panel = facts_.panel_of();
        const std::string title = panel.title.value_or(panel.id);
        const TypeStyle bold{14, true};
        const double width = look_.width - 2 * margin;
        drawing_.text({margin, 0, width, 7}, 6, cut_to(title, bold, width), bold);
        const std::string traced = traced_words(facts_, words_);
        const double traced_width = text_width(traced, {9});
        drawing_.text({margin, 7, width, 5}, 11, traced, {9}, Align::right, inks::caption);
        const std::string about = panel_words(facts_, words_);
        drawing_.text({margin, 7, width, 5}, 11, cut_to(about, {9}, width - traced_width - 4), {9}, Align::left,
                      inks::caption);
    }

    bool has_main() const {
        const auto& main = facts_.panel_of().main;
        return main == MainKind::breaker || main == MainKind::fuses;
    }

    // The main stands across the legs, where it is.
    double draw_main(double top) {
        const Panel& panel = facts_.panel_of();
        const double middle = face_.columns.legs_x() + face_.columns.legs / 2;
        const double width = 26;
        const Frame frame{middle - width / 2, top + 0.8, width, main_height - 2.4};
        Handle handle;
        handle.fuse = panel.main == MainKind::fuses;
        handle.rating = panel.main_a ? fmt::format("{:g}", panel.main_a->value) : "–";
        draw_handle(drawing_, frame, handle, 12, words_(tr("OFF")));
        const std::string name = words_(handle.fuse ? tr("main fuses") : tr("main"));
        drawing_.text({margin, frame.y, frame.x - margin - 2, frame.height}, frame.y + frame.height / 2 + 1.2, name,
                      {9.5, true}, Align::right, inks::caption);
        return top + main_height;
    }

    // --- rows
    void draw_row(FacePainting& painting, const FaceRun& run, const FacePlace& place) {
        const DirectoryRow& row = face_.entry(run.entry);
        Frame text{face_.columns.text_x(place.left), place.y, face_.columns.text_width(), place.height};
        note_place(run, place, row, text);
        if (place.sign_beside) {
            const double x = place.left ? text.x : text.right() - FacePainting::sign_box(row);
            painting.paint_sign(row, x, place.y + 1.2, place.left);
            text.width -= sign_width(row);
            if (place.left) text.x += sign_width(row);
        }
        if (const auto sign = finding_of(row)) {
            draw_finding(*sign, text.right() - 3.6, place.y + 1.2);
            text.width -= 4.6;
        }
        if (row.kind == RowKind::not_traced || row.kind == RowKind::not_described) return draw_unknown(row, text);
        place.height >= 11 && row.breaker ? draw_two_lines(row, text) : draw_one_line(row, text);
    }

    void note_place(const FaceRun& run, const FacePlace& place, const DirectoryRow& row, const Frame& text) {
        const auto& cells = face_.cells[place.left ? 0 : 1];
        const double outer = place.left ? 0 : face_.columns.legs_x() + face_.columns.legs;
        const double inner = place.left ? face_.columns.legs_x() : look_.width;
        FaceRowPlace noted{cells[run.first].position, {}, {outer, place.y, inner - outer, place.height}, text};
        for (std::size_t i = run.first; i <= run.last; ++i) noted.positions.push_back(cells[i].position);
        if (!run.leads) noted.position = row.positions.front();
        picture_.places.push_back(std::move(noted));
    }

    std::optional<Severity> finding_of(const DirectoryRow& row) const {
        if (!row.breaker) return std::nullopt;
        const auto found = facts_.worst.find(facts_.network.survey().breakers[*row.breaker].id);
        return found == facts_.worst.end() ? std::nullopt : std::optional(found->second);
    }

    // A triangle on its point up, with a stroke: its colour says the word that the drawer writes.
    void draw_finding(Severity severity, double x, double y) {
        const Ink fill = severity == Severity::danger    ? inks::danger
                         : severity == Severity::warning ? inks::warning
                                                         : inks::caution;
        const Ink stroke = severity == Severity::danger ? inks::paper : inks::black;
        drawing_.shape({{x + 1.75, y}, {x + 3.5, y + 3.1}, {x, y + 3.1}}, fill);
        drawing_.line(x + 1.75, y + 1.0, x + 1.75, y + 2.2, 0.42, stroke);
        drawing_.line(x + 1.75, y + 2.45, x + 1.75, y + 2.8, 0.42, stroke);
    }

    TypeStyle style_of(const DirectoryRow& row) const {
        TypeStyle style{10.5};
        style.italic = row.claimed;
        return style;
    }
    static Ink ink_of(const DirectoryRow& row) {
        if (row.fire_alarm) return inks::fire;
        const bool is_faint = row.kind == RowKind::space || row.kind == RowKind::not_seen || row.kind == RowKind::spare;
        return is_faint ? inks::caption : inks::text;
    }

    void draw_unknown(const DirectoryRow& row, const Frame& text) {
        const TypeStyle style = fitting(words_.say(row.text), {10, true}, text.width, {10, 9, 8});
        const std::string words = cut_to(words_.say(row.text), style, text.width);
        const double width = text_width(words, style);
        drawing_.text(text, text.y + text.height / 2 + cap_height(style.points) / 2, words, style);
        if (text.width - width > 4)
            drawing_.hatching({text.x + width + 1.5, text.y + 1.3, text.width - width - 2, text.height - 2.6});
    }

    void draw_one_line(const DirectoryRow& row, const Frame& text) {
        const RowLoad* load = load_of(row);
        const std::string figures = load ? figures_words(*load, words_) : "";
        const double for_figures = figures.empty() ? 0 : text_width(figures, {8.5}) + 1.5;
        const double baseline = text.y + text.height / 2 + cap_height(10) / 2;
        const std::string words = cut_to(words_.say(row.text), style_of(row), text.width - for_figures);
        drawing_.text(text, baseline, words, style_of(row), Align::left, ink_of(row));
        if (row.claimed) drawing_.dotted(text.x, baseline, text_width(words, style_of(row)));
        if (load) draw_figures(*load, text, baseline, figures);
    }

    void draw_two_lines(const DirectoryRow& row, const Frame& text) {
        const double block = 8.4;
        const double first = text.y + std::clamp((text.height - block) / 2, 0.6, 2.2) + cap_height(10.5) + 0.4;
        const std::string words = cut_to(words_.say(row.text), style_of(row), text.width);
        drawing_.text(text, first, words, style_of(row), Align::left, ink_of(row));
        if (row.claimed) drawing_.dotted(text.x, first, text_width(words, style_of(row)));
        const RowLoad* load = load_of(row);
        if (!load || !load->rating) return;
        const double baseline = first + 4.9;
        draw_figures(*load, text, baseline, figures_words(*load, words_));
        draw_scale(*load, {text.x, baseline - 2.7, text.width - figures_width, 3.2});
    }

    const RowLoad* load_of(const DirectoryRow& row) const {
        if (!row.breaker || row.kind == RowKind::spare || row.kind == RowKind::off) return nullptr;
        const auto found = facts_.loads.find(facts_.network.survey().breakers[*row.breaker].id);
        return found == facts_.loads.end() ? nullptr : &found->second;
    }

    void draw_figures(const RowLoad& load, const Frame& text, double baseline, const std::string& figures) {
        const bool over = share_of(load).value_or(0) > 1;
        drawing_.text({text.x, text.y, text.width - 0.8, text.height}, baseline, figures, {8.5, over}, Align::right,
                      over ? inks::danger : inks::caption);
    }

    // 0 to 100 % of the rating with the heavy tick at 80; filled: calculated, hollow: measured.
    void draw_scale(const RowLoad& load, const Frame& at) {
        if (at.width < 10) return;
        const double base = at.bottom();
        drawing_.line(at.x, base, at.right(), base, lines::row, inks::caption);
        for (const double tick : {0.0, 0.2, 0.4, 0.6, 1.0})
            drawing_.line(at.x + tick * at.width, base - 0.8, at.x + tick * at.width, base, lines::row, inks::caption);
        drawing_.line(at.x + 0.8 * at.width, base - 2.6, at.x + 0.8 * at.width, base + 0.4, lines::heavy);
        if (load.calculated) draw_pointer(load.calculated->value / load.rating->value, at, true);
        if (load.measured) draw_pointer(load.measured->value / load.rating->value, at, false);
    }

    void draw_pointer(double share, const Frame& at, bool filled) {
        const bool over = share > 1;
        const Ink ink = over ? inks::danger : inks::text;
        const double x = at.x + std::min(share, 1.0) * at.width, tip = at.bottom() - 0.1;
        std::vector<std::pair<double, double>> points{{x - 1.15, tip - 2.1}, {x + 1.15, tip - 2.1}, {x, tip}};
        if (over) points = {{x - 0.4, tip - 2.5}, {x + 1.8, tip - 1.35}, {x - 0.4, tip - 0.2}};
        filled ? drawing_.shape(points, ink) : drawing_.outline(points, lines::outline, ink);
    }

    // --- neutrals: their words on the rule below the uppermost of their rows
    void draw_neutral_words() {
        for (const FaceNeutral& neutral : face_.neutrals) {
            const auto found = facts_.neutrals.find(neutral.id);
            if (found == facts_.neutrals.end()) continue;
            if (const auto place = uppermost(neutral)) draw_on_rule(neutral, found->second, *place);
        }
    }

    const FaceRowPlace* find_place(Position position) const {
        const auto found = std::ranges::find_if(picture_.places, [&](const FaceRowPlace& place) {
            return std::ranges::find(place.positions, position) != place.positions.end();
        });
        return found == picture_.places.end() ? nullptr : &*found;
    }

    std::optional<Frame> uppermost(const FaceNeutral& neutral) const {
        std::optional<Frame> best;
        for (const std::size_t entry : neutral.entries)
            if (const FaceRowPlace* place = find_place(face_.entry(entry).positions.front());
                place && (!best || place->row.y < best->y))
                best = Frame{place->text.x, place->row.y, place->text.width, place->row.height};
        return best;
    }

    void draw_on_rule(const FaceNeutral& neutral, const RowNeutral& facts, const Frame& row) {
        std::vector<Message::Part> spaces;
        for (const std::size_t entry : neutral.entries) spaces.emplace_back(name_of(face_.entry(entry).positions));
        const std::string words = cut_to(neutral_words(facts, and_list(std::move(spaces)), words_), {8}, row.width);
        const TypeStyle style{8, facts.is_on_one_leg};
        const double width = text_width(words, style), x = row.x, y = row.bottom();
        drawing_.fill({x - 0.5, y - 1.5, width + 1.0, 3.0}, inks::paper);
        drawing_.text({x, y - 2, row.width, 4}, y + cap_height(8) / 2, words, style, Align::left,
                      facts.is_on_one_leg ? inks::danger : inks::caption);
    }

    // --- what is chosen, dragged, planned
    Frame frame_of(Position position) const {
        for (const int side : {0, 1})
            for (const FaceRun& run : face_.runs[side])
                for (std::size_t i = run.first; i <= run.last; ++i)
                    if (face_.cells[side][i].position == position) return run_frame(side, run);
        return {};
    }
    Frame run_frame(int side, const FaceRun& run) const {
        const auto& cells = face_.cells[side];
        const double x = side == 0 ? 1.2 : face_.columns.legs_x() + face_.columns.legs;
        const double right = side == 0 ? face_.columns.legs_x() : look_.width - 1.2;
        return {x, cells[run.first].y, right - x, cells[run.last].bottom() - cells[run.first].y};
    }

    void draw_selection() {
        if (!look_.selected) return;
        const Frame frame = frame_of(*look_.selected);
        if (frame.height <= 0) return;
        const double line = look_.selected_has_focus ? 0.75 : 0.3;
        drawing_.box({frame.x + 0.3, frame.y + 0.3, frame.width - 0.6, frame.height - 0.6}, line, std::nullopt,
                     inks::accent);
    }

    void draw_drop_target() {
        if (!look_.drop_target) return;
        const Frame frame = frame_of(*look_.drop_target);
        drawing_.box(frame, 0.75, std::nullopt, inks::accent);
        const double y = frame.y + frame.height / 2;
        drawing_.shape({{frame.x, y - 1.6}, {frame.x + 2.8, y}, {frame.x, y + 1.6}}, inks::accent);
    }

    void draw_planned() {
        for (const PlannedMark& mark : look_.planned)
            for (const Position position : mark.at) {
                const Frame frame = frame_of(position);
                if (frame.height <= 0) continue;
                drawing_.box({frame.x + 1, frame.y + 0.9, frame.width - 2, frame.height - 1.8}, 0.4, std::nullopt,
                             inks::accent, {1.6, 1.1});
                const TypeStyle style{8, false, true};
                const std::string words = cut_to(mark.words, style, frame.width - 6);
                const double y = frame.bottom() - 1.4;
                drawing_.fill({frame.x + 10, y - 2.4, text_width(words, style) + 1, 3}, inks::paper);
                drawing_.text({frame.x + 10.5, y - 3, frame.width, 4}, y, words, style, Align::left, inks::accent);
                break;
            }
    }

    const FaceFacts& facts_;
    const FaceLook& look_;
    const Words& words_;
    FacePicture picture_;
    Drawing drawing_;
    PanelFace face_;
};

}  // namespace

std::optional<Position> FacePicture::at(double x, double y) const {
    for (const FaceRowPlace& place : places)
        if (x >= place.row.x && x <= place.row.right() && y >= place.row.y && y < place.row.bottom())
            return place.position;
    return std::nullopt;
}

FacePicture face_picture(const FaceFacts& facts, const FaceLook& look, const Words& words) {
    return Picture(facts, look, words).picture();
}

}  // namespace doorcard
