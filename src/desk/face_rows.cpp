// SPDX-License-Identifier: MIT
#include <algorithm>

#include "desk/face_parts.hpp"
#include "desk/face_words.hpp"
#include "desk/load_scale.hpp"

namespace doorcard {
namespace {

constexpr double under_points = 8, for_hatching = 7, longest_scale = 52;

/// Between a row's rules and its words, mm.
double air(double height) { return height > 9 ? 0.9 : 0.5; }

/// Of figures, whose digits are all as wide: what differs in them alone is measured once.
double figures_width(std::string figures, const TypeStyle& style) {
    for (char& c : figures)
        if (c >= '1' && c <= '9') c = '0';
    return text_width(figures, style);
}

bool is_unknown(const DirectoryRow& row) {
    return row.kind == RowKind::not_traced || row.kind == RowKind::not_described;
}

/// Where nobody knows what is on it, hatching says so: a load is shown once there is one.
const RowLoad* load_shown(const FaceFacts& facts, const DirectoryRow& row) {
    const RowLoad* load = facts.load_of(row);
    return load && (load->most() || !is_unknown(row)) ? load : nullptr;
}

std::string planned_at(const FaceLook& look, const DirectoryRow& row) {
    for (const PlannedMark& mark : look.planned)
        if (!mark.to.empty() && std::ranges::find(row.positions, mark.to.front()) != row.positions.end())
            return mark.words;
    return {};
}

TypeStyle planned_style(const std::string& words, double width) {
    TypeStyle style{under_points, true};
    style.condensed = text_width(words, style) > width;
    return style;
}

/// How the words of a row are set into its room.
struct RowSetting {
    TypeStyle style;
    std::vector<std::string> lines;
    std::vector<std::string> under;  ///< smaller, below
    std::string planned;             ///< likewise, last
    bool has_scale = false;          ///< a line of its own for the load
    double to_scale = 4.1;           ///< from the last baseline to the figures'
    double below_scale = 0.7;

    double height() const {
        double sum = cap_height(style.points) + static_cast<double>(lines.size() - 1) * line_advance(style.points) +
                     static_cast<double>(under.size() + !planned.empty()) * line_advance(under_points);
        return sum + (has_scale ? to_scale + below_scale : descent(style.points));
    }
};

/// Finds the setting that fits a row's room best: large type first, whole words before a scale of their own.
class Setting {
public:
    Setting(const FaceCanvas& canvas, const DirectoryRow& row, double width)
        : text_(canvas.words.say(row.text)),
          under_(canvas.words.say(row.under)),
          planned_(planned_at(canvas.look, row)),
          load_(load_shown(canvas.facts, row)),
          is_wary_(row.kind == RowKind::off || is_unknown(row)),
          width_(is_unknown(row) ? width - for_hatching : width) {
        style_.bold = is_unknown(row);
        style_.italic = row.claimed && !style_.bold;
    }

    RowSetting in(double height) const {
        for (const double points : {10.5, 9.5, 9.0, 8.5, 8.0}) {
            RowSetting one = set(points, 2);
            if (one.height() <= height) return one;
            if (one = set(points, 1); is_whole(one) && one.height() <= height) return one;
        }
        RowSetting least = set(8.5, 1);
        if (least.height() > height) least.has_scale = false;
        return least;
    }

    /// One line, the load, and what stands below; what is to be treated as live is never cut short.
    double least() const { return set(8.5, is_wary_ ? 2 : 1).height() + 1.8; }

private:
    RowSetting set(double points, std::size_t most) const {
        RowSetting one;
        one.style = style_;
        one.style.points = points;
        one.has_scale = load_ != nullptr;
        if (load_ && load_->calculated && load_->measured) one.below_scale = 1.4;
        one.to_scale = points > 9.2 ? 4.1 : 3.5;
        if (!planned_.empty()) one.planned = cut_to(planned_, planned_style(planned_, width_), width_);
        if (!under_.empty()) one.under = broken_lines(under_, {under_points}, width_, 2);
        const bool fits = text_width(text_, one.style) <= width_;
        if (!fits && most == 1 && !one.style.italic) one.style.condensed = true;
        one.lines = fits ? std::vector{text_} : even_lines(text_, one.style, width_, most);
        if (one.lines.empty()) one.lines.emplace_back();
        return one;
    }
    bool is_whole(const RowSetting& one) const { return one.lines.size() == 1 && one.lines.front() == text_; }

    std::string text_, under_, planned_;
    const RowLoad* load_;
    bool is_wary_;
    double width_;
    TypeStyle style_;
};

/// Draws one row between its number and its handle.
class RowPicture {
public:
    RowPicture(FaceCanvas& canvas, FacePainting& painting, const FaceRun& run, const FacePlace& place)
        : canvas_(canvas),
          painting_(painting),
          drawing_(canvas.drawing),
          run_(run),
          place_(place),
          row_(canvas.face.entry(run.entry)),
          load_(load_shown(canvas.facts, row_)) {
        const FaceColumns& columns = canvas.columns();
        text_ = {columns.text_x(place.left), place.y + place.pad_top, columns.text_width(), place.free()};
        if (is_to_throw()) {
            text_.width -= throw_mark;
            if (!place.left) text_.x += throw_mark;
        }
        noted_.text = text_;
    }

    FaceRowPlace draw() {
        note();
        draw_signs();
        const double around = air(text_.height);
        text_.y += around;
        text_.height -= 2 * around;
        if (text_.height < 6) {
            draw_low();
            return noted_;
        }
        const RowSetting set = Setting(canvas_, row_, text_.width).in(text_.height);
        if (load_ && !set.has_scale) {
            draw_low();
            return noted_;
        }
        const double baseline = draw_lines(set);
        if (!set.has_scale) return noted_;
        const double base = baseline + set.to_scale;
        draw_load(base, {text_.x, base - 2.5, text_.width, 2.5 + set.below_scale});
        return noted_;
    }

private:
    bool is_to_throw() const {
        return std::ranges::find_first_of(canvas_.look.to_throw, row_.positions) != canvas_.look.to_throw.end();
    }

    void note() {
        const int side = place_.left ? 0 : 1;
        const auto& cells = canvas_.face.cells[side];
        noted_.position = row_.positions.front();
        for (std::size_t i = run_.first; i <= run_.last; ++i) noted_.positions.push_back(cells[i].position);
        const double middle = canvas_.columns().legs_x() +
                              (canvas_.columns().single ? canvas_.columns().legs : canvas_.columns().legs / 2);
        noted_.row = {place_.left ? 0 : middle, place_.y, place_.left ? middle : canvas_.look.width - middle,
                      place_.height};
        noted_.handle = painting_.device_frame(place_.left, place_.y, place_.height);
    }

    // --- signs: below the number where there is room, else before the words
    void draw_signs() {
        if (place_.sign_beside) {
            painting_.paint_sign(row_, text_.x, place_.y + (place_.height - sign_height) / 2, place_.left);
            give_way(sign_width(row_));
        }
        const RowFinding* found = canvas_.facts.finding_of(row_);
        if (!found || found->severity == Severity::notice) return;
        const bool has_sign = sign_width(row_) > 0 && !place_.sign_beside;
        const double way = has_sign ? FacePainting::sign_box(row_) + 0.7 : 0;
        const bool is_below = first_cell_free() >= 8.4 && way + finding_sign <= canvas_.columns().number - 0.4;
        if (!is_below) {
            draw_finding_sign(drawing_, found->severity, text_.x, place_.y + place_.pad_top + 0.7);
            return give_way(finding_sign + 1.1);
        }
        const double x = place_.left ? canvas_.columns().left + way : canvas_.columns().right - way - finding_sign;
        draw_finding_sign(drawing_, found->severity, x, number_line() + 0.8);
    }
    double first_cell_free() const {
        const FaceCell& cell = canvas_.face.cells[place_.left ? 0 : 1][run_.first];
        return cell.height - cell.pad_top - cell.pad_bottom;
    }
    void give_way(double width) {
        text_.x += width;
        text_.width -= width;
    }

    // --- words
    Ink ink() const {
        if (row_.fire_alarm) return inks::fire;
        const bool is_quiet =
            row_.kind == RowKind::space || row_.kind == RowKind::not_seen || row_.kind == RowKind::spare;
        return is_quiet ? inks::caption : inks::text;
    }

    double number_line() const { return place_.y + place_.number_top + cap_height(canvas_.face.style.number); }

    /// The first line stands on the number's where there is room; returns the last baseline.
    double draw_lines(const RowSetting& set) {
        const double spare = std::max(0.0, text_.height - set.height());
        const double top = std::clamp(number_line() - cap_height(set.style.points), text_.y, text_.y + spare);
        double baseline = top + cap_height(set.style.points), widest = 0;
        for (const std::string& line : set.lines) {
            widest = std::max(widest, draw_line(line, set.style, baseline, ink()));
            baseline += line_advance(set.style.points);
        }
        baseline -= line_advance(set.style.points);
        for (const std::string& line : set.under) {
            baseline += line_advance(under_points);
            draw_line(line, {under_points}, baseline, inks::caption);
        }
        if (is_unknown(row_)) draw_unknown(widest, top, baseline);
        if (!set.planned.empty()) {
            baseline += line_advance(under_points);
            draw_line(set.planned, planned_style(set.planned, text_.width), baseline, inks::accent);
        }
        return baseline;
    }

    double draw_line(const std::string& text, const TypeStyle& style, double baseline, Ink with,
                     bool is_dotted = true) {
        const Frame room{text_.x, baseline - cap_height(style.points) - 1.1, text_.width,
                         cap_height(style.points) + 2.2};
        drawing_.text(room, baseline, text, style, Align::left, with);
        const double width = text_width(text, style);
        if (style.italic && is_dotted) drawing_.dotted(text_.x, baseline, width, with);
        return width;
    }

    // Hatching fills what the words leave.
    void draw_unknown(double words, double top, double baseline) {
        const double x = text_.x + words + 1.8, width = text_.right() - x - 0.6;
        if (width > 3.5) drawing_.hatching({x, top - 0.4, width, baseline - top + 0.9});
    }

    // --- the load
    void draw_load(double baseline, const Frame& room) {
        draw_figures(baseline);
        draw_load_scale(
            drawing_, *load_,
            {room.x, room.y, std::min(room.width - canvas_.figures_width - 1.6, longest_scale), room.height});
    }

    // They stand at the right edge of the words.
    void draw_figures(double baseline) {
        const double share = load_->share().value_or(0);
        TypeStyle style = canvas_.figures;
        style.bold = share > 0.8;
        const std::string figures = figures_words(*load_, canvas_.words);
        const double width = figures_width(figures, style), cap = cap_height(style.points);
        noted_.figures = {text_.right() - width - 0.1, baseline - cap - 0.4, width + 0.1, cap + 1.3};
        drawing_.text(noted_.figures, baseline, figures, style, Align::right, share > 1 ? inks::danger : inks::text);
    }

    // Half a space: words and figures in one line, the scale below the words where there is room.
    void draw_low() {
        const bool has_scale = load_ && text_.height > 4.4;
        const double points = text_.height > 5 ? 9 : 8.5;
        const double block = cap_height(points) + (has_scale ? 2.7 : 0.3);
        const double baseline = text_.y + std::max(0.0, (text_.height - block) / 2) + cap_height(points);
        if (load_) draw_figures(baseline);
        const Frame room{text_.x, text_.y,
                         text_.width - (load_              ? canvas_.figures_width + 1.6
                                        : is_unknown(row_) ? 7
                                                           : 0),
                         text_.height};
        TypeStyle style{points, is_unknown(row_), row_.claimed && !is_unknown(row_)};
        const std::string text = low_text();
        if (text_width(text, style) > room.width && !style.italic) style.condensed = true;
        const double width = draw_line(cut_to(text, style, room.width), style, baseline, ink(), !has_scale);
        if (is_unknown(row_) && !load_)
            drawing_.hatching({room.x + width + 1.5, room.y + 0.2, text_.width - width - 2, room.height - 0.4});
        if (has_scale) draw_load_scale(drawing_, *load_, {room.x, baseline + 0.8, room.width, 2.3});
    }

    std::string low_text() const {
        std::string text = canvas_.words.say(row_.text);
        if (!row_.under.empty()) text += "; " + canvas_.words.say(row_.under);
        const std::string planned = planned_at(canvas_.look, row_);
        return planned.empty() ? text : planned + "; " + text;
    }

    FaceCanvas& canvas_;
    FacePainting& painting_;
    Drawing& drawing_;
    const FaceRun& run_;
    const FacePlace& place_;
    const DirectoryRow& row_;
    const RowLoad* load_;
    Frame text_;
    FaceRowPlace noted_;
};

}  // namespace

void set_figures(FaceCanvas& canvas) {
    const auto widest = [&](const TypeStyle& style) {
        double most = 0;
        for (const auto& [id, load] : canvas.facts.loads)
            most = std::max(most, figures_width(figures_words(load, canvas.words), style));
        return most;
    };
    canvas.figures = {8.5, true};
    if (widest(canvas.figures) > canvas.columns().text_width() * 0.42) canvas.figures = {8, true, false, true};
    canvas.figures_width = widest(canvas.figures);
    canvas.figures.bold = false;
}

double needed_height(const FaceCanvas& canvas, const FaceRun& run) {
    const DirectoryRow& row = canvas.face.entry(run.entry);
    const bool is_half =
        run.first == run.last && canvas.face.cells[0].size() > run.first && row.positions.front().half != ' ';
    const RowLoad* load = load_shown(canvas.facts, row);
    const bool is_plain = row.under.empty() && planned_at(canvas.look, row).empty();
    if (is_half || (is_plain && !(load && load->calculated && load->measured))) return 0;
    return Setting(canvas, row, canvas.columns().text_width() - sign_width(row)).least();
}

FaceRowPlace draw_face_row(FaceCanvas& canvas, FacePainting& painting, const FaceRun& run, const FacePlace& place) {
    return RowPicture(canvas, painting, run, place).draw();
}

// A shape for each word: danger a triangle in a square, warning a triangle, caution a square on its point.
void draw_finding_sign(Drawing& drawing, Severity severity, double x, double y) {
    const double size = finding_sign, middle = x + size / 2;
    const bool is_danger = severity == Severity::danger, is_caution = severity == Severity::caution;
    const std::vector<std::pair<double, double>> triangle{
        {middle, y + (is_danger ? 0.35 : 0)},
        {x + size - (is_danger ? 0.3 : 0), y + size - (is_danger ? 0.35 : 0.1)},
        {x + (is_danger ? 0.3 : 0), y + size - (is_danger ? 0.35 : 0.1)}};
    if (is_danger) drawing.fill({x, y, size, size}, inks::danger);
    if (is_caution)
        drawing.shape({{middle, y}, {x + size, y + size / 2}, {middle, y + size}, {x, y + size / 2}}, inks::caution);
    else
        drawing.shape(triangle, is_danger ? inks::paper : inks::warning);
    const Ink stroke = is_danger ? inks::danger : inks::black;
    const double top = y + (is_caution ? 0.65 : 1.15);
    drawing.line(middle, top, middle, top + 1.05, 0.42, stroke);
    drawing.line(middle, top + 1.3, middle, top + 1.68, 0.42, stroke);
}

}  // namespace doorcard
