// SPDX-License-Identifier: MIT
#include "sheet/panel_facts.hpp"
#include "sheet/plain_lines.hpp"
#include "sheet/schedule.hpp"
#include "sheet/schedule_words.hpp"

namespace doorcard {
namespace {

class TextSchedule {
public:
    TextSchedule(const Network& network, const PanelSchedule& schedule, const Words& words)
        : network_(network), survey_(network.survey()), schedule_(schedule), words_(words) {}

    std::vector<std::string> lines() {
        head();
        rows();
        foot();
        return std::move(lines_);
    }

private:
    const Panel& panel() const { return survey_.panels[schedule_.panel]; }

    void add(const std::string& text) {
        for (const std::string& line : wrapped(text, plain_columns)) lines_.push_back(line);
    }

    void head() {
        const std::string title = title_and_place(panel(), words_);
        add(panel().id + (title.empty() ? "" : "  " + title) + "   " + system_text(network_, schedule_.panel, words_));
        if (survey_.heading.title) add(*survey_.heading.title);
        add(words_(tr("fed from")) + ": " + fed_from_text(network_, schedule_.panel, words_) + "; " +
            conductors_text(panel().feeder, words_));
        add(main_caption(panel(), words_) + ": " + main_text(network_, schedule_.panel, words_));
        const Message bus =
            panel().bus_a ? Message{tr("bus {0:g} A"), {panel().bus_a->value}} : Message{tr("bus rating not seen"), {}};
        add(words_.say(bus) + "; " + fault_text(schedule_, words_) + "; " + interrupting_text(schedule_, words_));
        lines_.emplace_back();
    }

    void rows() {
        std::size_t number = 4;
        for (const ScheduleRow& row : schedule_.rows) number = std::max(number, characters(name_of(row.positions())));
        lines_.push_back(start(number, "", words_(tr("leg")), words_(tr("rating")), "VA", "A", "%") +
                         words_(tr("description")));
        for (const ScheduleRow& row : schedule_.rows)
            for (std::size_t pole = 0; pole < row.poles.size(); ++pole) add_pole(row, pole, number);
        lines_.emplace_back();
    }

    static std::string start(std::size_t number, const std::string& name, const std::string& leg,
                             const std::string& rating, const std::string& va, const std::string& measured,
                             const std::string& percent) {
        return padded(name, number) + " " + padded(leg, 3) + " " + padded_left(rating, 7) + " " + padded_left(va, 9) +
               " " + padded_left(measured, 6) + " " + padded_left(percent, 6) + "  ";
    }

    // The first pole carries the words; every pole its own leg and figures.
    void add_pole(const ScheduleRow& row, std::size_t pole, std::size_t number) {
        const SchedulePole& at = row.poles[pole];
        const bool device = row.entry.breaker.has_value(), first = pole == 0;
        const std::string rating = device && first ? rating_text(survey_.breakers[*row.entry.breaker]) + " A" : "";
        const bool highest = first && only_highest_known(row);
        const std::string begin =
            start(number, first ? name_of(row.positions()) : "", at.leg == '?' ? "–" : std::string(1, at.leg), rating,
                  device ? va_text(at.va, row.va_complete) : "",
                  device ? amps_text(highest ? row.measured_highest_a : at.measured_a) : "",
                  device && first ? percent_text(row.percent_of_rating, row.va_complete) : "");
        const auto pieces = wrapped(first ? words_of(row) : "", plain_columns - characters(begin));
        if (pieces.empty()) lines_.push_back(begin.substr(0, begin.find_last_not_of(' ') + 1));
        for (std::size_t i = 0; i < pieces.size(); ++i)
            lines_.push_back((i == 0 ? begin : std::string(characters(begin), ' ')) + pieces[i]);
    }

    std::string words_of(const ScheduleRow& row) const {
        std::string text = (row.entry.claimed ? "[?] " : "") + words_.say(row.entry.text);
        const auto append = [&text](const std::string& part) {
            if (!part.empty()) text += "; " + part;
        };
        append(row.entry.under.empty() ? "" : words_.say(row.entry.under));
        append(class_text(row, words_));
        append(wire_text(row));
        if (row.entry.breaker) append(poles_text(row, words_) + ", " + guards_text(network_, row, words_));
        if (row.poles.size() > 1 && only_highest_known(row)) append(words_(tr("measured: highest leg")));
        return text;
    }

    void block(const char* title, const std::vector<std::string>& content) {
        lines_.push_back(words_(title));
        for (const std::string& text : content)
            for (const std::string& line : wrapped(text, plain_columns - 2)) lines_.push_back("  " + line);
    }

    void foot() {
        block(tr("Legs"), leg_lines(schedule_, words_));
        block(tr("Panel demand"), demand_lines(schedule_, words_));
        block(tr("Neutrals and spaces"), space_lines(network_, schedule_, words_));
        block(tr("Not known, assumed"), open_lines(network_, schedule_, words_));
        add(words_(tr("Not a permit. Local code and the authority having jurisdiction decide.")));
        add(words_(tr("Off here is not proof of dead. Test before you touch.")));
        add(traced_line(survey_, schedule_.directory, words_));
        lines_.emplace_back();
    }

    const Network& network_;
    const Survey& survey_;
    const PanelSchedule& schedule_;
    const Words& words_;
    std::vector<std::string> lines_;
};

}  // namespace

std::vector<std::string> schedule_lines(const Network& network, const PanelSchedule& schedule, const Words& words) {
    return TextSchedule(network, schedule, words).lines();
}

}  // namespace doorcard
