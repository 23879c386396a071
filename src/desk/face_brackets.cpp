// SPDX-License-Identifier: MIT
#include <algorithm>

#include "desk/face_parts.hpp"
#include "desk/face_words.hpp"

namespace doorcard {
namespace {

constexpr double gap = 0.7, first_depth = 1.8, lane_step = 1.5;  // from the numbers outward, mm
constexpr double rule_pad = 1.35, end_pad = 2.6;                 // kept free for words about a rule, or above the last
constexpr double label_points = 8;

double depth_of(std::size_t lane) { return gap + first_depth + lane_step * static_cast<double>(lane); }

/// Finds the brackets of a face.
class Bracketing {
public:
    explicit Bracketing(FaceCanvas& canvas) : canvas_(canvas) {}

    std::vector<FaceBracket> brackets() {
        for (const FaceNeutral& neutral : canvas_.face.neutrals) add(neutral);
        std::ranges::stable_sort(found_, {}, [](const FaceBracket& one) { return one.last() - one.first(); });
        for (std::size_t i = 0; i < found_.size(); ++i) {
            set_lane(i);
            place_words(i);
        }
        for (const FaceBracket& one : found_) keep_free(one);
        return std::move(found_);
    }

private:
    void add(const FaceNeutral& neutral) {
        const auto facts = canvas_.facts.neutrals.find(neutral.id);
        if (facts == canvas_.facts.neutrals.end()) return;
        const Message handles = handles_message(canvas_.facts, neutral.breakers);
        for (const int side : {0, 1}) {
            FaceBracket bracket{side, runs_of(side, neutral), 0, {}, {}, 0, facts->second.is_danger()};
            bracket.words = neutral_words(facts->second, handles, canvas_.words);
            bracket.short_words = short_neutral_words(facts->second, handles, canvas_.words);
            if (!bracket.runs.empty()) found_.push_back(std::move(bracket));
        }
    }

    std::vector<std::size_t> runs_of(int side, const FaceNeutral& neutral) const {
        std::vector<std::size_t> runs;
        for (std::size_t i = 0; i < canvas_.face.runs[side].size(); ++i)
            if (std::ranges::find(neutral.entries, canvas_.face.runs[side][i].entry) != neutral.entries.end())
                runs.push_back(i);
        return runs;
    }

    // Short ones lie inside, long ones around them.
    void set_lane(std::size_t at) {
        FaceBracket& one = found_[at];
        const auto is_taken = [&](const FaceBracket& other) {
            return other.side == one.side && other.lane == one.lane && other.first() <= one.last() &&
                   one.first() <= other.last();
        };
        while (std::any_of(found_.begin(), found_.begin() + static_cast<std::ptrdiff_t>(at), is_taken)) ++one.lane;
    }

    // Below its first row, or where other words stand there, below the next that is free, else above.
    void place_words(std::size_t at) {
        FaceBracket& one = found_[at];
        const auto before = found_.begin() + static_cast<std::ptrdiff_t>(at);
        const auto is_free = [&](std::size_t below) {
            return std::none_of(found_.begin(), before, [&](const FaceBracket& other) {
                return other.side == one.side && other.below == below;
            });
        };
        const std::size_t count = canvas_.face.runs[one.side].size();
        one.below = one.first();
        while (one.below + 1 < count && !is_free(one.below)) ++one.below;
        while (one.below > 0 && !is_free(one.below)) --one.below;
    }

    void keep_free(const FaceBracket& one) {
        const auto& runs = canvas_.face.runs[one.side];
        auto& cells = canvas_.face.cells[one.side];
        const bool is_last = one.below + 1 == runs.size();
        cells[runs[one.below].last].pad_bottom = is_last ? end_pad : rule_pad;
        if (!is_last) cells[runs[one.below + 1].first].pad_top = rule_pad;
    }

    FaceCanvas& canvas_;
    std::vector<FaceBracket> found_;
};

/// Draws one bracket with its words.
class BracketPicture {
public:
    BracketPicture(FaceCanvas& canvas, const FacePainting& painting, const FaceBracket& one)
        : canvas_(canvas),
          painting_(painting),
          one_(one),
          is_left_(one.side == 0),
          ink_(one.is_danger ? inks::danger : inks::text),
          edge_(is_left_ ? canvas.columns().left : canvas.columns().right) {}

    void draw() {
        const std::vector<double> teeth = teeth_of();
        const double back = out(depth_of(one_.lane));
        for (const double y : teeth) {
            if (one_.lane > 0)  // a hop: what it crosses is broken, it is not
                canvas_.drawing.line(out(gap), y, out(depth_of(one_.lane) - 0.6), y, 1.5, inks::paper);
            canvas_.drawing.line(out(gap), y, back, y, lines::heavy, ink_);
        }
        constexpr double half = lines::heavy / 2;
        canvas_.drawing.line(back, teeth.front() - half, back, teeth.back() + half, lines::heavy, ink_);
        draw_words();
    }

private:
    double out(double way) const { return is_left_ ? edge_ - way : edge_ + way; }

    // At the number of each space that belongs to it.
    std::vector<double> teeth_of() const {
        std::vector<double> teeth;
        const double cap = cap_height(canvas_.face.style.number);
        for (const std::size_t at : one_.runs) {
            const FaceRun& run = canvas_.face.runs[one_.side][at];
            for (std::size_t i = run.first; i <= run.last; ++i) {
                const FaceCell& cell = canvas_.face.cells[one_.side][i];
                teeth.push_back(cell.y + painting_.number_top(one_.side, cell) + cap / 2);
            }
        }
        return teeth;
    }

    void draw_words() {
        const FaceColumns& columns = canvas_.columns();
        const auto& runs = canvas_.face.runs[one_.side];
        const double rule = canvas_.face.cells[one_.side][runs[one_.below].last].bottom();
        const bool is_last = one_.below + 1 == runs.size();
        const double y = is_last ? rule - end_pad / 2 : rule;
        const auto [text, style] = words_in(columns.number + columns.text_width() - 0.4);
        const double width = text_width(text, style), height = 2.5;
        const double x = is_left_ ? columns.left : columns.right - width;
        canvas_.drawing.fill({is_left_ ? x - 0.3 : x - 0.9, y - height / 2, width + 1.2, height}, inks::paper);
        canvas_.drawing.text({x - 0.1, y - height / 2 - 0.2, width + 0.2, height + 0.6},
                             y + cap_height(style.points) / 2, text, style, Align::left,
                             one_.is_danger ? inks::danger : inks::text);
    }

    // Narrower letters first, then fewer words; what is wrong is never cut off.
    std::pair<std::string, TypeStyle> words_in(double room) const {
        const TypeStyle wide{label_points, one_.is_danger}, narrow{7.5, one_.is_danger, false, true};
        for (const std::string* words : {&one_.words, &one_.short_words})
            for (const TypeStyle& style : {wide, narrow})
                if (text_width(*words, style) <= room) return {*words, style};
        const TypeStyle least = fitting(one_.short_words, narrow, room, {7, 6.5, 6});
        return {cut_to(one_.short_words, least, room), least};
    }

    FaceCanvas& canvas_;
    const FacePainting& painting_;
    const FaceBracket& one_;
    bool is_left_;
    Ink ink_;
    double edge_;
};

}  // namespace

std::vector<FaceBracket> face_brackets(FaceCanvas& canvas) { return Bracketing(canvas).brackets(); }

double bracket_margin(const std::vector<FaceBracket>& brackets, int side) {
    double most = 0;
    for (const FaceBracket& one : brackets)
        if (one.side == side) most = std::max(most, depth_of(one.lane) + 0.9);
    return most;
}

void draw_brackets(FaceCanvas& canvas, const FacePainting& painting, const std::vector<FaceBracket>& brackets) {
    for (const FaceBracket& one : brackets) BracketPicture(canvas, painting, one).draw();
}

}  // namespace doorcard
