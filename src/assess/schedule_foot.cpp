// SPDX-License-Identifier: MIT
#include <algorithm>

#include "assess/schedule_parts.hpp"

namespace doorcard {
namespace {

bool has(const std::vector<std::size_t>& list, std::size_t index) {
    return std::ranges::find(list, index) != list.end();
}

class Gaps {
public:
    Gaps(const Network& network, PanelSchedule& schedule)
        : network_(network), survey_(network.survey()), schedule_(schedule) {}

    void add() {
        of_panel();
        of_rows();
        if (!schedule_.spaces.total) of_panel(tr("number of spaces not seen"));
        of_panel(tr("demand not calculated"));
    }

private:
    void of_panel(const char* what) { schedule_.missing.push_back({{what, {}}, {}}); }

    void of_panel() {
        const Panel& panel = survey_.panels[schedule_.panel];
        if (panel.fed_by.empty()) of_panel(tr("what feeds it not known"));
        if (!network_.supply(schedule_.panel).system) of_panel(tr("system not known"));
        if (!panel.bus_a) of_panel(tr("bus rating not seen"));
        if (!panel.main) of_panel(tr("main not seen"));
        const bool rated = panel.main == MainKind::breaker || panel.main == MainKind::fuses;
        if (rated && !panel.main_a) of_panel(tr("rating of the main not seen"));
        if (!panel.feeder || !panel.feeder->size) of_panel(tr("feeding conductors not seen"));
        if (!schedule_.fault_ka) of_panel(tr("fault current not known"));
    }

    template <class Is>
    void of_rows(const char* what, Is is) {
        ScheduleGap gap{{what, {}}, {}};
        for (const ScheduleRow& row : schedule_.rows)
            if (is(row)) gap.handles.push_back(name_of(row.positions()));
        if (!gap.handles.empty()) schedule_.missing.push_back(std::move(gap));
    }

    // What nobody looked at on any device is said in one word.
    void of_interrupting() {
        const auto devices = network_.breakers_in(schedule_.panel).size();
        if (devices > 0 && schedule_.interrupting_unseen == static_cast<int>(devices))
            return of_panel(tr("interrupting rating seen of no device"));
        of_rows(tr("interrupting rating not seen"),
                [&](const ScheduleRow& row) { return row.entry.breaker && !breaker(row).interrupting_ka; });
    }

    const Breaker& breaker(const ScheduleRow& row) const { return survey_.breakers[*row.entry.breaker]; }
    /// Feeds something, or may.
    static bool loaded(const ScheduleRow& row) {
        const RowKind kind = row.entry.kind;
        return row.entry.breaker && kind != RowKind::spare && kind != RowKind::main && kind != RowKind::source;
    }
    bool feeds_panel(const ScheduleRow& row) const { return !network_.panels_fed_by(*row.entry.breaker).empty(); }
    bool untraced(const ScheduleRow& row) const {
        return loaded(row) && row.entry.circuits.empty() && !feeds_panel(row);
    }
    static bool with_circuits(const ScheduleRow& row) { return loaded(row) && !row.entry.circuits.empty(); }

    bool neutral_open(const ScheduleRow& row) const {
        return with_circuits(row) && std::ranges::any_of(row.entry.circuits, [&](std::size_t circuit) {
                   return !survey_.circuits[circuit].neutral;
               });
    }

    void of_rows() {
        of_rows(tr("spaces not seen"), [](const ScheduleRow& row) { return row.entry.kind == RowKind::not_seen; });
        of_rows(tr("rating not seen"), [&](const ScheduleRow& row) { return row.entry.breaker && !breaker(row).amps; });
        of_rows(tr("guards not looked at"),
                [&](const ScheduleRow& row) { return loaded(row) && !breaker(row).guards; });
        of_rows(tr("not traced"), [&](const ScheduleRow& row) { return untraced(row); });
        of_rows(tr("only claimed"), [](const ScheduleRow& row) { return row.entry.claimed; });
        of_rows(tr("wire not seen"), [](const ScheduleRow& row) { return with_circuits(row) && row.wires.empty(); });
        of_rows(tr("neutral not traced"), [&](const ScheduleRow& row) { return neutral_open(row); });
        of_rows(tr("no load known"), [](const ScheduleRow& row) { return loaded(row) && !row.connected_va; });
        of_rows(tr("load known in part"), [](const ScheduleRow& row) { return row.connected_va && !row.va_complete; });
        of_interrupting();
    }

    const Network& network_;
    const Survey& survey_;
    PanelSchedule& schedule_;
};

/// What of the survey a panel's schedule shows: positions in the tables.
struct Shown {
    std::vector<std::size_t> breakers, circuits, loads;
};

Shown shown_of(const Network& network, const PanelSchedule& schedule) {
    Shown shown;
    for (const ScheduleRow& row : schedule.rows) {
        if (row.entry.breaker) shown.breakers.push_back(*row.entry.breaker);
        for (const std::size_t circuit : row.entry.circuits) {
            shown.circuits.push_back(circuit);
            const auto& loads = network.loads_on(circuit);
            shown.loads.insert(shown.loads.end(), loads.begin(), loads.end());
        }
    }
    return shown;
}

bool is_shown(const Survey& survey, const Shown& shown, std::size_t panel, const Address& of) {
    switch (of.kind) {
        case ThingKind::panel:
            return of.id == survey.panels[panel].id;
        case ThingKind::breaker:
            return has(shown.breakers, survey.breakers.position(of.id));
        case ThingKind::circuit:
            return has(shown.circuits, survey.circuits.position(of.id));
        case ThingKind::load:
            return has(shown.loads, survey.loads.position(of.id)) ||
                   survey.loads.find(of.id)->panel == survey.panels[panel].id;
        default:
            return false;
    }
}

}  // namespace

Message ScheduleGap::text() const {
    if (handles.empty()) return what;
    std::string list;
    for (const std::string& handle : handles) list += (list.empty() ? "" : ", ") + handle;
    return {tr("{0}: {1}"), {what, list}};
}

void add_neutrals(const Network& network, const Assessment& assessment, PanelSchedule& schedule) {
    for (std::size_t i = 0; i < network.neutrals().size(); ++i) {
        const auto& panels = network.neutrals()[i].panels;
        if (has(panels, schedule.panel)) schedule.neutrals.push_back(assessment.neutrals[i]);
    }
}

void add_assumed(const Network& network, const Assessment& assessment, PanelSchedule& schedule) {
    const Shown shown = shown_of(network, schedule);
    for (const Assumption& assumed : assessment.assumed) {
        const auto of = parse_address(assumed.of);
        if (of && is_shown(network.survey(), shown, schedule.panel, *of)) schedule.assumed.push_back(assumed);
    }
}

void add_gaps(const Network& network, PanelSchedule& schedule) { Gaps(network, schedule).add(); }

}  // namespace doorcard
