// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "sheet/panel_face.hpp"
#include "sheet/panel_facts.hpp"
#include "sheet/schedule_words.hpp"

namespace doorcard {
namespace {

double as_double(int count) { return static_cast<double>(count); }

std::string imbalance_text(const PanelSchedule& schedule, const Words& words) {
    const auto one = [](const std::optional<double>& percent) {
        return percent ? fmt::format("{:.1f} %", *percent) : std::string("–");
    };
    return words.say({schedule.complete ? tr("imbalance: connected {0}, measured {1}")
                                        : tr("imbalance: connected {0} of what is known, measured {1}"),
                      {one(schedule.imbalance_percent), one(schedule.measured_imbalance_percent)}});
}

std::string spaces_text(const PanelSchedule& schedule, const Words& words) {
    const SpaceCounts& spaces = schedule.spaces;
    const Message rest{
        tr("used {0:.0f}, spare {1:.0f}, empty {2:.0f}, not seen {3:.0f}"),
        {as_double(spaces.used), as_double(spaces.spare), as_double(spaces.empty), as_double(spaces.unseen)}};
    if (!spaces.total) return words.say({tr("spaces, total not known: {0}"), {rest}});
    return words.say({tr("{0:.0f} spaces: {1}"), {as_double(*spaces.total), rest}});
}

std::string handles_of(const Network& network, const PanelSchedule& schedule, const NeutralFigures& neutral) {
    std::vector<std::string> handles;
    for (const SharedNeutral& shared : network.neutrals()) {
        if (shared.id != neutral.id) continue;
        for (const std::size_t b : breakers_on(network, shared)) {
            const Breaker& breaker = network.survey().breakers[b];
            const std::string panel = network.panel_of(b) == schedule.panel ? "" : breaker.panel + " ";
            handles.push_back(panel + name_of(positions_of(breaker)) + " (" + network.breaker_legs(b) + ")");
        }
    }
    return fmt::format("{}", fmt::join(handles, ", "));
}

std::string neutral_text(const Network& network, const PanelSchedule& schedule, const NeutralFigures& neutral,
                         const Words& words) {
    std::string text = words.say(
        {tr("{0} shared by {1}: calculated {2} A, measured {3} A"),
         {neutral.id, handles_of(network, schedule, neutral), amps_text(neutral.amps), amps_text(neutral.measured_a)}});
    if (neutral.ampacity_a) text += ", " + words.say({tr("ampacity {0} A"), {amps_text(neutral.ampacity_a)}});
    return text;
}

// A default in words; empty for one that the sheet does not show.
Message assumed_message(const Assumption& assumed) {
    static const std::map<std::string, const char*> texts = {
        {"legs_down", tr("legs {0} down the rows from space 1")},
        {"numbering", tr("odd numbers on the left")},
        {"spaces", tr("{0} spaces")},
        {"system", tr("the system of what feeds it")},
        {"high_leg", tr("high leg {0}")},
        {"power_factor", tr("power factor {0}")},
        {"continuous", tr("continuous by rule")},
        {"terminal_c", tr("terminals {0} °C")},
        {"ambient_c", tr("ambient {0} °C")},
        {"insulation", tr("insulation taken as {0}")},
        {"conductors_together", tr("no other conductors beside it")},
        {"amps_min", tr("a level held that was read once")}};
    const auto found = texts.find(assumed.key);
    return found == texts.end() ? Message{} : Message{found->second, {assumed.value}};
}

// "assumed: terminals 60 °C (5×), odd numbers on the left"; empty where nothing was.
std::string assumed_line(const PanelSchedule& schedule, const Words& words) {
    std::vector<std::pair<std::string, int>> counted;
    for (const Assumption& assumed : schedule.assumed) {
        const Message message = assumed_message(assumed);
        if (message.empty()) continue;
        const std::string text = words.say(message);
        const auto known = std::find_if(counted.begin(), counted.end(), [&](const auto& c) { return c.first == text; });
        if (known == counted.end())
            counted.emplace_back(text, 1);
        else
            ++known->second;
    }
    std::string line;
    for (const auto& [text, times] : counted)
        line += (line.empty() ? "" : ", ") + (times == 1 ? text : fmt::format("{} ({}×)", text, times));
    return line.empty() ? line : words.say({tr("assumed: {0}"), {line}});
}

std::string joined(const std::vector<ScheduleLeg>& legs, const std::function<std::string(const ScheduleLeg&)>& say) {
    std::string text;
    for (const ScheduleLeg& leg : legs) text += (text.empty() ? "" : ", ") + fmt::format("{} {}", leg.leg, say(leg));
    return text;
}

std::string on_panel_text(const PanelSchedule& schedule, const Words& words) {
    std::string text;
    for (const auto& [leg, va] : schedule.set_on_panel)
        if (va) text += (text.empty() ? "" : ", ") + fmt::format("{} {}", leg, va_text(va, true));
    return text.empty() ? text : words.say({tr("of it on no known circuit, VA: {0}"), {text}});
}

bool cross_connected(const Network& network, const PanelSchedule& schedule) {
    return std::any_of(schedule.rows.begin(), schedule.rows.end(), [&](const ScheduleRow& row) {
        return std::any_of(row.entry.circuits.begin(), row.entry.circuits.end(),
                           [&](std::size_t c) { return network.breakers_of(c).size() > 1; });
    });
}

}  // namespace

std::vector<std::string> leg_lines(const PanelSchedule& schedule, const Words& words) {
    std::vector<std::string> lines;
    const auto add = [&](const char* text, const std::function<std::string(const ScheduleLeg&)>& say) {
        lines.push_back(words.say({text, {joined(schedule.legs, say)}}));
    };
    add(tr("connected VA: {0}"), [](const ScheduleLeg& leg) { return va_text(leg.connected_va, leg.complete); });
    add(tr("connected A: {0}"), [](const ScheduleLeg& leg) { return amps_text(leg.connected_a, leg.complete); });
    add(tr("measured A: {0}"), [](const ScheduleLeg& leg) { return amps_text(leg.measured_a); });
    lines.push_back(
        words.say({schedule.complete ? tr("neutral A, all on: {0}") : tr("neutral A, all known loads on: {0}"),
                   {amps_text(schedule.neutral_a)}}));
    lines.push_back(imbalance_text(schedule, words));
    if (const std::string text = on_panel_text(schedule, words); !text.empty()) lines.push_back(text);
    return lines;
}

std::vector<std::string> space_lines(const Network& network, const PanelSchedule& schedule, const Words& words) {
    std::vector<std::string> lines = {spaces_text(schedule, words)};
    for (const NeutralFigures& neutral : schedule.neutrals)
        lines.push_back(neutral_text(network, schedule, neutral, words));
    for (const ScheduleRow& row : schedule.rows)
        if (row.entry.breaker)
            for (const std::size_t fed : network.panels_fed_by(*row.entry.breaker))
                lines.push_back(words.say({tr("{0}: in its feeder's row {1}, counted once"),
                                           {network.survey().panels[fed].id, name_of(row.positions())}}));
    const auto sources = further_sources(network, schedule.panel);
    if (!sources.empty() && std::any_of(schedule.legs.begin(), schedule.legs.end(),
                                        [](const ScheduleLeg& leg) { return leg.measured_a.has_value(); }))
        lines.push_back(words(tr("measured legs are net of what sources feed in")));
    if (cross_connected(network, schedule))
        lines.push_back(words(tr("a circuit on several handles stands in each row, in the legs once")));
    return lines;
}

std::vector<std::string> open_lines(const Network&, const PanelSchedule& schedule, const Words& words) {
    std::vector<std::string> lines;
    for (const ScheduleGap& gap : schedule.missing) lines.push_back(words.say(gap.text()));
    if (std::string line = assumed_line(schedule, words); !line.empty()) lines.push_back(std::move(line));
    return lines;
}

}  // namespace doorcard
