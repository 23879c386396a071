// SPDX-License-Identifier: MIT
#include "assess/circuit_load.hpp"

#include <algorithm>

#include "assess/rule_parts.hpp"
#include "rules/lookups.hpp"

namespace doorcard {
namespace {

bool on_leg(const PlacedLoad& load, char leg) {
    return load.current.known() && load.current.legs.find(leg) != std::string::npos;
}

/// The one range, or the one cooktop with one or two ovens, that Table 220.55 judges as one (note 4); empty where there
/// is none.
std::vector<const PlacedLoad*> cooking_set(const std::vector<PlacedLoad>& loads) {
    std::vector<const PlacedLoad*> set;
    double ranges = 0, cooktops = 0, ovens = 0;
    for (const PlacedLoad& load : loads) {
        const Duty duty = load.duty();
        if (duty != Duty::range && duty != Duty::cooktop && duty != Duty::oven) continue;
        (duty == Duty::range ? ranges : duty == Duty::cooktop ? cooktops : ovens) += load.count;
        set.push_back(&load);
    }
    const bool one_range = ranges == 1 && cooktops == 0 && ovens == 0;
    const bool one_set = ranges == 0 && cooktops == 1 && (ovens == 1 || ovens == 2);
    const bool known =
        std::ranges::all_of(set, [](const PlacedLoad* l) { return l->current.va && l->current.known(); });
    if ((one_range || one_set) && known) return set;
    return {};
}

/// What the nameplate current of the cooking set is multiplied by: the lesser of itself and the table's demand.
double cooking_scale(const std::vector<const PlacedLoad*>& set, const PanelSupply& supply, const RuleBook& book) {
    if (set.empty()) return 1;
    VoltAmperes rating(0);
    LegSums sums;
    for (const PlacedLoad* load : set) {
        rating += *load->current.va * load->count;
        sums.add(load->current, supply, load->count);
    }
    const auto demand = range_demand(book, rating);
    const auto nominal = set.front()->current.nominal;
    if (!demand || !nominal) return 1;
    Amperes own(0);
    for (const char leg : set.front()->current.legs) own = std::max(own, sums.amps(leg));
    return own.value == 0 ? 1 : std::min(1.0, *demand / *nominal / own);
}

class Reckoner {
public:
    Reckoner(const std::vector<PlacedLoad>& loads, const PanelSupply& supply, bool in_occupancy, const RuleBook& book)
        : loads_(loads), supply_(supply), in_occupancy_(in_occupancy), book_(book) {
        if (!in_occupancy) set_ = cooking_set(loads);
        set_scale_ = cooking_scale(set_, supply, book);
    }

    LegDemand leg(char letter) const {
        LegDemand demand;
        const auto all = [](const PlacedLoad&) { return true; };
        const auto without_minimum = [](const PlacedLoad& load) { return !load.has_minimum_circuit(); };
        demand.continuous_sum = sum(letter, true, all);
        demand.noncontinuous_sum = sum(letter, false, all);
        demand.continuous_bare = sum(letter, true, without_minimum);
        demand.noncontinuous_bare = sum(letter, false, without_minimum);
        demand.cord_sum = cords(letter);
        demand.largest_motor = largest_motor(letter);
        demand.minimum_circuits = minimum_circuits(letter);
        return demand;
    }

private:
    bool in_set(const PlacedLoad& load) const { return std::ranges::find(set_, &load) != set_.end(); }
    double scale(const PlacedLoad& load) const { return in_set(load) ? set_scale_ : 1; }
    bool runs_alone(const PlacedLoad& load) const { return !in_occupancy_ && load.cord && !load.continuous; }

    /// The phasor sum of a class on a leg. In dwellings only the largest noncontinuous cord appliance is in
    /// it.
    template <class Which>
    LegSums::Pair sum(char letter, bool continuous, Which which) const {
        LegSums sums;
        const PlacedLoad* largest = continuous ? nullptr : largest_cord(letter, which);
        for (const PlacedLoad& load : loads_) {
            if (load.continuous != continuous || !on_leg(load, letter) || !which(load)) continue;
            if (!runs_alone(load))
                sums.add(load.current, supply_, load.count, scale(load));
            else if (is_part_of(load, largest))
                sums.add(load.current, supply_, 1, scale(load));
        }
        return sums.leg(letter);
    }

    /// A cooking set is one appliance.
    bool is_part_of(const PlacedLoad& load, const PlacedLoad* largest) const {
        return largest && (&load == largest || (in_set(load) && in_set(*largest)));
    }

    template <class Which>
    const PlacedLoad* largest_cord(char letter, Which which) const {
        const PlacedLoad* largest = nullptr;
        Amperes most(-1);
        for (const PlacedLoad& load : loads_) {
            if (!runs_alone(load) || !on_leg(load, letter) || !which(load)) continue;
            const Amperes size = cord_size(load);
            if (size > most) {
                most = size;
                largest = &load;
            }
        }
        return largest;
    }

    Amperes cord_size(const PlacedLoad& load) const {
        if (!in_set(load)) return load.current.total();
        Amperes whole(0);
        for (const PlacedLoad* part : set_)
            if (runs_alone(*part)) whole += part->current.total() * set_scale_;
        return whole;
    }

    LegSums::Pair cords(char letter) const {
        LegSums sums;
        for (const PlacedLoad& load : loads_)
            if (load.cord && on_leg(load, letter)) sums.add(load.current, supply_, load.count);
        return sums.leg(letter);
    }

    Amperes minimum_circuits(char letter) const {
        Amperes sum(0);
        for (const PlacedLoad& load : loads_)
            if (load.has_minimum_circuit() && on_leg(load, letter)) sum += *load.load->min_circuit_a * load.count;
        return sum;
    }

    Amperes largest_motor(char letter) const {
        Amperes largest(0);
        for (const PlacedLoad& load : loads_)
            if (counts_as_motor(load) && on_leg(load, letter)) largest = std::max(largest, motor_amps(load));
        return largest;
    }

    bool counts_as_motor(const PlacedLoad& load) const {
        if (!load.motor || load.cord || load.continuous || load.has_minimum_circuit()) return false;
        const auto hp = load.load->hp ? horsepower(*load.load->hp) : std::nullopt;
        return !hp || *hp > book_.figure("motor-extra-min-hp");
    }

    static Amperes motor_amps(const PlacedLoad& load) {
        return load.load->largest_motor_a.value_or(load.current.total());
    }

    const std::vector<PlacedLoad>& loads_;
    const PanelSupply& supply_;
    bool in_occupancy_;
    const RuleBook& book_;
    std::vector<const PlacedLoad*> set_;
    double set_scale_ = 1;
};

template <class Measure>
const LegDemand* largest_by(const std::map<char, LegDemand>& legs, Measure measure) {
    const LegDemand* largest = nullptr;
    for (const auto& [letter, demand] : legs)
        if (!largest || exceeds(measure(demand), measure(*largest))) largest = &demand;  // of equals the first
    return largest;
}

}  // namespace

const LegDemand* CircuitDemand::largest_required() const {
    return largest_by(legs, [](const LegDemand& leg) { return leg.required; });
}

const LegDemand* CircuitDemand::largest_sum() const {
    return largest_by(legs, [](const LegDemand& leg) { return leg.everything(); });
}

namespace {

Amperes size_of(const LegSums::Pair& sum) { return Amperes(std::hypot(std::abs(sum.first), std::abs(sum.third))); }

/// The amperes that follow from the sums. 0.25 of the largest motor where there is a second appliance.
void settle(CircuitDemand& demand, bool full_rated, const RuleBook& book) {
    const double factor = book.figure(full_rated ? "full-rated-factor" : "continuous-factor");
    const double motor_share = demand.appliances >= 2 ? book.figure("motor-extra") : 0;
    for (auto& [letter, leg] : demand.legs) {
        leg.continuous = size_of(leg.continuous_sum);
        leg.noncontinuous = size_of(leg.noncontinuous_sum);
        leg.cords = size_of(leg.cord_sum);
        leg.required = size_of(leg.noncontinuous_bare) + factor * size_of(leg.continuous_bare) +
                       motor_share * leg.largest_motor + leg.minimum_circuits;
    }
}

void join(LegSums::Pair& sum, const LegSums::Pair& more) {
    sum.first += more.first;
    sum.third += more.third;
}

void join(LegDemand& leg, const LegDemand& more) {
    join(leg.continuous_sum, more.continuous_sum);
    join(leg.noncontinuous_sum, more.noncontinuous_sum);
    join(leg.continuous_bare, more.continuous_bare);
    join(leg.noncontinuous_bare, more.noncontinuous_bare);
    join(leg.cord_sum, more.cord_sum);
    leg.largest_motor = std::max(leg.largest_motor, more.largest_motor);
    leg.minimum_circuits += more.minimum_circuits;
}

}  // namespace

CircuitDemand circuit_demand(const std::vector<PlacedLoad>& loads, const std::string& legs, const PanelSupply* supply,
                             bool in_occupancy, bool full_rated, const RuleBook& book) {
    CircuitDemand demand;
    demand.motors_alone = !loads.empty() && std::ranges::all_of(loads, &PlacedLoad::motor_alone);
    for (const PlacedLoad& load : loads) demand.appliances += load.count;
    const bool any_known = std::ranges::any_of(loads, [](const PlacedLoad& load) { return load.current.known(); });
    if (!supply || !any_known) return demand;
    const Reckoner reckoner(loads, *supply, in_occupancy, book);
    for (const char leg : legs) demand.legs.emplace(leg, reckoner.leg(leg));
    settle(demand, full_rated, book);
    return demand;
}

CircuitDemand together(std::span<const CircuitDemand> circuits, bool full_rated, const RuleBook& book) {
    CircuitDemand sum;
    sum.motors_alone = std::ranges::all_of(
        circuits, [](const CircuitDemand& circuit) { return circuit.motors_alone || circuit.appliances == 0; });
    for (const CircuitDemand& circuit : circuits) {
        sum.appliances += circuit.appliances;
        for (const auto& [letter, demand] : circuit.legs) join(sum.legs[letter], demand);
    }
    settle(sum, full_rated, book);
    return sum;
}

}  // namespace doorcard
