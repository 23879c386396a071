// SPDX-License-Identifier: MIT
#include "file/schedule_line.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <charconv>

#include "base/words.hpp"
#include "file/enum_words.hpp"
#include "file/list_cells.hpp"
#include "file/patterns.hpp"
#include "file/read_schedule_rows.hpp"

namespace doorcard {
namespace {

/// A text as it was before the writer kept a spreadsheet from taking it for a formula.
std::string unguarded(const std::string& text) {
    const bool guarded =
        text.size() > 1 && text[0] == '\'' && std::string_view("=+-@\t\r'").find(text[1]) != std::string_view::npos;
    return guarded ? text.substr(1) : text;
}

template <class Word>
std::optional<Word> word_of(const std::string& text) {
    const auto found = std::ranges::find(enum_words<Word>, text);
    if (found == enum_words<Word>.end()) return std::nullopt;
    return static_cast<Word>(found - enum_words<Word>.begin());
}

/// What stands before and after the name in what the directory prints of a row that is no circuit: a feeder, a source,
/// a main; in every language.
std::vector<std::pair<std::string, std::string>> texts_of_no_circuit() {
    std::vector<std::pair<std::string, std::string>> texts;
    for (const std::string& language : Words::languages())
        for (const char* pattern : {tr("Feeder to {0}"), tr("{0}: feeds in"), tr("Main: shuts off this panel")}) {
            const std::string printed = Words::in(language)(pattern);
            const std::size_t name = std::min(printed.find("{0}"), printed.size());
            texts.emplace_back(printed.substr(0, name), name < printed.size() ? printed.substr(name + 3) : "");
        }
    return texts;
}

bool is_no_circuit(const std::string& text) {
    static const auto texts = texts_of_no_circuit();
    return std::ranges::any_of(
        texts, [&](const auto& around) { return text.starts_with(around.first) && text.ends_with(around.second); });
}

/// A figure as it was written, to the last digit; else one of a spreadsheet: '1,200' or '1,5'.
std::optional<double> exact_figure(const std::string& text) {
    double number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    const bool whole = error == std::errc() && end == text.data() + text.size();
    if (!whole) return figure_in(text);
    constexpr double most = 1e12;  // of any number in a survey file
    return number >= 0 && number <= most ? std::optional(number) : std::nullopt;
}

std::vector<std::string> parts_of(std::string_view text, std::string_view separators) {
    std::vector<std::string> parts;
    for (std::size_t begin = 0; begin <= text.size();) {
        const std::size_t end = std::min(text.find_first_of(separators, begin), text.size());
        if (const auto part = trimmed(text.substr(begin, end - begin)); !part.empty()) parts.emplace_back(part);
        begin = end + 1;
    }
    return parts;
}

}  // namespace

/// The cells of a row by the name of their column, and the first complaint about one of them.
class ScheduleColumns::Cells {
public:
    Cells(const std::map<std::string, std::size_t>& at, const ListRow& row) : at_(at), row_(row) {}

    std::string raw(const std::string& column) const {
        const auto found = at_.find(column);
        return found == at_.end() || found->second >= row_.size() ? std::string() : unguarded(row_[found->second].text);
    }
    std::string word(const std::string& column) const { return std::string(trimmed(raw(column))); }
    std::optional<std::string> text(const std::string& column) const {
        std::string text = raw(column);
        return text.empty() ? std::nullopt : std::optional(std::move(text));
    }
    std::optional<std::string> named(const std::string& column) const {
        std::string text = word(column);
        return is_nothing(text) ? std::nullopt : std::optional(std::move(text));
    }

    std::optional<double> figure(const std::string& column, double least = 0) {
        const std::string text = word(column);
        if (is_nothing(text)) return std::nullopt;
        const auto figure = exact_figure(text);
        if (!figure || *figure < least)
            wrong(column, "is no figure for " + column, "write a number, or leave it blank");
        return figure;
    }
    int whole(const std::string& column, int otherwise) {
        const auto number = figure(column, 1);
        constexpr double most = 999;
        if (number && (*number > most || *number != static_cast<int>(*number)))
            wrong(column, "is no number for " + column, "write a whole number from 1 on");
        return number && !fault_ ? static_cast<int>(*number) : otherwise;
    }
    template <std::size_t N>
    std::optional<std::string> one_of(const std::string& column, const std::array<std::string_view, N>& words) {
        auto text = named(column);
        if (text && std::ranges::find(words, *text) == words.end())
            wrong(column, "is no word for " + column, fmt::format("write one of: {}", fmt::join(words, ", ")));
        return text;
    }
    void wrong(const std::string& column, const std::string& what, std::string right) {
        if (fault_) return;
        const auto found = at_.find(column);
        const Place place =
            found == at_.end() || found->second >= row_.size() ? row_.front().place : row_[found->second].place;
        std::string shown = word(column);
        constexpr std::size_t most_shown = 60;
        fault_ =
            Complaint{place, shown.size() > most_shown ? "a long text " + what : fmt::format("\"{}\" {}", shown, what),
                      std::move(right)};
    }
    const std::optional<Complaint>& fault() const { return fault_; }

    void read_place(ScheduleLine& line, const ListOptions& options) {
        line.panel = named("panel").value_or(options.panel.value_or("MAIN"));
        if (!panel_id_pattern.holds(line.panel))
            wrong("panel", "cannot name a panel", fmt::format("write a {}", panel_id_pattern.words));
        if (word("space").empty()) wrong("space", "is no space", "write a number from 1 on");
        line.space.number = whole("space", 1);
        if (options.spaces && line.space.number > *options.spaces)
            wrong("space", fmt::format("is no space of a panel of {}", *options.spaces), "write another --spaces");
        if (const auto half = one_of("half", std::array<std::string_view, 2>{"a", "b"}))
            line.space.half = half->front();
        line.leg = legs_in(word("leg"));
        if (line.leg.size() > 1) line.leg.clear();
        line.poles = whole("poles", 1);
        line.pole = whole("pole", 1);
    }

    void read_state(ScheduleLine& line) {
        const std::string state = word("state");
        if (state == "space" || state == "empty") line.kind = ScheduleLine::Kind::space;
        if (state == "not-seen" || state == "unseen") line.kind = ScheduleLine::Kind::not_seen;
        if (line.kind != ScheduleLine::Kind::breaker || is_nothing(state)) return;
        line.breaker.state = word_of<BreakerState>(state);
        if (!line.breaker.state) wrong("state", "is no state", "write in-use, spare, off, space or not-seen");
    }

    void read_breaker(ScheduleLine& line) {
        Breaker& breaker = line.breaker;
        if (line.breaker.state != BreakerState::spare || !says_spare(word("description")))
            breaker.old_label = text("description");
        breaker.note = text("note");
        if (const auto amps = figure("amps", 1)) breaker.amps = Amperes(*amps);
        breaker.device = one_of("device", std::array<std::string_view, 3>{"breaker", "fuse", "pullout"});
        line.tied_with = word("tied_with");
        read_guards(breaker);
    }

    void read_guards(Breaker& breaker) {
        if (is_nothing(word("guards"))) return;
        breaker.guards.emplace();
        for (const std::string& part : parts_of(word("guards"), "+;, ")) {
            const auto guard = word_of<Guard>(part);
            if (guard)
                breaker.guards->push_back(*guard);
            else if (part != "none")
                wrong("guards", "are no guards", "write arc, ground, equipment-ground with + between, or none");
        }
    }

    void read_circuit(ScheduleLine& line) {
        Wire wire;
        wire.size = named("wire_size");
        if (const auto metal = named("wire_metal"); metal && !(wire.metal = word_of<Metal>(*metal)))
            wrong("wire_metal", "is no metal", "write cu or al");
        wire.method =
            one_of("wire_method", std::array<std::string_view, 4>{"cable", "raceway", "knob-and-tube", "cord"});
        if (const auto feet = figure("length_ft")) wire.length = Length{*feet, false};
        if (wire != Wire()) line.circuit.wire = wire;
        if (const auto ground = named("ground_size"))
            line.circuit.ground = GroundWire{*ground, std::nullopt, std::nullopt};
        line.circuit.neutral = named("neutral");
        if (line.circuit.neutral && !id_pattern.holds(*line.circuit.neutral))
            wrong("neutral", "cannot name a neutral", fmt::format("write a {}", id_pattern.words));
        line.va = figure("va");
        line.continuous_va = figure("continuous_va");
        line.measured_a = figure("measured_a");
        const bool says_any =
            line.circuit != Circuit() || line.va.value_or(0) > 0 || line.continuous_va.value_or(0) > 0;
        line.duty = word_of<Duty>(word("class"));
        const auto& label = line.breaker.old_label;
        line.has_circuit = label ? line.breaker.state != BreakerState::spare && !is_no_circuit(*label) : says_any;
    }

private:
    const std::map<std::string, std::size_t>& at_;
    const ListRow& row_;
    std::optional<Complaint> fault_;
};

bool is_schedule_header(const ListRow& row) {
    constexpr std::array<std::string_view, 6> needed = {"panel", "space", "half", "pole", "poles", "va_complete"};
    return std::ranges::all_of(needed, [&](std::string_view word) {
        return std::ranges::any_of(row, [&](const ListCell& cell) { return trimmed(cell.text) == word; });
    });
}

bool is_blank_row(const ListRow& row) {
    return std::ranges::all_of(row, [](const ListCell& cell) { return trimmed(cell.text).empty(); });
}

ScheduleColumns::ScheduleColumns(const ListRow& header) {
    for (std::size_t i = 0; i < header.size(); ++i) at_.emplace(trimmed(header[i].text), i);
}

tl::expected<ScheduleLine, Complaint> ScheduleColumns::line(const ListRow& row, const ListOptions& options) const {
    Cells cells(at_, row);
    ScheduleLine line;
    line.place = row.front().place;
    cells.read_place(line, options);
    cells.read_state(line);
    cells.read_breaker(line);
    cells.read_circuit(line);
    if (cells.fault()) return tl::unexpected(*cells.fault());
    return line;
}

}  // namespace doorcard
