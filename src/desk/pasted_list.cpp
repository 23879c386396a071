// SPDX-License-Identifier: MIT
#include "desk/pasted_list.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>

#include "desk/face_places.hpp"
#include "file/read_list.hpp"
#include "survey/references.hpp"

namespace doorcard {
namespace {

bool noted_empty(const Panel& panel, int space) {
    return panel.empty_spaces && std::ranges::find(*panel.empty_spaces, space) != panel.empty_spaces->end();
}

/// The breaker that sits in a position, or in a part of it, or in the whole of which it is a half.
const Breaker* taken_by(const Survey& survey, const Panel& panel, Position at) {
    for (const char half : {at.half, ' ', 'a', 'b'})
        if (at.half == ' ' || half == ' ' || half == at.half)
            if (const Breaker* there = breaker_at(survey, panel.id, {at.space, half})) return there;
    return nullptr;
}

/// Whether these spaces lie below one another as this panel hangs; the list is read as if it were numbered odd and
/// even.
bool lie_below_one_another(const Survey& survey, const Breaker& breaker) {
    std::vector<int> wanted = breaker.spaces;
    std::ranges::sort(wanted);
    return std::ranges::any_of(wanted, [&](int top) {
        return spaces_down(survey, breaker.panel, top, static_cast<int>(wanted.size())) == wanted;
    });
}

using Refusal = std::optional<Complaint>;

Refusal refused_space(const Survey& survey, const Panel& panel, Position at) {
    const std::string place = name_of(at);
    if (const Breaker* there = taken_by(survey, panel, at))
        return Complaint{
            {}, fmt::format("{}: breaker {} sits there already", place, there->id), "change it on its row"};
    if (noted_empty(panel, at.space) || panel.all_breakers_entered.value_or(false))
        return Complaint{{},
                         fmt::format("{}: somebody looked, and noted it as empty", place),
                         "type it on its row, if one is there"};
    return std::nullopt;
}

Refusal refused_breaker(const Survey& survey, const Panel& panel, const Breaker& breaker) {
    const std::string place = name_of(positions_of(breaker));
    if (breaker.panel != panel.id)
        return Complaint{{},
                         fmt::format("{} is of panel {}, and {} is shown", place, breaker.panel, panel.id),
                         "paste it onto the face of that panel"};
    if (!lie_below_one_another(survey, breaker))
        return Complaint{
            {}, fmt::format("{}: these spaces do not lie below one another here", place), "type it on its row"};
    for (const Position at : positions_of(breaker))
        if (auto refusal = refused_space(survey, panel, at)) return refusal;
    if (survey.breakers.contains(breaker.id))
        return Complaint{{}, fmt::format("{}: another breaker has the id {}", place, breaker.id), "type it on its row"};
    return std::nullopt;
}

/// What goes in, as tables of their own, and what does not.
struct Fitting {
    std::vector<Breaker> breakers;
    std::vector<Circuit> circuits;
    std::vector<Load> loads;
    std::vector<Reading> readings;
    std::vector<int> empty;
    std::vector<Complaint> refused;
};

template <class T, class Keep>
std::vector<T> those_of(const Table<T>& rows, Keep keep) {
    std::vector<T> kept;
    std::ranges::copy_if(rows, std::back_inserter(kept), keep);
    return kept;
}

std::set<std::string> ids_of(const auto& rows) {
    std::set<std::string> ids;
    for (const auto& row : rows) ids.insert(row.id);
    return ids;
}

void drop_lost_ties(std::vector<Breaker>& breakers) {
    const auto known = ids_of(breakers);
    for (Breaker& breaker : breakers) {
        if (!breaker.tied_with) continue;
        std::erase_if(*breaker.tied_with, [&](const std::string& id) { return !known.contains(id); });
        if (breaker.tied_with->empty()) breaker.tied_with.reset();
    }
}

void fit_empty_spaces(const Survey& survey, const Panel& panel, const Survey& list, Fitting& fit) {
    const Panel* listed = list.panels.find(panel.id);
    if (!listed || !listed->empty_spaces) return;
    for (const int space : *listed->empty_spaces) {
        if (noted_empty(panel, space)) continue;
        if (const Breaker* there = taken_by(survey, panel, {space, ' '}))
            fit.refused.push_back(
                {{},
                 fmt::format("{}: the list has it empty, and breaker {} sits there", space, there->id),
                 "look again which is right"});
        else
            fit.empty.push_back(space);
    }
}

Fitting fitting(const Survey& survey, const Panel& panel, const Survey& list) {
    Fitting fit;
    for (const Breaker& breaker : list.breakers) {
        auto refusal = refused_breaker(survey, panel, breaker);
        refusal ? fit.refused.push_back(*std::move(refusal)) : fit.breakers.push_back(breaker);
    }
    drop_lost_ties(fit.breakers);
    const auto breakers = ids_of(fit.breakers);
    fit.circuits = those_of(list.circuits, [&](const Circuit& one) {
        return std::ranges::all_of(one.breakers, [&](const std::string& id) { return breakers.contains(id); });
    });
    const auto circuits = ids_of(fit.circuits);
    fit.loads = those_of(list.loads, [&](const Load& one) { return one.circuit && circuits.contains(*one.circuit); });
    fit.readings = those_of(list.readings, [&](const Reading& one) {
        return (one.of.kind == ThingKind::circuit && circuits.contains(one.of.id)) ||
               (one.of.kind == ThingKind::breaker && breakers.contains(one.of.id));
    });
    fit_empty_spaces(survey, panel, list, fit);
    return fit;
}

std::string unlike(const std::string& id, const std::set<std::string>& taken) {
    std::string unique = id;
    for (int n = 2; taken.contains(unique); ++n) unique = fmt::format("{}-{}", id, n);
    return unique;
}

/// Gives rows ids that are not taken; what became of them.
template <class T>
std::map<std::string, std::string> rename_taken(std::vector<T>& rows, std::set<std::string> taken) {
    std::map<std::string, std::string> names;
    for (T& row : rows) {
        const std::string id = unlike(row.id, taken);
        names[row.id] = id;
        row.id = id;
        taken.insert(id);
    }
    return names;
}

/// What fits as a list of its own, with ids of circuits and loads that the survey does not have.
Survey with_free_ids(const Survey& survey, Fitting fit) {
    std::set<std::string> ends = ids_of(survey.outlets);
    ends.merge(ids_of(survey.loads));
    const auto circuits = rename_taken(fit.circuits, ids_of(survey.circuits));
    rename_taken(fit.loads, std::move(ends));
    Survey list;
    list.breakers = Table<Breaker>(std::move(fit.breakers));
    list.circuits = Table<Circuit>(std::move(fit.circuits));
    list.loads = Table<Load>(std::move(fit.loads));
    list.readings = Table<Reading>(std::move(fit.readings));
    for (const auto& [id, other] : circuits) rename_all(list, named_circuit, id, other);
    return list;
}

template <class T>
void append(Table<T>& table, const Table<T>& more) {
    auto rows = table.rows();
    rows.insert(rows.end(), more.begin(), more.end());
    table = Table<T>(std::move(rows));
}

void note_empty(Survey& survey, std::string_view panel_id, const std::vector<int>& spaces) {
    if (spaces.empty()) return;
    const std::size_t at = survey.panels.position(panel_id);
    Panel panel = survey.panels[at];
    if (!panel.empty_spaces) panel.empty_spaces.emplace();
    panel.empty_spaces->insert(panel.empty_spaces->end(), spaces.begin(), spaces.end());
    std::ranges::sort(*panel.empty_spaces);
    survey.panels = survey.panels.with_row(at, std::move(panel));
}

Outcome<Survey> with_list(Survey survey, const std::string& panel_id, const Survey& list) {
    const Panel* panel = survey.panels.find(panel_id);
    if (!panel) return refused(fmt::format("there is no panel \"{}\"", panel_id), "choose one that is there");
    Fitting fit = fitting(survey, *panel, list);
    if (!fit.refused.empty()) return tl::unexpected(std::move(fit.refused));
    note_empty(survey, panel_id, fit.empty);
    const Survey rows = with_free_ids(survey, std::move(fit));
    append(survey.breakers, rows.breakers);
    append(survey.circuits, rows.circuits);
    append(survey.loads, rows.loads);
    append(survey.readings, rows.readings);
    return kept_laws(std::move(survey));
}

/// What of a list fits, as a list of its own.
Survey list_of(const Panel& panel, const Fitting& fit) {
    Survey list;
    Panel listed;
    listed.id = panel.id;
    if (!fit.empty.empty()) listed.empty_spaces = fit.empty;
    list.panels = Table<Panel>({listed});
    list.breakers = Table<Breaker>(fit.breakers);
    list.circuits = Table<Circuit>(fit.circuits);
    list.loads = Table<Load>(fit.loads);
    list.readings = Table<Reading>(fit.readings);
    return list;
}

std::vector<Complaint> by_line(std::vector<Complaint> complaints) {
    for (Complaint& one : complaints) one.wrong = fmt::format("line {}: {}", one.place.line, one.wrong);
    return complaints;
}

Message name_of_paste(std::size_t rows) {
    if (rows == 1) return {tr("paste a row"), {}};
    return {tr("paste {0:.0f} rows"), {static_cast<double>(rows)}};
}

}  // namespace

bool looks_like_list(std::string_view text) {
    const auto end = text.find_last_not_of("\r\n");
    return text.substr(0, end + 1).find_first_of("\n\r\t") != std::string_view::npos;
}

Outcome<PastedList> pasted_list(const Survey& survey, std::string_view panel_id, std::string_view text) {
    const Panel* panel = survey.panels.find(panel_id);
    if (!panel) return refused("there is no such panel", "choose one that is there");
    ListOptions options;
    options.panel = panel->id;
    options.spaces = panel->spaces;
    ListRead read = read_list(text, options);
    Fitting fit = fitting(survey, *panel, read.survey);
    PastedList pasted;
    pasted.refused = by_line(std::move(read.refused));
    pasted.refused.insert(pasted.refused.end(), fit.refused.begin(), fit.refused.end());
    pasted.rows = fit.breakers.size() + fit.empty.size();
    if (pasted.rows == 0 && pasted.refused.empty())
        return refused("no row of a panel is in it", "paste lines such as 12 Kitchen counter");
    if (pasted.rows == 0) return tl::unexpected(std::move(pasted.refused));
    pasted.edit = {name_of_paste(pasted.rows), [list = list_of(*panel, fit), id = panel->id](Survey now) {
                       return with_list(std::move(now), id, list);
                   }};
    return pasted;
}

}  // namespace doorcard
