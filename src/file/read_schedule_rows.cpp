// SPDX-License-Identifier: MIT
#include "file/read_schedule_rows.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <unordered_map>

#include "base/folded.hpp"
#include "file/list_cells.hpp"
#include "file/list_survey.hpp"
#include "file/patterns.hpp"
#include "file/schedule_line.hpp"

namespace doorcard {
namespace {

using Faulty = std::optional<CellFault>;

/// Lines of one breaker, its poles in order; or one line that is no breaker.
using Group = std::vector<ScheduleLine>;

std::vector<Group> groups_of(std::vector<ScheduleLine> lines) {
    std::vector<Group> groups;
    for (ScheduleLine& line : lines) {
        const bool goes_on = !groups.empty() && line.pole > 1 && groups.back().back().pole + 1 == line.pole &&
                             groups.back().back().panel == line.panel && groups.back().back().poles == line.poles;
        if (!goes_on) groups.emplace_back();
        groups.back().push_back(std::move(line));
    }
    return groups;
}

Faulty unfit(const Group& group) {
    const ScheduleLine& first = group.front();
    if (first.pole != 1 || group.size() != static_cast<std::size_t>(first.poles))
        return CellFault{fmt::format("{} of {} poles of this breaker are listed here", group.size(), first.poles),
                         "keep a line for each pole, from pole 1 on"};
    for (std::size_t i = 0; i < group.size(); ++i) {
        if ((group[i].space.half == ' ') != (first.space.half == ' '))
            return CellFault{"a half and a whole space in one breaker", "write a half for each pole, or for none"};
        for (std::size_t k = 0; k < i; ++k)
            if (group[k].space.number == group[i].space.number)
                return CellFault{fmt::format("the breaker names space {} twice", group[i].space.number),
                                 "name every space once"};
    }
    return std::nullopt;
}

std::string legs_of(const Group& group) {
    std::string legs;
    for (const ScheduleLine& line : group) legs += line.leg;
    return legs.size() == group.size() ? legs : std::string();
}

Breaker breaker_of(const Group& group) {
    Breaker breaker = group.front().breaker;
    breaker.panel = group.front().panel;
    for (const ScheduleLine& line : group) {
        breaker.spaces.push_back(line.space.number);
        if (line.space.half != ' ') breaker.halves.push_back(line.space.half);
    }
    if (const std::string legs = legs_of(group); !legs.empty()) breaker.legs = legs;
    breaker.id = breaker.default_id();
    return breaker;
}

double sum_of(const Group& group, std::optional<double> ScheduleLine::*figure) {
    double sum = 0;
    for (const ScheduleLine& line : group) sum += (line.*figure).value_or(0);
    return sum;
}

Load load_of(const Circuit& circuit, const std::string& id, const Group& group, double va) {
    Load load;
    load.id = id;
    load.circuit = circuit.id;
    load.title = group.front().breaker.old_label;
    load.duty = group.front().duty;
    load.va = VoltAmperes(va);
    load.note = "all of the circuit together, as the schedule says";
    return load;
}

/// The survey as it grows.
class ScheduleSurvey {
public:
    explicit ScheduleSurvey(const ListOptions& options) : options_(options) {}

    Faulty add(const Group& group) {
        if (group.front().kind == ScheduleLine::Kind::space) return add_space(group.front());
        if (group.front().kind == ScheduleLine::Kind::not_seen) {
            panel_of(group.front().panel);
            return std::nullopt;
        }
        if (auto wrong = unfit(group)) return wrong;
        Breaker breaker = breaker_of(group);
        if (!positions_.emplace(breaker.id, breakers_.size()).second)
            return CellFault{fmt::format("breaker {} is listed already", breaker.id), "keep one of the two"};
        panel_of(breaker.panel);
        if (group.front().has_circuit) add_circuit(group, breaker);
        add_readings(group, breaker);
        ties_.push_back(group.front().tied_with);
        breakers_.push_back(std::move(breaker));
        return std::nullopt;
    }

    Survey finished() {
        for (std::size_t i = 0; i < breakers_.size(); ++i) settle_ties(i);
        Survey survey = survey_of_panels(std::move(panels_), options_);
        survey.breakers = Table<Breaker>(std::move(breakers_));
        survey.circuits = Table<Circuit>(std::move(circuits_));
        survey.loads = Table<Load>(std::move(loads_));
        survey.readings = Table<Reading>(std::move(readings_));
        return survey;
    }

private:
    Panel& panel_of(const std::string& id) {
        const auto found = std::ranges::find(panels_, id, &Panel::id);
        if (found != panels_.end()) return *found;
        panels_.emplace_back().id = id;
        return panels_.back();
    }

    Faulty add_space(const ScheduleLine& line) {
        auto& empty = panel_of(line.panel).empty_spaces;
        if (!empty) empty.emplace();
        if (std::ranges::find(*empty, line.space.number) == empty->end()) empty->push_back(line.space.number);
        return std::nullopt;
    }

    void add_circuit(const Group& group, const Breaker& breaker) {
        Circuit circuit = group.front().circuit;
        circuit.id = circuit_name(breaker, circuits_.size());
        circuit.breakers = {breaker.id};
        circuit.traced = Traced{"old-directory", std::nullopt, std::nullopt};
        const double all = sum_of(group, &ScheduleLine::va);
        const double continuous = std::min(all, sum_of(group, &ScheduleLine::continuous_va));
        if (all > continuous) loads_.push_back(load_of(circuit, circuit.id, group, all - continuous));
        if (continuous > 0) {
            const std::string id = name_or(circuit.id + " continuous", "l", loads_.size());
            loads_.push_back(load_of(circuit, id, group, continuous));
            loads_.back().continuous = true;
        }
        circuits_.push_back(std::move(circuit));
    }

    void add_readings(const Group& group, const Breaker& breaker) {
        for (const ScheduleLine& line : group) {
            if (!line.measured_a) continue;
            Reading reading;
            reading.of = {ThingKind::breaker, breaker.id, group.size() > 1 ? line.leg : std::string()};
            reading.amps = Amperes(*line.measured_a);
            reading.note = "as the schedule says";
            readings_.push_back(std::move(reading));
        }
    }

    /// Ids of breakers with blanks between them, and blanks in some: the longest that is one comes first. What is none
    /// is kept as a remark.
    void settle_ties(std::size_t index) {
        std::string_view left = ties_[index];
        Ids ties;
        std::string lost;
        while (!left.empty()) {
            std::size_t end = left.size();
            while (end != 0 && !positions_.contains(std::string(left.substr(0, end)))) end = last_blank(left, end);
            const bool known = end != 0;
            if (!known) end = std::min(left.find_first_of(" ;"), left.size());
            const std::string id(left.substr(0, end));
            if (known)
                ties.push_back(id);
            else if (!id.empty())
                lost += (lost.empty() ? "" : ", ") + id;
            left.remove_prefix(std::min(left.size(), end + 1));
        }
        Breaker& breaker = breakers_[index];
        if (!ties.empty()) breaker.tied_with = std::move(ties);
        if (!lost.empty()) breaker.note = fmt::format("{}tied with {}", breaker.note ? *breaker.note + "; " : "", lost);
    }

    /// Where the last blank or semicolon before `end` stands; 0 where there is none.
    static std::size_t last_blank(std::string_view text, std::size_t end) {
        const std::size_t at = text.find_last_of(" ;", end - 1);
        return at == std::string_view::npos ? 0 : at;
    }

    const ListOptions& options_;
    std::vector<Panel> panels_;
    std::vector<Breaker> breakers_;
    std::vector<Circuit> circuits_;
    std::vector<Load> loads_;
    std::vector<Reading> readings_;
    std::vector<std::string> ties_;
    std::unordered_map<std::string, std::size_t> positions_;
};

void refuse(const Group& group, const CellFault& fault, ListRead& read) {
    const Place first = group.front().place;
    read.refused.push_back({first, fault.wrong, fault.right});
    for (std::size_t i = 1; i < group.size(); ++i)
        read.refused.push_back({group[i].place,
                                fmt::format("a pole of the breaker at line {}, which was not understood", first.line),
                                "mend that line"});
}

}  // namespace

ListRead read_schedule_rows(const std::vector<ListRow>& rows, const ListOptions& options) {
    ListRead read;
    const ScheduleColumns columns(rows.front());
    std::vector<ScheduleLine> lines;
    for (std::size_t i = 1; i < rows.size(); ++i) {
        if (is_blank_row(rows[i])) continue;
        auto line = columns.line(rows[i], options);
        if (line)
            lines.push_back(std::move(*line));
        else
            read.refused.push_back(std::move(line.error()));
    }
    ScheduleSurvey survey(options);
    for (const Group& group : groups_of(std::move(lines))) {
        if (const auto fault = survey.add(group))
            refuse(group, *fault, read);
        else
            read.read += group.size();
    }
    read.survey = survey.finished();
    std::ranges::stable_sort(read.refused, {}, &Complaint::place);
    return read;
}

}  // namespace doorcard
