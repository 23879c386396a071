// SPDX-License-Identifier: MIT
// What one appliance may take of a circuit it shares (210.23): cord-load-over-80, fixed-over-50.
#include <algorithm>

#include "assess/rule_list.hpp"
#include "assess/rule_parts.hpp"

namespace doorcard {
namespace {

/// The highest current that a reading on the load itself shows.
std::optional<Amperes> measured_load(const Reckoned& all, const Load& load) {
    std::optional<Amperes> most;
    for (const Reading* reading : all.readings.of(ThingKind::load, load.id))
        if (const auto amps = highest_amps(*reading); amps && (!most || *amps > *most)) most = amps;
    return most;
}

/// An individual circuit: one single receptacle and nothing else (210.23: it may supply any load it is rated for).
bool is_individual(const Reckoned& all, std::size_t circuit) {
    const auto& outlets = all.network.outlets_on(circuit);
    return outlets.size() == 1 && receptacles_at(all.network.survey().outlets[outlets.front()], all.book) == 1;
}

Amperes largest_shared(const RuleBook& book) { return Amperes(book.figure("shared-circuit-max-a")); }

void judge_cord_load(const Reckoned& all, std::size_t c, Amperes rating, std::vector<Finding>& findings) {
    const Amperes limit = all.book.figure("cord-share") * rating;
    const PlacedLoad* worst = nullptr;
    Amperes most = limit;
    bool certain = false;
    for (const PlacedLoad& load : all.placed.on_circuit[c]) {
        if (!load.cord || !load.load) continue;
        const auto measured = measured_load(all, *load.load);
        const Amperes amps = std::max(measured.value_or(Amperes(0)), load.current.total());
        if (!exceeds(amps, most)) continue;
        most = amps;
        worst = &load;
        certain = load.continuous || (measured && exceeds(*measured, limit));
    }
    if (!worst) return;
    Finding finding = begin_finding("cord-load-over-80", certain ? Severity::caution : Severity::notice,
                                    Basis::required, address_of(all.network, {ThingKind::circuit, c}));
    finding.value = most.value;
    finding.limit = limit.value;
    finding.unit = "A";
    finding.text = {tr("{0}: {1} takes {2:.4g} A; one cord appliance may take {3:.4g} A of {4:.4g} A"),
                    {circuit_name(all.network, c), worst->load->title.value_or(worst->load->id), most.value,
                     limit.value, rating.value}};
    finding.remedy = {tr("Plug it in on a circuit of its own, or one of a higher rating."), {}};
    finding.sources = {all.book.cite(exceeds(rating, largest_shared(all.book)) ? "nec-210-23-c" : "nec-210-23-b-1")};
    findings.push_back(std::move(finding));
}

bool feeds_portable_or_lighting(const Reckoned& all, std::size_t c) {
    const Survey& survey = all.network.survey();
    for (const PlacedLoad& load : all.placed.on_circuit[c])
        if (load.cord || load.duty() == Duty::lighting) return true;
    return std::ranges::any_of(all.network.outlets_on(c), [&](std::size_t o) {
        const auto kind = survey.outlets[o].kind;
        return kind == OutletKind::lighting || (kind == OutletKind::receptacle && all.network.loads_at(o).empty());
    });
}

void judge_fixed_loads(const Reckoned& all, std::size_t c, Amperes rating, std::vector<Finding>& findings) {
    if (!feeds_portable_or_lighting(all, c)) return;
    const Amperes limit = all.book.figure("fixed-share") * rating;
    const PanelSupply* supply = supply_of_circuit(all.network, c);
    if (!supply) return;
    LegSums sums;
    bool certain = false;
    for (const PlacedLoad& load : all.placed.on_circuit[c]) {
        if (load.cord || !load.load || load.duty() == Duty::lighting || !load.current.known()) continue;
        sums.add(load.current, *supply, load.count);
        certain = certain || load.continuous || measured_load(all, *load.load);
    }
    Amperes most(0);
    for (const char leg : all.network.circuit_legs(c)) most = std::max(most, sums.amps(leg));
    if (!exceeds(most, limit)) return;
    Finding finding = begin_finding("fixed-over-50", certain ? Severity::caution : Severity::notice, Basis::required,
                                    address_of(all.network, {ThingKind::circuit, c}));
    finding.value = most.value;
    finding.limit = limit.value;
    finding.unit = "A";
    finding.text = {
        tr("{0}: fixed equipment takes {1:.4g} A beside lighting or receptacles; half of {2:.4g} A is {3:.4g} A"),
        {circuit_name(all.network, c), most.value, rating.value, limit.value}};
    finding.remedy = {tr("Give the fixed equipment a circuit of its own."), {}};
    finding.sources = {all.book.cite("nec-210-23-b-2")};
    findings.push_back(std::move(finding));
}

}  // namespace

void find_appliance_shares(const Reckoned& all, std::vector<Finding>& findings) {
    for (std::size_t c = 0; c < all.network.survey().circuits.size(); ++c) {
        const auto rating = all.circuits[c].rating_a;
        if (!rating) continue;
        const bool small = !exceeds(*rating, Amperes(all.book.figure("cord-share-max-a"))) && !is_individual(all, c);
        if (small) judge_cord_load(all, c, *rating, findings);
        if (!exceeds(*rating, largest_shared(all.book))) judge_fixed_loads(all, c, *rating, findings);
    }
}

}  // namespace doorcard
