// SPDX-License-Identifier: MIT
#include "desk/face_facts.hpp"

#include <algorithm>
#include <set>

#include "assess/part.hpp"

namespace doorcard {
namespace {

void add(std::optional<Amperes>& sum, const std::optional<Amperes>& more) {
    if (more) sum = Amperes((sum ? sum->value : 0) + more->value);
}

class Facts {
public:
    Facts(const Assessed& all, std::size_t panel) : all_(all), whole_panel_(panel), part_(part_around(all, panel)) {}

    FaceFacts facts() {
        FaceFacts facts{network_of(part_.survey), part_.position_of(whole_panel_), {}, {}, {}, {}, {}};
        facts.directory = directory_of(facts.network, facts.panel);
        for (const DirectoryRow& row : facts.directory.rows)
            if (row.breaker) facts.loads[part_.survey.breakers[*row.breaker].id] = load_of(facts.network, row);
        for (const SharedNeutral& neutral : facts.network.neutrals()) add_neutral(neutral, facts);
        for (const Finding& finding : all_.assessment.findings) add_finding(finding, facts);
        return facts;
    }

private:
    static Part part_around(const Assessed& all, std::size_t panel) {
        std::vector<bool> chosen(all.homes.nowhere() + 1);
        chosen[panel] = true;
        all.homes.add_those_together(chosen);
        return part_of(all.survey, all.homes, chosen, all.assessment.panel_totals);
    }

    RowLoad load_of(const Network& network, const DirectoryRow& row) const {
        RowLoad load;
        load.rating = part_.survey.breakers[*row.breaker].amps;
        for (const std::size_t circuit : row.circuits) {
            const std::size_t at = all_.survey.circuits.position(part_.survey.circuits[circuit].id);
            if (at < all_.assessment.circuits.size()) add_figures(all_.assessment.circuits[at], load);
        }
        for (const std::size_t fed : network.panels_fed_by(*row.breaker)) {
            const std::size_t at = all_.survey.panels.position(part_.survey.panels[fed].id);
            if (at < all_.assessment.feeders.size()) add_figures(all_.assessment.feeders[at], load);
        }
        return load;
    }

    static void add_figures(const LoadFigures& figures, RowLoad& load) {
        add(load.calculated, figures.continuous_a);
        add(load.calculated, figures.noncontinuous_a);
        add(load.measured, figures.measured_a);
        load.is_at_least = load.is_at_least || !figures.connected_va;
    }

    void add_neutral(const SharedNeutral& neutral, FaceFacts& facts) const {
        const auto found = std::ranges::find(all_.assessment.neutrals, neutral.id, &NeutralFigures::id);
        std::set<char> legs;
        bool twice = false;
        for (const Hot& hot : neutral.hots) twice = (hot.leg != '?' && !legs.insert(hot.leg).second) || twice;
        facts.neutrals[neutral.id] = {neutral.id, found == all_.assessment.neutrals.end() ? std::nullopt : found->amps,
                                      twice};
    }

    // The worst is the first: findings come by weight.
    void add_finding(const Finding& finding, FaceFacts& facts) const {
        if (finding.standing.panel != whole_panel_ || finding.severity == Severity::notice) return;
        for (const DirectoryRow& row : facts.directory.rows) {
            const bool is_here = row.breaker && std::ranges::any_of(row.positions, [&](Position one) {
                                     return one.space == finding.standing.space;
                                 });
            if (!is_here) continue;
            const std::string& id = part_.survey.breakers[*row.breaker].id;
            if (facts.worst.emplace(id, finding.severity).second) facts.worst_text.emplace(id, finding.text);
        }
    }

    const Assessed& all_;
    std::size_t whole_panel_;
    Part part_;
};

}  // namespace

FaceFacts face_facts(const Assessed& all, std::size_t panel) { return Facts(all, panel).facts(); }

}  // namespace doorcard
