// SPDX-License-Identifier: MIT
#include "desk/face_facts.hpp"

#include <algorithm>
#include <set>

#include "assess/part.hpp"
#include "desk/face_loads.hpp"

namespace doorcard {
namespace {

/// Gathers what belongs to one panel of a whole survey.
class Gathering {
public:
    Gathering(const Assessed& all, std::size_t panel)
        : all_(all),
          whole_panel_(panel),
          part_(part_around()),
          facts_{network_of(part_.survey), part_.position_of(panel), {}, {}, {}, {}, {}} {}

    FaceFacts facts() {
        facts_.directory = directory_of(facts_.network, facts_.panel);
        const FaceLoads loads(all_, facts_.network);
        for (const DirectoryRow& row : facts_.directory.rows)
            if (row.breaker) facts_.loads[survey().breakers[*row.breaker].id] = loads.of(row);
        for (const SharedNeutral& neutral : facts_.network.neutrals()) add_neutral(neutral);
        for (const Finding& finding : all_.assessment.findings) add_finding(finding);
        return std::move(facts_);
    }

private:
    const Survey& survey() const { return facts_.network.survey(); }

    // The panel, what feeds it (its legs follow from that), and what is judged together with it. Readings and limits
    // stay out: to sort them by panel would take longest of all.
    Part part_around() const {
        std::vector<bool> chosen(all_.homes.nowhere() + 1);
        for (std::size_t at = whole_panel_; at < all_.survey.panels.size() && !chosen[at];) {
            chosen[at] = true;
            at = panel_above(at);
        }
        all_.homes.add_those_together(chosen);
        Survey drawn = all_.survey;
        drawn.readings = {};
        drawn.limits = {};
        drawn.accepted = {};
        return part_of(drawn, all_.homes, chosen, all_.assessment.panel_totals);
    }

    std::size_t panel_above(std::size_t panel) const {
        for (const std::string& feed : all_.survey.panels[panel].fed_by)
            if (const Breaker* breaker = all_.survey.breakers.find(feed))
                return all_.survey.panels.position(breaker->panel);
        return all_.survey.panels.size();
    }

    void add_neutral(const SharedNeutral& neutral) {
        RowNeutral row{neutral.id, {}, false, false};
        const auto figures = std::ranges::find(all_.assessment.neutrals, neutral.id, &NeutralFigures::id);
        if (figures != all_.assessment.neutrals.end()) {
            row.amps = std::max(figures->amps, figures->measured_a);
            row.is_over = row.amps && figures->ampacity_a && *row.amps > *figures->ampacity_a;
        }
        std::set<char> legs;
        for (const Hot& hot : neutral.hots)
            if (hot.leg != '?' && !legs.insert(hot.leg).second) row.is_on_one_leg = true;
        facts_.neutrals.emplace(neutral.id, row);
    }

    void add_finding(const Finding& finding) {
        const Address& of = finding.of;
        const bool is_here = finding.standing.panel == whole_panel_;
        if (of.kind == ThingKind::neutral ? !facts_.neutrals.contains(of.id) : !is_here) return;
        const std::vector<std::size_t> breakers = breakers_of(of);
        if (is_here && breakers.empty()) return take(facts_.panel_finding, finding);
        for (const std::size_t breaker : breakers) {
            std::optional<RowFinding> worst;
            const std::string& id = survey().breakers[breaker].id;
            if (const auto known = facts_.findings.find(id); known != facts_.findings.end()) worst = known->second;
            take(worst, finding);
            facts_.findings.insert_or_assign(id, *worst);
        }
    }

    // Findings come by weight: the first of a row is its worst.
    static void take(std::optional<RowFinding>& worst, const Finding& finding) {
        if (!worst) worst = RowFinding{finding.severity, finding.text, 0};
        ++worst->count;
    }

    std::vector<std::size_t> breakers_of(const Address& of) const {
        switch (of.kind) {
            case ThingKind::breaker:
                return at(survey().breakers, of.id);
            case ThingKind::circuit:
                return of_circuits(at(survey().circuits, of.id));
            case ThingKind::outlet:
                return of_outlets(at(survey().outlets, of.id));
            case ThingKind::load:
                return of_load(survey().loads.find(of.id));
            case ThingKind::neutral:
                return of_neutral(of.id);
            default:
                return {};
        }
    }

    template <class T>
    static std::vector<std::size_t> at(const Table<T>& table, const std::string& id) {
        const std::size_t position = table.position(id);
        return position < table.size() ? std::vector{position} : std::vector<std::size_t>{};
    }

    std::vector<std::size_t> of_circuits(const std::vector<std::size_t>& circuits) const {
        std::vector<std::size_t> found;
        for (const std::size_t circuit : circuits)
            for (const std::size_t breaker : facts_.network.breakers_of(circuit)) found.push_back(breaker);
        return found;
    }
    std::vector<std::size_t> of_outlets(const std::vector<std::size_t>& outlets) const {
        return outlets.empty() ? outlets : of_circuits(facts_.network.circuits_at(outlets.front()));
    }
    std::vector<std::size_t> of_load(const Load* load) const {
        if (load && load->outlet) return of_outlets(at(survey().outlets, *load->outlet));
        return load && load->circuit ? of_circuits(at(survey().circuits, *load->circuit)) : std::vector<std::size_t>{};
    }
    std::vector<std::size_t> of_neutral(const std::string& id) const {
        const auto& neutrals = facts_.network.neutrals();
        const auto found = std::ranges::find(neutrals, id, &SharedNeutral::id);
        return found == neutrals.end() ? std::vector<std::size_t>{} : of_circuits(found->circuits);
    }

    const Assessed& all_;
    std::size_t whole_panel_;
    Part part_;
    FaceFacts facts_;
};

}  // namespace

std::optional<double> RowLoad::share() const {
    const auto amps = most();
    return rating && amps ? std::optional(*amps / *rating) : std::nullopt;
}

const RowLoad* FaceFacts::load_of(const DirectoryRow& row) const {
    const bool carries = row.breaker && row.kind != RowKind::spare && row.kind != RowKind::off &&
                         row.kind != RowKind::main && row.kind != RowKind::source;
    const auto found = carries ? loads.find(breaker_of(row)->id) : loads.end();
    return found == loads.end() ? nullptr : &found->second;
}

const RowFinding* FaceFacts::finding_of(const DirectoryRow& row) const {
    const auto found = row.breaker ? findings.find(breaker_of(row)->id) : findings.end();
    return found == findings.end() ? nullptr : &found->second;
}

FaceFacts face_facts(const Assessed& all, std::size_t panel) { return Gathering(all, panel).facts(); }

}  // namespace doorcard
