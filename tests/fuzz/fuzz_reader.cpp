// SPDX-License-Identifier: MIT
// The reader on any bytes: either a survey that keeps the laws of the file, or 1 to 50 complaints with places in it.
#include <algorithm>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <string>

#include "file/read_survey.hpp"

namespace {

using namespace doorcard;

void demand(bool holds, const char* what) {
    if (holds) return;
    std::fprintf(stderr, "fuzz_reader: broken: %s\n", what);
    std::abort();
}

template <class T>
void demand_all(const Ids& ids, const Table<T>& table, const char* what) {
    for (const std::string& id : ids) demand(table.contains(id), what);
}

template <class T>
void demand_unique(const Table<T>& table, const char* what) {
    for (std::size_t i = 0; i < table.size(); ++i)
        demand(!table[i].id.empty() && table.position(table[i].id) == i, what);
}

/// Goes up from every outlet: a way that is longer than there are outlets is a circle.
void demand_ways_up(const Table<Outlet>& outlets) {
    for (const Outlet& outlet : outlets) {
        const Outlet* at = &outlet;
        for (std::size_t steps = 0; at && at->upstream && *at->upstream != "home-run"; ++steps) {
            demand(steps <= outlets.size(), "upstream runs in a circle");
            at = outlets.find(*at->upstream);
            demand(at != nullptr, "upstream is an outlet");
        }
    }
}

/// Takes away panels that nothing but what was taken away feeds, until none is left: what stays is a circle.
void demand_feeds_from_the_top(const Survey& survey) {
    std::vector<bool> fed(survey.panels.size());
    const auto is_fed = [&](const Panel& panel) {
        return std::ranges::all_of(panel.fed_by, [&](const std::string& id) {
            const Breaker* breaker = survey.breakers.find(id);
            demand(breaker || survey.sources.contains(id), "fed_by is a source or breaker");
            return !breaker || fed[survey.panels.position(breaker->panel)];
        });
    };
    bool changed = true;
    while (std::exchange(changed, false))
        for (std::size_t i = 0; i < fed.size(); ++i)
            if (!fed[i] && is_fed(survey.panels[i])) changed = fed[i] = true;
    demand(std::ranges::all_of(fed, [](bool each) { return each; }), "fed_by runs in a circle");
}

void demand_laws(const Survey& survey) {
    demand_unique(survey.panels, "ids of panels");
    demand_unique(survey.breakers, "ids of breakers");
    demand_unique(survey.circuits, "ids of circuits");
    demand_unique(survey.outlets, "ids of outlets");
    demand_unique(survey.loads, "ids of loads");
    for (const Breaker& breaker : survey.breakers) {
        demand(survey.panels.contains(breaker.panel), "a breaker's panel");
        demand(!breaker.spaces.empty() && breaker.spaces.front() >= 1, "a breaker's spaces");
        demand(breaker.halves.empty() || breaker.halves.size() == breaker.spaces.size(), "a breaker's halves");
        demand_all(breaker.tied_with.value_or(Ids{}), survey.breakers, "ties");
    }
    for (const Circuit& circuit : survey.circuits)
        demand_all(circuit.breakers, survey.breakers, "breakers of a circuit");
    for (const Outlet& outlet : survey.outlets) demand_all(outlet.circuits, survey.circuits, "circuits of an outlet");
    for (const Load& load : survey.loads) {
        demand(!load.outlet || survey.outlets.contains(*load.outlet), "a load's outlet");
        demand(!load.count || *load.count >= 1, "a load's count");
        demand(!load.va || load.va->value >= 0, "a load's volt-amperes");
        demand_all(load.never_with.value_or(Ids{}), survey.loads, "never_with");
    }
    demand_ways_up(survey.outlets);
    demand_feeds_from_the_top(survey);
}

void demand_places(const std::vector<Complaint>& complaints, const std::string& text) {
    demand(!complaints.empty() && complaints.size() <= 50, "1 to 50 complaints");
    demand(std::ranges::is_sorted(complaints, {}, &Complaint::place), "complaints by place");
    const auto lines = static_cast<std::size_t>(std::ranges::count(text, '\n')) + 1;
    for (const Complaint& complaint : complaints) {
        demand(complaint.place.line >= 1 && complaint.place.line <= lines + 1, "a complaint's line");
        demand(complaint.place.column >= 1 && complaint.place.column <= text.size() + 2, "a complaint's column");
        demand(!complaint.wrong.empty() && !complaint.right.empty(), "a complaint's words");
    }
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string text(reinterpret_cast<const char*>(data), size);
    const auto read = read_survey({"fuzz", text});
    if (read)
        demand_laws(read->survey);
    else
        demand_places(read.error(), text);
    if (read) demand(read->text == text, "the text as it was");
    return 0;
}
