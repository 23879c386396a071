// SPDX-License-Identifier: MIT
// Voltages as read: voltage-out-of-range, partial-voltage; and legs-unbalanced on readings taken together.
#include <algorithm>
#include <array>
#include <cmath>

#include "assess/rule_list.hpp"
#include "assess/rule_parts.hpp"

namespace doorcard {
namespace {

/// The nominal voltages that a reading may be held against; nullopt where the conductors do not have it.
struct Nominals {
    std::optional<Volts> to_neutral, line_to_line;

    /// Without legs in its address: the nearer of the two, by ratio.
    std::optional<Volts> nearest(Volts reading) const {
        if (!to_neutral || !line_to_line || reading.value <= 0) return to_neutral ? to_neutral : line_to_line;
        const double a = std::abs(std::log(reading / *to_neutral));
        const double b = std::abs(std::log(reading / *line_to_line));
        return b < a ? line_to_line : to_neutral;
    }
};

/// Of legs at a supply: several legs have both voltages, one leg has the one to neutral.
Nominals nominals_at(const PanelSupply& supply, const std::string& legs) {
    if (!supply.system || legs.empty()) return {};
    if (legs.size() == 1) return {supply.volts_to_neutral(legs.front()), std::nullopt};
    const std::string low = supply.neutral_legs();
    return {low.empty() ? std::nullopt : supply.volts_to_neutral(low.front()), supply.volts_line_to_line()};
}

PanelSupply supply_of_source(System system) {
    PanelSupply supply;
    supply.system = system;
    supply.legs = std::string("ABC").substr(0, static_cast<std::size_t>(facts(system).legs));
    if (system == System::high_leg_240) supply.high_leg = 'B';
    return supply;
}

Nominals nominals_of_circuit(const Network& network, std::size_t circuit, const std::string& legs) {
    const PanelSupply* supply = supply_of_circuit(network, circuit);
    return supply ? nominals_at(*supply, legs.empty() ? network.circuit_legs(circuit) : legs) : Nominals{};
}

std::string without_unknown(std::string legs) {
    std::erase(legs, '?');
    return legs;
}

Nominals nominals_of(const Network& network, const Address& of) {
    const Survey& survey = network.survey();
    switch (of.kind) {
        case ThingKind::source: {
            const Source* source = survey.sources.find(of.id);
            if (!source || !source->system) return {};
            const PanelSupply supply = supply_of_source(*source->system);
            return nominals_at(supply, of.legs.empty() ? supply.legs : of.legs);
        }
        case ThingKind::panel: {
            const std::size_t p = survey.panels.position(of.id);
            if (p >= survey.panels.size()) return {};
            return nominals_at(network.supply(p), of.legs.empty() ? network.supply(p).legs : of.legs);
        }
        case ThingKind::breaker: {
            const std::size_t b = survey.breakers.position(of.id);
            if (b >= survey.breakers.size() || network.panel_of(b) >= survey.panels.size()) return {};
            return nominals_at(network.supply(network.panel_of(b)),
                               of.legs.empty() ? without_unknown(network.breaker_legs(b)) : of.legs);
        }
        case ThingKind::circuit: {
            const std::size_t c = survey.circuits.position(of.id);
            return c < survey.circuits.size() ? nominals_of_circuit(network, c, of.legs) : Nominals{};
        }
        case ThingKind::outlet: {
            const std::size_t o = survey.outlets.position(of.id);
            if (o >= survey.outlets.size() || network.circuits_at(o).empty()) return {};
            return nominals_of_circuit(network, network.circuits_at(o).front(), "");
        }
        default:
            return {};
    }
}

bool has_rules(const Network& network, const Address& of) {
    const Survey& survey = network.survey();
    if (of.kind != ThingKind::source) return true;
    const Source* source = survey.sources.find(of.id);
    return source && source->system && facts(*source->system).has_rules;
}

/// Service limits hold at the service panel and the source, utilization limits elsewhere.
bool at_service(const Survey& survey, const Address& of) {
    if (of.kind == ThingKind::source) return true;
    const Panel* panel = of.kind == ThingKind::panel ? survey.panels.find(of.id) : nullptr;
    return panel && panel->service.value_or(false);
}

struct Band {
    Volts low, high;
};

Band band(const RuleBook& book, std::size_t row, bool service, Volts nominal) {
    const RuleTable& table = book.table("ansi-c84-1-120");
    const double scale = nominal / Volts(book.figure("voltage-base"));
    const char* low = service ? "service_min" : "utilization_min";
    const char* high = service ? "service_max" : "utilization_max";
    return {Volts(table.number(row, table.column(low)) * scale), Volts(table.number(row, table.column(high)) * scale)};
}

bool outside(Volts volts, const Band& band) {
    return exceeds(volts.value, band.high.value) || exceeds(band.low.value, volts.value);
}

std::optional<Finding> partial(const Reading& reading, Volts nominal, const RuleBook& book) {
    const double limit = book.figure("partial-volts-share") * nominal.value;
    if (!exceeds(limit, reading.volts->value)) return std::nullopt;
    const bool loaded =
        reading.low_impedance.value_or(false) || (reading.test_load_a && reading.test_load_a->value > 0);
    Finding finding = begin_finding("partial-voltage", loaded ? Severity::danger : Severity::caution, Basis::practice,
                                    {reading.of.kind, reading.of.id, ""});
    finding.text = {
        loaded ? tr("{0}: {1:.1f} V of {2:.0f} V under load: a lost neutral or leg, or a feed through something else")
               : tr("{0}: {1:.1f} V of {2:.0f} V: may be induced; treat as live"),
        {reading.of.id, reading.volts->value, nominal.value}};
    finding.remedy = {tr("Read it again with a low-impedance input; treat it as live until proved dead."), {}};
    finding.value = reading.volts->value;
    finding.limit = limit;
    finding.unit = "V";
    finding.sources = {book.cite("partial-volts-share")};
    return finding;
}

std::optional<Finding> out_of_range(const Network& network, const Reading& reading, Volts nominal,
                                    const RuleBook& book) {
    const bool service = at_service(network.survey(), reading.of);
    const Band a = band(book, 0, service, nominal);
    const Band b = band(book, 1, service, nominal);
    if (!outside(*reading.volts, a)) return std::nullopt;
    const bool beyond = outside(*reading.volts, b);
    const Band& passed = beyond ? b : a;
    Finding finding = begin_finding("voltage-out-of-range", beyond ? Severity::caution : Severity::notice,
                                    Basis::advised, {reading.of.kind, reading.of.id, ""});
    finding.value = reading.volts->value;
    finding.limit = reading.volts->value > passed.high.value ? passed.high.value : passed.low.value;
    finding.unit = "V";
    finding.text = {beyond ? tr("{0}: {1:.1f} V at {2:.0f} V nominal, outside {3:.1f} V, the limit for short times")
                           : tr("{0}: {1:.1f} V at {2:.0f} V nominal, beyond {3:.1f} V, the limit for ordinary times"),
                    {reading.of.id, reading.volts->value, nominal.value, *finding.limit}};
    finding.remedy = {service ? tr("Ask the utility to check its voltage.")
                              : tr("Read it at the service too: the drop lies between the two readings."),
                      {}};
    finding.sources = {book.cite("ansi-c84-1")};
    return finding;
}

/// Below 20 V a conductor is off, not badly supplied.
std::optional<Finding> judge_volts(const Network& network, const Reading& reading, const RuleBook& book) {
    if (!reading.volts || reading.of.legs == "N" || !has_rules(network, reading.of)) return std::nullopt;
    if (exceeds(book.figure("partial-volts-low"), reading.volts->value)) return std::nullopt;
    const Nominals nominals = nominals_of(network, reading.of);
    const auto nominal = reading.of.legs.size() == 2 ? nominals.line_to_line : nominals.nearest(*reading.volts);
    if (!nominal) return std::nullopt;
    if (auto finding = partial(reading, *nominal, book)) return finding;
    return out_of_range(network, reading, *nominal, book);
}

bool outweighs(const Finding& a, const Finding& b) {
    if (a.severity != b.severity) return a.severity < b.severity;
    return std::abs(*a.value - *a.limit) > std::abs(*b.value - *b.limit);
}

void judge_odd_outlets(const Reckoned& all, std::vector<Finding>& findings) {
    for (const Round& round : all.network.survey().rounds)
        for (const std::string& id : round.odd.value_or(Ids{})) {
            const Address of{ThingKind::outlet, id, ""};
            if (std::ranges::any_of(findings,
                                    [&](const Finding& f) { return f.rule == "partial-voltage" && f.of == of; }))
                continue;
            Finding finding = begin_finding("partial-voltage", Severity::caution, Basis::practice, of);
            finding.text = {tr("{0} was dim, buzzing or half on in a switching round: may be induced; treat as live"),
                            {id}};
            finding.remedy = {tr("Read it with a low-impedance input; treat it as live until proved dead."), {}};
            finding.unit = "V";
            finding.sources = {all.book.cite("practice")};
            findings.push_back(std::move(finding));
        }
}

}  // namespace

void find_voltages(const Reckoned& all, std::vector<Finding>& findings) {
    std::map<std::string, Finding> worst;  // one per thing and rule
    std::vector<std::string> order;
    for (const Reading& reading : all.network.survey().readings) {
        auto finding = judge_volts(all.network, reading, all.book);
        if (!finding) continue;
        const std::string key = finding->rule + " " + finding->of.text();
        const auto [at, is_new] = worst.emplace(key, *finding);
        if (is_new)
            order.push_back(key);
        else if (outweighs(*finding, at->second))
            at->second = *finding;
    }
    for (const std::string& key : order) findings.push_back(std::move(worst.at(key)));
    judge_odd_outlets(all, findings);
}

namespace {

std::optional<Amperes> main_rating(const Reckoned& all, std::size_t p) {
    const auto main = all.network.survey().panels[p].main_a;
    return main ? main : all.feeders[p].rating_a;
}

/// The highest amperes of each leg of a panel at one moment; empty unless every leg was read.
std::map<char, Amperes> legs_at(const Reckoned& all, std::size_t p, const std::vector<const Reading*>& moment) {
    const Network& network = all.network;
    std::map<char, Amperes> legs;
    for (const Reading* reading : moment) {
        if (!reading->amps || reading->of.legs.size() != 1 || reading->of.legs == "N") continue;
        const bool of_panel = reading->of.kind == ThingKind::panel && reading->of.id == network.survey().panels[p].id;
        const bool of_feed =
            reading->of.kind == ThingKind::breaker && !network.survey().panels[p].transformer &&
            std::ranges::find(all.feeders[p].breakers, reading->of.id) != all.feeders[p].breakers.end() &&
            network.panels_fed_by(network.survey().breakers.position(reading->of.id)).size() == 1;
        if (!of_panel && !of_feed) continue;
        Amperes& leg = legs[reading->of.legs.front()];
        leg = std::max(leg, *reading->amps);
    }
    if (legs.size() != network.supply(p).legs.size()) legs.clear();
    return legs;
}

std::vector<const Reading*> readings_of_panel(const Reckoned& all, std::size_t p) {
    std::vector<const Reading*> readings = all.readings.of(ThingKind::panel, all.network.survey().panels[p].id);
    for (const std::string& breaker : all.feeders[p].breakers) {
        const auto& of = all.readings.of(ThingKind::breaker, breaker);
        readings.insert(readings.end(), of.begin(), of.end());
    }
    return readings;
}

void judge_balance(const Reckoned& all, std::size_t p, std::vector<Finding>& findings) {
    const auto main = main_rating(all, p);
    if (!main || all.network.supply(p).legs.size() < 2) return;
    const double limit = all.book.figure("legs-imbalance-percent");
    std::optional<double> worst;
    for (const std::size_t at : all.readings.moments_with(readings_of_panel(all, p))) {
        std::vector<Amperes> legs;
        Amperes highest(0);
        for (const auto& [leg, amps] : legs_at(all, p, all.readings.moments()[at])) {
            highest = std::max(highest, amps);
            if (leg != all.network.supply(p).high_leg) legs.push_back(amps);
        }
        const auto percent = imbalance_percent(legs);
        if (!percent || !exceeds(*percent, limit) || (worst && *percent <= *worst)) continue;
        if (highest >= all.book.figure("legs-imbalance-share") * *main) worst = percent;
    }
    if (!worst) return;
    Finding finding = begin_finding("legs-unbalanced", Severity::notice, Basis::practice,
                                    address_of(all.network, {ThingKind::panel, p}));
    finding.value = *worst;
    finding.limit = limit;
    finding.unit = "%";
    finding.text = {tr("{0}: its legs stood {1:.0f} % out of balance on readings taken together"),
                    {all.network.survey().panels[p].id, *worst}};
    finding.remedy = {tr("Move a circuit to the lighter leg if it stays so, never one hot of a shared neutral; check "
                         "conductor length; lock out first."),
                      {}};
    finding.sources = {all.book.cite("legs-imbalance-percent")};
    findings.push_back(std::move(finding));
}

}  // namespace

void find_unbalanced_legs(const Reckoned& all, std::vector<Finding>& findings) {
    for (std::size_t p = 0; p < all.network.survey().panels.size(); ++p) judge_balance(all, p, findings);
}

}  // namespace doorcard
