// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "file/enum_words.hpp"
#include "sheet/panel_facts.hpp"
#include "sheet/schedule.hpp"

namespace doorcard {
namespace {

constexpr const char* header =
    "panel,space,half,leg,pole,poles,description,class,device,amps,guards,tied_with,state,wire_size,wire_metal,"
    "wire_method,ground_size,neutral,length_ft,va,va_complete,continuous_va,measured_a,traced,note\r\n";

std::string quoted(const std::string& text) {
    if (text.find_first_of(",\"\r\n") == std::string::npos) return text;
    std::string safe = "\"";
    for (const char c : text) safe += c == '"' ? std::string("\"\"") : std::string(1, c);
    return safe + "\"";
}

// A text that a spreadsheet would take for a formula, or that begins with an apostrophe of its own, gets one before it.
std::string text_field(const std::string& text) {
    const bool risky = !text.empty() && std::string_view("=+-@\t\r'").find(text.front()) != std::string_view::npos;
    return quoted(risky ? "'" + text : text);
}

template <class T>
std::string figure(const std::optional<T>& value) {
    return value ? fmt::format("{}", value->value) : "";
}

/// What all conductors of the row say alike; empty where they differ or nothing is known.
template <class Get>
std::string alike(const ScheduleRow& row, Get get) {
    std::optional<std::string> found;
    for (const Wire& wire : row.wires) {
        const std::string one = get(wire);
        if (found && *found != one) return "";
        found = one;
    }
    return found.value_or("");
}

class CsvRows {
public:
    CsvRows(const Network& network, const PanelSchedule& schedule, const Words& words)
        : survey_(network.survey()), schedule_(schedule), words_(words) {}

    std::string all() const {
        std::string lines;
        for (const ScheduleRow& row : schedule_.rows)
            if (row.entry.breaker || row.entry.kind == RowKind::space)
                for (std::size_t pole = 0; pole < row.poles.size(); ++pole) lines += line(row, pole);
        return lines;
    }

private:
    const Breaker* breaker(const ScheduleRow& row) const {
        return row.entry.breaker ? &survey_.breakers[*row.entry.breaker] : nullptr;
    }

    // What the circuit is, without the sheet's 'not traced' and 'off'.
    std::string description(const ScheduleRow& row) const {
        switch (row.entry.kind) {
            case RowKind::not_traced:
            case RowKind::not_described:
                return "";
            case RowKind::off:
                return row.entry.circuits.empty() ? "" : words_.say(row.entry.under);
            default:
                return words_.say(row.entry.fire_alarm && !row.entry.under.empty() ? row.entry.under : row.entry.text);
        }
    }

    std::string guards(const Breaker* device) const {
        if (device == nullptr || !device->guards) return "";
        if (device->guards->empty()) return "none";
        std::string text;
        for (const Guard guard : *device->guards)
            text += (text.empty() ? "" : " ") + std::string(enum_words<Guard>[static_cast<std::size_t>(guard)]);
        return text;
    }

    static std::string state(const Breaker* device) {
        if (device == nullptr) return "space";
        return std::string(
            enum_words<BreakerState>[static_cast<std::size_t>(device->state.value_or(BreakerState::in_use))]);
    }

    std::string note(const ScheduleRow& row) const {
        std::string text;
        const auto add = [&text](const std::optional<std::string>& part) {
            if (part && !part->empty()) text += (text.empty() ? "" : "; ") + *part;
        };
        if (const Breaker* device = breaker(row)) {
            add(device->off_why);
            add(device->note);
        }
        for (const std::size_t circuit : row.entry.circuits) add(survey_.circuits[circuit].note);
        return text;
    }

    std::string measured(const ScheduleRow& row, std::size_t pole) const {
        const auto& own = row.poles[pole].measured_a;
        const bool none = std::all_of(row.poles.begin(), row.poles.end(), [](const auto& p) { return !p.measured_a; });
        return figure(pole == 0 && none ? row.measured_highest_a : own);
    }

    std::string length(const ScheduleRow& row) const {
        return alike(row, [](const Wire& w) { return w.length ? fmt::format("{}", w.length->feet().value) : ""; });
    }

    std::vector<std::string> place(const ScheduleRow& row, std::size_t pole) const {
        const SchedulePole& at = row.poles[pole];
        const bool device = row.entry.breaker.has_value();
        return {text_field(survey_.panels[schedule_.panel].id),
                std::to_string(at.position.space),
                at.position.half == ' ' ? "" : std::string(1, at.position.half),
                at.leg == '?' ? "" : std::string(1, at.leg),
                device ? std::to_string(pole + 1) : "",
                device ? std::to_string(row.poles.size()) : ""};
    }

    std::vector<std::string> device(const ScheduleRow& row) const {
        const Breaker* device = breaker(row);
        std::string tied;
        if (device != nullptr && device->tied_with) tied = fmt::format("{}", fmt::join(*device->tied_with, " "));
        return {text_field(description(row)),
                row.duties.empty() ? "" : std::string(class_word(row.duties.front())),
                device ? device->device.value_or("breaker") : "",
                device ? figure(device->amps) : "",
                guards(device),
                text_field(tied),
                state(device)};
    }

    std::vector<std::string> conductors(const ScheduleRow& row) const {
        const auto metal = [](const Wire& w) {
            return w.metal ? std::string(enum_words<Metal>[static_cast<std::size_t>(*w.metal)]) : "";
        };
        return {text_field(alike(row, [](const Wire& w) { return w.size.value_or(""); })),
                alike(row, metal),
                alike(row, [](const Wire& w) { return w.method.value_or(""); }),
                text_field(row.ground_size.value_or("")),
                text_field(row.neutral.value_or("")),
                length(row)};
    }

    std::string line(const ScheduleRow& row, std::size_t pole) const {
        std::vector<std::string> fields = place(row, pole);
        const auto append = [&fields](const std::vector<std::string>& more) {
            fields.insert(fields.end(), more.begin(), more.end());
        };
        append(device(row));
        append(conductors(row));
        append({figure(row.poles[pole].va), row.va_complete ? "yes" : "no", pole == 0 ? figure(row.continuous_va) : "",
                measured(row, pole), row.traced.value_or(""), text_field(note(row))});
        return fmt::format("{}\r\n", fmt::join(fields, ","));
    }

    const Survey& survey_;
    const PanelSchedule& schedule_;
    const Words& words_;
};

}  // namespace

Bytes schedule_csv(const Network& network, const std::vector<PanelSchedule>& schedules,
                   const std::vector<std::string>& panels, const Words& words) {
    Bytes csv = header;
    for (const PanelSchedule& schedule : schedules)
        if (is_chosen(panels, network.survey().panels[schedule.panel].id))
            csv += CsvRows(network, schedule, words).all();
    return csv;
}

}  // namespace doorcard
