// SPDX-License-Identifier: MIT
#include "assess/reassess.hpp"

#include <algorithm>
#include <span>
#include <unordered_map>

#include "assess/part.hpp"

namespace doorcard {
namespace {

using Flags = std::vector<bool>;

/// Tables whose every change reaches further than a panel.
bool same_frame(const Survey& a, const Survey& b) {
    return a.heading == b.heading && a.dwellings == b.dwellings && a.occupancies == b.occupancies &&
           a.grounding == b.grounding && a.sources == b.sources && a.rooms == b.rooms && a.managed == b.managed &&
           a.recordings == b.recordings && a.waveforms == b.waveforms && a.demands == b.demands &&
           a.rounds == b.rounds && a.mapping == b.mapping && a.trips == b.trips && a.hunts == b.hunts &&
           a.trials == b.trials && a.photos == b.photos;
}

bool same_feeds(const Survey& a, const Survey& b) {
    return std::ranges::equal(a.panels, b.panels,
                              [](const Panel& p, const Panel& q) { return p.id == q.id && p.fed_by == q.fed_by; });
}

/// Rules of the whole premises: a dwelling that names no panels is all of it, and a circuit without a breaker may be
/// anybody's.
bool dwellings_need_all(const Survey& survey) {
    if (survey.dwellings.empty()) return false;
    return std::ranges::any_of(survey.dwellings, [](const Dwelling& one) { return !one.panels; }) ||
           std::ranges::any_of(survey.circuits, [](const Circuit& one) { return one.breakers.empty(); });
}

/// Where a source comes in, and what it meets there, only the whole premises say.
bool sources_need_all(const Survey& survey) {
    return std::ranges::any_of(survey.sources, [](const Source& source) {
        return source.labelled == false || (source.kind == "generator" && source.interlock == "none");
    });
}

/// Which panels an edit reaches.
class Reach {
public:
    Reach(const Assessed& before, const Survey& after, const ThingChanges& changes, const Homes& homes)
        : before_(before),
          after_(after),
          homes_(homes),
          chosen_(homes.nowhere() + 1),
          above_(after.panels.size()),
          below_(after.panels.size()) {
        find_feeds();
        const RowChanges panels(before.survey.panels, after.panels);
        for (const std::size_t p : panels.come) choose_below(p);
        choose_things(changes);
        choose_named(RowChanges(before.survey.readings, after.readings), before.survey.readings, after.readings);
        choose_named(RowChanges(before.survey.limits, after.limits), before.survey.limits, after.limits);
        choose_accepted(RowChanges(before.survey.accepted, after.accepted));
        close();
    }

    const Flags& chosen() const { return chosen_; }
    bool of_sources() const { return of_sources_; }

    /// A panel and all that it feeds; true where any of it was not chosen yet.
    bool choose_below(std::size_t panel) {
        bool more = false;
        for (const std::size_t p : with_all_below(panel)) {
            more = more || !chosen_[p];
            chosen_[p] = true;
        }
        return more;
    }

    /// Panels that feed a chosen one, and all judged together with one: a dwelling unit is judged whole.
    void close() {
        for (Flags last; last != chosen_;) {
            last = chosen_;
            homes_.add_those_together(chosen_);
            for (const Dwelling& dwelling : after_.dwellings)
                for (const std::string& id : dwelling.panels.value_or(Ids{})) choose_unit(after_.panels.position(id));
            for (std::size_t p = 0; p < after_.panels.size(); ++p)
                if (chosen_[p])
                    for (const std::size_t above : above_[p]) chosen_[above] = true;
        }
    }

private:
    std::vector<std::size_t> with_all_below(std::size_t panel) const {
        std::vector<std::size_t> found;
        std::vector<std::size_t> open = {panel};
        while (!open.empty()) {
            const std::size_t p = open.back();
            open.pop_back();
            if (std::ranges::find(found, p) != found.end()) continue;
            found.push_back(p);
            open.insert(open.end(), below_[p].begin(), below_[p].end());
        }
        return found;
    }

    void choose_unit(std::size_t panel) {
        if (panel >= after_.panels.size()) return;
        const auto unit = with_all_below(panel);
        if (std::ranges::any_of(unit, [&](std::size_t p) { return chosen_[p]; })) choose_below(panel);
    }

    void find_feeds() {
        for (std::size_t p = 0; p < after_.panels.size(); ++p)
            for (const std::string& feed : after_.panels[p].fed_by) {
                const std::size_t b = after_.breakers.position(feed);
                if (b >= after_.breakers.size() || homes_.of_breaker(b) == homes_.nowhere()) continue;
                above_[p].push_back(homes_.of_breaker(b));
                below_[homes_.of_breaker(b)].push_back(p);
            }
    }

    void choose_things(const ThingChanges& changes) {
        for (const std::size_t i : changes.breakers.gone)
            choose_breaker(before_.survey.breakers[i], before_.homes.of_breaker(i));
        for (const std::size_t i : changes.breakers.come) choose_breaker(after_.breakers[i], homes_.of_breaker(i));
        for (const std::size_t i : changes.circuits.gone) chosen_[before_.homes.of_circuit(i)] = true;
        for (const std::size_t i : changes.circuits.come) chosen_[homes_.of_circuit(i)] = true;
        for (const std::size_t i : changes.outlets.gone) chosen_[before_.homes.of_outlet(i)] = true;
        for (const std::size_t i : changes.outlets.come) chosen_[homes_.of_outlet(i)] = true;
        for (const std::size_t i : changes.loads.gone) chosen_[before_.homes.of_load(i)] = true;
        for (const std::size_t i : changes.loads.come) chosen_[homes_.of_load(i)] = true;
    }

    void choose_breaker(const Breaker& breaker, std::size_t home) {
        chosen_[home] = true;
        for (std::size_t p = 0; p < after_.panels.size(); ++p)
            if (std::ranges::find(after_.panels[p].fed_by, breaker.id) != after_.panels[p].fed_by.end())
                choose_below(p);
    }

    void choose_address(const Survey& survey, const Homes& homes, const Address& of) {
        if (of.kind == ThingKind::source) of_sources_ = true;
        chosen_[homes.of(survey, of)] = true;
        if (of.kind != ThingKind::breaker) return;
        for (std::size_t p = 0; p < after_.panels.size(); ++p)  // a feeder's reading is its panel's
            if (std::ranges::find(after_.panels[p].fed_by, of.id) != after_.panels[p].fed_by.end()) chosen_[p] = true;
    }

    template <class T>
    void choose_named(const RowChanges& rows, const Table<T>& before, const Table<T>& after) {
        for (const std::size_t i : rows.gone) choose_address(before_.survey, before_.homes, before[i].of);
        for (const std::size_t i : rows.come) choose_address(after_, homes_, after[i].of);
    }

    void choose_accepted(const RowChanges& rows) {
        const auto choose = [&](const Survey& survey, const Homes& homes, const Accepted& accepted) {
            const auto of = parse_address(accepted.of.value_or(""));
            choose_address(survey, homes, of.value_or(Address{}));
        };
        for (const std::size_t i : rows.gone) choose(before_.survey, before_.homes, before_.survey.accepted[i]);
        for (const std::size_t i : rows.come) choose(after_, homes_, after_.accepted[i]);
    }

    const Assessed& before_;
    const Survey& after_;
    const Homes& homes_;
    Flags chosen_;
    std::vector<std::vector<std::size_t>> above_, below_;  // by panel: what feeds it, what it feeds
    bool of_sources_ = false;
};

/// Puts what follows anew into what followed before.
class Splice {
public:
    Splice(const Survey& before, const Homes& homes_before, const Survey& after, const Homes& homes,
           const Flags& chosen, const Part& part)
        : before_(before), homes_before_(homes_before), after_(after), homes_(homes), chosen_(chosen), part_(part) {}

    /// False where the rows do not stand as they must: then all is looked at anew.
    bool into(Assessment& whole, Assessment anew) {
        if (!splice_circuits(whole, anew)) return false;
        for (std::size_t p = 0; p < part_.panels.size(); ++p) {
            const std::size_t at = part_.panels[p];
            if (!chosen_[at]) continue;
            whole.feeders[at] = std::move(anew.feeders[p]);
            whole.panels[at] = std::move(anew.panels[p]);
            whole.panel_totals[at] = anew.panel_totals[p];
        }
        splice_neutrals(whole, anew);
        splice_joints(whole, anew);
        splice_findings(whole.findings, std::move(anew.findings));
        splice_findings(whole.accepted, std::move(anew.accepted));
        splice_assumed(whole, anew);
        return true;
    }

private:
    bool splice_circuits(Assessment& whole, Assessment& anew) {
        std::vector<LoadFigures> spliced;
        spliced.reserve(after_.circuits.size());
        std::size_t old = 0, next = 0;
        for (std::size_t c = 0; c < after_.circuits.size(); ++c) {
            LoadFigures* from = nullptr;
            if (chosen_[homes_.of_circuit(c)]) {
                if (next < anew.circuits.size()) from = &anew.circuits[next++];
            } else {
                while (old < whole.circuits.size() && chosen_[homes_before_.of_circuit(old)]) ++old;
                if (old < whole.circuits.size()) from = &whole.circuits[old++];
            }
            if (!from || from->id != after_.circuits[c].id) return false;
            spliced.push_back(std::move(*from));
        }
        whole.circuits = std::move(spliced);
        return true;
    }

    /// In the order in which circuits name them.
    void splice_neutrals(Assessment& whole, Assessment& anew) {
        std::unordered_map<std::string, NeutralFigures> by_name;
        for (NeutralFigures& neutral : whole.neutrals)
            if (!chosen_[homes_.of(after_, {ThingKind::neutral, neutral.id, ""})])
                by_name.emplace(neutral.id, std::move(neutral));
        for (NeutralFigures& neutral : anew.neutrals) by_name.emplace(neutral.id, std::move(neutral));
        whole.neutrals.clear();
        for (const Circuit& circuit : after_.circuits) {
            if (!circuit.names_neutral()) continue;
            const auto found = by_name.find(*circuit.neutral);
            if (found == by_name.end()) continue;
            whole.neutrals.push_back(std::move(found->second));
            by_name.erase(found);
        }
    }

    /// In the order of their outlets.
    void splice_joints(Assessment& whole, Assessment& anew) {
        const auto position = [&](const JointFigures& joint) { return after_.outlets.position(joint.outlet); };
        const auto is_old = [&](const JointFigures& joint) {
            return position(joint) >= after_.outlets.size() || chosen_[homes_.of_outlet(position(joint))];
        };
        std::erase_if(whole.joints, is_old);
        for (JointFigures& joint : anew.joints)
            if (is_old(joint)) whole.joints.push_back(std::move(joint));
        std::ranges::sort(whole.joints, {}, position);
    }

    bool is_chosen(const Finding& finding) const { return chosen_[homes_.of(after_, finding.of)]; }

    void splice_findings(std::vector<Finding>& whole, std::vector<Finding> anew) {
        std::erase_if(whole,
                      [&](const Finding& old) { return chosen_[homes_before_.of(before_, old.of)] || is_chosen(old); });
        std::erase_if(anew, [&](const Finding& found) { return !is_chosen(found); });
        for (Finding& found : anew)
            if (found.standing.panel < part_.panels.size()) found.standing.panel = part_.panels[found.standing.panel];
        const auto middle = static_cast<std::ptrdiff_t>(whole.size());
        std::ranges::move(anew, std::back_inserter(whole));
        std::ranges::inplace_merge(whole, whole.begin() + middle, comes_first);
    }

    void splice_assumed(Assessment& whole, Assessment& anew) {
        const auto block = [](const Assessment& of, std::size_t at) {
            return std::pair(at == 0 ? 0 : of.assumed_up_to[at - 1], of.assumed_up_to[at]);
        };
        for (std::size_t home = chosen_.size(); home-- > 0;) {  // from the end: what stands before keeps its place
            if (!chosen_[home]) continue;
            const std::size_t in_part = home == homes_.nowhere() ? part_.panels.size() : part_.position_of(home);
            const auto [from, to] = block(anew, in_part);
            const auto [first, last] = block(whole, home);
            replace(whole.assumed, {first, last}, std::span(anew.assumed).subspan(from, to - from));
            for (std::size_t i = home; i < chosen_.size(); ++i) whole.assumed_up_to[i] += (to - from) - (last - first);
        }
    }

    static void replace(std::vector<Assumption>& list, std::pair<std::size_t, std::size_t> old,
                        std::span<Assumption> anew) {
        const std::size_t kept = std::min(old.second - old.first, anew.size());
        const auto at = list.begin() + static_cast<std::ptrdiff_t>(old.first);
        const auto end = std::move(anew.begin(), anew.begin() + static_cast<std::ptrdiff_t>(kept), at);
        if (kept < anew.size())
            list.insert(end, anew.begin() + static_cast<std::ptrdiff_t>(kept), anew.end());
        else
            list.erase(end, list.begin() + static_cast<std::ptrdiff_t>(old.second));
    }

    const Survey& before_;
    const Homes& homes_before_;
    const Survey& after_;
    const Homes& homes_;
    const Flags& chosen_;
    const Part& part_;
};

/// True where the sums of the panels that are only known by their totals hold above them.
bool totals_hold(const Part& part, const Network& network) {
    return std::ranges::all_of(part.known, [&](const auto& known) {
        if (network.survey().panels[known.first].transformer) return true;
        return std::ranges::all_of(panels_above(network, known.first), [&](std::size_t above) {
            return stands_alike(network.supply(known.first), network.supply(above));
        });
    });
}

/// A panel whose feeders above now lose another share: all below it is reached too.
bool reach_further_down(Reach& reach, const Part& part, const Assessment& anew, const Assessment& before) {
    bool further = false;
    for (std::size_t p = 0; p < part.panels.size(); ++p) {
        const std::size_t at = part.panels[p];
        if (!reach.chosen()[at]) continue;
        if (anew.feeders[p].total_drop_percent != before.feeders[at].total_drop_percent)
            further = reach.choose_below(at) || further;
    }
    return further;
}

}  // namespace

Assessed assess_all(const Survey& survey, const RuleBook& book) {
    return {survey, Homes(survey), assess(network_of(survey), book), survey.panels.size()};
}

Assessed reassess(Assessed before, const Survey& after, const RuleBook& book) {
    if (!before.assessment.is_tree || dwellings_need_all(after) || dwellings_need_all(before.survey) ||
        sources_need_all(after) || !same_frame(before.survey, after) || !same_feeds(before.survey, after))
        return assess_all(after, book);
    const ThingChanges changes(before.survey, after);
    Homes homes = before.homes;
    homes.follow(after, changes);
    Reach reach(before, after, changes, homes);
    if (reach.of_sources()) return assess_all(after, book);
    for (;;) {
        const Part part = part_of(after, homes, reach.chosen(), before.assessment.panel_totals);
        const Network network = network_of(part.survey);
        if (!totals_hold(part, network)) return assess_all(after, book);
        Assessment anew = assess(network, book, part.known);
        if (!anew.is_tree) return assess_all(after, book);
        if (reach_further_down(reach, part, anew, before.assessment)) {
            reach.close();
            continue;
        }
        Splice splice(before.survey, before.homes, after, homes, reach.chosen(), part);
        if (!splice.into(before.assessment, std::move(anew))) return assess_all(after, book);
        return {after, std::move(homes), std::move(before.assessment), part.panels.size() - part.known.size()};
    }
}

}  // namespace doorcard
