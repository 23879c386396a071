// SPDX-License-Identifier: MIT
#include "sheet/schedule_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "sheet/panel_facts.hpp"

namespace doorcard {
namespace {

constexpr const char* dash = "–";

std::string at_least(const std::string& figure, bool complete) { return complete ? figure : "≥ " + figure; }

std::string metal_word(const Wire& wire) {
    if (!wire.metal) return "";
    return *wire.metal == Metal::copper ? " cu" : " al";
}

std::string kilo(double ka) { return fmt::format("{:g}", ka); }

bool carries(const ScheduleRow& row) {
    const RowKind kind = row.entry.kind;
    return row.entry.breaker && kind != RowKind::spare && kind != RowKind::main;
}

std::string grouped(double value) {
    std::string digits = fmt::format("{:.0f}", value);
    for (int at = static_cast<int>(digits.size()) - 3; at > 0; at -= 3)
        digits.insert(static_cast<std::size_t>(at), ",");
    return digits;
}

const char* guard_text(Guard guard) {
    switch (guard) {
        case Guard::arc:
            return tr("arc");
        case Guard::ground:
            return tr("ground");
        case Guard::equipment_ground:
            return tr("ground 30 mA");
    }
    return "";
}

}  // namespace

std::string va_text(std::optional<VoltAmperes> va, bool complete) {
    return va ? at_least(grouped(va->value), complete) : dash;
}

std::string amps_text(std::optional<Amperes> amps, bool complete) {
    return amps ? at_least(fmt::format("{:.1f}", amps->value), complete) : dash;
}

std::string percent_text(std::optional<double> percent, bool complete) {
    return percent ? at_least(fmt::format("{:.0f}", *percent), complete) : dash;
}

std::string class_text(const ScheduleRow& row, const Words& words) {
    std::string text;
    const auto add = [&text](const std::string& part) { text += (text.empty() ? "" : " · ") + part; };
    if (row.entry.kind == RowKind::feeder) add(words(tr("feeder")));
    if (row.entry.kind == RowKind::source) add(words(tr("source")));
    std::string classes;
    for (std::size_t i = 0; i < row.duties.size() && i < 2; ++i)
        classes += (i == 0 ? "" : ", ") + words(class_text(row.duties[i]));
    if (!classes.empty()) add(classes);
    if (row.traced)
        if (const char* how = traced_text(*row.traced)) add(words(how));
    if (row.neutral && *row.neutral != "own") add(*row.neutral);
    return text;
}

std::string wire_text(const ScheduleRow& row) {
    if (row.wires.empty()) return carries(row) ? dash : "";
    std::vector<std::string> said;
    for (const Wire& wire : row.wires) {
        const std::string one = wire.size.value_or(dash) + metal_word(wire);
        if (std::find(said.begin(), said.end(), one) == said.end()) said.push_back(one);
    }
    return fmt::format("{}", fmt::join(said, ", "));
}

std::string poles_text(const ScheduleRow& row, const Words& words) {
    if (!row.entry.breaker) return "";
    return words.count(trn("{0}-pole", "{0}-pole"), static_cast<long>(row.poles.size()));
}

std::string guards_text(const Network& network, const ScheduleRow& row, const Words& words) {
    if (!row.entry.breaker) return "";
    const Breaker& breaker = network.survey().breakers[*row.entry.breaker];
    if (!breaker.guards) return dash;
    if (breaker.guards->empty()) return words(tr("none"));
    std::string text;
    for (const Guard guard : *breaker.guards) text += (text.empty() ? "" : ", ") + words(guard_text(guard));
    return text;
}

bool only_highest_known(const ScheduleRow& row) {
    return row.measured_highest_a &&
           std::all_of(row.poles.begin(), row.poles.end(), [](const SchedulePole& p) { return !p.measured_a; });
}

std::string conductors_text(const std::optional<Wire>& wire, const Words& words) {
    if (!wire || !wire->size) return words(tr("conductors not seen"));
    std::string text = *wire->size + metal_word(*wire);
    if (wire->sets.value_or(1) > 1) text = fmt::format("{} × {}", *wire->sets, text);
    return wire->insulation ? text + ", " + *wire->insulation : text;
}

std::string fault_text(const PanelSchedule& schedule, const Words& words) {
    if (!schedule.fault_ka) return words(tr("fault current: not known"));
    const std::string amount = kilo(*schedule.fault_ka);
    if (!schedule.fault_on) return words.say({tr("fault current {0} kA, undated"), {amount}});
    const Moment& on = *schedule.fault_on;
    const std::string date = fmt::format("{:04}-{:02}-{:02}", on.year, on.month, on.day);
    return words.say({tr("fault current {0} kA, {1}"), {amount, date}});
}

std::string interrupting_text(const PanelSchedule& schedule, const Words& words) {
    if (!schedule.least_interrupting_ka) return words(tr("lowest interrupting rating: not seen"));
    if (schedule.interrupting_unseen > 0)
        return words.say({tr("lowest interrupting rating seen {0} kA, {1:.0f} not seen"),
                          {kilo(*schedule.least_interrupting_ka), static_cast<double>(schedule.interrupting_unseen)}});
    return words.say({tr("lowest interrupting rating {0} kA"), {kilo(*schedule.least_interrupting_ka)}});
}

std::vector<std::string> demand_lines(const PanelSchedule& schedule, const Words& words) {
    std::vector<std::string> lines = {words(tr("not calculated")),
                                      words(tr("Demand is of the panel, not of a circuit."))};
    if (schedule.rating_a)
        lines.push_back(words.say({tr("rating {0:g} A; room left: not known"), {schedule.rating_a->value}}));
    else
        lines.push_back(words(tr("rating: not seen")));
    return lines;
}

}  // namespace doorcard
