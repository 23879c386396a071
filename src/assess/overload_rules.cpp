// SPDX-License-Identifier: MIT
// Circuits against their devices: continuous-over-80, load-over-rating, cord-sum-over-rating, continuous-by-rule.
#include <algorithm>

#include "assess/rule_list.hpp"
#include "assess/rule_parts.hpp"

namespace doorcard {
namespace {

/// What is judged against one rating: a circuit, or all circuits of a breaker together (then the breaker is named).
struct Judged {
    Address of;
    Message name;
    std::optional<Amperes> rating;
    bool full_rated = false;
    CircuitDemand demand;
    Measured measured;
};

Judged judged_circuit(const Reckoned& all, std::size_t c) {
    const Network& network = all.network;
    Judged judged{address_of(network, {ThingKind::circuit, c}),
                  circuit_name(network, c),
                  all.circuits[c].rating_a,
                  false,
                  all.demands[c],
                  all.measured[c]};
    const auto& breakers = network.breakers_of(c);
    judged.full_rated = !breakers.empty() && std::ranges::all_of(breakers, [&](std::size_t b) {
        return network.survey().breakers[b].full_rated.value_or(false);
    });
    return judged;
}

Judged judged_breaker(const Reckoned& all, std::size_t b) {
    const Network& network = all.network;
    const Breaker& breaker = network.survey().breakers[b];
    const bool full_rated = breaker.full_rated.value_or(false);
    std::vector<CircuitDemand> demands;
    Measured measured = all.measured_breakers[b];
    for (const std::size_t c : network.circuits_on(b)) {
        demands.push_back(all.demands[c]);
        measured.take(all.measured[c]);  // the breaker carries at least what any of its circuits does
    }
    return {address_of(network, {ThingKind::breaker, b}),
            verbatim(breaker_name(network, b)),
            breaker.amps,
            full_rated,
            together(demands, full_rated, all.book),
            measured};
}

/// Every circuit by itself, but those that share a breaker together, on the breaker.
std::vector<Judged> all_judged(const Reckoned& all) {
    const Network& network = all.network;
    std::vector<Judged> found;
    for (std::size_t c = 0; c < network.survey().circuits.size(); ++c)
        if (std::ranges::none_of(network.breakers_of(c),
                                 [&](std::size_t b) { return network.circuits_on(b).size() > 1; }))
            found.push_back(judged_circuit(all, c));
    for (std::size_t b = 0; b < network.survey().breakers.size(); ++b)
        if (network.circuits_on(b).size() > 1) found.push_back(judged_breaker(all, b));
    return found;
}

Finding load_finding(const char* rule, Severity severity, Basis basis, const Judged& judged, Amperes value,
                     Amperes limit) {
    Finding finding = begin_finding(rule, severity, basis, judged.of);
    finding.value = value.value;
    finding.limit = limit.value;
    finding.unit = "A";
    return finding;
}

void judge_declared(const Judged& judged, const RuleBook& book, std::vector<Finding>& findings) {
    const LegDemand* worst = nullptr;
    for (const auto& [letter, leg] : judged.demand.legs)
        if (leg.continuous.value > 0 && exceeds(leg.required, *judged.rating) &&
            (!worst || leg.required > worst->required))
            worst = &leg;
    if (!worst) return;
    Finding finding =
        load_finding("continuous-over-80", for_calculated(Severity::warning, worst->required, *judged.rating, book),
                     Basis::required, judged, worst->required, *judged.rating);
    finding.text = {tr("{0}: {1:.4g} A continuous and {2:.4g} A beside it ask for {3:.4g} A, more than its {4:.4g} A"),
                    {judged.name, worst->continuous.value, worst->noncontinuous.value, worst->required.value,
                     judged.rating->value}};
    finding.remedy = {tr("Move a lasting load to another circuit."), {}};
    finding.sources = {book.cite("nec-210-20-a")};
    findings.push_back(std::move(finding));
}

void judge_sustained(const Judged& judged, const RuleBook& book, std::vector<Finding>& findings) {
    if (!judged.measured.sustained) return;
    const double share = judged.full_rated ? 1.0 : book.figure("continuous-share");
    const Amperes limit = share * *judged.rating;
    const Amperes held = *judged.measured.sustained;
    if (!exceeds(held, limit)) return;
    Finding finding = load_finding("continuous-over-80", for_measured(Severity::warning, held.value, limit.value, book),
                                   Basis::advised, judged, held, limit);
    finding.text = {tr("{0}: {1:.4g} A held for 3 h or more; {2:.0f} % of {3:.4g} A is {4:.4g} A"),
                    {judged.name, held.value, 100 * share, judged.rating->value, limit.value}};
    finding.remedy = {tr("Move a lasting load to another circuit."), {}};
    finding.sources = {book.cite("nec-210-20-a"), book.cite("nec-100-continuous")};
    if (const Citation& share_of = book.cite("continuous-share"); !share_of.amends.empty())
        finding.sources.insert(finding.sources.begin(), share_of);
    findings.push_back(std::move(finding));
}

/// The amperes that the loads ask for without the 125 % of lasting ones; with nothing lasting all that is required.
std::optional<Amperes> calculated_load(const CircuitDemand& demand) {
    std::optional<Amperes> calculated;
    if (const LegDemand* leg = demand.largest_sum()) calculated = leg->everything();
    if (demand.motors_alone) return calculated;
    for (const auto& [letter, leg] : demand.legs)
        if (leg.continuous.value == 0 && (!calculated || leg.required > *calculated)) calculated = leg.required;
    return calculated;
}

void judge_rating(const Judged& judged, const RuleBook& book, std::vector<Finding>& findings) {
    const Amperes rating = *judged.rating;
    const auto excess =
        worst_excess(Severity::warning, judged.measured.highest, calculated_load(judged.demand), rating, book);
    if (!excess) return;
    Finding finding =
        load_finding("load-over-rating", excess->severity, Basis::required, judged, excess->value, rating);
    finding.text = {excess->measured ? tr("{0}: {1:.4g} A measured on a {2:.4g} A circuit")
                                     : tr("{0}: loads of {1:.4g} A on a {2:.4g} A circuit"),
                    {judged.name, excess->value.value, rating.value}};
    finding.remedy = {tr("Move a load to another circuit; never a larger breaker unless its wire and outlets are known "
                         "to be made for it."),
                      {}};
    finding.sources = {book.cite("nec-210-23")};
    findings.push_back(std::move(finding));
}

void judge_cords(const Judged& judged, const RuleBook& book, std::vector<Finding>& findings) {
    Amperes most(0);
    for (const auto& [letter, leg] : judged.demand.legs) most = std::max(most, leg.cords);
    if (!exceeds(most, *judged.rating)) return;
    Finding finding =
        load_finding("cord-sum-over-rating", Severity::notice, Basis::practice, judged, most, *judged.rating);
    finding.text = {tr("{0}: its cord appliances add up to {1:.4g} A on {2:.4g} A; it trips if all run at once"),
                    {judged.name, most.value, judged.rating->value}};
    finding.remedy = {tr("Do not run them all at once, or move one to another circuit."), {}};
    finding.sources = {book.cite("practice")};
    findings.push_back(std::move(finding));
}

void judge_declarations(const Reckoned& all, std::size_t c, std::vector<Finding>& findings) {
    std::vector<Message::Part> names;
    for (const PlacedLoad& load : all.placed.on_circuit[c])
        if (load.by_rule && load.load && load.load->continuous == false)
            names.emplace_back(load.load->title.value_or(load.load->id));
    if (names.empty()) return;
    Finding finding = begin_finding("continuous-by-rule", Severity::warning, Basis::required,
                                    address_of(all.network, {ThingKind::circuit, c}));
    finding.text = {tr("{0}: {1} entered as not continuous, but continuous by rule; reckoned as continuous"),
                    {circuit_name(all.network, c), and_list(std::move(names))}};
    finding.remedy = {tr("Take the entry out, or correct the duty."), {}};
    finding.sources = {all.book.cite("nec-210-20-a"), all.book.cite("nec-422-13"), all.book.cite("nec-424-4-b"),
                       all.book.cite("nec-625-42")};
    findings.push_back(std::move(finding));
}

}  // namespace

void find_overloads(const Reckoned& all, std::vector<Finding>& findings) {
    for (const Judged& judged : all_judged(all)) {
        if (!judged.rating) continue;
        judge_declared(judged, all.book, findings);
        judge_sustained(judged, all.book, findings);
        judge_rating(judged, all.book, findings);
        judge_cords(judged, all.book, findings);
    }
    for (std::size_t c = 0; c < all.network.survey().circuits.size(); ++c) judge_declarations(all, c, findings);
}

}  // namespace doorcard
